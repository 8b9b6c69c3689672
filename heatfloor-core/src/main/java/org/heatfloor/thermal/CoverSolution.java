package org.heatfloor.thermal;

/**
 * What covers add to the surface of an open floor. The layers' answer to heat at the surface is a number {@code Y} a mode, the
 * film under the covers a number a node; {@code (Y + h_covered)·u = (h − h_covered)·(T_open − T_ambient)} is solved for the
 * rise {@code u} by conjugate gradients with {@code Y + h} as preconditioner, two cosine transforms a round. SI.
 */
final class CoverSolution {

    private static final int MOST_ROUNDS = 400;
    private static final double TOLERANCE = 1e-13;

    private final FieldGrid grid;
    private final double[][] admittance;

    CoverSolution(FieldGrid grid, double[][] admittance) {
        this.grid = grid;
        this.admittance = admittance;
    }

    /** The modes of the rise for the open floor's excess over the ambient and the film under the covers, a node each. */
    double[][] rise(double[][] excess, double[][] covered, double film) {
        double[][] rest = grid.empty();
        for (int j = 0; j <= grid.ny(); j++) {
            for (int i = 0; i <= grid.nx(); i++) {
                rest[j][i] = (film - covered[j][i]) * excess[j][i];
            }
        }
        GridModes.ofNodes(grid, rest);
        double[][] rise = grid.empty();
        double[][] direction = preconditioned(rest, film);
        double size = dot(rest, direction);
        double enough = TOLERANCE * TOLERANCE * size;
        for (int round = 0; size > enough; round++) {
            if (round == MOST_ROUNDS) {
                throw new IllegalStateException("covers: the field was not found in " + MOST_ROUNDS + " rounds");
            }
            double[][] image = applied(direction, covered);
            double length = size / dot(direction, image);
            add(rise, length, direction);
            add(rest, -length, image);
            double[][] step = preconditioned(rest, film);
            double next = dot(rest, step);
            add(step, next / size, direction);
            direction = step;
            size = next;
        }
        return rise;
    }

    private double[][] applied(double[][] modes, double[][] covered) {
        double[][] image = GridModes.toNodes(grid, modes);
        for (int j = 0; j <= grid.ny(); j++) {
            for (int i = 0; i <= grid.nx(); i++) {
                image[j][i] *= covered[j][i];
            }
        }
        GridModes.ofNodes(grid, image);
        for (int n = 0; n <= grid.ny(); n++) {
            for (int m = 0; m <= grid.nx(); m++) {
                image[n][m] += admittance[n][m] * modes[n][m];
            }
        }
        return image;
    }

    private double[][] preconditioned(double[][] modes, double film) {
        double[][] out = grid.empty();
        for (int n = 0; n <= grid.ny(); n++) {
            for (int m = 0; m <= grid.nx(); m++) {
                out[n][m] = modes[n][m] / (admittance[n][m] + film);
            }
        }
        return out;
    }

    /** The product over the floor: a mode's mean square is a half along each axis unless it is the first or last. */
    private double dot(double[][] a, double[][] b) {
        double sum = 0;
        for (int n = 0; n <= grid.ny(); n++) {
            double row = 0;
            for (int m = 0; m <= grid.nx(); m++) {
                row += a[n][m] * b[n][m] * (m == 0 || m == grid.nx() ? 1 : 0.5);
            }
            sum += row * (n == 0 || n == grid.ny() ? 1 : 0.5);
        }
        return sum;
    }

    private static void add(double[][] to, double factor, double[][] what) {
        for (int n = 0; n < to.length; n++) {
            for (int m = 0; m < to[n].length; m++) {
                to[n][m] += factor * what[n][m];
            }
        }
    }
}
