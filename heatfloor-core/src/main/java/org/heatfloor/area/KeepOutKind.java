package org.heatfloor.area;

/** What a place without cable is. */
public enum KeepOutKind {
    /** A water closet's flange with its wax seal, which softens when warmed. */
    TOILET_FLANGE,
    /** A floor opening that blows or draws air. */
    AIR_REGISTER,
    /** Furniture that stands on the floor without a gap: heat cannot leave beneath it and no one stands there. */
    FIXED_FURNITURE,
    /** Furniture on legs: heat leaves beneath it when it stands high enough. */
    FURNITURE_ON_LEGS,
    /** A shower tray. */
    SHOWER_TRAY,
    /** A bath. */
    BATH,
    /** A floor drain. */
    DRAIN,
    /** A column. */
    COLUMN,
    /** A door threshold. */
    THRESHOLD,
    /** A movement joint, which no heating cable bridges. */
    MOVEMENT_JOINT,
    /** Anything else. */
    OTHER
}
