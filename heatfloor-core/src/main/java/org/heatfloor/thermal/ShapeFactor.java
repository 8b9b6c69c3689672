package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * Textbook conduction shape factors a metre of cable, a pure number, {@code Q = S·k·ΔT}; a hand check on the series. Incropera,
 * Fundamentals of Heat and Mass Transfer, Table 4.1; the row also in Çengel and Holman.
 */
public final class ShapeFactor {

    private ShapeFactor() {}

    /**
     * One cable under an isothermal surface, {@code 2π/arccosh(2z/D)}.
     *
     * @param diameter {@code D}
     * @param depth of the axis, more than half the diameter
     * @return the shape factor a metre
     * @throws IllegalArgumentException if the cable is not wholly buried
     */
    public static Quantity<Dimensionless> buried(Quantity<Length> diameter, Quantity<Length> depth) {
        double d = Si.positive("diameter", diameter, Units.METRE);
        double z = Si.positive("depth", depth, Units.METRE);
        if (!(z > d / 2)) {
            throw new IllegalArgumentException(
                    "depth: " + depth + " was given; more than half of " + diameter + " is expected");
        }
        double ratio = 2 * z / d;
        return Amounts.of(2 * Math.PI / Math.log(ratio + Math.sqrt(ratio * ratio - 1)), Units.ONE);
    }

    /**
     * One cable deep under an isothermal surface, {@code 2π/ln(4z/D)}, the short form of {@link #buried}.
     *
     * @param diameter {@code D}
     * @param depth of the axis, more than 1.5 times the diameter
     * @return the shape factor a metre
     * @throws IllegalArgumentException if the cable is too shallow for the short form
     */
    public static Quantity<Dimensionless> deeplyBuried(Quantity<Length> diameter, Quantity<Length> depth) {
        double d = Si.positive("diameter", diameter, Units.METRE);
        double z = Si.positive("depth", depth, Units.METRE);
        if (!(z > 1.5 * d)) {
            throw new IllegalArgumentException(
                    "depth: " + depth + " was given; more than 1.5 times " + diameter + " is expected");
        }
        return Amounts.of(2 * Math.PI / Math.log(4 * z / d), Units.ONE);
    }

    /**
     * One cable midway between two isothermal planes, {@code 2π/ln(8z/(πD))}.
     *
     * @param diameter {@code D}
     * @param distance {@code z} of the axis from each plane, more than the diameter
     * @return the shape factor a metre
     * @throws IllegalArgumentException if the planes are too near
     */
    public static Quantity<Dimensionless> betweenPlanes(Quantity<Length> diameter, Quantity<Length> distance) {
        double d = Si.positive("diameter", diameter, Units.METRE);
        double z = Si.positive("distance", distance, Units.METRE);
        if (!(z > d)) {
            throw new IllegalArgumentException(
                    "distance: " + distance + " was given; more than " + diameter + " is expected");
        }
        return Amounts.of(2 * Math.PI / Math.log(8 * z / (Math.PI * d)), Units.ONE);
    }

    /**
     * Each of a row of equal cables under an isothermal surface, {@code 2π/ln((2w/(πD))·sinh(2πz/w))}.
     *
     * @param diameter {@code D}
     * @param spacing {@code w}, more than 1.5 D
     * @param depth {@code z} of the axes, more than half the diameter
     * @return the shape factor a metre of one cable
     * @throws IllegalArgumentException if the cables are too near each other or not buried
     */
    public static Quantity<Dimensionless> row(
            Quantity<Length> diameter, Quantity<Length> spacing, Quantity<Length> depth) {
        double d = Si.positive("diameter", diameter, Units.METRE);
        double w = Si.positive("spacing", spacing, Units.METRE);
        double z = Si.positive("depth", depth, Units.METRE);
        if (!(w > 1.5 * d && z > d / 2)) {
            throw new IllegalArgumentException("row: spacing " + spacing + " and depth " + depth
                    + " were given; more than 1.5 and 0.5 times " + diameter + " are expected");
        }
        return Amounts.of(2 * Math.PI / Math.log(2 * w / (Math.PI * d) * Math.sinh(2 * Math.PI * z / w)), Units.ONE);
    }
}
