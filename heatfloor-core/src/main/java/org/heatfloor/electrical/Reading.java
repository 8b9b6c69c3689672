package org.heatfloor.electrical;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * What a resistance meter shows: a value, or that the resistance is above the range of the meter.
 *
 * @param resistance the value, or the end of the range where the meter shows "over"; not negative
 * @param overRange whether the resistance is above the value
 */
public record Reading(Quantity<ElectricResistance> resistance, boolean overRange) {

    /**
     * Checks the value.
     *
     * @param resistance the value, or the end of the range where the meter shows "over"; not negative
     * @param overRange whether the resistance is above the value
     * @throws IllegalArgumentException if it is negative, or zero and over range
     */
    public Reading {
        double ohms = Si.notNegative("meter reading", resistance, Units.OHM);
        if (overRange && !(ohms > 0)) {
            throw new IllegalArgumentException(
                    "meter reading: over range of " + resistance + " was given; a range above 0 Ω is expected");
        }
    }

    /**
     * A value.
     *
     * @param resistance the value, not negative
     * @return the reading
     * @throws IllegalArgumentException if it is negative
     */
    public static Reading of(Quantity<ElectricResistance> resistance) {
        return new Reading(resistance, false);
    }

    /**
     * Above the meter's range, shown as "OL" or "&gt;".
     *
     * @param range the end of the range, above 0
     * @return the reading
     * @throws IllegalArgumentException if the range is not above 0
     */
    public static Reading above(Quantity<ElectricResistance> range) {
        return new Reading(range, true);
    }

    double ohms() {
        return Si.in("meter reading", resistance, Units.OHM);
    }
}
