package org.heatfloor.thermal;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;

/**
 * One lateral mode of the layers in time. Finite volumes through the depth, nodes on every interface, on both faces and
 * in the cable's plane, give {@code C·dT/dt = −K·T + s}; its eigenvectors solve it exactly in time, so there is no time
 * step. Temperatures are rises over a reference.
 */
final class ThermalColumn {

    /** Nodes a layer gets at least, and the greatest step in metres. */
    private static final int LEAST_CELLS = 4;

    private static final double LONGEST_CELL = 0.001;
    private static final int MOST_CELLS = 40;
    /** Thinner than this, m, is no layer at all. */
    private static final double NO_DEPTH = 1e-9;

    private final double[] rate;
    private final double[][] vector;
    private final double[] rootCapacity;
    private final int plane;
    private final double filmTop;
    private final double filmBelow;

    private ThermalColumn(
            double[] rate, double[][] vector, double[] rootCapacity, int plane, double filmTop, double filmBelow) {
        this.rate = rate;
        this.vector = vector;
        this.rootCapacity = rootCapacity;
        this.plane = plane;
        this.filmTop = filmTop;
        this.filmBelow = filmBelow;
    }

    static ThermalColumn of(LayerStack stack, double axisHeight, double filmTop, double filmBelow, double beta) {
        Mesh mesh = new Mesh(beta);
        int plane = 0;
        for (int i = 0; i < stack.size(); i++) {
            double k = stack.conductivity[i];
            double heat = stack.volumetricHeat[i];
            if (i == stack.heated) {
                mesh.layer(stack.thicknessMetres[i] - axisHeight, k, heat);
                plane = mesh.last();
                mesh.layer(axisHeight, k, heat);
            } else {
                mesh.layer(stack.thicknessMetres[i], k, heat);
            }
            if (i < stack.size() - 1 && stack.contact[i] > 0) {
                mesh.contact(stack.contact[i]);
            }
        }
        int n = mesh.last() + 1;
        double[] rootCapacity = new double[n];
        double[] main = new double[n];
        double[] beside = new double[n - 1];
        for (int i = 0; i < n; i++) {
            rootCapacity[i] = Math.sqrt(mesh.capacity.get(i));
            double sum = mesh.sideways.get(i)
                    + (i == 0 ? filmTop : mesh.link.get(i - 1))
                    + (i == n - 1 ? filmBelow : mesh.link.get(i));
            main[i] = sum / mesh.capacity.get(i);
        }
        for (int i = 0; i + 1 < n; i++) {
            beside[i] = -mesh.link.get(i) / (rootCapacity[i] * rootCapacity[i + 1]);
        }
        EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(main, beside);
        RealMatrix v = eigen.getV();
        double[][] vector = new double[n][n];
        for (int e = 0; e < n; e++) {
            vector[e] = v.getColumn(e);
        }
        return new ThermalColumn(eigen.getEigenvalues(), vector, rootCapacity, plane, filmTop, filmBelow);
    }

    /** Nodes, capacities and links from the top down. */
    private static final class Mesh {
        final List<Double> capacity = new ArrayList<>(List.of(0.0));
        final List<Double> sideways = new ArrayList<>(List.of(0.0));
        final List<Double> link = new ArrayList<>();
        final double beta;

        Mesh(double beta) {
            this.beta = beta;
        }

        int last() {
            return capacity.size() - 1;
        }

        void layer(double thickness, double conductivity, double volumetricHeat) {
            if (!(thickness > NO_DEPTH)) {
                return;
            }
            int cells = (int) Math.min(MOST_CELLS, Math.max(LEAST_CELLS, Math.ceil(thickness / LONGEST_CELL)));
            double step = thickness / cells;
            for (int c = 0; c < cells; c++) {
                addHalf(last(), step, conductivity, volumetricHeat);
                capacity.add(0.0);
                sideways.add(0.0);
                link.add(conductivity / step);
                addHalf(last(), step, conductivity, volumetricHeat);
            }
        }

        void contact(double resistance) {
            capacity.add(0.0);
            sideways.add(0.0);
            link.add(1 / resistance);
        }

        private void addHalf(int node, double step, double conductivity, double volumetricHeat) {
            capacity.set(node, capacity.get(node) + step / 2 * volumetricHeat);
            sideways.set(node, sideways.get(node) + step / 2 * conductivity * beta * beta);
        }
    }

    /** All nodes at one rise. */
    double[] uniform(double rise) {
        double[] state = new double[rate.length];
        for (int e = 0; e < rate.length; e++) {
            double sum = 0;
            for (int i = 0; i < rootCapacity.length; i++) {
                sum += vector[e][i] * rootCapacity[i];
            }
            state[e] = sum * rise;
        }
        return state;
    }

    /** The steady state for a flux in the cable's plane, the ambient's rise above and the rise below. */
    double[] steady(double flux, double ambientRise, double belowRise) {
        int n = rate.length;
        double[] state = new double[n];
        for (int e = 0; e < n; e++) {
            double drive = vector[e][plane] / rootCapacity[plane] * flux
                    + vector[e][0] / rootCapacity[0] * filmTop * ambientRise
                    + vector[e][n - 1] / rootCapacity[n - 1] * filmBelow * belowRise;
            state[e] = drive / rate[e];
        }
        return state;
    }

    /** What a flux at the surface adds to a steady state, a W/m². */
    double[] steadyOfSurface() {
        double[] state = new double[rate.length];
        for (int e = 0; e < rate.length; e++) {
            state[e] = vector[e][0] / rootCapacity[0] / rate[e];
        }
        return state;
    }

    /** The state some seconds later, on the way from one state to a steady one. */
    double[] after(double[] state, double[] steady, double seconds) {
        double[] later = new double[state.length];
        for (int e = 0; e < state.length; e++) {
            later[e] = steady[e] + (state[e] - steady[e]) * Math.exp(-rate[e] * seconds);
        }
        return later;
    }

    double surface(double[] state) {
        return node(state, 0);
    }

    double plane(double[] state) {
        return node(state, plane);
    }

    /** Slowest time constant, s. */
    double slowestSeconds() {
        double least = Double.MAX_VALUE;
        for (double r : rate) {
            least = Math.min(least, r);
        }
        return 1 / least;
    }

    /** Factors by which the distance to a steady state shrinks in some seconds. */
    double[] decay(double seconds) {
        double[] factor = new double[rate.length];
        for (int e = 0; e < rate.length; e++) {
            factor[e] = Math.exp(-rate[e] * seconds);
        }
        return factor;
    }

    /** Moves a state towards a steady one by such factors, in place. */
    static void approach(double[] state, double[] steady, double[] decay) {
        for (int e = 0; e < state.length; e++) {
            state[e] = steady[e] + (state[e] - steady[e]) * decay[e];
        }
    }

    /** Two states added, the second so many times. */
    static double[] sum(double[] state, double factor, double[] other) {
        double[] sum = state.clone();
        for (int e = 0; e < sum.length; e++) {
            sum[e] += factor * other[e];
        }
        return sum;
    }

    /** Number of nodes from the surface down. */
    int nodes() {
        return rootCapacity.length;
    }

    double node(double[] state, int node) {
        double sum = 0;
        for (int e = 0; e < state.length; e++) {
            sum += vector[e][node] * state[e];
        }
        return sum / rootCapacity[node];
    }
}
