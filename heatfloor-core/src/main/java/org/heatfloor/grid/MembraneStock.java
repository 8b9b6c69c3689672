package org.heatfloor.grid;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * How the membrane is sold.
 *
 * @param kind sheet or roll
 * @param width its width
 * @param length its length
 */
public record MembraneStock(Kind kind, Quantity<Length> width, Quantity<Length> length) {

    /** Sheets lie flat; a roll is cut across. */
    public enum Kind {
        /** A flat sheet. */
        SHEET,
        /** A roll. */
        ROLL
    }

    /**
     * Checks the sizes.
     *
     * @param kind sheet or roll
     * @param width its width
     * @param length its length
     * @throws IllegalArgumentException if a size is not greater than zero
     */
    public MembraneStock {
        Si.positive("membrane " + kind + " width", width, Units.METRE);
        Si.positive("membrane " + kind + " length", length, Units.METRE);
    }
}
