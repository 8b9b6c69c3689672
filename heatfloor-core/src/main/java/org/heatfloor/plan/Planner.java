package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.grid.LatticeChoice;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.Effort;
import org.heatfloor.routing.PriorityZones;
import org.heatfloor.routing.RouteSite;
import org.heatfloor.routing.Router;
import org.heatfloor.thermal.Climate;

/**
 * The one call: a brief in, a plan out. The same brief gives the same plan; the work is bounded by counted steps.
 */
public final class Planner {

    static final long SEED = 1;

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
        Plan zoned = plan(brief, effort, Optional.empty());
        if (brief.priorityZones.stream().allMatch(z -> z.weight() == 1) || doesTheJob(zoned)) {
            return zoned;
        }
        // Zones are a wish: runs closer there may pass a limit that even runs keep, and must not cost the job.
        Plan even = plan(brief, effort, Optional.of(evenRuns(zoned)));
        boolean better =
                zoned.status() == Plan.Status.IMPOSSIBLE ? even.status() == Plan.Status.COMPLETE : doesTheJob(even);
        return better ? even : zoned;
    }

    private static boolean doesTheJob(Plan plan) {
        return plan.status() == Plan.Status.COMPLETE
                && plan.roomHeat().map(RoomHeat::coversHeatLoss).orElse(true);
    }

    private static Finding evenRuns(Plan zoned) {
        String reason = zoned.status() == Plan.Status.COMPLETE
                ? "The heat loss would not be covered."
                : zoned.findings().get(0).message();
        return Finding.of(
                Severity.WARNING,
                "priority zones",
                "Runs do not lie closer in the zones; with closer runs there: " + reason,
                Source.derived("planned with and without closer runs"));
    }

    /** One plan; with runs as elsewhere in the zones where a reason for that is given. */
    private static Plan plan(Brief brief, Effort effort, Optional<Finding> evenRuns) {
        List<Finding> notes = new ArrayList<>(evenRuns.stream().toList());
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
        Router plain = Router.of(site);
        Router router = plain.wanting(
                new PriorityZones(brief.priorityZones, brief.rules.maxSpacing().with(brief.membrane.studPitch())));
        Options options = new Options(brief, site, router);
        Bundles bundles = new Bundles(router, options);
        missing(brief, notes);
        List<PartChoice> parts = new ArrayList<>();
        for (int part = 0; part < router.parts(); part++) {
            List<Option> singles = options.of(part);
            parts.add(new PartChoice(part, singles, bundles.of(part, singles)));
        }
        List<PartChoice> used = parts.stream().filter(PartChoice::mayWork).toList();
        Routes routes = new Routes(evenRuns.isPresent() ? plain : router, brief.lengthTolerance(), effort, SEED);
        Ranking ranking = new Ranking(brief, router, options, parts, routes);
        Refusal refusal = new Refusal(brief, site, options);
        if (used.isEmpty()) {
            parts.stream().filter(p -> p.part() > 0).forEach(p -> leftOut(router, options, p, notes));
            return new Assembly(brief, site, lattice, router, options, ranking, notes)
                    .impossible(refusal.ofBounds(parts));
        }
        parts.stream().filter(p -> !p.mayWork()).forEach(p -> leftOut(router, options, p, notes));
        Assembly assembly = new Assembly(brief, site, lattice, router, options, ranking, notes);
        OptionalDouble heatLoss = heatLossWatts(brief);
        Combinations sets = Combinations.ranked(used, heatLoss);
        Choice choice = new Choice(used, heatLoss, routes, assembly);
        Plan plan = choice.plan(sets)
                .orElseGet(() ->
                        assembly.impossible(refusal.ofAttempts(used, choice.failures(), choice.tried(), sets.size())));
        // The largest part may stay cold only where the others give all the heat that is wanted.
        boolean tooLittle = plan.roomHeat().map(heat -> !heat.coversHeatLoss()).orElse(false);
        return !parts.get(0).mayWork() && tooLittle ? assembly.impossible(refusal.ofBounds(parts)) : plan;
    }

    /** The heat loss, where an output can be held against it. */
    private static OptionalDouble heatLossWatts(Brief brief) {
        return brief.buildUp.isEmpty()
                ? OptionalDouble.empty()
                : brief.climate
                        .flatMap(Climate::heatLoss)
                        .map(loss -> OptionalDouble.of(Si.in("heat loss", loss, Units.WATT)))
                        .orElse(OptionalDouble.empty());
    }

    private static void missing(Brief brief, List<Finding> notes) {
        Source source = Source.brief("what is not given is left out");
        if (brief.buildUp.isEmpty() || brief.climate.isEmpty()) {
            notes.add(note("temperatures", "Without build-up and climate the plan has no temperatures.", source));
        }
        if (brief.climate.isPresent() && brief.climate.orElseThrow().heatLoss().isEmpty()) {
            notes.add(note(
                    "room heat", "Without a heat loss the plan cannot say whether the floor heats the room.", source));
        }
        if (brief.climate.isPresent()
                && brief.climate.orElseThrow().surfaceLimit().isEmpty()) {
            notes.add(note("surface", "Without a surface limit no surface temperature is judged.", source));
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
        double[] fitting = options.fittingMetres(part.part());
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

    /**
     * A part of the floor and the cables for it.
     *
     * @param options every cable of the catalogue
     * @param bundles sets of cables that share the part, where no single one may work
     */
    record PartChoice(int part, List<Option> options, List<Option> bundles) {

        boolean mayWork() {
            return !bundles.isEmpty() || options.stream().anyMatch(Option::mayWork);
        }

        List<Option> working() {
            List<Option> single = options.stream()
                    .filter(Option::mayWork)
                    .sorted(Comparator.comparingDouble(Option::lengthMetres))
                    .toList();
            return single.isEmpty() ? bundles : single;
        }
    }
}
