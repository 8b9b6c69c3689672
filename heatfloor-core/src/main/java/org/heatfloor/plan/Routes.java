package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
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
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableRoute;
import org.heatfloor.routing.CableToLay;
import org.heatfloor.routing.Effort;
import org.heatfloor.routing.RouteOutcome;
import org.heatfloor.routing.Router;
import org.heatfloor.routing.SharedOutcome;

/** Lays sets of cables part by part and remembers what was tried. */
final class Routes {

    private final Router router;
    private final double tolerance;
    private final Effort effort;
    private final long seed;
    private final Map<List<String>, RouteOutcome> known = new LinkedHashMap<>();
    private final Map<List<String>, SharedOutcome> shared = new HashMap<>();

    /**
     * Routes on a floor.
     *
     * @param tolerance share of its length by which a cable may be longer
     */
    Routes(Router router, double tolerance, Effort effort, long seed) {
        this.tolerance = tolerance;
        this.router = router;
        this.effort = effort;
        this.seed = seed;
    }

    static CableToLay toLay(HeatingCable cable) {
        return new CableToLay(cable.name(), cable.conductors(), cable.length(), cable.diameter(), cable.coldLead());
    }

    /** Routes of a set, in its order; empty, with the reason among the failures, if one of them cannot be laid. */
    Optional<List<CableRoute>> lay(List<PartChoice> parts, List<Option> set, Set<Finding> failures) {
        List<CableRoute> out = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Option option = set.get(i);
            int part = parts.get(i).part();
            List<String> key = key(parts, set.subList(0, i + 1));
            List<CableRoute> before = List.copyOf(out);
            if (option.several()) {
                SharedOutcome outcome = shared.computeIfAbsent(key, k -> several(part, option.cables(), before));
                if (outcome instanceof SharedOutcome.Laid laid) {
                    out.addAll(laid.routes());
                } else {
                    failures.add(SharedFindings.failure(option, outcome));
                    return Optional.empty();
                }
            } else {
                RouteOutcome outcome = known.computeIfAbsent(key, k -> route(part, option.cable(), before));
                if (outcome instanceof RouteOutcome.Laid laid) {
                    out.add(laid.route());
                } else {
                    failures.add(failure(option.cable(), outcome));
                    return Optional.empty();
                }
            }
        }
        return Optional.of(out);
    }

    /** The floor with the cables on it that were laid before. */
    private Router with(List<CableRoute> before) {
        return router.avoiding(
                before.stream().map(CableRoute::line).toList(),
                before.stream().flatMap(r -> r.coldLeads().stream()).toList());
    }

    private SharedOutcome several(int part, List<HeatingCable> cables, List<CableRoute> before) {
        List<CableToLay> wanted = cables.stream().map(Routes::toLay).toList();
        Router here = with(before);
        OptionalInt number = before.isEmpty() ? OptionalInt.of(part) : here.partWithin(router, part);
        return number.isPresent()
                ? here.routeSeveral(number.getAsInt(), wanted, effort, seed)
                : new SharedOutcome.NotFound(0, router.capacity(part, wanted));
    }

    private RouteOutcome route(int part, HeatingCable cable, List<CableRoute> before) {
        Router here = with(before);
        OptionalInt number = before.isEmpty() ? OptionalInt.of(part) : here.partWithin(router, part);
        return number.isPresent()
                ? here.route(number.getAsInt(), toLay(cable), cable.length().multiply(tolerance), effort, seed)
                : new RouteOutcome.NotFound(Amounts.metres(0), router.capacity(part));
    }

    /** What became of the last cable of a set, laid after the others, if that was tried. */
    Optional<RouteOutcome> tried(List<PartChoice> parts, List<Option> set) {
        return Optional.ofNullable(known.get(key(parts, set)));
    }

    /** What became of a single cable in a part, whatever was laid before it; a route found counts most. */
    Optional<RouteOutcome> lastTried(int part, String cable) {
        Optional<RouteOutcome> found = Optional.empty();
        for (Map.Entry<List<String>, RouteOutcome> entry : known.entrySet()) {
            if (entry.getKey().get(entry.getKey().size() - 1).equals(part + " " + List.of(cable))
                    && (found.isEmpty() || entry.getValue() instanceof RouteOutcome.Laid)) {
                found = Optional.of(entry.getValue());
            }
        }
        return found;
    }

    /** How much was sought, in routes; a shared floor counts four. */
    int searched() {
        return known.size() + 4 * shared.size();
    }

    /** How a shared floor was divided, for a set laid; empty where it has no shared part. */
    List<SharedOutcome.Laid> divisions(List<PartChoice> parts, List<Option> set) {
        List<SharedOutcome.Laid> out = new ArrayList<>();
        for (int i = 0; i < set.size(); i++) {
            if (shared.get(key(parts, set.subList(0, i + 1))) instanceof SharedOutcome.Laid laid) {
                out.add(laid);
            }
        }
        return out;
    }

    private static List<String> key(List<PartChoice> parts, List<Option> set) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < set.size(); i++) {
            out.add(parts.get(i).part() + " "
                    + set.get(i).cables().stream().map(HeatingCable::name).toList());
        }
        return out;
    }

    static Finding failure(HeatingCable cable, RouteOutcome outcome) {
        if (outcome instanceof RouteOutcome.TooLong t) {
            return Finding.of(
                    Severity.ERROR,
                    cable.name(),
                    "Impossible: too long by " + Options.atLeast(Si.in("excess", t.excess(), Units.METRE))
                            + "; at most " + text(t.capacity()) + " can lie here with the least spacing.",
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
                            + ". A shorter cable may do.",
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
