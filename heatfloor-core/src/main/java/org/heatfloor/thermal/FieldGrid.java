package org.heatfloor.thermal;

/**
 * Nodes over the rectangle, edges included; the numbers of steps are lengths of {@link FourierTransform}.
 *
 * @param x0 left edge, m
 * @param y0 lower edge, m
 * @param width along x, m
 * @param height along y, m
 * @param nx steps along x
 * @param ny steps along y
 */
record FieldGrid(double x0, double y0, double width, double height, int nx, int ny) {

    /** Steps no longer than asked for. */
    static FieldGrid of(double x0, double y0, double width, double height, double longestStep) {
        return new FieldGrid(x0, y0, width, height, steps(width, longestStep), steps(height, longestStep));
    }

    private static int steps(double length, double longestStep) {
        return FourierTransform.lengthFor(length / longestStep * (1 - 1e-9));
    }

    double stepX() {
        return width / nx;
    }

    double stepY() {
        return height / ny;
    }

    double x(int i) {
        return x0 + i * stepX();
    }

    double y(int j) {
        return y0 + j * stepY();
    }

    double[][] empty() {
        return new double[ny + 1][nx + 1];
    }

    /** Share of a cell that belongs to a node: edges half, corners a quarter. */
    double weight(int i, int j) {
        return (i == 0 || i == nx ? 0.5 : 1) * (j == 0 || j == ny ? 0.5 : 1);
    }

    double cellArea() {
        return stepX() * stepY();
    }
}
