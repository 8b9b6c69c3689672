package org.heatfloor.routing;

import java.util.SplittableRandom;

/**
 * Improves a walk by small random moves, which are accepted the more easily the higher the temperature (S. Kirkpatrick,
 * C. Gelatt, M. Vecchi, Optimization by simulated annealing, Science 220 (1983); from memory).
 *
 * <p>Moves, all of which keep one path or one loop: toggling a grid square with one, two adjacent or three used edges
 * (bump in, corner flip, bump out); reconnecting two parallel edges passed in the same direction; a double switch, which
 * splits a loop off at one square and takes it back at another; and at the ends of an open path extending, retracting
 * and backbiting. See R. Nishat, V. Srinivasan, S. Whitesides (reconfiguration of Hamiltonian paths by square switches)
 * and M. Mansfield, Macromolecules 27 (1994) 5924 (backbite), both from memory.
 */
final class Annealing {

    private static final int[] BITS = {Lattice.EAST, Lattice.NORTH, Lattice.WEST, Lattice.SOUTH};
    /** Of 16 moves of an open path one is at an end. */
    private static final int ENDS = 16;
    /** Of 8 squares with two parallel edges as many are passed over: they are the most frequent and the dearest. */
    private static final int PASSED_OVER = 5;
    /** Squares that a toggled square can make bare, or not bare any more. */
    private static final int BARED = 4;
    /** Turns by which the prices of squares that rejoin a loop are blurred. */
    private static final double BLUR = 1.5;

    private final Walk walk;
    private final CoarseGrid grid;
    private final Aim aim;
    private final SplittableRandom random;
    private final BareSquares bare;
    private final WalkOrder order;
    /** Whether the walk has changed since its order was read. */
    private boolean stale = true;

    private double now;
    private double temperature;

    private Annealing(Walk walk, SplittableRandom random) {
        this.walk = walk;
        this.random = random;
        grid = walk.grid;
        aim = walk.aim();
        bare = new BareSquares(walk);
        order = new WalkOrder(grid);
        now = cost();
    }

    /** Anneals for a fixed number of steps and leaves the best state found in place. */
    static void run(Walk walk, int steps, SplittableRandom random, double hot, double cold) {
        if (walk.grid.squares.length > 0) {
            new Annealing(walk, random).run(steps, hot, cold);
        }
    }

    private void run(int steps, double hot, double cold) {
        double best = now;
        Walk kept = new Walk(walk);
        double factor = Math.pow(cold / hot, 1.0 / Math.max(1, steps));
        temperature = hot;
        for (int s = 0; s < steps; s++, temperature *= factor) {
            if (move(random.nextLong())) {
                stale = true;
                now = cost();
                if (now < best - 1e-9) {
                    best = now;
                    kept.take(walk);
                }
            }
        }
        walk.take(kept);
    }

    private boolean move(long drawn) {
        if (!walk.closed() && (drawn & (ENDS - 1)) == 0) {
            return moveEnd(limit(), random.nextInt(4) == 0);
        }
        int v = grid.squares[(int) (((drawn >>> 33) * grid.squares.length) >>> 31)];
        int pattern = walk.square(v);
        if (pattern == 0 || pattern == 15 || walk.breaksLock(v)) {
            return false;
        }
        if (pattern == 5 || pattern == 10) {
            return ((drawn >>> 4) & 7) >= PASSED_OVER && reconnect(v, pattern, limit());
        }
        return simple(v, pattern) && toggled(v, limit());
    }

    private double cost() {
        return aim.cost(walk.turns, walk.length, bare.count());
    }

    /** The greatest cost that is accepted this time. */
    private double limit() {
        return now - temperature * Math.log(1 - random.nextDouble());
    }

    private double costWith(int v) {
        return aim.cost(walk.turns + walk.turnsBy(v), walk.length + walk.lengthBy(v), bare.count());
    }

