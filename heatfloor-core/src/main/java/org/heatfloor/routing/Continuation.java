package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The search for a way to lay the rest of a cable from its head. The rest as planned is mended first: the blocked piece
 * is bypassed, or the plan kept up to it. Beside that the rest is laid afresh: a spine from the head along the floor, from
 * which fingers fill it, wide apart where the length allows. What is still too short is taken up piece by piece and laid
 * again. All work is counted.
 */
final class Continuation {

    private static final int ENOUGH = 4;
    private static final int RUINED = 3;
    private static final int TRIAL = 15;

    private final OpenFloor floor;
    private final Part part;
    private final boolean[] open;
    private final LaidStretch laid;
    private final boolean returns;
    private final double targetMetres;
    private final SplittableRandom random;
    private final ChannelWay ways;
    private final ToDoubleFunction<Strand> missing;
    private final Growing growing;
    private final List<Resting> found = new ArrayList<>();
    private final List<Strand> tooShort = new ArrayList<>();
    private double longest;

    /**
     * Prepares the search.
     *
     * @param part the part of the floor, with the ways of cold leads
     * @param open junctions the rest may use
     * @param laid what stays
     * @param returns whether the cable comes back to the wall
     * @param targetMetres length of the whole heating part
     */
    Continuation(
            OpenFloor floor,
            Part part,
            boolean[] open,
            LaidStretch laid,
            boolean returns,
            double targetMetres,
            SplittableRandom random) {
        this.floor = floor;
        this.part = part;
        this.open = open;
        this.laid = laid;
        this.returns = returns;
        this.targetMetres = targetMetres;
        this.random = random;
        ways = new ChannelWay(floor.lattice, floor.site.leastRun());
        double pitch = floor.site.pitch;
        missing = strand -> (targetMetres - metres(strand)) / pitch;
        double turnPair = 2 * Part.CORNER * floor.site.bendRadius / pitch;
        growing = new Growing(floor.lattice, open, ways, returns, missing, turnPair, random);
    }

    /** Longest heating part that was found, in metres, whether or not it could be made exact. */
    double longestMetres() {
        return longest;
    }

    private double metres(Strand strand) {
        return Resting.availableMetres(floor.site, laid.joint(), strand)
                - (strand.keptAtEnd > 0 ? exitLost(strand) : 0);
    }

    /** Metres at the end of a returning strand that are cold lead. */
    private double exitLost(Strand strand) {
        return floor.site.jointLength + (strand.keptAtEnd - 1 > straightExit() ? floor.site.bendRadius : 0);
    }

    private int straightExit() {
        return (int) Math.ceil((floor.site.jointLength + floor.site.bendRadius) / floor.site.pitch - 1e-6);
    }

    /**
     * Searches.
     *
     * @param planned junctions of the cable as planned, beginning with those that stay; null where there is no plan
     * @param rounds how often to take up and re-lay a piece when nothing is long enough
     * @return exact routes, the best first
     */
    List<Resting> run(int @Nullable [] planned, int rounds) {
        boolean[] permitted = laid.permitted(floor, open, laid.first());
        Lattice rest = floor.joinedTo(laid.nodes()[laid.first()], permitted);
        double wide = evenGap(rest);
        if (planned != null) {
            mend(planned, wide);
        }
        if (returns) {
            for (int[] exit : exits(permitted, planned)) {
                spinesTo(exit, wide);
            }
        } else {
            spines(rest, permitted, wide);
        }
        tooShort.sort(Comparator.comparingDouble(missing));
        for (int i = 0; i < Math.min(RUINED, tooShort.size()) && found.isEmpty(); i++) {
            relay(tooShort.get(i), rounds / RUINED);
        }
        found.sort(Comparator.comparingDouble(Resting::cost));
        return found;
    }

    /** Even spacing of the length still to be laid over the floor still open, in pitches. */
    private double evenGap(Lattice rest) {
        double area = rest.unionOfSquares(part.spacing);
        double pitches = (targetMetres - laid.metres()) / floor.site.pitch;
        return area / Math.max(1, pitches);
    }

    private boolean enough() {
        return found.size() >= ENOUGH || Thread.currentThread().isInterrupted();
    }

    // ---- the rest as planned, mended

    private void mend(int[] planned, double wide) {
        int from = laid.first();
        int blocked = from + 1;
        while (blocked < planned.length && open[planned[blocked]] && joined(planned[blocked - 1], planned[blocked])) {
            blocked++;
        }
        if (blocked == planned.length) {
            Strand whole = strand(planned, planned.length, returns ? exitLength(planned) : 0);
            lengthen(whole, wide);
            return;
        }
        int after = planned.length - 1;
        while (after > blocked && open[planned[after]] && joined(planned[after - 1], planned[after])) {
            after--;
        }
        after++;
        bypass(planned, blocked - 1, after, wide);
        if (!returns) {
            for (double share : new double[] {1, 0.75, 0.5, 0.25}) {
                int count = from + 1 + (int) Math.round(share * (blocked - 1 - from));
                if (count > from + 1) {
                    lengthen(strand(planned, count, 0), wide);
                }
            }
        }
    }

