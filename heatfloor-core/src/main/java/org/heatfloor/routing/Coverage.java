package org.heatfloor.routing;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/** How far the free junctions lie from the cable: an exact Euclidean distance transform. */
final class Coverage {

    private static final double COOL = 0.75;

    private Coverage() {}

    /**
     * Share of the free junctions farther from the heated ones than a limit, the greatest distance, and the share farther
     * than three quarters of the limit.
     *
     * @param lattice the part of the floor
     * @param heated junctions on the cable
     * @param limit in pitches
     * @return the share, then the greatest distance in pitches, then the share beyond three quarters
     */
    static double[] measure(Lattice lattice, boolean[] heated, double limit) {
        return measure(lattice, heated, v -> limit);
    }

    /**
     * The same with a limit of its own at every junction.
     *
     * @param lattice the part of the floor
     * @param heated junctions on the cable
     * @param limits in pitches, by the number of the junction
     * @return the share, then the greatest distance in pitches, then the share beyond three quarters
     */
    static double[] measure(Lattice lattice, boolean[] heated, IntToDoubleFunction limits) {
        double[] squared = squaredDistances(lattice.width, lattice.height, heated);
        int cold = 0;
        int cool = 0;
        double greatest = 0;
        for (int v = 0; v < squared.length; v++) {
            if (lattice.free[v]) {
                double limit = limits.applyAsDouble(v);
                cold += squared[v] > limit * limit + 1e-9 ? 1 : 0;
                cool += squared[v] > COOL * COOL * limit * limit + 1e-9 ? 1 : 0;
                greatest = Math.max(greatest, squared[v]);
            }
        }
        double nodes = Math.max(1, lattice.nodes());
        return new double[] {cold / nodes, Math.sqrt(greatest), cool / nodes};
    }

    /** Column scan, then the lower envelope of parabolas along each row (Felzenszwalb and Huttenlocher 2012, from memory). */
    static double[] squaredDistances(int width, int height, boolean[] seeds) {
        double far = 4.0 * (width + height) * (width + height);
        double[] column = new double[width * height];
        for (int x = 0; x < width; x++) {
            double gap = width + height;
            for (int y = 0; y < height; y++) {
                gap = seeds[y * width + x] ? 0 : gap + 1;
                column[y * width + x] = gap;
            }
            gap = width + height;
            for (int y = height - 1; y >= 0; y--) {
                gap = seeds[y * width + x] ? 0 : gap + 1;
                column[y * width + x] = Math.min(column[y * width + x], gap);
            }
        }
        double[] out = new double[width * height];
        int[] hull = new int[width];
        double[] from = new double[width + 1];
        for (int y = 0; y < height; y++) {
            int top = -1;
            for (int x = 0; x < width; x++) {
                double f = Math.min(far, column[y * width + x] * column[y * width + x]);
                double at = Double.NEGATIVE_INFINITY;
                while (top >= 0) {
                    int h = hull[top];
                    double g = Math.min(far, column[y * width + h] * column[y * width + h]);
                    at = (f + (double) x * x - g - (double) h * h) / (2.0 * (x - h));
                    if (at > from[top]) {
                        break;
                    }
                    top--;
                    at = Double.NEGATIVE_INFINITY;
                }
                hull[++top] = x;
                from[top] = at;
            }
            int k = 0;
            for (int x = 0; x < width; x++) {
                while (k < top && from[k + 1] <= x) {
                    k++;
                }
                double f = Math.min(far, column[y * width + hull[k]] * column[y * width + hull[k]]);
                out[y * width + x] = f + (double) (x - hull[k]) * (x - hull[k]);
            }
        }
        Arrays.fill(hull, 0);
        return out;
    }
}
