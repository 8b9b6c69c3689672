package org.heatfloor.routing;

import java.util.Arrays;

/**
 * A route on the lattice, junction by junction, of which a first and a last stretch stay as they are and the rest may be
 * re-laid piece by piece. Every change is held against the planning rule: two junctions of the route nearer than the
 * least spacing in the larger of |dx| and |dy| are joined by a stretch of length |dx| + |dy|.
 */
final class Strand {

    final Lattice lattice;
    /** Junctions the route may use. */
    final boolean[] open;

    final int spacing;
    final int leastRun;
    /** Place of the last junction that stays at the beginning; the route may turn there. */
    final int first;
    /** Number of junctions that stay at the end; 0 where the end is free. */
    final int keptAtEnd;

    private int[] nodes;
    private int count;
    /** Place of the route at each junction, plus one. */
    private final int[] at;

    Strand(
            Lattice lattice,
            boolean[] open,
            int spacing,
            int leastRun,
            int[] nodes,
            int count,
            int first,
            int keptAtEnd) {
        this.lattice = lattice;
        this.open = open;
        this.spacing = spacing;
        this.leastRun = leastRun;
        this.nodes = Arrays.copyOf(nodes, Math.max(count, 16));
        this.count = count;
        this.first = first;
        this.keptAtEnd = keptAtEnd;
        at = new int[lattice.free.length];
        for (int i = 0; i < count; i++) {
            at[nodes[i]] = i + 1;
        }
    }

    Strand copy() {
        return new Strand(lattice, open, spacing, leastRun, nodes, count, first, keptAtEnd);
    }

    int count() {
        return count;
    }

    int node(int place) {
        return nodes[place];
    }

    int[] nodes() {
        return Arrays.copyOf(nodes, count);
    }

    boolean holds(int node) {
        return at[node] != 0;
    }

    int placeOf(int node) {
        return at[node] - 1;
    }

    /** Place of the first junction that stays at the end; the count where the end is free. */
    int last() {
        return count - keptAtEnd;
    }

    /** Difference of the numbers of two neighbouring junctions along the route, the direction in which it leaves a place. */
    int step(int place) {
        return nodes[place + 1] - nodes[place];
    }

    boolean turnsAt(int place) {
        return place > 0 && place + 1 < count && step(place) != step(place - 1);
    }

    /** Turns after a place, in pitches. */
    int turnsAfter(double place) {
        int turns = 0;
        for (int i = Math.max(1, (int) Math.ceil(place)); i + 1 < count; i++) {
            turns += turnsAt(i) ? 1 : 0;
        }
        return turns;
    }

    /**
     * Lays the stretch between two places anew.
     *
     * @param from place of the junction before the stretch, at or after the first that may be left
     * @param to place of the junction after it; the count to re-lay the free end
     * @param fresh junctions of the new stretch
     * @param length how many of them
     * @return whether the rule allows it; if not, nothing has changed
     */
    boolean replace(int from, int to, int[] fresh, int length) {
        if (from < first || (keptAtEnd > 0 ? to > last() : to > count)) {
            return false;
        }
        for (int i = from + 1; i < to; i++) {
            at[nodes[i]] = 0;
        }
        if (!usable(from, to, fresh, length)) {
            for (int i = from + 1; i < to; i++) {
                at[nodes[i]] = i + 1;
            }
            return false;
        }
        int[] old = nodes;
        int oldCount = count;
        int shift = length - (to - from - 1);
        nodes = new int[Math.max(16, oldCount + shift)];
        System.arraycopy(old, 0, nodes, 0, from + 1);
        System.arraycopy(fresh, 0, nodes, from + 1, length);
        System.arraycopy(old, to, nodes, from + 1 + length, oldCount - to);
        count = oldCount + shift;
        for (int i = from + 1; i < count; i++) {
            at[nodes[i]] = i + 1;
        }
        if (keepsRuns(from - leastRun - 1, from + length + 2 + leastRun)
                && keepsSpacing(from - 2 * spacing, from + length + 2 + 2 * spacing)) {
            return true;
        }
        for (int i = from + 1; i <= from + length; i++) {
            at[nodes[i]] = 0;
        }
        nodes = old;
        count = oldCount;
        for (int i = from + 1; i < count; i++) {
            at[nodes[i]] = i + 1;
        }
        return false;
    }

    private boolean usable(int from, int to, int[] fresh, int length) {
        int before = nodes[from];
        for (int i = 0; i <= length; i++) {
            if (i == length && to == count) {
                break;
            }
            int here = i == length ? nodes[to] : fresh[i];
            if (i < length && (!open[here] || at[here] != 0)) {
                return false;
            }
            if (!joined(before, here)) {
                return false;
            }
            before = here;
        }
        for (int i = 1; i < length; i++) {
            if (fresh[i] == fresh[i - 1]) {
                return false;
            }
        }
        return true;
    }

