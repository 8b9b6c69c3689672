package org.heatfloor.routing;

import java.util.SplittableRandom;

/**
 * A route on a coarse grid while it is being improved: one open path or one closed loop, held as the edges used at each
 * node. Every move is a set of edges toggled, so a rejected move is toggled back.
 *
 * <p>Moves, all of which keep one path or one loop: toggling a grid square with one, two adjacent or three used edges
 * (bump in, corner flip, bump out); reconnecting two parallel edges passed in the same direction; a double switch, which
 * splits a loop off at one square and takes it back at another; and at the ends of an open path extending, retracting
 * and backbiting. See R. Nishat, V. Srinivasan, S. Whitesides (reconfiguration of Hamiltonian paths by square switches)
 * and M. Mansfield, Macromolecules 27 (1994) 5924 (backbite), both from memory.
 */
final class Walk {

    private static final int[] TURN = {0, 0, 0, 1, 0, 0, 1, 0, 0, 1, 0, 0, 1, 0, 0, 0};
    private static final byte LOWER_LEFT = Lattice.EAST | Lattice.NORTH;
    private static final byte LOWER_RIGHT = Lattice.WEST | Lattice.NORTH;
    private static final byte UPPER_LEFT = Lattice.EAST | Lattice.SOUTH;
    private static final byte UPPER_RIGHT = Lattice.WEST | Lattice.SOUTH;
    /** Turns gained at a node with given edges when a square toggles whose corner it is, in the order of the constants. */
    private static final int[][] CHANGE = changes();

    private static final int[] BITS = {Lattice.EAST, Lattice.NORTH, Lattice.WEST, Lattice.SOUTH};

    final CoarseGrid grid;
    final byte[] used;
    int turns;
    int length;
    /** First node of an open path; -1 for a loop. */
    int start = -1;
    /** Last node of an open path; -1 for a loop. */
    int tail = -1;

    private final boolean[] mayStart;
    private int lockedA = -1;
    private int lockedB = -1;

    private final int[] order;
    private final int[] position;
    private int ordered;
    private boolean stale = true;

    private double target;
    private double roundingPerTurn;
    private double slack;
    private double price;

    /** A loop given by the edges used at each node. */
    Walk(CoarseGrid grid, byte[] used, boolean[] mayStart) {
        this.grid = grid;
        this.used = used;
        this.mayStart = mayStart;
        order = new int[used.length + 1];
        position = new int[used.length];
        for (int v = 0; v < used.length; v++) {
            turns += TURN[used[v]];
            if ((used[v] & Lattice.EAST) != 0) {
                length += grid.length(v, Lattice.EAST);
            }
            if ((used[v] & Lattice.NORTH) != 0) {
                length += grid.length(v, Lattice.NORTH);
            }
        }
    }

