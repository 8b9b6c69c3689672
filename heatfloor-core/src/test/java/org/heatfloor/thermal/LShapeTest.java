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
        for (double d : new double[] {0, 0.02, 0.05, 0.1, 0.15, 0.2}) {
            double worst = 0;
            double least = 0;
            for (int i = 0; i < CELLS; i++) {
                for (int j = 0; j < CELLS; j++) {
                    double x = FiniteVolumes.mid(real.x, i);
                    double y = FiniteVolumes.mid(real.y, j);
                    double dx = Math.max(0, NOTCH - x);
                    double dy = Math.max(0, NOTCH - y);
                    if ((x < NOTCH || y < NOTCH) && Math.hypot(dx, dy) >= d) {
                        double diff = rectangle.surface(i, j, 11, 22) - real.surface(i, j, 11, 22);
                        worst = Math.min(worst, diff);
                        least = Math.max(least, diff);
                    }
                }
            }
            System.out.println("LSHAPE beyond " + d + ": " + worst + " " + least);
        }
        assertThat(true).isTrue();
    }
}
