package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/** The search for one exact route: starts, local moves, cutting open, exact tuning; counted work only. */
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

    /** Length over that of the longest route found up to which a longer one is worth another search. */
    private static final double NEARLY = 1.05;
    /** Share of the capacity that such a search asks for. */
    private static final double FULLEST = 1 - 1e-6;

    private final Part part;
    private final boolean returns;
    private final double lengthMetres;
    private final Effort effort;
    private final long seed;
    private final SplittableRandom random;
    private final CostOrder order;
    private final Lengthening lengthening;
    private double longest;

    Search(Part part, boolean returns, double lengthMetres, Effort effort, long seed) {
        this.part = part;
        this.returns = returns;
        this.lengthMetres = lengthMetres;
        this.effort = effort;
        this.seed = seed;
        random = new SplittableRandom(seed);
        order = new CostOrder(part);
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
        Starts starts = new Starts(part, returns, lengthMetres, PRICE);
        List<Walk> loops = starts.nearEven(0.74, 1.2, 0.95);
        if (lengthMetres > FULL * capacity) {
            loops.addAll(starts.densest());
        }
        List<Walk> promising = starts.opened(loops, OPENED * effort.starts, OPENED_ON_GRID);
        Candidate best = improved(promising, effort.starts, (tight ? 3 : 1) * effort.steps);
        if (best != null) {
            return best;
        }
        // Few patterns were near the even spacing, or none is long enough: others are tried, and longer.
        starts = new Starts(part, returns, lengthMetres, tight ? TIGHT_PRICE : PRICE);
        loops = tight ? starts.densest() : starts.nearEven(0.5, 1.45, 0.7);
        List<Walk> all = starts.opened(loops, Integer.MAX_VALUE, Integer.MAX_VALUE);
        best = improved(all, 2 * effort.starts, 6 * effort.steps);
        if (best != null) {
            return best;
        }
        if (part.wanted == null) {
            best = lengthening.run(effort.rounds, random);
            longest = lengthening.longestMetres();
            boolean longerMayBe = lengthMetres < NEARLY * longest
                    && lengthMetres < FULLEST * capacity
                    && !Thread.currentThread().isInterrupted();
            return best == null && longerMayBe ? shortened(FULLEST * capacity) : best;
        }
        // A zone wanted warmer never costs the route.
        Search even = new Search(part.even(), returns, lengthMetres, effort, seed);
        best = even.run();
        longest = even.longest;
        return best;
    }

    /** A route sought for the longest cable that the floor may hold, shortened: such a search may end on a longer one. */
    private @Nullable Candidate shortened(double longestMetres) {
        Search longer = new Search(part, returns, longestMetres, effort, seed);
        Candidate full = longer.run();
        List<LatticePath> paths = full == null ? longer.lengthening.lengthened() : List.of(full.path);
        for (LatticePath path : paths) {
            Candidate exact = Candidate.of(part, path, returns, lengthMetres, random);
            if (exact != null) {
                return exact;
            }
        }
        // The longest that is told lies below the cable: a longer one that cannot be made exact is no answer.
        longest = longer.longest < lengthMetres ? Math.max(longest, longer.longest) : longest;
        return null;
    }

    /** The most promising patterns are annealed in three rounds, fewer and longer each time. */
    private @Nullable Candidate improved(List<Walk> opened, int most, int steps) {
        List<Walk> chosen = new ArrayList<>();
        List<Walk> rest = new ArrayList<>();
        Map<Walk.Family, Integer> alike = new HashMap<>();
        for (Walk walk : order.cheapestFirst(opened)) {
            boolean taken = chosen.size() < most && alike.getOrDefault(walk.family(), 0) < SAME_GRID;
            (taken ? chosen : rest).add(walk);
            alike.merge(walk.family(), 1, Integer::sum);
        }
        for (int round = 0; round < ROUNDS.length; round++) {
            int going = Math.min(chosen.size(), most / ROUNDS[round]);
            for (int n = 0; n < going && !Thread.currentThread().isInterrupted(); n++) {
                double hot = HOT[round] + (round == 0 ? n % 2 : 0);
                Annealing.run(chosen.get(n), steps * LONGER[round], random.split(), hot, COLD);
            }
            chosen = order.cheapestFirst(chosen);
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
}
