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

    Aim withTarget(double pitches) {
        return new Aim(pitches, roundingPerTurn, slack, pricePerPitch, pricePerBare);
    }

    /** Length beyond the target with the rounding of the corners taken off, in pitches. */
    double surplus(int turns, int length) {
        return length - roundingPerTurn * turns - target;
    }

    /** Turns and the price of length too much or too little, both alike: what is too little may be filled. */
    double promise(int turns, int length) {
        double over = surplus(turns, length);
        return turns + pricePerPitch * (over < 0 ? -over : Math.max(0, over - slack));
    }

    double cost(int turns, int length, int bare) {
        double over = surplus(turns, length);
        double wrong = over < 0 ? -3 * over : over > slack ? over - slack : 0;
        return turns + pricePerPitch * wrong + pricePerBare * bare;
    }
}
