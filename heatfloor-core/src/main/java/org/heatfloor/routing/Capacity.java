package org.heatfloor.routing;

import java.util.Arrays;

/**
 * The longest cable that can lie on a piece of floor, proved for every route that keeps the planning rule.
 *
 * <p>A square of the spacing's side k that goes along with a route sweeps one rectangle a run, each without the square it
 * ends in, but for the last run; they are disjoint and lie in the reach, the union of the squares about all junctions. A
 * route of length L sweeps the area k·(L + k), so by area alone L ≤ A/k − k; also for a route that comes back, as its two
 * ends keep the spacing from each other.
 *
 * <p>Turns cost length, and without turns rows are lost. T turns make T + 1 runs, alternately along the rows and along the
 * columns. V runs along the columns meet at most V·k columns of cells of the reach. Every other column is met by runs along
 * the rows only, each of which sweeps exactly k cells of it, side by side: at most as many times k as runs can lie over one
 * another there, and at most once a run. The same holds with rows and columns changed about. The longest over all T, each
 * less the rounding of its turns, is the bound (derived).
 */
final class Capacity {

    /** Cells of the reach in each line, a column or a row. */
    private final int[] full;
    /** How many runs across the line can meet it, no two nearer than the spacing. */
    private final int[] crossings;

    private final int k;

    private Capacity(Lattice lattice, int k, boolean columns) {
        this.k = k;
        int lines = (columns ? lattice.width : lattice.height) + k - 1;
        int places = columns ? lattice.height : lattice.width;
        full = new int[lines];
        crossings = new int[lines];
        for (int line = 0; line < lines; line++) {
            int reachedTo = 0;
            int clearFrom = 0;
            for (int place = 0; place < places; place++) {
                if (!meets(lattice, line, place, columns)) {
                    continue;
                }
                full[line] += place + k - Math.max(place, reachedTo);
                reachedTo = place + k;
                if (place >= clearFrom) {
                    crossings[line]++;
                    clearFrom = place + k;
                }
            }
        }
    }

    /** Whether the square about some junction at a place along a line meets the line. */
    private boolean meets(Lattice lattice, int line, int place, boolean columns) {
        for (int side = line - k + 1; side <= line; side++) {
            if (columns ? lattice.free(side, place) : lattice.free(place, side)) {
                return true;
            }
        }
        return false;
    }

    /** The most cells that some runs along the lines and some across them can sweep. */
    private double swept(int along, int across) {
        int[] gains = new int[full.length];
        double sum = 0;
        for (int line = 0; line < gains.length; line++) {
            int crossed = k * Math.min(crossings[line], across);
            sum += crossed;
            gains[line] = full[line] - crossed;
        }
        Arrays.sort(gains);
        for (int n = 0; n < Math.min(gains.length, along * k); n++) {
            sum += gains[gains.length - 1 - n];
        }
        return sum;
    }

    /**
     * The longest cable, in metres.
     *
     * @param site the site
     * @param lattice the piece of floor
     * @param area of its reach, in pitch²
     */
    static double metres(RouteSite site, Lattice lattice, double area) {
        double spacing = site.minSpacing / site.pitch;
        double turn = Part.CORNER * site.bendRadius / site.pitch;
        return site.pitch * pitches(lattice, site.spacingPitches(), area / spacing - spacing, turn);
    }

    /**
     * The longest cable, in pitches.
     *
     * @param lattice the piece of floor
     * @param k least spacing
     * @param most bound by area alone
     * @param turnPitches what the rounding of a turn takes
     */
    static double pitches(Lattice lattice, int k, double most, double turnPitches) {
        Capacity columns = new Capacity(lattice, k, true);
        Capacity rows = new Capacity(lattice, k, false);
        // More turns never reach less: the fewest that reach the most, and then fewer as long as they can be better.
        int fewest = 0;
        int enough = 2 * (Math.max(lattice.width, lattice.height) / k + 2);
        while (fewest < enough) {
            int middle = (fewest + enough) / 2;
            if (reached(columns, rows, middle) >= most) {
                enough = middle;
            } else {
                fewest = middle + 1;
            }
        }
        double best = 0;
        for (int turns = enough; turns >= 0; turns--) {
            double reached = Math.min(most, reached(columns, rows, turns));
            if (reached <= best) {
                break;
            }
            best = Math.max(best, reached - turnPitches * turns);
        }
        return best;
    }

    /** The longest route that some turns allow, its corners square, in pitches. */
    private static double reached(Capacity columns, Capacity rows, int turns) {
        int more = turns / 2 + 1;
        int fewer = turns + 1 - more;
        double cells = Math.max(
                Math.min(columns.swept(more, fewer), rows.swept(fewer, more)),
                Math.min(columns.swept(fewer, more), rows.swept(more, fewer)));
        return cells / columns.k - columns.k;
    }
}
