package org.heatfloor.thermal;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * When the floor is to be how warm, week after week.
 *
 * @param setback floor temperature outside the periods
 * @param periods the periods, not overlapping
 */
public record WeeklySchedule(Quantity<Temperature> setback, List<Period> periods) {

    private static final int MINUTES_A_DAY = 1440;
    static final int MINUTES_A_WEEK = 7 * MINUTES_A_DAY;

    /**
     * A time of day on some days at which the floor is to be warm.
     *
     * @param days the days
     * @param from beginning in whole minutes, warm by then
     * @param to end in whole minutes, later the same day; 00:00 means the end of the day
     * @param floor floor temperature wanted at the sensor
     */
    public record Period(Set<DayOfWeek> days, LocalTime from, LocalTime to, Quantity<Temperature> floor) {

        /**
         * Checks the period.
         *
         * @param days the days
         * @param from beginning in whole minutes, warm by then
         * @param to end in whole minutes, later the same day; 00:00 means the end of the day
         * @param floor floor temperature wanted at the sensor
         * @throws IllegalArgumentException if there is no day, a time is not a whole minute, it does not end after it begins or
         *     the temperature is not 5 °C to 60 °C
         */
        public Period {
            days = Set.copyOf(days);
            if (days.isEmpty()) {
                throw new IllegalArgumentException("period days: none was given; at least one is expected");
            }
            wholeMinute("from", from);
            wholeMinute("to", to);
            if (!from.isBefore(to) && !to.equals(LocalTime.MIDNIGHT)) {
                throw new IllegalArgumentException(
                        "period to: " + to + " was given; later than " + from + " on the same day is expected");
            }
            Si.within("period floor", floor, Units.CELSIUS, 5, 60);
        }

        private static void wholeMinute(String what, LocalTime time) {
            if (!time.equals(time.truncatedTo(ChronoUnit.MINUTES))) {
                throw new IllegalArgumentException(
                        "period " + what + ": " + time + " was given; a whole minute is expected");
            }
        }
    }

    /**
     * Checks the schedule.
     *
     * @param setback floor temperature outside the periods
     * @param periods the periods, not overlapping
     * @throws IllegalArgumentException if periods overlap, one is not warmer than the setback, or the setback is not 5 °C
     *     to 60 °C
     */
    public WeeklySchedule {
        periods = List.copyOf(periods);
        double low = Si.within("setback", setback, Units.CELSIUS, 5, 60);
        for (Period period : periods) {
            if (!(Si.in("floor", period.floor(), Units.CELSIUS) > low)) {
                throw new IllegalArgumentException("period floor: " + period.floor()
                        + " was given; more than the setback of " + setback + " is expected");
            }
        }
        List<Span> spans = spans(periods);
        for (int i = 1; i < spans.size(); i++) {
            if (spans.get(i).fromMinute() < spans.get(i - 1).toMinute()) {
                throw new IllegalArgumentException("periods: two of them overlap at "
                        + spans.get(i).label() + "; periods that do not overlap are expected");
            }
        }
    }

    /** One period on one day, in minutes from Monday 00:00. */
    record Span(int fromMinute, int toMinute, double celsius, DayOfWeek day, LocalTime from) {
        String label() {
            return day + " " + from;
        }
    }

    List<Span> spans() {
        return spans(periods);
    }

    private static List<Span> spans(List<Period> periods) {
        List<Span> spans = new ArrayList<>();
        for (Period period : periods) {
            for (DayOfWeek day : period.days()) {
                int midnight = (day.getValue() - 1) * MINUTES_A_DAY;
                spans.add(new Span(
                        midnight + period.from().toSecondOfDay() / 60,
                        midnight + end(period.to()),
                        Si.in("floor", period.floor(), Units.CELSIUS),
                        day,
                        period.from()));
            }
        }
        spans.sort((a, b) -> Integer.compare(a.fromMinute(), b.fromMinute()));
        return spans;
    }

    private static int end(LocalTime to) {
        return to.equals(LocalTime.MIDNIGHT) ? MINUTES_A_DAY : to.toSecondOfDay() / 60;
    }
}
