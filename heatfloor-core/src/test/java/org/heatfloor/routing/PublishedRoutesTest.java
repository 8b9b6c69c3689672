package org.heatfloor.routing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Routes and bounds against results of the literature on grid graphs. */
class PublishedRoutesTest {

    /**
     * A rectangular grid graph of m × n nodes has a Hamiltonian cycle exactly when m·n is even and both are more than one
     * (A. Itai, C. Papadimitriou, J. Szwarcfiter, Hamilton paths in grid graphs, SIAM Journal on Computing 11 (1982)
     * 676–686; from memory). With a spacing of one pitch the bound of a loop is then that cycle's length.
     */
    @ParameterizedTest
    @CsvSource({"4,6", "6,6", "8,3", "10,7", "5,12", "2,9"})
    void theBoundOfALoopIsTheHamiltonianCycleWhereThereIsOne(int columns, int rows) {
        Lattice lattice = Lattices.rectangle(columns, rows);

        assertThat(lattice.unionOfSquares(1) / 1).isEqualTo(columns * rows, within(1e-9));
        assertThat(longestTreeLoop(lattice, columns, rows)).isEqualTo(columns * rows);
    }

    /** The same source: with both counts odd there is none, and the longest loop misses one node. */
    @ParameterizedTest
    @CsvSource({"5,7", "9,3", "7,7"})
    void anOddRectangleHasNoHamiltonianCycle(int columns, int rows) {
        assertThat(longestTreeLoop(Lattices.rectangle(columns, rows), columns, rows))
                .isEqualTo(columns * rows - 1);
    }

    private static int longestTreeLoop(Lattice lattice, int columns, int rows) {
        CoarseGrid grid = new CoarseGrid(lattice, Lattices.lines(columns, 1), Lattices.lines(rows, 1));
        int longest = 0;
        for (int offsets = 0; offsets < 4; offsets++) {
            for (byte[] used : new TreeLoops(grid, offsets & 1, offsets >> 1).teeth(null)) {
                Walk walk = new Walk(grid, used, new boolean[used.length], false);
                if (walk.length > 0) {
                    walk.aim(new Aim(1e6, 0, 0, 1, 0));
                    walk.fill();
                    longest = Math.max(longest, walk.length);
                }
            }
        }
        return longest;
    }

    /**
     * The loop round a spanning tree of N cells of side 2D passes each of the 4N small cells once, so it is 4N·D long (Y.
     * Gabriely, E. Rimon, Spanning-tree based coverage of continuous areas by a mobile robot, Annals of Mathematics and
     * Artificial Intelligence 31 (2001) 77–98; from memory).
     */
    @ParameterizedTest
    @CsvSource({"2,2,3", "3,5,3", "6,4,4", "1,7,5"})
    void theLoopRoundATreePassesEachSmallCellOnce(int across, int up, int gap) {
        Lattice lattice = Lattices.rectangle((2 * across - 1) * gap + 1, (2 * up - 1) * gap + 1);
        CoarseGrid grid = new CoarseGrid(lattice, Lattices.lines(2 * across, gap), Lattices.lines(2 * up, gap));
        TreeLoops trees = new TreeLoops(grid, 0, 0);
        List<byte[]> loops = new ArrayList<>(trees.teeth(null));
        loops.addAll(trees.rings());
        for (byte[] used : loops) {
            Walk walk = new Walk(grid, used, new boolean[grid.edges.length], false);

            assertThat(walk.length).isEqualTo(4 * across * up * gap);
            assertThat(walk.nodes()).doesNotHaveDuplicates().hasSize(4 * across * up);
        }
    }

    /** Bounds of small rectangles, and how near the longest routes known come to them. */
    @ParameterizedTest
    @CsvFileSource(resources = "longest-routes.csv", numLinesToSkip = 1)
    void theCapacityBoundHoldsForTheLongestRoutesKnown(
            int columns,
            int rows,
            int spacing,
            double boundOpen,
            double boundLoop,
            int bestOpen,
            String openProven,
            int bestLoop,
            String loopProven,
            String source) {
        double area = Lattices.rectangle(columns, rows).unionOfSquares(spacing);

        assertThat(area).isEqualTo((columns + spacing - 1) * (rows + spacing - 1), within(1e-9));
        assertThat(area / spacing - spacing).isEqualTo(boundOpen, within(0.05));
        assertThat(area / spacing).isEqualTo(boundLoop, within(0.05));
        assertThat((double) bestOpen).isBetween(boundOpen - 2.05, boundOpen + 0.05);
        assertThat((double) bestLoop).isLessThanOrEqualTo(boundLoop + 0.05);
        assertThat(source).contains("computed by us");
        assertThat(openProven + loopProven).matches("(yes|no)(yes|no)");
    }
}
