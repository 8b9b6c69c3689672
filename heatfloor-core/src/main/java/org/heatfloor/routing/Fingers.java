package org.heatfloor.routing;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;

/**
 * Lengthens a strand by fingers: a piece of a run is moved sideways, out and back, as far as the floor is open. Long
 * fingers and such as lie snug beside what is there come first.
 */
final class Fingers {

    /** Worth of a junction of a leg that lies snug, in pitches of length. */
    private static final double SNUG = 0.5;

    private static final int TRIED = 40;

    private final Strand strand;
    private final Box box;
    private final int width;
    private final int gap;
    private final SplittableRandom random;
    private final double noise;

    private final boolean[] taken;
    private final boolean[] banned;
    private final int[] sums;
    private int[][] reach = new int[2][0];

    private int[] places = new int[256];
    private int[] depths = new int[256];
    private int[] widths = new int[256];
    private double[] scores = new double[256];
    private int found;

    /**
     * Prepares the filling of a strand.
     *
     * @param strand the strand, which is changed
     * @param box where fingers may lie
     * @param width distance of a finger's legs, in pitches
     * @param gap least distance of a finger from the rest of the strand, in pitches
     * @param random for the order of fingers that are as good as each other
     * @param noise how much the worth of a finger is blurred, as a share
     */
    Fingers(Strand strand, Box box, int width, int gap, SplittableRandom random, double noise) {
        this.strand = strand;
        this.box = box;
        this.width = width;
        this.gap = gap;
        this.random = random;
        this.noise = noise;
        int cells = strand.lattice.free.length;
        taken = new boolean[cells];
        banned = new boolean[2 * cells];
        sums = new int[(strand.lattice.width + 1) * (strand.lattice.height + 1)];
    }

    /**
     * Adds fingers until the strand is long enough or no more fit.
     *
     * @param missing pitches still wanted, positive while the strand is too short
     * @param turnCost pitches that two turns take by their rounding
     * @return whether the strand is long enough
     */
    boolean fill(ToDoubleFunction<Strand> missing, double turnCost) {
        while (true) {
            double wanted = missing.applyAsDouble(strand);
            if (wanted <= 0) {
                return true;
            }
            if (Thread.currentThread().isInterrupted() || !addOne(wanted + 2 * turnCost)) {
                return false;
            }
        }
    }

    private boolean addOne(double wanted) {
        collect();
        for (int tried = 0; tried < Math.min(TRIED, found); tried++) {
            int top = tried;
            for (int i = tried + 1; i < found; i++) {
                if (scores[i] > scores[top]) {
                    top = i;
                }
            }
            swap(tried, top);
            int place = places[tried] >> 1;
            int side = places[tried] & 1;
            int least = pushes(place, widths[tried], side) ? 1 : leastDepth();
            int depth = Math.max(least, Math.min(depths[tried], (int) Math.ceil(wanted / 2)));
            for (int d = depth; d >= Math.max(least, depth - strand.spacing); d--) {
                if (lay(place, widths[tried], side, d)) {
                    return true;
                }
            }
            banned[2 * strand.node(place) + side] = true;
        }
        return false;
    }

    private void swap(int a, int b) {
        int p = places[a];
        places[a] = places[b];
        places[b] = p;
        int d = depths[a];
        depths[a] = depths[b];
        depths[b] = d;
        int w = widths[a];
        widths[a] = widths[b];
        widths[b] = w;
        double s = scores[a];
        scores[a] = scores[b];
        scores[b] = s;
    }

    private int leastDepth() {
        return Math.max(1, strand.leastRun);
    }

    private int sideways(int place, int side) {
        int along = strand.step(place);
        int lateral = Math.abs(along) == 1 ? strand.lattice.width : 1;
        return side == 0 ? lateral : -lateral;
    }

    /** Whether a finger only pushes the base of a U-turn on, so that no new leg comes of it. */
    private boolean pushes(int place, int across, int side) {
        int end = place + across;
        if (place < 1 || end + 1 >= strand.count() || !strand.turnsAt(place) || !strand.turnsAt(end)) {
            return false;
        }
        int off = sideways(place, side);
        return strand.step(place - 1) == off && strand.step(end) == -off;
    }

    private boolean lay(int place, int across, int side, int depth) {
        int off = sideways(place, side);
        int along = strand.step(place);
        int[] fresh = new int[2 * depth + across + 1];
        int n = 0;
        int v = strand.node(place);
        for (int t = 0; t < depth; t++) {
            v += off;
            fresh[n++] = v;
        }
        for (int t = 0; t < across; t++) {
            v += along;
            fresh[n++] = v;
        }
        for (int t = 0; t < depth - 1; t++) {
            v -= off;
            fresh[n++] = v;
        }
        return strand.replace(place, place + across, fresh, n);
    }