    /** Whether a free channel joins two junctions. */
    boolean joined(int a, int b) {
        int bit = b == a + 1
                ? Lattice.EAST
                : b == a - 1
                        ? Lattice.WEST
                        : b == a + lattice.width ? Lattice.NORTH : b == a - lattice.width ? Lattice.SOUTH : 0;
        return bit != 0 && (lattice.channels[a] & bit) != 0;
    }

    private boolean keepsRuns(int from, int to) {
        int corner = Integer.MIN_VALUE / 2;
        int end = last();
        for (int i = Math.max(1, from); i <= Math.min(count - 2, to); i++) {
            if (!turnsAt(i)) {
                continue;
            }
            if (step(i) == -step(i - 1)) {
                return false;
            }
            boolean stays = i < first || corner >= end;
            if (!stays && i - corner < leastRun) {
                return false;
            }
            corner = i;
        }
        return true;
    }

    private boolean keepsSpacing(int from, int to) {
        int reach = spacing - 1;
        int width = lattice.width;
        for (int i = Math.max(0, from); i <= Math.min(count - 1, to); i++) {
            int px = nodes[i] % width;
            int py = nodes[i] / width;
            for (int y = Math.max(0, py - reach); y <= Math.min(lattice.height - 1, py + reach); y++) {
                for (int x = Math.max(0, px - reach); x <= Math.min(width - 1, px + reach); x++) {
                    int j = at[y * width + x] - 1;
                    if (j < 0 || Math.abs(i - j) == Math.abs(px - x) + Math.abs(py - y)) {
                        continue;
                    }
                    if (!(i <= first && j <= first) && !(i >= last() && j >= last())) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /** Whether the whole route keeps the rule. */
    boolean sound() {
        for (int i = 0; i < count; i++) {
            if (at[nodes[i]] != i + 1
                    || (i > first && i < last() && !open[nodes[i]])
                    || (i > 0 && i > first && !joined(nodes[i - 1], nodes[i]))) {
                return false;
            }
        }
        return keepsRuns(0, count) && keepsSpacing(0, count - 1);
    }

    /**
     * The junctions that may follow a first stretch of a route and precede a last one: open, and wherever nearer than the
     * spacing to a junction of either stretch still joined to it by the shortest way.
     *
     * @param lattice the floor
     * @param open junctions that may be used at all
     * @param spacing least spacing, in pitches
     * @param nodes the route
     * @param until place of the last junction of the first stretch
     * @param since place of the first junction of the last stretch
     * @param count number of junctions of the route
     */
    static boolean[] permitted(
            Lattice lattice, boolean[] open, int spacing, int[] nodes, int until, int since, int count) {
        return permitted(lattice, open, spacing, nodes, until, since, count, Box.whole(lattice));
    }

    /** The same within a box; nothing outside it is permitted. */
    static boolean[] permitted(
            Lattice lattice, boolean[] open, int spacing, int[] nodes, int until, int since, int count, Box box) {
        boolean[] out = new boolean[open.length];
        for (int y = box.bottom(); y <= box.top(); y++) {
            int row = y * lattice.width;
            System.arraycopy(open, row + box.left(), out, row + box.left(), box.right() + 1 - box.left());
        }
        Box near = box.wider(spacing, lattice);
        for (int i = 0; i <= until; i++) {
            if (near.holds(lattice, nodes[i])) {
                forbid(lattice, out, spacing, nodes[i], until - i, nodes[until]);
            }
        }
        for (int i = since; i < count; i++) {
            if (near.holds(lattice, nodes[i])) {
                forbid(lattice, out, spacing, nodes[i], i - since, nodes[since]);
            }
        }
        return out;
    }

    private static void forbid(Lattice lattice, boolean[] out, int spacing, int node, int along, int tip) {
        int reach = spacing - 1;
        int width = lattice.width;
        int px = node % width;
        int py = node / width;
        int tx = tip % width;
        int ty = tip / width;
        for (int y = Math.max(0, py - reach); y <= Math.min(lattice.height - 1, py + reach); y++) {
            for (int x = Math.max(0, px - reach); x <= Math.min(width - 1, px + reach); x++) {
                int direct = Math.abs(px - x) + Math.abs(py - y);
                if (along + Math.abs(tx - x) + Math.abs(ty - y) != direct || (along > 0 && direct == 0)) {
                    out[y * width + x] = false;
                }
            }
        }
    }
}
