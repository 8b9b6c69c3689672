package org.heatfloor.plan;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.heatfloor.area.TradeLength;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;

/**
 * How a cable is to be laid.
 *
 * @param minSpacing least spacing of runs, centre line to centre line
 * @param maxSpacing greatest spacing of runs
 * @param minBendRadius least radius of a bend of the centre line
 * @param start where the cold lead leaves the wall, in metres
 * @param riser cold lead used up inside the wall
 * @param jointLength length of the joint between cold lead and heating part, which lies straight
 * @param cableHeight height of the cable's axis above the membrane's underside; flush with the stud tops where empty
 * @param floorSensor whether a floor sensor limits the floor's temperature
 */
public record CableRules(
        TradeLength minSpacing,
        TradeLength maxSpacing,
        Quantity<Length> minBendRadius,
        Point start,
        Quantity<Length> riser,
        Quantity<Length> jointLength,
        Optional<Quantity<Length>> cableHeight,
        boolean floorSensor) {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    /**
     * Checks the figures.
     *
     * @param minSpacing least spacing of runs, centre line to centre line
     * @param maxSpacing greatest spacing of runs
     * @param minBendRadius least radius of a bend of the centre line
     * @param start where the cold lead leaves the wall, in metres
     * @param riser cold lead used up inside the wall
     * @param jointLength length of the joint between cold lead and heating part, which lies straight
     * @param cableHeight height of the cable's axis above the membrane's underside; flush with the stud tops where empty
     * @param floorSensor whether a floor sensor limits the floor's temperature
     * @throws IllegalArgumentException if a length is negative or the start is empty or not finite
     */
    public CableRules {
        Objects.requireNonNull(minSpacing, "minSpacing");
        Objects.requireNonNull(maxSpacing, "maxSpacing");
        Si.within("least bend radius", minBendRadius, Units.METRE, 0, 1);
        Si.within("riser", riser, Units.METRE, 0, 100);
        Si.within("joint length", jointLength, Units.METRE, 0, 2);
        cableHeight.ifPresent(h -> Si.within("cable height", h, Units.METRE, 0, 1));
        if (start.isEmpty() || !Double.isFinite(start.getX()) || !Double.isFinite(start.getY())) {
            throw new IllegalArgumentException(
                    "start: " + start + " was given; a point with finite coordinates is expected");
        }
        start = (Point) start.copy();
    }

    /**
     * Rules with the usual riser of 1.2 m, joint of 100 mm, cable flush with the stud tops and a floor sensor (common
     * practice, no source).
     *
     * @param minSpacing least spacing of runs
     * @param maxSpacing greatest spacing of runs
     * @param minBendRadius least bend radius
     * @param startX where the cold lead leaves the wall
     * @param startY where the cold lead leaves the wall
     * @param unit the unit of the start's coordinates
     * @return the rules
     * @throws IllegalArgumentException if a figure is out of range
     */
    public static CableRules of(
            TradeLength minSpacing,
            TradeLength maxSpacing,
            Quantity<Length> minBendRadius,
            double startX,
            double startY,
            Unit<Length> unit) {
        double metres = Si.in("unit", Amounts.of(1, unit), Units.METRE);
        return new CableRules(
                minSpacing,
                maxSpacing,
                minBendRadius,
                FACTORY.createPoint(new Coordinate(startX * metres, startY * metres)),
                Amounts.metres(1.2),
                Amounts.millimetres(100),
                Optional.empty(),
                true);
    }

    /**
     * The place where the cold lead leaves the wall.
     *
     * @return a copy, in metres
     */
    @Override
    public Point start() {
        return (Point) start.copy();
    }

    /**
     * The same rules with another riser.
     *
     * @param length cold lead used up inside the wall
     * @return a copy
     */
    public CableRules withRiser(Quantity<Length> length) {
        return new CableRules(
                minSpacing, maxSpacing, minBendRadius, start, length, jointLength, cableHeight, floorSensor);
    }

    /**
     * The same rules with another joint length.
     *
     * @param length length that lies straight
     * @return a copy
     */
    public CableRules withJointLength(Quantity<Length> length) {
        return new CableRules(minSpacing, maxSpacing, minBendRadius, start, riser, length, cableHeight, floorSensor);
    }

    /**
     * The same rules with the cable at a given height.
     *
     * @param height of the axis above the membrane's underside
     * @return a copy
     */
    public CableRules withCableHeight(Quantity<Length> height) {
        return new CableRules(
                minSpacing, maxSpacing, minBendRadius, start, riser, jointLength, Optional.of(height), floorSensor);
    }

    /**
     * The same rules without a floor sensor; passing the surface limit is then an error.
     *
     * @return a copy
     */
    public CableRules withoutFloorSensor() {
        return new CableRules(minSpacing, maxSpacing, minBendRadius, start, riser, jointLength, cableHeight, false);
    }
}
