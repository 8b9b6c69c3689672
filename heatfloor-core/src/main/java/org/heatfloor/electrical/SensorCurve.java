package org.heatfloor.electrical;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;

/** The resistance of a floor sensor over temperature. */
public sealed interface SensorCurve permits BetaThermistor, SteinhartHart, PlatinumSensor {

    /**
     * Resistance at a temperature.
     *
     * @param temperature the temperature, within the curve's range
     * @return the resistance
     * @throws IllegalArgumentException if it lies outside the range
     */
    Quantity<ElectricResistance> resistanceAt(Quantity<Temperature> temperature);

    /**
     * Temperature from a resistance.
     *
     * @param resistance the resistance, above 0
     * @return the temperature
     * @throws IllegalArgumentException if it belongs to no temperature within the range
     */
    Quantity<Temperature> temperatureOf(Quantity<ElectricResistance> resistance);

    /**
     * A line for a report.
     *
     * @return kind and figures of the sensor
     */
    String describe();
}