    private boolean joined(int a, int b) {
        int bit = b == a + 1
                ? Lattice.EAST
                : b == a - 1 ? Lattice.WEST : b == a + floor.lattice.width ? Lattice.NORTH : Lattice.SOUTH;
        return (floor.lattice.channels[a] & bit) != 0;
    }

    /** Junctions at the end of a plan that make up its joint and last straight. */
    private int exitLength(int[] planned) {
        int end = planned.length - 1;
        int run = 1;
        while (end - run > 0
                && (run < straightExit()
                        || planned[end - run + 1] - planned[end - run] == planned[end] - planned[end - 1])) {
            run++;
        }
        return Math.min(run + 1, straightExit() + 2);
    }

    /** Tries ways round the blocked piece that leave the plan earlier and earlier and come back to it later and later. */
    private void bypass(int[] planned, int before, int after, double wide) {
        int[] leave = corners(planned, before, laid.first(), -1);
        int[] meet = corners(planned, after, planned.length - 1 - (returns ? exitLength(planned) : 0), 1);
        for (int sum = 0; sum < leave.length + meet.length - 1 && !enough(); sum++) {
            for (int i = Math.max(0, sum - meet.length + 1); i <= Math.min(sum, leave.length - 1); i++) {
                tryBypass(planned, leave[i], meet[sum - i], wide);
            }
        }
    }

    private void tryBypass(int[] planned, int from, int to, double wide) {
        if (from < laid.first() || to >= planned.length || from < 1 || to <= from) {
            return;
        }
        boolean[] permitted =
                Strand.permitted(floor.lattice, open, part.site.spacingPitches(), planned, from, to, planned.length);
        int direction = ChannelWay.direction(planned[from] - planned[from - 1], floor.lattice.width);
        ways.search(permitted, 4, planned[from], direction, 2, -1);
        int onward = to + 1 < planned.length
                ? ChannelWay.direction(planned[to + 1] - planned[to], floor.lattice.width)
                : direction;
        int[] way = ways.to(planned[to], onward);
        if (way == null) {
            return;
        }
        int[] nodes = new int[from + 1 + way.length + planned.length - to - 1];
        System.arraycopy(planned, 0, nodes, 0, from + 1);
        System.arraycopy(way, 0, nodes, from + 1, way.length);
        System.arraycopy(planned, to + 1, nodes, from + 1 + way.length, planned.length - to - 1);
        Strand strand = strand(nodes, nodes.length, returns ? exitLength(planned) : 0);
        if (strand.sound()) {
            lengthen(strand, wide);
        }
    }

    /** A place and the next corners of the plan beyond it, at most six. */
    private static int[] corners(int[] nodes, int place, int limit, int way) {
        int[] out = new int[6];
        int n = 0;
        out[n++] = place;
        for (int i = place; i != limit && i > 0 && i + 1 < nodes.length && n < out.length; i += way) {
            if (nodes[i + 1] - nodes[i] != nodes[i] - nodes[i - 1] && i != place) {
                out[n++] = i;
            }
        }
        return Arrays.copyOf(out, n);
    }

    // ---- the rest laid afresh

    private Strand strand(int[] nodes, int count, int keptAtEnd) {
        return new Strand(
                floor.lattice,
                open,
                part.site.spacingPitches(),
                part.site.leastRun(),
                nodes,
                count,
                laid.first(),
                keptAtEnd);
    }

    private int headDirection() {
        int f = laid.first();
        return ChannelWay.direction(laid.nodes()[f] - laid.nodes()[f - 1], floor.lattice.width);
    }

    private void spines(Lattice rest, boolean[] permitted, double wide) {
        List<int[]> spines = new ArrayList<>();
        spines.add(new int[0]);
        for (int turn = 2; turn >= -1; turn--) {
            ways.search(permitted, 5, laid.nodes()[laid.first()], headDirection(), turn, -1);
            for (int goal : growing.goals(rest.free)) {
                int[] way = ways.to(goal);
                if (way != null && spines.stream().noneMatch(s -> Arrays.equals(s, way))) {
                    spines.add(way);
                }
            }
        }
        for (int halves = widest(wide); halves >= 2 * part.site.spacingPitches() && !enough(); halves--) {
            for (int[] spine : spines) {
                if (enough()) {
                    return;
                }
                int[] nodes = joinedNodes(laid.nodes(), spine, new int[0]);
                Strand strand = strand(nodes, nodes.length, 0);
                if (strand.sound()) {
                    growing.grow(strand, halves, 0);
                    judge(strand);
                }
            }
        }
    }

