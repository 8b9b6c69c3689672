package org.heatfloor.takeoff;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.TemperatureCoefficient;
import org.heatfloor.quantity.TemperatureDifference;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/**
 * The joints that are not grouted: along walls and columns (ANSI A108.02, 4.4.1), and across the field. Sealant is half as
 * deep as the joint is wide and at least 1/8 in (Building Design and Construction Handbook, after the older tile handbook).
 *
 * @param perimeter length along walls and columns, also the length of edge strip
 * @param movement length of the movement joints in the field
 * @param sealant volume to fill both
 */
public record SoftJoints(Quantity<Length> perimeter, Quantity<Length> movement, Quantity<Volume> sealant) {

    private static final double LEAST_DEPTH_METRES = 0.0254 / 8;

    static SoftJoints of(Geometry covered, List<LineString> movementJoints, LayoutRule rule) {
        double perimeter = covered.getBoundary().getLength();
        double movement = movementJoints.stream()
                .mapToDouble(line -> OverlayNG.overlay(covered, line, OverlayNG.INTERSECTION, FloorRegions.GRID)
                        .getLength())
                .sum();
        double gap = Si.in("perimeter gap", rule.perimeterGap(), Units.METRE);
        double width = Si.in("movement joint", rule.movementJoint(), Units.METRE);
        double sealant = perimeter * gap * depth(gap) + movement * width * depth(width);
        return new SoftJoints(
                Amounts.metres(perimeter), Amounts.metres(movement), Amounts.of(sealant * 1000, Units.LITRE));
    }

    private static double depth(double widthMetres) {
        return widthMetres > 0 ? Math.max(LEAST_DEPTH_METRES, widthMetres / 2) : 0;
    }

    /**
     * Free thermal movement of a bay: expansion coefficient times length times change of temperature.
     *
     * @param expansion of the covering or its base
     * @param length of the bay
     * @param change of its temperature
     * @return the movement
     */
    public static Quantity<Length> movement(
            Quantity<TemperatureCoefficient> expansion,
            Quantity<Length> length,
            Quantity<TemperatureDifference> change) {
        return Amounts.metres(Si.notNegative("expansion coefficient", expansion, Units.ONE_PER_KELVIN)
                * Si.notNegative("bay length", length, Units.METRE)
                * Si.notNegative("temperature change", change, Units.KELVIN_DIFFERENCE));
    }

    /**
     * Least width of a joint whose sealant follows a movement: the movement over the share of its width the sealant takes.
     *
     * @param movement of the joint
     * @param capability share of its width the sealant takes, above 0 and at most 1; 25 % is common
     * @return the width
     * @throws IllegalArgumentException if a value is out of range
     */
    public static Quantity<Length> width(Quantity<Length> movement, Quantity<Dimensionless> capability) {
        Si.positive("sealant capability", capability, Units.ONE);
        double share = Si.within("sealant capability", capability, Units.ONE, 0, 1);
        return Amounts.metres(Si.notNegative("movement", movement, Units.METRE) / share);
    }

    /**
     * Width of an exterior joint: 3/8 in at 8 ft, 1/2 in at 12 ft, and 1/16 in more for every 15 °F, or part of it, of the
     * yearly range above 100 °F (TCNA Handbook, EJ171).
     *
     * @param spacing of the joints, at most 12 ft
     * @param yearlyRange of the surface temperature
     * @return the width
     * @throws IllegalArgumentException if the spacing is above 12 ft
     */
    public static Quantity<Length> exteriorWidth(
            Quantity<Length> spacing, Quantity<TemperatureDifference> yearlyRange) {
        double feet = Si.within("exterior joint spacing", spacing, Units.FOOT, 0, 12 + 1e-9);
        double range = Si.notNegative("yearly range", yearlyRange, Units.FAHRENHEIT_DIFFERENCE);
        double steps = Math.ceil(Math.max(0, range - 100) / 15 - 1e-9);
        return Amounts.inches((feet <= 8 + 1e-9 ? 3.0 / 8 : 1.0 / 2) + steps / 16);
    }
}
