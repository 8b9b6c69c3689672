package org.heatfloor.examples;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;

/**
 * Dimensions along the walls, for lines that meet them slantwise: a chain beside each wall from corner to corner over the
 * places where lines meet it.
 */
final class WallChains {

    private static final double AWAY = 7;
    private static final double FROM_WALL = 3;
    private static final double TICK = 0.9;
    private static final double OVER = 0.8;
    private static final double UNDER = -Pen.TEXT - 1;
    private static final double LEAST_WALL = 8;
    private static final double ON_WALL_METRES = 0.001;
    private static final double SAME_METRES = 0.0005;

    private final Pen pen;
    private final LengthUnit unit;
    private final Polygon room;

    WallChains(Pen pen, LengthUnit unit, Polygon room) {
        this.pen = pen;
        this.unit = unit;
        this.room = room;
    }

    void draw(List<Coordinate> met) {
        Coordinate[] ring = room.getExteriorRing().getCoordinates();
        boolean isLeft = Orientation.isCCW(ring);
        for (int i = 1; i < ring.length; i++) {
            LineSegment wall = isLeft ? new LineSegment(ring[i - 1], ring[i]) : new LineSegment(ring[i], ring[i - 1]);
            if (onPaper(wall.p0, wall.p1) >= LEAST_WALL) {
                chain(wall, stops(wall, met));
            }
        }
    }

    /** Distances from the wall's first corner: both corners and every place met between them. */
    static List<Double> stops(LineSegment wall, List<Coordinate> met) {
        TreeSet<Double> all = new TreeSet<>();
        for (Coordinate at : met) {
            if (wall.distance(at) < ON_WALL_METRES) {
                all.add(wall.p0.distance(wall.closestPoint(at)));
            }
        }
        List<Double> stops = new ArrayList<>(List.of(0.0));
        for (double stop : all) {
            if (stop - stops.get(stops.size() - 1) > SAME_METRES && wall.getLength() - stop > SAME_METRES) {
                stops.add(stop);
            }
        }
        stops.add(wall.getLength());
        return stops;
    }

    /** The floor lies left of the wall, so the chain lies on its right. */
    private void chain(LineSegment wall, List<Double> stops) {
        Point2D from = pen.at(wall.p0);
        Point2D to = pen.at(wall.p1);
        double angle = Math.atan2(to.getY() - from.getY(), to.getX() - from.getX());
        double outX = -Math.sin(angle);
        double outY = Math.cos(angle);
        boolean isUpright = Math.cos(angle) > 1e-9 || (Math.abs(Math.cos(angle)) <= 1e-9 && Math.sin(angle) < 0);
        double reading = isUpright ? angle : angle + Math.PI;
        for (int i = 0; i < stops.size(); i++) {
            Point2D wallAt = pen.at(wall.pointAlong(stops.get(i) / wall.getLength()));
            double x = wallAt.getX() + AWAY * outX;
            double y = wallAt.getY() + AWAY * outY;
            pen.line(
                    wallAt.getX() + FROM_WALL * outX, wallAt.getY() + FROM_WALL * outY, x, y, LineKind.NARROW, Pen.INK);
            pen.line(x - TICK, y + TICK, x + TICK, y - TICK, LineKind.NARROW, Pen.INK);
            if (i > 0) {
                Point2D before = pen.at(wall.pointAlong(stops.get(i - 1) / wall.getLength()));
                double bx = before.getX() + AWAY * outX;
                double by = before.getY() + AWAY * outY;
                pen.line(bx, by, x, y, LineKind.NARROW, Pen.INK);
                text(Dimensions.part(stops, i, unit), new Point2D.Double(bx, by), new Point2D.Double(x, y), reading);
            }
        }
    }

    /** Over its line, or under it where the line is too short for it. */
    private void text(String text, Point2D from, Point2D to, double reading) {
        double up = Pen.width(text, Pen.TEXT) <= from.distance(to) + 1 ? OVER : UNDER;
        pen.turnedText(
                text,
                (from.getX() + to.getX()) / 2 + up * Math.sin(reading),
                (from.getY() + to.getY()) / 2 - up * Math.cos(reading),
                reading,
                Pen.TEXT,
                Pen.INK);
    }

    private double onPaper(Coordinate a, Coordinate b) {
        return pen.at(a).distance(pen.at(b));
    }
}
