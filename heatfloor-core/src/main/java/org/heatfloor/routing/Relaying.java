package org.heatfloor.routing;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Takes pieces of a strand up and lays them anew until it is long enough; worse ones are kept at first, as in annealing.
 * Runs are slid aside now and then to gather room.
 */
final class Relaying {

    /** Rounds after which it is asked whether the gain so far promises what is still lacking. */
    private static final int TRIAL = 15;

    private static final double NOISE = 0.3;
    private static final double HOT = 2;
    private static final double COLD = 0.2;
    private static final int[] TURN_PRICES = {0, 3, 6, 12};

    private final Rest rest;
    private final Growing growing;
    private final Trials trials;
    private final ChannelWay ways;
    private final SplittableRandom random;

    Relaying(Rest rest, Growing growing, Trials trials, ChannelWay ways, SplittableRandom random) {
        this.rest = rest;
        this.growing = growing;
        this.trials = trials;
        this.ways = ways;
        this.random = random;
    }

    /** Lays pieces of a strand again until an exact route is found, in so many rounds at most. */
    void relay(Strand begun, int rounds) {
        Strand now = begun;
        double lacking = rest.missing(begun);
        double least = lacking;
        double before = lacking;
        for (int round = 0; round < rounds && !Thread.currentThread().isInterrupted(); round++) {
            if (round % TRIAL == TRIAL - 1) {
                if (least > 1 && least > 3 * (before - least + 0.5) * (rounds - round) / TRIAL) {
                    return;
                }
                before = least;
            }
            Strand next = now.copy();
            if (!takeUp(next)) {
                continue;
            }
            if (random.nextInt(3) == 0) {
                gather(next);
            }
            growing.grow(next, growing.narrowest() + (random.nextInt(4) == 0 ? 1 : 0), NOISE);
            double left = rest.missing(next);
            if (trials.exact(next)) {
                return;
            }
            double heat = COLD + (HOT - COLD) * (rounds - round) / rounds;
            if (left <= lacking - heat * Math.log(1 - random.nextDouble())) {
                now = next;
                lacking = left;
                least = Math.min(least, left);
                trials.passed(now);
            }
        }
    }

    private boolean gather(Strand strand) {
        int width = rest.floor.lattice.width;
        int[] offs = {1, width, -1, -width};
        return Sliding.gather(strand, offs[random.nextInt(4)]);
    }

    /** Takes a piece up, or only slides runs aside; whether anything changed. */
    private boolean takeUp(Strand strand) {
        if (random.nextInt(4) == 0) {
            return gather(strand);
        }
        int free = strand.last() - 1 - strand.first;
        if (free < 4) {
            return false;
        }
        int length = Math.min(free, 10 + random.nextInt(Math.max(20, Math.min(free, 240))));
        int from = strand.first + random.nextInt(Math.max(1, free - length + 1));
        boolean end = !rest.returns && random.nextInt(4) == 0;
        int to = end ? strand.count() : Math.min(strand.last(), Math.min(strand.count() - 1, from + length));
        if (to - from < 2) {
            return false;
        }
        int[] nodes = strand.nodes();
        int direction = rest.direction(nodes, Math.max(0, from - 1));
        int price = TURN_PRICES[random.nextInt(TURN_PRICES.length)];
        ways.search(rest.between(nodes, from, to), price, nodes[from], direction, 2, -1);
        if (end) {
            List<Integer> goals = ways.farthest();
            int[] way = goals.isEmpty() ? null : ways.to(goals.get(random.nextInt(goals.size())));
            return way != null && way.length > 1 && strand.replace(from, to, way, way.length);
        }
        int[] way = to + 1 < nodes.length ? ways.to(nodes[to], rest.direction(nodes, to)) : ways.to(nodes[to]);
        return way != null && way.length >= 1 && strand.replace(from, to, way, way.length - 1);
    }
}
