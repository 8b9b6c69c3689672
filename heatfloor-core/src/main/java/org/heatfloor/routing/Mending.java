package org.heatfloor.routing;

import java.util.Arrays;

/**
 * The rest as planned, mended: the blocked piece is bypassed, leaving the plan earlier and earlier and coming back to it
 * later and later; or the plan is kept up to it and laid on from there.
 */
final class Mending {

    private static final int TURN_PRICE = 4;
    /** Corners of the plan from which a bypass is tried, on either side. */
    private static final int CORNERS = 6;

    private static final double[] KEPT_SHARES = {1, 0.75, 0.5, 0.25};

    private final Rest rest;
    private final Trials trials;
    private final ChannelWay ways;
    private final int[] planned;
    private final int first;
    /** Junctions at the end of the plan that stay: those of the joint and the last straight. */
    private final int exit;

    /**
     * Prepares the mending.
     *
     * @param planned junctions of the cable as planned, beginning with those that stay
     */
    Mending(Rest rest, Trials trials, ChannelWay ways, int[] planned) {
        this.rest = rest;
        this.trials = trials;
        this.ways = ways;
        this.planned = planned;
        first = rest.first();
        exit = rest.returns ? exitLength() : 0;
    }

    void mend() {
        int blocked = first + 1;
        while (blocked < planned.length && passes(blocked)) {
            blocked++;
        }
        if (blocked == planned.length) {
            trials.lengthen(rest.strand(planned, planned.length, exit));
            return;
        }
        int after = planned.length - 1;
        while (after > blocked && passes(after)) {
            after--;
        }
        bypass(blocked - 1, after + 1);
        for (double share : KEPT_SHARES) {
            int count = first + 1 + (int) Math.round(share * (blocked - 1 - first));
            if (!rest.returns && count > first + 1) {
                trials.lengthen(rest.strand(planned, count, 0));
            }
        }
    }

    /** Whether the plan can be followed to a place from the one before it. */
    private boolean passes(int place) {
        int bit = 1 << rest.direction(planned, place - 1);
        return rest.open[planned[place]] && (rest.floor.lattice.channels[planned[place - 1]] & bit) != 0;
    }

    private int exitLength() {
        int end = planned.length - 1;
        int run = 1;
        while (end - run > 0
                && (run < rest.straightExit()
                        || planned[end - run + 1] - planned[end - run] == planned[end] - planned[end - 1])) {
            run++;
        }
        return Math.min(run + 1, rest.straightExit() + 2);
    }

    private void bypass(int before, int after) {
        int[] leave = corners(before, first, -1);
        int[] meet = corners(after, planned.length - 1 - exit, 1);
        for (int sum = 0; sum < leave.length + meet.length - 1 && !trials.enough(); sum++) {
            for (int i = Math.max(0, sum - meet.length + 1); i <= Math.min(sum, leave.length - 1); i++) {
                tryBypass(leave[i], meet[sum - i]);
            }
        }
    }

    private void tryBypass(int from, int to) {
        if (from < first || to >= planned.length || from < 1 || to <= from) {
            return;
        }
        int direction = rest.direction(planned, from - 1);
        ways.search(rest.between(planned, from, to), TURN_PRICE, planned[from], direction, 2, -1);
        int[] way = ways.to(planned[to], to + 1 < planned.length ? rest.direction(planned, to) : direction);
        if (way == null) {
            return;
        }
        int[] nodes = new int[from + 1 + way.length + planned.length - to - 1];
        System.arraycopy(planned, 0, nodes, 0, from + 1);
        System.arraycopy(way, 0, nodes, from + 1, way.length);
        System.arraycopy(planned, to + 1, nodes, from + 1 + way.length, planned.length - to - 1);
        trials.lengthen(rest.strand(nodes, nodes.length, exit));
    }

    /** A place and the next corners of the plan beyond it. */
    private int[] corners(int place, int limit, int way) {
        int[] out = new int[CORNERS];
        int n = 0;
        out[n++] = place;
        for (int i = place; i != limit && i > 0 && i + 1 < planned.length && n < out.length; i += way) {
            if (planned[i + 1] - planned[i] != planned[i] - planned[i - 1] && i != place) {
                out[n++] = i;
            }
        }
        return Arrays.copyOf(out, n);
    }
}
