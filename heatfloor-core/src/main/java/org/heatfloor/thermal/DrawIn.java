package org.heatfloor.thermal;

/**
 * Draws in on the temperature that a film found for it leaves as it is. A film grows with the difference from the room, so
 * that the temperature found falls as the one assumed rises, and there is one such place. Steps alone may swing about it for
 * long where the difference is nearly nothing; after some of them the interval they have left is halved.
 */
final class DrawIn {

    /** Steps before halving begins. */
    private static final int STEPS = 40;

    private double low = Double.NEGATIVE_INFINITY;
    private double high = Double.POSITIVE_INFINITY;
    private int rounds;

    /**
     * The next temperature to assume.
     *
     * @param assumed temperature assumed last
     * @param found temperature found for it
     * @param share of the way from the one to the other to step
     */
    double next(double assumed, double found, double share) {
        if (found > assumed) {
            low = Math.max(low, assumed);
        } else {
            high = Math.min(high, assumed);
        }
        rounds++;
        boolean halves = rounds >= STEPS && low > Double.NEGATIVE_INFINITY && high < Double.POSITIVE_INFINITY;
        return halves ? low + (high - low) / 2 : assumed + share * (found - assumed);
    }
}
