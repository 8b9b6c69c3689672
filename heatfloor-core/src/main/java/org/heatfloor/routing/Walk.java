package org.heatfloor.routing;

/**
 * A route on a coarse grid while it is being improved: one open path or one closed loop, held as the edges used at each
 * node. Every change is a set of edges toggled, so that toggling them again takes it back.
 */
final class Walk {

    private static final int[] TURN = {0, 0, 0, 1, 0, 0, 1, 0, 0, 1, 0, 0, 1, 0, 0, 0};
    private static final byte LOWER_LEFT = Lattice.EAST | Lattice.NORTH;
    private static final byte LOWER_RIGHT = Lattice.WEST | Lattice.NORTH;
    private static final byte UPPER_LEFT = Lattice.EAST | Lattice.SOUTH;
    private static final byte UPPER_RIGHT = Lattice.WEST | Lattice.SOUTH;
    /** Turns gained at a node with given edges when a square toggles whose corner it is, in the order of the constants. */
    private static final int[][] CHANGE = changes();

    /** Walks on the same lines, all begun as loops round teeth or all round rings. */
    record Family(CoarseGrid grid, boolean rings) {}

    final CoarseGrid grid;
    final byte[] used;
    /** Nodes at which an open path may begin. */
    final boolean[] mayStart;
    /** Whether the walk began as a loop round rings. */
    final boolean rings;

    int turns;
    int length;
    /** First node of an open path; -1 for a loop. */
    int start = -1;
    /** Last node of an open path; -1 for a loop. */
    int tail = -1;

    private Aim aim = new Aim(0, 0, 0, 0, 0);
    private int lockedA = -1;
    private int lockedB = -1;

    /** A loop given by the edges used at each node. */
    Walk(CoarseGrid grid, byte[] used, boolean[] mayStart, boolean rings) {
        this.grid = grid;
        this.rings = rings;
        this.used = used;
        this.mayStart = mayStart;
        for (int j = 0, v = 0; j < grid.rows; j++) {
            for (int i = 0; i < grid.columns; i++, v++) {
                turns += TURN[used[v]];
                length += (used[v] & Lattice.EAST) != 0 ? grid.wide[i] : 0;
                length += (used[v] & Lattice.NORTH) != 0 ? grid.tall[j] : 0;
            }
        }
    }

    Walk(Walk other) {
        grid = other.grid;
        rings = other.rings;
        used = other.used.clone();
        mayStart = other.mayStart;
        aim = other.aim;
        lockedA = other.lockedA;
        lockedB = other.lockedB;
        turns = other.turns;
        length = other.length;
        start = other.start;
        tail = other.tail;
    }

    private static int[][] changes() {
        byte[] corners = {LOWER_LEFT, LOWER_RIGHT, UPPER_LEFT, UPPER_RIGHT};
        int[][] out = new int[16][corners.length];
        for (int bits = 0; bits < out.length; bits++) {
            for (int c = 0; c < corners.length; c++) {
                out[bits][c] = TURN[bits ^ corners[c]] - TURN[bits];
            }
        }
        return out;
    }

    Family family() {
        return new Family(grid, rings);
    }

    boolean closed() {
        return start < 0;
    }

    /** Sets what the cost is measured against. */
    void aim(Aim wanted) {
        aim = wanted;
    }

    Aim aim() {
        return aim;
    }

    double cost() {
        return aim.cost(turns, length, bareSquares());
    }

    /** What a loop that is not yet opened and filled may come to cost; nodes that are not on it yet may be filled. */
    double promise() {
        int idle = grid.nodes;
        for (byte bits : used) {
            idle -= bits != 0 ? 1 : 0;
        }
        return aim.promise(turns, length, (double) idle * length / Math.max(1, grid.nodes - idle));
    }

    private int bareSquares() {
        int bare = 0;
        for (int v : grid.squares) {
            int up = v + grid.columns;
            bare += (used[v] | used[v + 1] | used[up] | used[up + 1]) == 0 ? 1 : 0;
        }
        return bare;
    }

    /** Keeps the edge between two neighbours used from here on. */
    void lock(int a, int b) {
        lockedA = a;
        lockedB = b;
    }

    int lockedA() {
        return lockedA;
    }

    int lockedB() {
        return lockedB;
    }

    /** Opens a loop by taking one edge out; the path then starts at the node and ends at the neighbour along the bit. */
    void cut(int node, int bit) {
        toggle(node, bit);
        start = node;
        tail = grid.step(node, bit);
    }

    /** Moves an end of an open path to a node. */
    void setEnd(boolean atStart, int node) {
        if (atStart) {
            start = node;
        } else {
            tail = node;
        }
    }

    /** Takes the state of another walk on the same grid. */
    void take(Walk other) {
        System.arraycopy(other.used, 0, used, 0, used.length);
        turns = other.turns;
        length = other.length;
        start = other.start;
        tail = other.tail;
    }

