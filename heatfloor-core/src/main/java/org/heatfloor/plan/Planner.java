package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.grid.LatticeChoice;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.Effort;
import org.heatfloor.routing.RouteSite;
import org.heatfloor.routing.Router;

/**
 * The one call: a brief in, a plan out. The same brief gives the same plan; the work is bounded by counted steps.
 */
public final class Planner {

    /** Sets of cables tried before the planner gives up. */
    private static final int MOST_ATTEMPTS = 24;

    private static final long SEED = 1;

    private Planner() {}

    /**
     * Plans a room with the usual effort.
     *
     * @param brief the room and what is wanted
     * @return the plan; its status says whether the job can be done
     */
    public static Plan plan(Brief brief) {
        return plan(brief, Effort.NORMAL);
    }

    /**
     * Plans a room.
     *
     * @param brief the room and what is wanted
     * @param effort work to spend on each route
     * @return the plan; its status says whether the job can be done
     */
    public static Plan plan(Brief brief, Effort effort) {
        List<Finding> notes = new ArrayList<>();
        StudLattice lattice = brief.lattice.orElseGet(
                () -> LatticeChoice.choose(brief.membrane, brief.room, brief.wallClearance, brief.keepOuts));
        RouteSite site = RouteSite.of(
                brief.room,
                brief.wallClearance,
                brief.keepOuts,
                lattice,
                brief.rules.minSpacing().with(brief.membrane.studPitch()),
                brief.rules.minBendRadius(),
                brief.rules.start(),
                brief.rules.riser(),
                brief.rules.jointLength());
        Router router = Router.of(site);
        Options options = new Options(brief, site, router);
        Assembly assembly = new Assembly(brief, site, lattice, router);
        missing(brief, notes);
        List<PartChoice> parts = new ArrayList<>();
        for (int part = 0; part < router.parts(); part++) {
            parts.add(new PartChoice(part, options.of(part)));
        }
        List<PartChoice> used = parts.stream().filter(PartChoice::mayWork).toList();
        parts.stream().filter(p -> !p.mayWork() && p.part() > 0).forEach(p -> leftOut(router, options, p, notes));
        if (parts.isEmpty() || !parts.get(0).mayWork()) {
            return assembly.impossible(new Refusal(brief, site, options).ofBounds(parts), options, notes);
        }
        Routes routes = new Routes(router, effort, SEED);
        List<Finding> failures = new ArrayList<>();
        int attempts = 0;
        for (List<Option> combination : Combinations.ranked(used, brief.climate.flatMap(c -> c.heatLoss()))) {
            if (++attempts > MOST_ATTEMPTS) {
                break;
            }
            Optional<Plan> plan = routes.lay(used, combination, failures)
                    .map(laid -> assembly.complete(laid, combination, used, routes, options, notes));
            if (plan.isPresent() && plan.get().status() == Plan.Status.COMPLETE) {
                return plan.get();
            }
            plan.ifPresent(p -> p.findings().stream().filter(Finding::isError).forEach(failures::add));
        }
        return assembly.impossible(failures.stream().distinct().limit(12).toList(), options, notes);
    }

    private static void missing(Brief brief, List<Finding> notes) {
        Source source = Source.brief("what is not given is left out");
        if (brief.buildUp.isEmpty() || brief.climate.isEmpty()) {
            notes.add(note("temperatures", "Without build-up and climate the plan has no temperatures.", source));
        }
        if (brief.tile.isEmpty()) {
            notes.add(note("tile", "Without a tile the plan counts no tiles and no grout.", source));
        }
        if (brief.bedding.isEmpty()) {
            notes.add(note("mortar", "Without bedding the plan counts no mortar and knows no floor height.", source));
        }
        if (brief.membrane.stock().isEmpty()) {
            notes.add(note("membrane", "Without sheet or roll size the plan has no membrane cut.", source));
        }
    }

    private static Finding note(String subject, String message, Source source) {
        return Finding.of(Severity.NOTE, subject, message, source);
    }

    private static void leftOut(Router router, Options options, PartChoice part, List<Finding> notes) {
        double area = Si.in("reach", router.reachArea(part.part()), Units.SQUARE_METRE);
        double[] fitting = options.fittingMetres(part.part(), 2);
        notes.add(new Finding(
                area > 0.5 ? Severity.WARNING : Severity.NOTE,
                where(router, part.part()),
                fitting[1] > fitting[0]
                        ? "This part of the floor stays unheated: no cable of the catalogue fits; one of "
                                + Options.metres(fitting[0]) + " to " + Options.metres(fitting[1]) + " would."
                        : "This part of the floor stays unheated: it is too small for a cable.",
                Optional.of(Amounts.squareMetres(area)),
                Optional.empty(),
                Source.derived("free junctions joined by free channels")));
    }

    /** Where a part of the floor is, in words. */
    static String where(Router router, int part) {
        var c = router.somewhereIn(part);
        return "floor about " + Options.metres(c.x) + ", " + Options.metres(c.y);
    }

    /** A part of the floor and the cables for it. */
    record PartChoice(int part, List<Option> options) {

        boolean mayWork() {
            return options.stream().anyMatch(Option::mayWork);
        }

        List<Option> working() {
            return options.stream()
                    .filter(Option::mayWork)
                    .sorted(Comparator.comparingDouble(Option::lengthMetres))
                    .toList();
        }
    }
}
