package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.Router;

/**
 * Sets of cables that share one part of the floor which is too large for any single one: of at most two lengths of the
 * catalogue with the same heat per metre, so that even spacing is even heat.
 */
final class Bundles {

    private static final int MOST_CABLES = 12;
    /** How many cables more than the fewest are looked at. */
    private static final int MORE = 4;

    private static final int MOST_SETS = 40;
    private static final double SAME_HEAT = 0.02;

    private final Router router;
    private final Options options;

    Bundles(Router router, Options options) {
        this.router = router;
        this.options = options;
    }

    /** Sets for a part, the fewest cables first, then the shortest; none where a single cable may work or none is usable. */
    List<Option> of(int part, List<Option> singles) {
        List<Option> usable = singles.stream()
                .filter(o -> o.verdict() == Option.Verdict.TOO_SHORT)
                .toList();
        // A catalogue of one entry forces that one cable.
        if (usable.isEmpty() || singles.size() == 1 || singles.stream().anyMatch(Option::mayWork)) {
            return List.of();
        }
        List<Option> out = new ArrayList<>();
        int fewest = 0;
        for (int count = 2; count <= MOST_CABLES && (fewest == 0 || count <= fewest + MORE); count++) {
            List<Option> sets = new ArrayList<>();
            for (int i = 0; i < usable.size(); i++) {
                for (int j = i; j < usable.size(); j++) {
                    for (int longer = 1; longer <= (i == j ? 1 : count - 1); longer++) {
                        add(part, usable.get(j), usable.get(i), i == j ? count : longer, count, sets);
                    }
                }
            }
            // Of equal sums the most equal lengths, then the catalogue's order.
            sets.sort(Comparator.comparingDouble((Option o) -> Math.rint(o.lengthMetres() * 1e6))
                    .thenComparingDouble(Bundles::difference));
            List<Option> distinct = new ArrayList<>();
            for (Option o : sets) {
                if (distinct.isEmpty()
                        || o.lengthMetres() > distinct.get(distinct.size() - 1).lengthMetres() + 1e-6) {
                    distinct.add(o);
                }
            }
            out.addAll(thinned(distinct));
            fewest = fewest == 0 && !distinct.isEmpty() ? count : fewest;
        }
        return out;
    }

    /** All of a short list; of a long one about as many as may be looked at, both ends among them. */
    private static List<Option> thinned(List<Option> sets) {
        List<Option> out = new ArrayList<>();
        double step = Math.max(1, (sets.size() - 1) / (double) (MOST_SETS - 1));
        for (double at = 0; Math.rint(at) < sets.size(); at += step) {
            out.add(sets.get((int) Math.rint(at)));
        }
        return out;
    }

    private static double difference(Option option) {
        return Math.abs(metres(option.cables().get(option.cables().size() - 1)) - metres(option.cable()));
    }

    private static double metres(HeatingCable cable) {
        return Si.in("length", cable.length(), Units.METRE);
    }

    private static double wattsPerMetre(HeatingCable cable) {
        return Si.in("power", cable.power(), Units.WATT) / metres(cable);
    }

    private void add(int part, Option longer, Option shorter, int ofLonger, int count, List<Option> out) {
        HeatingCable a = longer.cable();
        HeatingCable b = shorter.cable();
        if (a.conductors() != b.conductors() || Math.abs(wattsPerMetre(a) / wattsPerMetre(b) - 1) > SAME_HEAT) {
            return;
        }
        double length = ofLonger * longer.lengthMetres() + (count - ofLonger) * shorter.lengthMetres();
        double area = Si.in("reach", router.reachArea(part), Units.SQUARE_METRE);
        double spacing = area / length;
        // The tolerance of the range is left to the differences between the pieces.
        if (spacing > options.greatestSpacing()) {
            return;
        }
        List<HeatingCable> cables = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            cables.add(i < ofLonger ? a : b);
        }
        double capacity = Si.in(
                "capacity",
                router.capacity(part, cables.stream().map(Routes::toLay).toList()),
                Units.METRE);
        if (length > capacity) {
            return;
        }
        double output = ofLonger * options.output(a, spacing) + (count - ofLonger) * options.output(b, spacing);
        out.add(new Option(cables, length, spacing, output, Option.Verdict.MAY_WORK, ""));
    }
}
