package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.BiFunction;

/**
 * Sets of lattice lines for a wanted spacing: the first and the last free line of each axis, so that rows lie along both
 * walls, and evenly spread lines between, no two nearer than the least gap.
 */
final class LineSets {

    /** Sets of one axis that are worth their work. */
    private static final int MOST = 12;

    private LineSets() {}

    /**
     * Line sets of one axis whose mean gap lies between two bounds.
     *
     * @param first first free line
     * @param last last free line
     * @param leastGap least gap, in pitches
     * @param low least mean gap wanted
     * @param high greatest mean gap wanted
     * @param forced lines worth keeping, between first and last; may be empty
     */
    static List<int[]> of(int first, int last, int leastGap, double low, double high, int[] forced) {
        List<int[]> out = new ArrayList<>();
        int span = last - first;
        if (span < leastGap) {
            return out;
        }
        int most = span / leastGap;
        int from = Math.max(1, (int) Math.floor(span / high));
        int to = Math.min(most, (int) Math.ceil(span / low));
        for (int gaps = Math.min(from, most); gaps <= to; gaps++) {
            out.add(spread(first, last, gaps));
        }
        if (forced.length > 0) {
            for (double gap = Math.max(leastGap, low); gap <= high + 1e-9; gap += 0.5) {
                int[] lines = through(first, last, leastGap, gap, forced);
                if (lines.length > 0 && out.stream().noneMatch(l -> Arrays.equals(l, lines))) {
                    out.add(lines);
                }
            }
        }
        return thinned(out, MOST);
    }

    /** So many of the sets at most, evenly chosen. */
    static List<int[]> thinned(List<int[]> sets, int most) {
        if (sets.size() <= most) {
            return sets;
        }
        List<int[]> out = new ArrayList<>();
        for (int n = 0; n < most; n++) {
            out.add(sets.get((int) Math.round((double) n * (sets.size() - 1) / (most - 1))));
        }
        return out;
    }

    private static int[] spread(int first, int last, int gaps) {
        int[] lines = new int[gaps + 1];
        for (int g = 0; g <= gaps; g++) {
            lines[g] = first + (int) Math.round((double) (last - first) * g / gaps);
        }
        return lines;
    }

    /**
     * Line sets of one axis whose gaps follow a density: the lines lie at equal steps of the density summed up.
     *
     * @param first first free line
     * @param last last free line
     * @param leastGap least gap, in pitches
     * @param mostGap greatest gap, in pitches
     * @param density lines wanted per pitch at each line from the first to the last
     * @param closest least mean gap over the one wanted
     * @param widest greatest mean gap over the one wanted
     * @param forced lines worth keeping, between first and last; may be empty
     */
    static List<int[]> warped(
            int first,
            int last,
            int leastGap,
            int mostGap,
            double[] density,
            double closest,
            double widest,
            int[] forced) {
        List<int[]> out = new ArrayList<>();
        if (last - first < leastGap) {
            return out;
        }
        double wanted = sum(density, 0, last - first);
        SortedSet<Integer> posts = posts(first, last, leastGap, forced);
        int to = (int) Math.ceil(wanted / closest);
        for (int gaps = Math.max(1, (int) Math.floor(wanted / widest)); gaps <= to; gaps++) {
            double factor = gaps / wanted;
            for (SortedSet<Integer> kept : List.of(new TreeSet<>(List.of(first, last)), posts)) {
                int[] lines = between(kept, (a, b) -> stepped(a, b, leastGap, mostGap, density, first, factor));
                if (out.stream().noneMatch(l -> Arrays.equals(l, lines))) {
                    out.add(lines);
                }
            }
        }
        return out;
    }

    private static int[] stepped(
            int from, int to, int leastGap, int mostGap, double[] density, int first, double factor) {
        double total = sum(density, from - first, to - first);
        int span = to - from;
        int most = span / leastGap;
        int least = Math.min(most, (span + mostGap - 1) / mostGap);
        int gaps = Math.max(1, Math.max(least, Math.min(most, (int) Math.round(total * factor))));
        int[] lines = new int[gaps + 1];
        lines[0] = from;
        double reached = 0;
        int line = from;
        for (int g = 1; g <= gaps; g++) {
            double step = total * g / gaps;
            while (line < to && reached + sum(density, line - first, line + 1 - first) <= step + 1e-9) {
                reached += sum(density, line - first, line + 1 - first);
                line++;
            }
            double part = line < to ? (step - reached) / sum(density, line - first, line + 1 - first) : 0;
            int low = Math.max(lines[g - 1] + leastGap, to - (gaps - g) * mostGap);
            int high = Math.min(lines[g - 1] + mostGap, to - (gaps - g) * leastGap);
            lines[g] = Math.max(low, Math.min(Math.max(low, high), line + (int) Math.round(part)));
        }
        lines[gaps] = to;
        return lines;
    }

