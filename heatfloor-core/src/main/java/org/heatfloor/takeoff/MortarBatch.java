package org.heatfloor.takeoff;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Mass;
import org.heatfloor.quantity.Amounts;
import org.locationtech.jts.geom.Geometry;

/** One bucket of mortar and the part of the floor it is for. */
public final class MortarBatch {

    private final int number;
    private final Geometry part;
    private final double dryKilograms;
    private final double waterKilograms;
    private final int spreads;

    MortarBatch(int number, Geometry part, double dryKilograms, double waterKilograms, int spreads) {
        this.number = number;
        this.part = part;
        this.dryKilograms = dryKilograms;
        this.waterKilograms = waterKilograms;
        this.spreads = spreads;
    }

    /**
     * Its turn.
     *
     * @return 1 and up, the part farthest from the way out first
     */
    public int number() {
        return number;
    }

    /**
     * The part of the floor.
     *
     * @return a copy, in metres
     */
    public Geometry part() {
        return part.copy();
    }

    /**
     * Area of the part.
     *
     * @return the area
     */
    public Quantity<Area> area() {
        return Amounts.squareMetres(part.getArea());
    }

    /**
     * Dry mortar to mix, waste included.
     *
     * @return the mass
     */
    public Quantity<Mass> dry() {
        return Amounts.kilograms(dryKilograms);
    }

    /**
     * Mixing water.
     *
     * @return the mass
     */
    public Quantity<Mass> water() {
        return Amounts.kilograms(waterKilograms);
    }

    /**
     * In how many goes the part is combed so that none outlasts the open time.
     *
     * @return 1 or more
     */
    public int spreads() {
        return spreads;
    }
}
