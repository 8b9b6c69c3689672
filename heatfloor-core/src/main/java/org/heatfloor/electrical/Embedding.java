package org.heatfloor.electrical;

/**
 * How the NEC sees the floor over a cable. For a cable in the channels of a membrane under tile the cable's listing says
 * which of the two it is.
 */
public enum Embedding {
    /** In concrete or poured masonry. */
    CONCRETE,
    /** Under a floor covering. */
    FLOOR_COVERING
}
