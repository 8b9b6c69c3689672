package org.heatfloor.takeoff;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;

/**
 * Levelling compound for a floor.
 *
 * @param volume of compound in place
 * @param deepest greatest thickness
 * @param cover least thickness, over the highest point
 */
public record LevellerNeed(Quantity<Volume> volume, Quantity<Length> deepest, Quantity<Length> cover) {}
