package org.heatfloor.routing;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Finding;

/**
 * What the independent check measured on one drawn cable.
 *
 * @param name the cable
 * @param laidLength length of the drawn heating line, chords summed
 * @param chordShortening how much longer the arcs are than their chords, as estimated from the drawing
 * @param leftOver cable length less laid length; negative when the cable would have to be stretched
 * @param leastSeparation least distance of points of the heating line farther apart along it than π/2 times the minimum
 *     spacing, of the two ends of a single-conductor cable, and to the other cables; none when no points count
 * @param leastWallClearance least distance to the walls and columns
 * @param leastClearance least distance to each keep-out's edge, by its name, in the order of the brief
 * @param leastBendRadius the sharpest bend; none when the line is straight
 * @param leastStudGap least gap between the cable at its diameter and a stud; negative when they overlap
 * @param rightAngleTurns number of right-angle turns; a half circle is two
 * @param coldLeadLengths drawn length of each cold lead
 * @param coldLeadSurplus what is left of each cold lead after the part in the wall and the part in the floor
 * @param findings every judgement on this cable
 */
public record CableCheck(
        String name,
        Quantity<Length> laidLength,
        Quantity<Length> chordShortening,
        Quantity<Length> leftOver,
        Optional<Quantity<Length>> leastSeparation,
        Quantity<Length> leastWallClearance,
        Map<String, Quantity<Length>> leastClearance,
        Optional<Quantity<Length>> leastBendRadius,
        Quantity<Length> leastStudGap,
        int rightAngleTurns,
        List<Quantity<Length>> coldLeadLengths,
        List<Quantity<Length>> coldLeadSurplus,
        List<Finding> findings) {

    /**
     * Copies the collections.
     *
     * @param name the cable
     * @param laidLength length of the drawn heating line, chords summed
     * @param chordShortening how much longer the arcs are than their chords, as estimated from the drawing
     * @param leftOver cable length less laid length; negative when the cable would have to be stretched
     * @param leastSeparation least distance of points of the heating line farther apart along it than π/2 times the minimum
     *     spacing, of the two ends of a single-conductor cable, and to the other cables; none when no points count
     * @param leastWallClearance least distance to the walls and columns
     * @param leastClearance least distance to each keep-out's edge, by its name, in the order of the brief
     * @param leastBendRadius the sharpest bend; none when the line is straight
     * @param leastStudGap least gap between the cable at its diameter and a stud; negative when they overlap
     * @param rightAngleTurns number of right-angle turns; a half circle is two
     * @param coldLeadLengths drawn length of each cold lead
     * @param coldLeadSurplus what is left of each cold lead after the part in the wall and the part in the floor
     * @param findings every judgement on this cable
     * @throws NullPointerException if a part is missing
     */
    public CableCheck {
        Objects.requireNonNull(leastSeparation, "leastSeparation");
        Objects.requireNonNull(leastBendRadius, "leastBendRadius");
        leastClearance = Collections.unmodifiableMap(new LinkedHashMap<>(leastClearance));
        coldLeadLengths = List.copyOf(coldLeadLengths);
        coldLeadSurplus = List.copyOf(coldLeadSurplus);
        findings = List.copyOf(findings);
    }

    /**
     * Whether nothing forbids laying this cable so.
     *
     * @return true when no finding is an error
     */
    public boolean passes() {
        return findings.stream().noneMatch(Finding::isError);
    }
}
