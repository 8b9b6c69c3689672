package org.heatfloor.area;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Niches, piers, doors and columns, placed by tape along the walls of a room being measured. */
final class Fittings {

    /** A rectangle let into a wall (positive depth) or standing out from it into the room (negative depth). */
    record Recess(String name, int wall, double fromMetres, double widthMetres, double depthMetres) {

        String what() {
            return (depthMetres > 0 ? "niche '" : "pier '") + name + "'";
        }
    }

    record Opening(String name, int wall, double fromMetres, double widthMetres) {}

    /** In the frame of the first wall. */
    record Column(String name, double fromX, double fromY, double toX, double toY) {}

    /** A straight wall as measured. */
    record Wall(String name, int number, double lengthMetres) {}

    final List<Recess> recesses = new ArrayList<>();
    final List<Opening> openings = new ArrayList<>();
    final List<Column> columns = new ArrayList<>();

    void niche(String name, Wall wall, Quantity<Length> from, Quantity<Length> width, Quantity<Length> depth) {
        recess("niche '" + name + "'", name, wall, from, width, depth, 1);
    }

    void pier(String name, Wall wall, Quantity<Length> from, Quantity<Length> width, Quantity<Length> depth) {
        recess("pier '" + name + "'", name, wall, from, width, depth, -1);
    }

    private void recess(
            String what,
            String name,
            Wall wall,
            Quantity<Length> from,
            Quantity<Length> width,
            Quantity<Length> depth,
            int sign) {
        double[] place = along(what, wall, from, width);
        double metres = Si.within(what + " depth", depth, Units.METRE, 0.001, 100);
        recesses.add(new Recess(name, wall.number(), place[0], place[1], sign * metres));
    }

    void door(String name, Wall wall, Quantity<Length> from, Quantity<Length> width) {
        double[] place = along("door '" + name + "'", wall, from, width);
        openings.add(new Opening(name, wall.number(), place[0], place[1]));
    }

    void column(
            String name,
            Quantity<Length> along,
            Quantity<Length> across,
            Quantity<Length> width,
            Quantity<Length> depth) {
        String what = "column '" + name + "'";
        double x = Si.in(what + " along", along, Units.METRE);
        double y = Si.in(what + " across", across, Units.METRE);
        columns.add(new Column(
                name,
                x,
                y,
                x + Si.positive(what + " width", width, Units.METRE),
                y + Si.positive(what + " depth", depth, Units.METRE)));
    }

    private static double[] along(String what, Wall wall, Quantity<Length> from, Quantity<Length> width) {
        double start = Si.notNegative(what + " distance from the wall's start", from, Units.METRE);
        double size = Si.within(what + " width", width, Units.METRE, 0.001, 1_000);
        if (!(start + size <= wall.lengthMetres() + 1e-9)) {
            throw new IllegalArgumentException(what + ": " + from + " and " + width + " were given on wall '"
                    + wall.name() + "'; both together at most its length of " + wall.lengthMetres()
                    + " m are expected");
        }
        return new double[] {start, size};
    }
}
