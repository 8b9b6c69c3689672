package org.heatfloor.thermal;

/**
 * How much stronger or weaker studs make each surface mode than the homogenised layer, by wavenumber: the ratio of the
 * modes of {@link StudCell}, straight between them. Modes too faint to matter keep the last ratio.
 */
final class StudFactor {

    private static final double FAINT = 2e-3;

    private final double step;
    private final double[] ratio;

    private StudFactor(double step, double[] ratio) {
        this.step = step;
        this.ratio = ratio;
    }

    /** Without studs. */
    static StudFactor none() {
        return new StudFactor(1, new double[] {1});
    }

    /** From a cell whose cables lie so far apart. */
    static StudFactor of(StudCell.Effect effect, double spacingMetres) {
        double[] real = effect.realModes();
        double[] plain = effect.plainModes();
        double[] ratio = new double[real.length];
        ratio[0] = 1;
        for (int n = 1; n < ratio.length; n++) {
            boolean clear = Math.abs(plain[n]) > FAINT * Math.abs(plain[1]);
            ratio[n] = clear ? real[n] / plain[n] : ratio[n - 1];
        }
        return new StudFactor(2 * Math.PI / spacingMetres, ratio);
    }

    double at(double beta) {
        double place = beta / step;
        int i = (int) place;
        if (i >= ratio.length - 1) {
            return ratio[ratio.length - 1];
        }
        return ratio[i] + (place - i) * (ratio[i + 1] - ratio[i]);
    }
}
