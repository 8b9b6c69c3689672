package org.heatfloor.area;

import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** Takes foreign geometries in: copied, scaled to metres, checked. */
final class Geometries {

    /** Coordinates beyond this many metres are taken for a slip of the unit. */
    private static final double FARTHEST_METRES = 1_000;

    /** What a room's own shape is called. */
    static final String OUTLINE = "outline";

    private Geometries() {}

    static <G extends Geometry> G ofWkt(String what, String wkt, Unit<Length> unit, Class<G> kind) {
        Geometry read;
        try {
            read = new WKTReader().read(wkt);
        } catch (ParseException | IllegalArgumentException e) {
            throw new IllegalArgumentException(what + ": '" + shortened(wkt) + "' was read; Well-Known Text of a "
                    + kind.getSimpleName() + " is expected (" + shortened(String.valueOf(e.getMessage())) + ")");
        }
        if (!kind.isInstance(read)) {
            throw new IllegalArgumentException(
                    what + ": a " + read.getGeometryType() + " was read; a " + kind.getSimpleName() + " is expected");
        }
        return taken(what, kind.cast(read), unit);
    }

    @SuppressWarnings("unchecked")
    static <G extends Geometry> G taken(String what, G geometry, Unit<Length> unit) {
        if (geometry.isEmpty()) {
            throw new IllegalArgumentException(
                    what + ": an empty shape was given; a shape with coordinates is expected");
        }
        for (Coordinate c : geometry.getCoordinates()) {
            if (!Double.isFinite(c.x) || !Double.isFinite(c.y)) {
                throw new IllegalArgumentException(
                        what + ": the coordinate " + c.x + " " + c.y + " was given; finite numbers are expected");
            }
        }
        double metres = Si.in(what, Amounts.of(1, unit), Units.METRE);
        Geometry copy = AffineTransformation.scaleInstance(metres, metres).transform(geometry.copy());
        for (Coordinate c : copy.getCoordinates()) {
            if (!(Math.abs(c.x) <= FARTHEST_METRES && Math.abs(c.y) <= FARTHEST_METRES)) {
                throw new IllegalArgumentException(what + ": the coordinate " + c.x + " m " + c.y
                        + " m was given; coordinates within " + FARTHEST_METRES + " m of the origin are expected");
            }
        }
        TopologyValidationError fault = new IsValidOp(copy).getValidationError();
        if (fault != null) {
            Coordinate at = fault.getCoordinate();
            String where = at == null ? "" : " at " + written(at, metres);
            throw new IllegalArgumentException(what + ": a shape with the fault '" + fault.getMessage() + "'" + where
                    + " was given" + sides(what, copy, metres)
                    + "; a shape that does not cross or touch itself is expected");
        }
        return (G) copy;
    }

    /** Which two sides are at fault, counted from the first coordinate. */
    private static String sides(String what, Geometry shape, double metres) {
        if (!(shape instanceof Polygon polygon)) {
            return "";
        }
        boolean room = what.equals(OUTLINE);
        return Sides.of(polygon, room ? "wall" : "side", room ? "column" : "hole")
                .meeting()
                .map(m -> ", where " + m.first() + " and " + m.second() + " " + m.verb() + " near "
                        + written(m.at(), metres))
                .orElse("");
    }

    private static String written(Coordinate at, double metres) {
        return QuantityText.number(at.x / metres, 6) + " " + QuantityText.number(at.y / metres, 6);
    }

    private static String shortened(String text) {
        return text.length() <= 80 ? text : text.substring(0, 77) + "...";
    }
}
