package org.heatfloor.routing;

/** The squares of a coarse grid that no corner of is on a walk, counted as the walk changes. */
final class BareSquares {

    private final CoarseGrid grid;
    private final byte[] cornersOnWalk;
    private int count;

    BareSquares(Walk walk) {
        grid = walk.grid;
        cornersOnWalk = new byte[walk.used.length];
        count = grid.squares.length;
        for (int v = 0; v < walk.used.length; v++) {
            if (walk.used[v] != 0) {
                change(v, 1);
            }
        }
    }

    int count() {
        return count;
    }

    /** Notes that a node's edges have changed. */
    void note(int node, int before, int after) {
        if (before == 0 && after != 0) {
            change(node, 1);
        } else if (before != 0 && after == 0) {
            change(node, -1);
        }
    }

    private void change(int node, int by) {
        square(node, by);
        square(node - 1, by);
        square(node - grid.columns, by);
        square(node - grid.columns - 1, by);
    }

    private void square(int v, int by) {
        if (v < 0 || !grid.whole[v]) {
            return;
        }
        count -= cornersOnWalk[v] == 0 ? 1 : 0;
        cornersOnWalk[v] += (byte) by;
        count += cornersOnWalk[v] == 0 ? 1 : 0;
    }
}
