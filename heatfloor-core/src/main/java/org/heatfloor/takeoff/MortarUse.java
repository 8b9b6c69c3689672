package org.heatfloor.takeoff;

/** What a mortar is bought for. */
public enum MortarUse {
    /** The bed the membrane is laid in. */
    UNDER_MEMBRANE("under membrane"),
    /** The fill of the channels round the cable and the bed under the tile. */
    IN_AND_OVER_MEMBRANE("in and over membrane");

    private final String text;

    MortarUse(String text) {
        this.text = text;
    }

    /** The words for a list. */
    @Override
    public String toString() {
        return text;
    }
}
