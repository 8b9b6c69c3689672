package org.heatfloor.takeoff;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * How true the tiles are; measured on the delivered tiles.
 *
 * @param edge how the edge was made
 * @param variation largest difference between the faces' sizes
 * @param warpage how far the longest edge is out of straight
 */
public record TileAccuracy(Edge edge, Quantity<Length> variation, Quantity<Length> warpage) {

    /** A rectified tile with no measured variation or warpage. */
    public static final TileAccuracy TRUE =
            new TileAccuracy(Edge.RECTIFIED, Amounts.millimetres(0), Amounts.millimetres(0));

    /** How a tile's edge was made. */
    public enum Edge {
        /** Ground to size after firing. */
        RECTIFIED,
        /** Sorted by size after firing. */
        CALIBRATED
    }

    /**
     * Checks the values.
     *
     * @param edge how the edge was made
     * @param variation largest difference between the faces' sizes
     * @param warpage how far the longest edge is out of straight
     * @throws IllegalArgumentException if variation or warpage is not 0 to 20 mm
     */
    public TileAccuracy {
        Objects.requireNonNull(edge, "edge");
        Si.within("tile size variation", variation, Units.MILLIMETRE, 0, 20);
        Si.within("tile warpage", warpage, Units.MILLIMETRE, 0, 20);
    }
}
