package org.heatfloor.takeoff;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * A tile and how it is laid.
 *
 * @param length of the face; rows run along it
 * @param width of the face
 * @param thickness of the tile
 * @param joint width of the grout joint
 * @param pattern how the rows lie to each other
 * @param waste share added to the tiles the layout uses, for breakage and spoilt cuts; the cuts themselves are counted
 * @param supply how tiles are sold and cut
 * @param accuracy how true the tiles are
 */
public record TileSpec(
        Quantity<Length> length,
        Quantity<Length> width,
        Quantity<Length> thickness,
        Quantity<Length> joint,
        TilePattern pattern,
        Quantity<Dimensionless> waste,
        TileSupply supply,
        TileAccuracy accuracy) {

    /**
     * Checks the values.
     *
     * @param length of the face; rows run along it
     * @param width of the face
     * @param thickness of the tile
     * @param joint width of the grout joint
     * @param pattern how the rows lie to each other
     * @param waste share added to the tiles the layout uses, for breakage and spoilt cuts; the cuts themselves are counted
     * @param supply how tiles are sold and cut
     * @param accuracy how true the tiles are
     * @throws IllegalArgumentException if a side is not 5 mm to 4 m, the thickness not above 0 and at most 100 mm, the joint
     *     not 0 or more and narrower than the tile, or the waste not 0 to 1
     */
    public TileSpec {
        double l = Si.within("tile length", length, Units.MILLIMETRE, 5, 4_000);
        double w = Si.within("tile width", width, Units.MILLIMETRE, 5, 4_000);
        Si.positive("tile thickness", thickness, Units.MILLIMETRE);
        Si.within("tile thickness", thickness, Units.MILLIMETRE, 0, 100);
        double j = Si.notNegative("tile joint", joint, Units.MILLIMETRE);
        if (!(j < Math.min(l, w))) {
            throw new IllegalArgumentException("tile joint: " + joint
                    + " was given; less than the tile's shorter side of " + (l < w ? length : width) + " is expected");
        }
        Objects.requireNonNull(pattern, "pattern");
        Si.within("tile waste", waste, Units.ONE, 0, 1);
        Objects.requireNonNull(supply, "supply");
        Objects.requireNonNull(accuracy, "accuracy");
    }

    /**
     * A tile sold singly and true to size.
     *
     * @param length of the face; rows run along it
     * @param width of the face
     * @param thickness of the tile
     * @param joint width of the grout joint
     * @param pattern how the rows lie to each other
     * @param waste share added to the tiles the layout uses
     * @return the tile
     * @throws IllegalArgumentException as for the constructor
     */
    public static TileSpec of(
            Quantity<Length> length,
            Quantity<Length> width,
            Quantity<Length> thickness,
            Quantity<Length> joint,
            TilePattern pattern,
            Quantity<Dimensionless> waste) {
        return new TileSpec(length, width, thickness, joint, pattern, waste, TileSupply.SINGLY, TileAccuracy.TRUE);
    }

    /**
     * The same tile, sold and cut another way.
     *
     * @param sold how it is sold and cut
     * @return a copy
     */
    public TileSpec withSupply(TileSupply sold) {
        return new TileSpec(length, width, thickness, joint, pattern, waste, sold, accuracy);
    }

    /**
     * The same tile as measured.
     *
     * @param measured how true the tiles are
     * @return a copy
     */
    public TileSpec withAccuracy(TileAccuracy measured) {
        return new TileSpec(length, width, thickness, joint, pattern, waste, supply, measured);
    }

    /**
     * Tiles in one square metre of an endless field, joints included: one over the area of a tile and its joints. Derived
     * geometry.
     *
     * @return the count, not rounded
     */
    public double perSquareMetre() {
        return 1 / ((lengthMetres() + jointMetres()) * (widthMetres() + jointMetres()));
    }

    /**
     * An area with the waste share added.
     *
     * @param area to tile
     * @return the area to buy, not rounded
     * @throws IllegalArgumentException if the area is negative
     */
    public Quantity<Area> withWaste(Quantity<Area> area) {
        return Amounts.squareMetres(
                Si.notNegative("tiled area", area, Units.SQUARE_METRE) * (1 + Si.in("waste", waste, Units.ONE)));
    }

    /**
     * The estimator's count, from area alone: area plus the waste share over the area of a tile's face, rounded up. It knows
     * nothing of cuts; {@link TileLayout} counts them.
     *
     * @param area to tile
     * @return the count
     * @throws IllegalArgumentException if the area is negative or would take more than a thousand million tiles
     */
    public int countByArea(Quantity<Area> area) {
        double exact = Si.in("area", withWaste(area), Units.SQUARE_METRE) / (lengthMetres() * widthMetres());
        if (!(exact <= 1e9)) {
            throw new IllegalArgumentException(
                    "tiled area: " + area + " was given; an area of at most a thousand million tiles is expected");
        }
        return (int) Math.ceil(exact - 1e-9);
    }

    double lengthMetres() {
        return Si.in("tile length", length, Units.METRE);
    }

    double widthMetres() {
        return Si.in("tile width", width, Units.METRE);
    }

    double jointMetres() {
        return Si.in("tile joint", joint, Units.METRE);
    }
}
