package org.heatfloor.routing;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Takes up stretches of a strand and lays them by a cheap way, or slides runs together; the room so won is filled with
 * fingers. What comes out shorter is kept at first, as in annealing.
 */
final class Relaying {

    /** Junctions of the shortest and the longest stretch taken up. */
    private static final int LEAST = 10;

    private static final int MOST = 240;
    /** Rounds after which it is asked whether the gain so far promises what is still lacking. */
    private static final int TRIAL = 15;
    /** Spacings about a stretch taken up in which the room is filled again. */
    private static final int MARGIN = 2;
    /** Prices of a turn on the way that a stretch is laid anew, in pitches. */
    private static final int[] TURN_PRICES = {0, 3, 6, 12};
    /** How much the worth of a finger is blurred, as a share. */
    private static final double NOISE = 0.3;
    /** Pitches by which a route may come out shorter and be kept, at the end and more at the beginning. */
    private static final double COLD = 0.2;

    private static final double WARMER = 1.8;

    private final Growing growing;
    private final ChannelWay ways;
    private final boolean returns;
    private final ToDoubleFunction<Strand> missing;
    private final SplittableRandom random;

    /**
     * Prepares the work.
     *
     * @param growing fills the room
     * @param ways finds the ways
     * @param returns whether the cable comes back to the wall, so that its end is not free
     * @param missing pitches a strand still lacks
     * @param random what to take up, and how to lay it anew
     */
    Relaying(
            Growing growing,
            ChannelWay ways,
            boolean returns,
            ToDoubleFunction<Strand> missing,
            SplittableRandom random) {
        this.growing = growing;
        this.ways = ways;
        this.returns = returns;
        this.missing = missing;
        this.random = random;
    }

    /**
     * The longest strand that comes of a given one.
     *
     * @param begun the strand, which stays as it is
     * @param rounds how many stretches to take up
     * @param enough asked of each strand; the first that it holds for is the answer
     * @param givesUp whether to stop where the gain so far does not promise what is still lacking
     */
    Strand relaid(Strand begun, int rounds, Predicate<Strand> enough, boolean givesUp) {
        Strand now = begun.copy();
        growing.grow(now, 2 * begun.spacing, 0);
        double lacking = missing.applyAsDouble(now);
        Strand best = begun;
        double least = missing.applyAsDouble(begun);
        if (lacking < least) {
            best = now;
            least = lacking;
        }
        if (enough.test(now)) {
            return now;
        }
        double before = least;
        for (int round = 0; round < rounds && !Thread.currentThread().isInterrupted(); round++) {
            if (round % TRIAL == TRIAL - 1) {
                if (givesUp && least > 1 && least > 3 * (before - least + 0.5) * (rounds - round) / TRIAL) {
                    return best;
                }
                before = least;
            }
            Strand next = now.copy();
            Box box = takenUp(next);
            if (box == null) {
                continue;
            }
            if (random.nextInt(3) == 0) {
                slide(next, box);
            }
            growing.grow(next, box, 2 * next.spacing + (random.nextInt(4) == 0 ? 1 : 0), NOISE);
            if (enough.test(next)) {
                return next;
            }
            double left = missing.applyAsDouble(next);
            double heat = COLD + WARMER * (rounds - round) / rounds;
            if (left <= lacking - heat * Math.log(1 - random.nextDouble())) {
                now = next;
                lacking = left;
            }
            if (left < least) {
                best = next;
                least = left;
            }
        }
        return best;
    }

    private boolean slide(Strand strand, Box box) {
        int[] offs = {1, strand.lattice.width, -1, -strand.lattice.width};
        return Sliding.gather(strand, offs[random.nextInt(4)], box);
    }

    /** Takes a stretch up and lays it anew, or slides the runs about it; the box in which there is room then, or null. */
    private @Nullable Box takenUp(Strand strand) {
        int most = (returns ? strand.last() : strand.count() - 1) - strand.first;
        if (most < LEAST) {
            return null;
        }
        int length = Math.min(most, LEAST + random.nextInt(Math.max(1, Math.min(most, MOST))));
        int to = strand.first + length + random.nextInt(most - length + 1);
        boolean end = !returns && random.nextInt(4) == 0;
        if (end) {
            to = strand.count() - 1;
        }
        int from = to - length;
        Box box = Box.about(strand, from, to, MARGIN * strand.spacing);
        if (random.nextInt(4) == 0) {
            return slide(strand, box) ? box : null;
        }
        int since = end ? strand.count() : to;
        boolean[] permitted = Strand.permitted(
                strand.lattice, strand.open, strand.spacing, strand.nodes(), from, since, strand.count(), box);
        int direction = ChannelWay.direction(strand.step(from - 1), strand.lattice.width);
        ways.search(permitted, TURN_PRICES[random.nextInt(TURN_PRICES.length)], strand.node(from), direction, 2, -1);
        if (end) {
            List<Integer> goals = ways.farthest();
            int[] way = goals.isEmpty() ? null : ways.to(goals.get(random.nextInt(goals.size())));
            return way != null && way.length > 1 && strand.replace(from, since, way, way.length) ? box : null;
        }
        int[] way = to + 1 < strand.count()
                ? ways.to(strand.node(to), ChannelWay.direction(strand.step(to), strand.lattice.width))
                : ways.to(strand.node(to));
        return way != null && way.length > 0 && strand.replace(from, to, way, way.length - 1) ? box : null;
    }
}
