package org.heatfloor.thermal;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.TemperatureDifference;
import org.heatfloor.quantity.Units;

/**
 * An on/off thermostat with a floor sensor midway between two cables in their plane. It looks every half minute: power
 * comes on when the sensor falls half the hysteresis below the temperature wanted and goes off half above.
 *
 * @param hysteresis difference between switching off and on, 0.1 K to 10 K
 * @param optimalStart whether it heats ahead so that the temperature is reached when a period begins, not from then on
 */
public record Thermostat(Quantity<TemperatureDifference> hysteresis, boolean optimalStart) {

    private static final double STEP_SECONDS = 30;
    private static final int STEPS_A_MINUTE = 2;
    private static final int SETTLING_WEEKS = 2;
    /** Optimal start looks ahead no farther than two days. */
    private static final int LONGEST_LEAD_MINUTES = 2880;

    /**
     * Checks the hysteresis.
     *
     * @param hysteresis difference between switching off and on, 0.1 K to 10 K
     * @param optimalStart whether it heats ahead so that the temperature is reached when a period begins, not from then on
     * @throws IllegalArgumentException if it is not 0.1 K to 10 K
     */
    public Thermostat {
        Si.within("hysteresis", hysteresis, Units.KELVIN_DIFFERENCE, 0.1, 10);
    }

    /**
     * Runs a week, after two weeks of settling.
     *
     * @param buildUp the layers
     * @param climate room and space below, held steady
     * @param law how the surface gives off heat; its film is that at steady full power
     * @param cable the cable
     * @param spacing distance of neighbouring cables
     * @param schedule what is wanted when
     * @return the week
     * @throws IllegalArgumentException if the cable reaches out of its layer or gives no power
     */
    public HeatedWeek run(
            BuildUp buildUp,
            Climate climate,
            SurfaceLaw law,
            EmbeddedCable cable,
            Quantity<Length> spacing,
            WeeklySchedule schedule) {
        cable.checkInside(buildUp);
        Si.positive("cable power", cable.power(), Units.WATT_PER_METRE);
        double w = Si.positive("spacing", spacing, Units.METRE);
        SlowModes floor = new SlowModes(LayerStack.of(buildUp), cable, w, climate, law, STEP_SECONDS);
        return new Run(floor, schedule, cable.powerSi() / w).week();
    }

    /** The state of one run. */
    private final class Run {
        private final SlowModes floor;
        private final List<WeeklySchedule.Span> spans;
        private final double setbackKelvin;
        private final double half = Si.in("hysteresis", hysteresis, Units.KELVIN_DIFFERENCE) / 2;
        private final double flux;
        private final List<HeatedWeek.Warming> warmings = new ArrayList<>();
        private boolean powered;
        private int onSteps;
        private int switchings;
        private double overshoot;
        private double surfaceMax;
        private int aheadSpan = -1;
        private int aheadSince;

        Run(SlowModes floor, WeeklySchedule schedule, double flux) {
            this.floor = floor;
            this.spans = schedule.spans();
            this.setbackKelvin = Si.kelvin("setback", schedule.setback());
            this.flux = flux;
        }

        HeatedWeek week() {
            floor.holdSensorAt(setbackKelvin);
            for (int week = 0; week <= SETTLING_WEEKS; week++) {
                onSteps = 0;
                switchings = 0;
                overshoot = 0;
                surfaceMax = 0;
                warmings.clear();
                for (int minute = 0; minute < WeeklySchedule.MINUTES_A_WEEK; minute++) {
                    minute(minute);
                }
            }
            double share = (double) onSteps / (WeeklySchedule.MINUTES_A_WEEK * STEPS_A_MINUTE);
            return new HeatedWeek(
                    warmings,
                    Amounts.of(share, Units.ONE),
                    Amounts.of(share * flux, Units.WATT_PER_SQUARE_METRE),
                    switchings,
                    Amounts.kelvins(overshoot),
                    SteadySection.celsius(surfaceMax));
        }

        private void minute(int minute) {
            double wanted = setbackKelvin;
            boolean inPeriod = false;
            int next = -1;
            int wait = Integer.MAX_VALUE;
            for (int s = 0; s < spans.size(); s++) {
                WeeklySchedule.Span span = spans.get(s);
                if (minute >= span.fromMinute() && minute < span.toMinute()) {
                    wanted = span.celsius() + 273.15;
                    inPeriod = true;
                    if (minute == span.fromMinute()) {
                        began(s, span, minute);
                    }
                }
                int until = Math.floorMod(span.fromMinute() - minute, WeeklySchedule.MINUTES_A_WEEK);
                if (until > 0 && until < wait) {
                    wait = until;
                    next = s;
                }
            }
            if (!inPeriod && optimalStart && next >= 0) {
                wanted = ahead(minute, next, wait, wanted);
            }
            for (int step = 0; step < STEPS_A_MINUTE; step++) {
                double sensor = floor.sensor();
                boolean before = powered;
                powered = powered ? sensor < wanted + half : sensor < wanted - half;
                if (powered && !before) {
                    switchings++;
                }
                if (powered) {
                    onSteps++;
                }
                floor.step(powered);
                if (inPeriod) {
                    overshoot = Math.max(overshoot, floor.sensor() - wanted);
                }
                surfaceMax = Math.max(surfaceMax, floor.surfaceMax());
            }
        }

        /** Heats for the next period once full power until it begins would only just do. */
        private double ahead(int minute, int next, int wait, double wanted) {
            double target = spans.get(next).celsius() + 273.15;
            if (aheadSpan == next) {
                return target;
            }
            // Looking ahead every five minutes is close enough.
            boolean due = wait % 5 == 0 && wait <= LONGEST_LEAD_MINUTES && floor.sensorAfter(60.0 * wait) <= target;
            if (due) {
                aheadSpan = next;
                aheadSince = minute;
                return target;
            }
            return wanted;
        }

        private void began(int index, WeeklySchedule.Span span, int minute) {
            int lead = aheadSpan == index ? Math.floorMod(minute - aheadSince, WeeklySchedule.MINUTES_A_WEEK) : 0;
            aheadSpan = -1;
            double sensor = floor.sensor();
            warmings.add(new HeatedWeek.Warming(
                    span.day(),
                    span.from(),
                    Amounts.of(lead, Units.MINUTE),
                    SteadySection.celsius(sensor),
                    SteadySection.celsius(floor.surfaceMean()),
                    sensor >= span.celsius() + 273.15 - 2 * half));
        }
    }
}
