package org.heatfloor.plan;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.heatfloor.electrical.CableRating;
import org.heatfloor.electrical.CircuitDesign;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.finding.Finding;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.RouteSite;
import org.heatfloor.routing.Router;
import org.heatfloor.thermal.SteadySection;

/** Judges every cable of the catalogue for a part of the floor by bounds, before any route is sought. */
final class Options {

    /** Tolerance of the spacing range. */
    static final double SPACING_TOLERANCE = 0.02;

    private final Brief brief;
    private final RouteSite site;
    private final Router router;
    private final Map<Integer, Optional<Double>> leadNeeded = new HashMap<>();
    private final double least;
    private final double most;

    Options(Brief brief, RouteSite site, Router router) {
        this.brief = brief;
        this.site = site;
        this.router = router;
        least = Si.in("least spacing", brief.rules.minSpacing().with(brief.membrane.studPitch()), Units.METRE);
        most = Si.in("greatest spacing", brief.rules.maxSpacing().with(brief.membrane.studPitch()), Units.METRE);
    }

    double leastSpacing() {
        return least;
    }

    double greatestSpacing() {
        return most;
    }

    /** All options of a part, shortest first; equal lengths in the catalogue's order. */
    List<Option> of(int part) {
        return brief.catalogue.stream()
                .map(cable -> judged(part, cable))
                .sorted(Comparator.comparingDouble(Option::lengthMetres))
                .toList();
    }

    /** Shortest cable that keeps the greatest spacing, and the proved longest. */
    double[] fittingMetres(int part) {
        double area = Si.in("reach", router.reachArea(part), Units.SQUARE_METRE);
        return new double[] {
            area / (most * (1 + SPACING_TOLERANCE)), Si.in("capacity", router.capacity(part), Units.METRE)
        };
    }

    /** Whether a cable of some length fits a part at all. */
    boolean holdsCable(int part) {
        double[] fitting = fittingMetres(part);
        return fitting[1] > fitting[0];
    }

    private Option judged(int part, HeatingCable cable) {
        double length = Si.in("length", cable.length(), Units.METRE);
        double area = Si.in("reach", router.reachArea(part), Units.SQUARE_METRE);
        double spacing = area / length;
        double capacity = fittingMetres(part)[1];
        Optional<String> thick = site.tooThick(cable.diameter());
        if (thick.isPresent()) {
            return option(cable, length, spacing, Option.Verdict.NOT_FIT, thick.orElseThrow());
        }
        Optional<Finding> fault =
                CircuitDesign.of(brief.supply, List.of(cable), brief.installation()).findings().stream()
                        .filter(Finding::isError)
                        .findFirst();
        if (fault.isPresent()) {
            return option(
                    cable,
                    length,
                    spacing,
                    Option.Verdict.NOT_FIT,
                    fault.orElseThrow().message());
        }
        Optional<String> unreached = unreached(part, cable);
        if (unreached.isPresent()) {
            return option(cable, length, spacing, Option.Verdict.NOT_FIT, unreached.orElseThrow());
        }
        if (length > capacity) {
            return option(
                    cable,
                    length,
                    spacing,
                    Option.Verdict.TOO_LONG,
                    "it is too long by " + atLeast(length - capacity) + " (proved)");
        }
        if (spacing > most * (1 + SPACING_TOLERANCE)) {
            return option(
                    cable,
                    length,
                    spacing,
                    Option.Verdict.TOO_SHORT,
                    "its runs would lie " + millimetres(spacing) + " apart, more than the " + millimetres(most)
                            + " allowed");
        }
        // The capacity never passes A over the least spacing, so a cable within it cannot lie too close on average.
        return option(cable, length, spacing, Option.Verdict.MAY_WORK, "");
    }

    private Optional<String> unreached(int part, HeatingCable cable) {
        double available = Math.max(
                0,
                Si.in("cold lead", cable.coldLead(), Units.METRE) - Si.in("riser", brief.rules.riser(), Units.METRE));
        Optional<Double> needed = leadNeeded.computeIfAbsent(
                part, p -> router.leadNeeded(p).map(q -> Si.in("lead needed", q, Units.METRE)));
        if (needed.isEmpty()) {
            return Optional.of(
                    "from this start no cold lead finds a way to the floor: keep-outs stand in the way, or the"
                            + " clearance from the wall is less than half the least spacing, so that a lead has no strip to lie in");
        }
        if (available >= needed.orElseThrow()) {
            return Optional.empty();
        }
        List<String> metres = QuantityText.apart(available, needed.orElseThrow(), 2);
        return Optional.of("its cold lead leaves " + metres.get(0) + " m for the floor after the riser and "
                + metres.get(1) + " m are needed; move the start, or take a longer cold lead");
    }

    private Option option(HeatingCable cable, double length, double spacing, Option.Verdict verdict, String reason) {
        double output = verdict == Option.Verdict.MAY_WORK ? output(cable, spacing) : Double.NaN;
        return new Option(List.of(cable), length, spacing, output, verdict, reason);
    }

    /** Heat into the room with runs a spacing apart; NaN where build-up and climate are not known. */
    double output(HeatingCable cable, double spacing) {
        if (brief.buildUp.isEmpty() || brief.climate.isEmpty()) {
            return Double.NaN;
        }
        SteadySection section = SteadySection.of(
                brief.buildUp.orElseThrow(),
                brief.climate.orElseThrow(),
                HeatPlan.embedded(brief, cable),
                Amounts.metres(spacing));
        double power = Si.in(
                "power", CableRating.of(cable, brief.supply.voltage()).power().nominal(), Units.WATT);
        return power * Si.in("share", section.shareUpward(), Units.ONE);
    }

    static String metres(double metres) {
        return QuantityText.number(metres, 2) + " m";
    }

    /** A length proved to be too much; a small one is told in whole millimetres of it, never as nothing. */
    static String atLeast(double metres) {
        if (metres < 0.001) {
            return "a fraction of a millimetre at least";
        }
        return "at least " + (metres < 0.1 ? millimetres(Math.floor(metres * 1000 + 1e-9) / 1000) : metres(metres));
    }

    static String millimetres(double metres) {
        return QuantityText.number(metres * 1000, 0) + " mm";
    }
}