    private static int[] joinedNodes(int[] first, int[] middle, int[] last) {
        int[] out = new int[first.length + middle.length + last.length];
        System.arraycopy(first, 0, out, 0, first.length);
        System.arraycopy(middle, 0, out, first.length, middle.length);
        System.arraycopy(last, 0, out, first.length + middle.length, last.length);
        return out;
    }

    /** Last stretches of a cable that comes back: from where it may turn, over the joint, to a junction a lead reaches. */
    private List<int[]> exits(boolean[] permitted, int @Nullable [] planned) {
        int width = floor.lattice.width;
        List<LeadWays.Way> gates = new ArrayList<>();
        for (int v = 0; v < permitted.length; v++) {
            if (permitted[v]) {
                gates.addAll(part.waysAt.get(v));
            }
        }
        int plannedGate = planned == null ? -1 : planned[planned.length - 1];
        gates.sort(Comparator.comparingDouble(
                (LeadWays.Way w) -> w.lengthMetres() - (w.node() == plannedGate ? 1000 : 0)));
        List<int[]> out = new ArrayList<>();
        List<Integer> chosen = new ArrayList<>();
        for (LeadWays.Way way : gates) {
            int x = way.node() % width;
            int y = way.node() / width;
            boolean near = chosen.stream()
                    .anyMatch(v -> Math.max(Math.abs(v % width - x), Math.abs(v / width - y))
                            < (chosen.size() < 4 ? 2 : 3 * part.site.spacingPitches()));
            if (near || chosen.size() >= 8) {
                continue;
            }
            boolean any = false;
            for (int turn = 0; turn <= 2; turn++) {
                int direction = (Integer.numberOfTrailingZeros(way.bit()) + (turn == 2 ? 3 : turn)) % 4;
                int length = straightExit() + (turn == 0 ? 0 : (int) Math.ceil(part.site.bendRadius / part.site.pitch));
                int[] exit = exit(permitted, way.node(), direction, length);
                if (exit != null) {
                    out.add(exit);
                    any = true;
                }
            }
            if (any) {
                chosen.add(way.node());
            }
        }
        return out;
    }

    private int @Nullable [] exit(boolean[] permitted, int gate, int direction, int length) {
        int[] steps = {1, floor.lattice.width, -1, -floor.lattice.width};
        int[] out = new int[length + 1];
        int v = gate;
        for (int t = 0; t <= length; t++) {
            out[length - t] = v;
            if (!permitted[v] || (t < length && (floor.lattice.channels[v] & (1 << direction)) == 0)) {
                return null;
            }
            v += steps[direction];
        }
        return out;
    }

    private void spinesTo(int[] exit, double wide) {
        int[] ends = joinedNodes(laid.nodes(), new int[0], exit);
        int f = laid.first();
        boolean[] permitted =
                Strand.permitted(floor.lattice, open, part.site.spacingPitches(), ends, f, f + 1, ends.length);
        int onward = ChannelWay.direction(exit[1] - exit[0], floor.lattice.width);
        List<int[]> spines = new ArrayList<>();
        ways.search(permitted, 5, ends[f], headDirection(), 2, -1);
        int[] direct = ways.to(exit[0], onward);
        if (direct == null) {
            return;
        }
        spines.add(direct);
        Lattice rest = floor.joinedTo(ends[f], permitted);
        for (int goal : growing.goals(rest.free)) {
            ways.search(permitted, 5, ends[f], headDirection(), 2, -1);
            int[] out = ways.to(goal);
            if (out == null || out.length < 2) {
                continue;
            }
            int[] there = joinedNodes(laid.nodes(), out, exit);
            int at = f + out.length;
            boolean[] back =
                    Strand.permitted(floor.lattice, open, part.site.spacingPitches(), there, at, at + 1, there.length);
            ways.search(back, 5, goal, ChannelWay.direction(there[at] - there[at - 1], floor.lattice.width), 2, -1);
            int[] home = ways.to(exit[0], onward);
            if (home != null) {
                spines.add(joinedNodes(out, home, new int[0]));
            }
        }
        for (int halves = widest(wide); halves >= 2 * part.site.spacingPitches() && !enough(); halves--) {
            for (int[] spine : spines) {
                if (enough()) {
                    return;
                }
                int[] nodes = new int[f + 1 + spine.length + exit.length - 1];
                System.arraycopy(ends, 0, nodes, 0, f + 1);
                System.arraycopy(spine, 0, nodes, f + 1, spine.length);
                System.arraycopy(exit, 1, nodes, f + 1 + spine.length, exit.length - 1);
                Strand strand = strand(nodes, nodes.length, exit.length);
                if (strand.sound()) {
                    growing.grow(strand, halves, 0);
                    judge(strand);
                }
            }
        }
    }

