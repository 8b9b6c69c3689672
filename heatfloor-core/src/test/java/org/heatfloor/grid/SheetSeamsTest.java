package org.heatfloor.grid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

class SheetSeamsTest {

    private static final Membrane MEMBRANE =
            new Membrane(Amounts.millimetres(34), Amounts.millimetres(22), Amounts.millimetres(9), Optional.empty());

    @Test
    void sheets_of_whole_studs_stay_in_phase() {
        SheetSeams seams = SheetSeams.of(grid(), sheet(1224, 612));

        assertThat(seams.findings()).isEmpty();
        // 2448 mm by 1224 mm hold 73 by 37 channel lines; seams at line 35 and 71 across, 17 and 35 along.
        assertThat(seams.seams())
                .extracting(Seam::name)
                .containsExactly(
                        "seam along column 35", "seam along column 71", "seam along row 17", "seam along row 35");
        assertThat(seams.seams().get(0).crossingChannels()).isEqualTo(33);
    }

    @Test
    void a_sheet_of_a_broken_number_of_studs_is_cut() {
        SheetSeams seams = SheetSeams.of(grid(), sheet(1250, 612));

        assertThat(seams.findings()).singleElement().satisfies(f -> assertThat(f.message())
                .contains("cut off 26 mm")
                .contains("36 studs"));
        assertThat(seams.seams().get(0).name()).isEqualTo("seam along column 35");
    }

    @Test
    void a_slip_within_the_play_costs_nothing() {
        SheetSeams seams = SheetSeams.of(grid(), sheet(1224, 612));
        Seam seam = seams.seams().get(0);

        // The channel is 34 − 22 = 12 mm wide; a cable of 5 mm has 7 mm of play.
        Finding passes = seams.slipped(seam, Amounts.millimetres(7), Amounts.millimetres(5), TradeLength.studs(3));
        Finding wholePitch = seams.slipped(seam, Amounts.millimetres(68), Amounts.millimetres(5), TradeLength.studs(3));

        assertThat(passes.severity()).isEqualTo(Severity.NOTE);
        assertThat(wholePitch.severity()).isEqualTo(Severity.NOTE);
        assertThat(wholePitch.value().orElseThrow().getValue().doubleValue()).isCloseTo(0, within(1e-12));
    }

    @Test
    void a_slip_beyond_the_play_makes_runs_zigzag() {
        SheetSeams seams = SheetSeams.of(grid(), sheet(1224, 612));
        Seam seam = seams.seams().get(0);

        Finding finding = seams.slipped(seam, Amounts.millimetres(44), Amounts.millimetres(5), TradeLength.studs(3));

        // 44 mm are 10 mm beyond a pitch; 33 channels at one run in three: 11 runs; 11 (√(34² + 10²) − 34) = 15.8 mm.
        assertThat(finding.severity()).isEqualTo(Severity.WARNING);
        assertThat(finding.message())
                .contains("11 runs")
                .contains("16 mm more cable")
                .contains("10 mm");
        assertThat(seams.slipped(seam, Amounts.millimetres(24), Amounts.millimetres(5), TradeLength.studs(3))
                        .message())
                .contains("10 mm");
    }

    @Test
    void joints_of_cut_pieces_are_seams_of_the_grid() {
        GeometryFactory factory = new GeometryFactory();
        LineString lower =
                factory.createLineString(new Coordinate[] {new Coordinate(1.19, 0), new Coordinate(1.19, 0.578)});
        LineString upper =
                factory.createLineString(new Coordinate[] {new Coordinate(1.19, 1.224), new Coordinate(1.19, 0.578)});
        LineString level =
                factory.createLineString(new Coordinate[] {new Coordinate(0, 0.578), new Coordinate(2.448, 0.578)});

        SheetSeams seams = SheetSeams.of(grid(), sheet(1224, 612), List.of(lower, upper, level));

        // The same lines as those of whole sheets, so the same channels cross.
        SheetSeams whole = SheetSeams.of(grid(), sheet(1224, 612));
        assertThat(seams.seams()).extracting(Seam::name).containsExactly("seam along column 35", "seam along row 17");
        assertThat(seams.seams().get(0).crossingChannels()).isEqualTo(33);
        assertThat(seams.seams().get(1).crossingChannels())
                .isEqualTo(whole.seams().get(2).crossingChannels());
        LineString atJoint =
                factory.createLineString(new Coordinate[] {new Coordinate(1.2, 0), new Coordinate(1.2, 0.578)});
        assertThat(SheetSeams.of(grid(), sheet(1224, 612), List.of(atJoint)).seams())
                .isEmpty();
    }

