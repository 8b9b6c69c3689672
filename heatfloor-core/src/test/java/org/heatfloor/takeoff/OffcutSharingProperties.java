package org.heatfloor.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.heatfloor.takeoff.OffcutPool.Need;
import org.heatfloor.takeoff.OffcutPool.Sharing;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

/** Which cut pieces share a tile, against every partition there is. Tiles are 6 by 4, or 6 by 6, the saw takes nothing. */
class OffcutSharingProperties {

    private static final double LENGTH = 6;

    @Provide
    Arbitrary<List<Need>> needs() {
        return Combinators.combine(
                        Arbitraries.integers().between(1, 5),
                        Arbitraries.integers().between(1, 4),
                        Arbitraries.integers().between(0, 3))
                .as(OffcutSharingProperties::cornerPiece)
                .list()
                .ofMinSize(1)
                .ofMaxSize(6);
    }

    /** A piece that keeps one corner of its tile, as a cut at a wall does. */
    private static Need cornerPiece(int length, int width, int corner) {
        double x = corner % 2 == 0 ? 0 : LENGTH - length;
        double y = corner < 2 ? 0 : 4 - Math.min(width, 4);
        return new Need(List.of(new Envelope(x, x + length, y, y + Math.min(width, 4))));
    }

    @Property(tries = 200)
    void theSharingIsTheLeastThereIs(@ForAll("needs") List<Need> needs, @ForAll boolean turnable) {
        Sharing sharing = OffcutPool.share(needs, LENGTH, 4, 0, turnable);
        int least = fewest(needs, 0, new ArrayList<>(), turnable);
        assertThat(sharing.tiles()).isEqualTo(least);
        assertThat(sharing.bound()).isEqualTo(least);
        assertThat(OffcutPool.bound(needs, LENGTH, 4)).isLessThanOrEqualTo(least);
        assertThat(sharing.tileOf()).hasSameSizeAs(needs);
        assertThat(sharing.tileOf().stream().distinct().count()).isEqualTo(least);
    }

    /** Every assignment of needs to tiles; each tile in every combination of turns, on unit cells, with cuts right across. */
    private static int fewest(List<Need> needs, int next, List<List<Need>> tiles, boolean turnable) {
        if (next == needs.size()) {
            return tiles.size();
        }
        List<List<Need>> more = new ArrayList<>(tiles);
        more.add(List.of(needs.get(next)));
        int best = fewest(needs, next + 1, more, turnable);
        for (int t = 0; t < tiles.size(); t++) {
            List<Need> one = new ArrayList<>(tiles.get(t));
            one.add(needs.get(next));
            if (liesTogether(one, 0, new int[6][4], turnable)) {
                more = new ArrayList<>(tiles);
                more.set(t, one);
                best = Math.min(best, fewest(needs, next + 1, more, turnable));
            }
        }
        return best;
    }

    private static boolean liesTogether(List<Need> needs, int next, int[][] taken, boolean turnable) {
        if (next == needs.size()) {
            return isSawn(taken, 0, 6, 0, 4);
        }
        Envelope box = needs.get(next).boxes().get(0);
        for (int turn = 0; turn < (turnable ? 2 : 1); turn++) {
            int[][] with = new int[6][];
            boolean free = true;
            for (int x = 0; x < 6; x++) {
                with[x] = taken[x].clone();
                for (int y = 0; y < 4; y++) {
                    double cx = turn == 0 ? x + 0.5 : 5.5 - x;
                    double cy = turn == 0 ? y + 0.5 : 3.5 - y;
                    if (box.contains(cx, cy)) {
                        free &= with[x][y] == 0;
                        with[x][y] = next + 1;
                    }
                }
            }
            if (free && liesTogether(needs, next + 1, with, turnable)) {
                return true;
            }
        }
        return false;
    }

    private static Set<Integer> held(int[][] cells, int x0, int x1, int y0, int y1) {
        Set<Integer> held = new TreeSet<>();
        for (int x = x0; x < x1; x++) {
            for (int y = y0; y < y1; y++) {
                held.add(cells[x][y]);
            }
        }
        held.remove(0);
        return held;
    }

    /** Whether cuts right across, one after the other, part all pieces. */
    private static boolean isSawn(int[][] cells, int x0, int x1, int y0, int y1) {
        if (held(cells, x0, x1, y0, y1).size() <= 1) {
            return true;
        }
        for (int x = x0 + 1; x < x1; x++) {
            if (Collections.disjoint(held(cells, x0, x, y0, y1), held(cells, x, x1, y0, y1))
                    && isSawn(cells, x0, x, y0, y1)
                    && isSawn(cells, x, x1, y0, y1)) {
                return true;
            }
        }
        for (int y = y0 + 1; y < y1; y++) {
            if (Collections.disjoint(held(cells, x0, x1, y0, y), held(cells, x0, x1, y, y1))
                    && isSawn(cells, x0, x1, y0, y)
                    && isSawn(cells, x0, x1, y, y1)) {
                return true;
            }
        }
        return false;
    }

    /** Four pieces round a pinwheel lie apart, but no saw cut passes from edge to edge. */
    @Test
    void piecesRoundAPinwheelShareNoTile() {
        List<Need> needs = List.of(
                new Need(List.of(new Envelope(0, 4, 0, 2))),
                new Need(List.of(new Envelope(4, 6, 0, 4))),
                new Need(List.of(new Envelope(2, 6, 4, 6))),
                new Need(List.of(new Envelope(0, 2, 2, 6))));
        assertThat(OffcutPool.share(needs, 6, 6, 0, false).tiles()).isEqualTo(2);
        assertThat(OffcutPool.share(needs.subList(0, 3), 6, 6, 0, false).tiles())
                .isEqualTo(1);
    }

    /** A half along one side and a half along the other: together only when one is turned, and the saw takes nothing. */
    @Test
    void aSquareTileMayBeTurnedAQuarter() {
        List<Need> needs =
                List.of(new Need(List.of(new Envelope(0, 3, 0, 6))), new Need(List.of(new Envelope(0, 6, 0, 3))));
        assertThat(OffcutPool.share(needs, 6, 6, 0, true).tiles()).isEqualTo(1);
        assertThat(OffcutPool.share(needs, 6, 6, 0, false).tiles()).isEqualTo(2);
        assertThat(OffcutPool.share(needs, 6, 6, 0.1, true).tiles()).isEqualTo(2);
    }
}
