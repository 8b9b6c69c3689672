package org.heatfloor.thermal;

import java.util.ArrayList;
import java.util.Arrays;
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
     * @param law how the surface gives off heat
     * @param cable the cable
     * @param spacing distance of neighbouring cables
     * @param schedule what is wanted when
     * @return the week
     * @throws IllegalArgumentException if the cable reaches out of its layer or gives no power, or the spacing is not more than
     *     its diameter and at most 10 m
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
        double w = cable.checkSpacing(spacing);
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
        private double lastWanted = Double.NEGATIVE_INFINITY;
        private boolean coasting;
        private final double fullPowerKelvin;
        private final int[] aheadSince;

        Run(SlowModes floor, WeeklySchedule schedule, double flux) {
            this.floor = floor;
            this.spans = schedule.spans();
            this.setbackKelvin = Si.kelvin("setback", schedule.setback());
            this.flux = flux;
            this.fullPowerKelvin = floor.sensorAtFullPower();
            this.aheadSince = new int[spans.size()];
            Arrays.fill(aheadSince, -1);
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
                    SteadySection.celsius(surfaceMax),
                    SteadySection.celsius(fullPowerKelvin));
        }

        private void minute(int minute) {
            double wanted = setbackKelvin;
            boolean inPeriod = false;
            for (int s = 0; s < spans.size(); s++) {
                WeeklySchedule.Span span = spans.get(s);
                if (minute >= span.fromMinute() && minute < span.toMinute()) {
                    wanted = span.celsius() + 273.15;
                    inPeriod = true;
                    if (minute == span.fromMinute()) {
                        began(s, span, minute);
                    }
                }
            }
            if (optimalStart) {
                wanted = ahead(minute, wanted);
            }
            // A floor that cools down to a lower temperature wanted has not shot over it.
            coasting |= wanted < lastWanted && floor.sensor() > wanted;
            lastWanted = wanted;
            for (int step = 0; step < STEPS_A_MINUTE; step++) {
                double sensor = floor.sensor();
                coasting &= sensor > wanted;
                boolean before = powered;
                powered = powered ? sensor < wanted + half : sensor < wanted - half;
                if (powered && !before) {
                    switchings++;
                }
                if (powered) {
                    onSteps++;
                }
                floor.step(powered);
                if (inPeriod && !coasting) {
                    overshoot = Math.max(overshoot, floor.sensor() - wanted);
                }
                surfaceMax = Math.max(surfaceMax, floor.surfaceMax());
            }
        }

        /**
         * Heats for a coming period once full power until it begins would only just do. A period may follow straight on a
         * cooler one, and its warm-up may begin before the cooler one does, so every coming period warmer than those before
         * it is asked, in the order they come. What full power never reaches is approached to nine tenths of the way up from
         * the setback; more would take days for nothing.
         */
        private double ahead(int minute, double wantedNow) {
            double wanted = wantedNow;
            double asked = wantedNow;
            int first = firstAfter(minute);
            for (int c = 0; c < spans.size(); c++) {
                int s = (first + c) % spans.size();
                double target = spans.get(s).celsius() + 273.15;
                int wait = Math.floorMod(spans.get(s).fromMinute() - minute, WeeklySchedule.MINUTES_A_WEEK);
                if (wait == 0 || wait > LONGEST_LEAD_MINUTES || target <= asked) {
                    continue;
                }
                asked = target;
                double goal =
                        target < fullPowerKelvin ? target : setbackKelvin + 0.9 * (fullPowerKelvin - setbackKelvin);
                // Looking ahead every five minutes is close enough.
                if (aheadSince[s] < 0 && wait % 5 == 0 && floor.sensorAfter(60.0 * wait) <= goal) {
                    aheadSince[s] = minute;
                }
                wanted = aheadSince[s] < 0 ? wanted : Math.max(wanted, target);
            }
            return wanted;
        }

        private int firstAfter(int minute) {
            for (int s = 0; s < spans.size(); s++) {
                if (spans.get(s).fromMinute() > minute) {
                    return s;
                }
            }
            return 0;
        }

        private void began(int index, WeeklySchedule.Span span, int minute) {
            int since = aheadSince[index];
            int lead = since < 0 ? 0 : Math.floorMod(minute - since, WeeklySchedule.MINUTES_A_WEEK);
            aheadSince[index] = -1;
            double sensor = floor.sensor();
            warmings.add(new HeatedWeek.Warming(
                    span.day(),
                    span.from(),
                    Amounts.of(lead, Units.MINUTE),
                    Amounts.celsius(span.celsius()),
                    SteadySection.celsius(sensor),
                    SteadySection.celsius(floor.surfaceMean()),
                    sensor >= span.celsius() + 273.15 - half));
        }
    }
}
