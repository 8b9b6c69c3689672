package org.heatfloor.thermal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plain checks of rings and paths; metres. */
final class RingChecks {

    private static final double NEAR = 1e-6;
    private static final double FINEST_STEP = 0.02;
    private static final int MOST_STEPS = 400;

    private RingChecks() {}

    /** A ring without repeated corners. */
    static double[][] distinct(double[][] ring) {
        List<double[]> corners = new ArrayList<>();
        for (double[] corner : ring) {
            if (corners.isEmpty() || !same(corners.get(corners.size() - 1), corner)) {
                corners.add(corner);
            }
        }
        while (corners.size() > 1 && same(corners.get(0), corners.get(corners.size() - 1))) {
            corners.remove(corners.size() - 1);
        }
        return corners.toArray(new double[0][]);
    }

    private static boolean same(double[] a, double[] b) {
        return a[0] == b[0] && a[1] == b[1];
    }

    /** Whether a ring encloses an area and neither crosses nor touches itself. */
    static boolean simple(double[][] given) {
        double[][] ring = distinct(given);
        int n = ring.length;
        if (n < 3) {
            return false;
        }
        for (int i = 0; i < n; i++) {
            double[] a = ring[i];
            double[] b = ring[(i + 1) % n];
            double[] next = ring[(i + 2) % n];
            // A corner that turns straight back.
            if (side(a, b, next) == 0 && (b[0] - a[0]) * (next[0] - b[0]) + (b[1] - a[1]) * (next[1] - b[1]) < 0) {
                return false;
            }
            for (int j = i + 2; j < n; j++) {
                if ((j + 1) % n != i && meet(a, b, ring[j], ring[(j + 1) % n])) {
                    return false;
                }
            }
        }
        return true;
    }

    private static double side(double[] a, double[] b, double[] p) {
        return Math.signum((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]));
    }

    private static boolean meet(double[] a, double[] b, double[] c, double[] d) {
        return boxes(a, b, c, d, 0) && side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0;
    }

    private static boolean boxes(double[] a, double[] b, double[] c, double[] d, double slack) {
        return Math.max(a[0], b[0]) >= Math.min(c[0], d[0]) - slack
                && Math.max(c[0], d[0]) >= Math.min(a[0], b[0]) - slack
                && Math.max(a[1], b[1]) >= Math.min(c[1], d[1]) - slack
                && Math.max(c[1], d[1]) >= Math.min(a[1], b[1]) - slack;
    }

    /** A place of a path that lies off the rings' inside by more than a micrometre; empty when there is none. */
    static Optional<double[]> leaves(List<double[][]> rings, double[][] path) {
        for (int s = 0; s + 1 < path.length; s++) {
            double[] a = path[s];
            double[] b = path[s + 1];
            List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
            for (double[][] ring : rings) {
                for (int i = 0; i < ring.length; i++) {
                    cut(a, b, ring[i], ring[(i + 1) % ring.length], cuts);
                }
            }
            cuts.sort(null);
            for (int c = 0; c < cuts.size(); c++) {
                // Every cut, and the middle between it and the next.
                for (double t : c + 1 < cuts.size()
                        ? new double[] {cuts.get(c), (cuts.get(c) + cuts.get(c + 1)) / 2}
                        : new double[] {cuts.get(c)}) {
                    double[] p = {a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])};
                    if (!inside(rings, p) && !(distance(rings, p) <= NEAR)) {
                        return Optional.of(p);
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** Where the line from a to b passes the line through an edge or one of its ends, as a share of the way. */
    private static void cut(double[] a, double[] b, double[] c, double[] d, List<Double> cuts) {
        if (!boxes(a, b, c, d, NEAR)) {
            return;
        }
        double ux = b[0] - a[0];
        double uy = b[1] - a[1];
        double vx = d[0] - c[0];
        double vy = d[1] - c[1];
        double cross = ux * vy - uy * vx;
        double length = ux * ux + uy * uy;
        add(((c[0] - a[0]) * vy - (c[1] - a[1]) * vx) / cross, cuts);
        add(((c[0] - a[0]) * ux + (c[1] - a[1]) * uy) / length, cuts);
        add(((d[0] - a[0]) * ux + (d[1] - a[1]) * uy) / length, cuts);
    }

    private static void add(double t, List<Double> cuts) {
        if (t > 0 && t < 1) {
            cuts.add(t);
        }
    }

    private static boolean inside(List<double[][]> rings, double[] p) {
        boolean in = false;
        for (double[][] ring : rings) {
            for (int i = 0; i < ring.length; i++) {
                double[] a = ring[i];
                double[] b = ring[(i + 1) % ring.length];
                if (a[1] > p[1] != b[1] > p[1] && p[0] < a[0] + (p[1] - a[1]) / (b[1] - a[1]) * (b[0] - a[0])) {
                    in = !in;
                }
            }
        }
        return in;
    }

    private static double distance(List<double[][]> rings, double[] p) {
        double least = Double.MAX_VALUE;
        for (double[][] ring : rings) {
            for (int i = 0; i < ring.length; i++) {
                double[] a = ring[i];
                double[] b = ring[(i + 1) % ring.length];
                double ux = b[0] - a[0];
                double uy = b[1] - a[1];
                double length = ux * ux + uy * uy;
                double t = length > 0 ? ((p[0] - a[0]) * ux + (p[1] - a[1]) * uy) / length : 0;
                double at = Math.max(0, Math.min(1, t));
                least = Math.min(least, Math.hypot(p[0] - a[0] - at * ux, p[1] - a[1] - at * uy));
            }
        }
        return least;
    }

    /** Whether a circle fits inside a ring, its centre sought on a net of 20 mm, coarser on rings above 8 m. */
    static boolean holdsCircle(double[][] ring, double[] box, double radius) {
        List<double[][]> rings = List.<double[][]>of(ring);
        double dx = Math.max(FINEST_STEP, (box[2] - box[0]) / MOST_STEPS);
        double dy = Math.max(FINEST_STEP, (box[3] - box[1]) / MOST_STEPS);
        for (double x = box[0] + radius; x <= box[2] - radius + dx; x += dx) {
            for (double y = box[1] + radius; y <= box[3] - radius + dy; y += dy) {
                double[] p = {x, y};
                if (inside(rings, p) && distance(rings, p) >= radius) {
                    return true;
                }
            }
        }
        return false;
    }
}
