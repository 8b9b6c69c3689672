package org.heatfloor.area;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.locationtech.jts.geom.Polygon;

/** A narrow place that joins wider parts of the region that keeps all clearances. Coordinates are metres. */
public final class Neck {

    private final Polygon shape;
    private final int joined;
    private final double narrowerThanMetres;

    Neck(Polygon shape, int joined, double narrowerThanMetres) {
        this.shape = shape;
        this.joined = joined;
        this.narrowerThanMetres = narrowerThanMetres;
    }

    /**
     * Its shape.
     *
     * @return a copy, in metres
     */
    public Polygon shape() {
        return (Polygon) shape.copy();
    }

    /**
     * How many wider parts it joins.
     *
     * @return 2 or more
     */
    public int joinedParts() {
        return joined;
    }

    /**
     * The width it falls short of.
     *
     * @return the width asked about
     */
    public Quantity<Length> narrowerThan() {
        return Amounts.metres(narrowerThanMetres);
    }
}
