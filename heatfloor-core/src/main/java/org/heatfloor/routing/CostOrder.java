package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * Walks in order of their cost; where zones are wanted warmer, with the price of the cable that lies in the wrong place.
 *
 * @param part the floor
 */
record CostOrder(Part part) {

    private record Priced(Walk walk, double cost) {}

    List<Walk> cheapestFirst(List<Walk> walks) {
        return sorted(walks, Walk::cost);
    }

    /** The same of loops not yet opened and filled, by what they may come to cost. */
    List<Walk> mostPromisingFirst(List<Walk> loops) {
        return sorted(loops, Walk::promise);
    }

    private List<Walk> sorted(List<Walk> walks, ToDoubleFunction<Walk> cost) {
        return walks.stream()
                .map(walk -> new Priced(walk, cost.applyAsDouble(walk) + misplacedPrice(walk)))
                .sorted(Comparator.comparingDouble(Priced::cost))
                .map(Priced::walk)
                .collect(Collectors.toCollection(ArrayList::new));
    }

    private double misplacedPrice(Walk walk) {
        Wanted wanted = part.wanted;
        return wanted == null ? 0 : Candidate.MISPLACED_PRICE * wanted.misplaced(walk.lengths(wanted));
    }
}
