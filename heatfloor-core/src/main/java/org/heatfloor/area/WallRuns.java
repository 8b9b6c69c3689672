package org.heatfloor.area;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * A room measured along its walls: a length, a turn, a length, a turn, back to the first corner. Turns to the left are
 * positive. Without a turn between two walls the second goes straight on. The last turn, back to the first wall's direction,
 * may be left out; when it is given, the turns must add up to a full turn, and what is missing is shared out equally over
 * the turns given as measured angles.
 *
 * <p>The misclosure is reported as a length and as a ratio to the perimeter and shared out by the compass rule. Round walls
 * are drawn as chords on the room's side of the arc, at most 0.1 mm from it, so clearances are not short.
 */
public final class WallRuns {

    /** A misclosure of more than the 200th part of the perimeter is refused. Common practice, no source. */
    static final double USUAL_LEAST_RATIO = 200;

    static final class Leg {
        final String name;
        final double lengthMetres;
        final double radiusMetres;
        final double sweepRadians;

        Leg(String name, double lengthMetres, double radiusMetres, double sweepRadians) {
            this.name = name;
            this.lengthMetres = lengthMetres;
            this.radiusMetres = radiusMetres;
            this.sweepRadians = sweepRadians;
        }

        boolean isArc() {
            return sweepRadians != 0;
        }

        double chordMetres() {
            return isArc() ? 2 * radiusMetres * Math.sin(Math.abs(sweepRadians) / 2) : lengthMetres;
        }
    }

    final List<Leg> legs = new ArrayList<>();
    final List<Double> turns = new ArrayList<>();
    final List<Boolean> turnMeasured = new ArrayList<>();
    final Fittings fittings = new Fittings();
    double leastRatio = USUAL_LEAST_RATIO;

    private WallRuns() {}

    /**
     * Starts at the first corner.
     *
     * @return an empty run
     */
    public static WallRuns start() {
        return new WallRuns();
    }

    /**
     * A straight wall.
     *
     * @param name what the fitter calls it
     * @param length as measured, 1 mm to 1 km
     * @return this run
     * @throws IllegalArgumentException if the name is blank or used already, or the length out of range
     */
    public WallRuns wall(String name, Quantity<Length> length) {
        double metres = Si.within("wall '" + name + "' length", length, Units.METRE, 0.001, 1_000);
        return add(new Leg(name, metres, 0, 0));
    }

    /**
     * A round wall that goes on in the direction of the wall before it (after the turn, where there is one).
     *
     * @param name what the fitter calls it
     * @param radius of the wall's face, 10 mm to 1 km
     * @param sweep angle of the arc, to the left positive, 0.5° to 350° either way
     * @return this run
     * @throws IllegalArgumentException if the name is blank or used already, or a figure out of range
     */
    public WallRuns arc(String name, Quantity<Length> radius, Quantity<Angle> sweep) {
        double metres = Si.within("wall '" + name + "' radius", radius, Units.METRE, 0.01, 1_000);
        double radians = Si.in("wall '" + name + "' sweep", sweep, Units.RADIAN);
        if (!(Math.abs(radians) >= Math.toRadians(0.5) && Math.abs(radians) <= Math.toRadians(350.01))) {
            throw new IllegalArgumentException(
                    "wall '" + name + "' sweep: " + QuantityText.write(sweep.to(Units.DEGREE), 4)
                            + " was given; 0.5 ° to 350 ° either way is expected");
        }
        return add(new Leg(name, metres * Math.abs(radians), metres, radians));
    }

    /**
     * A right-angled corner to the left.
     *
     * @return this run
     * @throws IllegalArgumentException if two turns follow each other
     */
    public WallRuns left() {
        return turn(Math.PI / 2, false);
    }

    /**
     * A right-angled corner to the right.
     *
     * @return this run
     * @throws IllegalArgumentException if two turns follow each other
     */
    public WallRuns right() {
        return turn(-Math.PI / 2, false);
    }

    /**
     * A corner of 45° to the left.
     *
     * @return this run
     * @throws IllegalArgumentException if two turns follow each other
     */
    public WallRuns halfLeft() {
        return turn(Math.PI / 4, false);
    }

    /**
     * A corner of 45° to the right.
     *
     * @return this run
     * @throws IllegalArgumentException if two turns follow each other
     */
    public WallRuns halfRight() {
        return turn(-Math.PI / 4, false);
    }

    /**
     * A corner with a measured angle.
     *
     * @param angle change of direction, to the left positive, less than 180° either way
     * @return this run
     * @throws IllegalArgumentException if the angle is out of range or two turns follow each other
     */
    public WallRuns turn(Quantity<Angle> angle) {
        double radians = Si.in("turn after wall '" + lastName() + "'", angle, Units.RADIAN);
        if (!(Math.abs(radians) <= Math.PI - 1e-6)) {
            throw new IllegalArgumentException("turn after wall '" + lastName() + "': "
                    + QuantityText.write(angle.to(Units.DEGREE), 4)
                    + " was given; less than 180 ° either way is expected");
        }
        return turn(radians, true);
    }

