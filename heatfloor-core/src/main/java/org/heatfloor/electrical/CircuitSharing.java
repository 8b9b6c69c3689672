package org.heatfloor.electrical;

import java.util.List;
import java.util.Optional;

/**
 * Cables shared over circuits, with the conductors rated for as many circuits laid together as come out: more circuits
 * lower the rating, a lower rating asks for more circuits, until both agree.
 *
 * @param supply the supply, with the number of circuits the conductors are rated for
 * @param ampacity their capacity
 * @param shares the cables of each circuit, by number
 * @param capacityAmperes greatest load of one circuit
 * @param control the thermostat or contactor, where it and not the conductor sets that greatest load
 */
record CircuitSharing(
        Supply supply,
        Ampacity ampacity,
        List<List<Integer>> shares,
        double capacityAmperes,
        Optional<ControlDevice> control) {

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
            double carried = CircuitSizing.capacity(supply.code(), ampacity, true);
            Optional<ControlDevice> control = details.control().filter(device -> device.amperes() < carried);
            double capacity = control.map(ControlDevice::amperes).orElse(carried);
            CircuitSharing sharing =
                    new CircuitSharing(placed, ampacity, CircuitSplit.of(amperes, capacity), capacity, control);
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
