package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.heatfloor.area.HeatableArea;
import org.heatfloor.electrical.CableRating;
import org.heatfloor.electrical.CircuitDesign;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.electrical.InstallationDetails;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.plan.Plan.FittingLengths;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableRoute;
import org.heatfloor.routing.EndReserve;
import org.heatfloor.routing.LaidCable;
import org.heatfloor.routing.RouteCheck;
import org.heatfloor.routing.RouteCheckReport;
import org.heatfloor.routing.RouteSite;
import org.heatfloor.routing.Router;
import org.heatfloor.routing.SensorPlace;
import org.heatfloor.routing.SensorPlaces;
import org.heatfloor.takeoff.TakeOff;
import org.heatfloor.takeoff.TakeOffBuilder;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Puts a plan together from routes: check, sensors, circuits, heat, take-off, findings. */
final class Assembly {

    private static final double COLD_SHARE = 0.03;

    private final Brief brief;
    private final RouteSite site;
    private final StudLattice lattice;
    private final Router router;
    private final Options options;
    private final Ranking ranking;
    private final List<Finding> notes;
    private final HeatableArea heatable;

    Assembly(
            Brief brief,
            RouteSite site,
            StudLattice lattice,
            Router router,
            Options options,
            Ranking ranking,
            List<Finding> notes) {
        this.brief = brief;
        this.site = site;
        this.lattice = lattice;
        this.router = router;
        this.options = options;
        this.ranking = ranking;
        this.notes = List.copyOf(notes);
        heatable = HeatableArea.of(brief.room, brief.wallClearance, brief.keepOuts, brief.membrane.studPitch());
    }

    double greatestSpacing() {
        return options.greatestSpacing();
    }

    Plan impossible(List<Finding> reasons) {
        List<Finding> findings = new ArrayList<>(reasons);
        FloorFindings.of(brief, heatable).stream()
                .filter(f -> f.severity() != Severity.NOTE)
                .forEach(findings::add);
        findings.addAll(notes);
        return new Plan(
                brief.name,
                Plan.Status.IMPOSSIBLE,
                lattice,
                new Plan.Areas(heatable.floorArea(), heatable.heatableArea(), Amounts.squareMetres(0)),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                fitting(),
                ranking.of(List.of(), List.of()),
                sorted(findings));
    }

    /** Heat into the room of a set as laid; empty where temperatures are not known. */
    OptionalDouble outputWatts(List<CableRoute> routes, List<Option> chosen) {
        return HeatPlan.outputWatts(
                brief, routes, chosen.stream().flatMap(o -> o.cables().stream()).toList());
    }

    /** The plan of a set as laid; impossible if any finding is an error. */
    Plan complete(List<CableRoute> routes, List<Option> chosen, Reasons reasons) {
        List<HeatingCable> cables =
                chosen.stream().flatMap(o -> o.cables().stream()).toList();
        List<String> names = names(cables);
        RouteCheckReport report = check(routes, names);
        CircuitDesign circuits = CircuitDesign.of(brief.supply, named(cables, names), installation(routes));
        List<LineString> lines = routes.stream().map(CableRoute::line).toList();
        List<LineString> leads =
                routes.stream().flatMap(r -> r.coldLeads().stream()).toList();
        List<List<SensorPlace>> sensors = new ArrayList<>();
        for (CableRoute route : routes) {
            sensors.add(SensorPlaces.find(site, lines, leads, route.line(), route.evenSpacing(), 2));
        }
        Optional<HeatPlan> heat = HeatPlan.of(brief, routes, named(cables, names), sensors, heatable.heatableRegion());
        TakeOff takeOff = takeOff(routes);
        List<Finding> findings = new ArrayList<>(report.findings());
        findings.addAll(circuits.findings());
        heat.ifPresent(h -> findings.addAll(h.findings()));
        // Bays are judged once, by the plan's own rule.
        takeOff.findings().stream()
                .filter(f -> !f.subject().equals("movement joints"))
                .forEach(findings::add);
        findings.addAll(FloorFindings.of(brief, heatable));
        takeOff.membraneCut()
                .ifPresent(cut -> findings.addAll(FloorFindings.seams(brief, lattice, cut, cables, lines)));
        findings.addAll(FloorFindings.heatedForNothing(heatable, lines));
        LeadTracks.crowded(routes).ifPresent(findings::add);
        List<EndReserve> reserves = Reserves.of(router, routes, brief.lengthTolerance());
        findings.addAll(Reserves.findings(names, reserves, brief.lengthTolerance()));
        List<PlannedCable> planned = new ArrayList<>();
        for (int i = 0; i < routes.size(); i++) {
            int number = i;
            planned.add(new PlannedCable(
                    names.get(i),
                    cables.get(i),
                    routes.get(i),
                    report.cables().get(i),
                    CableRating.of(cables.get(i), brief.supply.voltage()),
                    reserves.get(i),
                    heat.map(h -> h.cables().get(number)),
                    sensors.get(i).stream().findFirst(),
                    sensors.get(i).stream().skip(1).findFirst()));
            routeFindings(names.get(i), routes.get(i), sensors.get(i).size(), findings);
        }
        findings.addAll(SharedThermostat.of(circuits.circuits(), planned));
        findings.addAll(reasons.of(chosen, names));
        Geometry heated = heated(routes);
        findings.addAll(ZoneFindings.of(brief, router, routes, heatable, heated));
        findings.addAll(notes);
        boolean error = findings.stream().anyMatch(Finding::isError);
        return new Plan(
                brief.name,
                error ? Plan.Status.IMPOSSIBLE : Plan.Status.COMPLETE,
                lattice,
                new Plan.Areas(heatable.floorArea(), heatable.heatableArea(), Amounts.squareMetres(heated.getArea())),
                planned,
                circuits.circuits(),
                heat.map(HeatPlan::room),
                Optional.of(takeOff),
                fitting(),
                ranking.of(chosen, routes),
                sorted(findings));
    }

