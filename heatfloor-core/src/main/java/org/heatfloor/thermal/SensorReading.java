package org.heatfloor.thermal;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.TemperatureDifference;
import org.heatfloor.quantity.Units;

/**
 * A floor sensor at steady full power against the surface of the heated part.
 *
 * @param reading temperature in the cables' plane where the sensor lies
 * @param surfaceMean mean surface temperature of the heated part
 * @param surfaceMax highest surface temperature of the heated part
 * @param aboveMean reading less mean: a thermostat set to the floor temperature wanted switches off so much too early
 * @param aboveMax reading less maximum: below zero, the hottest place passes a floor limit before the sensor sees it
 */
public record SensorReading(
        Quantity<Temperature> reading,
        Quantity<Temperature> surfaceMean,
        Quantity<Temperature> surfaceMax,
        Quantity<TemperatureDifference> aboveMean,
        Quantity<TemperatureDifference> aboveMax) {

    /**
     * Tells how far the sensor is from the floor it stands for, and what follows for the thermostat's floor limit.
     *
     * @param subject the cable whose sensor it is
     * @param limit the surface limit, where there is one
     * @return a note; the figure is the reading, the limit what the sensor reads when the warmest place is at its limit
     */
    public Finding judge(String subject, Optional<Quantity<Temperature>> limit) {
        double read = Si.in("reading", reading, Units.CELSIUS);
        double mean = Si.in("aboveMean", aboveMean, Units.KELVIN_DIFFERENCE);
        double max = Si.in("aboveMax", aboveMax, Units.KELVIN_DIFFERENCE);
        String message = HeatFindings.text(
                "At steady full power the sensor at its place reads %.1f °C, %.1f K %s the heated floor's mean and %.1f K"
                        + " %s its warmest place",
                read, Math.abs(mean), side(mean), Math.abs(max), side(max));
        Source source = Source.derived("field of the route as laid");
        if (limit.isEmpty()) {
            return Finding.withValue(Severity.NOTE, subject, message + ".", reading, source);
        }
        double set = Si.in("limit", limit.orElseThrow(), Units.CELSIUS) + max;
        return Finding.of(
                Severity.NOTE,
                subject,
                message + HeatFindings.text(": set the thermostat's floor limit at or below %.1f °C.", set),
                reading,
                Amounts.celsius(set),
                source);
    }

    private static String side(double difference) {
        return difference < 0 ? "below" : "above";
    }
}
