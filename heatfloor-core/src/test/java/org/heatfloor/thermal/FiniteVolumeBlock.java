package org.heatfloor.thermal;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;

/**
 * Steady heat conduction in a block of floor in three dimensions by finite volumes: cells between graded lines, each with a
 * conductivity of its own, harmonic links, insulated sides, films above and below, conjugate gradients with the columns
 * solved exactly as preconditioner. Shares no code with the field. Lengths in metres, temperatures in °C, z upwards.
 */
final class FiniteVolumeBlock {

    /** Conductivity at a place. */
    interface Conductivity {
        double at(double x, double y, double z);
    }

    final double[] x;
    final double[] y;
    final double[] z;
    private final int nx;
    private final int ny;
    private final int nz;
    private final double[] k;
    private final double[] watts;
    private final double[] east;
    private final double[] north;
    private final double[] up;
    private final double[] top;
    private final double[] bottom;
    private final double[] diagonal;
    private final double[] pivot;
    private double[] t = new double[0];

    /** A conductivity of 0 makes a cell void: nothing flows into it. */
    FiniteVolumeBlock(double[] x, double[] y, double[] z, Conductivity conductivity) {
        this.x = x;
        this.y = y;
        this.z = z;
        this.nx = x.length - 1;
        this.ny = y.length - 1;
        this.nz = z.length - 1;
        int n = nx * ny * nz;
        this.k = new double[n];
        this.watts = new double[n];
        this.east = new double[n];
        this.north = new double[n];
        this.up = new double[n];
        this.diagonal = new double[n];
        this.pivot = new double[n];
        this.top = new double[nx * ny];
        this.bottom = new double[nx * ny];
        for (int i = 0; i < nx; i++) {
            for (int j = 0; j < ny; j++) {
                for (int l = 0; l < nz; l++) {
                    k[at(i, j, l)] =
                            conductivity.at(FiniteVolumes.mid(x, i), FiniteVolumes.mid(y, j), FiniteVolumes.mid(z, l));
                }
            }
        }
    }

    private int at(int i, int j, int l) {
        return (i * ny + j) * nz + l;
    }

    /** Releases heat evenly in a cylinder along y; only the part inside the block counts. */
    void cylinderAlongY(double cx, double cz, double radius, double wattsPerMetre) {
        int parts = 16;
        double[] share = new double[nx * nz];
        double sum = 0;
        for (int i = 0; i < nx; i++) {
            for (int l = 0; l < nz; l++) {
                int inside = 0;
                for (int a = 0; a < parts; a++) {
                    for (int b = 0; b < parts; b++) {
                        double px = x[i] + (a + 0.5) / parts * (x[i + 1] - x[i]) - cx;
                        double pz = z[l] + (b + 0.5) / parts * (z[l + 1] - z[l]) - cz;
                        inside += px * px + pz * pz < radius * radius ? 1 : 0;
                    }
                }
                share[i * nz + l] = inside * (x[i + 1] - x[i]) * (z[l + 1] - z[l]);
                sum += share[i * nz + l];
            }
        }
        for (int i = 0; i < nx; i++) {
            for (int l = 0; l < nz; l++) {
                for (int j = 0; j < ny; j++) {
                    watts[at(i, j, l)] += wattsPerMetre * share[i * nz + l] / sum * (y[j + 1] - y[j]);
                }
            }
        }
    }

