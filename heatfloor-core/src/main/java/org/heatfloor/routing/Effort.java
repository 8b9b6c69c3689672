package org.heatfloor.routing;

/** How much work the router spends on one route; counted in steps, never in time. */
public enum Effort {
    /** A few starting patterns and a short improvement: for trying many lengths. */
    QUICK(20, 1_000),
    /** What a plan uses. */
    NORMAL(60, 1_500),
    /** For a large room or a last polish. */
    THOROUGH(200, 12_000);

    /** Starting patterns improved in the first round; a quarter of them go on, then a tenth. */
    final int starts;
    /** Steps for each in the first round; three times as many in the second, seven times in the last. */
    final int steps;

    Effort(int starts, int steps) {
        this.starts = starts;
        this.steps = steps;
    }
}
