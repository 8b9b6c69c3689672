package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Shares loads among the fewest circuits: first-fit decreasing, then branch and bound within a fixed count of steps, ended
 * as soon as no fewer circuits are possible. A load that exceeds the capacity alone gets a circuit of its own.
 */
final class CircuitSplit {

    private static final int STEPS = 200_000;
    private static final double SLACK = 1e-9;

    private final double[] loads;
    private final double capacity;
    private final int fewest;
    private final double[] sums;
    private final int[] at;
    private int[] best;
    private int bestCount;
    private int steps = STEPS;

    /**
     * A task.
     *
     * @param loads amperes of each cable, falling
     * @param capacityAmperes greatest sum of several cables
     */
    private CircuitSplit(double[] loads, double capacityAmperes) {
        this.loads = loads;
        this.capacity = capacityAmperes;
        this.fewest = fewest(loads, capacityAmperes);
        this.sums = new double[loads.length];
        this.at = new int[loads.length];
        this.best = IntStream.range(0, loads.length).toArray();
        this.bestCount = loads.length;
    }

    /** Circuits as lists of cable indices, each in the cables' order, circuits in order of their first cable. */
    static List<List<Integer>> of(double[] loads, double capacityAmperes) {
        int[] falling = IntStream.range(0, loads.length)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> -loads[i]).thenComparing(i -> i))
                .mapToInt(i -> i)
                .toArray();
        CircuitSplit split = new CircuitSplit(
                Arrays.stream(falling).mapToDouble(i -> loads[i]).toArray(), capacityAmperes);
        split.place(0, 0);
        List<List<Integer>> circuits = new ArrayList<>();
        for (int circuit = 0; circuit < split.bestCount; circuit++) {
            int number = circuit;
            circuits.add(IntStream.range(0, loads.length)
                    .filter(i -> split.best[i] == number)
                    .map(i -> falling[i])
                    .sorted()
                    .boxed()
                    .toList());
        }
        circuits.sort(Comparator.comparing(circuit -> circuit.get(0)));
        return circuits;
    }

    /** No fewer: the sum over the capacity, and every load above half of it lies alone or with a smaller one. */
    private static int fewest(double[] loads, double capacity) {
        if (!(capacity > 0)) {
            return loads.length;
        }
        double sum = Arrays.stream(loads).map(load -> Math.min(load, capacity)).sum();
        long large = Arrays.stream(loads)
                .filter(load -> 2 * load > capacity * (1 + SLACK))
                .count();
        return Math.max((int) large, (int) Math.ceil(sum / capacity * (1 - 2 * SLACK)));
    }

    // The first descent is first-fit decreasing, so that there is a good answer however soon the steps run out.
    private void place(int next, int count) {
        if (count >= bestCount || bestCount <= fewest) {
            return;
        }
        if (next == loads.length) {
            best = at.clone();
            bestCount = count;
            return;
        }
        if (--steps < 0) {
            return;
        }
        for (int circuit = 0; circuit <= count; circuit++) {
            double before = circuit == count ? 0 : sums[circuit];
            if (circuit == count || before + loads[next] <= capacity * (1 + SLACK)) {
                sums[circuit] = before + loads[next];
                at[next] = circuit;
                place(next + 1, Math.max(count, circuit + 1));
                sums[circuit] = before;
            }
        }
    }
}
