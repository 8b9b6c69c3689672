package org.heatfloor.routing;

import java.util.Arrays;

/** The nodes of a walk in order: from the start to the tail, or once round a loop. */
final class WalkOrder {

    private final int[] nodes;
    private final int[] places;
    private int count;

    WalkOrder(CoarseGrid grid) {
        nodes = new int[grid.edges.length + 1];
        places = new int[grid.edges.length];
    }

    /** Reads the order of a walk as it is now. */
    void read(Walk walk) {
        int node = walk.start;
        if (walk.closed()) {
            node = 0;
            while (walk.used[node] == 0) {
                node++;
            }
        }
        int first = node;
        int bit = Integer.lowestOneBit(walk.used[node]);
        int n = 0;
        do {
            nodes[n] = node;
            places[node] = n++;
            node += walk.grid.steps[bit];
            bit = walk.used[node] & ~CoarseGrid.opposite(bit);
        } while (bit != 0 && node != first);
        if (bit == 0) {
            nodes[n] = node;
            places[node] = n++;
        }
        count = n;
    }

    int count() {
        return count;
    }

    /** The node at a place; of a loop the places go on round. */
    int node(int place) {
        return nodes[place < count ? place : place - count];
    }

    /** The place of a node that lies on the walk. */
    int place(int node) {
        return places[node];
    }

    int[] nodes() {
        return Arrays.copyOf(nodes, count);
    }
}
