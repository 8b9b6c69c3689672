package org.heatfloor.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

class HeatableAreaTest {

    private static final Quantity<Length> PITCH = Amounts.millimetres(40);
    private static final Room ROOM = Room.ofWkt("POLYGON ((0 0, 4 0, 4 3, 0 3, 0 0))", Units.METRE);

    @Test
    void a_bare_rectangle_loses_its_strip() {
        HeatableArea area = HeatableArea.of(ROOM, mm(100), List.of(), PITCH);

        assertThat(value(area.floorArea())).isCloseTo(12, within(1e-12));
        // 3.8 by 2.8 m by hand; never more, and at most 0.13 % of the clearance along 13.2 m less.
        assertThat(value(area.heatableArea())).isLessThan(10.64).isGreaterThan(10.64 - 13.3 * 0.1 * 0.0013);
        assertThat(area.heatableShare().getValue().doubleValue()).isCloseTo(10.64 / 12, within(2e-4));
        assertThat(area.taken()).singleElement().satisfies(t -> assertThat(t.name())
                .isEqualTo("strip along the walls"));
    }

    @Test
    void clearances_in_studs_follow_the_pitch() {
        KeepOut pan = KeepOut.round(
                "pan",
                KeepOutKind.TOILET_FLANGE,
                (Point) wkt("POINT (2 1.5)"),
                Units.METRE,
                Amounts.millimetres(110),
                UsualClearance.of(KeepOutKind.TOILET_FLANGE).clearance());

        double fine = value(HeatableArea.of(ROOM, mm(0), List.of(pan), Amounts.millimetres(30))
                .keptOutArea());
        double coarse = value(HeatableArea.of(ROOM, mm(0), List.of(pan), Amounts.millimetres(40))
                .keptOutArea());

        assertThat(fine).isCloseTo(Math.PI * Math.pow(0.055 + 7 * 0.030, 2), within(0.001));
        assertThat(coarse).isCloseTo(Math.PI * Math.pow(0.055 + 7 * 0.040, 2), within(0.001));
    }

    @Test
    void a_movement_joint_parts_the_region_even_without_clearance() {
        KeepOut joint =
                KeepOut.of("joint", KeepOutKind.MOVEMENT_JOINT, wkt("LINESTRING (1.5 0, 1.5 3)"), Units.METRE, mm(0));

        HeatableArea area = HeatableArea.of(ROOM, mm(100), List.of(joint), PITCH);

        assertThat(area.parts()).hasSize(2);
        assertThat(area.parts().get(0).getArea())
                .isGreaterThan(area.parts().get(1).getArea());
    }

    @Test
    void a_slot_too_narrow_for_a_run_parts_the_floor_and_is_named_as_a_neck() {
        // A slot of 230 mm in the wall between two parts leaves 30 mm at a clearance of 100 mm.
        Room two = Room.ofWkt(
                "POLYGON ((0 0, 4 0, 4 1, 4.2 1, 4.2 0, 8 0, 8 3, 4.2 3, 4.2 1.23, 4 1.23, 4 3, 0 3, 0 0))",
                Units.METRE);

        HeatableArea area = HeatableArea.of(two, mm(100), List.of(), PITCH);

        assertThat(area.parts()).hasSize(2);
        assertThat(area.deadSpaces()).singleElement().satisfies(dead -> {
            assertThat(dead.reason()).isEqualTo(DeadSpace.Reason.TOO_NARROW);
            assertThat(dead.joinedParts()).isEqualTo(2);
            assertThat(dead.name()).isEqualTo("beside wall");
        });
        assertThat(area.findings()).singleElement().satisfies(f -> assertThat(f.message())
                .contains("it parts the heatable floor, though one run may pass"));
        assertThat(area.necks(PITCH)).singleElement().satisfies(neck -> {
            assertThat(neck.joinedParts()).isEqualTo(2);
            assertThat(neck.narrowerThan()).isEqualTo(Amounts.metres(0.04));
            assertThat(neck.shape().getArea()).isBetween(0.005, 0.016);
        });
        assertThat(area.necks(Amounts.millimetres(25))).isEmpty();
        assertThat(HeatableArea.of(two, mm(100), List.of(), Amounts.millimetres(29))
                        .parts())
                .hasSize(1);
    }

    @Test
    void square_corners_count_in_full_and_sharp_ones_lose_their_tip() {
        Room square = Room.ofWkt("POLYGON ((0 0, 2 0, 2 2, 0 2, 0 0))", Units.METRE);
        Room sharp = Room.ofWkt("POLYGON ((0 0, 4 0, 0 1, 0 0))", Units.METRE);

        assertThat(HeatableArea.of(square, mm(0), List.of(), PITCH).deadSpaces())
                .isEmpty();
        assertThat(value(HeatableArea.of(sharp, mm(0), List.of(), PITCH).deadArea()))
                .isGreaterThan(0.01);
    }