    /**
     * A niche let into the last straight wall.
     *
     * @param name what the fitter calls it
     * @param from distance from the wall's start to the niche
     * @param width along the wall
     * @param depth away from the room
     * @return this run
     * @throws IllegalArgumentException if a figure is not above zero or the niche does not fit the wall
     */
    public WallRuns niche(String name, Quantity<Length> from, Quantity<Length> width, Quantity<Length> depth) {
        fittings.niche(name, straight("niche '" + name + "'"), from, width, depth);
        return this;
    }

    /**
     * A pier or chimney breast that stands out from the last straight wall into the room.
     *
     * @param name what the fitter calls it
     * @param from distance from the wall's start to the pier
     * @param width along the wall
     * @param depth into the room
     * @return this run
     * @throws IllegalArgumentException if a figure is not above zero or the pier does not fit the wall
     */
    public WallRuns pier(String name, Quantity<Length> from, Quantity<Length> width, Quantity<Length> depth) {
        fittings.pier(name, straight("pier '" + name + "'"), from, width, depth);
        return this;
    }

    /**
     * A door opening in the last straight wall.
     *
     * @param name where it leads
     * @param from distance from the wall's start to the opening
     * @param width of the opening
     * @return this run
     * @throws IllegalArgumentException if a figure is out of range or the opening does not fit the wall
     */
    public WallRuns door(String name, Quantity<Length> from, Quantity<Length> width) {
        fittings.door(name, straight("door '" + name + "'"), from, width);
        return this;
    }

    /**
     * A rectangular column, measured from the first corner along the first wall and square to it.
     *
     * @param name what the fitter calls it
     * @param along distance along the first wall to the column's near corner
     * @param across distance from the first wall to the near face, to the left positive
     * @param width along the first wall
     * @param depth across it
     * @return this run
     * @throws IllegalArgumentException if a size is not above zero
     */
    public WallRuns column(
            String name,
            Quantity<Length> along,
            Quantity<Length> across,
            Quantity<Length> width,
            Quantity<Length> depth) {
        fittings.column(name, along, across, width, depth);
        return this;
    }

    /**
     * Refuses a worse misclosure than this; 1 : 200 until it is replaced (common practice, no source).
     *
     * @param ratio perimeter in units of the misclosure, 10 to 1,000,000
     * @return this run
     * @throws IllegalArgumentException if the ratio is out of range
     */
    public WallRuns leastRatio(double ratio) {
        if (!(ratio >= 10 && ratio <= 1_000_000)) {
            throw new IllegalArgumentException(
                    "least ratio: " + ratio + " was given; 10 to 1000000 (perimeter by misclosure) is expected");
        }
        leastRatio = ratio;
        return this;
    }

    /**
     * Back at the first corner: adjusts the measurements and makes the room.
     *
     * @return the room with its misclosure and the readings' residuals
     * @throws IllegalArgumentException if there are too few walls, the turns do not add up to a full turn, the misclosure is
     *     worse than the ratio allowed (the walls most likely misread are named), walls cross (both are named), or a column
     *     does not stand in the room
     */
    public SurveyedRoom close() {
        return new WallRunAdjustment(this).adjusted();
    }

    private WallRuns add(Leg leg) {
        if (leg.name.isBlank()) {
            throw new IllegalArgumentException("wall name: blank was given; a name is expected");
        }
        for (Leg other : legs) {
            if (other.name.equals(leg.name)) {
                throw new IllegalArgumentException(
                        "wall '" + leg.name + "': the name was given twice; a name of its own is expected");
            }
        }
        if (turns.size() < legs.size()) {
            turns.add(0.0);
            turnMeasured.add(false);
        }
        legs.add(leg);
        return this;
    }

    private WallRuns turn(double radians, boolean measured) {
        if (legs.isEmpty() || turns.size() >= legs.size()) {
            throw new IllegalArgumentException(
                    "turn after '" + lastName() + "': a turn follows no wall; a wall before each turn is expected");
        }
        turns.add(radians);
        turnMeasured.add(measured);
        return this;
    }

    private Fittings.Wall straight(String what) {
        if (legs.isEmpty() || legs.get(legs.size() - 1).isArc()) {
            throw new IllegalArgumentException(what + ": no straight wall before it; a straight wall is expected");
        }
        Leg wall = legs.get(legs.size() - 1);
        return new Fittings.Wall(wall.name, legs.size() - 1, wall.lengthMetres);
    }

    private String lastName() {
        return legs.isEmpty() ? "the start" : legs.get(legs.size() - 1).name;
    }
}