    /** Length in each region of what is wanted, in pitches. */
    double[] lengths(Wanted wanted) {
        double[] out = new double[wanted.areas.length];
        int width = wanted.lattice.width;
        for (int v = 0; v < used.length; v++) {
            int x = grid.xs[v % grid.columns];
            int y = grid.ys[v / grid.columns];
            for (int t = 1; (used[v] & Lattice.EAST) != 0 && t <= grid.length(v, Lattice.EAST); t++) {
                out[wanted.region[y * width + x + t]]++;
            }
            for (int t = 1; (used[v] & Lattice.NORTH) != 0 && t <= grid.length(v, Lattice.NORTH); t++) {
                out[wanted.region[(y + t) * width + x]]++;
            }
        }
        return out;
    }

    void toggle(int node, int bit) {
        int next = grid.step(node, bit);
        turns -= TURN[used[node]] + TURN[used[next]];
        length += (used[node] & bit) != 0 ? -grid.length(node, bit) : grid.length(node, bit);
        used[node] ^= (byte) bit;
        used[next] ^= (byte) CoarseGrid.opposite(bit);
        turns += TURN[used[node]] + TURN[used[next]];
    }

    /** Toggles the four edges of the square whose lower left node is v. */
    void toggleSquare(int v) {
        turns += turnsBy(v);
        length += lengthBy(v);
        int up = v + grid.columns;
        used[v] ^= LOWER_LEFT;
        used[v + 1] ^= LOWER_RIGHT;
        used[up] ^= UPPER_LEFT;
        used[up + 1] ^= UPPER_RIGHT;
    }

    /** Turns that toggling a square would add. */
    int turnsBy(int v) {
        int up = v + grid.columns;
        return CHANGE[used[v]][0] + CHANGE[used[v + 1]][1] + CHANGE[used[up]][2] + CHANGE[used[up + 1]][3];
    }

    /** Length that toggling a square would add, in pitches. */
    int lengthBy(int v) {
        int wide = grid.wide[v % grid.columns];
        int tall = grid.tall[v / grid.columns];
        int up = v + grid.columns;
        return ((used[v] & Lattice.EAST) != 0 ? -wide : wide)
                + ((used[up] & Lattice.EAST) != 0 ? -wide : wide)
                + ((used[v] & Lattice.NORTH) != 0 ? -tall : tall)
                + ((used[v + 1] & Lattice.NORTH) != 0 ? -tall : tall);
    }

    /** Used edges of the square whose lower left node is v: south 1, east 2, north 4, west 8; -1 if an edge is missing. */
    int square(int v) {
        if (!grid.whole[v]) {
            return -1;
        }
        int here = used[v];
        int across = used[v + grid.columns + 1];
        return (here & Lattice.EAST)
                | (across & Lattice.SOUTH) >> 2
                | (across & Lattice.WEST)
                | (here & Lattice.NORTH) << 2;
    }

    boolean breaksLock(int v) {
        if (lockedA < 0) {
            return false;
        }
        int up = v + grid.columns;
        return onSquare(lockedA, v, up) && onSquare(lockedB, v, up);
    }

    private static boolean onSquare(int node, int v, int up) {
        return node == v || node == v + 1 || node == up || node == up + 1;
    }

    /** Bumps in wherever two neighbours are free, those that add no turn first, until the target is reached. */
    void fill() {
        if (aim.surplus(turns, length) >= 0) {
            return;
        }
        int[] idle = new int[used.length];
        int n = 0;
        for (int v = 0; v < used.length; v++) {
            if (used[v] == 0 && grid.edges[v] != 0) {
                idle[n++] = v;
            }
        }
        for (int allowed = 0; n > 1 && allowed <= 4; allowed += 2) {
            boolean changed = true;
            while (changed && aim.surplus(turns, length) < 0) {
                changed = false;
                for (int i = 0; i < n && aim.surplus(turns, length) < 0; i++) {
                    int v = idle[i];
                    changed |= bump(v, Lattice.EAST, v, allowed)
                            || bump(v, Lattice.EAST, v - grid.columns, allowed)
                            || bump(v, Lattice.NORTH, v, allowed)
                            || bump(v, Lattice.NORTH, v - 1, allowed);
                }
            }
        }
    }

    /** Bumps a square's opposite edge out to the edge between a free node and its free neighbour, if that is allowed. */
    private boolean bump(int node, int bit, int square, int allowed) {
        if (used[node] != 0
                || (grid.edges[node] & bit) == 0
                || used[grid.step(node, bit)] != 0
                || square < 0
                || breaksLock(square)) {
            return false;
        }
        int pattern = square(square);
        int opposite = bit == Lattice.EAST ? (square == node ? 4 : 1) : (square == node ? 2 : 8);
        if (pattern != opposite || turnsBy(square) > allowed) {
            return false;
        }
        toggleSquare(square);
        return true;
    }

    int bitBetween(int a, int b) {
        return b == a + 1 ? Lattice.EAST : b == a - 1 ? Lattice.WEST : b > a ? Lattice.NORTH : Lattice.SOUTH;
    }

    /** The nodes in order from the start to the tail, or once round. */
    int[] nodes() {
        WalkOrder order = new WalkOrder(grid);
        order.read(this);
        return order.nodes();
    }
}
