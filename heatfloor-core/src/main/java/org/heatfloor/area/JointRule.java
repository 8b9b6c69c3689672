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
 * How large a bay between movement joints may be. Editions and countries differ, so a rule is chosen, not built in.
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
                Source.document("The Tile Association, guide to tiling floors", "section 10"));
    }

    private static JointRule sides(String name, Quantity<Length> longest, Source source) {
        return new JointRule(name, longest, Optional.empty(), OptionalDouble.empty(), source);
    }
}
