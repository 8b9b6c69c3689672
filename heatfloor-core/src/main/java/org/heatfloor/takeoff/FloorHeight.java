package org.heatfloor.takeoff;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.grid.Membrane;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * How high the floor comes above the structural floor: bed under the membrane, membrane, bed over its studs and tile, both
 * beds after beating-in. The fill between the studs adds nothing.
 *
 * @param lowerBed bed under the membrane
 * @param membrane height of the membrane
 * @param upperBed bed between stud tops and tile
 * @param tile thickness of the tile
 */
public record FloorHeight(
        Quantity<Length> lowerBed, Quantity<Length> membrane, Quantity<Length> upperBed, Quantity<Length> tile) {

    /**
     * Checks the layers.
     *
     * @param lowerBed bed under the membrane
     * @param membrane height of the membrane
     * @param upperBed bed between stud tops and tile
     * @param tile thickness of the tile
     * @throws IllegalArgumentException if one is negative
     */
    public FloorHeight {
        Si.notNegative("lower bed", lowerBed, Units.METRE);
        Si.notNegative("membrane height", membrane, Units.METRE);
        Si.notNegative("upper bed", upperBed, Units.METRE);
        Si.notNegative("tile thickness", tile, Units.METRE);
    }

    /**
     * The height of a floor.
     *
     * @param membrane the membrane
     * @param bedding the beds
     * @param tile the tile
     * @return the height
     */
    public static FloorHeight of(Membrane membrane, Bedding bedding, TileSpec tile) {
        return new FloorHeight(bedding.lowerBed(), membrane.height(), bedding.upperBed(), tile.thickness());
    }

    /**
     * The whole height above the structural floor.
     *
     * @return the sum of the four layers
     */
    public Quantity<Length> total() {
        return Amounts.millimetres(1000 * totalMetres());
    }

    double totalMetres() {
        return Si.in("lower bed", lowerBed, Units.METRE)
                + Si.in("membrane", membrane, Units.METRE)
                + Si.in("upper bed", upperBed, Units.METRE)
                + Si.in("tile", tile, Units.METRE);
    }

    double millimetres(HeightPart part) {
        return switch (part) {
            case LOWER_BED -> Si.in("lower bed", lowerBed, Units.MILLIMETRE);
            case MEMBRANE_AND_UPPER_BED ->
                Si.in("membrane", membrane, Units.MILLIMETRE) + Si.in("upper bed", upperBed, Units.MILLIMETRE);
            case TILE -> Si.in("tile", tile, Units.MILLIMETRE);
        };
    }
}
