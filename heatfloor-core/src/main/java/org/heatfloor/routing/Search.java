package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The search for one exact route: line sets, loops round trees, local moves, cutting open, exact tuning; counted work only. */
final class Search {

    /** How many loops are opened for each one that is improved, at first. */
    private static final int OPENED = 5;
    /** Of them on the same lines, teeth and rings each. */
    private static final int OPENED_ON_GRID = 6;
    /** Teeth improved on the same lines, and rings. */
    private static final int SAME_GRID = 3;
    /** The share of the patterns that each round of annealing takes on, and how much longer it is. */
    private static final int[] ROUNDS = {1, 3, 10};

    private static final int[] LONGER = {1, 3, 10};
    /** Temperature at which each round begins, in turns; every second pattern of the first begins one hotter. */
    private static final double[] HOT = {1, 1, 1.5};

    private static final double COLD = 0.15;
    /** Routes brought to the exact length and compared. */
    private static final int FINISHED = 24;
    /** Price of a pitch of length too much or too little while annealing, in turns. */
    private static final double PRICE = 0.35;
    /** The same where the room is nearly full. */
    private static final double TIGHT_PRICE = 1;
    /** Share of the capacity from which the densest lines are tried as well. */
    private static final double FULL = 0.85;
    /** Share from which only they can be enough, and three times the work is spent. */
    private static final double TIGHT = 0.9;
    /** Length too much that trimming takes care of, in pitches. */
    private static final double SLACK = 8;

    /** Loops on the same lines, all of teeth or all of rings. */
    private record Family(CoarseGrid grid, boolean rings) {

        static Family of(Walk walk) {
            return new Family(walk.grid, walk.rings);
        }
    }

    private record Priced(Walk walk, double cost) {}

    private final Part part;
    private final boolean returns;
    private final double lengthMetres;
    private final Effort effort;
    private final long seed;
    private final SplittableRandom random;
    private double price = PRICE;
    private final Lengthening lengthening;
    private double longest;

    Search(Part part, boolean returns, double lengthMetres, Effort effort, long seed) {
        this.part = part;
        this.returns = returns;
        this.lengthMetres = lengthMetres;
        this.effort = effort;
        this.seed = seed;
        random = new SplittableRandom(seed);
        lengthening = new Lengthening(part, returns, lengthMetres);
    }

    double longestMetres() {
        return longest;
    }

    /** The best exact route found, or null. */
    @Nullable
    Candidate run() {
        double capacity = part.capacityMetres();
        boolean tight = lengthMetres > TIGHT * capacity;
        List<Walk> starts = starts(0.74, 1.2, 0.95);
        if (lengthMetres > FULL * capacity) {
            starts.addAll(densest());
        }
        List<Walk> promising = opened(starts, OPENED * effort.starts, OPENED_ON_GRID);
        Candidate best = improved(promising, effort.starts, (tight ? 3 : 1) * effort.steps);
        if (best != null) {
            return best;
        }
        // Few patterns were near the even spacing, or none is long enough: others are tried, and longer.
        price = tight ? TIGHT_PRICE : PRICE;
        List<Walk> others = opened(tight ? densest() : starts(0.5, 1.45, 0.7), Integer.MAX_VALUE, Integer.MAX_VALUE);
        best = improved(others, 2 * effort.starts, 6 * effort.steps);
        if (best != null) {
            return best;
        }
        if (part.wanted == null) {
            best = lengthening.run(effort.rounds, random);
            longest = lengthening.longestMetres();
            return best;
        }
        // A zone wanted warmer never costs the route.
        Search even = new Search(part.even(), returns, lengthMetres, effort, seed);
        best = even.run();
        longest = even.longest;
        return best;
    }

    /** The most promising patterns are annealed in three rounds, fewer and longer each time. */
    private @Nullable Candidate improved(List<Walk> opened, int most, int steps) {
        List<Walk> chosen = new ArrayList<>();
        List<Walk> rest = new ArrayList<>();
        Map<Family, Integer> alike = new HashMap<>();
        for (Walk walk : cheapestFirst(opened)) {
            boolean taken = chosen.size() < most && alike.getOrDefault(Family.of(walk), 0) < SAME_GRID;
            (taken ? chosen : rest).add(walk);
            alike.merge(Family.of(walk), 1, Integer::sum);
        }
        for (int round = 0; round < ROUNDS.length; round++) {
            int going = Math.min(chosen.size(), most / ROUNDS[round]);
            for (int n = 0; n < going && !Thread.currentThread().isInterrupted(); n++) {
                double hot = HOT[round] + (round == 0 ? n % 2 : 0);
                Annealing.run(chosen.get(n), steps * LONGER[round], random.split(), hot, COLD);
            }
            chosen = cheapestFirst(chosen);
        }
        @Nullable Candidate best = null;
        chosen.addAll(rest);
        for (int n = 0; n < chosen.size() && (n < FINISHED || best == null); n++) {
            if (Thread.currentThread().isInterrupted()) {
                break;
            }
            best = better(best, finish(chosen.get(n)));
        }
        return best;
    }