    /** A slot behind a cupboard that a partition turns into a neck between two parts stays dead. */
    @Test
    void a_keep_out_more_never_brings_dead_space_back() {
        KeepOut cupboard = KeepOut.of(
                "cupboard",
                KeepOutKind.FIXED_FURNITURE,
                wkt("POLYGON ((1 0.15, 3 0.15, 3 0.7, 1 0.7, 1 0.15))"),
                Units.METRE,
                mm(30));
        KeepOut partition =
                KeepOut.of("partition", KeepOutKind.OTHER, wkt("LINESTRING (2 0.7, 2 3)"), Units.METRE, mm(0));

        HeatableArea one = HeatableArea.of(ROOM, mm(100), List.of(cupboard), PITCH);
        HeatableArea both = HeatableArea.of(ROOM, mm(100), List.of(cupboard, partition), PITCH);

        assertThat(value(one.deadArea())).isCloseTo(2 * 0.02, within(0.001));
        assertThat(one.parts()).hasSize(1);
        assertThat(both.parts()).hasSize(2);
        assertThat(value(both.heatableArea())).isLessThanOrEqualTo(value(one.heatableArea()));
        assertThat(both.deadSpaces())
                .anySatisfy(dead -> assertThat(dead.joinedParts()).isEqualTo(2));
    }

