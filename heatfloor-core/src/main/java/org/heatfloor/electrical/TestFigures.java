package org.heatfloor.electrical;

import java.util.Optional;
import java.util.OptionalDouble;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Cable and limits of a test series as numbers: ohms, kelvins, shares; the factory's reading is NaN where not known. */
record TestFigures(
        double label,
        double low,
        double high,
        double perKelvin,
        double leads,
        double insulationLeast,
        double insulationWatch,
        double screenMost,
        double sensorKelvins,
        double accuracy,
        double factory,
        OptionalDouble screenAt20,
        Resolution resolution,
        Optional<SensorKernel> sensor) {

    static TestFigures of(HeatingCable cable, TestLimits limits) {
        return new TestFigures(
                Ohm.resistance(cable.volts(), cable.watts()),
                limits.tolerance().lowFactor(),
                limits.tolerance().highFactor(),
                limits.core().perKelvin(),
                Si.in("cold leads", limits.coldLeads(), Units.OHM),
                Si.in("least insulation", limits.insulationLeast(), Units.OHM),
                Si.in("insulation to watch", limits.insulationWatch(), Units.OHM),
                Si.in("screen", limits.screenMost(), Units.OHM),
                Si.in("sensor tolerance", limits.sensorTolerance(), Units.KELVIN_DIFFERENCE),
                Si.in("meter accuracy", limits.meterAccuracy(), Units.ONE),
                limits.factoryReading()
                        .map(read -> Si.in("factory reading", read, Units.OHM))
                        .orElse(Double.NaN),
                ScreenKernel.at20(cable),
                limits.resolution(),
                limits.sensorCurve().map(SensorKernel::of));
    }

    /** Core at 20 °C over the label; none is left where the reading is less than that of the cold leads. */
    double ratio(double readOhms, double celsius) {
        return Math.max(0, readOhms - leads) / Ohm.atTemperature(1, perKelvin, celsius - 20) / label;
    }

    /** The maker's reading over the label, NaN where not known. */
    double factoryRatio() {
        return factory / label;
    }

    /** The same figures with a maker's reading. */
    TestFigures withFactory(double ohmsAt20) {
        return new TestFigures(
                label,
                low,
                high,
                perKelvin,
                leads,
                insulationLeast,
                insulationWatch,
                screenMost,
                sensorKelvins,
                accuracy,
                ohmsAt20,
                screenAt20,
                resolution,
                sensor);
    }

    /** Temperature by the floor sensor. */
    OptionalDouble sensed(MeterTest test) {
        return sensor.isEmpty() || test.sensor().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(sensor.get().celsius(test.sensor().get().ohms()));
    }

    /** Whether a screen's reading shows a path. */
    boolean screened(Reading reading, int conductors, double celsius) {
        double most = screenAt20.isPresent()
                ? ScreenKernel.band(screenAt20.getAsDouble(), conductors, celsius)[2]
                : screenMost;
        return !reading.overRange() && reading.ohms() <= most;
    }

    /** Within the tolerance, widened by the meter's accuracy. */
    boolean inBand(double ratio) {
        return ratio >= low * (1 - accuracy) && ratio <= high * (1 + accuracy);
    }

    /** Outside the tolerance by more than a reading may be wrong. */
    boolean certainlyOut(double ratio) {
        double one = Resolution.oneReading(accuracy, perKelvin);
        return ratio < low * (1 - one) || ratio > high * (1 + one);
    }

    /** Relative change of the corrected resistance between two tests that meter and thermometer (1 K) may explain. */
    double drift() {
        return 3 * (accuracy + Math.abs(perKelvin));
    }
}