    /** The density between two lines summed up, by trapezoids. */
    private static double sum(double[] density, int from, int to) {
        double sum = 0;
        for (int t = from; t < to; t++) {
            sum += (density[t] + density[t + 1]) / 2;
        }
        return sum;
    }

    /**
     * The densest line sets of one axis: every gap the least, what is left of a span in one wider gap at its end, its
     * beginning or its middle. A route that crosses that gap with every run loses none of the span.
     *
     * @param first first free line
     * @param last last free line
     * @param leastGap least gap, in pitches
     * @param forced lines worth keeping, between first and last; may be empty
     */
    static List<int[]> dense(int first, int last, int leastGap, int[] forced) {
        List<int[]> out = new ArrayList<>();
        if (last - first < leastGap) {
            return out;
        }
        for (int[] kept : List.of(new int[0], forced)) {
            SortedSet<Integer> posts = posts(first, last, leastGap, kept);
            for (double place : new double[] {1, 0, 0.5}) {
                int[] lines = between(posts, (from, to) -> packed(from, to, leastGap, place));
                if (out.stream().noneMatch(l -> Arrays.equals(l, lines))) {
                    out.add(lines);
                }
            }
        }
        return out;
    }

    private static int[] packed(int from, int to, int leastGap, double place) {
        int gaps = (to - from) / leastGap;
        int before = (int) Math.round(place * (gaps - 1));
        int[] lines = new int[gaps + 1];
        for (int g = 0; g <= gaps; g++) {
            lines[g] = g <= before ? from + g * leastGap : to - (gaps - g) * leastGap;
        }
        return lines;
    }

    private static int[] through(int first, int last, int leastGap, double gap, int[] forced) {
        return between(posts(first, last, leastGap, forced), (from, to) -> {
            int span = to - from;
            return spread(from, to, Math.max(1, Math.min(span / leastGap, (int) Math.round(span / gap))));
        });
    }

    /** The first and the last line and those of the forced ones that keep the least gap. */
    private static SortedSet<Integer> posts(int first, int last, int leastGap, int[] forced) {
        TreeSet<Integer> posts = new TreeSet<>(List.of(first, last));
        for (int line : forced) {
            Integer below = posts.floor(line);
            Integer above = posts.ceiling(line);
            if (below != null && above != null && line - below >= leastGap && above - line >= leastGap) {
                posts.add(line);
            }
        }
        return posts;
    }

    private static int[] between(SortedSet<Integer> posts, BiFunction<Integer, Integer, int[]> lay) {
        TreeSet<Integer> lines = new TreeSet<>();
        Integer from = null;
        for (int to : posts) {
            if (from != null) {
                for (int line : lay.apply(from, to)) {
                    lines.add(line);
                }
            }
            from = to;
        }
        return lines.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Columns, or rows, along which the free part has a long straight boundary, longest first and at most six. */
    static int[] boundaries(Lattice lattice, boolean columns) {
        int n = columns ? lattice.width : lattice.height;
        int[] low = new int[n];
        int[] high = new int[n];
        for (int v = 0; v < lattice.free.length; v++) {
            if (!lattice.free[v]) {
                continue;
            }
            int x = v % lattice.width;
            int y = v / lattice.width;
            int line = columns ? x : y;
            low[line] += lattice.free(columns ? x - 1 : x, columns ? y : y - 1) ? 0 : 1;
            high[line] += lattice.free(columns ? x + 1 : x, columns ? y : y + 1) ? 0 : 1;
        }
        int least = Math.max(
                4,
                (columns ? lattice.lastRow() - lattice.firstRow() : lattice.lastColumn() - lattice.firstColumn()) / 5);
        List<Integer> found = new ArrayList<>();
        for (int line = 0; line < n; line++) {
            if (Math.max(low[line], high[line]) >= least) {
                found.add(line);
            }
        }
        found.sort((a, b) -> Math.max(low[b], high[b]) - Math.max(low[a], high[a]));
        return found.stream().limit(6).mapToInt(Integer::intValue).toArray();
    }
}
