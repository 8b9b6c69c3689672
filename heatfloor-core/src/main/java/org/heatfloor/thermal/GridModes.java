package org.heatfloor.thermal;

/** From values on the nodes to cosine modes, {@code f = Σ Σ c_mn cos(mπx/a) cos(nπy/b)}, and back. */
final class GridModes {

    private GridModes() {}

    /** Turns nodes into modes in place. */
    static void ofNodes(FieldGrid grid, double[][] values) {
        CosineTransform.transform(values);
        double scale = 4.0 / ((double) grid.nx() * grid.ny());
        for (int n = 0; n <= grid.ny(); n++) {
            double row = scale * (n == 0 || n == grid.ny() ? 0.5 : 1);
            for (int m = 0; m <= grid.nx(); m++) {
                values[n][m] *= row * (m == 0 || m == grid.nx() ? 0.5 : 1);
            }
        }
    }

    /** Sums the modes on the nodes. */
    static double[][] toNodes(FieldGrid grid, double[][] modes) {
        double[][] values = grid.empty();
        for (int n = 0; n <= grid.ny(); n++) {
            double edge = n == 0 || n == grid.ny() ? 2 : 1;
            for (int m = 0; m <= grid.nx(); m++) {
                values[n][m] = modes[n][m] * edge * (m == 0 || m == grid.nx() ? 2 : 1);
            }
        }
        CosineTransform.transform(values);
        return values;
    }
}
