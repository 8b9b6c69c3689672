package org.heatfloor.routing;

/** How much work the router spends on one route; counted in steps, never in time. */
public enum Effort {
    /** A few starting patterns and a short improvement: for trying many lengths. */
    QUICK(3, 3_000),
    /** What a plan uses. */
    NORMAL(8, 20_000),
    /** For a large room or a last polish. */
    THOROUGH(24, 80_000);

    final int starts;
    final int steps;

    Effort(int starts, int steps) {
        this.starts = starts;
        this.steps = steps;
    }
}
