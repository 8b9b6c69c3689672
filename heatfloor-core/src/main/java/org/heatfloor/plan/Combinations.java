package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.heatfloor.plan.Planner.PartChoice;

/**
 * Sets of cables, one for each part of the floor, or several where a part is shared, in the order of the rule: the fewest
 * cables first, then the shortest. Of equal lengths the set with the more equal
 * spacing comes first.
 *
 * @param covering sets whose output, as reckoned before a route is known, may cover the heat loss; fewest cables, then shortest first
 * @param others the rest, longest first
 */
record Combinations(List<List<Option>> covering, List<List<Option>> others) {

    private static final int MOST = 200_000;

    /** The output reckoned from the even spacing may differ this far from that of the route as laid. */
    private static final double OUTPUT_SLACK = 0.02;

    private static final Comparator<List<Option>> SHORTEST_FIRST = Comparator.<List<Option>>comparingInt(
                    Combinations::cables)
            .thenComparingDouble(Combinations::length)
            .thenComparingDouble(Combinations::unevenness);

    static final Comparator<List<Option>> LONGEST_FIRST = Comparator.<List<Option>>comparingDouble(set -> -length(set))
            .thenComparingInt(Combinations::cables)
            .thenComparingDouble(Combinations::unevenness);

    static Combinations ranked(List<PartChoice> parts, OptionalDouble heatLossWatts) {
        double least = heatLossWatts.orElse(0) * (1 - OUTPUT_SLACK);
        List<List<Option>> covering = new ArrayList<>();
        List<List<Option>> others = new ArrayList<>();
        for (List<Option> set : sets(parts)) {
            // Without temperatures the output is not known and cannot rule a set out.
            (output(set) < least ? others : covering).add(set);
        }
        covering.sort(SHORTEST_FIRST);
        others.sort(LONGEST_FIRST);
        return new Combinations(covering, others);
    }

    int size() {
        return covering.size() + others.size();
    }

    private static List<List<Option>> sets(List<PartChoice> parts) {
        List<List<Option>> sets = new ArrayList<>();
        sets.add(List.of());
        for (PartChoice part : parts) {
            List<List<Option>> longer = new ArrayList<>();
            for (List<Option> set : sets) {
                for (Option option : part.working()) {
                    if (longer.size() < MOST) {
                        List<Option> next = new ArrayList<>(set);
                        next.add(option);
                        longer.add(List.copyOf(next));
                    }
                }
            }
            sets = longer;
        }
        return sets;
    }

    /** How many cables a set has; where no part is shared, one a part. */
    static int cables(List<Option> set) {
        return set.stream().mapToInt(option -> option.cables().size()).sum();
    }

    static double output(List<Option> set) {
        return set.stream().mapToDouble(Option::outputWatts).sum();
    }

    /** Total length, rounded to a micrometre so that sums in another order compare equal. */
    static double length(List<Option> set) {
        return Math.round(set.stream().mapToDouble(Option::lengthMetres).sum() * 1e6) / 1e6;
    }

    private static double unevenness(List<Option> set) {
        double widest = set.stream().mapToDouble(Option::spacingMetres).max().orElse(1);
        double closest = set.stream().mapToDouble(Option::spacingMetres).min().orElse(1);
        return widest / closest;
    }
}