    /** Whether toggling the square keeps one path: bump in, bump out or flip; see the class comment. */
    private boolean simple(int v, int pattern) {
        byte[] used = walk.used;
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

    private boolean toggled(int v, double limit) {
        if (!(costWith(v) - BARED * aim.pricePerBare() <= limit)) {
            return false;
        }
        toggleSquare(v);
        if (cost() <= limit) {
            return true;
        }
        toggleSquare(v);
        return false;
    }

    private void toggleSquare(int v) {
        byte[] used = walk.used;
        int up = v + grid.columns;
        int lowerLeft = used[v];
        int lowerRight = used[v + 1];
        int upperLeft = used[up];
        int upperRight = used[up + 1];
        walk.toggleSquare(v);
        bare.note(v, lowerLeft, used[v]);
        bare.note(v + 1, lowerRight, used[v + 1]);
        bare.note(up, upperLeft, used[up]);
        bare.note(up + 1, upperRight, used[up + 1]);
    }

    private boolean reconnect(int v, int pattern, double limit) {
        double allowed = limit - now;
        int added = walk.turnsBy(v);
        if (added > allowed) {
            return false;
        }
        read();
        int up = v + grid.columns;
        int a = order.place(v);
        int b = order.place(pattern == 5 ? v + 1 : up);
        int c = order.place(pattern == 5 ? up : v + 1);
        int d = order.place(up + 1);
        // Used edges a-b and c-d; the new edges are a-c and b-d.
        if (before(a, b) == before(c, d)) {
            if (!(costWith(v) <= limit)) {
                return false;
            }
            walk.toggleSquare(v);
            return true;
        }
        // Of the two squares of a double switch the one that adds fewer turns is tried first.
        if (added > allowed / 2 || isClosing(a, b) || isClosing(c, d)) {
            return false;
        }
        int from = Math.min(Math.max(a, b), Math.max(c, d));
        int to = Math.max(Math.min(a, b), Math.min(c, d));
        walk.toggleSquare(v);
        int other = rejoin(v, from, to);
        if (other >= 0 && costWith(other) <= limit) {
            walk.toggleSquare(other);
            return true;
        }
        walk.toggleSquare(v);
        return false;
    }

    private void read() {
        if (stale) {
            order.read(walk);
            stale = false;
        }
    }

    /** Whether two neighbours on a loop are its last and its first. */
    private static boolean isClosing(int a, int b) {
        return Math.abs(a - b) != 1;
    }

    private static boolean before(int a, int b) {
        return isClosing(a, b) ? a > b : a < b;
    }

    /**
     * A square that joins the loop split off, nodes at the places from..to, to the rest; -1 if there is none. Of an uncut
     * loop the shorter of the two is searched.
     */
    private int rejoin(int split, int from, int to) {
        int within = to - from + 1;
        boolean outside = walk.closed() && within > order.count() / 2;
        int first = outside ? to + 1 : from;
        int count = outside ? order.count() - within : within;
        int chosen = -1;
        double best = Double.POSITIVE_INFINITY;
        for (int place = first; place < first + count; place++) {
            int node = order.node(place);
            int bits = walk.used[node];
            int across = (bits & Lattice.EAST) != 0 ? 2 : 0;
            int up = (bits & Lattice.NORTH) != 0 ? 2 : 0;
            for (int n = 0; n < across + up; n++) {
                boolean level = n < across;
                int side = level ? grid.columns : 1;
                boolean lower = (n & 1) != 0;
                if (lower && (level ? node < side : node % grid.columns == 0)) {
                    continue;
                }
                int v = lower ? node - side : node;
                double price = joining(v, level ? 5 : 10, lower ? v : v + side, split, from, to, outside);
                if (price < best) {
                    price += random.nextDouble() * BLUR;
                }
                if (price < best) {
                    best = price;
                    chosen = v;
                }
            }
        }
        return chosen;
    }

    /** Turns that a square adds whose two parallel edges lie on the two parts; infinite if they do not. */
    private double joining(int v, int pattern, int otherSide, int split, int from, int to, boolean outside) {
        if (v == split || !grid.whole[v]) {
            return Double.POSITIVE_INFINITY;
        }
        int place = order.place(otherSide);
        boolean within = place >= from && place <= to;
        return within != outside || walk.square(v) != pattern || walk.breaksLock(v)
                ? Double.POSITIVE_INFINITY
                : walk.turnsBy(v);
    }

    private boolean moveEnd(double limit, boolean atStart) {
        int end = atStart ? walk.start : walk.tail;
        int other = atStart ? walk.tail : walk.start;
        int bit = BITS[random.nextInt(4)];
        if ((grid.edges[end] & bit) == 0) {
            return false;
        }
        int next = grid.step(end, bit);
        if (walk.used[end] == bit) {
            return next != other && mayEnd(atStart, next) && endMoved(end, bit, next, atStart, limit);
        }
        if (walk.used[next] == 0) {
            return mayEnd(atStart, next) && endMoved(end, bit, next, atStart, limit);
        }
        return next != other && backbite(end, bit, next, atStart, limit);
    }

    private boolean mayEnd(boolean atStart, int node) {
        return !atStart || walk.mayStart[node];
    }

    /** Extends the path by an edge, or takes its last one away. */
    private boolean endMoved(int end, int bit, int next, boolean atStart, double limit) {
        toggle(end, bit, next);
        if (cost() <= limit) {
            walk.setEnd(atStart, next);
            return true;
        }
        toggle(end, bit, next);
        return false;
    }

    private boolean backbite(int end, int bit, int next, boolean atStart, double limit) {
        read();
        int fresh = order.node(order.place(next) + (atStart ? -1 : 1));
        if (fresh == end || !mayEnd(atStart, fresh)) {
            return false;
        }
        int back = walk.bitBetween(next, fresh);
        toggle(end, bit, next);
        toggle(next, back, fresh);
        if (cost() <= limit) {
            walk.setEnd(atStart, fresh);
            return true;
        }
        toggle(next, back, fresh);
        toggle(end, bit, next);
        return false;
    }

    private void toggle(int node, int bit, int next) {
        int a = walk.used[node];
        int b = walk.used[next];
        walk.toggle(node, bit);
        bare.note(node, a, walk.used[node]);
        bare.note(next, b, walk.used[next]);
    }
}
