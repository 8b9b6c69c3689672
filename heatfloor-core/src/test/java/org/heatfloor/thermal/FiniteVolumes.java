package org.heatfloor.thermal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/**
 * Steady heat conduction in a plane section by finite volumes, sharing no code with the series: cells between graded lines,
 * harmonic links, a banded Cholesky solve. The heat of a cable is released in its disc. Lengths in metres, temperatures in
 * °C, y upwards from the underside.
 */
final class FiniteVolumes {

    final double[] x;
    final double[] y;
    private final double[][] k;
    private final double[][] watts;
    private double[][] t = new double[0][0];

    FiniteVolumes(double[] x, double[] y, DoubleBinaryOperator conductivity) {
        this.x = x;
        this.y = y;
        this.k = new double[x.length - 1][y.length - 1];
        this.watts = new double[x.length - 1][y.length - 1];
        for (int i = 0; i < k.length; i++) {
            for (int j = 0; j < k[i].length; j++) {
                k[i][j] = conductivity.applyAsDouble(mid(x, i), mid(y, j));
            }
        }
    }

    /** Lines over stretches between fixed places, so close as a local size asks for. */
    static double[] lines(double[] fixed, DoubleUnaryOperator size) {
        List<Double> lines = new ArrayList<>();
        lines.add(fixed[0]);
        for (int s = 0; s + 1 < fixed.length; s++) {
            double a = fixed[s];
            double b = fixed[s + 1];
            int fine = 4000;
            double[] sum = new double[fine + 1];
            for (int i = 0; i < fine; i++) {
                sum[i + 1] = sum[i] + (b - a) / fine / size.applyAsDouble(a + (i + 0.5) * (b - a) / fine);
            }
            int cells = Math.max(2, (int) Math.ceil(sum[fine]));
            int at = 0;
            for (int c = 1; c < cells; c++) {
                double wanted = sum[fine] * c / cells;
                while (sum[at + 1] < wanted) {
                    at++;
                }
                lines.add(a + (at + (wanted - sum[at]) / (sum[at + 1] - sum[at])) * (b - a) / fine);
            }
            lines.add(b);
        }
        return lines.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Releases heat evenly in a disc; only the part inside the section counts. */
    void disc(double cx, double cy, double radius, double wattsPerMetre) {
        int parts = 24;
        for (int i = 0; i < k.length; i++) {
            for (int j = 0; j < k[i].length; j++) {
                if (x[i] > cx + radius || x[i + 1] < cx - radius || y[j] > cy + radius || y[j + 1] < cy - radius) {
                    continue;
                }
                int inside = 0;
                for (int a = 0; a < parts; a++) {
                    for (int b = 0; b < parts; b++) {
                        double px = x[i] + (a + 0.5) / parts * (x[i + 1] - x[i]) - cx;
                        double py = y[j] + (b + 0.5) / parts * (y[j + 1] - y[j]) - cy;
                        inside += px * px + py * py < radius * radius ? 1 : 0;
                    }
                }
                watts[i][j] += wattsPerMetre
                        * inside
                        / (parts * parts)
                        * (x[i + 1] - x[i])
                        * (y[j + 1] - y[j])
                        / (Math.PI * radius * radius);
            }
        }
    }

    /** Scales the heat so that the section as a whole gets so many watts a metre. */
    void scaleTo(double wattsPerMetre) {
        double sum = 0;
        for (double[] column : watts) {
            for (double w : column) {
                sum += w;
            }
        }
        for (double[] column : watts) {
            for (int j = 0; j < column.length; j++) {
                column[j] *= wattsPerMetre / sum;
            }
        }
    }

    /** Releases heat evenly in the row of cells under a level. */
    void sheet(double level, double wattsPerSquareMetre) {
        int j = 0;
        while (y[j + 1] < level - 1e-12) {
            j++;
        }
        for (int i = 0; i < k.length; i++) {
            watts[i][j] += wattsPerSquareMetre * (x[i + 1] - x[i]) / 2;
            watts[i][j + 1] += wattsPerSquareMetre * (x[i + 1] - x[i]) / 2;
        }
    }

    void solve(DoubleUnaryOperator filmTop, double air, double filmBelow, double below) {
        int nx = k.length;
        int ny = k[0].length;
        int band = ny;
        double[][] a = new double[nx * ny][band + 1];
        double[] b = new double[nx * ny];
        for (int i = 0; i < nx; i++) {
            double dx = x[i + 1] - x[i];
            for (int j = 0; j < ny; j++) {
                int c = i * ny + j;
                double dy = y[j + 1] - y[j];
                b[c] += watts[i][j];
                if (j + 1 < ny) {
                    link(a, c, c + 1, dx / (dy / 2 / k[i][j] + (y[j + 2] - y[j + 1]) / 2 / k[i][j + 1]));
                } else {
                    double g = dx / (dy / 2 / k[i][j] + 1 / filmTop.applyAsDouble(mid(x, i)));
                    a[c][0] += g;
                    b[c] += g * air;
                }
                if (j == 0 && filmBelow > 0) {
                    double g = dx / (dy / 2 / k[i][j] + 1 / filmBelow);
                    a[c][0] += g;
                    b[c] += g * below;
                }
                if (i + 1 < nx) {
                    link(a, c, c + ny, dy / (dx / 2 / k[i][j] + (x[i + 2] - x[i + 1]) / 2 / k[i + 1][j]));
                }
            }
        }
        double[] solution = cholesky(a, b, band);
        t = new double[nx][ny];
        for (int i = 0; i < nx; i++) {
            System.arraycopy(solution, i * ny, t[i], 0, ny);
        }
    }

    private static void link(double[][] a, int c, int d, double g) {
        a[c][0] += g;
        a[d][0] += g;
        a[d][d - c] -= g;
    }

    /** {@code a[r][o]} is the entry of row r, column r − o. */
    private static double[] cholesky(double[][] a, double[] b, int band) {
        int n = b.length;
        for (int r = 0; r < n; r++) {
            for (int o = Math.min(band, r); o >= 0; o--) {
                int c = r - o;
                double sum = a[r][o];
                for (int m = Math.max(0, Math.max(r, c + 0) - band); m < c; m++) {
                    if (c - m <= band) {
                        sum -= a[r][r - m] * a[c][c - m];
                    }
                }
                a[r][o] = o == 0 ? Math.sqrt(sum) : sum / a[c][0];
            }
        }
        for (int r = 0; r < n; r++) {
            for (int o = 1; o <= Math.min(band, r); o++) {
                b[r] -= a[r][o] * b[r - o];
            }
            b[r] /= a[r][0];
        }
        for (int r = n - 1; r >= 0; r--) {
            b[r] /= a[r][0];
            for (int o = 1; o <= Math.min(band, r); o++) {
                b[r - o] -= a[r][o] * b[r];
            }
        }
        return b;
    }

    /** Surface temperature over each column of cells, from the flux the film takes. */
    double[] surface(DoubleUnaryOperator filmTop, double air) {
        int top = k[0].length - 1;
        double[] s = new double[k.length];
        for (int i = 0; i < k.length; i++) {
            double half = (y[top + 1] - y[top]) / 2 / k[i][top];
            double film = filmTop.applyAsDouble(mid(x, i));
            s[i] = (t[i][top] + film * half * air) / (1 + film * half);
        }
        return s;
    }

    double mean(double[] s) {
        double sum = 0;
        for (int i = 0; i < s.length; i++) {
            sum += s[i] * (x[i + 1] - x[i]);
        }
        return sum / (x[x.length - 1] - x[0]);
    }

    /** Value on the mirror line x = 0 from the two nearest columns, even about it. */
    double atLeft(double[] s) {
        return even(s[0], mid(x, 0), s[1], mid(x, 1));
    }

    double atRight(double[] s) {
        int n = s.length;
        double end = x[n];
        return even(s[n - 1], end - mid(x, n - 1), s[n - 2], end - mid(x, n - 2));
    }

    private static double even(double near, double dNear, double far, double dFar) {
        return near - (far - near) / (dFar * dFar - dNear * dNear) * dNear * dNear;
    }

    /** Mean over a circle about a point of the mirror line x = 0, bilinear between cells. */
    double circle(double cy, double radius) {
        int points = 180;
        double sum = 0;
        for (int p = 0; p < points; p++) {
            double angle = Math.PI * ((p + 0.5) / points - 0.5);
            sum += value(radius * Math.cos(angle), cy + radius * Math.sin(angle));
        }
        return sum / points;
    }

    private double value(double px, double py) {
        int i = 0;
        while (i < k.length - 2 && mid(x, i + 1) < px) {
            i++;
        }
        int j = 0;
        while (j < k[0].length - 2 && mid(y, j + 1) < py) {
            j++;
        }
        double u = Math.max(0, (px - mid(x, i)) / (mid(x, i + 1) - mid(x, i)));
        double v = (py - mid(y, j)) / (mid(y, j + 1) - mid(y, j));
        return (1 - u) * ((1 - v) * t[i][j] + v * t[i][j + 1]) + u * ((1 - v) * t[i + 1][j] + v * t[i + 1][j + 1]);
    }

    static double mid(double[] lines, int i) {
        return (lines[i] + lines[i + 1]) / 2;
    }
}