    // ---- growing, judging, taking up again

    /** Grows a strand taken from the plan, with fingers as wide apart as will do. */
    private void lengthen(Strand strand, double wide) {
        if (!strand.sound()) {
            return;
        }
        for (int halves = widest(wide); halves >= 2 * part.site.spacingPitches(); halves--) {
            Strand copy = strand.copy();
            growing.grow(copy, halves, 0);
            judge(copy);
            if (missing.applyAsDouble(copy) <= 0) {
                return;
            }
        }
    }

    /** Half pitches of the mean gap to begin with. */
    private int widest(double wide) {
        return Math.max(2 * part.site.spacingPitches(), (int) Math.floor(2 * Math.min(wide + 0.1, 12)));
    }

    private void judge(Strand strand) {
        longest = Math.max(longest, metres(strand));
        if (missing.applyAsDouble(strand) > 0) {
            tooShort.add(strand);
            return;
        }
        Resting exact = Resting.of(floor, part, laid, strand, returns, targetMetres);
        if (exact != null) {
            found.add(exact);
        }
    }

    /**
     * Takes pieces of a strand up and lays them anew until it is long enough; worse ones are kept at first, as in annealing.
     * It is given up when the gain so far does not promise what is still lacking.
     */
    private void relay(Strand begun, int rounds) {
        Strand now = begun;
        double lacking = missing.applyAsDouble(begun);
        double before = lacking;
        int since = 0;
        for (int round = 0;
                round < rounds && found.isEmpty() && !Thread.currentThread().isInterrupted();
                round++) {
            if (++since == TRIAL) {
                if (lacking > 1 && lacking > 3 * (before - lacking + 0.5) * (rounds - round) / TRIAL) {
                    return;
                }
                since = 0;
                before = lacking;
            }
            Strand next = now.copy();
            if (!ruin(next)) {
                continue;
            }
            int least = part.site.spacingPitches();
            if (random.nextInt(3) == 0) {
                int[] offs = {1, floor.lattice.width, -1, -floor.lattice.width};
                Sliding.gather(next, offs[random.nextInt(4)]);
            }
            growing.grow(next, 2 * least + (random.nextInt(4) == 0 ? 1 : 0), 0.3);
            double left = missing.applyAsDouble(next);
            if (left <= 0) {
                judge(next);
            }
            double heat = 0.2 + 1.8 * (rounds - round) / rounds;
            if (left <= lacking - heat * Math.log(1 - random.nextDouble())) {
                now = next;
                lacking = left;
                longest = Math.max(longest, metres(now));
            }
        }
    }

    private boolean ruin(Strand strand) {
        if (random.nextInt(4) == 0) {
            int[] offs = {1, floor.lattice.width, -1, -floor.lattice.width};
            return Sliding.gather(strand, offs[random.nextInt(4)]);
        }
        int free = strand.last() - 1 - strand.first;
        if (free < 4) {
            return false;
        }
        int length = Math.min(free, 10 + random.nextInt(Math.max(20, Math.min(free, 240))));
        int from = strand.first + random.nextInt(Math.max(1, free - length + 1));
        boolean end = !returns && random.nextInt(4) == 0;
        int to = end ? strand.count() : Math.min(strand.last(), from + length);
        if (!end && to >= strand.count()) {
            to = strand.count() - 1;
        }
        if (to - from < 2) {
            return false;
        }
        boolean[] permitted =
                Strand.permitted(floor.lattice, open, strand.spacing, strand.nodes(), from, to, strand.count());
        int direction = ChannelWay.direction(strand.step(Math.max(0, from - 1)), floor.lattice.width);
        int price = new int[] {0, 3, 6, 12}[random.nextInt(4)];
        ways.search(permitted, price, strand.node(from), direction, 2, -1);
        int[] way;
        if (end) {
            List<Integer> goals = growing.goals(permitted);
            if (goals.isEmpty()) {
                return false;
            }
            way = ways.to(goals.get(random.nextInt(goals.size())));
            return way != null && way.length > 1 && strand.replace(from, to, way, way.length);
        }
        int onward = to + 1 < strand.count() ? ChannelWay.direction(strand.step(to), floor.lattice.width) : direction;
        way = to + 1 < strand.count() ? ways.to(strand.node(to), onward) : ways.to(strand.node(to));
        return way != null && way.length >= 1 && strand.replace(from, to, way, way.length - 1);
    }
}
