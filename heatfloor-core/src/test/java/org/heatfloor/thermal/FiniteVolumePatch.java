package org.heatfloor.thermal;

import java.util.Arrays;

/**
 * Steady heat conduction in a small rectangular patch of floor in three dimensions: even cells, harmonic links, conjugate
 * gradients. Shares no code with the field. Metres; °C; z upwards.
 */
final class FiniteVolumePatch {

    private final int nx;
    private final int ny;
    private final double dx;
    private final double dy;
    private final double[] z;
    private final double[] conductivity;
    private final double[] watts;
    private double[] t = new double[0];

    /** Conductivity is one number a row of cells in z. */
    FiniteVolumePatch(double width, double height, int nx, int ny, double[] z, double[] conductivity) {
        this.nx = nx;
        this.ny = ny;
        this.dx = width / nx;
        this.dy = height / ny;
        this.z = z;
        this.conductivity = conductivity;
        this.watts = new double[nx * ny * conductivity.length];
    }

    /** Shares the heat of a path among the four columns of cells nearest to each short piece, in one row of cells. */
    void path(double[][] path, int row, double wattsPerMetre) {
        for (int s = 0; s + 1 < path.length; s++) {
            double length = Math.hypot(path[s + 1][0] - path[s][0], path[s + 1][1] - path[s][1]);
            int pieces = (int) Math.ceil(length / (dx / 8));
            for (int p = 0; p < pieces; p++) {
                double u = (p + 0.5) / pieces;
                double px = (path[s][0] + u * (path[s + 1][0] - path[s][0])) / dx - 0.5;
                double py = (path[s][1] + u * (path[s + 1][1] - path[s][1])) / dy - 0.5;
                int i = (int) Math.floor(px);
                int j = (int) Math.floor(py);
                for (int a = 0; a < 2; a++) {
                    for (int b = 0; b < 2; b++) {
                        double share = (a == 0 ? 1 - px + i : px - i) * (b == 0 ? 1 - py + j : py - j);
                        int ci = Math.max(0, Math.min(nx - 1, i + a));
                        int cj = Math.max(0, Math.min(ny - 1, j + b));
                        watts[(row * ny + cj) * nx + ci] += share * wattsPerMetre * length / pieces;
                    }
                }
            }
        }
    }

    void solve(double filmTop, double air, double filmBelow, double below) {
        int nz = conductivity.length;
        int n = nx * ny * nz;
        double[] up = new double[nz];
        double area = dx * dy;
        double[] face = new double[nz];
        for (int l = 0; l < nz; l++) {
            double dz = z[l + 1] - z[l];
            face[l] = conductivity[l] * dz;
            if (l + 1 < nz) {
                up[l] = area / (dz / 2 / conductivity[l] + (z[l + 2] - z[l + 1]) / 2 / conductivity[l + 1]);
            }
        }
        double top = area / ((z[nz] - z[nz - 1]) / 2 / conductivity[nz - 1] + 1 / filmTop);
        double bottom = area / ((z[1] - z[0]) / 2 / conductivity[0] + 1 / filmBelow);
        double[] b = watts.clone();
        double[] diagonal = new double[n];
        for (int l = 0; l < nz; l++) {
            for (int c = 0; c < nx * ny; c++) {
                int i = c % nx;
                int j = c / nx;
                double d = (i > 0 ? face[l] * dy / dx : 0)
                        + (i + 1 < nx ? face[l] * dy / dx : 0)
                        + (j > 0 ? face[l] * dx / dy : 0)
                        + (j + 1 < ny ? face[l] * dx / dy : 0)
                        + (l > 0 ? up[l - 1] : bottom)
                        + (l + 1 < nz ? up[l] : top);
                diagonal[l * nx * ny + c] = d;
                b[l * nx * ny + c] += (l == 0 ? bottom * below : 0) + (l + 1 == nz ? top * air : 0);
            }
        }
        t = new double[n];
        Arrays.fill(t, air);
        double[] r = new double[n];
        double[] q = new double[n];
        apply(t, q, diagonal, face, up);
        double rho = 0;
        double[] p = new double[n];
        for (int i = 0; i < n; i++) {
            r[i] = b[i] - q[i];
            p[i] = r[i] / diagonal[i];
            rho += r[i] * p[i];
        }
        double first = rho;
        for (int round = 0; round < 5000 && rho > 1e-16 * first; round++) {
            apply(p, q, diagonal, face, up);
            double pq = 0;
            for (int i = 0; i < n; i++) {
                pq += p[i] * q[i];
            }
            double alpha = rho / pq;
            double next = 0;
            for (int i = 0; i < n; i++) {
                t[i] += alpha * p[i];
                r[i] -= alpha * q[i];
                next += r[i] * r[i] / diagonal[i];
            }
            for (int i = 0; i < n; i++) {
                p[i] = r[i] / diagonal[i] + next / rho * p[i];
            }
            rho = next;
        }
    }

    private void apply(double[] v, double[] out, double[] diagonal, double[] face, double[] up) {
        int sheet = nx * ny;
        int nz = conductivity.length;
        for (int l = 0; l < nz; l++) {
            double gx = face[l] * dy / dx;
            double gy = face[l] * dx / dy;
            for (int j = 0; j < ny; j++) {
                for (int i = 0; i < nx; i++) {
                    int c = l * sheet + j * nx + i;
                    double sum = diagonal[c] * v[c];
                    sum -= i > 0 ? gx * v[c - 1] : 0;
                    sum -= i + 1 < nx ? gx * v[c + 1] : 0;
                    sum -= j > 0 ? gy * v[c - nx] : 0;
                    sum -= j + 1 < ny ? gy * v[c + nx] : 0;
                    sum -= l > 0 ? up[l - 1] * v[c - sheet] : 0;
                    sum -= l + 1 < nz ? up[l] * v[c + sheet] : 0;
                    out[c] = sum;
                }
            }
        }
    }

    /** Surface over a column of cells. */
    double surface(int i, int j, double filmTop, double air) {
        int last = conductivity.length - 1;
        double half = (z[last + 1] - z[last]) / 2 / conductivity[last];
        return (t[(last * ny + j) * nx + i] + filmTop * half * air) / (1 + filmTop * half);
    }

    double x(int i) {
        return (i + 0.5) * dx;
    }

    double y(int j) {
        return (j + 0.5) * dy;
    }
}
