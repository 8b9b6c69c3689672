package org.heatfloor.routing;

/**
 * What the cost of a walk is measured against. Length too much, beyond the slack, can be trimmed at a price; length too
 * little may not be there to be had, and costs three times as much. A bare square, one that no corner of is on the walk, is
 * floor that stays cold.
 *
 * @param target length wanted, in pitches
 * @param roundingPerTurn length that a rounded corner takes off, in pitches
 * @param slack length too much that costs nothing, in pitches
 * @param pricePerPitch turns that a pitch too much is worth
 * @param pricePerBare turns that a bare square is worth
 */
record Aim(double target, double roundingPerTurn, double slack, double pricePerPitch, double pricePerBare) {

    /** Turns that a pitch of length costs where a loop is filled: four turns in a strip of eighty pitches. */
    private static final double FILL_PRICE = 0.05;

    Aim withTarget(double pitches) {
        return new Aim(pitches, roundingPerTurn, slack, pricePerPitch, pricePerBare);
    }

    /** Length beyond the target with the rounding of the corners taken off, in pitches. */
    double surplus(int turns, int length) {
        return length - roundingPerTurn * turns - target;
    }

    /** The cost when length too little has been filled, as far as that goes, at a few turns for each long row. */
    double promise(int turns, int length, double fillable) {
        double filled = Math.max(0, Math.min(-surplus(turns, length), fillable));
        return cost(turns, (int) Math.ceil(length + filled), 0) + FILL_PRICE * filled;
    }

    double cost(int turns, int length, int bare) {
        double over = surplus(turns, length);
        double wrong = over < 0 ? -3 * over : over > slack ? over - slack : 0;
        return turns + pricePerPitch * wrong + pricePerBare * bare;
    }
}