    /** What is known of the installation, with the heated area of the plan itself. */
    private InstallationDetails installation(List<CableRoute> routes) {
        InstallationDetails details = brief.installation();
        double area = heated(routes).getArea();
        return details.heatedArea().isEmpty() && area > 0
                ? details.toBuilder().heatedArea(Amounts.squareMetres(area)).build()
                : details;
    }

    private static List<String> names(List<HeatingCable> cables) {
        List<String> out = new ArrayList<>();
        for (HeatingCable cable : cables) {
            long same =
                    cables.stream().filter(c -> c.name().equals(cable.name())).count();
            long before = out.stream()
                    .filter(n -> n.equals(cable.name()) || n.startsWith(cable.name() + " no. "))
                    .count();
            out.add(same > 1 ? cable.name() + " no. " + (before + 1) : cable.name());
        }
        return out;
    }

    private static List<HeatingCable> named(List<HeatingCable> cables, List<String> names) {
        List<HeatingCable> out = new ArrayList<>();
        for (int i = 0; i < cables.size(); i++) {
            out.add(cables.get(i).named(names.get(i)));
        }
        return out;
    }

    private RouteCheckReport check(List<CableRoute> routes, List<String> names) {
        List<LaidCable> laid = new ArrayList<>();
        for (int i = 0; i < routes.size(); i++) {
            CableRoute r = routes.get(i);
            laid.add(new LaidCable(
                    names.get(i),
                    r.line(),
                    r.coldLeads(),
                    r.cable().length(),
                    r.cable().diameter(),
                    r.cable().conductors(),
                    r.cable().coldLead()));
        }
        return RouteCheck.builder(brief.room, lattice)
                .wallClearance(brief.wallClearance.with(brief.membrane.studPitch()))
                .keepOuts(brief.keepOuts)
                .minSpacing(brief.rules.minSpacing().with(brief.membrane.studPitch()))
                .minBendRadius(brief.rules.minBendRadius())
                .start(brief.rules.start(), Units.METRE)
                .riser(brief.rules.riser())
                .jointLength(brief.rules.jointLength())
                .build()
                .check(laid);
    }

    private TakeOff takeOff(List<CableRoute> routes) {
        TakeOffBuilder builder = TakeOff.of(brief.room, brief.membrane, lattice)
                .practice(RegionalPractice.of(brief.supply.code()))
                .keepOuts(brief.keepOuts)
                .doors(brief.doors);
        for (CableRoute r : routes) {
            builder = builder.cable(r.cable().length(), r.cable().diameter());
        }
        if (brief.tile.isPresent()) {
            builder = builder.tile(brief.tile.orElseThrow());
        }
        if (brief.bedding.isPresent()) {
            builder = builder.bedding(brief.bedding.orElseThrow());
        }
        if (brief.buildUp.isPresent()) {
            builder = StatedHeights.of(builder, brief.buildUp.orElseThrow());
        }
        return builder.build();
    }

    private void routeFindings(String name, CableRoute route, int sensors, List<Finding> out) {
        if (Si.in("cold share", route.coldShare(), Units.ONE) > COLD_SHARE) {
            out.add(Finding.of(
                    Severity.WARNING,
                    name,
                    "Part of the floor lies farther from the cable than the spacing wanted there; the farthest place is "
                            + Options.millimetres(Si.in("farthest", route.farthest(), Units.METRE)) + " away.",
                    route.coldShare(),
                    Amounts.of(COLD_SHARE, Units.ONE),
                    Source.commonPractice("no corner is left cold")));
        }
        double spacing = Si.in("spacing", route.evenSpacing(), Units.METRE);
        if (spacing > options.greatestSpacing() * (1 + Options.SPACING_TOLERANCE)) {
            out.add(Finding.of(
                    Severity.ERROR,
                    name,
                    "Its share of the floor is too large: its runs would lie " + Options.millimetres(spacing)
                            + " apart on average.",
                    route.evenSpacing(),
                    Amounts.metres(options.greatestSpacing()),
                    Source.brief("greatest spacing")));
        }
        if (route.sleeved()) {
            out.add(Finding.of(
                    Severity.NOTE,
                    name,
                    "Its cold lead passes a movement joint: lay it in a sleeve there.",
                    Source.commonPractice("a lead passes a movement joint in a sleeve")));
        }
        if (sensors < 2) {
            out.add(Finding.of(
                    Severity.WARNING,
                    name,
                    sensors == 0
                            ? "No place for a floor sensor was found midway between two runs."
                            : "No second place for a spare floor sensor was found.",
                    Source.commonPractice("a floor sensor and a spare lie midway between two runs")));
        }
    }

    private Geometry heated(List<CableRoute> routes) {
        Geometry all = HeatPlan.heated(brief.room.polygon(), routes.get(0));
        for (CableRoute r : routes.subList(1, routes.size())) {
            all = OverlayNGRobust.overlay(all, HeatPlan.heated(brief.room.polygon(), r), OverlayNG.UNION);
        }
        return all;
    }

    private List<FittingLengths> fitting() {
        List<FittingLengths> out = new ArrayList<>();
        for (int part = 0; part < router.parts(); part++) {
            double[] metres = options.fittingMetres(part);
            if (metres[1] > metres[0]) {
                out.add(new FittingLengths(
                        Planner.where(router, part), Amounts.metres(metres[0]), Amounts.metres(metres[1])));
            }
        }
        return out;
    }

    private static List<Finding> sorted(List<Finding> findings) {
        return findings.stream().sorted(Comparator.comparing(Finding::severity)).toList();
    }
}
