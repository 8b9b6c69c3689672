package org.heatfloor.electrical;

import org.heatfloor.quantity.QuantityText;

/** What a core that never matched its label may be, from the ratio of reading to label. */
final class RatioWords {

    private static final double NEAR = 0.12;

    private RatioWords() {}

    static String atFirst(HeatingCable cable, double ratio, boolean tagged) {
        String guess;
        if (near(ratio, 4)) {
            guess = "a cable of the same power for twice the voltage";
        } else if (near(ratio, 2)) {
            guess = "twice the value: a cable of half the power, or two cables joined in series";
        } else if (near(ratio, 0.5)) {
            guess = "half the value: two equal cables measured in parallel, or a cable of twice the power";
        } else if (near(ratio, 0.25)) {
            guess = "a quarter of the value: a cable of the same power for half the voltage";
        } else {
            guess = ratio < 1 ? "a cable of more power" : "a cable of less power, or a bad joint from the start";
        }
        String percent = QuantityText.number(100 * ratio, 1) + " % of the label's resistance";
        if (tagged) {
            return "the maker's reading on the cable's tag is " + percent + ", and the cable agrees with its tag: "
                    + guess + "; compare the label of " + cable.name() + " with the cable before laying it";
        }
        return "the core reads " + percent + " from the first test: " + guess
                + (ratio < 1
                        ? ", or conductors that touch already, about "
                                + QuantityText.number(Math.min(1, ratio) * cable.metres(), 1)
                                + " m from the cold lead; the maker's reading on the cable's own tag tells which, or a"
                                + " measurement of its length by reflection"
                        : "")
                + "; compare the label of " + cable.name() + " with the cable before laying it";
    }

    private static boolean near(double ratio, double whole) {
        return Math.abs(ratio / whole - 1) <= NEAR;
    }
}
