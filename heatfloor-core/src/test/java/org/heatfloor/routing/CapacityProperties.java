package org.heatfloor.routing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** The bound of the length against every route there is on small floors, and against the bound by area alone. */
class CapacityProperties {

    private static final int ROUTES_AT_MOST = 3_000_000;

    /** Every route from every junction, one step at a time, that keeps the planning rule. */
    private static final class EveryRoute {
        private final Lattice lattice;
        private final int k;
        private final double turn;
        private final int[] nodes;
        private double longest;
        private int routes;

        EveryRoute(Lattice lattice, int k, double turn) {
            this.lattice = lattice;
            this.k = k;
            this.turn = turn;
            nodes = new int[lattice.free.length];
            for (int v = 0; v < nodes.length; v++) {
                if (lattice.free[v]) {
                    nodes[0] = v;
                    goOn(1, 0);
                }
            }
        }

        private void goOn(int count, int turns) {
            routes++;
            longest = Math.max(longest, count - 1 - turn * turns);
            int[] steps = {1, lattice.width, -1, -lattice.width};
            for (int d = 0; d < 4; d++) {
                int here = nodes[count - 1];
                if ((lattice.channels[here] & 1 << d) != 0
                        && routes < ROUTES_AT_MOST
                        && keepsRule(count, here + steps[d])) {
                    nodes[count] = here + steps[d];
                    boolean turned = count > 1 && here - nodes[count - 2] != steps[d];
                    goOn(count + 1, turns + (turned ? 1 : 0));
                }
            }
        }

        private boolean keepsRule(int count, int node) {
            for (int i = 0; i < count; i++) {
                int dx = Math.abs(nodes[i] % lattice.width - node % lattice.width);
                int dy = Math.abs(Math.floorDiv(nodes[i], lattice.width) - Math.floorDiv(node, lattice.width));
                if (Math.max(dx, dy) < k && count - i != dx + dy) {
                    return false;
                }
            }
            return true;
        }
    }

    @Property(tries = 150)
    void noRouteIsLongerThanTheBound(
            @ForAll @IntRange(min = 2, max = 7) int columns,
            @ForAll @IntRange(min = 2, max = 6) int rows,
            @ForAll @IntRange(min = 2, max = 4) int spacing,
            @ForAll @DoubleRange(min = 0, max = 0.8) @Scale(2) double turn,
            @ForAll long seed) {
        Lattice lattice = Lattices.withHoles(columns, rows, new SplittableRandom(seed));
        double most = lattice.unionOfSquares(spacing) / spacing - spacing;

        double bound = Capacity.pitches(lattice, spacing, most, turn);

        assertThat(bound).isGreaterThanOrEqualTo(new EveryRoute(lattice, spacing, turn).longest - 1e-9);
        assertThat(bound).isLessThanOrEqualTo(Math.max(0, most) + 1e-9);
    }

    /**
     * 4 × 4 junctions, spacing three: 36 cells, so by area 36/3 − 3 = 9 pitches. Two runs one way and one the other sweep
     * all of them, which takes two turns: three sides of the square are 9 pitches long.
     */
    @Example
    void theBoundIsReachedOnAPlainFloor() {
        Lattice lattice = Lattices.rectangle(4, 4);

        double bound = Capacity.pitches(lattice, 3, 36.0 / 3 - 3, 0.2);

        assertThat(bound).isEqualTo(9 - 2 * 0.2, within(1e-9));
        assertThat(new EveryRoute(lattice, 3, 0.2).longest).isEqualTo(bound, within(1e-9));
    }
}
