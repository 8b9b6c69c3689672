package org.heatfloor.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

class FloorReadinessTest {

    private static final TradeLength WALL = TradeLength.of(Amounts.millimetres(60));

    @Test
    void a_hall_longer_than_the_rule_is_told_how_many_joints_it_needs() {
        Room hall = Room.ofWkt("POLYGON ((0 0, 17 0, 17 5, 0 5, 0 0))", Units.METRE);

        FloorReadiness ready = check(hall, List.of(), JointRule.heatedScreedEurope());

        // 17 m by 5 m: too long (3 bays of 5.67 m), 85 m² too large, 3.4 : 1 too slender.
        assertThat(ready.bays()).hasSize(1);
        assertThat(ready.findings()).extracting(Finding::message).anySatisfy(m -> assertThat(m)
                .contains("2 joints across it would make 3 bays of 5.67 m"));
        assertThat(ready.findings())
                .filteredOn(f -> f.subject().equals("bay 1"))
                .hasSize(3);
        assertThat(ready.findings()).allSatisfy(f -> assertThat(f.severity()).isNotEqualTo(Severity.ERROR));
    }

    @Test
    void joints_make_bays_that_keep_the_rule() {
        Room hall = Room.ofWkt("POLYGON ((0 0, 15 0, 15 5, 0 5, 0 0))", Units.METRE);

        FloorReadiness ready = check(
                hall,
                List.of(joint("first", "LINESTRING (5 0, 5 5)"), joint("second", "LINESTRING (10 0, 10 5)")),
                JointRule.heatedScreedEurope());

        assertThat(ready.bays()).hasSize(3).allSatisfy(bay -> {
            assertThat(bay.area().getValue().doubleValue()).isCloseTo(25, within(1e-9));
            assertThat(bay.length().getValue().doubleValue()).isCloseTo(5, within(1e-9));
            assertThat(bay.isHeated()).isTrue();
        });
        assertThat(ready.findings()).singleElement().satisfies(f -> assertThat(f.subject())
                .isEqualTo("strip along the walls"));
    }

    @Test
    void a_bay_without_cable_is_only_noted() {
        Room hall = Room.ofWkt("POLYGON ((0 0, 20 0, 20 5, 0 5, 0 0))", Units.METRE);
        KeepOut counter = KeepOut.of(
                "counter", KeepOutKind.FIXED_FURNITURE, wkt("POLYGON ((8 0, 20 0, 20 5, 8 5, 8 0))"), Units.METRE);

        FloorReadiness ready =
                check(hall, List.of(counter, joint("joint", "LINESTRING (8 0, 8 5)")), JointRule.heatedUnitedKingdom());

        assertThat(ready.bays()).extracting(Bay::isHeated).containsExactly(false, true);
        assertThat(ready.findings())
                .filteredOn(f -> f.subject().equals("bay 1"))
                .hasSize(2)
                .allSatisfy(f -> {
                    assertThat(f.severity()).isEqualTo(Severity.NOTE);
                    assertThat(f.message()).startsWith("The unheated bay 1");
                });
        assertThat(ready.findings()).extracting(Finding::subject).doesNotContain("bay 2");
    }

    @Test
    void a_joint_drawn_as_wide_as_it_is_parts_the_floor_too() {
        Room hall = Room.ofWkt("POLYGON ((0 0, 10 0, 10 4, 0 4, 0 0))", Units.METRE);
        KeepOut wide = KeepOut.of(
                "structural joint",
                KeepOutKind.MOVEMENT_JOINT,
                wkt("POLYGON ((5 0, 5.02 0, 5.02 4, 5 4, 5 0))"),
                Units.METRE);

        FloorReadiness ready = check(hall, List.of(wide), JointRule.heatedUnitedKingdom());

        assertThat(ready.bays())
                .extracting(bay -> Math.round(bay.length().getValue().doubleValue() * 1000))
                .containsExactly(5000L, 4980L);
        assertThat(ready.findings()).extracting(Finding::subject).containsExactly("strip along the walls");
    }

    @Test
    void a_joint_that_ends_short_parts_nothing() {
        Room hall = Room.ofWkt("POLYGON ((0 0, 10 0, 10 4, 0 4, 0 0))", Units.METRE);

        FloorReadiness ready =
                check(hall, List.of(joint("middle joint", "LINESTRING (5 0, 5 3.8)")), JointRule.heatedUnitedKingdom());

        assertThat(ready.bays()).hasSize(1);
        assertThat(ready.findings()).anySatisfy(f -> {
            assertThat(f.subject()).isEqualTo("middle joint");
            assertThat(f.value().orElseThrow().getValue().doubleValue()).isCloseTo(0.2, within(1e-9));
        });
    }

    @Test
    void rules_of_different_countries_judge_the_same_room_differently() {
        Room hall = Room.ofWkt("POLYGON ((0 0, 7 0, 7 5, 0 5, 0 0))", Units.METRE);

        assertThat(errorsOf(hall, JointRule.interiorNorthAmerica())).isEmpty();
        assertThat(errorsOf(hall, JointRule.heatedNorthAmerica())).isNotEmpty();
        assertThat(errorsOf(hall, JointRule.sunOrMoistureNorthAmerica())).isNotEmpty();
        assertThat(errorsOf(hall, JointRule.heatedUnitedKingdom())).isEmpty();
        assertThat(errorsOf(hall, JointRule.intermediateUnitedKingdom())).isEmpty();
    }

    @Test
    void a_rule_says_how_its_figures_are_known() {
        assertThat(JointRule.interiorNorthAmerica().source().kind()).isEqualTo(Source.Kind.DOCUMENT);
        assertThat(JointRule.heatedNorthAmerica().source().kind()).isEqualTo(Source.Kind.COMMON_PRACTICE);
        assertThat(JointRule.heatedScreedEurope().source().kind()).isEqualTo(Source.Kind.FROM_MEMORY);
        assertThat(JointRule.interiorNorthAmerica()
                        .longestSide()
                        .to(Units.METRE)
                        .getValue()
                        .doubleValue())
                .isCloseTo(7.62, within(1e-12));
    }

    private static List<Finding> errorsOf(Room room, JointRule rule) {
        return check(room, List.of(), rule).findings().stream()
                .filter(f -> f.severity() == Severity.WARNING)
                .toList();
    }

    private static FloorReadiness check(Room room, List<KeepOut> joints, JointRule rule) {
        return FloorReadiness.of(room, joints, HeatableArea.of(room, WALL, joints, Amounts.millimetres(34)), rule);
    }

    private static KeepOut joint(String name, String line) {
        return KeepOut.of(name, KeepOutKind.MOVEMENT_JOINT, wkt(line), Units.METRE);
    }

    private static Geometry wkt(String text) {
        try {
            return new WKTReader().read(text);
        } catch (ParseException e) {
            throw new IllegalArgumentException(e);
        }
    }
}
