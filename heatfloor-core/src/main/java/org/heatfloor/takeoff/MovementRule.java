package org.heatfloor.takeoff;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.TemperatureCoefficient;
import org.heatfloor.quantity.TemperatureDifference;
import org.heatfloor.quantity.Units;

/**
 * How large a bay of tile may be before a movement joint parts it. Editions differ and are not mixed: each constant is one
 * document.
 *
 * @param longest longest edge of a bay
 * @param largest largest area of a bay
 * @param ratio greatest ratio of the edges
 * @param source where the limits stand
 */
public record MovementRule(Quantity<Length> longest, Quantity<Area> largest, double ratio, Source source) {

    private static final Quantity<Area> ANY_AREA = Amounts.squareMetres(1e6);
    private static final double ANY_RATIO = 1e6;

    /** More bays than this are no floor; a ratio near 1 may never be met at all. */
    private static final int MOST_BAYS = 10_000;

    /** Interior floors. */
    public static final MovementRule EJ171_INTERIOR = new MovementRule(
            Amounts.feet(25),
            ANY_AREA,
            ANY_RATIO,
            Source.document("TCNA Handbook 2018", "EJ171: interior at most 25 ft each way"));

    /** Floors outside, and inside in direct sun or moisture; designers use it for heated floors too. */
    public static final MovementRule EJ171_SUN_OR_MOISTURE = new MovementRule(
            Amounts.feet(12),
            ANY_AREA,
            ANY_RATIO,
            Source.document("TCNA Handbook", "EJ171: exterior, or interior in sun or moisture, 8 to 12 ft each way"));

    /** Heated floors in the United Kingdom. */
    public static final MovementRule BS_5385_HEATED = new MovementRule(
            Amounts.metres(8),
            Amounts.squareMetres(40),
            ANY_RATIO,
            Source.fromMemory("BS 5385-3:2014, heated floors: bays of at most 40 m² with no edge above 8 m"));

    /** Heated screeds under tile or stone, with the ratio read as a limit. */
    public static final MovementRule EN_1264_4 = new MovementRule(
            Amounts.metres(8),
            Amounts.squareMetres(40),
            2,
            Source.fromMemory("EN 1264-4: bays of at most 40 m², 8 m, and 2 to 1"));

    /**
     * Checks the limits.
     *
     * @param longest longest edge of a bay
     * @param largest largest area of a bay
     * @param ratio greatest ratio of the edges
     * @param source where the limits stand
     * @throws IllegalArgumentException if a limit is not above zero or the ratio below 1
     */
    public MovementRule {
        Objects.requireNonNull(source, "source");
        Si.positive("longest edge", longest, Units.METRE);
        Si.positive("largest bay", largest, Units.SQUARE_METRE);
        if (!(ratio >= 1)) {
            throw new IllegalArgumentException("bay ratio: " + ratio + " was given; 1 or more is expected");
        }
    }

    /**
     * A rectangle parted into equal bays.
     *
     * @param along bays along its length
     * @param across bays along its width
     * @param lowerBound bays no parting can do without: area over the largest bay
     */
    public record Bays(int along, int across, int lowerBound) {

        /**
         * Bays in all.
         *
         * @return their count
         */
        public int count() {
            return along * across;
        }
    }

    /**
     * Equal bays along one run: the run over the longest edge, rounded up.
     *
     * @param run the run
     * @return the count; one less is the count of joints
     * @throws IllegalArgumentException if the run is not above 0 and at most 10 km
     */
    public int bays(Quantity<Length> run) {
        Si.positive("run", run, Units.METRE);
        double metres = Si.within("run", run, Units.METRE, 0, 10_000);
        return (int) Math.ceil(metres / Si.in("longest", longest, Units.METRE) - 1e-9);
    }

