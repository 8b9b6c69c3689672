package org.heatfloor.takeoff;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * How a tile layout is set out.
 *
 * @param start where it is set out from
 * @param direction of the tiles' length against the x axis; along the longest wall, or the named line, when empty
 * @param perimeterGap soft gap to walls and columns
 * @param movementJoint width of a movement joint in the field
 * @param reuseOffcuts whether the rest of a cut tile may serve elsewhere
 */
public record LayoutRule(
        TileStart start,
        Optional<Quantity<Angle>> direction,
        Quantity<Length> perimeterGap,
        Quantity<Length> movementJoint,
        boolean reuseOffcuts) {

    /**
     * Balanced, along the longest wall, offcuts reused, with gap and joints of 6 mm: the least width of perimeter and
     * intermediate movement joints in The Tile Association's guide, section 10.
     */
    public static final LayoutRule USUAL = new LayoutRule(
            TileStart.balanced(), Optional.empty(), Amounts.millimetres(6), Amounts.millimetres(6), true);

    /**
     * Checks the values.
     *
     * @param start where it is set out from
     * @param direction of the tiles' length against the x axis; along the longest wall, or the named line, when empty
     * @param perimeterGap soft gap to walls and columns
     * @param movementJoint width of a movement joint in the field
     * @param reuseOffcuts whether the rest of a cut tile may serve elsewhere
     * @throws IllegalArgumentException if gap or joint is not 0 to 50 mm
     */
    public LayoutRule {
        Objects.requireNonNull(start, "start");
        direction.ifPresent(d -> Si.in("tile direction", d, Units.RADIAN));
        Si.within("perimeter gap", perimeterGap, Units.MILLIMETRE, 0, 50);
        Si.within("movement joint", movementJoint, Units.MILLIMETRE, 0, 50);
    }

    /**
     * The same rule set out from elsewhere.
     *
     * @param from where the layout is set out from
     * @return a copy
     */
    public LayoutRule from(TileStart from) {
        return new LayoutRule(from, direction, perimeterGap, movementJoint, reuseOffcuts);
    }

    /**
     * The same rule with the tiles' length in a given direction.
     *
     * @param angle against the x axis, counter-clockwise
     * @return a copy
     * @throws IllegalArgumentException if it is not finite
     */
    public LayoutRule along(Quantity<Angle> angle) {
        return new LayoutRule(start, Optional.of(angle), perimeterGap, movementJoint, reuseOffcuts);
    }

    /**
     * The same rule without reuse of offcuts.
     *
     * @return a copy
     */
    public LayoutRule withoutReuse() {
        return new LayoutRule(start, direction, perimeterGap, movementJoint, false);
    }

    /**
     * The same rule with other soft gaps.
     *
     * @param perimeter gap to walls and columns
     * @param movement width of a movement joint in the field
     * @return a copy
     * @throws IllegalArgumentException if one is not 0 to 50 mm
     */
    public LayoutRule withGaps(Quantity<Length> perimeter, Quantity<Length> movement) {
        return new LayoutRule(start, direction, perimeter, movement, reuseOffcuts);
    }
}
