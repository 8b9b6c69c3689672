package org.heatfloor.thermal;

/** The layered Fourier series across parallel cables; SI. */
final class SectionSeries {

    private static final int MOST_MODES = 200_000;

    private SectionSeries() {}

    /** Mean mode, surface rise above a cable and midway, first amplitude and mean sheath temperature. */
    record Result(MeanBalance mean, double riseAbove, double riseMidway, double firstAmplitude, double sheathKelvin) {}

    static Result solve(
            LayerStack stack,
            double axisHeight,
            double radius,
            double linearPower,
            double spacing,
            SurfaceLaw law,
            Climate climate) {
        ModeTransfer transfer = new ModeTransfer(stack, axisHeight, climate.filmBelowSi());
        double source = linearPower / spacing;
        MeanBalance mean = MeanBalance.solve(
                source,
                transfer.resistanceAbove(),
                transfer.admittanceBelow(0),
                law,
                climate.airKelvin(),
                climate.belowKelvin());
        double k = stack.conductivity[stack.heated];
        double above = 0;
        double midway = 0;
        double first = 0;
        double sheath =
                mean.planeKelvin() + linearPower / (2 * Math.PI * k) * Math.log(spacing / (2 * Math.PI * radius));
        // The sheath's terms fall as e^(−2β·nearest face), the surface's as e^(−β·cover).
        double nearest = Math.min(axisHeight, stack.thicknessMetres[stack.heated] - axisHeight);
        for (int n = 1; n <= MOST_MODES; n++) {
            double beta = 2 * Math.PI * n / spacing;
            ModeTransfer.Mode mode = transfer.at(beta);
            double amplitude = 2 * source * mode.surface(mean.film());
            above += amplitude;
            midway += n % 2 == 0 ? amplitude : -amplitude;
            if (n == 1) {
                first = amplitude;
            }
            sheath += 2 * source * mode.plane(mean.film()) - linearPower / (2 * Math.PI * k * n);
            if (Math.exp(-2 * beta * nearest) < 1e-13 && mode.decay() < 1e-13) {
                break;
            }
        }
        return new Result(mean, above, midway, first, sheath);
    }
}
