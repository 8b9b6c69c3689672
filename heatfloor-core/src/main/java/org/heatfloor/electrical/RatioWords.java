package org.heatfloor.electrical;

import org.heatfloor.quantity.QuantityText;

/** What a core that never matched its label may be, from the ratio of reading to label. */
final class RatioWords {

    private static final double NEAR = 0.12;

    private RatioWords() {}

    static String atFirst(HeatingCable cable, double ratio) {
        String guess;
        if (near(ratio, 4)) {
            guess = "a cable of the same power for twice the voltage";
        } else if (near(ratio, 2)) {
            guess = "twice the value: a cable of half the power, or two cables joined in series";
        } else if (near(ratio, 0.5)) {
            guess =
                    "half the value: two equal cables measured in parallel, a cable of twice the power, or conductors that"
                            + " touch halfway";
        } else if (near(ratio, 0.25)) {
            guess = "a quarter of the value: a cable of the same power for half the voltage";
        } else {
            guess = ratio < 1 ? "a cable of more power, or one damaged on the way" : "a cable of less power";
        }
        return "the core reads " + QuantityText.number(100 * ratio, 1)
                + " % of the label's resistance from the first test: " + guess + "; compare the label of "
                + cable.name() + " with the cable before laying it";
    }

    private static boolean near(double ratio, double whole) {
        return Math.abs(ratio / whole - 1) <= NEAR;
    }
}
