package org.heatfloor.routing;

import java.util.Arrays;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/**
 * A drawn centre line as plain numbers: its points and their places along it, in metres. Points on top of their
 * predecessor are left out.
 */
final class DrawnLine {

    private static final double SAME_POINT_METRES = 1e-9;

    private final double[] x;
    private final double[] y;
    private final double[] along;

    private DrawnLine(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        along = new double[x.length];
        for (int i = 1; i < x.length; i++) {
            along[i] = along[i - 1] + Math.hypot(x[i] - x[i - 1], y[i] - y[i - 1]);
        }
    }

    static DrawnLine of(LineString line) {
        Coordinate[] points = line.getCoordinates();
        double[] x = new double[points.length];
        double[] y = new double[points.length];
        int n = 0;
        for (Coordinate c : points) {
            if (n == 0 || Math.hypot(c.x - x[n - 1], c.y - y[n - 1]) > SAME_POINT_METRES) {
                x[n] = c.x;
                y[n] = c.y;
                n++;
            }
        }
        return new DrawnLine(Arrays.copyOf(x, n), Arrays.copyOf(y, n));
    }

    /** This line from end to start. */
    DrawnLine reversed() {
        int n = x.length;
        double[] rx = new double[n];
        double[] ry = new double[n];
        for (int i = 0; i < n; i++) {
            rx[i] = x[n - 1 - i];
            ry[i] = y[n - 1 - i];
        }
        return new DrawnLine(rx, ry);
    }

    /** This line with another one joined to its end; the other's first point gives way to this line's last. */
    DrawnLine then(DrawnLine next) {
        int n = x.length;
        int m = next.x.length - 1;
        double[] jx = Arrays.copyOf(x, n + m);
        double[] jy = Arrays.copyOf(y, n + m);
        System.arraycopy(next.x, 1, jx, n, m);
        System.arraycopy(next.y, 1, jy, n, m);
        return new DrawnLine(jx, jy);
    }

    /** The last stretch of this line. */
    DrawnLine tail(double metres) {
        double from = Math.max(0, length() - metres);
        int first = 0;
        while (first < segments() - 1 && along[first + 1] <= from) {
            first++;
        }
        double share = (from - along[first]) / length(first);
        double[] tx = Arrays.copyOfRange(x, first, x.length);
        double[] ty = Arrays.copyOfRange(y, first, y.length);
        tx[0] += share * (x[first + 1] - x[first]);
        ty[0] += share * (y[first + 1] - y[first]);
        return new DrawnLine(tx, ty);
    }

    int points() {
        return x.length;
    }

    int segments() {
        return x.length - 1;
    }

    double x(int point) {
        return x[point];
    }

    double y(int point) {
        return y[point];
    }

    Coordinate point(int index) {
        return new Coordinate(x[index], y[index]);
    }

    /** Distance from the start of the line to a point, along it. */
    double along(int point) {
        return along[point];
    }

    double length() {
        return along[along.length - 1];
    }

    double length(int segment) {
        return along[segment + 1] - along[segment];
    }

    /** The turn at an inner point in radians, counter-clockwise positive; 0 at the ends. */
    double turn(int point) {
        if (point == 0 || point == x.length - 1) {
            return 0;
        }
        double ax = x[point] - x[point - 1];
        double ay = y[point] - y[point - 1];
        double bx = x[point + 1] - x[point];
        double by = y[point + 1] - y[point];
        return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
    }

    /** Distance of the nearest point of a segment to a place. */
    double distance(int segment, double px, double py) {
        double ux = x[segment + 1] - x[segment];
        double uy = y[segment + 1] - y[segment];
        double t = ((px - x[segment]) * ux + (py - y[segment]) * uy) / (ux * ux + uy * uy);
        double s = Math.max(0, Math.min(1, t));
        return Math.hypot(x[segment] + s * ux - px, y[segment] + s * uy - py);
    }

    /**
     * The line with points left out that lie closer than a step to the last kept one, or on a straight stretch; the ends
     * stay.
     */
    DrawnLine thinned(double stepMetres) {
        DrawnLine spaced = keptOnly(stepMetres, -1);
        return spaced.keptOnly(0, 1e-7);
    }

    private DrawnLine keptOnly(double stepMetres, double leastTurn) {
        double[] kx = new double[x.length];
        double[] ky = new double[x.length];
        int n = 0;
        for (int i = 0; i < x.length; i++) {
            boolean end = i == 0 || i == x.length - 1;
            boolean spaced = n == 0 || Math.hypot(x[i] - kx[n - 1], y[i] - ky[n - 1]) >= stepMetres;
            if (i == x.length - 1 && n > 1 && !spaced) {
                n--;
            }
            if (end || (spaced && Math.abs(turn(i)) > leastTurn)) {
                kx[n] = x[i];
                ky[n] = y[i];
                n++;
            }
        }
        return new DrawnLine(Arrays.copyOf(kx, n), Arrays.copyOf(ky, n));
    }
}