    /**
     * The fewest equal bays in rows and columns that keep all limits. A layout that is not a grid can do with fewer, never
     * with fewer than the bound.
     *
     * @param length of the rectangle
     * @param width of the rectangle
     * @return the bays
     * @throws IllegalArgumentException if a side is not above 0 and at most 1 km, or no grid of up to 10,000 bays keeps
     *     the limits
     */
    public Bays grid(Quantity<Length> length, Quantity<Length> width) {
        Si.positive("bay grid length", length, Units.METRE);
        double l = Si.within("bay grid length", length, Units.METRE, 0, 1_000);
        Si.positive("bay grid width", width, Units.METRE);
        double w = Si.within("bay grid width", width, Units.METRE, 0, 1_000);
        double edge = Si.in("longest", longest, Units.METRE);
        double byArea = Math.ceil(l * w / Si.in("largest", largest, Units.SQUARE_METRE) - 1e-9);
        double byEdge = Math.ceil(l / edge - 1e-9) * Math.ceil(w / edge - 1e-9);
        double first = Math.max(1, Math.max(byArea, byEdge));
        for (int count = (int) Math.min(first, MOST_BAYS + 1.0); count <= MOST_BAYS; count++) {
            for (int along = count; along >= 1; along--) {
                int across = count / along;
                if (count % along == 0 && fits(l / along, w / across)) {
                    return new Bays(along, across, (int) byArea);
                }
            }
        }
        throw new IllegalArgumentException("bay grid: " + length + " by " + width + " was given; sides that at most "
                + MOST_BAYS + " equal bays within the rule's edge, area and ratio part are expected");
    }

    /** Whether a rectangular bay keeps all limits. */
    boolean fits(double lengthMetres, double widthMetres) {
        double longer = Math.max(lengthMetres, widthMetres);
        double shorter = Math.min(lengthMetres, widthMetres);
        return longer <= Si.in("longest", longest, Units.METRE) + 1e-9
                && longer * shorter <= Si.in("largest", largest, Units.SQUARE_METRE) + 1e-9
                && longer <= ratio * shorter + 1e-9;
    }

    /**
     * Free thermal movement of a bay: expansion coefficient times length times change of temperature.
     *
     * @param expansion of the covering or its base
     * @param length of the bay
     * @param change of its temperature
     * @return the movement
     */
    public static Quantity<Length> movement(
            Quantity<TemperatureCoefficient> expansion,
            Quantity<Length> length,
            Quantity<TemperatureDifference> change) {
        return Amounts.metres(Si.notNegative("expansion coefficient", expansion, Units.ONE_PER_KELVIN)
                * Si.notNegative("bay length", length, Units.METRE)
                * Si.notNegative("temperature change", change, Units.KELVIN_DIFFERENCE));
    }

    /**
     * Least width of a joint whose sealant follows a movement: the movement over the share of its width the sealant takes.
     *
     * @param movement of the joint
     * @param capability share of its width the sealant takes, above 0 and at most 1; 25 % is common
     * @return the width
     * @throws IllegalArgumentException if a value is out of range
     */
    public static Quantity<Length> width(Quantity<Length> movement, Quantity<Dimensionless> capability) {
        Si.positive("sealant capability", capability, Units.ONE);
        double share = Si.within("sealant capability", capability, Units.ONE, 0, 1);
        return Amounts.metres(Si.notNegative("movement", movement, Units.METRE) / share);
    }

    /**
     * Width of an exterior joint: 3/8 in at 8 ft, 1/2 in at 12 ft, and 1/16 in more for every 15 °F, or part of it, of the
     * yearly range above 100 °F (TCNA Handbook, EJ171).
     *
     * @param spacing of the joints, at most 12 ft
     * @param yearlyRange of the surface temperature
     * @return the width
     * @throws IllegalArgumentException if the spacing is above 12 ft
     */
    public static Quantity<Length> exteriorWidth(
            Quantity<Length> spacing, Quantity<TemperatureDifference> yearlyRange) {
        double feet = Si.within("exterior joint spacing", spacing, Units.FOOT, 0, 12 + 1e-9);
        double range = Si.notNegative("yearly range", yearlyRange, Units.FAHRENHEIT_DIFFERENCE);
        double steps = Math.ceil(Math.max(0, range - 100) / 15 - 1e-9);
        return Amounts.inches((feet <= 8 + 1e-9 ? 3.0 / 8 : 1.0 / 2) + steps / 16);
    }
}
