package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateFilter;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.precision.GeometryPrecisionReducer;

/**
 * The covered floor in metres, on a grid of one micrometre: the room less columns and shower trays, parted along movement
 * joints.
 */
final class FloorRegions {

    /** One micrometre: the grid every take-off geometry in metres lies on. */
    static final PrecisionModel GRID = new PrecisionModel(1e6);

    static final GeometryFactory FACTORY = new GeometryFactory();

    private static final double REACH_METRES = 0.002;
    private static final int QUADRANT_SEGMENTS = 24;

    private FloorRegions() {}

    /** The room less what is not covered. */
    static Geometry covered(Polygon room, List<KeepOut> keepOuts) {
        Geometry floor = GeometryPrecisionReducer.reduce(room, GRID);
        for (KeepOut keepOut : keepOuts) {
            if (keepOut.kind() == KeepOutKind.COLUMN || keepOut.kind() == KeepOutKind.SHOWER_TRAY) {
                floor = OverlayNG.overlay(floor, outline(keepOut), OverlayNG.DIFFERENCE, GRID);
            }
        }
        return floor;
    }

    /** Lines of the movement joints, a little longer than given so that they reach the walls they end at. */
    static List<LineString> movementJoints(List<KeepOut> keepOuts) {
        List<LineString> lines = new ArrayList<>();
        for (KeepOut keepOut : keepOuts) {
            if (keepOut.kind() == KeepOutKind.MOVEMENT_JOINT && keepOut.shape() instanceof LineString line) {
                lines.add(reached(line));
            }
        }
        return lines;
    }

    /** The covered floor parted along the lines. */
    static List<Polygon> parted(Geometry covered, List<LineString> lines) {
        if (lines.isEmpty()) {
            return polygons(covered);
        }
        Geometry net = covered.getBoundary();
        for (LineString line : lines) {
            net = OverlayNG.overlay(net, line, OverlayNG.UNION, GRID);
        }
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(net);
        List<Polygon> parts = new ArrayList<>();
        for (Object face : polygonizer.getPolygons()) {
            if (face instanceof Polygon polygon) {
                Point inside = polygon.getInteriorPoint();
                if (covered.contains(inside)) {
                    parts.add(polygon);
                }
            }
        }
        parts.sort((a, b) -> a.getEnvelopeInternal().compareTo(b.getEnvelopeInternal()));
        return parts;
    }

    /** Every polygon of a geometry; lines and points left by an overlay are dropped. */
    static List<Polygon> polygons(Geometry geometry) {
        List<Polygon> polygons = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                polygons.add(polygon);
            }
        }
        return polygons;
    }

    /** The same geometry with each coordinate rounded to a grid. */
    static Geometry onGrid(Geometry geometry, PrecisionModel grid) {
        geometry.apply((CoordinateFilter) grid::makePrecise);
        geometry.geometryChanged();
        return geometry;
    }

    static Polygon rectangle(double x0, double y0, double x1, double y1) {
        return FACTORY.createPolygon(new Coordinate[] {
            new Coordinate(x0, y0),
            new Coordinate(x1, y0),
            new Coordinate(x1, y1),
            new Coordinate(x0, y1),
            new Coordinate(x0, y0)
        });
    }

    private static Geometry outline(KeepOut keepOut) {
        Geometry shape = keepOut.shape();
        double radius = Si.in("radius", keepOut.radius(), Units.METRE);
        return radius > 0 ? shape.buffer(radius, QUADRANT_SEGMENTS) : shape;
    }

    private static LineString reached(LineString line) {
        Coordinate[] c = line.copy().getCoordinates();
        int n = c.length;
        c[0] = beyond(c[1], c[0]);
        c[n - 1] = beyond(c[n - 2], c[n - 1]);
        return FACTORY.createLineString(c);
    }

    private static Coordinate beyond(Coordinate from, Coordinate to) {
        double length = from.distance(to);
        if (!(length > 0)) {
            return to;
        }
        double f = REACH_METRES / length;
        return new Coordinate(to.x + (to.x - from.x) * f, to.y + (to.y - from.y) * f);
    }
}
