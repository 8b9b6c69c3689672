package org.heatfloor.routing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Laws of a route that is lengthened stretch by stretch, whatever the floor is like. */
class RelayingProperties {

    private static final int KEPT = 6;

    @Property(tries = 40)
    void aRelaidRouteKeepsItsEndsAndTheRuleAndIsNeverShorter(
            @ForAll @IntRange(min = 14, max = 34) int columns,
            @ForAll @IntRange(min = 14, max = 34) int rows,
            @ForAll @IntRange(min = 2, max = 4) int spacing,
            @ForAll @IntRange(min = 1, max = 3) int leastRun,
            @ForAll boolean returns,
            @ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Lattice lattice = Lattices.withHoles(columns, rows, random);
        int[] edge = alongTheEdges(lattice, returns);
        Assume.that(edge.length > 2 * KEPT + 2);
        int keptAtEnd = returns ? KEPT : 0;
        Strand begun = new Strand(lattice, lattice.free, spacing, leastRun, edge, edge.length, KEPT, keptAtEnd);
        Assume.that(begun.sound());
        double turn = 0.2;
        ToDoubleFunction<Strand> missing = s -> 10_000 - s.count() + turn * s.turnsAfter(0);
        ChannelWay ways = new ChannelWay(lattice, leastRun);
        Growing growing = new Growing(lattice, lattice.free, ways, returns, missing, 2 * turn, random);

        Strand longer = new Relaying(growing, ways, returns, missing, random).relaid(begun, 40, s -> false, false);

        assertThat(begun.nodes()).isEqualTo(edge);
        assertThat(longer.sound()).isTrue();
        assertThat(missing.applyAsDouble(longer)).isLessThanOrEqualTo(missing.applyAsDouble(begun));
        assertThat(Arrays.copyOf(longer.nodes(), KEPT + 1)).isEqualTo(Arrays.copyOf(edge, KEPT + 1));
        if (returns) {
            assertThat(Arrays.copyOfRange(longer.nodes(), longer.last(), longer.count()))
                    .isEqualTo(Arrays.copyOfRange(edge, edge.length - KEPT, edge.length));
        }
        LatticePath path = LatticePath.of(lattice, spacing, leastRun, longer.nodes());
        assertThat(path.keepsRule()).isTrue();
        assertThat(path.junctions()).isEqualTo(longer.nodes());
    }

    /** Up the left edge and along the top as far as it is free; and down the right edge if the route is to come back. */
    private static int[] alongTheEdges(Lattice lattice, boolean returns) {
        int w = lattice.width;
        int h = lattice.height;
        int[] out = new int[2 * h + w];
        int n = 0;
        for (int y = 0; y < h; y++) {
            out[n++] = y * w;
        }
        for (int x = 1; x < w; x++) {
            out[n++] = (h - 1) * w + x;
        }
        for (int y = h - 2; returns && y >= 0; y--) {
            out[n++] = y * w + w - 1;
        }
        for (int i = 0; i < n; i++) {
            if (!lattice.free[out[i]]) {
                return new int[0];
            }
        }
        return Arrays.copyOf(out, n);
    }
}
