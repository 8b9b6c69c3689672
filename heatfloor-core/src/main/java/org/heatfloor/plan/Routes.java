package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.plan.Planner.PartChoice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableRoute;
import org.heatfloor.routing.CableToLay;
import org.heatfloor.routing.Effort;
import org.heatfloor.routing.RouteOutcome;
import org.heatfloor.routing.Router;
import org.locationtech.jts.geom.LineString;

/** Lays sets of cables part by part and remembers what was tried. */
final class Routes {

    private final Router router;
    private final Effort effort;
    private final long seed;
    private final Map<List<String>, RouteOutcome> known = new HashMap<>();

    Routes(Router router, Effort effort, long seed) {
        this.router = router;
        this.effort = effort;
        this.seed = seed;
    }

    static CableToLay toLay(HeatingCable cable) {
        return new CableToLay(cable.name(), cable.conductors(), cable.length(), cable.diameter(), cable.coldLead());
    }

    /** Routes of a set, one a part; empty, with the reason among the failures, if one of them cannot be laid. */
    Optional<List<CableRoute>> lay(List<PartChoice> parts, List<Option> set, Set<Finding> failures) {
        List<CableRoute> out = new ArrayList<>();
        List<LineString> laid = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Option option = set.get(i);
            int part = parts.get(i).part();
            RouteOutcome outcome =
                    known.computeIfAbsent(key(parts, set.subList(0, i + 1)), k -> route(part, option.cable(), laid));
            if (outcome instanceof RouteOutcome.Laid l) {
                out.add(l.route());
                laid.add(l.route().line());
            } else {
                failures.add(failure(option.cable(), outcome));
                return Optional.empty();
            }
        }
        return Optional.of(out);
    }

    private RouteOutcome route(int part, HeatingCable cable, List<LineString> laid) {
        Router here = router.avoiding(laid);
        OptionalInt number = laid.isEmpty() ? OptionalInt.of(part) : here.partWithin(router, part);
        return number.isPresent()
                ? here.route(number.getAsInt(), toLay(cable), effort, seed)
                : new RouteOutcome.NotFound(Amounts.metres(0), router.capacity(part, cable.conductors()));
    }

    /** What became of the last cable of a set, laid after the others, if that was tried. */
    Optional<RouteOutcome> tried(List<PartChoice> parts, List<Option> set) {
        return Optional.ofNullable(known.get(key(parts, set)));
    }

    /** How many routes were sought. */
    int searched() {
        return known.size();
    }

    private static List<String> key(List<PartChoice> parts, List<Option> set) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < set.size(); i++) {
            out.add(parts.get(i).part() + " " + set.get(i).cable().name());
        }
        return out;
    }

    static Finding failure(HeatingCable cable, RouteOutcome outcome) {
        if (outcome instanceof RouteOutcome.TooLong t) {
            return Finding.of(
                    Severity.ERROR,
                    cable.name(),
                    "Impossible: too long by at least " + text(t.excess()) + "; at most " + text(t.capacity())
                            + " can lie here with the least spacing.",
                    cable.length(),
                    t.capacity(),
                    Source.derived("area of the least spacing's squares over the spacing"));
        }
        if (outcome instanceof RouteOutcome.NotFound n) {
            return Finding.of(
                    Severity.ERROR,
                    cable.name(),
                    "No exact route was found, though the bound of " + text(n.capacity())
                            + " allows one; the longest found is " + text(n.longestFound())
                            + ". Take the next shorter cable.",
                    cable.length(),
                    n.longestFound(),
                    Source.derived("search with counted work; not proved"));
        }
        if (outcome instanceof RouteOutcome.NotReached n) {
            return Finding.of(
                    Severity.ERROR,
                    cable.name(),
                    "The cold lead does not reach the floor to be heated with " + text(n.coldLead())
                            + " left after the riser. Move the start, or take a cable with a longer cold lead.",
                    cable.coldLead(),
                    n.coldLead(),
                    Source.derived("shortest way along the walls"));
        }
        return Finding.of(Severity.NOTE, cable.name(), "It is laid exactly.", Source.derived("route"));
    }

    private static String text(Quantity<Length> length) {
        return QuantityText.write(length.to(Units.METRE), 2);
    }
}
