package org.heatfloor.takeoff;

/**
 * How the membrane's cut is chosen; for comparisons a cut without reuse of offcuts can be asked for, each sheet-sized field
 * of a fixed grid taking a sheet of its own.
 */
enum CutRule {
    /** The fewest sheets or rolls, then the fewest pieces, then the widest pieces, then the shortest joints. */
    FEWEST,
    /** One sheet or length for every field of the grid that begins at stud cell (0, 0); nothing reused. */
    NO_REUSE
}
