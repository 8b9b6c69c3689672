package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Distance of a drawn line from the edge of a shape: polygon, line, or disc. */
final class DrawnClearance {

    /** Coordinates are taken as good to this. */
    static final double ROUNDING_METRES = 1e-6;

    /**
     * What was found.
     *
     * @param metres least distance drawn
     * @param allowedMetres least distance when each chord counts as farther off by its bulge
     * @param at where that is
     */
    record Least(double metres, double allowedMetres, Coordinate at) {}

    private final Geometry shape;
    private final double radiusMetres;
    private final List<Coordinate[]> edges = new ArrayList<>();

    DrawnClearance(Geometry shape, double radiusMetres) {
        this.shape = shape;
        this.radiusMetres = radiusMetres;
        for (Object component : LinearComponentExtracter.getLines(shape)) {
            edges.add(((LineString) component).getCoordinates());
        }
    }

    /** Least distance of a line to the shape's edge, from either side; to a disc it is negative inside. */
    Least toEdge(DrawnLine line) {
        double least = Double.POSITIVE_INFINITY;
        double allowed = Double.POSITIVE_INFINITY;
        int at = 0;
        for (int i = 0; i < line.segments(); i++) {
            double distance = toEdge(line, i, allowed);
            least = Math.min(least, distance);
            if (distance < allowed) {
                double withBulge = distance + DrawnBends.bulgeMetres(line, i);
                if (withBulge < allowed) {
                    allowed = withBulge;
                    at = i;
                }
            }
        }
        return new Least(least, allowed, line.point(at));
    }

    private double toEdge(DrawnLine line, int i, double needed) {
        if (shape instanceof Point centre) {
            return line.distance(i, centre.getX(), centre.getY()) - radiusMetres;
        }
        Coordinate a = line.point(i);
        Coordinate b = line.point(i + 1);
        double least = Double.POSITIVE_INFINITY;
        for (Coordinate[] edge : edges) {
            for (int j = 0; j + 1 < edge.length; j++) {
                if (apart(a, b, edge[j], edge[j + 1]) < Math.min(least, needed)) {
                    least = Math.min(least, Distance.segmentToSegment(a, b, edge[j], edge[j + 1]));
                }
            }
        }
        return least;
    }

    /** Distance of the upright boxes round two segments, which is never more than that of the segments. */
    private static double apart(Coordinate a, Coordinate b, Coordinate c, Coordinate d) {
        double x = Math.max(Math.min(a.x, b.x) - Math.max(c.x, d.x), Math.min(c.x, d.x) - Math.max(a.x, b.x));
        double y = Math.max(Math.min(a.y, b.y) - Math.max(c.y, d.y), Math.min(c.y, d.y) - Math.max(a.y, b.y));
        return Math.max(0, Math.max(x, y));
    }

    /** Whether a line runs through the shape itself, deeper than rounding; touching a polygon's edge is not through. */
    boolean isEnteredBy(DrawnLine drawn, LineString line) {
        if (shape instanceof Point) {
            return toEdge(drawn).metres < -ROUNDING_METRES;
        }
        if (shape.getDimension() == 1) {
            return shape.intersects(line);
        }
        if (!shape.intersects(line)) {
            return false;
        }
        Geometry inside = OverlayNGRobust.overlay(line, shape, OverlayNG.INTERSECTION);
        IndexedPointInAreaLocator locator = new IndexedPointInAreaLocator(shape);
        for (Object component : LinearComponentExtracter.getLines(inside)) {
            Coordinate[] points = ((LineString) component).getCoordinates();
            for (int i = 0; i + 1 < points.length; i++) {
                Coordinate middle =
                        new Coordinate((points[i].x + points[i + 1].x) / 2, (points[i].y + points[i + 1].y) / 2);
                Geometry place = shape.getFactory().createPoint(middle);
                if (locator.locate(middle) == Location.INTERIOR
                        && shape.getBoundary().distance(place) > ROUNDING_METRES) {
                    return true;
                }
            }
        }
        return false;
    }
}
