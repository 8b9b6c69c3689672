package org.heatfloor.routing;

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
        List<Integer> goals = ways.farthest();
        int[] way = goals.isEmpty() ? null : ways.to(goals.get(0));
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
}
