package org.heatfloor.area;

/**
 * The closed traverse of surveying: legs of known length and heading that should return to their start. The misclosure is
 * shared out by the compass rule (N. Bowditch, 1808): each leg takes the part of it that its length is of the perimeter,
 * {@code c = −e · l / Σl}, in both directions. Headings are radians counter-clockwise from the x axis.
 */
final class Traverse {

    private final double[] x;
    private final double[] y;
    private final double[] adjustedX;
    private final double[] adjustedY;
    private final double misclosureX;
    private final double misclosureY;
    private final double perimeter;

    /**
     * Balances a traverse.
     *
     * @param x what each leg runs along the x axis
     * @param y what each leg runs along the y axis
     * @param lengths the weights: lengths of the legs as measured
     */
    Traverse(double[] x, double[] y, double[] lengths) {
        this.x = x.clone();
        this.y = y.clone();
        double sumX = 0;
        double sumY = 0;
        double sum = 0;
        for (int i = 0; i < lengths.length; i++) {
            sumX += x[i];
            sumY += y[i];
            sum += lengths[i];
        }
        this.misclosureX = sumX;
        this.misclosureY = sumY;
        this.perimeter = sum;
        this.adjustedX = new double[lengths.length];
        this.adjustedY = new double[lengths.length];
        for (int i = 0; i < lengths.length; i++) {
            adjustedX[i] = x[i] - sumX * lengths[i] / sum;
            adjustedY[i] = y[i] - sumY * lengths[i] / sum;
        }
    }

    double misclosureX() {
        return misclosureX;
    }

    double misclosureY() {
        return misclosureY;
    }

    double misclosure() {
        return Math.hypot(misclosureX, misclosureY);
    }

    double perimeter() {
        return perimeter;
    }

    double x(int leg) {
        return x[leg];
    }

    double y(int leg) {
        return y[leg];
    }

    double adjustedX(int leg) {
        return adjustedX[leg];
    }

    double adjustedY(int leg) {
        return adjustedY[leg];
    }
}
