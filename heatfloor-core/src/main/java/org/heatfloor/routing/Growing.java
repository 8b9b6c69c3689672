package org.heatfloor.routing;

import java.util.List;
import java.util.SplittableRandom;

/** Lengthens a strand until the rest is long enough or nothing more fits: fingers, and a free end drawn on. */
final class Growing {

    private static final int ROUNDS = 8;
    private static final int WIDEST = 12;
    private static final int TURN_PRICE = 5;

    private final Rest rest;
    private final ChannelWay ways;
    private final SplittableRandom random;

    Growing(Rest rest, ChannelWay ways, SplittableRandom random) {
        this.rest = rest;
        this.ways = ways;
        this.random = random;
    }

    /** Half pitches of the mean gap to begin with, for an even spacing in pitches. */
    int widest(double evenGap) {
        return Math.max(narrowest(), (int) Math.floor(2 * Math.min(evenGap + 0.1, WIDEST)));
    }

    /** Half pitches of the least gap. */
    int narrowest() {
        return 2 * rest.spacing();
    }

    /**
     * Grows a strand.
     *
     * @param strand the strand, which is changed
     * @param halves mean gap of the fingers, in half pitches
     * @param noise how much the worth of a finger is blurred, as a share
     */
    void grow(Strand strand, int halves, double noise) {
        int least = rest.spacing();
        int width = Math.max(least, halves / 2);
        int apart = Math.max(least, (halves + 1) / 2);
        for (int round = 0; round < ROUNDS; round++) {
            if (fill(strand, width, apart, noise)) {
                return;
            }
            // Wide fingers leave gaps in which narrow ones may still fit.
            if ((apart > least || width > least) && fill(strand, least, Math.max(least, apart - 1), noise)) {
                return;
            }
            if (rest.returns || !drawOn(strand)) {
                return;
            }
        }
    }

    private boolean fill(Strand strand, int width, int apart, double noise) {
        return new Fingers(strand, width, apart, random, noise).fill(rest::missing, rest.turnPairPitches());
    }

    /** Draws a free end on to the farthest junction that it reaches. */
    private boolean drawOn(Strand strand) {
        int end = strand.count() - 1;
        int[] nodes = strand.nodes();
        ways.search(
                rest.between(nodes, end, nodes.length), TURN_PRICE, nodes[end], rest.direction(nodes, end - 1), 2, -1);
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
