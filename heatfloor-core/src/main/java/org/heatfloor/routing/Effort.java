package org.heatfloor.routing;

/** How much work the router spends on one route; counted in steps, never in time. */
public enum Effort {
    /** A few starting patterns and a short improvement: for trying many lengths. */
    QUICK(20, 800, 100),
    /** What a plan uses. */
    NORMAL(60, 1_200, 300),
    /** For a large room or a last polish. */
    THOROUGH(200, 12_000, 1_000);

    /** Starting patterns improved in the first round; a third of them go on, then a tenth. */
    final int starts;
    /** Steps for each in the first round; three times as many in the second, ten times in the last. */
    final int steps;
    /** Stretches taken up and laid anew of each route that is too short. */
    final int rounds;

    Effort(int starts, int steps, int rounds) {
        this.starts = starts;
        this.steps = steps;
        this.rounds = rounds;
    }
}
