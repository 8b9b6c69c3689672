package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.heatfloor.area.KeepOut;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.plan.Planner.PartChoice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.Effort;
import org.heatfloor.routing.RouteOutcome;
import org.heatfloor.routing.RouteSite;
import org.heatfloor.routing.Router;

/** Says why no cable of the catalogue can be laid and what would make the job possible. */
final class Refusal {

    private static final Source BOUND =
            Source.derived("area of the least spacing's squares over the spacing, less the rounding of the corners");

    private static final int MOST_FAILURES = 12;

    private final Brief brief;
    private final RouteSite site;
    private final Options options;

    Refusal(Brief brief, RouteSite site, Options options) {
        this.brief = brief;
        this.site = site;
        this.options = options;
    }

    List<Finding> ofBounds(List<PartChoice> parts) {
        List<Finding> out = new ArrayList<>();
        if (parts.isEmpty()) {
            out.add(Finding.of(
                    Severity.ERROR,
                    brief.name,
                    "Nowhere can a cable lie: walls and keep-outs with their clearances leave no free channel. "
                            + "Check the clearances and the unit of the outline.",
                    Source.derived("no free junction")));
            return out;
        }
        PartChoice part = parts.get(0);
        Map<String, List<Option>> unusable = new LinkedHashMap<>();
        for (Option option : part.options()) {
            if (option.verdict() == Option.Verdict.NOT_FIT) {
                unusable.computeIfAbsent(option.reason(), r -> new ArrayList<>())
                        .add(option);
            } else {
                out.add(refused(part.part(), option));
            }
        }
        unusable.forEach((reason, options) -> out.add(unusable(reason, options)));
        if (unusable.values().stream().mapToInt(List::size).sum()
                < part.options().size()) {
            out.addAll(help(part));
        } else {
            out.add(Finding.withValue(
                    Severity.NOTE,
                    "cable",
                    "The channels and the bend radius of "
                            + QuantityText.write(brief.rules.minBendRadius().to(Units.MILLIMETRE), 1)
                            + " let in cables up to "
                            + QuantityText.write(site.thickestCable().to(Units.MILLIMETRE), 1)
                            + " thick.",
                    site.thickestCable(),
                    Source.derived("channel between the studs, and bend round a stud")));
        }
        out.addAll(narrowStrip());
        return out;
    }

    private static Finding unusable(String reason, List<Option> options) {
        String names = options.stream().limit(4).map(o -> o.cable().name()).collect(Collectors.joining(", "));
        return Finding.of(
                Severity.ERROR,
                options.size() > 4 ? names + " and " + (options.size() - 4) + " more" : names,
                "Cannot be used: " + reason + ".",
                Source.derived("cable, studs, leads and supply as briefed"));
    }

    /** What a wider clearance from the wall would do, where it is too narrow for a lead. */
    private List<Finding> narrowStrip() {
        double wall = Si.in("wall clearance", brief.wallClearance.with(brief.membrane.studPitch()), Units.METRE);
        double half = options.leastSpacing() / 2;
        if (wall >= half - 1e-9) {
            return List.of();
        }
        return List.of(Finding.of(
                Severity.NOTE,
                "wall clearance",
                "With " + QuantityText.number(half * 1000, 1)
                        + " mm, half the least spacing, cold leads could run along the wall and more routes would do.",
                Amounts.metres(wall),
                Amounts.metres(half),
                Source.derived("a cold lead keeps half the least spacing from heating cable")));
    }

    private Finding refused(int part, Option option) {
        HeatingCable cable = option.cable();
        double[] fitting = options.fittingMetres(part);
        return switch (option.verdict()) {
            case TOO_LONG ->
                Finding.of(
                        Severity.ERROR,
                        cable.name(),
                        "Impossible: too long by " + Options.atLeast(option.lengthMetres() - fitting[1])
                                + " (proved). The cable cannot be cut; at most " + Options.metres(fitting[1])
                                + " can lie here.",
                        cable.length(),
                        Amounts.metres(fitting[1]),
                        BOUND);
            case TOO_SHORT ->
                Finding.of(
                        Severity.ERROR,
                        cable.name(),
                        "Too short: " + option.reason() + "; at least " + Options.metres(fitting[0]) + " would do.",
                        cable.length(),
                        Amounts.metres(fitting[0]),
                        Source.brief("greatest spacing"));
            default ->
                Finding.of(
                        Severity.ERROR,
                        cable.name(),
                        "It cannot be used: " + option.reason() + ".",
                        Source.derived("cable, studs and supply as briefed"));
        };
    }

    /** Bounds allow some sets, but none tried works. */
    List<Finding> ofAttempts(List<PartChoice> parts, List<Finding> failures, int tried, int sets) {
        List<Finding> out = new ArrayList<>(failures.subList(0, Math.min(MOST_FAILURES, failures.size())));
        out.add(Finding.of(
                Severity.NOTE,
                "catalogue",
                "The bounds allow " + sets + (sets == 1 ? " choice" : " choices") + " of cables; " + tried
                        + (tried == 1 ? " was" : " were") + " tried and none works.",
                Amounts.of(tried, Units.ONE),
                Amounts.of(sets, Units.ONE),
                Source.derived("search with counted work; not proved")));
        parts.forEach(part -> lengths(part, out));
        out.addAll(narrowStrip());
        return out;
    }

