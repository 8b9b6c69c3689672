package org.heatfloor.area;

import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * How large a bay of tile between movement joints may be. Editions and countries differ and are not mixed, so a rule is
 * chosen, not built in: each factory is one document.
 *
 * @param name what it is called
 * @param longestSide the longest side of a bay
 * @param largestArea the largest bay, where the rule limits it
 * @param greatestRatio the greatest ratio of length to width, where the rule limits it
 * @param source what it rests on
 */
public record JointRule(
        String name,
        Quantity<Length> longestSide,
        Optional<Quantity<Area>> largestArea,
        OptionalDouble greatestRatio,
        Source source) {

    /** More bays than this are no floor; a ratio near 1 may never be met at all. */
    private static final int MOST_BAYS = 10_000;

    private static final double SLACK = 1e-9;

    /**
     * A rectangle parted into equal bays.
     *
     * @param along bays along its length
     * @param across bays along its width
     * @param lowerBound bays no parting can do without: area over the largest bay, rounded up; 1 where the rule limits no area
     */
    public record BayGrid(int along, int across, int lowerBound) {

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
     * Checks the limits.
     *
     * @param name what it is called
     * @param longestSide the longest side of a bay
     * @param largestArea the largest bay, where the rule limits it
     * @param greatestRatio the greatest ratio of length to width, where the rule limits it
     * @param source what it rests on
     * @throws IllegalArgumentException if a limit is not above zero
     */
    public JointRule {
        Si.positive("joint rule '" + name + "' longest side", longestSide, Units.METRE);
        largestArea.ifPresent(a -> Si.positive("joint rule '" + name + "' largest area", a, Units.SQUARE_METRE));
        if (greatestRatio.isPresent() && !(greatestRatio.getAsDouble() >= 1)) {
            throw new IllegalArgumentException("joint rule '" + name + "' greatest ratio: "
                    + greatestRatio.getAsDouble() + " was given; 1 or more is expected");
        }
    }

    /**
     * Interior tile in North America: 25 ft each way.
     *
     * @return the rule
     */
    public static JointRule interiorNorthAmerica() {
        return sides(
                "interior tile, North America",
                Amounts.feet(25),
                Source.document("TCNA Handbook, EJ171, as reported in the NTCA Reference Manual 2024/25", "page 23"));
    }

    /**
     * Tile in direct sun or moisture in North America: 12 ft each way.
     *
     * @return the rule
     */
    public static JointRule sunOrMoistureNorthAmerica() {
        return sides(
                "tile in direct sun or moisture, North America",
                Amounts.feet(12),
                Source.document("TCNA Handbook, EJ171, as reported in the NTCA Reference Manual 2024/25", "page 23"));
    }

    /**
     * Heated interior tile in North America: many designers use the 12 ft of floors in direct sun.
     *
     * @return the rule
     */
    public static JointRule heatedNorthAmerica() {
        return sides(
                "heated tile, North America",
                Amounts.feet(12),
                Source.commonPractice("heated tile is treated as tile in direct sun, 8 ft to 12 ft each way"));
    }

    /**
     * Heated screed bays for tile and stone: 40 m², 8 m, and length to width 2 : 1, all read as limits.
     *
     * @return the rule
     */
    public static JointRule heatedScreedEurope() {
        return new JointRule(
                "heated screed, Europe",
                Amounts.metres(8),
                Optional.of(Amounts.squareMetres(40)),
                OptionalDouble.of(2),
                Source.fromMemory("EN 1264-4; the ratio may be a permission for longer bays instead of a limit"));
    }

    /**
     * Heated or strongly warmed floors in the United Kingdom: 40 m², no edge over 8 m.
     *
     * @return the rule
     */
    public static JointRule heatedUnitedKingdom() {
        return new JointRule(
                "heated floor, United Kingdom",
                Amounts.metres(8),
                Optional.of(Amounts.squareMetres(40)),
                OptionalDouble.empty(),
                Source.fromMemory("BS 5385-3:2014"));
    }

    /**
     * Intermediate joints of tiled floors in the United Kingdom: at most 10 m apart.
     *
     * @return the rule
     */
    public static JointRule intermediateUnitedKingdom() {
        return sides(
                "tiled floor, United Kingdom",
                Amounts.metres(10),
                Source.document("The Tile Association, guide (edition not stated)", "section 10"));
    }

    /**
     * Equal bays along one run: the run over the longest side, rounded up. One less is the count of joints.
     *
     * @param run the run
     * @return the count
     * @throws IllegalArgumentException if the run is not above 0 and at most 10 km
     */
    public int bays(Quantity<Length> run) {
        Si.positive("run", run, Units.METRE);
        double metres = Si.within("run", run, Units.METRE, 0, 10_000);
        return (int) Math.ceil(metres / Si.in("longest side", longestSide, Units.METRE) - SLACK);
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
    public BayGrid grid(Quantity<Length> length, Quantity<Length> width) {
        Si.positive("bay grid length", length, Units.METRE);
        double l = Si.within("bay grid length", length, Units.METRE, 0, 1_000);
        Si.positive("bay grid width", width, Units.METRE);
        double w = Si.within("bay grid width", width, Units.METRE, 0, 1_000);
        double side = Si.in("longest side", longestSide, Units.METRE);
        double byArea = Math.max(1, Math.ceil(l * w / largestSquareMetres() - SLACK));
        double bySide = Math.ceil(l / side - SLACK) * Math.ceil(w / side - SLACK);
        double first = Math.max(byArea, bySide);
        for (int count = (int) Math.min(first, MOST_BAYS + 1.0); count <= MOST_BAYS; count++) {
            for (int along = count; along >= 1; along--) {
                int across = count / along;
                if (count % along == 0 && allows(l / along, w / across)) {
                    return new BayGrid(along, across, (int) byArea);
                }
            }
        }
        throw new IllegalArgumentException("bay grid: " + length + " by " + width + " was given; sides that at most "
                + MOST_BAYS + " equal bays within the rule's side, area and ratio part are expected");
    }

    /**
     * Whether a rectangular bay keeps all limits.
     *
     * @param length of the bay
     * @param width of the bay
     * @return true when side, area and ratio are within the rule
     * @throws IllegalArgumentException if a side is not above zero
     */
    public boolean allows(Quantity<Length> length, Quantity<Length> width) {
        return allows(Si.positive("bay length", length, Units.METRE), Si.positive("bay width", width, Units.METRE));
    }

    private boolean allows(double lengthMetres, double widthMetres) {
        double longer = Math.max(lengthMetres, widthMetres);
        double shorter = Math.min(lengthMetres, widthMetres);
        return longer <= Si.in("longest side", longestSide, Units.METRE) + SLACK
                && longer * shorter <= largestSquareMetres() + SLACK
                && longer <= greatestRatio.orElse(Double.POSITIVE_INFINITY) * shorter + SLACK;
    }

    private double largestSquareMetres() {
        return largestArea
                .map(a -> Si.in("largest area", a, Units.SQUARE_METRE))
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static JointRule sides(String name, Quantity<Length> longest, Source source) {
        return new JointRule(name, longest, Optional.empty(), OptionalDouble.empty(), source);
    }
}
