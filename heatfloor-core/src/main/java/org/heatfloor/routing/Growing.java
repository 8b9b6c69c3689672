package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;

/** Grows a strand with fingers, and draws a free end on, until it is long enough or nothing more fits. */
final class Growing {

    private static final int ROUNDS = 8;
    /** Price of a turn on the way of a free end, in pitches. */
    private static final int TURN_PRICE = 5;

    private final Lattice lattice;
    private final boolean[] open;
    private final ChannelWay ways;
    private final boolean returns;
    private final ToDoubleFunction<Strand> missing;
    private final double turnPairPitches;
    private final SplittableRandom random;

    /**
     * Prepares the growing of strands.
     *
     * @param open junctions they may use
     * @param returns whether the cable comes back to the wall, so that its end is not free
     * @param missing pitches a strand still lacks
     * @param turnPairPitches pitches that two turns take by their rounding
     */
    Growing(
            Lattice lattice,
            boolean[] open,
            ChannelWay ways,
            boolean returns,
            ToDoubleFunction<Strand> missing,
            double turnPairPitches,
            SplittableRandom random) {
        this.lattice = lattice;
        this.open = open;
        this.ways = ways;
        this.returns = returns;
        this.missing = missing;
        this.turnPairPitches = turnPairPitches;
        this.random = random;
    }

    /** Grows a strand anywhere, fingers first with a mean gap given in half pitches. */
    void grow(Strand strand, int halves, double noise) {
        grow(strand, Box.whole(lattice), halves, noise);
    }

    /** Grows a strand inside a box; a free end there is drawn on as well. */
    void grow(Strand strand, Box box, int halves, double noise) {
        int least = strand.spacing;
        int width = Math.max(least, halves / 2);
        int apart = Math.max(least, (halves + 1) / 2);
        for (int round = 0; round < ROUNDS; round++) {
            if (new Fingers(strand, box, width, apart, random, noise).fill(missing, turnPairPitches)) {
                return;
            }
            if (apart > least || width > least) {
                // Wide fingers leave gaps in which narrow ones may still fit.
                int nearer = Math.max(least, apart - 1);
                if (new Fingers(strand, box, least, nearer, random, noise).fill(missing, turnPairPitches)) {
                    return;
                }
            }
            if (returns || !box.holds(strand.lattice, strand.node(strand.count() - 1)) || !drawOn(strand)) {
                return;
            }
        }
    }

    /** Draws a free end on to the farthest junction that it reaches. */
    private boolean drawOn(Strand strand) {
        int end = strand.count() - 1;
        boolean[] permitted =
                Strand.permitted(lattice, open, strand.spacing, strand.nodes(), end, strand.count(), strand.count());
        int tip = strand.node(end);
        ways.search(permitted, TURN_PRICE, tip, ChannelWay.direction(strand.step(end - 1), lattice.width), 2, -1);
        int far = -1;
        for (int v = 0; v < permitted.length; v++) {
            if (v != tip && ways.reaches(v) && (far < 0 || ways.price(v) > ways.price(far))) {
                far = v;
            }
        }
        int[] way = far < 0 ? null : ways.to(far);
        if (way == null || way.length < Math.max(2, strand.leastRun)) {
            return false;
        }
        for (int length = way.length; length >= 2; length = length * 3 / 4) {
            if (strand.replace(end, strand.count(), way, length)) {
                return true;
            }
        }
        return false;
    }

    /**
     * Where a way just searched may lead to: the farthest junction, those farthest in the diagonal directions and along the
     * axes.
     *
     * @param among the junctions to choose from
     */
    List<Integer> goals(boolean[] among) {
        int[] chosen = new int[9];
        double[] worth = new double[9];
        Arrays.fill(worth, Double.NEGATIVE_INFINITY);
        Arrays.fill(chosen, -1);
        for (int v = 0; v < among.length; v++) {
            if (!among[v] || !ways.reaches(v)) {
                continue;
            }
            int x = v % lattice.width;
            int y = v / lattice.width;
            double[] now = {
                ways.price(v), x + y, x - y, y - x, -x - y, x + 0.01 * y, -x + 0.01 * y, y + 0.01 * x, -y + 0.01 * x
            };
            for (int i = 0; i < now.length; i++) {
                if (now[i] > worth[i]) {
                    worth[i] = now[i];
                    chosen[i] = v;
                }
            }
        }
        List<Integer> out = new ArrayList<>();
        for (int v : chosen) {
            if (v >= 0 && !out.contains(v)) {
                out.add(v);
            }
        }
        return out;
    }
}
