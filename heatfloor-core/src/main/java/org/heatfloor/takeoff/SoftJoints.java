package org.heatfloor.takeoff;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
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
}
