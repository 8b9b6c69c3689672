package org.heatfloor.takeoff;

/** How the rows of tile lie to each other. */
public enum TilePattern {
    /** Joints run through both ways. */
    STRAIGHT(1),
    /** Each row shifted by a third of a tile and a joint. */
    THIRD_OFFSET(3),
    /** Every other row shifted by half a tile and a joint. */
    HALF_OFFSET(2),
    /** Joints run through both ways, turned by 45°. */
    DIAGONAL(1);

    private final int steps;

    TilePattern(int steps) {
        this.steps = steps;
    }

    /** Shift of a row as a share of tile and joint. */
    double shift(int row) {
        return (double) Math.floorMod(row, steps) / steps;
    }

    boolean isOffset() {
        return steps > 1;
    }
}
