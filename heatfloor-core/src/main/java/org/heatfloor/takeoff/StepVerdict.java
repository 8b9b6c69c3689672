package org.heatfloor.takeoff;

/** What a difference of height at a door asks for. */
public enum StepVerdict {
    /** Low enough to stand upright, or none. */
    FLUSH,
    /** A bevelled edge. */
    BEVEL,
    /** A ramp. */
    RAMP,
    /** More than the rule allows at a door. */
    TOO_HIGH
}
