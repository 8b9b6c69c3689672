package org.heatfloor.takeoff;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * How tiles are sold and cut.
 *
 * @param perBox tiles in a box; 1 when sold singly
 * @param attic share of the floor's tiles kept for repairs, 0 to 1
 * @param kerf width the saw takes
 * @param turnable whether a tile may be turned, so that an offcut can serve the opposite wall; false for a grain or veining
 *     that must run one way
 */
public record TileSupply(int perBox, Quantity<Dimensionless> attic, Quantity<Length> kerf, boolean turnable) {

    /** Sold singly, nothing kept, a 3 mm saw (common practice, no source), turned where it helps. */
    public static final TileSupply SINGLY =
            new TileSupply(1, Amounts.of(0, Units.PERCENT), Amounts.millimetres(3), true);

    /**
     * Checks the values.
     *
     * @param perBox tiles in a box; 1 when sold singly
     * @param attic share of the floor's tiles kept for repairs, 0 to 1
     * @param kerf width the saw takes
     * @param turnable whether a tile may be turned, so that an offcut can serve the opposite wall; false for a grain or veining
     *     that must run one way
     * @throws IllegalArgumentException if the box holds less than one tile, the share is not 0 to 1, or the kerf not 0 to
     *     10 mm
     */
    public TileSupply {
        if (!(perBox >= 1 && perBox <= 10_000)) {
            throw new IllegalArgumentException("tiles per box: " + perBox + " was given; 1 to 10000 is expected");
        }
        Si.within("attic stock", attic, Units.ONE, 0, 1);
        Si.within("kerf", kerf, Units.MILLIMETRE, 0, 10);
    }
}
