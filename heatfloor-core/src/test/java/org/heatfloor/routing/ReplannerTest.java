package org.heatfloor.routing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** Cables laid in part: how they are read, and the four answers. */
class ReplannerTest {

    private static final TestSite SITE = new TestSite(2000, 1800, 34, 3, 2, 300);

    private static final RouteSite S_BEND = RouteSite.of(
            Room.ofWkt(DrawnRoutes.ROOM, Units.MILLIMETRE),
            TradeLength.of(Amounts.millimetres(60)),
            List.of(),
            DrawnRoutes.lattice(17, 17, 0),
            Amounts.millimetres(68),
            Amounts.millimetres(34),
            DrawnRoutes.point(0, 0.136),
            Amounts.metres(1.2),
            Amounts.millimetres(100));

    private static CableRoute plan(double share, boolean returns) {
        return ((RouteOutcome.Laid) SITE.route(share * SITE.capacity(), returns)).route();
    }

    private static double metres(Quantity<Length> length) {
        return Si.in("length", length, Units.METRE);
    }

    /** Two bends of a pitch's radius, two pitches apart: between them the cable is straight on no length at all. */
    @Test
    void aBendThatGoesOverIntoOneTheOtherWayIsReadToItsLength() {
        double[] corners = {136, 136, 1020, 136, 1020, 204, 1836, 204};
        double length = DrawnRoutes.trueLength(34, corners);
        CableToLay cable = new CableToLay("K", 2, Amounts.metres(length), Amounts.millimetres(5), Amounts.metres(3));
        LineString heating = DrawnRoutes.rounded(34, 15, corners);

        LineString lead = DrawnRoutes.line(0, 136, 136, 136);
        LineString leaning = DrawnRoutes.line(0, 140, 60, 131, 136, 136);
        LaidPart drawn = LaidPart.upToRow(cable, heating, List.of(lead), Integer.MAX_VALUE);
        LaidPart measured = LaidPart.measured(cable, DrawnRoutes.line(corners), lead);
        LaidPart withATape = LaidPart.measured(cable, DrawnRoutes.line(corners), leaning);
        for (LaidPart laid : List.of(drawn, measured, withATape)) {
            assertThat(metres(laid.length(S_BEND))).isEqualTo(length, within(1e-6));
        }
    }

    /** Corner points of a drawn line, with the arcs taken away. */
    private static List<Coordinate> cornersOf(LineString drawn) {
        Coordinate[] c = drawn.getCoordinates();
        List<Coordinate> out = new ArrayList<>(List.of(c[0]));
        double[] last = null;
        for (int i = 0; i + 1 < c.length; i++) {
            double dx = c[i + 1].x - c[i].x;
            double dy = c[i + 1].y - c[i].y;
            boolean along = Math.abs(dy) < 1e-7;
            boolean up = Math.abs(dx) < 1e-7;
            if (!along && !up) {
                continue;
            }
            double[] now = {along ? 1 : 0, along ? c[i].y : c[i].x};
            if (last != null && last[0] != now[0]) {
                out.add(last[0] == 1 ? new Coordinate(now[1], last[1]) : new Coordinate(last[1], now[1]));
            }
            last = now;
        }
        out.add(c[c.length - 1]);
        return out;
    }

    private static LineString line(List<Coordinate> points) {
        return new GeometryFactory().createLineString(points.toArray(new Coordinate[0]));
    }

    @Test
    void aRowEndsWhereItsBendBegins() {
        CableRoute plan = plan(0.7, false);
        Coordinate[] drawn = plan.line().getCoordinates();

        double first = metres(LaidPart.upToRow(plan, 1).length(SITE.site()));
        double second = metres(LaidPart.upToRow(plan, 2).length(SITE.site()));
        double all = metres(LaidPart.upToRow(plan, plan.turns() + 1).length(SITE.site()));

        assertThat(first).isEqualTo(drawn[0].distance(drawn[1]), within(1e-6));
        int bendEnds = 1;
        while (drawn[bendEnds].distance(drawn[bendEnds + 1]) < 0.006) {
            bendEnds++;
        }
        double secondRow = drawn[bendEnds].distance(drawn[bendEnds + 1]);
        assertThat(second).isEqualTo(first + Math.PI / 2 * 0.014 + secondRow, within(1e-6));
        assertThat(all).isEqualTo(metres(plan.laidLength()), within(1e-6));
    }

