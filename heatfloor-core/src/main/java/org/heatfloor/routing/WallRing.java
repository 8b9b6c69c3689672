package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** The walls of a ring, outer walls or a column, as one closed line with the room on its left; places on it are metres along it. */
final class WallRing {

    private static final int JUT_CHORDS = 6;

    private final Coordinate[] points;
    private final double[] at;
    final double length;

    /** The ring of walls nearest to a point: the outer walls, or those of a column. */
    static WallRing nearest(Polygon room, Coordinate c) {
        WallRing best = new WallRing(room.getExteriorRing(), true);
        for (int i = 0; i < room.getNumInteriorRing(); i++) {
            WallRing column = new WallRing(room.getInteriorRingN(i), false);
            if (column.distance(c) < best.distance(c) - 1e-9) {
                best = column;
            }
        }
        return best;
    }

    private double distance(Coordinate c) {
        return point(nearest(c)).distance(c);
    }

    private WallRing(LinearRing walls, boolean counterClockwise) {
        Coordinate[] ring = walls.copy().getCoordinates();
        if (Orientation.isCCW(ring) != counterClockwise) {
            for (int i = 0; i < ring.length / 2; i++) {
                Coordinate swap = ring[i];
                ring[i] = ring[ring.length - 1 - i];
                ring[ring.length - 1 - i] = swap;
            }
        }
        points = ring;
        at = new double[ring.length];
        for (int i = 1; i < ring.length; i++) {
            at[i] = at[i - 1] + ring[i].distance(ring[i - 1]);
        }
        length = at[ring.length - 1];
    }

    double wrap(double place) {
        double rest = place % length;
        return rest < 0 ? rest + length : rest;
    }

    private int stretch(double place) {
        int i = 1;
        while (i < points.length - 1 && at[i] < place) {
            i++;
        }
        return i;
    }

    Coordinate point(double place) {
        double p = wrap(place);
        int i = stretch(p);
        double share = (p - at[i - 1]) / (at[i] - at[i - 1]);
        return new Coordinate(
                points[i - 1].x + share * (points[i].x - points[i - 1].x),
                points[i - 1].y + share * (points[i].y - points[i - 1].y));
    }

    /** Unit normal into the room. */
    double[] inward(double place) {
        int i = stretch(wrap(place));
        double step = at[i] - at[i - 1];
        return new double[] {-(points[i].y - points[i - 1].y) / step, (points[i].x - points[i - 1].x) / step};
    }

    /** The place nearest to a point. */
    double nearest(Coordinate c) {
        double best = Double.POSITIVE_INFINITY;
        double place = 0;
        for (int i = 1; i < points.length; i++) {
            double step = at[i] - at[i - 1];
            double dx = (points[i].x - points[i - 1].x) / step;
            double dy = (points[i].y - points[i - 1].y) / step;
            double along = Math.max(0, Math.min(step, (c.x - points[i - 1].x) * dx + (c.y - points[i - 1].y) * dy));
            double off = Math.hypot(points[i - 1].x + along * dx - c.x, points[i - 1].y + along * dy - c.y);
            if (off < best - 1e-12) {
                best = off;
                place = at[i - 1] + along;
            }
        }
        return place;
    }

    /**
     * The wall from one place onwards, moved into the room, without its first and last point.
     *
     * @param from first place
     * @param along signed distance to the last place, at most once round
     * @param offset distance from the wall
     */
    List<Coordinate> corners(double from, double along, double offset) {
        List<Coordinate> out = new ArrayList<>();
        int n = points.length - 1;
        double done = 0;
        double here = wrap(from);
        int i = stretch(here);
        while (true) {
            int corner = along > 0 ? i % n : i - 1;
            double step = along > 0 ? at[i] - here : here - at[i - 1];
            done += step;
            if (done >= Math.abs(along) - 1e-9) {
                return out;
            }
            if (step > 1e-9 || !out.isEmpty()) {
                out.addAll(moved(corner, offset, along > 0));
            }
            i = along > 0 ? (i == n ? 1 : i + 1) : (i == 1 ? n : i - 1);
            here = along > 0 ? at[i - 1] : at[i];
        }
    }

    private boolean juts(int corner) {
        double[] before = inward(corner == 0 ? length - 1e-9 : at[corner] - 1e-9);
        double[] after = inward(at[corner] + 1e-9);
        return before[0] * after[1] - before[1] * after[0] < -1e-9;
    }

    /** Whether a point lies on the way round a corner that juts into the room, where rounding would cut through the wall. */
    boolean roundsCorner(Coordinate c, double offset) {
        for (int i = 0; i < points.length - 1; i++) {
            if (juts(i) && points[i].distance(c) <= offset + 1e-6) {
                return true;
            }
        }
        return false;
    }

    /** The corner moved into the room; a corner that juts into the room is rounded about, so that nothing is cut off. */
    private List<Coordinate> moved(int corner, double offset, boolean forward) {
        double[] before = inward(corner == 0 ? length - 1e-9 : at[corner] - 1e-9);
        double[] after = inward(at[corner] + 1e-9);
        Coordinate c = points[corner];
        if (!juts(corner)) {
            double scale = offset / (1 + before[0] * after[0] + before[1] * after[1]);
            return List.of(new Coordinate(c.x + (before[0] + after[0]) * scale, c.y + (before[1] + after[1]) * scale));
        }
        double turn =
                Math.atan2(before[0] * after[1] - before[1] * after[0], before[0] * after[0] + before[1] * after[1]);
        double from = Math.atan2(before[1], before[0]);
        List<Coordinate> out = new ArrayList<>();
        for (int t = 0; t <= JUT_CHORDS; t++) {
            double angle = from + turn * (forward ? t : JUT_CHORDS - t) / JUT_CHORDS;
            out.add(new Coordinate(c.x + offset * Math.cos(angle), c.y + offset * Math.sin(angle)));
        }
        return out;
    }
}
