package org.heatfloor.routing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.heatfloor.area.PriorityZone;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;

/** Laws of routes that follow priority zones. */
class PriorityZonesProperties {

    @Provide
    Arbitrary<TestSite> sites() {
        return TestSite.between(1400, 2400, 1400, 2400, 25);
    }

    private static PriorityZone zone(TestSite site, double x, double y, double weight) {
        return PriorityZonesTest.zone(
                x * site.width(), y * site.depth(), (x + 0.35) * site.width(), (y + 0.4) * site.depth(), weight);
    }

    @Property(tries = 25)
    void aRouteWithAZoneIsExactAndPassesTheIndependentCheck(
            @ForAll("sites") TestSite site,
            @ForAll @DoubleRange(min = 0.6, max = 0.8) @Scale(3) double share,
            @ForAll @DoubleRange(min = 0, max = 0.6) double x,
            @ForAll @DoubleRange(min = 0, max = 0.6) double y,
            @ForAll @DoubleRange(min = 0.4, max = 3) double weight,
            @ForAll boolean returns) {
        double metres = share * site.capacity();
        Router router = site.router().wanting(PriorityZonesTest.wish(7.0 * site.pitch(), zone(site, x, y, weight)));

        RouteOutcome outcome = router.route(0, PriorityZonesTest.cable(metres, returns), Effort.QUICK, 7);

        assertThat(outcome).isInstanceOf(RouteOutcome.Laid.class);
        CableRoute route = ((RouteOutcome.Laid) outcome).route();
        RouteCheckReport report = site.check(List.of(route));
        assertThat(report.findings()).noneMatch(f -> f.isError());
        CableCheck check = report.cables().get(0);
        assertThat(check.rightAngleTurns()).isEqualTo(route.turns());
        assertThat(Si.in("separation", check.leastSeparation().orElseThrow(), Units.MILLIMETRE))
                .isGreaterThan(site.spacing() * site.pitch() - 0.4);
        assertThat(Si.in("laid", route.laidLength(), Units.METRE)).isEqualTo(metres, within(1e-6));
        assertThat(router.route(0, PriorityZonesTest.cable(metres, returns), Effort.QUICK, 7))
                .extracting(o -> ((RouteOutcome.Laid) o).route().line())
                .isEqualTo(route.line());
    }

    @Property(tries = 15)
    void zonesOfTheSameWeightAsTheRestChangeNothing(
            @ForAll("sites") TestSite site,
            @ForAll @DoubleRange(min = 0.6, max = 0.95) @Scale(3) double share,
            @ForAll @DoubleRange(min = 0, max = 0.6) double x,
            @ForAll @DoubleRange(min = 0, max = 0.6) double y,
            @ForAll boolean returns) {
        double metres = share * site.capacity();
        RouteOutcome plain = site.route(metres, returns);
        PriorityZone everywhere = PriorityZonesTest.zone(-100, -100, site.width() + 100, site.depth() + 100, 3);
        for (PriorityZone zone : List.of(zone(site, x, y, 1), everywhere)) {
            RouteOutcome outcome = site.router()
                    .wanting(PriorityZonesTest.wish(12.0 * site.pitch(), zone))
                    .route(0, PriorityZonesTest.cable(metres, returns), Effort.QUICK, 7);

            assertThat(outcome.getClass()).isEqualTo(plain.getClass());
            if (outcome instanceof RouteOutcome.Laid laid && plain instanceof RouteOutcome.Laid without) {
                assertThat(laid.route().line().equalsExact(without.route().line()))
                        .isTrue();
                assertThat(laid.route().coldShare()).isEqualTo(without.route().coldShare());
            }
        }
    }

    @Property(tries = 40)
    void wantedSpacingsTakeUpTheLengthBetweenTheBounds(
            @ForAll @DoubleRange(min = 10, max = 5000) double inside,
            @ForAll @DoubleRange(min = 10, max = 5000) double outside,
            @ForAll @DoubleRange(min = 0.1, max = 20) double weight,
            @ForAll @DoubleRange(min = 3, max = 5) double even) {
        double length = (inside + outside) / even;

        double[] spacings = Wanted.spacings(new double[] {outside, inside}, new double[] {1, weight}, length, 3, 5);

        assertThat(outside / spacings[0] + inside / spacings[1]).isEqualTo(length, within(1e-5 * length));
        assertThat(spacings[0]).isBetween(3 - 1e-5, 5 + 1e-5);
        assertThat(spacings[1]).isBetween(3 - 1e-5, 5 + 1e-5);
        double ratio = spacings[0] / spacings[1];
        assertThat(weight >= 1 ? ratio : 1 / ratio)
                .isBetween(1 - 1e-5, Math.min(Math.max(weight, 1 / weight), 5 / 3.0) + 1e-5);
    }

    @Property(tries = 6)
    void cablesThatShareAFloorFollowZonesToo(
            @ForAll("sites") TestSite site,
            @ForAll @DoubleRange(min = 0, max = 0.6) double x,
            @ForAll @DoubleRange(min = 0, max = 0.6) double y) {
        Router router = site.router().wanting(PriorityZonesTest.wish(7.0 * site.pitch(), zone(site, x, y, 1.6)));
        double metres = 0.32 * site.capacity();
        List<CableToLay> cables = List.of(named("a", metres), named("b", metres));

        if (router.routeSeveral(0, cables, Effort.QUICK, 7) instanceof SharedOutcome.Laid laid) {
            assertThat(site.check(laid.routes()).findings()).noneMatch(f -> f.isError());
            assertThat(router.densities(0, laid.routes())).hasSizeLessThanOrEqualTo(1);
        }
    }

    /** Here an edge of the zone lies on an edge of the floor that cable reaches, with the zone on the other side. */
    @Test
    void aZoneMayShareABareEdgeWithTheReach() {
        cablesThatShareAFloorFollowZonesToo(new TestSite(1400, 1400, 28, 4, 2, 0), 0.03, 0.39);
    }

    private static CableToLay named(String name, double metres) {
        return new CableToLay(name, 2, Amounts.metres(metres), Amounts.millimetres(5), Amounts.metres(4));
    }
}
