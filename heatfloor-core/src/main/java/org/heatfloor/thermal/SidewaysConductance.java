package org.heatfloor.thermal;

/**
 * How well the layers carry heat sideways, W/K a metre of width: each layer's {@code k·d} weighed by the square of its
 * share in the plane's temperature, so that what lies beyond insulation counts for little.
 */
final class SidewaysConductance {

    private SidewaysConductance() {}

    static double of(LayerStack stack, double axisHeight, double admittanceBelow) {
        double sum = 0;
        for (int i = 0; i < stack.heated; i++) {
            sum += stack.conductivity[i] * stack.thicknessMetres[i];
        }
        sum += stack.conductivity[stack.heated] * stack.thicknessMetres[stack.heated];
        double resistanceToBelow = 1 / Math.max(admittanceBelow, 1e-9);
        double passed = axisHeight / stack.conductivity[stack.heated];
        for (int i = stack.heated + 1; i < stack.size(); i++) {
            double own = stack.thicknessMetres[i] / stack.conductivity[i];
            passed += stack.contact[i - 1];
            double top = 1 - passed / resistanceToBelow;
            double bottom = 1 - (passed + own) / resistanceToBelow;
            // Mean square of a straight line from top to bottom.
            double meanSquare = (top * top + top * bottom + bottom * bottom) / 3;
            sum += stack.conductivity[i] * stack.thicknessMetres[i] * meanSquare;
            passed += own;
        }
        return sum;
    }
}
