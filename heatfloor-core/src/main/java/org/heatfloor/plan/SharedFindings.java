package org.heatfloor.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.SharedOutcome;

/** What is said of a floor that several cables share. */
final class SharedFindings {

    private static final double UNEVEN = 1.1;

    private SharedFindings() {}

    /** The cables of an option in words, as "5 × M63, M56". */
    static String names(Option option) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (HeatingCable cable : option.cables()) {
            counts.merge(cable.name(), 1, Integer::sum);
        }
        return counts.entrySet().stream()
                .map(e -> e.getValue() == 1 ? e.getKey() : e.getValue() + " × " + e.getKey())
                .collect(Collectors.joining(", "));
    }

    static Finding failure(Option option, SharedOutcome outcome) {
        if (outcome instanceof SharedOutcome.TooLong t) {
            return Finding.of(
                    Severity.ERROR,
                    names(option),
                    "Impossible: together too long by " + Options.atLeast(Si.in("excess", t.excess(), Units.METRE))
                            + "; at most " + metres(t.capacity()) + " can lie here.",
                    Amounts.metres(option.lengthMetres()),
                    t.capacity(),
                    Source.derived("area of the least spacing's squares over the spacing"));
        }
        if (outcome instanceof SharedOutcome.NotReached n) {
            return Finding.of(
                    Severity.ERROR,
                    names(option),
                    "No way was found to share this floor so that every cold lead reaches its piece with "
                            + metres(n.coldLead())
                            + " left after the riser. Move the start, or take cables with longer cold leads.",
                    option.cable().coldLead(),
                    n.coldLead(),
                    Source.derived("divisions tried; shortest way along the walls"));
        }
        if (outcome instanceof SharedOutcome.NotFound n) {
            return Finding.withValue(
                    Severity.ERROR,
                    names(option),
                    "The floor was divided in " + n.divisions()
                            + " ways and not all of these cables could be laid exactly in any of them.",
                    Amounts.metres(option.lengthMetres()),
                    Source.derived("search with counted work; not proved"));
        }
        return Finding.of(Severity.NOTE, names(option), "They are laid exactly.", Source.derived("route"));
    }

    /** How fairly a floor is shared. */
    static Finding fairness(Option option, SharedOutcome.Laid laid) {
        double unevenness = Si.in("unevenness", laid.unevenness(), Units.ONE);
        return Finding.of(
                unevenness > UNEVEN ? Severity.WARNING : Severity.NOTE,
                names(option),
                "One floor is shared: the widest even spacing of its cables is "
                        + QuantityText.number(100 * (unevenness - 1), 1) + " % more than the closest.",
                Amounts.of(unevenness, Units.ONE),
                Amounts.of(UNEVEN, Units.ONE),
                Source.commonPractice("equal heat on the pieces of one floor"));
    }

    private static String metres(javax.measure.Quantity<javax.measure.quantity.Length> length) {
        return QuantityText.write(length.to(Units.METRE), 2);
    }
}
