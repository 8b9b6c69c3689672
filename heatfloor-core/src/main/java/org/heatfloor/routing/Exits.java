package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Last stretches of a cable that comes back: from where it may turn, over the joint, to a junction that a lead reaches. */
final class Exits {

    private static final int MOST = 8;
    /** How many of them may lie close to each other. */
    private static final int CLOSE = 4;

    private final Rest rest;
    private final int width;

    Exits(Rest rest) {
        this.rest = rest;
        width = rest.floor.lattice.width;
    }

    /**
     * The stretches, that of the plan first, then by the length of the lead.
     *
     * @param plannedGate junction at which the plan comes to the wall; −1 where there is no plan
     */
    List<int[]> list(int plannedGate) {
        int[] stays = rest.laid.nodes();
        boolean[] permitted = rest.between(stays, rest.first(), stays.length);
        List<LeadWays.Way> gates = new ArrayList<>();
        for (int v = 0; v < permitted.length; v++) {
            if (permitted[v]) {
                gates.addAll(rest.part.waysAt.get(v));
            }
        }
        gates.sort(Comparator.comparing((LeadWays.Way w) -> w.node() != plannedGate)
                .thenComparingDouble(LeadWays.Way::lengthMetres));
        List<int[]> out = new ArrayList<>();
        List<Integer> chosen = new ArrayList<>();
        for (LeadWays.Way way : gates) {
            int apart = chosen.size() < CLOSE ? 2 : 3 * rest.spacing();
            if (chosen.size() >= MOST || chosen.stream().anyMatch(v -> distance(v, way.node()) < apart)) {
                continue;
            }
            List<int[]> here = from(way, permitted);
            if (!here.isEmpty()) {
                out.addAll(here);
                chosen.add(way.node());
            }
        }
        return out;
    }

    private int distance(int a, int b) {
        return Math.max(Math.abs(a % width - b % width), Math.abs(a / width - b / width));
    }

    /** Straight on from the lead, to the left and to the right. */
    private List<int[]> from(LeadWays.Way way, boolean[] permitted) {
        RouteSite site = rest.floor.site;
        int straight = Integer.numberOfTrailingZeros(way.bit());
        int bend = (int) Math.ceil(site.bendRadius / site.pitch);
        List<int[]> out = new ArrayList<>();
        for (int turn : new int[] {0, 1, 3}) {
            int length = rest.straightExit() + (turn == 0 ? 0 : bend);
            int[] exit = stretch(permitted, way.node(), (straight + turn) % 4, length);
            if (exit != null) {
                out.add(exit);
            }
        }
        return out;
    }

    private int @Nullable [] stretch(boolean[] permitted, int gate, int direction, int length) {
        int[] steps = {1, width, -1, -width};
        int[] out = new int[length + 1];
        int v = gate;
        for (int t = 0; t <= length; t++) {
            out[length - t] = v;
            if (!permitted[v] || (t < length && (rest.floor.lattice.channels[v] & (1 << direction)) == 0)) {
                return null;
            }
            v += steps[direction];
        }
        return out;
    }
}
