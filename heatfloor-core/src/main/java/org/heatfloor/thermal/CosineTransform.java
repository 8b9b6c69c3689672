package org.heatfloor.thermal;

/**
 * Cosine transform of the first kind on {@code N + 1} points, {@code N} as {@link FourierTransform} takes it, edges included: {@code F_k =
 * ½(f_0 + (−1)^k f_N) + Σ f_j cos(πjk/N)}. Two real rows share one complex fast Fourier transform of length {@code N}.
 */
final class CosineTransform {

    private static final int BLOCK = 32;

    private final int n;
    private final double[] cosine;
    private final double[] sine;
    private final double[][] work;
    private final FourierTransform fourier;

    private CosineTransform(int n) {
        this.n = n;
        this.cosine = new double[n];
        this.sine = new double[n];
        for (int j = 0; j < n; j++) {
            cosine[j] = Math.cos(Math.PI * j / n);
            sine[j] = Math.sin(Math.PI * j / n);
        }
        this.work = new double[2][n];
        this.fourier = FourierTransform.of(n);
    }

    /** Transforms rows, then columns, in place; sizes are {@code [ny + 1][nx + 1]}. */
    static void transform(double[][] grid) {
        int rows = grid.length;
        int columns = grid[0].length;
        rows(grid);
        double[][] turned = new double[columns][rows];
        transpose(grid, turned);
        rows(turned);
        transpose(turned, grid);
    }

    private static void rows(double[][] grid) {
        CosineTransform transform = new CosineTransform(grid[0].length - 1);
        for (int i = 0; i + 1 < grid.length; i += 2) {
            transform.pair(grid[i], grid[i + 1]);
        }
        if (grid.length % 2 == 1) {
            transform.pair(grid[grid.length - 1], new double[grid[0].length]);
        }
    }

    private static void transpose(double[][] from, double[][] to) {
        int rows = from.length;
        int columns = from[0].length;
        for (int r = 0; r < rows; r += BLOCK) {
            for (int c = 0; c < columns; c += BLOCK) {
                for (int i = r; i < Math.min(rows, r + BLOCK); i++) {
                    double[] row = from[i];
                    for (int j = c; j < Math.min(columns, c + BLOCK); j++) {
                        to[j][i] = row[j];
                    }
                }
            }
        }
    }

    private void pair(double[] f, double[] g) {
        double[] re = work[0];
        double[] im = work[1];
        double firstF = pack(f, re);
        double firstG = pack(g, im);
        fourier.forward(work);
        f[0] = re[0];
        g[0] = im[0];
        f[1] = firstF;
        g[1] = firstG;
        for (int k = 1; k < n / 2; k++) {
            int mirror = n - k;
            f[2 * k] = 0.5 * (re[k] + re[mirror]);
            g[2 * k] = 0.5 * (im[k] + im[mirror]);
            // The imaginary parts of the two spectra, sign of the forward transform reversed.
            f[2 * k + 1] = f[2 * k - 1] - 0.5 * (im[k] - im[mirror]);
            g[2 * k + 1] = g[2 * k - 1] + 0.5 * (re[k] - re[mirror]);
        }
        f[n] = re[n / 2];
        g[n] = im[n / 2];
    }

    /** Folds a row into the sequence whose transform holds the even coefficients; returns the first odd one. */
    private double pack(double[] f, double[] folded) {
        double first = 0.5 * (f[0] - f[n]);
        folded[0] = 0.5 * (f[0] + f[n]);
        for (int j = 1; j < n; j++) {
            folded[j] = 0.5 * (f[j] + f[n - j]) - sine[j] * (f[j] - f[n - j]);
            first += f[j] * cosine[j];
        }
        return first;
    }
}
