package org.heatfloor.electrical;

/** What a room is used for, as far as electrical codes ask. */
public enum RoomUse {
    /** A room with bath or shower. */
    BATH_OR_SHOWER,
    /** A place with a hydromassage bath. */
    HYDROMASSAGE_BATH,
    /** A kitchen. */
    KITCHEN,
    /** Any other room. */
    OTHER;

    boolean wet() {
        return this == BATH_OR_SHOWER || this == HYDROMASSAGE_BATH;
    }
}
