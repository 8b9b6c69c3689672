package org.heatfloor.routing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Laws of a floor shared by several cables. */
class SeveralCablesProperties {

    @Provide
    Arbitrary<TestSite> sites() {
        return TestSite.between(2400, 4200, 1800, 3600, 28);
    }

    static CableToLay cable(int number, double metres, boolean returns) {
        return new CableToLay(
                "no. " + number, returns ? 1 : 2, Amounts.metres(metres), Amounts.millimetres(5), Amounts.metres(8));
    }

    /** Cables that fill a share of the bound together, the first longer than the others by a factor. */
    static List<CableToLay> cables(TestSite site, int count, double share, double first, boolean returns) {
        double total = share * site.capacity();
        List<CableToLay> out = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            out.add(cable(i, total * (i == 0 ? first : 1) / (count - 1 + first), returns));
        }
        return out;
    }

    @Property(tries = 20, shrinking = ShrinkingMode.OFF)
    void cablesTogetherAreExactAndPassTheIndependentCheck(
            @ForAll("sites") TestSite site,
            @ForAll @IntRange(min = 2, max = 3) int count,
            @ForAll @DoubleRange(min = 0.6, max = 0.8) @Scale(3) double share,
            @ForAll @DoubleRange(min = 1, max = 1.8) @Scale(2) double first,
            @ForAll boolean returns) {
        List<CableToLay> cables = cables(site, count, share, first, returns);

        SharedOutcome outcome = site.router().routeSeveral(0, cables, Effort.QUICK, 7);

        if (!(outcome instanceof SharedOutcome.Laid laid)) {
            // These prove nothing; how often they may be said is held on sites of its own below.
            assertThat(outcome).isInstanceOfAny(SharedOutcome.NotFound.class, SharedOutcome.NotReached.class);
            return;
        }
        assertThat(site.check(laid.routes()).findings()).noneMatch(f -> f.isError());
        for (int i = 0; i < count; i++) {
            assertThat(Si.in("laid", laid.routes().get(i).laidLength(), Units.METRE))
                    .isEqualTo(Si.in("length", cables.get(i).length(), Units.METRE), within(1e-6));
        }
    }

    /** Here a piece of the floor is so narrow that the leads of the others take all of it. */
    @Test
    void aPieceThatTheLeadsTakeWholeIsNoPlaceForACable() {
        cablesTogetherAreExactAndPassTheIndependentCheck(new TestSite(2408, 1820, 28, 4, 3, 9), 3, 0.602, 1.8, true);
    }

    @Test
    void nearlyAllCablesTogetherAreFoundAPlace() {
        int laid = 0;
        for (int n = 0; n < 30; n++) {
            TestSite site = new TestSite(
                    1900 + 31 * n, 2500 - 23 * ((11 * n) % 30), 26 + (5 * n) % 14, 3 + n % 2, n % 4, 33 * n);
            List<CableToLay> cables = cables(site, 2 + n % 2, 0.6 + 0.005 * n, 1 + 0.02 * n, n % 4 >= 2);
            laid += site.router().routeSeveral(0, cables, Effort.QUICK, 7) instanceof SharedOutcome.Laid ? 1 : 0;
        }
        assertThat(laid).isGreaterThanOrEqualTo(28);
    }

    @Property(tries = 20, shrinking = ShrinkingMode.OFF)
    void piecesAreDisjointConnectedApartAndNoLargerThanTheWhole(
            @ForAll @IntRange(min = 30, max = 90) int columns,
            @ForAll @IntRange(min = 30, max = 90) int rows,
            @ForAll @IntRange(min = 2, max = 5) int count,
            @ForAll @IntRange(min = 3, max = 5) int gap,
            @ForAll @IntRange(min = 0, max = 10_000) int seed) {
        Lattice lattice = Lattices.withHoles(columns, rows, new SplittableRandom(seed));
        int[] numbers = Lattice.parts(lattice.width, lattice.height, lattice.free, lattice.channels);
        Lattice whole = lattice.part(numbers, numbers[firstFree(lattice)]);
        double[] lengths = new double[count];
        for (int i = 0; i < count; i++) {
            lengths[i] = 1 + i % 2;
        }
        Divisions divisions = new Divisions(whole, lengths, gap, gap, gap);
        List<Divisions.Cut> cuts = new ArrayList<>(divisions.straight());
        cuts.addAll(divisions.aboutStart(columns / 2.0, -1, 0, 1));

        for (Divisions.Cut cut : cuts) {
            List<Lattice> pieces = cut.division().pieces();
            assertThat(pieces).hasSize(count);
            double sum = 0;
            for (Lattice piece : pieces) {
                assertThat(Arrays.stream(Lattice.parts(piece.width, piece.height, piece.free, piece.channels))
                                .max()
                                .orElseThrow())
                        .isZero();
                sum += piece.unionOfSquares(gap);
                for (Lattice other : pieces) {
                    assertThat(other == piece || distance(piece, other) >= gap).isTrue();
                }
                for (int v = 0; v < piece.free.length; v++) {
                    assertThat(!piece.free[v] || whole.free[v]).isTrue();
                }
            }
            assertThat(sum).isLessThanOrEqualTo(whole.unionOfSquares(gap) + 1e-9);
            assertThat(Arrays.stream(cut.division().areas()).sum()).isEqualTo(sum, within(1e-9));
        }
    }

    private static int firstFree(Lattice lattice) {
        int v = 0;
        while (!lattice.free[v]) {
            v++;
        }
        return v;
    }

    /** Least distance of two junctions in the larger of |dx| and |dy|, up to 6; each pair looked at. */
    private static int distance(Lattice a, Lattice b) {
        int best = 6;
        for (int v = 0; v < a.free.length; v++) {
            for (int dy = -5; a.free[v] && dy <= 5; dy++) {
                for (int dx = -5; dx <= 5; dx++) {
                    if (b.free(v % a.width + dx, v / a.width + dy)) {
                        best = Math.min(best, Math.max(Math.abs(dx), Math.abs(dy)));
                    }
                }
            }
        }
        return best;
    }

    @Property(tries = 4, shrinking = ShrinkingMode.OFF)
    void theSameSeedGivesTheSameRoutes(@ForAll("sites") TestSite site) {
        List<CableToLay> cables = cables(site, 2, 0.7, 1, false);

        assertThat(lines(site.router().routeSeveral(0, cables, Effort.QUICK, 7)))
                .isEqualTo(lines(site.router().routeSeveral(0, cables, Effort.QUICK, 7)));
    }

    private static List<List<Coordinate>> lines(SharedOutcome outcome) {
        return outcome instanceof SharedOutcome.Laid laid
                ? laid.routes().stream()
                        .map(r -> List.of(r.line().getCoordinates()))
                        .toList()
                : List.of();
    }

    @Property(tries = 10, shrinking = ShrinkingMode.OFF)
    void togetherTooLongIsRefusedWithTheExcess(
            @ForAll("sites") TestSite site, @ForAll @DoubleRange(min = 1.001, max = 2) @Scale(3) double share) {
        Router router = site.router();
        List<CableToLay> any = List.of(cable(0, 10, false), cable(1, 10, false));
        double bound = Si.in("bound", router.capacity(0, any), Units.METRE);
        List<CableToLay> cables = List.of(cable(0, share * bound / 2, false), cable(1, share * bound / 2, false));

        SharedOutcome outcome = router.routeSeveral(0, cables, Effort.QUICK, 7);

        assertThat(outcome).isInstanceOf(SharedOutcome.TooLong.class);
        assertThat(Si.in("excess", ((SharedOutcome.TooLong) outcome).excess(), Units.METRE))
                .isEqualTo((share - 1) * bound, within(1e-6));
    }

    @Property(tries = 12, shrinking = ShrinkingMode.OFF)
    void aRouteWithReserveIsExactPassesTheCheckAndItsReserveIsRoom(
            @ForAll("sites") TestSite site, @ForAll @DoubleRange(min = 0.6, max = 0.85) @Scale(3) double share) {
        double metres = share * site.capacity();
        CableToLay cable = cable(0, metres, false);
        Router router = site.router();

        RouteOutcome outcome = router.route(0, cable, Amounts.metres(0.02 * metres), Effort.QUICK, 7);

        assertThat(outcome).isInstanceOf(RouteOutcome.Laid.class);
        CableRoute route = ((RouteOutcome.Laid) outcome).route();
        RouteCheckReport report = site.check(List.of(route));
        assertThat(report.findings()).noneMatch(f -> f.isError());
        assertThat(Si.in("laid", route.laidLength(), Units.METRE)).isEqualTo(metres, within(1e-6));
        EndReserve reserve = router.reserve(route, Amounts.metres(0.02 * metres));
        assertThat(reserve.isKept()).isTrue();
        for (EndReserve.Adjuster adjuster : reserve.adjusters()) {
            assertThat(route.line().distance(new GeometryFactory().createPoint(adjuster.at())))
                    .isLessThan(1e-6);
        }
    }

    /** The bend's radius is half a pitch here, so that a bend begins half-way between two junctions. */
    @Test
    void aReserveIsFoundWhereABendBeginsHalfWayBetweenJunctions() {
        aRouteWithReserveIsExactPassesTheCheckAndItsReserveIsRoom(new TestSite(4200, 3600, 28, 3, 0, 0), 0.818);
    }

    @Property(tries = 10, shrinking = ShrinkingMode.OFF)
    void aZoneHasACableOfItsOwnAsCloseAsWanted(
            @ForAll @IntRange(min = 2600, max = 3600) int width,
            @ForAll @IntRange(min = 2000, max = 2800) int depth,
            @ForAll @IntRange(min = 28, max = 36) int pitch) {
        TestSite site = new TestSite(width, depth, pitch, 3, 0, 0);
        Router router = site.router();
        Polygon zone = (Polygon)
                new GeometryFactory().toGeometry(new Envelope(0, 0.45 * width / 1000, 0, 0.55 * depth / 1000));
        double spacing = 3 * pitch / 1000.0;
        double close = 0.75 * zone.getArea() / spacing;
        double wide = 0.72 * (width * depth * 1e-6 - zone.getArea()) / (1.4 * spacing);

        SharedOutcome outcome =
                router.routeZone(0, zone, cable(0, close, false), cable(1, wide, false), Effort.QUICK, 7);

        assertThat(outcome).as("%s", outcome).isInstanceOf(SharedOutcome.Laid.class);
        List<CableRoute> routes = ((SharedOutcome.Laid) outcome).routes();
        assertThat(site.check(routes).findings()).noneMatch(f -> f.isError());
        assertThat(zone.buffer(1e-6).covers(routes.get(0).line())).isTrue();
        assertThat(zone.intersects(routes.get(1).line())).isFalse();
        assertThat(Si.in("spacing", routes.get(0).evenSpacing(), Units.METRE))
                .isLessThan(Si.in("spacing", routes.get(1).evenSpacing(), Units.METRE));
    }
}