    /** Shares the heat of a path among the four columns of cells nearest to each short piece, in one row of cells. */
    void path(double[][] path, int row, double wattsPerMetre) {
        for (int s = 0; s + 1 < path.length; s++) {
            double length = Math.hypot(path[s + 1][0] - path[s][0], path[s + 1][1] - path[s][1]);
            int pieces = (int) Math.ceil(length / ((x[1] - x[0]) / 8));
            for (int p = 0; p < pieces; p++) {
                double u = (p + 0.5) / pieces;
                double px = (path[s][0] + u * (path[s + 1][0] - path[s][0]) - x[0]) / (x[1] - x[0]) - 0.5;
                double py = (path[s][1] + u * (path[s + 1][1] - path[s][1]) - y[0]) / (y[1] - y[0]) - 0.5;
                int i = (int) Math.floor(px);
                int j = (int) Math.floor(py);
                for (int a = 0; a < 2; a++) {
                    for (int b = 0; b < 2; b++) {
                        double share = (a == 0 ? 1 - px + i : px - i) * (b == 0 ? 1 - py + j : py - j);
                        int ci = Math.max(0, Math.min(nx - 1, i + a));
                        int cj = Math.max(0, Math.min(ny - 1, j + b));
                        watts[at(ci, cj, row)] += share * wattsPerMetre * length / pieces;
                    }
                }
            }
        }
    }

    void solve(DoubleBinaryOperator filmTop, double air, double filmBelow, double below) {
        int n = k.length;
        double[] b = watts.clone();
        for (int i = 0; i < nx; i++) {
            double dx = x[i + 1] - x[i];
            for (int j = 0; j < ny; j++) {
                double dy = y[j + 1] - y[j];
                for (int l = 0; l < nz; l++) {
                    double dz = z[l + 1] - z[l];
                    int c = at(i, j, l);
                    if (k[c] == 0) {
                        continue;
                    }
                    double half = 0.5 / k[c];
                    east[c] = i + 1 < nx ? link(dy * dz, dx * half, (x[i + 2] - x[i + 1]) / 2, k[at(i + 1, j, l)]) : 0;
                    north[c] = j + 1 < ny ? link(dx * dz, dy * half, (y[j + 2] - y[j + 1]) / 2, k[at(i, j + 1, l)]) : 0;
                    up[c] = l + 1 < nz ? link(dx * dy, dz * half, (z[l + 2] - z[l + 1]) / 2, k[at(i, j, l + 1)]) : 0;
                    if (l == 0 && filmBelow > 0) {
                        bottom[i * ny + j] = dx * dy / (dz * half + 1 / filmBelow);
                        b[c] += bottom[i * ny + j] * below;
                        diagonal[c] += bottom[i * ny + j];
                    }
                    if (l + 1 == nz) {
                        double film = filmTop.applyAsDouble(FiniteVolumes.mid(x, i), FiniteVolumes.mid(y, j));
                        top[i * ny + j] = dx * dy / (dz * half + 1 / film);
                        b[c] += top[i * ny + j] * air;
                        diagonal[c] += top[i * ny + j];
                    }
                    diagonal[c] += east[c]
                            + north[c]
                            + up[c]
                            + (i > 0 ? east[at(i - 1, j, l)] : 0)
                            + (j > 0 ? north[at(i, j - 1, l)] : 0)
                            + (l > 0 ? up[c - 1] : 0);
                }
            }
        }
        for (int c = 0; c < n; c++) {
            diagonal[c] = k[c] == 0 ? 1 : diagonal[c];
            pivot[c] = diagonal[c] - (c % nz > 0 ? up[c - 1] * up[c - 1] / pivot[c - 1] : 0);
        }
        conjugateGradients(b, air);
    }

    private static double link(double area, double ownHalf, double otherHalf, double other) {
        return other == 0 ? 0 : area / (ownHalf + otherHalf / other);
    }

