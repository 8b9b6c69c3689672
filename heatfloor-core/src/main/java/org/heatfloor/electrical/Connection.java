package org.heatfloor.electrical;

/** How several cables are joined. */
public enum Connection {
    /** Each at the full supply voltage: the only way cables are joined. */
    PARALLEL,
    /** One behind the other: refused. */
    SERIES
}
