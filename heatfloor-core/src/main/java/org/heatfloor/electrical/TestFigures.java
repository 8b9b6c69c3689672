package org.heatfloor.electrical;

import java.util.Optional;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Cable and limits of a test series as numbers: ohms, kelvins, shares. */
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
                limits.sensorCurve().map(SensorKernel::of));
    }

    /** Core at 20 °C over the label. */
    double ratio(double readOhms, double celsius) {
        return (readOhms - leads) / Ohm.atTemperature(1, perKelvin, celsius - 20) / label;
    }

    /** Within the tolerance, widened by the meter's accuracy. */
    boolean inBand(double ratio) {
        return ratio >= low * (1 - accuracy) && ratio <= high * (1 + accuracy);
    }

    /** Relative change of the corrected resistance between two tests that meter and thermometer (1 K) may explain. */
    double drift() {
        return 3 * (accuracy + Math.abs(perKelvin));
    }
}
