package org.heatfloor.takeoff;

/** A stud's outline seen from above. */
public enum StudPlan {
    /** Round: its size is a diameter. */
    ROUND(Math.PI / 4),
    /** Square: its size is a side. */
    SQUARE(1);

    private final double share;

    StudPlan(double share) {
        this.share = share;
    }

    /** Mean area over the height of a stud that changes evenly from one size to the other: volume over height of a frustum. */
    double meanSquareMetres(double footMetres, double headMetres) {
        return share * (footMetres * footMetres + footMetres * headMetres + headMetres * headMetres) / 3;
    }
}