    private void lengths(PartChoice part, List<Finding> out) {
        double[] fitting = options.fittingMetres(part.part());
        if (fitting[1] > fitting[0]) {
            out.add(Finding.of(
                    Severity.NOTE,
                    "lengths that fit",
                    "A cable of " + Options.metres(fitting[0]) + " to " + Options.metres(fitting[1])
                            + " would fit here by the bounds.",
                    Amounts.metres(fitting[0]),
                    Amounts.metres(fitting[1]),
                    BOUND));
        }
    }

    /** What would make it possible, recomputed. */
    private List<Finding> help(PartChoice part) {
        List<Finding> out = new ArrayList<>();
        lengths(part, out);
        Option shortest = part.options().get(0);
        Option longest = part.options().get(part.options().size() - 1);
        if (shortest.verdict() == Option.Verdict.TOO_LONG) {
            closerSpacing(shortest, out);
            smallerClearance(part, out);
        } else if (longest.verdict() == Option.Verdict.TOO_SHORT) {
            out.add(Finding.of(
                    Severity.NOTE,
                    longest.cable().name(),
                    "With runs " + Options.millimetres(longest.spacingMetres())
                            + " apart the longest cable of the catalogue would do; or lay more than one cable.",
                    Amounts.metres(longest.spacingMetres()),
                    Amounts.metres(options.greatestSpacing()),
                    Source.brief("greatest spacing")));
        }
        return out;
    }

    /** The widest closer spacing at which a route is found, or that there is none. */
    private void closerSpacing(Option shortest, List<Finding> out) {
        double pitch = Si.in("pitch", brief.membrane.studPitch(), Units.METRE);
        double bend = Si.in("bend", brief.rules.minBendRadius(), Units.METRE);
        int least = Math.max(1, (int) Math.ceil(2 * bend / pitch - 1e-6));
        int most = (int) Math.ceil(options.leastSpacing() / pitch - 1e-6) - 1;
        double capacity = options.fittingMetres(0)[1];
        for (int studs = most; studs >= least; studs--) {
            Router closer = router(brief.keepOuts, studs * pitch);
            capacity = capacity(closer);
            if (capacity >= shortest.lengthMetres()
                    && closer.route(0, Routes.toLay(shortest.cable()), Effort.QUICK, Planner.SEED)
                            instanceof RouteOutcome.Laid) {
                out.add(spacing(
                        studs * pitch,
                        "With runs at least " + count(studs) + " apart (" + Options.millimetres(studs * pitch)
                                + ") it can be laid exactly (tried), if the cable's instructions and the heat per area"
                                + " allow it."));
                return;
            }
        }
        double closest = least > most ? options.leastSpacing() : least * pitch;
        out.add(spacing(
                closest,
                "No closer spacing was found to make room for it: at " + Options.millimetres(closest)
                        + ", the closest whole studs at which it can turn back with a radius of "
                        + Options.millimetres(bend) + ", at most " + Options.metres(capacity) + " can lie here."));
    }

    private Finding spacing(double metres, String message) {
        return Finding.of(
                Severity.NOTE,
                "least spacing",
                message,
                Amounts.metres(metres),
                Amounts.metres(options.leastSpacing()),
                BOUND);
    }

    private static String count(int studs) {
        return studs + (studs == 1 ? " stud" : " studs");
    }

    private void smallerClearance(PartChoice part, List<Finding> out) {
        double now = options.fittingMetres(part.part())[1];
        List<String> gains = new ArrayList<>();
        for (int i = 0; i < brief.keepOuts.size(); i++) {
            List<KeepOut> without = new ArrayList<>(brief.keepOuts);
            without.remove(i);
            double gain = capacity(router(without, options.leastSpacing())) - now;
            if (gain > 0.01) {
                gains.add(brief.keepOuts.get(i).name() + " " + QuantityText.number(gain, 2) + " m");
            }
        }
        if (!gains.isEmpty()) {
            out.add(Finding.of(
                    Severity.NOTE,
                    "keep-outs",
                    "Room that each keep-out with its clearance takes from the cable: "
                            + gains.stream().collect(Collectors.joining(", ")) + ".",
                    BOUND));
        }
    }

    private Router router(List<KeepOut> keepOuts, double spacing) {
        return Router.of(RouteSite.of(
                brief.room,
                brief.wallClearance,
                keepOuts,
                site.channels().lattice(),
                Amounts.metres(spacing),
                brief.rules.minBendRadius(),
                brief.rules.start(),
                brief.rules.riser(),
                brief.rules.jointLength()));
    }

    private static double capacity(Router router) {
        return Si.in("capacity", router.capacity(0), Units.METRE);
    }
}
