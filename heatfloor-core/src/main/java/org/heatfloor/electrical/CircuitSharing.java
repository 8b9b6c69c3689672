package org.heatfloor.electrical;

import java.util.List;

/**
 * Cables shared over circuits, with the conductors rated for as many circuits laid together as come out: more circuits
 * lower the rating, a lower rating asks for more circuits, until both agree.
 *
 * @param supply the supply, with the number of circuits the conductors are rated for
 * @param ampacity their capacity
 * @param shares the cables of each circuit, by number
 * @param capacityAmperes greatest load of one circuit
 */
record CircuitSharing(Supply supply, Ampacity ampacity, List<List<Integer>> shares, double capacityAmperes) {

    /** As many circuits as can be rated together. */
    static final int MOST_TOGETHER = 20;

    CircuitSharing {
        shares = List.copyOf(shares);
    }

    static CircuitSharing of(Supply supply, double[] amperes, InstallationDetails details) {
        int together = supply.groupedCircuits();
        while (true) {
            Supply placed = supply.withGroupedCircuits(together);
            Ampacity ampacity = placed.ampacity();
            double switched = details.control().map(ControlDevice::amperes).orElse(Double.POSITIVE_INFINITY);
            double capacity = Math.min(CircuitSizing.capacity(supply.code(), ampacity, true), switched);
            CircuitSharing sharing = new CircuitSharing(placed, ampacity, CircuitSplit.of(amperes, capacity), capacity);
            int needed = Math.min(sharing.shares.size(), MOST_TOGETHER);
            if (details.circuitsApart() || needed <= together) {
                return sharing;
            }
            together = needed;
        }
    }

    /** Whether more circuits lie together than can be rated. */
    boolean beyondTable() {
        return shares.size() > MOST_TOGETHER && supply.groupedCircuits() == MOST_TOGETHER;
    }
}
