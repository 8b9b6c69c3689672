package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.heatfloor.takeoff.TileGrid.Laid;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * Sets a tile grid out: tries a tile and a joint in the middle of the field's runs, for offset rows and where slivers are left
 * further shifts, and keeps the one with the fewest slivers, then the fewest cuts under half a tile, then the fewest tiles, then the fewest cuts.
 */
final class LayoutSearch {

    /** Work budget: tiles laid over all trials. */
    private static final int MOST_TILES_TRIED = 40_000;

    private static final int MOST_RUNS = 4;
    private static final int SHIFTS = 12;
    private static final double SAME_METRES = 1e-5;

    /** A layout tried and what speaks against it. */
    record Trial(
            double x0, double y0, List<Laid> laid, int slivers, int shortCuts, int tiles, int cuts, double narrowest) {}

    static final Comparator<Trial> BEST = Comparator.comparingInt(Trial::slivers)
            .thenComparingInt(Trial::shortCuts)
            .thenComparingInt(Trial::tiles)
            .thenComparingInt(Trial::cuts)
            .thenComparingDouble(t -> -t.narrowest());

    private LayoutSearch() {}

    /** The best centred layout, or where that leaves slivers the best of shifts both ways: columns stand where they like. */
    static Trial balanced(TileGrid grid) {
        Trial centred = best(grid, columns(grid), rows(grid));
        return centred.slivers == 0
                ? centred
                : best(grid, shifts(centred.x0, grid.columnStep()), shifts(centred.y0, grid.rowStep()));
    }

    private static List<Double> shifts(double from, double step) {
        List<Double> shifts = new ArrayList<>();
        for (int i = 0; i < SHIFTS; i++) {
            shifts.add(from + i * step / SHIFTS);
        }
        return shifts;
    }

    /** The best layout over the given corners; with a single one nothing is weighed. */
    static Trial best(TileGrid grid, List<Double> xs, List<Double> ys) {
        int budget = MOST_TILES_TRIED;
        Trial best = null;
        for (double x : xs) {
            for (double y : ys) {
                if (best != null && budget < best.laid.size()) {
                    return best;
                }
                Trial trial = trial(grid, x, y);
                budget -= trial.laid.size();
                if (best == null || BEST.compare(trial, best) < 0) {
                    best = trial;
                }
            }
        }
        if (best == null) {
            throw new IllegalStateException("no layout was tried");
        }
        return best;
    }

    /** Corners along x: centred on each run, further shifts for offset rows. */
    static List<Double> columns(TileGrid grid) {
        List<Double> centred = centred(runs(grid.field(), true), grid.length(), grid.columnStep());
        if (!grid.pattern().isOffset()) {
            return centred;
        }
        List<Double> shifts = new ArrayList<>(centred);
        shifts.addAll(shifts(centred.get(0), grid.columnStep()));
        return distinct(shifts, grid.columnStep());
    }

    /** Corners along y: centred on each run. */
    static List<Double> rows(TileGrid grid) {
        return centred(runs(grid.field(), false), grid.width(), grid.rowStep());
    }

    /** A tile, then a joint, in the middle. */
    static List<Double> around(double middle, double side, double step) {
        return distinct(List.of(middle - side / 2, middle - side / 2 + step / 2), step);
    }

    private static List<Double> centred(List<double[]> runs, double side, double step) {
        List<Double> corners = new ArrayList<>();
        for (double[] run : runs) {
            corners.addAll(around((run[0] + run[1]) / 2, side, step));
        }
        return distinct(corners, step);
    }

    private static List<Double> distinct(List<Double> corners, double step) {
        List<Double> kept = new ArrayList<>();
        for (double c : corners) {
            boolean seen = kept.stream().anyMatch(k -> {
                double turns = (c - k) / step;
                return Math.abs(turns - Math.rint(turns)) * step < SAME_METRES;
            });
            if (!seen) {
                kept.add(c);
            }
        }
        return kept;
    }

    /** The whole extent and the longest distances between edges that lie square to the axis. */
    private static List<double[]> runs(List<Polygon> field, boolean alongX) {
        List<double[]> runs = new ArrayList<>();
        for (Polygon part : field) {
            Envelope e = part.getEnvelopeInternal();
            runs.add(alongX ? new double[] {e.getMinX(), e.getMaxX()} : new double[] {e.getMinY(), e.getMaxY()});
        }
        List<double[]> between = new ArrayList<>();
        for (Polygon part : field) {
            List<Double> at = edges(part, alongX);
            for (int i = 0; i < at.size() && i < 2 * MOST_RUNS; i++) {
                for (int k = i + 1; k < at.size() && k < 2 * MOST_RUNS; k++) {
                    between.add(new double[] {at.get(i), at.get(k)});
                }
            }
        }
        between.sort(Comparator.comparingDouble(r -> r[0] - r[1]));
        runs.addAll(between.subList(0, Math.min(MOST_RUNS, between.size())));
        return runs;
    }

    private static List<Double> edges(Polygon part, boolean alongX) {
        Set<Double> at = new TreeSet<>();
        Coordinate[] ring = part.getExteriorRing().getCoordinates();
        for (int i = 1; i < ring.length; i++) {
            double a = alongX ? ring[i - 1].x : ring[i - 1].y;
            double b = alongX ? ring[i].x : ring[i].y;
            if (Math.abs(a - b) < SAME_METRES) {
                at.add(a);
            }
        }
        return List.copyOf(at);
    }

    private static Trial trial(TileGrid grid, double x0, double y0) {
        List<Laid> laid = grid.lay(x0, y0);
        int slivers = 0;
        int shortCuts = 0;
        int cuts = 0;
        double narrowest = 1;
        for (Laid piece : laid) {
            if (!piece.whole()) {
                double share = share(grid, piece);
                cuts++;
                narrowest = Math.min(narrowest, share);
                slivers += share < TileLayout.SLIVER_SHARE - 1e-4 ? 1 : 0;
                shortCuts += share < 0.5 - 1e-4 ? 1 : 0;
            }
        }
        int tiles = laid.stream()
                .map(p -> List.of(p.row(), p.column()))
                .collect(Collectors.toSet())
                .size();
        return new Trial(x0, y0, laid, slivers, shortCuts, tiles, cuts, narrowest);
    }

    /** The smaller of a piece's extents as a share of the tile's. */
    static double share(TileGrid grid, Laid piece) {
        Envelope e = piece.shape().getEnvelopeInternal();
        return Math.min(e.getWidth() / grid.length(), e.getHeight() / grid.width());
    }
}
