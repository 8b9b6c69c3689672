package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.plan.Planner.PartChoice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.RouteOutcome;

/**
 * Why this cable, and why not the next smaller and the next larger.
 *
 * @param parts the parts of the floor that get a cable
 * @param heatLossWatts the room's heat loss, where it can be held against the output
 * @param routes what was laid so far
 * @param refused sets that were laid and why they were not taken
 * @param covering whether the set was taken as the shortest that covers the heat loss, or as the longest that works
 * @param widest greatest spacing allowed, in metres
 */
record Reasons(
        List<PartChoice> parts,
        OptionalDouble heatLossWatts,
        Routes routes,
        Map<List<Option>, String> refused,
        boolean covering,
        double widest) {

    private static final Source RULE =
            Source.commonPractice("of the cables that work and cover the heat loss the shortest is taken");

    List<Finding> of(List<Option> chosen, List<String> names) {
        List<Finding> out = new ArrayList<>();
        int cable = 0;
        for (int i = 0; i < chosen.size(); i++) {
            Option option = chosen.get(i);
            String name = names.get(cable);
            cable += option.cables().size();
            if (option.several()) {
                out.add(shared(option, parts.get(i)));
                continue;
            }
            out.add(Finding.withValue(
                    Severity.NOTE,
                    name,
                    "Chosen: runs lie " + Options.millimetres(option.spacingMetres()) + " apart on average; "
                            + rule(Combinations.cables(chosen)) + ".",
                    Amounts.metres(option.spacingMetres()),
                    RULE));
            for (boolean longer : new boolean[] {false, true}) {
                Optional<Option> other = neighbour(parts.get(i), option, longer);
                if (other.isPresent()) {
                    out.add(notTaken(other.orElseThrow(), i, chosen, longer));
                }
            }
        }
        int laid = 0;
        for (Option option : chosen) {
            if (option.several()) {
                out.add(SharedFindings.fairness(
                        option, routes.divisions(parts, chosen).get(laid++)));
            }
        }
        return out;
    }

    private Finding shared(Option option, PartChoice part) {
        Option longest = part.options().stream()
                .filter(o -> o.verdict() == Option.Verdict.TOO_SHORT)
                .max(java.util.Comparator.comparingDouble(Option::lengthMetres))
                .orElseThrow();
        int count = option.cables().size();
        double fewer = option.spacingMetres() * option.lengthMetres() / ((count - 1) * longest.lengthMetres());
        boolean enough = fewer <= widest * (1 + Options.SPACING_TOLERANCE);
        return Finding.withValue(
                Severity.NOTE,
                SharedFindings.names(option),
                "Chosen to share this floor, too large for any single cable of the catalogue: runs lie "
                        + Options.millimetres(option.spacingMetres()) + " apart on average; of the sets that work"
                        + (covering && heatLossWatts.isPresent() ? " and cover the heat loss" : "")
                        + (covering ? " the fewest cables, then the shortest. " : " the longest. ")
                        + (count == 2
                                ? "One cable, the longest of " + Options.metres(longest.lengthMetres()) + ","
                                : (count - 1) + " cables, were they the longest of "
                                        + Options.metres(longest.lengthMetres()) + ",")
                        + " would lie " + Options.millimetres(fewer) + " apart"
                        + (enough ? "." : ", more than the " + Options.millimetres(widest) + " allowed."),
                Amounts.metres(option.spacingMetres()),
                RULE);
    }

    private String rule(int cables) {
        String those = cables == 1 ? "of the cables that work" : "of the sets of " + cables + " cables that work";
        if (heatLossWatts.isEmpty()) {
            return those + " the shortest, since no heat loss can be held against it";
        }
        String loss = "the heat loss of " + QuantityText.number(heatLossWatts.orElseThrow(), 0) + " W";
        return covering
                ? those + " and cover " + loss + " the shortest"
                : those + " the longest, since none covers " + loss;
    }

    private static Optional<Option> neighbour(PartChoice part, Option chosen, boolean longer) {
        Optional<Option> found = Optional.empty();
        for (Option o : part.options()) {
            if (o.cable().conductors() != chosen.cable().conductors()) {
                continue;
            }
            if (longer && o.lengthMetres() > chosen.lengthMetres() && found.isEmpty()) {
                found = Optional.of(o);
            }
            if (!longer && o.lengthMetres() < chosen.lengthMetres()) {
                found = Optional.of(o);
            }
        }
        return found;
    }

    private Finding notTaken(Option other, int place, List<Option> chosen, boolean longer) {
        return Finding.withValue(
                Severity.NOTE,
                other.cable().name(),
                "Not taken, the next " + (longer ? "larger" : "smaller") + ": " + why(other, place, chosen, longer)
                        + ".",
                other.cable().length(),
                RULE);
    }

    private String why(Option other, int place, List<Option> chosen, boolean longer) {
        if (!other.mayWork()) {
            return clause(other.reason());
        }
        List<Option> instead = new ArrayList<>(chosen);
        instead.set(place, other);
        if (routes.tried(parts, instead.subList(0, place + 1)).orElse(null) instanceof RouteOutcome.NotFound n) {
            return "no exact route was found; the longest found is "
                    + QuantityText.write(n.longestFound().to(Units.METRE), 2);
        }
        String known = refused.get(instead);
        if (known != null) {
            return known;
        }
        double output = Combinations.output(instead);
        if (!longer && output < heatLossWatts.orElse(0)) {
            List<String> watts = QuantityText.apart(output, heatLossWatts.orElse(0), 0);
            return "it would give the room about " + watts.get(0) + " W, less than the heat loss of " + watts.get(1)
                    + " W";
        }
        if (longer && covering) {
            return "its runs would lie " + Options.millimetres(other.spacingMetres())
                    + " apart, which is allowed; it was not tried, since the shorter does the job";
        }
        return "the other cables of its set could not be laid, or the bounded search did not come to it";
    }

    /** A sentence as part of another one. */
    static String clause(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }
}
