package org.heatfloor.thermal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiPredicate;

/** Patches of the washroom's floor on a plywood deck for the three-dimensional solver. Lengths in metres. */
final class FloorBlocks {

    /** Rows of cells from below, mm: plywood, then mortar with the axis, 27.2 mm up, in the middle of a row, then tile. */
    private static final double[] LEVELS = {
        0, 3, 6, 9, 12, 14, 16, 18, 19.35, 20.7, 22.5, 24.3, 26.2, 28.2, 29.8, 31.5, 33.3, 34.8, 36.3, 37.8, 39.3, 40.8,
        42.3
    };

    private FloorBlocks() {}

    static BuildUp buildUp() {
        return BuildUp.of(List.of(
                Floors.layer(9, 1.3, false),
                Floors.layer(12.6, 1.0, true),
                Floors.layer(2.7, 1.0, false),
                Floors.layer(18, 0.13, false)));
    }

    static FiniteVolumeBlock block(double width, double height, int nx, int ny, BiPredicate<Double, Double> inside) {
        return new FiniteVolumeBlock(
                even(width, nx),
                even(height, ny),
                Arrays.stream(LEVELS).map(l -> l / 1000).toArray(),
                (x, y, z) -> !inside.test(x, y) ? 0 : z < 0.018 ? 0.13 : z < 0.0333 ? 1.0 : 1.3);
    }

    static int axisRow() {
        for (int i = 0; i + 1 < LEVELS.length; i++) {
            if (Math.abs((LEVELS[i] + LEVELS[i + 1]) / 2 - 27.2) < 1e-9) {
                return i;
            }
        }
        throw new IllegalStateException("no row of cells holds the axis");
    }

    private static double[] even(double length, int cells) {
        double[] lines = new double[cells + 1];
        for (int i = 0; i <= cells; i++) {
            lines[i] = length * i / cells;
        }
        return lines;
    }

    /** Runs along y, joined by half circles. */
    static double[][] serpentine(double x0, double spacing, int runs, double y0, double y1) {
        List<double[]> path = new ArrayList<>();
        double radius = spacing / 2;
        for (int r = 0; r < runs; r++) {
            double x = x0 + r * spacing;
            boolean up = r % 2 == 0;
            path.add(new double[] {x, up ? y0 : y1});
            path.add(new double[] {x, up ? y1 : y0});
            for (int a = 1; a < 16 && r + 1 < runs; a++) {
                double angle = Math.PI * (1 - a / 16.0);
                double bow = radius * Math.sin(angle);
                path.add(new double[] {x + radius + radius * Math.cos(angle), up ? y1 + bow : y0 - bow});
            }
        }
        return path.toArray(new double[0][]);
    }
}
