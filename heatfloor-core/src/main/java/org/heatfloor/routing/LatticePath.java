package org.heatfloor.routing;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * An open route on the lattice as its corner points, with the exact planning rule for the spacing: two nodes of the route
 * nearer than the least spacing in the larger of |dx| and |dy| are joined by a stretch of length |dx| + |dy|.
 */
final class LatticePath {

    private final Lattice lattice;
    private final int spacing;
    /** Shortest run between two corners, in pitches. */
    private final int leastRun;

    private int[] xs;
    private int[] ys;
    /** Number of the run that occupies each lattice node, plus one. */
    private final int[] owner;

    private LatticePath(Lattice lattice, int spacing, int leastRun, int[] xs, int[] ys) {
        this.lattice = lattice;
        this.spacing = spacing;
        this.leastRun = leastRun;
        this.xs = xs;
        this.ys = ys;
        owner = new int[lattice.free.length];
        for (int run = 0; run < xs.length - 1; run++) {
            occupy(run, run + 1);
        }
    }

    /** The route through the given nodes of a coarse grid, corners kept, straight nodes dropped. */
    static LatticePath of(Lattice lattice, int spacing, int leastRun, CoarseGrid grid, int[] nodes) {
        int[] xs = new int[nodes.length];
        int[] ys = new int[nodes.length];
        int n = 0;
        for (int t = 0; t < nodes.length; t++) {
            int x = grid.xs[nodes[t] % grid.columns];
            int y = grid.ys[nodes[t] / grid.columns];
            if (n >= 2 && ((xs[n - 2] == xs[n - 1] && xs[n - 1] == x) || (ys[n - 2] == ys[n - 1] && ys[n - 1] == y))) {
                n--;
            }
            xs[n] = x;
            ys[n++] = y;
        }
        return new LatticePath(lattice, spacing, leastRun, Arrays.copyOf(xs, n), Arrays.copyOf(ys, n));
    }

    /** The route through neighbouring junctions of the lattice, corners kept, straight junctions dropped. */
    static LatticePath of(Lattice lattice, int spacing, int leastRun, int[] junctions) {
        int[] xs = new int[junctions.length];
        int[] ys = new int[junctions.length];
        int n = 0;
        for (int t = 0; t < junctions.length; t++) {
            if (t == 0
                    || t == junctions.length - 1
                    || junctions[t + 1] - junctions[t] != junctions[t] - junctions[t - 1]) {
                xs[n] = junctions[t] % lattice.width;
                ys[n++] = junctions[t] / lattice.width;
            }
        }
        return new LatticePath(lattice, spacing, leastRun, Arrays.copyOf(xs, n), Arrays.copyOf(ys, n));
    }

    /** The junctions of the route in order. */
    int[] junctions() {
        int[] out = new int[length() + 1];
        int n = 0;
        for (int run = 0; run < runs(); run++) {
            for (int t = run == 0 ? 0 : 1; t <= runLength(run); t++) {
                out[n++] = (ys[run] + t * dy(run)) * lattice.width + xs[run] + t * dx(run);
            }
        }
        return out;
    }

    int points() {
        return xs.length;
    }

    int x(int point) {
        return xs[point];
    }

    int y(int point) {
        return ys[point];
    }

    int runs() {
        return xs.length - 1;
    }

    int turns() {
        return Math.max(0, xs.length - 2);
    }

    int runLength(int run) {
        return Math.abs(xs[run + 1] - xs[run]) + Math.abs(ys[run + 1] - ys[run]);
    }

    int length() {
        int sum = 0;
        for (int run = 0; run < runs(); run++) {
            sum += runLength(run);
        }
        return sum;
    }

    private int dx(int run) {
        return Integer.signum(xs[run + 1] - xs[run]);
    }

    private int dy(int run) {
        return Integer.signum(ys[run + 1] - ys[run]);
    }

    private void occupy(int run, int value) {
        int dx = dx(run);
        int dy = dy(run);
        int x = xs[run];
        int y = ys[run];
        for (int t = runLength(run); t >= 0; t--, x += dx, y += dy) {
            owner[y * lattice.width + x] = value;
        }
    }

    /**
     * Lengthens or shortens the route by moving the bases of U-turns along their legs, one pitch at a time and from
     * everywhere in turn, until the length has reached the wanted one or exceeds it by less than two pitches.
     *
     * @param by pitches wanted, positive to lengthen
     * @param freeTail whether the last run may grow and shrink
     * @param random order of the U-turns
     * @return pitches gained in fact
     */
    int stretch(int by, boolean freeTail, SplittableRandom random) {
        int gained = 0;
        int[] bases = uTurns(random);
        for (int round = 0; round < 12 && !reached(by, gained); round++) {
            boolean moved = false;
            for (int run : bases) {
                if (reached(by, gained)) {
                    break;
                }
                int step = by > gained ? 1 : -1;
                if (moveBase(run, step)) {
                    gained += 2 * step;
                    moved = true;
                }
            }
            if (!moved) {
                break;
            }
        }
        while (freeTail && by > gained && growTail()) {
            gained++;
        }
        return gained;
    }

