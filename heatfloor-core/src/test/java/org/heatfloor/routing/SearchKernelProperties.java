package org.heatfloor.routing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;

/** Laws of the router's kernels, each against a plain recount. */
class SearchKernelProperties {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    @Property(tries = 60)
    void theUnionOfSquaresIsThatOfTheGeometryLibrary(
            @ForAll @IntRange(min = 2, max = 12) int columns,
            @ForAll @IntRange(min = 2, max = 12) int rows,
            @ForAll @DoubleRange(min = 1, max = 6) @Scale(3) double side,
            @ForAll long seed) {
        Lattice lattice = Lattices.withHoles(columns, rows, new SplittableRandom(seed));
        List<Geometry> squares = new ArrayList<>();
        for (int v = 0; v < lattice.free.length; v++) {
            if (lattice.free[v]) {
                Envelope e = new Envelope(new Coordinate(v % columns, Math.floorDiv(v, columns)));
                e.expandBy(side / 2);
                squares.add(FACTORY.toGeometry(e));
            }
        }
        double expected =
                squares.isEmpty() ? 0 : CascadedPolygonUnion.union(squares).getArea();

        assertThat(lattice.unionOfSquares(side)).isEqualTo(expected, within(1e-6 * (1 + expected)));
    }

    /** Both extreme covers hold every crossing, and no set of fewer lines does; all sets are tried. */
    @Property(tries = 200)
    void theCoverByRowsAndColumnsIsLeast(
            @ForAll @IntRange(min = 1, max = 6) int rows,
            @ForAll @IntRange(min = 1, max = 6) int columns,
            @ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        StripCover cover = new StripCover(rows, columns);
        List<int[]> crossings = new ArrayList<>();
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                if (random.nextInt(3) == 0) {
                    cover.add(r, c);
                    crossings.add(new int[] {r, c});
                }
            }
        }
        int least = rows + columns;
        for (int set = 0; set < 1 << (rows + columns); set++) {
            int lines = set;
            if (crossings.stream().allMatch(x -> (lines >> x[0] & 1) != 0 || (lines >> (rows + x[1]) & 1) != 0)) {
                least = Math.min(least, Integer.bitCount(set));
            }
        }
        for (boolean fromRows : new boolean[] {true, false}) {
            boolean[][] chosen = cover.least(fromRows);
            int size = 0;
            for (boolean[] side : chosen) {
                for (boolean line : side) {
                    size += line ? 1 : 0;
                }
            }
            assertThat(size).isEqualTo(least);
            assertThat(crossings).allMatch(x -> chosen[0][x[0]] || chosen[1][x[1]]);
        }
    }

    @Property(tries = 60)
    void everyMoveKeepsOneSimplePath(
            @ForAll @IntRange(min = 4, max = 14) int columns,
            @ForAll @IntRange(min = 4, max = 14) int rows,
            @ForAll boolean open,
            @ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Lattice lattice = Lattices.withHoles(3 * columns - 2, 3 * rows - 2, random);
        CoarseGrid grid = new CoarseGrid(lattice, Lattices.lines(columns, 3), Lattices.lines(rows, 3));
        boolean[] anywhere = new boolean[grid.edges.length];
        java.util.Arrays.fill(anywhere, true);
        TreeLoops trees = new TreeLoops(grid, random.nextInt(2), random.nextInt(2));
        boolean rings = random.nextBoolean();
        List<byte[]> loops = rings ? trees.rings() : trees.teeth(null);
        if (loops.isEmpty()) {
            return;
        }
        Walk walk = new Walk(grid, loops.get(random.nextInt(loops.size())), anywhere, rings);
        if (walk.length == 0) {
            return;
        }
        if (open) {
            int node = walk.nodes()[0];
            walk.cut(node, Integer.lowestOneBit(walk.used[node]));
        }
        walk.aim(new Aim(walk.length * (0.5 + random.nextDouble() / 2), 0.2, 6, 0.35, random.nextInt(2)));
        double before = walk.cost();
        Annealing.run(walk, 3_000, random, 2, 0.2);

        int[] nodes = walk.nodes();
        int edges = 0;
        int length = 0;
        int turns = 0;
        for (int v = 0; v < walk.used.length; v++) {
            int bits = walk.used[v];
            assertThat(Integer.bitCount(bits)).isLessThanOrEqualTo(2);
            assertThat(bits & ~grid.edges[v]).isZero();
            turns += bits == 3 || bits == 6 || bits == 12 || bits == 9 ? 1 : 0;
            for (int bit : new int[] {Lattice.EAST, Lattice.NORTH}) {
                if ((bits & bit) != 0) {
                    edges++;
                    length += grid.length(v, bit);
                }
            }
        }
        assertThat(nodes).doesNotHaveDuplicates().hasSize(edges + (open ? 1 : 0));
        assertThat(walk.length).isEqualTo(length);
        assertThat(walk.turns).isEqualTo(turns);
        assertThat(walk.cost()).isLessThanOrEqualTo(before);
    }

    @Property(tries = 60)
    void distancesAreThoseOfAPlainSearch(
            @ForAll @IntRange(min = 2, max = 25) int columns,
            @ForAll @IntRange(min = 2, max = 25) int rows,
            @ForAll @DoubleRange(min = 0.5, max = 8) @Scale(3) double limit,
            @ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Lattice lattice = Lattices.withHoles(columns, rows, random);
        boolean[] heated = new boolean[columns * rows];
        for (int n = 1 + random.nextInt(6); n > 0; n--) {
            heated[random.nextInt(heated.length)] = true;
        }
        int cold = 0;
        double farthest = 0;
        for (int v = 0; v < heated.length; v++) {
            double nearest = Double.POSITIVE_INFINITY;
            for (int w = 0; w < heated.length; w++) {
                if (heated[w]) {
                    nearest = Math.min(
                            nearest,
                            Math.hypot(
                                    v % columns - w % columns, Math.floorDiv(v, columns) - Math.floorDiv(w, columns)));
                }
            }
            if (lattice.free[v]) {
                cold += nearest > limit ? 1 : 0;
                farthest = Math.max(farthest, nearest);
            }
        }

        double[] found = Coverage.measure(lattice, heated, limit);

        assertThat(found[0] * Math.max(1, lattice.nodes())).isEqualTo(cold, within(1e-6));
        assertThat(found[1]).isEqualTo(farthest, within(1e-9));
    }

    @Property(tries = 80)
    void lineSetsKeepTheLeastGapAndBothEnds(
            @ForAll @IntRange(min = 0, max = 5) int first,
            @ForAll @IntRange(min = 8, max = 120) int span,
            @ForAll @IntRange(min = 1, max = 6) int least,
            @ForAll @DoubleRange(min = 1, max = 9) @Scale(2) double wanted,
            @ForAll @IntRange(min = 1, max = 7) int post) {
        for (int[] lines : LineSets.of(
                first,
                first + span,
                least,
                Math.max(least, 0.75 * wanted),
                Math.max(least + 1, 1.2 * wanted),
                new int[] {first + post})) {
            assertThat(lines[0]).isEqualTo(first);
            assertThat(lines[lines.length - 1]).isEqualTo(first + span);
            for (int i = 1; i < lines.length; i++) {
                assertThat(lines[i] - lines[i - 1]).isGreaterThanOrEqualTo(Math.min(least, span));
            }
        }
    }

    /** A right angle of radius r takes r·(2 − π/2) off the way round its corner. */
    @Property(tries = 60)
    void aRoundedCornerShortensTheLineByTheKnownAmount(
            @ForAll @IntRange(min = 1, max = 30) int corners,
            @ForAll @DoubleRange(min = 0.005, max = 0.04) @Scale(4) double radius) {
        List<Coordinate> zigzag = new ArrayList<>();
        for (int i = 0; i < corners + 2; i++) {
            zigzag.add(new Coordinate(Math.floorDiv(i + 1, 2) * 0.2, Math.floorDiv(i, 2) * 0.3));
        }
        double square = 0;
        for (int i = 1; i < zigzag.size(); i++) {
            square += zigzag.get(i).distance(zigzag.get(i - 1));
        }

        List<Coordinate> drawn = Polyline.rounded(zigzag, radius, c -> false);

        double length = 0;
        for (int i = 1; i < drawn.size(); i++) {
            length += drawn.get(i).distance(drawn.get(i - 1));
        }
        double exact = square - corners * radius * (2 - Math.PI / 2);
        assertThat(length).isBetween(exact - corners * 0.0001, exact + 1e-9);
    }
}
