package org.heatfloor.takeoff;

/**
 * Mortar between the studs of a membrane, as a depth in metres (m³/m²). Derived geometry: the height times the share of the
 * cell the stud leaves free. Cut studs at walls are left out of account.
 */
final class Cavity {

    private Cavity() {}

    static double squareCell(double pitchMetres) {
        return pitchMetres * pitchMetres;
    }

    static double triangularCell(double pitchMetres) {
        return pitchMetres * pitchMetres * Math.sqrt(3) / 2;
    }

    /** Mean plan area of a round stud, straight, tapered or cut back. */
    static double roundStud(double footMetres, double headMetres) {
        return Math.PI / 12 * (footMetres * footMetres + footMetres * headMetres + headMetres * headMetres);
    }

    /** Mean plan area of a square stud, straight, tapered or cut back. */
    static double squareStud(double footMetres, double headMetres) {
        return (footMetres * footMetres + footMetres * headMetres + headMetres * headMetres) / 3;
    }

    static double openDepth(double heightMetres, double cellSquareMetres, double studSquareMetres) {
        return heightMetres * (1 - studSquareMetres / cellSquareMetres);
    }

    /** What a cable laid at a spacing takes of that depth. */
    static double cableDepth(double diameterMetres, double spacingMetres) {
        return cableSection(diameterMetres) / spacingMetres;
    }

    static double cableSection(double diameterMetres) {
        return Math.PI * diameterMetres * diameterMetres / 4;
    }
}