    @Test
    void aCableMeasuredOnTheFloorIsReadIntoItsChannels() {
        CableRoute plan = plan(0.7, false);
        SplittableRandom random = new SplittableRandom(5);
        List<Coordinate> corners = new ArrayList<>(cornersOf(plan.line()).subList(0, 8));
        // The head lies in the middle of a row.
        corners.set(7, LineSegment.midPoint(corners.get(6), corners.get(7)));
        double exact = metres(
                LaidPart.measured(plan.cable(), line(corners), plan.coldLeads().get(0))
                        .length(SITE.site()));
        List<Coordinate> measured = new ArrayList<>(List.of(corners.get(0)));
        for (Coordinate c : corners.subList(1, 7)) {
            measured.add(
                    new Coordinate(c.x + 0.02 * (random.nextDouble() - 0.5), c.y + 0.02 * (random.nextDouble() - 0.5)));
        }
        measured.add(corners.get(7));
        LaidPart laid =
                LaidPart.measured(plan.cable(), line(measured), plan.coldLeads().get(0));

        Resumption answer = Replanner.of(SITE.site()).resume(laid, laid.leftAsStated(SITE.site()), Effort.QUICK, 1);

        assertThat(metres(laid.length(SITE.site()))).isEqualTo(exact, within(1e-9));
        assertThat(answer).isInstanceOf(Resumption.Onward.class);
    }

    @Test
    void aLineThatFollowsNoChannelIsRefused() {
        CableRoute plan = plan(0.7, false);
        Coordinate joint = plan.line().getCoordinateN(0);
        LaidPart slanting = LaidPart.measured(
                plan.cable(),
                line(List.of(joint, new Coordinate(joint.x + 0.5, joint.y + 0.3))),
                plan.coldLeads().get(0));

        assertThatIllegalArgumentException()
                .isThrownBy(() -> slanting.length(SITE.site()))
                .withMessageContaining("does not follow the channels");
    }

