package org.heatfloor.routing;

import org.locationtech.jts.geom.Coordinate;

/**
 * Reads bends back out of a drawn line whose arcs are chords. A chord of length c that turns by θ stands for an arc that
 * bulges by c·θ/8 and is longer by c·θ²/24 (circle, θ small); a segment whose bulge would pass the chord tolerance is a
 * straight run or a sharp corner, not a chord.
 */
final class DrawnBends {

    /** Arcs are drawn as chords at most this far off. */
    static final double CHORD_METRES = 0.0002;

    /** Points closer than this say nothing about a radius: their rounding would outweigh it. */
    private static final double STEP_METRES = 0.0005;

    private static final double RIGHT_ANGLE_PLAY = Math.toRadians(10);

    /**
     * The sharpest bend of a line.
     *
     * @param radiusMetres the radius; infinite on a straight line
     * @param at its place
     */
    record Sharpest(double radiusMetres, Coordinate at) {}

    private DrawnBends() {}

    /** How far the arc may bulge over a segment: zero for anything that cannot be a chord. */
    static double bulgeMetres(DrawnLine line, int segment) {
        double turn = Math.max(Math.abs(line.turn(segment)), Math.abs(line.turn(segment + 1)));
        double bulge = line.length(segment) * turn / 8;
        return bulge <= 1.05 * CHORD_METRES ? bulge : 0;
    }

    /** How much longer the arcs are than the chords drawn for them, in all. */
    static double shorteningMetres(DrawnLine drawn) {
        DrawnLine line = drawn.thinned(0);
        double sum = 0;
        for (int i = 0; i < line.segments(); i++) {
            if (bulgeMetres(line, i) > 0) {
                double angle = (share(line, i, i - 1) + share(line, i + 1, i + 1)) / 2;
                sum += line.length(i) * angle * angle / 24;
            }
        }
        return sum;
    }

    /** The turn at a point counts in full between two chords of one arc, twice where the arc begins or ends. */
    private static double share(DrawnLine line, int point, int neighbour) {
        double turn = Math.abs(line.turn(point));
        boolean within = neighbour >= 0 && neighbour < line.segments() && bulgeMetres(line, neighbour) > 0;
        return within ? turn : 2 * turn;
    }

    /**
     * The least radius a line shows: at each point the circle through it and its neighbours, where a neighbour farther
     * off than a chord of that circle may be long is replaced by the point that far off.
     */
    static Sharpest sharpest(DrawnLine drawn) {
        DrawnLine line = drawn.thinned(STEP_METRES);
        double least = Double.POSITIVE_INFINITY;
        int at = 0;
        for (int i = 1; i < line.points() - 1; i++) {
            double radius = radiusMetres(line.length(i - 1), line.length(i), Math.abs(line.turn(i)));
            if (radius < least) {
                least = radius;
                at = i;
            }
        }
        return new Sharpest(least, line.point(at));
    }

    /** Length of the line that lies in turns finer than the step bends are read with: next to nothing on a true bend. */
    static double raggedMetres(DrawnLine drawn) {
        return drawn.length() - drawn.thinned(STEP_METRES).length();
    }

    /** Radius shown by two segments that meet with a turn. */
    static double radiusMetres(double beforeMetres, double afterMetres, double turn) {
        double corner = CHORD_METRES / (1 - Math.cos(turn / 2));
        if (turn > Math.PI / 2) {
            return corner;
        }
        double radius = circle(beforeMetres, afterMetres, turn);
        for (int step = 0; step < 60; step++) {
            double chord = 2 * Math.sqrt(2 * radius * CHORD_METRES);
            double next = circle(Math.min(beforeMetres, chord), Math.min(afterMetres, chord), turn);
            if (!(next < radius * (1 - 1e-9))) {
                break;
            }
            radius = next;
        }
        return radius;
    }

    private static double circle(double before, double after, double turn) {
        double across = Math.sqrt(before * before + after * after + 2 * before * after * Math.cos(turn));
        return across / (2 * Math.sin(turn));
    }

    /** The number of right angles the line turns through; a half circle is two. */
    static int rightAngleTurns(DrawnLine drawn) {
        DrawnLine line = drawn.thinned(STEP_METRES);
        int turns = 0;
        double bend = 0;
        for (int i = 1; i < line.points() - 1; i++) {
            double turn = line.turn(i);
            boolean goesOn = bulgeMetres(line, i - 1) > 0 && bend * turn > 0;
            if (!goesOn) {
                turns += rightAngles(bend);
                bend = 0;
            }
            bend += turn;
        }
        return turns + rightAngles(bend);
    }

    private static int rightAngles(double bend) {
        return (int) Math.floor((Math.abs(bend) + RIGHT_ANGLE_PLAY) / (Math.PI / 2));
    }
}