    /** Of all loops the most promising ones that can be opened; they are filled where too short. */
    private List<Walk> opened(List<Walk> loops, int most, int mostAlike) {
        List<Walk> opened = new ArrayList<>();
        Map<Family, Integer> alike = new HashMap<>();
        for (Walk walk : sorted(loops, Walk::promise)) {
            if (opened.size() == most) {
                break;
            }
            if (alike.getOrDefault(Family.of(walk), 0) < mostAlike && gate(walk)) {
                alike.merge(Family.of(walk), 1, Integer::sum);
                walk.fill();
                opened.add(walk);
            }
        }
        return opened;
    }

    private List<Walk> cheapestFirst(List<Walk> walks) {
        return sorted(walks, Walk::cost);
    }

    /** Cheapest first; where zones are wanted warmer, with the price of the cable that lies in the wrong place. */
    private List<Walk> sorted(List<Walk> walks, ToDoubleFunction<Walk> cost) {
        return walks.stream()
                .map(walk -> new Priced(walk, cost.applyAsDouble(walk) + misplacedPrice(walk)))
                .sorted(Comparator.comparingDouble(Priced::cost))
                .map(Priced::walk)
                .collect(Collectors.toCollection(ArrayList::new));
    }

    private double misplacedPrice(Walk walk) {
        Wanted wanted = part.wanted;
        return wanted == null ? 0 : Candidate.MISPLACED_PRICE * wanted.misplaced(walk.lengths(wanted));
    }

    private static @Nullable Candidate better(@Nullable Candidate a, @Nullable Candidate b) {
        return b == null || (a != null && a.cost() <= b.cost()) ? a : b;
    }

    private @Nullable Candidate finish(Walk walk) {
        Walk open = new Walk(walk);
        if (open.closed()) {
            open.cut(open.lockedA(), open.bitBetween(open.lockedA(), open.lockedB()));
        }
        LatticePath path =
                LatticePath.of(part.lattice, part.site.spacingPitches(), part.site.leastRun(), open.grid, open.nodes());
        Candidate made = Candidate.of(part, path, returns, lengthMetres, random);
        if (made == null) {
            lengthening.keep(path);
        }
        return made;
    }

    /** A figure without the last digits, so that the same room in other units gives the same route. */
    private static double steady(double figure) {
        return Math.rint(figure * 1e6) / 1e6;
    }

    /** Length an open route should have, in pitches, with one joint after a bend. */
    private double target() {
        return steady(
                (lengthMetres + (part.site.jointLength + part.site.bendRadius) * (returns ? 2 : 1)) / part.site.pitch);
    }

    /** The target with what the chosen opening of the loop really takes. */
    private double target(Walk walk, int node, int bit) {
        int other = walk.grid.step(node, bit);
        double metres = lengthMetres + entry(walk, node, bit);
        double gate = 0;
        if (returns) {
            metres += entry(walk, other, CoarseGrid.opposite(bit));
            gate = walk.grid.length(node, bit);
        }
        return steady(metres / part.site.pitch) + gate;
    }

    private double entry(Walk walk, int node, int bit) {
        int left = walk.used[node] & ~bit;
        boolean straight =
                part.waysAt.get(latticeNode(walk.grid, node)).stream().anyMatch(w -> w.bit() == left);
        return part.site.jointLength + (straight ? 0 : part.site.bendRadius);
    }

    private int latticeNode(CoarseGrid grid, int node) {
        return grid.ys[node / grid.columns] * part.lattice.width + grid.xs[node % grid.columns];
    }

    private List<Walk> starts(double closest, double widest, double leastShare) {
        Lattice lattice = part.lattice;
        Wanted wanted = part.wanted;
        if (wanted != null) {
            List<Walk> walks = new ArrayList<>();
            for (ZoneGrids.Ranked ranked : new ZoneGrids(wanted, part.leastGap(), closest, widest).best(target())) {
                loops(ranked.grid, walks, target(), ranked.alongRow);
            }
            return walks;
        }
        double even = steady(part.area / (lengthMetres / part.site.pitch));
        int least = part.leastGap();
        double low = Math.max(least, closest * even);
        double high = Math.max(least + 1, widest * even);
        List<int[]> columns = LineSets.of(
                lattice.firstColumn(), lattice.lastColumn(), least, low, high, LineSets.boundaries(lattice, true));
        List<int[]> rows = LineSets.of(
                lattice.firstRow(), lattice.lastRow(), least, low, high, LineSets.boundaries(lattice, false));
        double target = target();
        List<Walk> walks = new ArrayList<>();
        for (int[] xs : columns) {
            for (int[] ys : rows) {
                CoarseGrid grid = new CoarseGrid(lattice, xs, ys);
                double gx = mean(xs);
                double gy = mean(ys);
                if (grid.nodes * Math.max(gx, gy) < leastShare * target
                        || grid.nodes * Math.min(gx, gy) > 1.3 * target) {
                    continue;
                }
                loops(grid, walks, target);
            }
        }
        return walks;
    }

