package org.heatfloor.routing;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * How near a drawn line comes to itself when points close together <em>along</em> it do not count. For two segments the
 * squared distance is convex in the two places along the line and the condition on them is a half plane, so the least
 * distance is either that of the segments themselves or lies on the edge of the half plane, where it is the least of a
 * quadratic: no sampling, no segment left out.
 */
final class DrawnSeparation {

    private static final double TOUCH_METRES = 1e-9;

    /**
     * The nearest two places.
     *
     * @param metres their distance; infinite where no two places count
     * @param at the first of them
     */
    record Nearest(double metres, Coordinate at) {
        static final Nearest NONE = new Nearest(Double.POSITIVE_INFINITY, new Coordinate());
    }

    private DrawnSeparation() {}

    /** Least distance of two places on a line at least a gap apart along it. */
    static Nearest within(DrawnLine line, double gapMetres) {
        if (line.length() < gapMetres) {
            return Nearest.NONE;
        }
        return search(line, 0, line.segments(), 0, line.segments(), gapMetres, gapMetres);
    }

    /**
     * Least distance between the first segments of a line and the rest, of places at least a gap apart along it; only
     * distances up to a reach are looked for.
     */
    static Nearest between(DrawnLine line, int firstSegments, double gapMetres, double reachMetres) {
        return search(line, 0, firstSegments, firstSegments, line.segments(), gapMetres, reachMetres);
    }

    private static Nearest search(
            DrawnLine line, int fromA, int toA, int fromB, int toB, double gapMetres, double reachMetres) {
        STRtree tree = index(line, fromB, toB);
        Nearest best = Nearest.NONE;
        double least = reachMetres * (1 + 1e-12) + 1e-12;
        for (int i = fromA; i < toA; i++) {
            Envelope wanted = envelope(line, i);
            wanted.expandBy(least);
            for (int j : hits(tree, wanted)) {
                if (j < i || line.along(j + 1) - line.along(i) < gapMetres) {
                    continue;
                }
                double distance = distance(line, i, j, gapMetres);
                if (distance < least) {
                    least = distance;
                    best = new Nearest(distance, line.point(j));
                }
            }
        }
        return best;
    }

    /** A place where segments that do not follow one another meet. */
    static Optional<Coordinate> crossing(DrawnLine line) {
        return crossing(line, 0, line.segments(), 0, line.segments());
    }

    /** A place where the first segments of a line meet the rest, the joint between them excepted. */
    static Optional<Coordinate> crossing(DrawnLine line, int firstSegments) {
        return crossing(line, 0, firstSegments, firstSegments, line.segments());
    }

    private static Optional<Coordinate> crossing(DrawnLine line, int fromA, int toA, int fromB, int toB) {
        STRtree tree = index(line, fromB, toB);
        for (int i = fromA; i < toA; i++) {
            Envelope wanted = envelope(line, i);
            wanted.expandBy(TOUCH_METRES);
            for (int j : hits(tree, wanted)) {
                if (j >= i + 2 && distance(line, i, j, 0) <= TOUCH_METRES) {
                    return Optional.of(line.point(j));
                }
            }
        }
        return Optional.empty();
    }

    private static STRtree index(DrawnLine line, int from, int to) {
        STRtree tree = new STRtree();
        for (int i = from; i < to; i++) {
            tree.insert(envelope(line, i), i);
        }
        tree.build();
        return tree;
    }

    @SuppressWarnings("unchecked")
    private static List<Integer> hits(STRtree tree, Envelope wanted) {
        return tree.query(wanted);
    }

    private static Envelope envelope(DrawnLine line, int segment) {
        return new Envelope(line.x(segment), line.x(segment + 1), line.y(segment), line.y(segment + 1));
    }

    /** Least distance of segments i ≤ j over places a on i and b on j with b − a at least the gap; infinite if none. */
    static double distance(DrawnLine line, int i, int j, double gapMetres) {
        double li = line.length(i);
        double lj = line.length(j);
        double ux = (line.x(i + 1) - line.x(i)) / li;
        double uy = (line.y(i + 1) - line.y(i)) / li;
        double vx = (line.x(j + 1) - line.x(j)) / lj;
        double vy = (line.y(j + 1) - line.y(j)) / lj;
        double wx = line.x(i) - line.x(j);
        double wy = line.y(i) - line.y(j);
        if (i != j) {
            double b = ux * vx + uy * vy;
            double c = ux * wx + uy * wy;
            double f = vx * wx + vy * wy;
            double denominator = 1 - b * b;
            double s = denominator > 1e-14 ? clamp((b * f - c) / denominator, li) : 0;
            double t = clamp(b * s + f, lj);
            s = clamp(b * t - c, li);
            if (line.along(j) + t - (line.along(i) + s) >= gapMetres) {
                return Math.hypot(wx + s * ux - t * vx, wy + s * uy - t * vy);
            }
        }
        double start = line.along(j) - line.along(i);
        double from = Math.max(0, start - gapMetres);
        double to = Math.min(li, start + lj - gapMetres);
        if (from > to) {
            return Double.POSITIVE_INFINITY;
        }
        double t0 = from + gapMetres - start;
        double px = wx + from * ux - t0 * vx;
        double py = wy + from * uy - t0 * vy;
        double dx = ux - vx;
        double dy = uy - vy;
        double square = dx * dx + dy * dy;
        double step = square > 1e-24 ? clamp(-(px * dx + py * dy) / square, to - from) : 0;
        return Math.hypot(px + step * dx, py + step * dy);
    }

    private static double clamp(double value, double most) {
        return Math.max(0, Math.min(most, value));
    }
}
