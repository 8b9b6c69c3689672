package org.heatfloor.examples;

import javax.measure.Quantity;
import javax.measure.Unit;
import org.heatfloor.quantity.QuantityText;

/**
 * What a figure of a room file may be: wide enough for every real room, narrow enough to catch a slip of the unit.
 *
 * @param unit the unit of the bounds, and the dimension expected
 * @param least the least value
 * @param most the greatest value
 */
record Bounds<Q extends Quantity<Q>>(Unit<Q> unit, double least, double most) {

    static <Q extends Quantity<Q>> Bounds<Q> of(Unit<Q> unit, double least, double most) {
        return new Bounds<>(unit, least, most);
    }

    boolean allow(Quantity<Q> quantity) {
        double value = quantity.to(unit).getValue().doubleValue();
        return value >= least && value <= most;
    }

    @Override
    public String toString() {
        String name = QuantityText.name(unit);
        return QuantityText.number(least, 3) + " " + name + " to " + QuantityText.number(most, 3) + " " + name;
    }
}