    /** Loops on the densest lines, for a room that the cable nearly fills. */
    private List<Walk> densest() {
        Lattice lattice = part.lattice;
        int least = part.leastGap();
        List<int[]> rows =
                LineSets.dense(lattice.firstRow(), lattice.lastRow(), least, LineSets.boundaries(lattice, false));
        List<Walk> walks = new ArrayList<>();
        for (int[] xs : LineSets.dense(
                lattice.firstColumn(), lattice.lastColumn(), least, LineSets.boundaries(lattice, true))) {
            for (int[] ys : rows) {
                loops(new CoarseGrid(lattice, xs, ys), walks, target());
            }
        }
        return walks;
    }

    private void loops(CoarseGrid grid, List<Walk> walks, double target) {
        loops(grid, walks, target, null);
    }

    private void loops(CoarseGrid grid, List<Walk> walks, double target, boolean @Nullable [] alongRow) {
        boolean[] mayStart = mayStart(grid);
        Aim aim = new Aim(target, rounding(), SLACK, price, Candidate.COLD_PRICE / Math.max(1, grid.squares.length));
        for (int offsets = 0; offsets < 4; offsets++) {
            TreeLoops trees = new TreeLoops(grid, offsets & 1, offsets >> 1);
            for (byte[] used : trees.teeth(alongRow)) {
                add(new Walk(grid, used, mayStart, false), aim, walks);
            }
            for (byte[] used : trees.rings()) {
                add(new Walk(grid, used, mayStart, true), aim, walks);
            }
        }
    }

    private void add(Walk walk, Aim aim, List<Walk> walks) {
        walk.aim(aim);
        if (walk.length > 0) {
            walks.add(walk);
        }
    }

    private static double mean(int[] lines) {
        return (double) (lines[lines.length - 1] - lines[0]) / Math.max(1, lines.length - 1);
    }

    private boolean[] mayStart(CoarseGrid grid) {
        boolean[] out = new boolean[grid.edges.length];
        for (int v = 0; v < out.length; v++) {
            out[v] = part.starts[latticeNode(grid, v)];
        }
        return out;
    }

    /** Opens the loop where a cold lead reaches it and most turns go; locks the place for a cable that comes back. */
    private boolean gate(Walk walk) {
        boolean[] mayStart = walk.mayStart;
        int bestNode = -1;
        int bestBit = 0;
        double bestPrice = Double.POSITIVE_INFINITY;
        for (int v = 0; v < walk.used.length; v++) {
            if (!mayStart[v]) {
                continue;
            }
            for (int bit = 1; bit <= 8; bit <<= 1) {
                if ((walk.used[v] & bit) == 0) {
                    continue;
                }
                int other = walk.grid.step(v, bit);
                if (returns && !mayStart[other]) {
                    continue;
                }
                double price = price(walk, v, bit) + (returns ? price(walk, other, CoarseGrid.opposite(bit)) : 0);
                if (price < bestPrice) {
                    bestPrice = price;
                    bestNode = v;
                    bestBit = bit;
                }
            }
        }
        if (bestNode < 0) {
            return false;
        }
        walk.aim(walk.aim().withTarget(target(walk, bestNode, bestBit)));
        if (returns) {
            walk.lock(bestNode, walk.grid.step(bestNode, bestBit));
        } else {
            walk.cut(bestNode, bestBit);
        }
        return true;
    }

    /** Length that a rounded corner takes off, in pitches. */
    private double rounding() {
        return steady(Part.CORNER * part.site.bendRadius / part.site.pitch);
    }

    /** Price of starting at a node when the edge along the bit is taken out. */
    private double price(Walk walk, int v, int bit) {
        int left = walk.used[v] & ~bit;
        int node = latticeNode(walk.grid, v);
        double best = 50;
        for (LeadWays.Way way : part.waysAt.get(node)) {
            double entry = way.bit() == left ? 0 : way.bit() == CoarseGrid.opposite(left) ? 50 : 1;
            best = Math.min(best, entry + steady(0.3 * way.lengthMetres()));
        }
        return best - (walk.used[v] == 5 || walk.used[v] == 10 ? 0 : 1);
    }
}
