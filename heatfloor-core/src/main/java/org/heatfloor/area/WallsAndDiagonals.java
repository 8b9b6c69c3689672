package org.heatfloor.area;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * A room measured by its walls and by diagonals, which gives its true shape without any angle: an out-of-square
 * quadrilateral needs one diagonal, a room of n corners n − 3 that part it into triangles. Every further diagonal checks the
 * others; then the corners are placed by least squares and each reading gets its residual. Walk round with the room at your
 * left hand.
 */
public final class WallsAndDiagonals {

    record Reading(String name, int from, int to, double metres) {}

    final List<String> corners = new ArrayList<>();
    final List<Reading> walls = new ArrayList<>();
    final List<Reading> diagonals = new ArrayList<>();
    final Fittings fittings = new Fittings();
    double deviationMetres = 0.003;
    private boolean closed;

    private WallsAndDiagonals(String firstCorner) {
        corners.add(checked(firstCorner));
    }

    /**
     * Starts at a corner.
     *
     * @param corner its name
     * @return a survey without readings
     * @throws IllegalArgumentException if the name is blank
     */
    public static WallsAndDiagonals from(String corner) {
        return new WallsAndDiagonals(corner);
    }

    /**
     * The wall to the next corner. The wall that names the first corner again closes the room.
     *
     * @param corner the next corner's name
     * @param length as measured, 1 mm to 1 km
     * @return this survey
     * @throws IllegalArgumentException if the room is closed already, the name blank or used already, or the length out of
     *     range
     */
    public WallsAndDiagonals wallTo(String corner, Quantity<Length> length) {
        String last = corners.get(corners.size() - 1);
        String name = (closed ? corners.get(0) : last) + "–" + checked(corner);
        if (closed) {
            throw new IllegalArgumentException("wall " + name + ": the walls are back at the first corner already");
        }
        double metres = Si.within("wall " + name + " length", length, Units.METRE, 0.001, 1_000);
        int at = corners.indexOf(corner);
        if (at > 0 || (at == 0 && corners.size() < 3)) {
            throw new IllegalArgumentException(
                    "wall " + name + ": corner '" + corner + "' was given twice; a corner of its own is expected");
        }
        int from = corners.size() - 1;
        if (at == 0) {
            closed = true;
        } else {
            corners.add(corner);
        }
        walls.add(new Reading(name, from, at == 0 ? 0 : corners.size() - 1, metres));
        return this;
    }

    /**
     * A diagonal inside the room, once all walls are given.
     *
     * @param from one corner
     * @param to another, not next to it
     * @param length as measured, 1 mm to 1 km
     * @return this survey
     * @throws IllegalArgumentException if the walls are not closed yet, a corner is unknown, or the length out of range
     */
    public WallsAndDiagonals diagonal(String from, String to, Quantity<Length> length) {
        String name = from + "–" + to;
        int a = corners.indexOf(from);
        int b = corners.indexOf(to);
        if (!closed || a < 0 || b < 0) {
            throw new IllegalArgumentException("diagonal " + name + ": "
                    + (closed ? "it names an unknown corner" : "the walls are not back at the first corner")
                    + "; two corners of a closed room are expected");
        }
        int apart = Math.abs(a - b);
        if (apart <= 1 || apart == corners.size() - 1) {
            throw new IllegalArgumentException(
                    "diagonal " + name + ": its corners are neighbours; corners with another between are expected");
        }
        diagonals.add(
                new Reading(name, a, b, Si.within("diagonal " + name + " length", length, Units.METRE, 0.001, 1_000)));
        return this;
    }

    /**
     * A niche let into the last wall.
     *
     * @param name what the fitter calls it
     * @param from distance from the wall's start to the niche
     * @param width along the wall
     * @param depth away from the room
     * @return this survey
     * @throws IllegalArgumentException if a figure is not above zero or the niche does not fit the wall
     */
    public WallsAndDiagonals niche(String name, Quantity<Length> from, Quantity<Length> width, Quantity<Length> depth) {
        fittings.niche(name, last("niche '" + name + "'"), from, width, depth);
        return this;
    }

    /**
     * A pier or chimney breast that stands out from the last wall into the room.
     *
     * @param name what the fitter calls it
     * @param from distance from the wall's start to the pier
     * @param width along the wall
     * @param depth into the room
     * @return this survey
     * @throws IllegalArgumentException if a figure is not above zero or the pier does not fit the wall
     */
    public WallsAndDiagonals pier(String name, Quantity<Length> from, Quantity<Length> width, Quantity<Length> depth) {
        fittings.pier(name, last("pier '" + name + "'"), from, width, depth);
        return this;
    }

    /**
     * A door opening in the last wall.
     *
     * @param name where it leads
     * @param from distance from the wall's start to the opening
     * @param width of the opening
     * @return this survey
     * @throws IllegalArgumentException if a figure is out of range or the opening does not fit the wall
     */
    public WallsAndDiagonals door(String name, Quantity<Length> from, Quantity<Length> width) {
        fittings.door(name, last("door '" + name + "'"), from, width);
        return this;
    }

    /**
     * A rectangular column, measured from the first corner along the first wall and square to it.
     *
     * @param name what the fitter calls it
     * @param along distance along the first wall to the column's near corner
     * @param across distance from the first wall to the near face
     * @param width along the first wall
     * @param depth across it
     * @return this survey
     * @throws IllegalArgumentException if a size is not above zero
     */
    public WallsAndDiagonals column(
            String name,
            Quantity<Length> along,
            Quantity<Length> across,
            Quantity<Length> width,
            Quantity<Length> depth) {
        fittings.column(name, along, across, width, depth);
        return this;
    }

    private Fittings.Wall last(String what) {
        if (walls.isEmpty()) {
            throw new IllegalArgumentException(what + ": no wall before it; a wall is expected");
        }
        Reading wall = walls.get(walls.size() - 1);
        return new Fittings.Wall(wall.name(), walls.size() - 1, wall.metres());
    }

    /**
     * How well a length is read; 3 mm until it is replaced (common practice, no source). It decides which residual is too
     * large, not the shape.
     *
     * @param deviation standard deviation of one reading, above zero
     * @return this survey
     * @throws IllegalArgumentException if it is not above zero
     */
    public WallsAndDiagonals readTo(Quantity<Length> deviation) {
        deviationMetres = Si.positive("standard deviation of a reading", deviation, Units.METRE);
        return this;
    }

    /**
     * The standard deviation in use.
     *
     * @return the deviation
     */
    public Quantity<Length> readTo() {
        return Amounts.metres(deviationMetres);
    }

    /**
     * Places the corners.
     *
     * @return the room with every reading's residual, and a finding that names the reading most likely wrong
     * @throws IllegalArgumentException if the walls do not close, a corner cannot be placed (it is named with the diagonal
     *     that is missing), three lengths make no triangle (they are named), or walls cross
     */
    public SurveyedRoom place() {
        if (!closed) {
            throw new IllegalArgumentException("walls: they end at corner '" + corners.get(corners.size() - 1)
                    + "'; a wall back to '" + corners.get(0) + "' is expected");
        }
        return new DiagonalAdjustment(this).placed();
    }

    private static String checked(String corner) {
        if (corner.isBlank()) {
            throw new IllegalArgumentException("corner name: blank was given; a name is expected");
        }
        return corner;
    }
}
