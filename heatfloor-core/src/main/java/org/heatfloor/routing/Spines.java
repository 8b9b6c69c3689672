package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The rest laid afresh: spines from the head to far corners of the open floor, for a cable that comes back home to the wall. */
final class Spines {

    private static final int TURN_PRICE = 5;

    private final Rest rest;
    private final ChannelWay ways;

    Spines(Rest rest, ChannelWay ways) {
        this.rest = rest;
        this.ways = ways;
    }

    /** Strands with a free end. */
    List<Strand> open() {
        int[] stays = rest.laid.nodes();
        boolean[] permitted = rest.between(stays, rest.first(), stays.length);
        List<int[]> spines = new ArrayList<>();
        spines.add(new int[0]);
        for (int turn = 2; turn >= -1; turn--) {
            ways.search(permitted, TURN_PRICE, rest.head(), rest.headDirection(), turn, -1);
            for (int goal : ways.farthest()) {
                int[] way = ways.to(goal);
                if (way != null && spines.stream().noneMatch(s -> Arrays.equals(s, way))) {
                    spines.add(way);
                }
            }
        }
        return sound(spines, new int[0]);
    }

    /** Strands that end with a given last stretch to the wall. */
    List<Strand> home(int[] exit) {
        int f = rest.first();
        int[] ends = joined(rest.laid.nodes(), exit);
        boolean[] permitted = rest.between(ends, f, f + 1);
        int onward = rest.direction(exit, 0);
        ways.search(permitted, TURN_PRICE, rest.head(), rest.headDirection(), 2, -1);
        int[] direct = ways.to(exit[0], onward);
        if (direct == null) {
            return List.of();
        }
        List<int[]> outward = new ArrayList<>();
        for (int goal : ways.farthest()) {
            int[] out = ways.to(goal);
            if (out != null && out.length >= 2) {
                outward.add(out);
            }
        }
        List<int[]> spines = new ArrayList<>();
        spines.add(direct);
        for (int[] out : outward) {
            int[] there = joined(joined(rest.laid.nodes(), out), exit);
            int at = f + out.length;
            boolean[] back = rest.between(there, at, at + 1);
            ways.search(back, TURN_PRICE, there[at], rest.direction(there, at - 1), 2, -1);
            int[] way = ways.to(exit[0], onward);
            if (way != null) {
                spines.add(joined(out, way));
            }
        }
        return sound(spines, exit);
    }

    /** The strands that keep the rule; a spine ends with the first junction of the exit, if there is one. */
    private List<Strand> sound(List<int[]> spines, int[] exit) {
        List<Strand> out = new ArrayList<>();
        for (int[] spine : spines) {
            int[] nodes = joined(
                    joined(rest.laid.nodes(), spine), Arrays.copyOfRange(exit, Math.min(1, exit.length), exit.length));
            Strand strand = rest.strand(nodes, nodes.length, exit.length);
            if (strand.sound()) {
                out.add(strand);
            }
        }
        return out;
    }

    private static int[] joined(int[] a, int[] b) {
        int[] out = Arrays.copyOf(a, a.length + b.length);
        System.arraycopy(b, 0, out, a.length, b.length);
        return out;
    }
}
