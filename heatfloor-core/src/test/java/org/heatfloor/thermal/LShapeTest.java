package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What solving an L-shaped room on its bounding rectangle costs. */
class LShapeTest {

    private static final double SIDE = 0.6;
    private static final double NOTCH = 0.3;
    private static final int CELLS = 75;

    private static FiniteVolumeBlock solve(boolean notched) {
        FiniteVolumeBlock block =
                FloorBlocks.block(SIDE, SIDE, CELLS, CELLS, (x, y) -> !notched || x < NOTCH || y < NOTCH);
        for (double[][] path : new double[][][] {
            FloorBlocks.serpentine(0.08, 0.1, 2, 0.13, 0.47), FloorBlocks.serpentine(0.38, 0.1, 2, 0.13, 0.17)
        }) {
            block.path(path, FloorBlocks.axisRow(), 11);
        }
        block.solve((x, y) -> 11, 22, 2, 12);
        return block;
    }

    @Test
    void missingCornerMatters() {
        FiniteVolumeBlock real = solve(true);
        FiniteVolumeBlock rectangle = solve(false);
        assertThat(worst(real, rectangle, 0)).isBetween(-1.2, -1.0);
        assertThat(worst(real, rectangle, 0.05)).isBetween(-0.4, -0.3);
        assertThat(worst(real, rectangle, 0.1)).isBetween(-0.15, -0.1);
        assertThat(worst(real, rectangle, 0.2)).isBetween(-0.02, 0.0);
    }

    /** By how much the rectangle is too cool at most, at least so far from the walls of the missing corner. */
    private static double worst(FiniteVolumeBlock real, FiniteVolumeBlock rectangle, double distance) {
        double worst = 0;
        for (int i = 0; i < CELLS; i++) {
            for (int j = 0; j < CELLS; j++) {
                double x = FiniteVolumes.mid(real.x, i);
                double y = FiniteVolumes.mid(real.y, j);
                double away = Math.hypot(Math.max(0, NOTCH - x), Math.max(0, NOTCH - y));
                if ((x < NOTCH || y < NOTCH) && away >= distance) {
                    double difference = rectangle.surface(i, j, 11, 22) - real.surface(i, j, 11, 22);
                    assertThat(difference).isLessThan(0.001);
                    worst = Math.min(worst, difference);
                }
            }
        }
        return worst;
    }
}
