package org.heatfloor.grid;

import java.util.Arrays;

/**
 * Parallel lines of the lattice in its own frame, each with junctions a pitch apart, and which junctions and spans of them
 * an obstacle takes. Every obstacle is an open set whose cut with a line is known in closed form, so nothing is rastered: a
 * span is taken when any point of it lies in the obstacle. All lengths are metres; {@code s} runs along a line, {@code t}
 * across.
 */
final class LineMask {

    /** Clearances may be short by this much, which is what is lost in the arithmetic. */
    static final double TOLERANCE_METRES = 1e-9;

    private final double pitch;
    private final int lines;
    private final int points;
    private final boolean[] pointTaken;
    private final boolean[] spanTaken;

    LineMask(double pitchMetres, int lines, int points) {
        this.pitch = pitchMetres;
        this.lines = lines;
        this.points = points;
        this.pointTaken = new boolean[lines * points];
        this.spanTaken = new boolean[lines * points];
    }

    boolean isPointTaken(int line, int point) {
        return pointTaken[line * points + point];
    }

    /** The span from the point to the next one; the last point of a line has none. */
    boolean isSpanTaken(int line, int point) {
        return spanTaken[line * points + point];
    }

    /** Takes every point nearer than the radius to the centre. */
    void takeDisc(double s, double t, double radius) {
        int last = lastLine(t + radius);
        for (int line = firstLine(t - radius); line <= last; line++) {
            double across = line * pitch - t;
            double square = radius * radius - across * across;
            if (square > 0) {
                double half = Math.sqrt(square);
                take(line, s - half, s + half);
            }
        }
    }

    /** Takes every point nearer than the radius to the segment: two discs and the rectangle between them. */
    void takeAround(double s0, double t0, double s1, double t1, double radius) {
        if (!(radius > 0)) {
            return;
        }
        double length = Math.hypot(s1 - s0, t1 - t0);
        if (length == 0) {
            takeDisc(s0, t0, radius);
            return;
        }
        double ns = -(t1 - t0) / length * radius;
        double nt = (s1 - s0) / length * radius;
        int last = lastLine(Math.max(t0, t1) + radius);
        for (int line = firstLine(Math.min(t0, t1) - radius); line <= last; line++) {
            double t = line * pitch;
            double from = Double.POSITIVE_INFINITY;
            double to = Double.NEGATIVE_INFINITY;
            double square0 = radius * radius - (t - t0) * (t - t0);
            if (square0 > 0) {
                double half = Math.sqrt(square0);
                from = Math.min(from, s0 - half);
                to = Math.max(to, s0 + half);
            }
            double square1 = radius * radius - (t - t1) * (t - t1);
            if (square1 > 0) {
                double half = Math.sqrt(square1);
                from = Math.min(from, s1 - half);
                to = Math.max(to, s1 + half);
            }
            if (t0 != t1) {
                for (int side = -1; side <= 1; side += 2) {
                    double share = (t - (t0 + side * nt)) / (t1 - t0);
                    if (share >= 0 && share <= 1) {
                        double s = s0 + side * ns + share * (s1 - s0);
                        from = Math.min(from, s);
                        to = Math.max(to, s);
                    }
                }
            }
            take(line, from, to);
        }
    }

    /**
     * Takes the inside of the area bounded by rings, or everything outside it. Points on the boundary stay free.
     *
     * @param rings closed rings, each as s0, t0, s1, t1, … with the first point repeated at the end
     * @param inside whether the inside is taken, else the outside
     */
    void takeArea(double[][] rings, boolean inside) {
        int crossingsMost = 0;
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (double[] ring : rings) {
            crossingsMost += ring.length / 2;
            for (int i = 1; i < ring.length; i += 2) {
                lowest = Math.min(lowest, ring[i]);
                highest = Math.max(highest, ring[i]);
            }
        }
        double[] above = new double[crossingsMost + 2];
        double[] below = new double[crossingsMost + 2];
        int first = inside ? firstLine(lowest) : 0;
        int last = inside ? lastLine(highest) : lines - 1;
        for (int line = first; line <= last; line++) {
            double t = line * pitch;
            int aboveCount = borders(rings, t + TOLERANCE_METRES, inside, above);
            int belowCount = borders(rings, t - TOLERANCE_METRES, inside, below);
            takeWhereBoth(line, above, aboveCount, below, belowCount);
        }
    }

    private void takeWhereBoth(int line, double[] a, int aCount, double[] b, int bCount) {
        int i = 0;
        int j = 0;
        while (i < aCount && j < bCount) {
            double from = Math.max(a[i], b[j]);
            double to = Math.min(a[i + 1], b[j + 1]);
            take(line, from + TOLERANCE_METRES, to - TOLERANCE_METRES);
            if (a[i + 1] < b[j + 1]) {
                i += 2;
            } else {
                j += 2;
            }
        }
    }

    /** Begin and end of every stretch of the line at t that lies inside (or outside) the rings, in order. */
    private static int borders(double[][] rings, double t, boolean inside, double[] found) {
        int count = 0;
        if (!inside) {
            found[count++] = Double.NEGATIVE_INFINITY;
        }
        for (double[] ring : rings) {
            for (int i = 0; i + 3 < ring.length; i += 2) {
                double t0 = ring[i + 1];
                double t1 = ring[i + 3];
                if ((t0 <= t) != (t1 <= t)) {
                    found[count++] = ring[i] + (t - t0) / (t1 - t0) * (ring[i + 2] - ring[i]);
                }
            }
        }
        if (!inside) {
            found[count++] = Double.POSITIVE_INFINITY;
        }
        Arrays.sort(found, 0, count);
        return count;
    }

    private void take(int line, double from, double to) {
        if (!(to > from)) {
            return;
        }
        double limit = points;
        double low = Math.max(-2, Math.min(limit, from / pitch));
        double high = Math.max(-2, Math.min(limit, to / pitch));
        int base = line * points;
        int pointLast = Math.min(points - 1, (int) Math.ceil(high) - 1);
        for (int i = Math.max(0, (int) Math.floor(low) + 1); i <= pointLast; i++) {
            pointTaken[base + i] = true;
        }
        int spanLast = Math.min(points - 2, (int) Math.ceil(high) - 1);
        for (int i = Math.max(0, (int) Math.floor(low)); i <= spanLast; i++) {
            spanTaken[base + i] = true;
        }
    }

    private int firstLine(double t) {
        return (int) Math.max(0, Math.min(lines, Math.ceil(t / pitch)));
    }

    private int lastLine(double t) {
        return (int) Math.max(-1, Math.min(lines - 1, Math.floor(t / pitch)));
    }
}
