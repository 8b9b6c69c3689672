package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.TemperatureDifference;

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
        Quantity<TemperatureDifference> aboveMax) {}