    @Test
    void the_worst_slip_is_half_a_pitch_along_the_seam_most_runs_cross() {
        SheetSeams seams = SheetSeams.of(grid(), sheet(1224, 612));
        int crossing =
                seams.seams().stream().mapToInt(Seam::crossingChannels).max().orElseThrow();
        int runs = (crossing + 2) / 3;

        Finding finding = seams.slippedAtWorst(Amounts.millimetres(5), TradeLength.studs(3))
                .orElseThrow();

        assertThat(finding.severity()).isEqualTo(Severity.NOTE);
        assertThat(finding.message())
                .contains("up to 7 mm costs nothing")
                .contains("up to " + runs + " runs zigzag")
                .contains("take " + Math.round(runs * (Math.hypot(34, 17) - 34)) + " mm more cable");
        assertThat(SheetSeams.of(grid(), sheet(5000, 5000))
                        .slippedAtWorst(Amounts.millimetres(5), TradeLength.studs(3)))
                .isEmpty();
    }

    @Test
    void laid_cables_are_counted_where_they_cross() {
        GeometryFactory factory = new GeometryFactory();
        SheetSeams seams = SheetSeams.of(grid(), sheet(1224, 612));
        Seam seam = seams.seams().get(0);
        // The seam lies at x = 1.19 m: two runs across it, one that ends on it, one along it.
        LineString cable = factory.createLineString(new Coordinate[] {
            new Coordinate(0.5, 0.102), new Coordinate(1.9, 0.102), new Coordinate(1.9, 0.204),
                    new Coordinate(1.19, 0.204),
            new Coordinate(1.19, 0.408), new Coordinate(1.9, 0.408), new Coordinate(1.9, 0.51),
                    new Coordinate(0.5, 0.51)
        });

        Finding finding = seams.slipped(seam, Amounts.millimetres(10), Amounts.millimetres(5), List.of(cable));

        assertThat(finding.message()).contains("out of phase: 2 runs across the seam have to zigzag and take 3 mm");
        assertThat(seams.slipped(seam, Amounts.millimetres(10), Amounts.millimetres(5), List.of())
                        .message())
                .contains("no run crosses it");
        assertThat(seams.slippedAtWorst(Amounts.millimetres(5), List.of(cable))
                        .orElseThrow()
                        .message())
                .contains("half a pitch would make 2 runs zigzag");
        assertThat(seams.slippedAtWorst(Amounts.millimetres(5), List.of())).isEmpty();
    }

    /** Sheets laid in bond: the joint at this column is missing in the middle strip, where the cable passes freely. */
    @Test
    void a_cable_between_two_joints_on_one_line_crosses_none() {
        GeometryFactory factory = new GeometryFactory();
        LineString lower =
                factory.createLineString(new Coordinate[] {new Coordinate(1.19, 0), new Coordinate(1.19, 0.408)});
        LineString upper =
                factory.createLineString(new Coordinate[] {new Coordinate(1.19, 0.816), new Coordinate(1.19, 1.224)});
        SheetSeams seams = SheetSeams.of(grid(), sheet(1224, 612), List.of(lower, upper));
        LineString between =
                factory.createLineString(new Coordinate[] {new Coordinate(0.5, 0.612), new Coordinate(1.9, 0.612)});
        LineString across =
                factory.createLineString(new Coordinate[] {new Coordinate(0.5, 0.306), new Coordinate(1.9, 0.306)});

        assertThat(seams.slippedAtWorst(Amounts.millimetres(5), List.of(between)))
                .isEmpty();
        assertThat(seams.slippedAtWorst(Amounts.millimetres(5), List.of(between, across))
                        .orElseThrow()
                        .message())
                .contains("half a pitch would make 1 run zigzag");
    }

    private static ChannelGrid grid() {
        Room room = Room.ofWkt("POLYGON ((0 0, 2448 0, 2448 1224, 0 1224, 0 0))", Units.MILLIMETRE);
        StudLattice lattice = StudLattice.of(
                MEMBRANE,
                new GeometryFactory().createPoint(new Coordinate(-17, -17)),
                Units.MILLIMETRE,
                Amounts.degrees(0));
        return ChannelGrid.of(lattice, room, TradeLength.of(Amounts.millimetres(60)), List.of());
    }

    private static MembraneStock sheet(double width, double length) {
        return new MembraneStock(MembraneStock.Kind.SHEET, Amounts.millimetres(width), Amounts.millimetres(length));
    }
}
