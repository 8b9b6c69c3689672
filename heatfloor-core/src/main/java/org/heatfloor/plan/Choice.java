package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.heatfloor.finding.Finding;
import org.heatfloor.plan.Plan.Status;
import org.heatfloor.plan.Planner.PartChoice;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.routing.CableRoute;

/**
 * Goes through the sets of cables in the order of the rule: the first that works and, as laid, covers the heat loss; where
 * none does, the longest that works. The work is bounded by counted routes and counted plans.
 */
final class Choice {

    private static final int MOST_ROUTES = 48;
    private static final int MOST_PLANS = 24;

    private final List<PartChoice> parts;
    private final OptionalDouble heatLossWatts;
    private final Routes routes;
    private final Assembly assembly;
    private final Set<Finding> failures = new LinkedHashSet<>();
    private final Map<List<Option>, String> refused = new HashMap<>();
    private final Set<List<Option>> tried = new HashSet<>();
    private int plans;

    Choice(List<PartChoice> parts, OptionalDouble heatLossWatts, Routes routes, Assembly assembly) {
        this.parts = parts;
        this.heatLossWatts = heatLossWatts;
        this.routes = routes;
        this.assembly = assembly;
    }

    /** The plan by the rule; empty where no set tried works. */
    Optional<Plan> plan(Combinations sets) {
        List<List<Option>> rest = new ArrayList<>(sets.others());
        for (List<Option> set : sets.covering()) {
            Optional<List<CableRoute>> laid = lay(set);
            if (laid.isPresent() && tooLittle(set, laid.orElseThrow())) {
                rest.add(set);
            } else if (laid.isPresent()) {
                Optional<Plan> plan = assembled(set, laid.orElseThrow(), true);
                if (plan.isPresent()) {
                    return plan;
                }
            }
        }
        rest.sort(Combinations.LONGEST_FIRST);
        for (List<Option> set : rest) {
            Optional<Plan> plan = lay(set).flatMap(laid -> assembled(set, laid, false));
            if (plan.isPresent()) {
                return plan;
            }
        }
        return Optional.empty();
    }

    /** Whether the routes as laid give less than the heat loss, though the even spacing promised enough. */
    private boolean tooLittle(List<Option> set, List<CableRoute> laid) {
        OptionalDouble output = assembly.outputWatts(laid, set);
        if (heatLossWatts.isEmpty() || output.isEmpty() || output.orElseThrow() >= heatLossWatts.orElseThrow()) {
            return false;
        }
        List<String> watts = QuantityText.apart(output.orElseThrow(), heatLossWatts.orElseThrow(), 0);
        refused.put(
                set,
                "laid, it gives the room " + watts.get(0) + " W, less than the heat loss of " + watts.get(1) + " W");
        return true;
    }

    private Optional<List<CableRoute>> lay(List<Option> set) {
        if (routes.searched() >= MOST_ROUTES || plans >= MOST_PLANS) {
            return Optional.empty();
        }
        tried.add(set);
        return routes.lay(parts, set, failures);
    }

    private Optional<Plan> assembled(List<Option> set, List<CableRoute> laid, boolean covering) {
        plans++;
        Plan plan = assembly.complete(
                laid, set, new Reasons(parts, heatLossWatts, routes, refused, covering, assembly.greatestSpacing()));
        if (plan.status() == Status.COMPLETE) {
            return Optional.of(plan);
        }
        List<Finding> errors = plan.findings().stream().filter(Finding::isError).toList();
        failures.addAll(errors);
        refused.put(
                set, "it was laid and refused: " + Reasons.clause(errors.get(0).message()));
        return Optional.empty();
    }

    /** Why the sets tried do not work. */
    List<Finding> failures() {
        return List.copyOf(failures);
    }

    /** How many sets were tried. */
    int tried() {
        return tried.size();
    }
}
