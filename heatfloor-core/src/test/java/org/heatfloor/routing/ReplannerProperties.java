package org.heatfloor.routing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.TradeLength;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;
import org.locationtech.jts.linearref.LengthLocationMap;
import org.locationtech.jts.linearref.LinearLocation;

/** Laws of cables laid in part, judged by the independent check. */
class ReplannerProperties {

    @Provide
    Arbitrary<TestSite> sites() {
        return TestSite.between(1500, 2400, 1500, 2200, 28);
    }

    private static CableRoute plan(TestSite site, double share, boolean returns) {
        return ((RouteOutcome.Laid) site.route(share * site.capacity(), returns)).route();
    }

    private static double metres(Quantity<Length> length) {
        return Si.in("length", length, Units.METRE);
    }

    private static KeepOut placeAt(Coordinate at, double side) {
        Envelope box = new Envelope(at);
        box.expandBy(side / 2);
        return KeepOut.of(
                "new place",
                KeepOutKind.OTHER,
                new GeometryFactory().toGeometry(box),
                Units.METRE,
                TradeLength.studs(1));
    }

    /**
     * Any first piece of a cable with one end keeps every rule but that of its length. It is cut at a drawn point where one is
     * near, since a chord of an arc cut short would be measured as a sharper bend.
     */
    @Property(tries = 15, maxDiscardRatio = 5)
    void aFirstPieceOfAOneEndedRouteIsValid(
            @ForAll("sites") TestSite site,
            @ForAll @DoubleRange(min = 0.6, max = 0.85) @Scale(3) double share,
            @ForAll @DoubleRange(min = 0.01, max = 1) @Scale(4) double piece) {
        CableRoute route = plan(site, share, false);
        LengthIndexedLine whole = new LengthIndexedLine(route.line());
        LinearLocation cut = LengthLocationMap.getLocation(route.line(), piece * whole.getEndIndex());
        cut.snapToVertex(route.line(), 0.02);
        LineString line = (LineString) whole.extractLine(0, LengthLocationMap.getLength(route.line(), cut));
        Assume.that(line.getLength() > 0);

        RouteCheckReport report = site.routeCheck(List.of())
                .check(List.of(new LaidCable(
                        "piece",
                        line,
                        route.coldLeads(),
                        Amounts.metres(line.getLength() + 0.002),
                        route.cable().diameter(),
                        2,
                        route.cable().coldLead())));

        assertThat(report.findings()).noneMatch(f -> f.isError());
    }

    /** A joint may lie so that the heating part begins with the bend itself, and ends with one. */
    @Property(tries = 6)
    void aHeatingPartThatBeginsWithABendIsReadToItsLength(@ForAll("sites") TestSite site, @ForAll boolean returns) {
        CableRoute plan = plan(site, 0.7, returns);
        Coordinate bend = plan.line().getCoordinateN(beginsStraight(plan) ? 1 : 0);
        double straight = plan.line().getCoordinateN(0).distance(bend);

        LaidPart laid = jointMovedTo(bend, plan);

        assertThat(metres(laid.length(site.site()))).isEqualTo(metres(plan.laidLength()) - straight, within(1e-6));
    }

