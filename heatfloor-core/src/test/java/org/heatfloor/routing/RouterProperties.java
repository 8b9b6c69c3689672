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
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Laws of whole routes, judged by the independent check. */
class RouterProperties {

    @Provide
    Arbitrary<TestSite> sites() {
        return TestSite.between(1500, 2600, 1500, 2400, 25);
    }

    @Property(tries = 25)
    void aRouteIsExactAndPassesTheIndependentCheck(
            @ForAll("sites") TestSite site,
            @ForAll @DoubleRange(min = 0.6, max = 0.8) @Scale(3) double share,
            @ForAll boolean returns) {
        double metres = share * site.capacity();

        RouteOutcome outcome = site.route(metres, returns);

        assertThat(outcome).isInstanceOf(RouteOutcome.Laid.class);
        CableRoute route = ((RouteOutcome.Laid) outcome).route();
        RouteCheckReport report = site.check(List.of(route));
        assertThat(report.findings()).noneMatch(f -> f.isError());
        CableCheck check = report.cables().get(0);
        assertThat(check.rightAngleTurns()).isEqualTo(route.turns());
        assertThat(Si.in("laid", route.laidLength(), Units.METRE)).isEqualTo(metres, within(1e-6));
    }

    @Property(tries = 15)
    void lengthBeyondTheBoundIsRefusedWithTheExcess(
            @ForAll("sites") TestSite site, @ForAll @DoubleRange(min = 1.001, max = 3) @Scale(3) double share) {
        double capacity = site.capacity();

        RouteOutcome outcome = site.route(share * capacity, false);

        assertThat(outcome).isInstanceOf(RouteOutcome.TooLong.class);
        RouteOutcome.TooLong tooLong = (RouteOutcome.TooLong) outcome;
        assertThat(Si.in("excess", tooLong.excess(), Units.METRE)).isEqualTo((share - 1) * capacity, within(1e-6));
    }

    @Property(tries = 15)
    void liftingAKeepOutNeverLowersTheCapacity(@ForAll("sites") TestSite site) {
        assertThat(site.withoutKeepOuts().capacity()).isGreaterThanOrEqualTo(site.capacity() - 1e-9);
    }

    @Property(tries = 15)
    void mirrorAndQuarterTurnLeaveTheCapacityAsItIs(@ForAll("sites") TestSite site) {
        assertThat(site.mirrored().capacity()).isEqualTo(site.capacity(), within(1e-6));
        assertThat(site.turned().capacity()).isEqualTo(site.capacity(), within(1e-6));
    }

    @Property(tries = 8)
    void aLongerCableNeverLiesWider(
            @ForAll("sites") TestSite site, @ForAll @DoubleRange(min = 0.6, max = 0.75) @Scale(3) double share) {
        double capacity = site.capacity();
        CableRoute shorter = ((RouteOutcome.Laid) site.route(share * capacity, false)).route();
        CableRoute longer = ((RouteOutcome.Laid) site.route((share + 0.08) * capacity, false)).route();

        assertThat(Si.in("spacing", longer.evenSpacing(), Units.METRE))
                .isLessThan(Si.in("spacing", shorter.evenSpacing(), Units.METRE));
    }

    @Property(tries = 6)
    void theSameSeedGivesTheSameRoute(@ForAll("sites") TestSite site) {
        double metres = 0.75 * site.capacity();

        CableRoute once = ((RouteOutcome.Laid) site.route(metres, false)).route();
        CableRoute again = ((RouteOutcome.Laid) site.route(metres, false)).route();

        assertThat(again.line().getCoordinates()).isEqualTo(once.line().getCoordinates());
    }
}