    private static boolean reached(int by, int gained) {
        return gained >= by && gained < by + 2;
    }

    private int[] uTurns(SplittableRandom random) {
        int[] found = new int[Math.max(0, runs())];
        int n = 0;
        for (int run = 1; run + 1 < runs(); run++) {
            if (dx(run - 1) == -dx(run + 1) && dy(run - 1) == -dy(run + 1)) {
                found[n++] = run;
            }
        }
        for (int t = n - 1; t > 0; t--) {
            int u = random.nextInt(t + 1);
            int swap = found[t];
            found[t] = found[u];
            found[u] = swap;
        }
        return Arrays.copyOf(found, n);
    }

    private boolean moveBase(int run, int step) {
        int dx = dx(run - 1) * step;
        int dy = dy(run - 1) * step;
        if (step < 0) {
            int least = Math.max(leastRun, spacing) + 1;
            if (runLength(run - 1) < least || runLength(run + 1) < least) {
                return false;
            }
        }
        int x0 = xs[run] + dx;
        int y0 = ys[run] + dy;
        int x1 = xs[run + 1] + dx;
        int y1 = ys[run + 1] + dy;
        if (!lattice.freeRun(x0, y0, x1, y1)
                || (step > 0
                        && !(lattice.freeRun(xs[run], ys[run], x0, y0)
                                && lattice.freeRun(xs[run + 1], ys[run + 1], x1, y1)))
                || !clear(x0, y0, x1, y1, run)) {
            return false;
        }
        for (int r = run - 1; r <= run + 1; r++) {
            occupy(r, 0);
        }
        xs[run] = x0;
        ys[run] = y0;
        xs[run + 1] = x1;
        ys[run + 1] = y1;
        for (int r = Math.max(0, run - 2); r <= Math.min(runs() - 1, run + 2); r++) {
            occupy(r, r + 1);
        }
        return true;
    }

    /** Whether a stretch keeps the spacing from every run but the given one and its neighbours. */
    private boolean clear(int x0, int y0, int x1, int y1, int run) {
        int reach = spacing - 1;
        int left = Math.max(0, Math.min(x0, x1) - reach);
        int right = Math.min(lattice.width - 1, Math.max(x0, x1) + reach);
        int bottom = Math.max(0, Math.min(y0, y1) - reach);
        int top = Math.min(lattice.height - 1, Math.max(y0, y1) + reach);
        for (int y = bottom; y <= top; y++) {
            for (int x = left; x <= right; x++) {
                int held = owner[y * lattice.width + x] - 1;
                if (held >= 0 && Math.abs(held - run) > 1) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean growTail() {
        int run = runs() - 1;
        int x = xs[run + 1] + dx(run);
        int y = ys[run + 1] + dy(run);
        if (!lattice.freeRun(xs[run + 1], ys[run + 1], x, y) || !clear(x, y, x, y, run)) {
            return false;
        }
        xs[run + 1] = x;
        ys[run + 1] = y;
        occupy(run, run + 1);
        return true;
    }

    /** Whether the whole route keeps the planning rule and uses free channels only; written out, node by node. */
    boolean keepsRule() {
        int length = length();
        int[] px = new int[length + 1];
        int[] py = new int[length + 1];
        int[] at = new int[lattice.free.length];
        int n = 0;
        for (int run = 0; run < runs(); run++) {
            if (!lattice.freeRun(xs[run], ys[run], xs[run + 1], ys[run + 1])) {
                return false;
            }
            for (int t = run == 0 ? 0 : 1; t <= runLength(run); t++) {
                px[n] = xs[run] + t * dx(run);
                py[n] = ys[run] + t * dy(run);
                int v = py[n] * lattice.width + px[n];
                if (at[v] != 0) {
                    return false;
                }
                at[v] = ++n;
            }
        }
        int reach = spacing - 1;
        for (int i = 0; i < n; i++) {
            for (int y = Math.max(0, py[i] - reach); y <= Math.min(lattice.height - 1, py[i] + reach); y++) {
                for (int x = Math.max(0, px[i] - reach); x <= Math.min(lattice.width - 1, px[i] + reach); x++) {
                    int j = at[y * lattice.width + x] - 1;
                    if (j > i && j - i != Math.abs(px[i] - x) + Math.abs(py[i] - y)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /** Nodes of the route marked on the lattice. */
    boolean[] mask() {
        boolean[] mask = new boolean[lattice.free.length];
        for (int run = 0; run < runs(); run++) {
            int x = xs[run];
            int y = ys[run];
            for (int t = 0; t <= runLength(run); t++) {
                mask[(y + t * dy(run)) * lattice.width + x + t * dx(run)] = true;
            }
        }
        return mask;
    }
}