    /** A joint is stiff. Read as if it lay straight, the cable would seem shorter than it is by what lies beside the bend. */
    @Property(tries = 6)
    void aJointInTheMiddleOfABendIsRefused(@ForAll("sites") TestSite site, @ForAll boolean returns) {
        CableRoute plan = plan(site, 0.7, returns);
        Coordinate inBend = plan.line().getCoordinateN(beginsStraight(plan) ? 4 : 3);

        assertThatThrownBy(() -> jointMovedTo(inBend, plan).length(site.site()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no joint in a bend");
    }

    private static boolean beginsStraight(CableRoute plan) {
        Coordinate a = plan.line().getCoordinateN(0);
        Coordinate b = plan.line().getCoordinateN(1);
        return Math.min(Math.abs(b.x - a.x), Math.abs(b.y - a.y)) < 1e-9;
    }

    /** The whole cable as planned, with its first joint farther along it. */
    private static LaidPart jointMovedTo(Coordinate joint, CableRoute plan) {
        LengthIndexedLine line = new LengthIndexedLine(plan.line());
        double at = line.indexOf(joint);
        List<Coordinate> lead =
                new ArrayList<>(Arrays.asList(plan.coldLeads().get(0).getCoordinates()));
        lead.addAll(Arrays.asList(line.extractLine(0, at).getCoordinates()));
        List<LineString> leads = new ArrayList<>(plan.coldLeads());
        leads.set(0, new GeometryFactory().createLineString(lead.toArray(new Coordinate[0])));
        return LaidPart.upToRow(
                plan.cable(), (LineString) line.extractLine(at, line.getEndIndex()), leads, Integer.MAX_VALUE);
    }

    @Property(tries = 12)
    void theRestIsExactAndTheWholePassesTheIndependentCheck(
            @ForAll("sites") TestSite site,
            @ForAll @DoubleRange(min = 0.6, max = 0.75) @Scale(3) double share,
            @ForAll @DoubleRange(min = 0.2, max = 0.7) @Scale(3) double laidShare,
            @ForAll @DoubleRange(min = 0.2, max = 0.9) @Scale(3) double where,
            @ForAll boolean returns) {
        CableRoute plan = plan(site, share, returns);
        LengthIndexedLine line = new LengthIndexedLine(plan.line());
        double length = line.getEndIndex();
        KeepOut added = placeAt(line.extractPoint(length * (laidShare + (1 - laidShare) * where)), 0.15);
        // A place over the start, or over the only way of a lead, leaves no cable.
        Assume.that(plan.coldLeads().stream().allMatch(lead -> added.shape().distance(lead) >= site.pitch() / 1000.0));
        LaidPart laid = LaidPart.upTo(plan, plan.laidLength().multiply(laidShare));
        Quantity<Length> inHand = plan.laidLength().multiply(1 - laidShare);

        Resumption answer = Replanner.of(site.siteWith(added)).resume(laid, inHand, Effort.QUICK, 3);

        assertThat(answer).isInstanceOfAny(Resumption.Onward.class, Resumption.AfterLifting.class);
        RestRoute route = answer instanceof Resumption.Onward onward
                ? onward.route()
                : ((Resumption.AfterLifting) answer).route();
        RouteCheckReport report = site.check(List.of(route.whole()), List.of(added));
        assertThat(report.findings()).noneMatch(f -> f.isError());
        double leftOver = metres(plan.laidLength()) - metres(route.whole().laidLength());
        assertThat(leftOver).isBetween(-1e-6, 1.001 * site.pitch() / 1000);
        assertThat(metres(route.keptLength()) + metres(route.restLength()))
                .isEqualTo(metres(route.whole().laidLength()), within(1e-6));
        // What stays lies where it lay.
        double kept = route.kept().getLength();
        assertThat(kept < 0.01 || route.kept().buffer(1e-4).covers(line.extractLine(0, kept - 0.001)))
                .isTrue();
    }

    @Property(tries = 8)
    void withNothingChangedNothingIsLifted(
            @ForAll("sites") TestSite site,
            @ForAll @DoubleRange(min = 0.1, max = 0.95) @Scale(3) double laidShare,
            @ForAll boolean returns) {
        CableRoute plan = plan(site, 0.7, returns);
        LaidPart laid = LaidPart.upTo(plan, plan.laidLength().multiply(laidShare));

        Resumption answer = Replanner.of(site.site()).resume(laid, laid.leftAsStated(site.site()), Effort.QUICK, 1);

        assertThat(answer).isInstanceOf(Resumption.Onward.class);
    }

    @Property(tries = 6)
    void theSameSeedGivesTheSameAnswer(@ForAll("sites") TestSite site) {
        CableRoute plan = plan(site, 0.7, false);
        Quantity<Length> inHand = plan.laidLength().multiply(0.5).add(Amounts.metres(0.3));
        LaidPart laid = LaidPart.upTo(plan, plan.laidLength().multiply(0.5));

        Resumption once = Replanner.of(site.site()).resume(laid, inHand, Effort.QUICK, 1);
        Resumption again = Replanner.of(site.site()).resume(laid, inHand, Effort.QUICK, 1);

        assertThat(again.toString()).isEqualTo(once.toString());
    }

    /** What the laid part's own fault forces up is never less than what lies beyond the fault. */
    @Property(tries = 8)
    void aPlaceOverTheLaidPartForcesItUp(
            @ForAll("sites") TestSite site, @ForAll @DoubleRange(min = 0.3, max = 0.9) @Scale(3) double where) {
        CableRoute plan = plan(site, 0.6, false);
        LengthIndexedLine line = new LengthIndexedLine(plan.line());
        double laidLength = 0.5 * metres(plan.laidLength());
        KeepOut added = placeAt(line.extractPoint(where * 0.5 * line.getEndIndex()), 0.1);
        LaidPart laid = LaidPart.upTo(plan, Amounts.metres(laidLength));

        Resumption answer =
                Replanner.of(site.siteWith(added)).resume(laid, Amounts.metres(laidLength), Effort.QUICK, 1);

        assertThat(answer).isInstanceOf(Resumption.AfterLifting.class);
        Resumption.AfterLifting after = (Resumption.AfterLifting) answer;
        assertThat(after.reasons()).isNotEmpty();
        assertThat(metres(after.proved())).isGreaterThanOrEqualTo((1 - where) * laidLength - 0.1);
        assertThat(metres(after.lifted())).isGreaterThanOrEqualTo(metres(after.proved()) - 1e-9);
    }
}
