package org.heatfloor.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.heatfloor.area.HeatableArea;
import org.heatfloor.area.JointRule;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.PriorityZone;
import org.heatfloor.area.TradeLength;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.grid.LatticeChoice;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.Effort;
import org.heatfloor.takeoff.MembraneCut;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** What the plan says about the floor itself. */
class FloorFindingsTest {

    private static final Membrane SHEETS = new Membrane(
            Amounts.millimetres(34),
            Amounts.millimetres(22),
            Amounts.millimetres(9),
            Optional.of(
                    new MembraneStock(MembraneStock.Kind.SHEET, Amounts.millimetres(1224), Amounts.millimetres(612))));

    @Test
    void a_hall_too_long_for_one_bay_is_said_by_the_rule_of_the_country_or_the_one_given() {
        Brief.Builder hall = SmallRooms.bare(9000, 4000).catalogue(List.of(Schoolrooms.k(100)));

        assertThat(floor(hall.build())).anySatisfy(f -> {
            assertThat(f.subject()).isEqualTo("bay 1");
            assertThat(f.severity()).isEqualTo(Severity.WARNING);
            assertThat(f.source().toString()).contains("EN 1264-4");
        });
        assertThat(floor(hall.jointRule(JointRule.intermediateUnitedKingdom()).build()))
                .extracting(Finding::subject)
                .doesNotContain("bay 1")
                .contains("strip along the walls");
    }

    @Test
    void each_code_has_its_country_s_rule() {
        assertThat(FloorFindings.usual(Schoolrooms.bootRoom().supply.code())).isEqualTo(JointRule.heatedNorthAmerica());
        assertThat(FloorFindings.usual(Schoolrooms.kitchen().supply.code())).isEqualTo(JointRule.heatedUnitedKingdom());
        assertThat(FloorFindings.usual(Schoolrooms.washroom().supply.code())).isEqualTo(JointRule.heatedScreedEurope());
    }

    @Test
    void a_slip_of_the_sheets_is_priced_as_measured_or_at_its_worst() {
        Brief.Builder room = SmallRooms.bare(2448, 1224).membrane(SHEETS).catalogue(List.of(Schoolrooms.k(20)));

        List<LineString> lines = threeRuns();
        assertThat(seams(room.build(), lines)).singleElement().satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.NOTE);
            assertThat(f.message())
                    .contains("up to 7 mm costs nothing")
                    .contains("half a pitch would make 3 runs zigzag and take 12 mm more cable");
        });
        List<Finding> measured = seams(room.sheetSlip(Amounts.millimetres(44)).build(), lines);
        assertThat(measured)
                .filteredOn(f -> f.severity() == Severity.WARNING)
                .isNotEmpty()
                .allSatisfy(f -> {
                    assertThat(f.subject()).startsWith("seam along column ");
                    assertThat(f.message())
                            .contains("3 runs across the seam have to zigzag and take 4 mm more cable")
                            .contains("shift the sheet by 10 mm");
                });
        assertThat(measured)
                .filteredOn(f -> f.subject().startsWith("seam along row "))
                .isNotEmpty()
                .allSatisfy(f -> assertThat(f.message()).contains("no run crosses it"));
        assertThatThrownBy(() -> room.sheetSlip(Amounts.millimetres(-1))).hasMessageContaining("sheet slip");
    }

    @Test
    void the_washroom_s_plan_says_all_of_it() {
        Plan plan = SchoolPlans.washroom().plan();

        assertThat(plan.findings()).extracting(Finding::subject).contains("strip along the walls");
        assertThat(plan.findings()).anySatisfy(f -> {
            assertThat(f.subject()).startsWith("seam along ");
            assertThat(f.message()).contains("Keep the studs in phase");
        });
    }

    /** A bath 250 mm from the wall: runs lie in the gap where the channels are free. */
    @Test
    void cable_where_no_one_can_stand_is_said() {
        KeepOut bath = KeepOut.of(
                "bath",
                KeepOutKind.BATH,
                Schoolrooms.rectangle(700, 250, 1500, 1000),
                Units.MILLIMETRE,
                TradeLength.of(Amounts.millimetres(50)));
        Brief brief = SmallRooms.bare(1500, 1400)
                .keepOut(bath)
                .catalogue(SmallRooms.catalogue())
                .build();
        HeatableArea heatable =
                HeatableArea.of(brief.room, brief.wallClearance, brief.keepOuts, brief.membrane.studPitch());
        LineString inTheGap = new GeometryFactory()
                .createLineString(new Coordinate[] {new Coordinate(0.1, 0.13), new Coordinate(1.4, 0.13)});

        List<Finding> said = FloorFindings.heatedForNothing(heatable, List.of(inTheGap));

        assertThat(said).singleElement().satisfies(f -> {
            assertThat(f.subject()).isEqualTo("between bath and wall");
            assertThat(f.message()).contains("no one can stand");
            assertThat(f.value().orElseThrow().getValue().doubleValue()).isBetween(0.4, 0.7);
        });
        assertThat(FloorFindings.heatedForNothing(heatable, List.of())).isEmpty();
    }

    @Test
    void zones_are_counted_by_their_weight() {
        Plan plan = Planner.plan(
                SmallRooms.bare(1500, 1000)
                        .catalogue(SmallRooms.catalogue())
                        .priorityZone(PriorityZone.of(
                                "at the basin", Schoolrooms.rectangle(500, 300, 1000, 700), Units.MILLIMETRE, 3))
                        .build(),
                Effort.QUICK);

        // The zone has 0.2 m² of 1.5 m²; counted three times it adds 0.4 m².
        double zone = value(plan, "at the basin") / 100;
        double heated = Si.in("heated", plan.area().heated(), Units.SQUARE_METRE);
        assertThat(value(plan, "priority zones")).isCloseTo((heated + 0.4 * zone) / (1.5 + 0.4), within(1e-5));
    }

    private static double value(Plan plan, String subject) {
        return plan.findings().stream()
                .filter(f -> f.subject().equals(subject))
                .findFirst()
                .flatMap(Finding::value)
                .orElseThrow()
                .getValue()
                .doubleValue();
    }

    private static List<Finding> floor(Brief brief) {
        return FloorFindings.of(
                brief, HeatableArea.of(brief.room, brief.wallClearance, brief.keepOuts, brief.membrane.studPitch()));
    }

    /** Three runs along the room, joined at its ends, the whole in its lower part so that no seam along a row is met. */
    private static List<LineString> threeRuns() {
        Coordinate[] c = {
            new Coordinate(0.1, 0.1),
            new Coordinate(2.3, 0.1),
            new Coordinate(2.3, 0.2),
            new Coordinate(0.1, 0.2),
            new Coordinate(0.1, 0.3),
            new Coordinate(2.3, 0.3)
        };
        return List.of(new GeometryFactory().createLineString(c));
    }

    private static List<Finding> seams(Brief brief, List<LineString> lines) {
        StudLattice lattice = LatticeChoice.choose(brief.membrane, brief.room, brief.wallClearance, brief.keepOuts);
        MembraneCut cut = MembraneCut.of(brief.room, brief.membrane, lattice);
        return FloorFindings.seams(brief, lattice, cut, brief.catalogue, lines);
    }
}