    @Test
    void misuseIsNamed() {
        CableRoute plan = plan(0.7, false);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> LaidPart.upToRow(plan, 0))
                .withMessageContaining("row: 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LaidPart.upToRow(plan, plan.turns() + 2))
                .withMessageContaining("row: ");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LaidPart.upTo(plan, Amounts.metres(1000)))
                .withMessageContaining("length laid");
        assertThatIllegalArgumentException().isThrownBy(() -> Replanner.of(SITE.site())
                .resume(LaidPart.upTo(plan, Amounts.metres(1)), Amounts.metres(Double.NaN), Effort.QUICK, 1));
    }

    @Test
    void aCableTooLongForTheFloorIsProvedSo() {
        CableRoute plan = plan(0.7, false);
        LaidPart laid = LaidPart.upTo(plan, Amounts.metres(5));
        double capacity = SITE.capacity();

        Resumption answer = Replanner.of(SITE.site()).resume(laid, Amounts.metres(capacity - 5 + 0.4), Effort.QUICK, 1);

        assertThat(answer).isInstanceOf(Resumption.TooLong.class);
        Resumption.TooLong tooLong = (Resumption.TooLong) answer;
        assertThat(metres(tooLong.excess())).isEqualTo(0.4, within(1e-6));
        assertThat(tooLong.help())
                .anyMatch(f -> f.subject().equals("flange") && f.message().contains("one stud less"))
                .anyMatch(f -> f.message().contains("spacing one stud less")
                        && f.message().contains("is enough"));
    }

    @Test
    void lessOrMoreInHandThanThePlanLeavesIsLaidExactly() {
        CableRoute plan = plan(0.7, false);
        LaidPart laid = LaidPart.upTo(plan, plan.laidLength().multiply(0.4));
        double left = metres(laid.leftAsStated(SITE.site()));

        for (double more : new double[] {-2, -0.35, 0.35, 1.5}) {
            Resumption answer = Replanner.of(SITE.site()).resume(laid, Amounts.metres(left + more), Effort.QUICK, 1);

            assertThat(answer).isInstanceOf(Resumption.Onward.class);
            RestRoute route = ((Resumption.Onward) answer).route();
            assertThat(left + more - metres(route.restLength())).isBetween(-1e-6, 0.034);
            assertThat(SITE.check(List.of(route.whole())).findings()).noneMatch(f -> f.isError());
        }
    }

    @Test
    void anInterruptedSearchAnswersAtOnce() {
        CableRoute plan = plan(0.7, false);
        LaidPart laid = LaidPart.upTo(plan, Amounts.metres(5));
        Quantity<Length> tooMuchToFindEasily = Amounts.metres(0.98 * SITE.capacity() - 5);
        Thread.currentThread().interrupt();

        Resumption answer;
        boolean still;
        try {
            answer = Replanner.of(SITE.site()).resume(laid, tooMuchToFindEasily, Effort.THOROUGH, 1);
        } finally {
            still = Thread.interrupted();
        }

        assertThat(still).isTrue();
        assertThat(answer).isInstanceOf(Resumption.NotFound.class);
    }

    @Test
    void theRestKeepsItsDistanceFromAnotherCable() {
        RouteSite site = SITE.site();
        CableRoute plan = plan(0.55, false);
        LengthIndexedLine along = new LengthIndexedLine(plan.line());
        Coordinate at = along.extractPoint(0.8 * along.getEndIndex());
        LineString there = line(List.of(new Coordinate(at.x - 0.2, at.y), new Coordinate(at.x + 0.2, at.y)));
        CableRoute other = new CableRoute(
                plan.cable(),
                there,
                plan.coldLeads(),
                plan.laidLength(),
                0,
                plan.evenSpacing(),
                plan.capacity(),
                plan.reachArea(),
                plan.coldShare(),
                plan.farthest(),
                false);
        LaidPart laid = LaidPart.upTo(plan, plan.laidLength().multiply(0.3));

        Resumption answer = Replanner.of(site)
                .avoiding(List.of(other))
                .resume(laid, plan.laidLength().multiply(0.7), Effort.QUICK, 1);

        assertThat(answer).isInstanceOfAny(Resumption.Onward.class, Resumption.AfterLifting.class);
        RestRoute route = answer instanceof Resumption.Onward onward
                ? onward.route()
                : ((Resumption.AfterLifting) answer).route();
        assertThat(plan.line().distance(there)).isZero();
        assertThat(route.whole().line().distance(there)).isGreaterThanOrEqualTo(3 * 0.034 - 0.0004);
    }

    @Test
    void aCableWithTwoEndsMayBeBegunAtEither() {
        CableRoute plan = plan(0.7, true);

        List<LayOrder> orders = LayOrder.of(SITE.site(), List.of(plan));

        assertThat(orders).hasSize(2);
        assertThat(orders).extracting(LayOrder::fromTheOtherEnd).containsExactlyInAnyOrder(true, false);
        for (LayOrder order : orders) {
            Coordinate begun = order.route().line().getCoordinateN(0);
            Coordinate planned = order.fromTheOtherEnd()
                    ? plan.line().getEndPoint().getCoordinate()
                    : plan.line().getStartPoint().getCoordinate();
            assertThat(begun.distance(planned)).isLessThan(1e-9);
            assertThat(order.stages()).hasSize(9);
            assertThat(metres(order.leastSpare())).isGreaterThan(-1e-6);
            for (LayOrder.Stage stage : order.stages()) {
                assertThat(metres(stage.laid()) + metres(stage.inHand()))
                        .isEqualTo(metres(plan.laidLength()), within(1e-9));
                assertThat(metres(stage.spare()))
                        .isEqualTo(metres(stage.most()) - metres(stage.inHand()), within(1e-9));
                assertThat(stage.openShare().getValue().doubleValue()).isBetween(0.0, 1.0);
            }
        }
        double better = orders.get(0).openShare().getValue().doubleValue();
        assertThat(better)
                .isGreaterThanOrEqualTo(orders.get(1).openShare().getValue().doubleValue());
    }

    @Test
    void aStripOneRunWideIsNotOpenAndAFieldIs() {
        assertThat(LayOrder.openShare(Lattices.rectangle(20, 3), 4)).isZero();
        assertThat(LayOrder.openShare(Lattices.rectangle(20, 4), 4)).isEqualTo(1);
        assertThat(LayOrder.openShare(Lattices.rectangle(9, 9), 4)).isEqualTo(1);
    }
}
