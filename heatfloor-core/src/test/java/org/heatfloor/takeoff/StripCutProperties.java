package org.heatfloor.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.grid.MembraneStock.Kind;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;

/** The search against every cut in strips there is, on floors of a few cells. */
class StripCutProperties {

    private static final double PITCH = 0.04;

    private static MembraneCut search(boolean[][] cells, int across, int along, Kind kind) {
        Geometry floor = FloorRegions.FACTORY.createPolygon();
        for (int u = 0; u < cells.length; u++) {
            for (int v = 0; v < cells[u].length; v++) {
                if (cells[u][v]) {
                    floor = floor.union(FloorRegions.rectangle(u * PITCH, v * PITCH, (u + 1) * PITCH, (v + 1) * PITCH));
                }
            }
        }
        MembraneStock stock = new MembraneStock(kind, Amounts.metres(across * PITCH), Amounts.metres(along * PITCH));
        Membrane membrane = new Membrane(
                Amounts.metres(PITCH), Amounts.metres(PITCH / 2), Amounts.millimetres(8), Optional.of(stock));
        StudLattice lattice =
                StudLattice.of(membrane, Schoolhouse.point(PITCH / 2, PITCH / 2), Units.METRE, Amounts.degrees(0));
        return CutSearch.best(FloorRegions.polygons(floor.norm()), stock, lattice, CutRule.FEWEST);
    }

    private static boolean[][] angle(int length, int width, int notchLength, int notchWidth) {
        boolean[][] cells = new boolean[length][width];
        for (int u = 0; u < length; u++) {
            for (int v = 0; v < width; v++) {
                cells[u][v] = u < length - notchLength || v < width - notchWidth;
            }
        }
        return cells;
    }

    @Property(tries = 40)
    void theCountEqualsTheLeastOfAllCutsInStrips(
            @ForAll @IntRange(min = 2, max = 9) int length,
            @ForAll @IntRange(min = 2, max = 5) int width,
            @ForAll @IntRange(max = 3) int notchLength,
            @ForAll @IntRange(max = 3) int notchWidth,
            @ForAll @IntRange(min = 2, max = 4) int across,
            @ForAll @IntRange(min = 4, max = 9) int along,
            @ForAll Kind kind) {
        isTheLeast(
                angle(length, width, Math.min(notchLength, length - 1), Math.min(notchWidth, width - 1)),
                across,
                along,
                kind);
    }

    /** Floors whose count is known only when what one laying leaves of its share of the work goes to another. */
    @ParameterizedTest
    @CsvSource({
        "5, 5, 1, 1, 3, 4, SHEET",
        "7, 5, 0, 0, 2, 9, SHEET",
        "7, 5, 0, 0, 3, 6, ROLL",
        "7, 5, 0, 0, 4, 9, SHEET",
        "7, 5, 1, 3, 2, 8, SHEET",
        "8, 5, 2, 2, 4, 9, SHEET",
        "9, 5, 2, 2, 3, 7, SHEET",
        "9, 5, 3, 1, 2, 7, SHEET"
    })
    void theCountIsTheLeastWhereOneLayingNeedsMostOfTheWork(
            int length, int width, int notchLength, int notchWidth, int across, int along, Kind kind) {
        isTheLeast(angle(length, width, notchLength, notchWidth), across, along, kind);
    }

    private static void isTheLeast(boolean[][] cells, int across, int along, Kind kind) {
        MembraneCut cut = search(cells, across, along, kind);
        int least = StripCutOracle.fewest(cells, across, along, kind == Kind.SHEET);
        assertThat(cut.stockCount()).isEqualTo(least);
        assertThat(cut.stripBound()).isBetween(cut.lowerBound(), least);
        assertThat(cut.isLeastInStrips()).as("the budget lasts on small floors").isTrue();
    }

    private static StripCutter.Piece strip(int length) {
        return new StripCutter.Piece(FloorRegions.rectangle(0, 0, length, 4), 0, 0, length, 4, true);
    }

    /** Counted apart: ordered falls of the length into the fewest parts and one more, a rectangle's taken once. */
    @Property(tries = 100)
    void theWaysToCutAStripAreThoseThereAre(
            @ForAll @IntRange(min = 1, max = 40) int length, @ForAll @IntRange(min = 4, max = 15) int stockLength) {
        int fewest = (length + stockLength - 1) / stockLength;
        int expected = fewest == 1 ? 1 : 0;
        for (int count = Math.max(2, fewest); count <= fewest + 1; count++) {
            expected += partitions(length, count, StripCutter.shortest(stockLength), stockLength);
        }
        StripWays ways = StripWays.of(strip(length), stockLength, 1_000_000);
        assertThat(ways.ways()).hasSize(expected);
        assertThat(ways.ways())
                .allSatisfy(w -> assertThat(Arrays.stream(w).sum()).isEqualTo(length));
    }

    private static int partitions(int length, int count, int least, int most) {
        if (count == 0) {
            return length == 0 ? 1 : 0;
        }
        int ways = 0;
        for (int first = least; first <= Math.min(most, length); first++) {
            ways += partitions(length - first, count - 1, first, most);
        }
        return ways;
    }

    /** A long strip of short stock has more ways than could ever be tried: the search keeps as many as asked, and ends. */
    @Test
    void aLongStripOfShortStockHasMoreWaysThanAreKept() {
        StripWays ways = StripWays.of(strip(300), 13, 400);
        assertThat(ways.ways()).hasSize(400);
        assertThat(ways.isComplete()).isFalse();
        StripWays tight = StripWays.of(strip(12 * 24 + 1), 12, 400);
        assertThat(tight.ways()).hasSize(400);
    }
}
