package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import org.heatfloor.plan.Planner.PartChoice;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * Sets of cables, one for each part of the floor, in the order of the rule: those that cover the heat loss, shortest
 * first; then those that do not, longest first. Of equal lengths the set with the more equal spacing comes first.
 */
final class Combinations {

    private static final int MOST = 20_000;

    private Combinations() {}

    static List<List<Option>> ranked(List<PartChoice> parts, Optional<Quantity<Power>> heatLoss) {
        List<List<Option>> sets = new ArrayList<>();
        sets.add(List.of());
        for (PartChoice part : parts) {
            List<List<Option>> longer = new ArrayList<>();
            for (List<Option> set : sets) {
                for (Option option : part.working()) {
                    List<Option> next = new ArrayList<>(set);
                    next.add(option);
                    longer.add(List.copyOf(next));
                    if (longer.size() >= MOST) {
                        break;
                    }
                }
            }
            sets = longer;
        }
        double loss = heatLoss.map(l -> Si.in("heat loss", l, Units.WATT)).orElse(0.0);
        Comparator<List<Option>> shortest = Comparator.comparingDouble(Combinations::length);
        Comparator<List<Option>> even = Comparator.comparingDouble(Combinations::unevenness);
        List<List<Option>> covering = new ArrayList<>();
        List<List<Option>> others = new ArrayList<>();
        for (List<Option> set : sets) {
            // Without temperatures the output is not known and cannot rule a set out.
            (output(set) < loss ? others : covering).add(set);
        }
        covering.sort(shortest.thenComparing(even));
        others.sort(shortest.reversed().thenComparing(even));
        covering.addAll(others);
        return covering;
    }

    static double output(List<Option> set) {
        return set.stream().mapToDouble(Option::outputWatts).sum();
    }

    static double length(List<Option> set) {
        return Math.round(set.stream().mapToDouble(Option::lengthMetres).sum() * 1e6) / 1e6;
    }

    private static double unevenness(List<Option> set) {
        double widest = set.stream().mapToDouble(Option::spacingMetres).max().orElse(1);
        double closest = set.stream().mapToDouble(Option::spacingMetres).min().orElse(1);
        return widest / closest;
    }
}
