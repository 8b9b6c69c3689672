package org.heatfloor.thermal;

/**
 * A heat network on a block of cells, solved by conjugate gradients with every column solved exactly as preconditioner;
 * columns run fastest in the numbering. To be filled, then solved once.
 */
final class ColumnConjugateGradients {

    private final int columnLength;
    private final int strideX;
    private final double[] acrossX;
    private final double[] acrossY;
    private final double[] along;
    private final double[] diagonal;
    private final double[] pivot;

    ColumnConjugateGradients(int countX, int countY, int columnLength) {
        int n = countX * countY * columnLength;
        this.columnLength = columnLength;
        this.strideX = countY * columnLength;
        this.acrossX = new double[n];
        this.acrossY = new double[n];
        this.along = new double[n];
        this.diagonal = new double[n];
        this.pivot = new double[n];
    }

    /** A conductance, W/K, to the next cell along x. */
    void linkX(int cell, double conductance) {
        acrossX[cell] = conductance;
        diagonal[cell] += conductance;
        diagonal[cell + strideX] += conductance;
    }

    /** A conductance, W/K, to the next cell along y. */
    void linkY(int cell, double conductance) {
        acrossY[cell] = conductance;
        diagonal[cell] += conductance;
        diagonal[cell + columnLength] += conductance;
    }

    /** A conductance, W/K, to the next cell of the column. */
    void linkZ(int cell, double conductance) {
        along[cell] = conductance;
        diagonal[cell] += conductance;
        diagonal[cell + 1] += conductance;
    }

    /** A conductance, W/K, to the ambient at rise 0. */
    void lose(int cell, double conductance) {
        diagonal[cell] += conductance;
    }

    /** The rises for so much heat in each cell, W. */
    double[] solve(double[] watts, int mostRounds) {
        int n = watts.length;
        for (int c = 0; c < n; c++) {
            pivot[c] = diagonal[c] - (c % columnLength > 0 ? along[c - 1] * along[c - 1] / pivot[c - 1] : 0);
        }
        double[] rise = new double[n];
        double[] rest = watts.clone();
        double[] direction = new double[n];
        double[] step = new double[n];
        double[] image = new double[n];
        precondition(rest, direction);
        double size = dot(rest, direction);
        double enough = 1e-11 * size;
        for (int round = 0; size > enough; round++) {
            if (round == mostRounds) {
                throw new IllegalStateException("unit cell: the network was not solved in " + mostRounds + " rounds");
            }
            apply(direction, image);
            double length = size / dot(direction, image);
            for (int c = 0; c < n; c++) {
                rise[c] += length * direction[c];
                rest[c] -= length * image[c];
            }
            precondition(rest, step);
            double next = dot(rest, step);
            for (int c = 0; c < n; c++) {
                direction[c] = step[c] + next / size * direction[c];
            }
            size = next;
        }
        return rise;
    }

    private void precondition(double[] from, double[] to) {
        for (int c = 0; c < from.length; c++) {
            to[c] = from[c] + (c % columnLength > 0 ? along[c - 1] / pivot[c - 1] * to[c - 1] : 0);
        }
        for (int c = from.length - 1; c >= 0; c--) {
            boolean last = c % columnLength == columnLength - 1;
            to[c] = (to[c] + (last ? 0 : along[c] * to[c + 1])) / pivot[c];
        }
    }

    private void apply(double[] of, double[] to) {
        for (int c = 0; c < of.length; c++) {
            to[c] = diagonal[c] * of[c];
        }
        for (int c = 0; c + 1 < of.length; c++) {
            link(along[c], c, c + 1, of, to);
        }
        for (int c = 0; c + columnLength < of.length; c++) {
            link(acrossY[c], c, c + columnLength, of, to);
        }
        for (int c = 0; c + strideX < of.length; c++) {
            link(acrossX[c], c, c + strideX, of, to);
        }
    }

    private static void link(double conductance, int a, int b, double[] of, double[] to) {
        to[a] -= conductance * of[b];
        to[b] -= conductance * of[a];
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int c = 0; c < a.length; c++) {
            sum += a[c] * b[c];
        }
        return sum;
    }
}