    Walk(Walk other) {
        grid = other.grid;
        used = other.used.clone();
        mayStart = other.mayStart;
        order = new int[other.order.length];
        position = new int[other.position.length];
        turns = other.turns;
        length = other.length;
        start = other.start;
        tail = other.tail;
        lockedA = other.lockedA;
        lockedB = other.lockedB;
        target = other.target;
        roundingPerTurn = other.roundingPerTurn;
        slack = other.slack;
        price = other.price;
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

    boolean closed() {
        return start < 0;
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
        stale = true;
    }

    /**
     * Sets what the cost is measured against. Length too much, beyond the slack, can be trimmed at a price; length too
     * little may not be there to be had, and costs three times as much.
     */
    void aim(double targetLength, double rounding, double slackPitches, double pricePerPitch) {
        target = targetLength;
        roundingPerTurn = rounding;
        slack = slackPitches;
        price = pricePerPitch;
    }

    double cost() {
        return cost(turns, length);
    }

    private double cost(int turnsThen, int lengthThen) {
        double over = lengthThen - roundingPerTurn * turnsThen - target;
        return turnsThen + (over < 0 ? -3 * price * over : over > slack ? price * (over - slack) : 0);
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

    /** Length beyond the target with the rounding of the corners taken off, in pitches. */
    double surplus() {
        return length - roundingPerTurn * turns - target;
    }

    private void toggle(int node, int bit) {
        int next = grid.step(node, bit);
        turns -= TURN[used[node]] + TURN[used[next]];
        length += (used[node] & bit) != 0 ? -grid.length(node, bit) : grid.length(node, bit);
        used[node] ^= (byte) bit;
        used[next] ^= (byte) CoarseGrid.opposite(bit);
        turns += TURN[used[node]] + TURN[used[next]];
    }

    private void toggleSquare(int v) {
        turns += turnsBy(v);
        length += lengthBy(v);
        int up = v + grid.columns;
        used[v] ^= LOWER_LEFT;
        used[v + 1] ^= LOWER_RIGHT;
        used[up] ^= UPPER_LEFT;
        used[up + 1] ^= UPPER_RIGHT;
    }

    /** Turns that toggling a square would add. */
    private int turnsBy(int v) {
        int up = v + grid.columns;
        return CHANGE[used[v]][0] + CHANGE[used[v + 1]][1] + CHANGE[used[up]][2] + CHANGE[used[up + 1]][3];
    }

    /** Length that toggling a square would add, in pitches. */
    private int lengthBy(int v) {
        int wide = grid.wide[v % grid.columns];
        int tall = grid.tall[v / grid.columns];
        int up = v + grid.columns;
        return ((used[v] & Lattice.EAST) != 0 ? -wide : wide)
                + ((used[up] & Lattice.EAST) != 0 ? -wide : wide)
                + ((used[v] & Lattice.NORTH) != 0 ? -tall : tall)
                + ((used[v + 1] & Lattice.NORTH) != 0 ? -tall : tall);
    }

    /** Used edges of the square whose lower left node is v: south 1, east 2, north 4, west 8; -1 if an edge is missing. */
    private int square(int v) {
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

    private boolean breaksLock(int v) {
        if (lockedA < 0) {
            return false;
        }
        int up = v + grid.columns;
        return onSquare(lockedA, v, up) && onSquare(lockedB, v, up);
    }

    private static boolean onSquare(int node, int v, int up) {
        return node == v || node == v + 1 || node == up || node == up + 1;
    }

    /** Whether toggling the square keeps one path: bump in, bump out or flip; see the class comment. */
    private boolean simple(int v, int pattern) {
        int up = v + grid.columns;
        return switch (pattern) {
            case 1 -> used[up] == 0 && used[up + 1] == 0;
            case 2 -> used[v] == 0 && used[up] == 0;
            case 4 -> used[v] == 0 && used[v + 1] == 0;
            case 8 -> used[v + 1] == 0 && used[up + 1] == 0;
            case 3 -> used[up] == 0;
            case 6 -> used[v] == 0;
            case 12 -> used[v + 1] == 0;
            case 9 -> used[up + 1] == 0;
            case 14, 13, 11, 7 -> true;
            default -> false;
        };
    }

    /** Bumps in wherever two neighbours are free, those that add no turn first, until the target is reached. */
    void fill() {
        int[] idle = new int[used.length];
        int n = 0;
        for (int v = 0; v < used.length; v++) {
            if (used[v] == 0 && grid.edges[v] != 0) {
                idle[n++] = v;
            }
        }
        for (int allowed = 0; n > 1 && allowed <= 4; allowed += 2) {
            boolean changed = true;
            while (changed && surplus() < 0) {
                changed = false;
                for (int i = 0; i < n && surplus() < 0; i++) {
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

    /** Anneals for a fixed number of steps and leaves the best state found in place. */
    void anneal(int steps, SplittableRandom random, double hot, double cold) {
        double now = cost();
        double best = now;
        Walk kept = new Walk(this);
        double factor = Math.pow(cold / hot, 1.0 / Math.max(1, steps));
        double temperature = hot;
        int squares = grid.columns * (grid.rows - 1);
        for (int s = 0; s < steps; s++, temperature *= factor) {
            double limit = now - temperature * Math.log(1 - random.nextDouble());
            boolean changed;
            int kind = random.nextInt(16);
            if (kind == 0 && !closed()) {
                changed = moveEnd(random, limit, random.nextInt(4) == 0);
            } else {
                int v = random.nextInt(squares);
                changed = v % grid.columns != grid.columns - 1 && moveSquare(v, random, limit);
            }
            if (changed) {
                stale = true;
                now = cost();
                if (now < best - 1e-9) {
                    best = now;
                    kept.take(this);
                }
            }
        }
        take(kept);
    }

    private void take(Walk other) {
        System.arraycopy(other.used, 0, used, 0, used.length);
        turns = other.turns;
        length = other.length;
        start = other.start;
        tail = other.tail;
        stale = true;
    }

    private boolean moveSquare(int v, SplittableRandom random, double limit) {
        int pattern = square(v);
        if (pattern <= 0 || breaksLock(v)) {
            return false;
        }
        if (pattern == 5 || pattern == 10) {
            return reconnect(v, pattern, random, limit);
        }
        if (!simple(v, pattern) || !(cost(turns + turnsBy(v), length + lengthBy(v)) <= limit)) {
            return false;
        }
        toggleSquare(v);
        return true;
    }

    private boolean reconnect(int v, int pattern, SplittableRandom random, double limit) {
        double allowed = limit - cost();
        int added = turnsBy(v);
        if (added > allowed) {
            return false;
        }
        sort();
        int up = v + grid.columns;
        int a = v;
        int b = pattern == 5 ? v + 1 : up;
        int c = pattern == 5 ? up : v + 1;
        int d = up + 1;
        // Used edges a-b and c-d; the new edges are a-c and b-d.
        boolean sameDirection = before(a, b) == before(c, d);
        if (sameDirection) {
            if (!(cost(turns + turnsBy(v), length + lengthBy(v)) <= limit)) {
                return false;
            }
            toggleSquare(v);
            return true;
        }
        // Of the two squares of a double switch the one that adds fewer turns is tried first.
        if (added > allowed / 2 || (closed() && (isClosing(a, b) || isClosing(c, d)))) {
            return false;
        }
        int firstA = Math.min(position[a], position[b]);
        int firstC = Math.min(position[c], position[d]);
        int from = Math.min(firstA, firstC) + 1;
        int to = Math.max(firstA, firstC);
        toggleSquare(v);
        int other = rejoin(v, from, to, random);
        if (other >= 0 && cost(turns + turnsBy(other), length + lengthBy(other)) <= limit) {
            toggleSquare(other);
            return true;
        }
        toggleSquare(v);
        return false;
    }

    private boolean isClosing(int a, int b) {
        return Math.abs(position[a] - position[b]) != 1;
    }

    private boolean before(int a, int b) {
        return isClosing(a, b) ? position[a] > position[b] : position[a] < position[b];
    }

    /**
     * A square that joins the loop split off, nodes at the positions from..to, to the rest; -1 if there is none. Of an
     * uncut loop the shorter of the two is searched.
     */
    private int rejoin(int split, int from, int to, SplittableRandom random) {
        boolean outside = closed() && to - from + 1 > ordered / 2;
        int first = outside ? to + 1 : from;
        int count = outside ? ordered - (to - from + 1) : to - from + 1;
        int chosen = -1;
        double best = Double.POSITIVE_INFINITY;
        for (int n = 0, t = first; n < count; n++, t++) {
            int node = order[t < ordered ? t : t - ordered];
            int bits = used[node];
            if ((bits & Lattice.EAST) != 0) {
                for (int v = node; v >= 0 && v >= node - grid.columns; v -= grid.columns) {
                    double price = joining(v, 5, v == node ? v + grid.columns : v, split, from, to, outside);
                    if (price < best) {
                        price += random.nextDouble() * 1.5;
                    }
                    if (price < best) {
                        best = price;
                        chosen = v;
                    }
                }
            }
            if ((bits & Lattice.NORTH) != 0) {
                int left = node % grid.columns == 0 ? node : node - 1;
                for (int v = node; v >= left; v--) {
                    double price = joining(v, 10, v == node ? v + 1 : v, split, from, to, outside);
                    if (price < best) {
                        price += random.nextDouble() * 1.5;
                    }
                    if (price < best) {
                        best = price;
                        chosen = v;
                    }
                }
            }
        }
        return chosen;
    }

    /** Turns that a square adds whose two parallel edges lie on the two parts; infinite if they do not. */
    private double joining(int v, int pattern, int otherSide, int split, int from, int to, boolean outside) {
        if (v == split || square(v) != pattern || breaksLock(v)) {
            return Double.POSITIVE_INFINITY;
        }
        int p = position[otherSide];
        boolean within = p >= from && p <= to;
        return within == outside ? turnsBy(v) : Double.POSITIVE_INFINITY;
    }

    private boolean moveEnd(SplittableRandom random, double limit, boolean atStart) {
        int end = atStart ? start : tail;
        int bit = BITS[random.nextInt(4)];
        int held = used[end];
        if (held == bit) {
            return retract(end, bit, atStart, limit);
        }
        if ((grid.edges[end] & bit) == 0) {
            return false;
        }
        int next = grid.step(end, bit);
        if (used[next] == 0) {
            if (atStart && !mayStart[next]) {
                return false;
            }
            toggle(end, bit);
            if (cost() <= limit) {
                setEnd(atStart, next);
                return true;
            }
            toggle(end, bit);
            return false;
        }
        return backbite(end, bit, next, atStart, limit);
    }

    private boolean retract(int end, int bit, boolean atStart, double limit) {
        int next = grid.step(end, bit);
        if (next == (atStart ? tail : start) || (atStart && !mayStart[next])) {
            return false;
        }
        toggle(end, bit);
        if (cost() <= limit) {
            setEnd(atStart, next);
            return true;
        }
        toggle(end, bit);
        return false;
    }

    private boolean backbite(int end, int bit, int next, boolean atStart, double limit) {
        if (next == (atStart ? tail : start)) {
            return false;
        }
        sort();
        int fresh = order[position[next] + (atStart ? -1 : 1)];
        if (fresh == end || (atStart && !mayStart[fresh])) {
            return false;
        }
        int back = bitBetween(next, fresh);
        toggle(end, bit);
        toggle(next, back);
        if (cost() <= limit) {
            setEnd(atStart, fresh);
            return true;
        }
        toggle(next, back);
        toggle(end, bit);
        return false;
    }

    private void setEnd(boolean atStart, int node) {
        if (atStart) {
            start = node;
        } else {
            tail = node;
        }
        stale = true;
    }

    int bitBetween(int a, int b) {
        return b == a + 1 ? Lattice.EAST : b == a - 1 ? Lattice.WEST : b > a ? Lattice.NORTH : Lattice.SOUTH;
    }

    private void sort() {
        if (!stale) {
            return;
        }
        int node = start;
        if (closed()) {
            node = 0;
            while (used[node] == 0) {
                node++;
            }
        }
        int first = node;
        int from = 0;
        ordered = 0;
        while (true) {
            order[ordered] = node;
            position[node] = ordered++;
            int bits = used[node] & ~from;
            if (bits == 0) {
                break;
            }
            int bit = Integer.lowestOneBit(bits);
            node = grid.step(node, bit);
            from = CoarseGrid.opposite(bit);
            if (node == first) {
                break;
            }
        }
        stale = false;
    }

    /** The nodes in order from the start to the tail, or once round from the given node towards the given bit. */
    int[] nodes() {
        stale = true;
        sort();
        return java.util.Arrays.copyOf(order, ordered);
    }
}
