package org.heatfloor.area;

import javax.measure.Quantity;
import javax.measure.quantity.Area;

/**
 * How much of the floor one thing keeps the cable from, beyond what the things before it took.
 *
 * @param name the wall strip, or the keep-out's name
 * @param area the area, not negative
 * @param reason why no cable lies there
 */
public record TakenArea(String name, Quantity<Area> area, String reason) {}
