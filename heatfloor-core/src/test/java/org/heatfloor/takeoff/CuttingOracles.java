package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Other ways to count rolls, sharing nothing with the search: first fit, and every assignment there is. */
final class CuttingOracles {

    private CuttingOracles() {}

    /** Longest first, each on the first roll with room. */
    static int firstFitDecreasing(int[] lengths, int roll) {
        return firstFitLoads(lengths, roll).size();
    }

    /** What each roll then holds. */
    static List<Integer> firstFitLoads(int[] lengths, int roll) {
        int[] sorted = lengths.clone();
        Arrays.sort(sorted);
        List<Integer> left = new ArrayList<>();
        for (int i = sorted.length - 1; i >= 0; i--) {
            int place = 0;
            while (place < left.size() && left.get(place) < sorted[i]) {
                place++;
            }
            if (place == left.size()) {
                left.add(roll);
            }
            left.set(place, left.get(place) - sorted[i]);
        }
        return left.stream().map(l -> roll - l).toList();
    }

    /**
     * The fewest rolls over every partition of the pieces into side-by-side groups and every partition of the groups into
     * rolls.
     */
    static int exhaustive(int[] lengths, int[] widths, int rollLength, int rollWidth) {
        return groups(lengths, widths, 0, new ArrayList<>(), rollLength, rollWidth);
    }

    private static int groups(
            int[] lengths, int[] widths, int next, List<List<Integer>> groups, int rollLength, int rollWidth) {
        if (next == lengths.length) {
            int[] tall = groups.stream()
                    .mapToInt(g -> g.stream().mapToInt(i -> lengths[i]).max().orElse(0))
                    .toArray();
            return rolls(tall, 0, new ArrayList<>(), rollLength);
        }
        int best = Integer.MAX_VALUE;
        for (List<Integer> group : List.copyOf(groups)) {
            int taken = group.stream().mapToInt(i -> widths[i]).sum();
            if (taken + widths[next] <= rollWidth) {
                group.add(next);
                best = Math.min(best, groups(lengths, widths, next + 1, groups, rollLength, rollWidth));
                group.remove(group.size() - 1);
            }
        }
        List<Integer> own = new ArrayList<>(List.of(next));
        groups.add(own);
        best = Math.min(best, groups(lengths, widths, next + 1, groups, rollLength, rollWidth));
        groups.remove(groups.size() - 1);
        return best;
    }

    private static int rolls(int[] lengths, int next, List<Integer> left, int roll) {
        if (next == lengths.length) {
            return left.size();
        }
        int best = Integer.MAX_VALUE;
        for (int i = 0; i < left.size(); i++) {
            if (left.get(i) >= lengths[next]) {
                left.set(i, left.get(i) - lengths[next]);
                best = Math.min(best, rolls(lengths, next + 1, left, roll));
                left.set(i, left.get(i) + lengths[next]);
            }
        }
        left.add(roll - lengths[next]);
        best = Math.min(best, rolls(lengths, next + 1, left, roll));
        left.remove(left.size() - 1);
        return best;
    }
}
