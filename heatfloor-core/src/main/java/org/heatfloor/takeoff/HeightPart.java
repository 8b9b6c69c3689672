package org.heatfloor.takeoff;

/** The parts of a floor's height that a build-up states. */
public enum HeightPart {
    /** The bed under the membrane. */
    LOWER_BED,
    /** The membrane and the bed over its studs. */
    MEMBRANE_AND_UPPER_BED,
    /** The tile. */
    TILE
}
