package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Shares loads among the fewest circuits: first-fit decreasing, then branch and bound within a fixed count of steps. A load
 * that exceeds the capacity alone gets a circuit of its own.
 */
final class CircuitSplit {

    private static final int STEPS = 200_000;

    private final double[] loads;
    private final double capacity;
    private List<List<Integer>> best;
    private int steps = STEPS;

    /**
     * A task.
     *
     * @param loads amperes of each cable
     * @param capacityAmperes greatest sum of several cables
     */
    private CircuitSplit(double[] loads, double capacityAmperes) {
        this.loads = loads;
        this.capacity = capacityAmperes;
        this.best = IntStream.range(0, loads.length).mapToObj(i -> List.of(i)).toList();
    }

    /** Circuits as lists of cable indices, each in the cables' order, circuits in order of their first cable. */
    static List<List<Integer>> of(double[] loads, double capacityAmperes) {
        CircuitSplit split = new CircuitSplit(loads.clone(), capacityAmperes);
        List<Integer> falling = IntStream.range(0, loads.length)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> -loads[i]).thenComparing(i -> i))
                .toList();
        split.place(falling, 0, new ArrayList<>());
        return split.best.stream()
                .map(circuit -> circuit.stream().sorted().toList())
                .sorted(Comparator.comparing(circuit -> circuit.get(0)))
                .toList();
    }

    // The first descent is first-fit decreasing, so that there is a good answer however soon the steps run out.
    private void place(List<Integer> falling, int next, List<List<Integer>> circuits) {
        if (circuits.size() >= best.size()) {
            return;
        }
        if (next == falling.size()) {
            best = circuits.stream().map(List::copyOf).toList();
            return;
        }
        if (--steps < 0) {
            return;
        }
        int cable = falling.get(next);
        // By index: deeper levels add circuits to the list and take them away again.
        int open = circuits.size();
        for (int i = 0; i < open; i++) {
            List<Integer> circuit = circuits.get(i);
            if (fits(circuit, cable)) {
                circuit.add(cable);
                place(falling, next + 1, circuits);
                circuit.remove(circuit.size() - 1);
            }
        }
        circuits.add(new ArrayList<>(List.of(cable)));
        place(falling, next + 1, circuits);
        circuits.remove(circuits.size() - 1);
    }

    private boolean fits(List<Integer> circuit, int cable) {
        double sum = loads[cable];
        for (int each : circuit) {
            sum += loads[each];
        }
        return sum <= capacity * (1 + 1e-9);
    }
}
