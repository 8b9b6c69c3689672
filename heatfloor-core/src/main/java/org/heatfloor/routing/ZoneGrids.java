package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Grids whose gaps follow the spacings wanted: along one axis, along the other, or along both. Lines lie at equal steps of
 * the density summed up along the axis, so that a gap is the spacing wanted there. Warping one axis makes a whole band
 * denser; where both are warped and the rows left and right of a zone run up, those above and below it along, only the
 * zone itself is.
 */
final class ZoneGrids {

    /** Grids on which loops are laid. */
    private static final int TAKEN = 40;
    /** Line sets of each axis that are ranked; of more, evenly chosen ones. */
    private static final int LINE_SETS = 16;
    /** Powers of the density: lines drawn closer than wanted make up for what the edges of a zone take away. */
    private static final double[] STRENGTHS = {1, 1.4, 2};

    private final Wanted wanted;
    private final Lattice lattice;
    private final int leastGap;
    private final double closest;
    private final double widest;

    /**
     * Prepares the line sets.
     *
     * @param leastGap least gap, in pitches
     * @param closest closest mean gap tried, over the one wanted
     * @param widest widest mean gap tried, over the one wanted
     */
    ZoneGrids(Wanted wanted, int leastGap, double closest, double widest) {
        this.wanted = wanted;
        this.lattice = wanted.lattice;
        this.leastGap = leastGap;
        this.closest = closest;
        this.widest = widest;
    }

    /** A grid and what a route on it promises. */
    static final class Ranked {

        final CoarseGrid grid;
        /** For each node whether a run along its row comes nearer to the spacing wanted than one along its column. */
        final boolean[] alongRow;
        /** Price of the cable put in the wrong place and of the length it is off, in turns. */
        final double price;

        private Ranked(CoarseGrid grid, boolean[] alongRow, double price) {
            this.grid = grid;
            this.alongRow = alongRow;
            this.price = price;
        }
    }

    /** The most promising grids for a length, best first. */
    List<Ranked> best(double target) {
        List<Ranked> all = new ArrayList<>();
        List<int[]> rows = lines(false);
        for (int[] xs : lines(true)) {
            for (int[] ys : rows) {
                all.add(ranked(new CoarseGrid(lattice, xs, ys), target));
            }
        }
        all.sort(Comparator.comparingDouble(r -> r.price));
        return all.subList(0, Math.min(TAKEN, all.size()));
    }

    private List<int[]> lines(boolean columns) {
        int first = columns ? lattice.firstColumn() : lattice.firstRow();
        int last = columns ? lattice.lastColumn() : lattice.lastRow();
        int[] forced = LineSets.boundaries(lattice, columns);
        List<int[]> out = new ArrayList<>();
        for (boolean peak : new boolean[] {false, true}) {
            double[] density = density(columns, first, last, peak);
            for (double strength : STRENGTHS) {
                add(
                        out,
                        LineSets.warped(
                                first,
                                last,
                                leastGap,
                                wanted.mostGap,
                                raised(density, strength),
                                closest,
                                widest,
                                forced));
            }
        }
        double[] even = new double[Math.max(0, last - first + 1)];
        Arrays.fill(even, 1 / wanted.even());
        add(out, LineSets.warped(first, last, leastGap, wanted.mostGap, even, closest, widest, forced));
        return LineSets.thinned(out, LINE_SETS);
    }

    private static void add(List<int[]> out, List<int[]> more) {
        for (int[] lines : more) {
            if (out.stream().noneMatch(l -> Arrays.equals(l, lines))) {
                out.add(lines);
            }
        }
    }

    /** Cable per area wanted along one axis: the mean over each line's free junctions, or the greatest. */
    private double[] density(boolean columns, int first, int last, boolean peak) {
        double[] sum = new double[Math.max(0, last - first + 1)];
        int[] count = new int[sum.length];
        for (int v = 0; v < lattice.free.length; v++) {
            if (lattice.free[v]) {
                int line = (columns ? v % lattice.width : v / lattice.width) - first;
                double here = 1 / wanted.at(v);
                sum[line] = peak ? Math.max(sum[line], here) : sum[line] + here;
                count[line]++;
            }
        }
        for (int line = 0; line < sum.length; line++) {
            sum[line] = count[line] == 0 ? 1 / wanted.even() : peak ? sum[line] : sum[line] / count[line];
        }
        return sum;
    }

    /** The density to a power, in the same sum. */
    private static double[] raised(double[] density, double strength) {
        double before = 0;
        double after = 0;
        double[] out = new double[density.length];
        for (int t = 0; t < out.length; t++) {
            out[t] = Math.pow(density[t], strength);
            before += density[t];
            after += out[t];
        }
        for (int t = 0; t < out.length; t++) {
            out[t] *= before / after;
        }
        return out;
    }

    private Ranked ranked(CoarseGrid grid, double target) {
        double[][] lengths = new double[3][wanted.areas.length];
        double[] totals = new double[3];
        boolean[] alongRow = new boolean[grid.edges.length];
        for (int v = 0; v < alongRow.length; v++) {
            if (grid.edges[v] == 0) {
                continue;
            }
            int x = grid.xs[v % grid.columns];
            int y = grid.ys[v / grid.columns];
            int region = wanted.region[y * lattice.width + x];
            double spacing = wanted.spacings[region];
            double along = half(grid, v, Lattice.EAST) + half(grid, v, Lattice.WEST);
            double up = half(grid, v, Lattice.NORTH) + half(grid, v, Lattice.SOUTH);
            alongRow[v] = off(up, spacing) <= off(along, spacing);
            double[] each = {along, up, alongRow[v] ? along : up};
            for (int way = 0; way < 3; way++) {
                lengths[way][region] += each[way];
                totals[way] += each[way];
            }
        }
        double best = Double.POSITIVE_INFINITY;
        for (int way = 0; way < 3; way++) {
            double share = totals[way] / target;
            double off = share < 0.99 ? 200 * (0.99 - share) : 100 * Math.max(0, share - 1.03);
            best = Math.min(best, off + Candidate.MISPLACED_PRICE * wanted.misplaced(lengths[way]));
        }
        return new Ranked(grid, alongRow, best);
    }

    private static double half(CoarseGrid grid, int v, int bit) {
        return (grid.edges[v] & bit) == 0 ? 0 : grid.length(v, bit) / 2.0;
    }

    private static double off(double gap, double spacing) {
        return Math.abs(Math.log(Math.max(gap, 0.5) / spacing));
    }
}
