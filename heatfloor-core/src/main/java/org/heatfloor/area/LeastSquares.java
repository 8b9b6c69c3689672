package org.heatfloor.area;

import java.util.Arrays;

/**
 * Adjustment of measured distances between points of the plane by least squares (Gauss–Newton on
 * {@code Σ (d(p_i, p_j) − l)²}, all readings of equal weight). Point 0 is held, and point 1 on its bearing from point 0. All
 * lengths are metres.
 */
final class LeastSquares {

    private static final int MOST_STEPS = 60;
    private static final double CONVERGED_METRES = 1e-12;

    /** Corners that still move by more than this have found no place. */
    private static final double LOST_METRES = 1e-6;

    private final int[] from;
    private final int[] to;
    private final double[] measured;
    private final double[] x;
    private final double[] y;
    private final double[] residuals;
    private final double[] redundancies;

    LeastSquares(int[] from, int[] to, double[] measured, double[] startX, double[] startY) {
        this.from = from.clone();
        this.to = to.clone();
        this.measured = measured.clone();
        this.x = startX.clone();
        this.y = startY.clone();
        this.residuals = new double[measured.length];
        this.redundancies = new double[measured.length];
        solve();
    }

    double x(int point) {
        return x[point];
    }

    double y(int point) {
        return y[point];
    }

    /** Adjusted less measured. */
    double residual(int reading) {
        return residuals[reading];
    }

    /** The part of a misreading that shows in its own residual, 0 (unchecked) to 1. */
    double redundancy(int reading) {
        return redundancies[reading];
    }

    private void solve() {
        int unknowns = 2 * x.length - 3;
        double[][] inverse = new double[unknowns][unknowns];
        double largest = Double.POSITIVE_INFINITY;
        for (int step = 0; step < MOST_STEPS && largest >= CONVERGED_METRES; step++) {
            double[][] normal = new double[unknowns][unknowns];
            double[] right = new double[unknowns];
            for (int k = 0; k < measured.length; k++) {
                double[] row = row(k, unknowns);
                double misfit = measured[k] - distance(k);
                for (int i = 0; i < unknowns; i++) {
                    right[i] += row[i] * misfit;
                    for (int j = 0; j < unknowns; j++) {
                        normal[i][j] += row[i] * row[j];
                    }
                }
            }
            inverse = inverse(normal);
            largest = 0;
            for (int i = 0; i < unknowns; i++) {
                double change = 0;
                for (int j = 0; j < unknowns; j++) {
                    change += inverse[i][j] * right[j];
                }
                move(i, change);
                largest = Math.max(largest, Math.abs(change));
            }
        }
        if (!(largest <= LOST_METRES)) {
            throw new IllegalArgumentException("walls and diagonals: the readings contradict each other so much that no"
                    + " shape fits them; measure again");
        }
        for (int k = 0; k < measured.length; k++) {
            residuals[k] = distance(k) - measured[k];
            double[] row = row(k, unknowns);
            double hat = 0;
            for (int i = 0; i < unknowns; i++) {
                for (int j = 0; j < unknowns; j++) {
                    hat += row[i] * inverse[i][j] * row[j];
                }
            }
            redundancies[k] = Math.max(0, 1 - hat);
        }
    }

    /** Unknown 0 is point 1 along its bearing; then x and y of point 2 and so on. */
    private double[] row(int reading, int unknowns) {
        double[] row = new double[unknowns];
        double length = distance(reading);
        double ux = (x[to[reading]] - x[from[reading]]) / length;
        double uy = (y[to[reading]] - y[from[reading]]) / length;
        put(row, to[reading], ux, uy);
        put(row, from[reading], -ux, -uy);
        return row;
    }

    private void put(double[] row, int point, double ux, double uy) {
        if (point == 1) {
            double length = Math.hypot(x[1] - x[0], y[1] - y[0]);
            row[0] += (ux * (x[1] - x[0]) + uy * (y[1] - y[0])) / length;
        } else if (point > 1) {
            row[2 * point - 3] += ux;
            row[2 * point - 2] += uy;
        }
    }

    private void move(int unknown, double change) {
        if (unknown == 0) {
            double length = Math.hypot(x[1] - x[0], y[1] - y[0]);
            double share = change / length;
            double dx = (x[1] - x[0]) * share;
            double dy = (y[1] - y[0]) * share;
            x[1] += dx;
            y[1] += dy;
        } else if (unknown % 2 == 1) {
            x[(unknown + 3) / 2] += change;
        } else {
            y[(unknown + 2) / 2] += change;
        }
    }

    private double distance(int reading) {
        return Math.hypot(x[to[reading]] - x[from[reading]], y[to[reading]] - y[from[reading]]);
    }

    /** Gauss–Jordan with the largest pivot. */
    private static double[][] inverse(double[][] matrix) {
        int n = matrix.length;
        double[][] a = new double[n][2 * n];
        for (int i = 0; i < n; i++) {
            a[i] = Arrays.copyOf(matrix[i], 2 * n);
            a[i][n + i] = 1;
        }
        for (int c = 0; c < n; c++) {
            int pivot = c;
            for (int r = c + 1; r < n; r++) {
                if (Math.abs(a[r][c]) > Math.abs(a[pivot][c])) {
                    pivot = r;
                }
            }
            double[] swap = a[c];
            a[c] = a[pivot];
            a[pivot] = swap;
            if (!(Math.abs(a[c][c]) > 1e-12)) {
                throw new IllegalArgumentException(
                        "walls and diagonals: a corner lies on the line of the two it was measured from, so it cannot be"
                                + " placed; a diagonal that meets it at an angle is expected");
            }
            double divisor = a[c][c];
            for (int k = 0; k < 2 * n; k++) {
                a[c][k] /= divisor;
            }
            for (int r = 0; r < n; r++) {
                double factor = a[r][c];
                if (r != c && factor != 0) {
                    for (int k = 0; k < 2 * n; k++) {
                        a[r][k] -= factor * a[c][k];
                    }
                }
            }
        }
        double[][] out = new double[n][];
        for (int i = 0; i < n; i++) {
            out[i] = Arrays.copyOfRange(a[i], n, 2 * n);
        }
        return out;
    }
}