    @Test
    void a_blind_strip_is_dead_space() {
        // The same strip closed at one end by the corner: nothing to join.
        KeepOut cupboard = KeepOut.of(
                "cupboard",
                KeepOutKind.FIXED_FURNITURE,
                wkt("POLYGON ((2 0.15, 4 0.15, 4 0.7, 2 0.7, 2 0.15))"),
                Units.METRE,
                mm(30));

        HeatableArea area = HeatableArea.of(ROOM, mm(100), List.of(cupboard), PITCH);

        assertThat(area.deadSpaces()).singleElement().satisfies(dead -> {
            assertThat(dead.reason()).isEqualTo(DeadSpace.Reason.TOO_NARROW);
            assertThat(dead.name()).isEqualTo("between cupboard and wall");
            // From the corner's clearance to the cupboard's end: 2 m − 0.1 m wide, 20 mm high, and its open end.
            assertThat(value(dead.area())).isCloseTo(1.9 * 0.02, within(0.002));
        });
        assertThat(area.findings()).singleElement().satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.NOTE);
            assertThat(f.message()).contains("too narrow to lay a run");
        });
    }

    @Test
    void a_gap_where_no_one_can_stand_is_dead_space() {
        // 250 mm between bath and wall, blind at the corner.
        KeepOut bath = KeepOut.of(
                "bath",
                KeepOutKind.BATH,
                wkt("POLYGON ((2.2 0.25, 4 0.25, 4 1, 2.2 1, 2.2 0.25))"),
                Units.METRE,
                mm(50));

        HeatableArea area = HeatableArea.of(ROOM, mm(60), List.of(bath), PITCH);

        assertThat(area.deadSpaces()).singleElement().satisfies(dead -> {
            assertThat(dead.reason()).isEqualTo(DeadSpace.Reason.NO_STANDING_ROOM);
            assertThat(dead.name()).isEqualTo("between bath and wall");
            // The circle of 300 mm goes in until it meets the bath's corner, its centre at 2.2 − √(0.15² − 0.1²); what
            // lies
            // within 225 mm of it counts as reached.
            double centre = 2.2 - Math.sqrt(0.15 * 0.15 - 0.1 * 0.1);
            double reached = 0;
            for (int i = 0; i < 1000; i++) {
                double y = 0.06 + 0.14 * (i + 0.5) / 1000;
                reached += 0.14 / 1000 * (centre + Math.sqrt(0.225 * 0.225 - (y - 0.15) * (y - 0.15)));
            }
            assertThat(value(dead.area())).isCloseTo(3.94 * 0.14 - reached, within(0.0005));
        });
        assertThat(HeatableArea.of(
                                ROOM,
                                mm(60),
                                List.of(bath),
                                PITCH,
                                new AreaRules(TradeLength.studs(1), Amounts.millimetres(200)))
                        .deadSpaces())
                .isEmpty();
    }

    @Test
    void furniture_on_high_legs_takes_nothing() {
        KeepOut bench = KeepOut.of(
                        "bench", KeepOutKind.FURNITURE_ON_LEGS, wkt("POLYGON ((1 1, 2 1, 2 2, 1 2, 1 1))"), Units.METRE)
                .withFreeHeight(Amounts.millimetres(80));

        assertThat(value(HeatableArea.of(ROOM, mm(0), List.of(bench), PITCH).keptOutArea()))
                .isCloseTo(0, within(1e-9));
        assertThat(value(HeatableArea.of(
                                ROOM, mm(0), List.of(bench.withLeastFreeHeight(Amounts.millimetres(100))), PITCH)
                        .keptOutArea()))
                .isGreaterThan(1);
    }

    @Test
    void a_clearance_below_the_usual_is_said() {
        KeepOut pan = KeepOut.round(
                "pan",
                KeepOutKind.TOILET_FLANGE,
                (Point) wkt("POINT (2 1.5)"),
                Units.METRE,
                Amounts.millimetres(110),
                TradeLength.studs(5));

        assertThat(HeatableArea.of(ROOM, mm(60), List.of(pan), PITCH).findings())
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.severity()).isEqualTo(Severity.WARNING);
                    assertThat(f.subject()).isEqualTo("pan");
                    assertThat(f.message()).contains("wax seal");
                    assertThat(f.source().toString()).startsWith("common practice, no source");
                });
    }

    @Test
    void a_clearance_not_given_is_the_usual_one_and_is_said() {
        KeepOut pan = KeepOut.round(
                "pan", KeepOutKind.TOILET_FLANGE, (Point) wkt("POINT (2 1.5)"), Units.METRE, Amounts.millimetres(110));

        HeatableArea area = HeatableArea.of(ROOM, mm(60), List.of(pan), PITCH);

        assertThat(pan.clearance()).isEqualTo(TradeLength.studs(7));
        assertThat(area.findings()).singleElement().satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.NOTE);
            assertThat(f.subject()).isEqualTo("pan");
            assertThat(f.message())
                    .isEqualTo(
                            "No clearance was given, so the usual 7 studs is kept: the wax seal of the flange softens"
                                    + " when warmed.");
            assertThat(f.value()).contains(Amounts.metres(7 * 0.04));
        });
        assertThat(pan.withFreeHeight(Amounts.metres(1)).clearanceAssumed()).isTrue();
        assertThat(KeepOut.of("joint", KeepOutKind.MOVEMENT_JOINT, wkt("LINESTRING (1 0, 1 3)"), Units.METRE, mm(40))
                        .clearanceAssumed())
                .isFalse();
    }

    @Test
    void a_strip_along_the_walls_below_the_usual_is_said() {
        assertThat(HeatableArea.of(ROOM, mm(59), List.of(), PITCH).findings())
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.subject()).isEqualTo("strip along the walls");
                    assertThat(f.limit().orElseThrow().getValue().doubleValue()).isCloseTo(0.06, within(1e-12));
                    assertThat(f.source().toString()).isEqualTo("common practice, no source: 60 mm from walls");
                });
        assertThat(HeatableArea.of(ROOM, mm(60), List.of(), PITCH).findings()).isEmpty();
    }

    @Test
    void priority_zones_weigh_the_heatable_part() {
        PriorityZone zone =
                PriorityZone.of("basin", (Polygon) wkt("POLYGON ((-1 0, 1 0, 1 3, -1 3, -1 0))"), Units.METRE, 3);

        HeatableArea area = HeatableArea.of(ROOM, mm(0), List.of(), PITCH);

        assertThat(value(area.heatableArea(zone))).isCloseTo(3, within(1e-9));
        assertThat(area.meanWeight(List.of(zone))).isCloseTo((3 * 3 + 9) / 12.0, within(1e-9));
        assertThat(area.meanWeight(List.of())).isEqualTo(1);
        // The left half is heated: 6 of 12 m², by weight 3·3 + 3 of 3·3 + 9.
        Geometry heated = wkt("POLYGON ((-1 0, 2 0, 2 3, -1 3, -1 0))");
        assertThat(area.weightedShare(heated, List.of()).getValue().doubleValue())
                .isCloseTo(0.5, within(1e-9));
        assertThat(area.weightedShare(heated, List.of(zone)).getValue().doubleValue())
                .isCloseTo(12 / 18.0, within(1e-9));
    }

    @Test
    void a_laid_cable_heats_what_lies_in_its_reach() {
        LineString cable = (LineString) wkt("LINESTRING (1 1, 3 1)");

        HeatableArea area = HeatableArea.of(ROOM, mm(0), List.of(), PITCH);

        assertThat(value(area.heatedArea(List.of(cable), Amounts.millimetres(50))))
                .isCloseTo(2 * 0.1 + Math.PI * 0.0025, within(1e-4));
    }

    @Test
    void what_is_handed_out_is_a_copy() {
        HeatableArea area = HeatableArea.of(ROOM, mm(100), List.of(), PITCH);
        area.region().getCoordinates()[0].setX(77);
        area.parts().get(0).getCoordinates()[0].setX(77);

        assertThat(area.region().getEnvelopeInternal().getMaxX()).isLessThan(4);
    }

    @Test
    void bad_places_are_named() {
        KeepOut far =
                KeepOut.of("sauna", KeepOutKind.OTHER, wkt("POLYGON ((5 0, 6 0, 6 1, 5 1, 5 0))"), Units.METRE, mm(30));
        KeepOut bath = KeepOut.of(
                "bath", KeepOutKind.BATH, wkt("POLYGON ((0 -1, 1 -1, 1 1, 0 1, 0 -1))"), Units.METRE, mm(50));

        assertThatThrownBy(() -> HeatableArea.of(ROOM, mm(60), List.of(far), PITCH))
                .hasMessageContaining("keep-out 'sauna'")
                .hasMessageContaining("1000 mm outside the room");
        assertThatThrownBy(() -> ROOM.requireOnWall("start", (Point) wkt("POINT (2 1)"), Units.METRE, List.of()))
                .hasMessageContaining("start: POINT (2 1) was given, 1000 mm from the nearest wall");
        assertThatThrownBy(() -> ROOM.requireOnWall("start", (Point) wkt("POINT (0.5 0)"), Units.METRE, List.of(bath)))
                .hasMessageContaining("inside the keep-out 'bath'");
        Point off = ROOM.onWall("start", (Point) wkt("POINT (2000 -20)"), Units.MILLIMETRE);
        assertThat(off.getX()).isEqualTo(2);
        assertThat(off.getY()).isZero();
        ROOM.onWall("start", (Point) wkt("POINT (-1 -1)"), Units.MILLIMETRE).getCoordinate().x = 7;
        assertThat(ROOM.polygon().isValid()).isTrue();
        Point away = ROOM.onWall("start", (Point) wkt("POINT (2000 100)"), Units.MILLIMETRE);
        assertThat(away.getY()).isEqualTo(0.1);
        assertThat(ROOM.requireOnWall("start", (Point) wkt("POINT (2000 0)"), Units.MILLIMETRE, List.of(bath))
                        .getX())
                .isEqualTo(2);
        assertThatThrownBy(() -> Room.ofWkt("POLYGON ((0 0, 1 1, 1 0, 0 1, 0 0))", Units.METRE))
                .hasMessage(
                        "outline: a shape with the fault 'Self-intersection' at 0.5 0.5 was given, where wall 1 and wall 3"
                                + " cross near 0.5 0.5; a shape that does not cross or touch itself is expected");
        assertThatThrownBy(
                        () -> Room.ofWkt("POLYGON ((0 0, 4 0, 4 3, 0 3, 0 0), (3 1, 5 1, 5 2, 3 2, 3 1))", Units.METRE))
                .hasMessageContaining("wall 2 and column 1 side 1 cross near 4 1");
        assertThatThrownBy(() -> KeepOut.of(
                        "mat", KeepOutKind.OTHER, wkt("POLYGON ((0 0, 1 1, 1 0, 0 1, 0 0))"), Units.METRE, mm(30)))
                .hasMessageContaining("keep-out 'mat'")
                .hasMessageContaining("side 1 and side 3 cross near 0.5 0.5");
    }

    @ParameterizedTest
    @EnumSource(KeepOutKind.class)
    void every_kind_has_a_usual_clearance_with_reason_and_source(KeepOutKind kind) {
        UsualClearance usual = UsualClearance.of(kind);

        assertThat(usual.reason()).isNotBlank();
        assertThat(usual.source().toString()).contains("common practice");
        assertThat(usual.clearance().with(PITCH).to(Units.MILLIMETRE).getValue().doubleValue())
                .isBetween(30.0, 280.0);
    }

    private static double value(Quantity<Area> area) {
        return area.to(Units.SQUARE_METRE).getValue().doubleValue();
    }

    private static TradeLength mm(double value) {
        return TradeLength.of(Amounts.millimetres(value));
    }

    private static Geometry wkt(String text) {
        try {
            return new WKTReader().read(text);
        } catch (ParseException e) {
            throw new IllegalArgumentException(e);
        }
    }
}
