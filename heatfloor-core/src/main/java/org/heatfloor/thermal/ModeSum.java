package org.heatfloor.thermal;

/** Sums cosine modes at one place. */
final class ModeSum {

    private ModeSum() {}

    static double at(FieldGrid grid, double[][] modes, double x, double y) {
        double px = (x - grid.x0()) / grid.width();
        double py = (y - grid.y0()) / grid.height();
        if (!(px >= -1e-9 && px <= 1 + 1e-9 && py >= -1e-9 && py <= 1 + 1e-9)) {
            throw new IllegalArgumentException("place: " + x + " " + y + " was given; it lies outside the rectangle "
                    + grid.x0() + " " + grid.y0() + " to " + (grid.x0() + grid.width()) + " "
                    + (grid.y0() + grid.height()));
        }
        double[] cosX = new double[grid.nx() + 1];
        for (int m = 0; m <= grid.nx(); m++) {
            cosX[m] = Math.cos(Math.PI * m * px);
        }
        double sum = 0;
        for (int n = 0; n <= grid.ny(); n++) {
            double[] row = modes[n];
            double part = 0;
            for (int m = 0; m <= grid.nx(); m++) {
                part += row[m] * cosX[m];
            }
            sum += part * Math.cos(Math.PI * n * py);
        }
        return sum;
    }
}
