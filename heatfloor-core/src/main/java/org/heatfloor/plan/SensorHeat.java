package org.heatfloor.plan;

import org.heatfloor.thermal.SensorReading;

/**
 * What the sensor of a cable reads at its place.
 *
 * @param cable the cable's name in the plan
 * @param reading the reading at steady full power beside the floor's mean and maximum
 */
public record SensorHeat(String cable, SensorReading reading) {}
