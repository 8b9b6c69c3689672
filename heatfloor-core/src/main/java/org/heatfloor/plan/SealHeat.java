package org.heatfloor.plan;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;

/**
 * How warm a water closet's flange gets.
 *
 * @param keepOut the flange's name
 * @param warmest warmest of tile and cables' plane around its edge at steady full power
 */
public record SealHeat(String keepOut, Quantity<Temperature> warmest) {}
