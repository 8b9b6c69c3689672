package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.plan.Planner.PartChoice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.RouteOutcome;

/** Why this cable, and why not the next smaller and the next larger. */
final class Reasons {

    private static final Source RULE =
            Source.commonPractice("of the cables that work and cover the heat loss the shortest is taken");

    private final Brief brief;
    private final Routes routes;

    Reasons(Brief brief, Routes routes) {
        this.brief = brief;
        this.routes = routes;
    }

    List<Finding> of(List<PartChoice> parts, List<Option> chosen, List<String> names) {
        List<Finding> out = new ArrayList<>();
        boolean covers = loss() <= Combinations.output(chosen);
        for (int i = 0; i < chosen.size(); i++) {
            Option option = chosen.get(i);
            out.add(Finding.withValue(
                    Severity.NOTE,
                    names.get(i),
                    "Chosen: runs lie " + Options.millimetres(option.spacingMetres()) + " apart on average"
                            + (covers ? "; of the cables that do the job, the shortest." : "; the longest that works."),
                    Amounts.metres(option.spacingMetres()),
                    RULE));
            neighbour(parts.get(i), option, false).ifPresent(o -> out.add(reason(o, "smaller", chosen, option, parts)));
            neighbour(parts.get(i), option, true).ifPresent(o -> out.add(reason(o, "larger", chosen, option, parts)));
        }
        return out;
    }

    private double loss() {
        return brief.climate
                .flatMap(c -> c.heatLoss())
                .map(l -> Si.in("heat loss", l, Units.WATT))
                .orElse(0.0);
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

    private Finding reason(Option o, String which, List<Option> chosen, Option instead, List<PartChoice> parts) {
        return Finding.withValue(
                Severity.NOTE,
                o.cable().name(),
                "Not taken, the next " + which + ": " + why(o, chosen, instead, parts) + ".",
                o.cable().length(),
                RULE);
    }

    private String why(Option o, List<Option> chosen, Option instead, List<PartChoice> parts) {
        if (!o.mayWork()) {
            return o.reason();
        }
        int part = parts.get(chosen.indexOf(instead)).part();
        Optional<RouteOutcome> outcome = routes.tried(part, o.cable());
        if (outcome.isPresent() && outcome.orElseThrow() instanceof RouteOutcome.NotFound n) {
            return "no exact route was found; the longest found is "
                    + QuantityText.write(n.longestFound().to(Units.METRE), 2);
        }
        if (o.lengthMetres() > instead.lengthMetres()) {
            return "it would work with runs " + Options.millimetres(o.spacingMetres())
                    + " apart, but the shorter cable does the job";
        }
        double output = Combinations.output(chosen) - instead.outputWatts() + o.outputWatts();
        if (output < loss()) {
            return "it would give about " + QuantityText.number(output, 0)
                    + " W into the room, less than the heat loss of " + QuantityText.number(loss(), 0) + " W";
        }
        return "a set with it was tried and did not pass; see the other findings";
    }
}
