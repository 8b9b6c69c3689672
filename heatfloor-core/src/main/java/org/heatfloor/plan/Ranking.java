package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.heatfloor.electrical.CableRating;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.plan.CableOption.Verdict;
import org.heatfloor.plan.Planner.PartChoice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableRoute;
import org.heatfloor.routing.RouteOutcome;
import org.heatfloor.routing.Router;

/** The table of every length of the catalogue for every part of the floor, by bounds and by what was tried. */
final class Ranking {

    private final Brief brief;
    private final Router router;
    private final Options options;
    private final List<PartChoice> parts;
    private final Routes routes;

    Ranking(Brief brief, Router router, Options options, List<PartChoice> parts, Routes routes) {
        this.brief = brief;
        this.router = router;
        this.options = options;
        this.parts = List.copyOf(parts);
        this.routes = routes;
    }

    /** Rows of every part that holds a cable at all, shortest cable first; a set of cables chosen comes after the single ones. */
    List<CableOption> of(List<Option> chosen, List<CableRoute> laid) {
        List<CableOption> out = new ArrayList<>();
        int next = 0;
        int route = 0;
        for (PartChoice part : parts) {
            boolean served = part.mayWork() && next < chosen.size();
            Optional<Option> taken = served ? Optional.of(chosen.get(next++)) : Optional.empty();
            List<CableRoute> here = taken.map(o -> o.cables().size()).orElse(0) == 0
                    ? List.of()
                    : laid.subList(route, route + taken.orElseThrow().cables().size());
            route += here.size();
            if (part.mayWork() || options.holdsCable(part.part())) {
                for (Option option : part.options()) {
                    out.add(row(part, option, taken, here));
                }
                taken.filter(Option::several).ifPresent(o -> out.add(row(part, o, taken, here)));
            }
        }
        return out;
    }

    private CableOption row(PartChoice part, Option option, Optional<Option> taken, List<CableRoute> laid) {
        boolean chosen = taken.isPresent() && taken.orElseThrow().equals(option);
        Optional<RouteOutcome> tried = option.several()
                ? Optional.empty()
                : routes.lastTried(part.part(), option.cable().name());
        double area = Si.in("reach", router.reachArea(part.part()), Units.SQUARE_METRE);
        double bound = option.several()
                ? Si.in(
                        "capacity",
                        router.capacity(
                                part.part(),
                                option.cables().stream().map(Routes::toLay).toList()),
                        Units.METRE)
                : options.fittingMetres(part.part())[1];
        double coverage = Math.min(1, option.lengthMetres() * options.greatestSpacing() / area);
        if (chosen) {
            double cold = 0;
            for (CableRoute route : laid) {
                cold += Si.in("cold share", route.coldShare(), Units.ONE) / laid.size();
            }
            coverage = 1 - cold;
        } else if (tried.orElse(null) instanceof RouteOutcome.Laid l) {
            coverage = 1 - Si.in("cold share", l.route().coldShare(), Units.ONE);
        }
        double watts = 0;
        for (HeatingCable cable : option.cables()) {
            watts += Si.in(
                    "power",
                    CableRating.of(cable, brief.supply.voltage()).power().nominal(),
                    Units.WATT);
        }
        Optional<Double> longest = chosen || tried.orElse(null) instanceof RouteOutcome.Laid
                ? Optional.of(option.lengthMetres())
                : tried.orElse(null) instanceof RouteOutcome.NotFound n
                        ? Optional.of(Si.in("longest", n.longestFound(), Units.METRE))
                        : Optional.empty();
        return new CableOption(
                Planner.where(router, part.part()),
                option.several() ? SharedFindings.names(option) : option.cable().name(),
                Amounts.metres(option.lengthMetres()),
                Amounts.metres(option.spacingMetres()),
                Amounts.of(watts / area, Units.WATT_PER_SQUARE_METRE),
                Amounts.of(coverage, Units.ONE),
                Amounts.metres(bound - option.lengthMetres()),
                option.lengthMetres() * (1 + brief.lengthTolerance()) <= bound,
                longest.map(Amounts::metres),
                verdict(option, chosen, tried),
                tried.orElse(null) instanceof RouteOutcome.NotFound && !chosen
                        ? "no exact route was found"
                        : option.reason());
    }

    private static Verdict verdict(Option option, boolean chosen, Optional<RouteOutcome> tried) {
        if (chosen) {
            return Verdict.CHOSEN;
        }
        return switch (option.verdict()) {
            case TOO_LONG -> Verdict.TOO_LONG;
            case TOO_SHORT -> Verdict.TOO_SHORT;
            case NOT_FIT -> Verdict.UNUSABLE;
            case MAY_WORK ->
                tried.isEmpty()
                        ? Verdict.NOT_TRIED
                        : tried.orElseThrow() instanceof RouteOutcome.Laid ? Verdict.LAID : Verdict.NOT_FOUND;
        };
    }
}