    private void conjugateGradients(double[] b, double start) {
        int n = b.length;
        t = new double[n];
        Arrays.fill(t, start);
        double[] q = new double[n];
        double[] r = new double[n];
        double[] s = new double[n];
        double[] p = new double[n];
        apply(t, q);
        for (int c = 0; c < n; c++) {
            r[c] = k[c] == 0 ? 0 : b[c] - q[c];
        }
        columns(r, p);
        double rho = dot(r, p);
        double first = rho;
        for (int round = 0; round < 3000 && rho > 1e-16 * first; round++) {
            apply(p, q);
            double alpha = rho / dot(p, q);
            for (int c = 0; c < n; c++) {
                t[c] += alpha * p[c];
                r[c] -= alpha * q[c];
            }
            columns(r, s);
            double next = dot(r, s);
            for (int c = 0; c < n; c++) {
                p[c] = s[c] + next / rho * p[c];
            }
            rho = next;
        }
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int c = 0; c < a.length; c++) {
            sum += a[c] * b[c];
        }
        return sum;
    }

    private void columns(double[] from, double[] to) {
        for (int c = 0; c < from.length; c++) {
            to[c] = from[c] + (c % nz > 0 ? up[c - 1] / pivot[c - 1] * to[c - 1] : 0);
        }
        for (int c = from.length - 1; c >= 0; c--) {
            to[c] = (to[c] + (c % nz < nz - 1 ? up[c] * to[c + 1] : 0)) / pivot[c];
        }
    }

    private void apply(double[] v, double[] out) {
        int sx = ny * nz;
        for (int c = 0; c < v.length; c++) {
            out[c] = diagonal[c] * v[c];
        }
        for (int c = 0; c < v.length; c++) {
            if (east[c] != 0) {
                out[c] -= east[c] * v[c + sx];
                out[c + sx] -= east[c] * v[c];
            }
            if (north[c] != 0) {
                out[c] -= north[c] * v[c + nz];
                out[c + nz] -= north[c] * v[c];
            }
            if (up[c] != 0) {
                out[c] -= up[c] * v[c + 1];
                out[c + 1] -= up[c] * v[c];
            }
        }
    }

    /** Surface over a column of cells. */
    double surface(int i, int j, double film, double air) {
        int c = at(i, j, nz - 1);
        double half = (z[nz] - z[nz - 1]) / 2 / k[c];
        return (t[c] + film * half * air) / (1 + film * half);
    }

    double[] surfaceMeanMaxMin(double film, double air) {
        double area = 0;
        double sum = 0;
        double max = Double.NEGATIVE_INFINITY;
        double min = Double.POSITIVE_INFINITY;
        for (int i = 0; i < nx; i++) {
            for (int j = 0; j < ny; j++) {
                double own = (x[i + 1] - x[i]) * (y[j + 1] - y[j]);
                double surface = surface(i, j, film, air);
                area += own;
                sum += own * surface;
                max = Math.max(max, surface);
                min = Math.min(min, surface);
            }
        }
        return new double[] {sum / area, max, min};
    }

    /** Mean over a half cylinder about the edge x = 0, along all of y, bilinear between cells. */
    double circleAlongY(double cz, double radius) {
        double sum = 0;
        int points = 90;
        for (int p = 0; p < points; p++) {
            double angle = Math.PI * ((p + 0.5) / points - 0.5);
            double px = radius * Math.cos(angle);
            double pz = cz + radius * Math.sin(angle);
            int i = 0;
            while (i < nx - 2 && FiniteVolumes.mid(x, i + 1) < px) {
                i++;
            }
            int l = 0;
            while (l < nz - 2 && FiniteVolumes.mid(z, l + 1) < pz) {
                l++;
            }
            double u = Math.max(
                    0, (px - FiniteVolumes.mid(x, i)) / (FiniteVolumes.mid(x, i + 1) - FiniteVolumes.mid(x, i)));
            double v = (pz - FiniteVolumes.mid(z, l)) / (FiniteVolumes.mid(z, l + 1) - FiniteVolumes.mid(z, l));
            for (int j = 0; j < ny; j++) {
                double here = (1 - u) * ((1 - v) * t[at(i, j, l)] + v * t[at(i, j, l + 1)])
                        + u * ((1 - v) * t[at(i + 1, j, l)] + v * t[at(i + 1, j, l + 1)]);
                sum += here * (y[j + 1] - y[j]) / (y[ny] - y[0]) / points;
            }
        }
        return sum;
    }
}