    private void collect() {
        found = 0;
        mark();
        int from = strand.first;
        int to = Math.min(strand.last(), strand.count() - 1);
        if (reach[0].length < strand.count()) {
            reach = new int[2][2 * strand.count()];
        }
        for (int place = from; place <= to; place++) {
            int look = place == to ? place - 1 : place;
            if (look < from) {
                continue;
            }
            reach[0][place] = depth(place, sideways(look, 0));
            reach[1][place] = depth(place, sideways(look, 1));
        }
        int start = from;
        while (start < to) {
            int end = start + 1;
            while (end < to && strand.step(end) == strand.step(start)) {
                end++;
            }
            if (box.misses(strand, start, end)) {
                start = end;
                continue;
            }
            // At the far end of a run the reach above belongs to the next run's direction: look again.
            int keepLeft = reach[0][end];
            int keepRight = reach[1][end];
            reach[0][end] = depth(end, sideways(start, 0));
            reach[1][end] = depth(end, sideways(start, 1));
            for (int a = start; a + width <= end; a++) {
                offer(a, width, 0);
                offer(a, width, 1);
            }
            if (start > from && end < to && end - start != width && end - start >= strand.spacing) {
                offer(start, end - start, 0);
                offer(start, end - start, 1);
            }
            reach[0][end] = keepLeft;
            reach[1][end] = keepRight;
            start = end;
        }
    }

    private void offer(int a, int across, int side) {
        int depth = Math.min(reach[side][a], reach[side][a + across]);
        int least = pushes(a, across, side) ? 1 : leastDepth();
        if (depth < least || banned[2 * strand.node(a) + side]) {
            return;
        }
        int off = sideways(a, side);
        int along = strand.step(a);
        while (depth >= least && !base(strand.node(a) + depth * off, along, across, depth >= gap)) {
            depth--;
        }
        if (depth < least) {
            return;
        }
        int snug = 0;
        for (int t = Math.min(gap, depth); t <= depth; t++) {
            int v = strand.node(a) + t * off;
            snug += shut(v - along) ? 1 : 0;
            snug += shut(v + (across + 1) * along) ? 1 : 0;
        }
        double score = 2 * depth + SNUG * snug;
        if (noise > 0) {
            score *= 1 + noise * random.nextDouble();
        }
        if (found == places.length) {
            places = Arrays.copyOf(places, 2 * found);
            depths = Arrays.copyOf(depths, 2 * found);
            widths = Arrays.copyOf(widths, 2 * found);
            scores = Arrays.copyOf(scores, 2 * found);
        }
        places[found] = 2 * a + side;
        depths[found] = depth;
        widths[found] = across;
        scores[found++] = score;
    }

    private boolean shut(int v) {
        return v < 0 || v >= taken.length || !strand.open[v] || taken[v];
    }

    private boolean base(int v, int along, int across, boolean clear) {
        int node = v;
        for (int t = 0; t <= across; t++, node += along) {
            if (!strand.open[node] || strand.holds(node) || (clear && taken[node])) {
                return false;
            }
            if (t > 0 && !strand.joined(node - along, node)) {
                return false;
            }
        }
        return true;
    }

    /** How far a leg can go sideways from a place without leaving the box. */
    private int depth(int place, int off) {
        int v = strand.node(place);
        int d = 0;
        while (box.holds(strand.lattice, v)) {
            int next = v + off;
            if (next < 0
                    || next >= taken.length
                    || !strand.joined(v, next)
                    || !strand.open[next]
                    || strand.holds(next)
                    || (d + 1 >= gap && taken[next])) {
                return d;
            }
            v = next;
            d++;
        }
        return Math.max(0, d - 1);
    }

    /** Marks the junctions of the box nearer than the gap to the strand. */
    private void mark() {
        int w = strand.lattice.width;
        int stride = w + 1;
        int reachTo = gap - 1;
        Box seen = box.wider(reachTo + 1, strand.lattice);
        for (int y = seen.bottom(); y <= seen.top(); y++) {
            int row = 0;
            for (int x = seen.left(); x <= seen.right(); x++) {
                row += strand.holds(y * w + x) ? 1 : 0;
                sums[(y + 1) * stride + x + 1] = (y == seen.bottom() ? 0 : sums[y * stride + x + 1]) + row;
            }
        }
        Box marked = box.wider(1, strand.lattice);
        for (int y = marked.bottom(); y <= marked.top(); y++) {
            int y0 = Math.max(seen.bottom(), y - reachTo);
            int y1 = Math.min(seen.top() + 1, y + reachTo + 1);
            for (int x = marked.left(); x <= marked.right(); x++) {
                int x0 = Math.max(seen.left(), x - reachTo);
                int x1 = Math.min(seen.right() + 1, x + reachTo + 1);
                taken[y * w + x] = sum(x1, y1, seen) - sum(x1, y0, seen) - sum(x0, y1, seen) + sum(x0, y0, seen) > 0;
            }
        }
    }

    private int sum(int x, int y, Box seen) {
        return x == seen.left() || y == seen.bottom() ? 0 : sums[y * (strand.lattice.width + 1) + x];
    }
}
