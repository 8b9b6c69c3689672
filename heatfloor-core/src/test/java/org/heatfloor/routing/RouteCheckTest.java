package org.heatfloor.routing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.heatfloor.routing.DrawnRoutes.cable;
import static org.heatfloor.routing.DrawnRoutes.check;
import static org.heatfloor.routing.DrawnRoutes.line;
import static org.heatfloor.routing.DrawnRoutes.rounded;
import static org.heatfloor.routing.DrawnRoutes.rows;
import static org.heatfloor.routing.DrawnRoutes.trueLength;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;

class RouteCheckTest {

    private static double millimetres(Quantity<Length> length) {
        return length.to(Units.MILLIMETRE).getValue().doubleValue();
    }

    @Test
    void acceptsABackAndForthAndMeasuresIt() {
        RouteCheckReport report = check().build().check(List.of(cable(20, rows())));

        assertThat(report.findings()).isEmpty();
        assertThat(report.passes()).isTrue();
        CableCheck found = report.cables().get(0);
        double trueMillimetres = 5 * 1700 + 4 * 102 - 8 * 20 * (2 - Math.PI / 2);
        assertThat(millimetres(found.laidLength()) + millimetres(found.chordShortening()))
                .isCloseTo(trueMillimetres, within(0.05));
        assertThat(millimetres(found.leftOver())).isCloseTo(10, within(1.0));
        assertThat(millimetres(found.leastSeparation().orElseThrow())).isCloseTo(102, within(1e-6));
        assertThat(millimetres(found.leastWallClearance())).isCloseTo(136, within(1e-6));
        assertThat(found.leastClearance()).containsOnlyKeys("cabinet", "drain", "movement joint");
        assertThat(millimetres(found.leastClearance().get("cabinet"))).isCloseTo(256, within(1e-6));
        assertThat(millimetres(found.leastClearance().get("drain"))).isCloseTo(900 - 55 - 544, within(1e-6));
        assertThat(millimetres(found.leastClearance().get("movement joint"))).isCloseTo(176, within(1e-6));
        assertThat(millimetres(found.leastBendRadius().orElseThrow())).isCloseTo(20, within(1e-6));
        assertThat(millimetres(found.leastStudGap())).isBetween(17 - 11 - 2.5 - 0.2 - 2, 17 - 11 - 2.5 + 1e-9);
        assertThat(found.rightAngleTurns()).isEqualTo(8);
        assertThat(millimetres(found.coldLeadLengths().get(0))).isCloseTo(136, within(1e-6));
        assertThat(millimetres(found.coldLeadSurplus().get(0))).isCloseTo(1800 - 136, within(1e-6));
    }

    @Test
    void measuresTheStudGapAtTheBendByTheFormulaForCrossingChannels() {
        // Inner stud's centre to arc: r - (r - p/2)·√2, arc's centre on the diagonal.
        CableCheck found =
                check().build().check(List.of(cable(20, rows()))).cables().get(0);
        double gap = 20 - (20 - 17) * Math.sqrt(2) - 11 - 2.5;
        assertThat(millimetres(found.leastStudGap())).isCloseTo(Math.min(3.5, gap), within(0.2));
    }

    @Test
    void acceptsATwoEndedCable() {
        LaidCable cable = twoEnded();
        RouteCheckReport report = check().build().check(List.of(cable));
        assertThat(report.findings()).isEmpty();
        assertThat(report.cables().get(0).coldLeadLengths()).hasSize(2);
    }

    /** The start was measured 12 mm off the wall; a lead may be drawn from there or from the wall itself. */
    @ParameterizedTest
    @ValueSource(doubles = {-12, 0, 12})
    void acceptsALeadFromTheStartAsMeasured(double off) {
        double[] corners = {136, 136, 1836, 136, 1836, 544, 136, 544};
        RouteCheck check =
                check().start(DrawnRoutes.point(off, 136), Units.MILLIMETRE).build();
        for (double from : new double[] {off, 0}) {
            LaidCable cable = cable("K", trueLength(20, corners), rounded(20, 7, corners), line(from, 136, 136, 136));
            assertThat(check.check(List.of(cable)).findings()).isEmpty();
        }
    }

    static LaidCable twoEnded() {
        double[] corners = {136, 136, 1836, 136, 1836, 544, 136, 544};
        return cable(
                "K",
                trueLength(20, corners),
                rounded(20, 7, corners),
                line(0, 136, 136, 136),
                rounded(20, 7, 0, 136, 0, 544, 136, 544));
    }

    @Test
    void acceptsTwoCablesThatKeepTheirSpacing() {
        double[] first = {136, 136, 1836, 136, 1836, 238, 136, 238};
        double[] second = {136, 340, 1836, 340, 1836, 442, 136, 442};
        List<LaidCable> cables = List.of(
                cable("A", trueLength(20, first), rounded(20, 7, first), line(0, 136, 136, 136)),
                cable("B", trueLength(20, second), rounded(20, 7, second), rounded(20, 7, 0, 136, 0, 340, 136, 340)));
        RouteCheckReport report = check().build().check(cables);
        assertThat(report.findings()).isEmpty();
        assertThat(millimetres(report.cables().get(0).leastSeparation().orElseThrow()))
                .isCloseTo(102, within(1e-6));
    }

    @Test
    void warnsOfAColdLeadThroughAMovementJoint() {
        RouteCheckReport report = check().keepOuts(List.of(DrawnRoutes.joint("LINESTRING (70 0, 70 1600)")))
                .build()
                .check(List.of(cable(20, rows())));
        assertThat(report.passes()).isTrue();
        assertThat(report.findings()).extracting(Finding::severity).containsExactly(Severity.WARNING);
        assertThat(report.findings().get(0).message()).contains("sleeve");
    }

    @ParameterizedTest
    @CsvSource({"15, 5", "20, 6", "25, 7", "50, 9", "20, 40", "20, 200"})
    void readsTheRadiusBackFromTheChords(double radius, int chords) {
        DrawnLine drawn = DrawnLine.of(rounded(radius, chords, 0, 0, 500, 0, 500, 400));
        assertThat(DrawnBends.sharpest(drawn).radiusMetres() * 1000).isCloseTo(radius, within(radius * 2e-3));
        assertThat(DrawnBends.rightAngleTurns(drawn)).isEqualTo(1);
        double missing = radius * (Math.PI / 2 - 2 * chords * Math.sin(Math.PI / 4 / chords)) / 1000;
        assertThat(DrawnBends.shorteningMetres(drawn)).isCloseTo(missing, within(missing * 0.02 + 1e-7));
    }

    @Test
    void countsAHalfCircleAsTwoTurnsAndAJogAsTwo() {
        assertThat(DrawnBends.rightAngleTurns(DrawnLine.of(rounded(50, 10, 0, 0, 500, 0, 500, 100, 0, 100))))
                .isEqualTo(2);
        assertThat(DrawnBends.rightAngleTurns(DrawnLine.of(rounded(50, 10, 0, 0, 500, 0, 500, 100, 900, 100))))
                .isEqualTo(2);
    }

    @Test
    void readsASharpCornerAsNoRadiusAtAll() {
        DrawnLine drawn = DrawnLine.of(line(0, 0, 500, 0, 500, 400));
        assertThat(DrawnBends.sharpest(drawn).radiusMetres()).isLessThan(0.001);
        assertThat(DrawnBends.rightAngleTurns(drawn)).isEqualTo(1);
    }

    @Test
    void measuresTheHalfCircleOfTheSpacingRuleAsTheSpacingItself() {
        // On a half circle of diameter s the ends are π/2·s apart along the cable and s apart across.
        DrawnLine drawn = DrawnLine.of(rounded(51, 200, 0, 0, 300, 0, 300, 102, 0, 102));
        double metres = DrawnSeparation.within(drawn, Math.PI / 2 * 0.102).metres();
        assertThat(metres).isCloseTo(0.102, within(1e-5));
    }

    @Test
    void clipsTheExcludedStretchInsteadOfWholeSegments() {
        // A right angle of two long runs: nearest places a gap g apart along lie g/2 each from the corner.
        DrawnLine corner = DrawnLine.of(line(0, 0, 1000, 0, 1000, 1000));
        assertThat(DrawnSeparation.within(corner, 0.16).metres()).isCloseTo(0.16 / Math.sqrt(2), within(1e-12));
        // A straight run: exactly the gap.
        assertThat(DrawnSeparation.within(DrawnLine.of(line(0, 0, 1000, 0)), 0.16)
                        .metres())
                .isCloseTo(0.16, within(1e-12));
        // Shorter than the gap: no two places count.
        assertThat(DrawnSeparation.within(DrawnLine.of(line(0, 0, 100, 0)), 0.16)
                        .metres())
                .isInfinite();
    }

    @Test
    void handsOutCopies() {
        LaidCable cable = cable(20, rows());
        cable.heatingLine().getCoordinateSequence().getCoordinate(0).x = 99;
        cable.coldLeads().get(0).getCoordinateSequence().getCoordinate(0).x = 99;
        assertThat(cable.heatingLine().getCoordinateN(0)).isEqualTo(new Coordinate(0.136, 0.136));
        assertThat(cable.coldLeads().get(0).getCoordinateN(0)).isEqualTo(new Coordinate(0, 0.136));
    }

    @Test
    void refusesWhatIsNotACable() {
        assertThatThrownBy(() -> cable(" ", 1, line(0, 0, 1, 0))).hasMessageContaining("cable name");
        assertThatThrownBy(() -> cable("K", 0, line(0, 0, 1, 0))).hasMessageContaining("length");
        assertThatThrownBy(() -> cable("K", 1, line(0, 0, 0, 0))).hasMessageContaining("without length");
        assertThatThrownBy(() -> cable("K", 1, line(0, 0, Double.NaN, 0))).hasMessageContaining("finite");
        assertThatThrownBy(() -> new LaidCable(
                        "K",
                        line(0, 0, 1, 0),
                        List.of(),
                        Amounts.metres(1),
                        Amounts.millimetres(5),
                        3,
                        Amounts.metres(1)))
                .hasMessageContaining("1 or 2");
    }

    @Test
    void refusesACheckWithoutSpacingOrStart() {
        assertThatThrownBy(() -> RouteCheck.builder(
                                org.heatfloor.area.Room.ofWkt(DrawnRoutes.ROOM, Units.MILLIMETRE),
                                DrawnRoutes.lattice(17, 17, 0))
                        .build())
                .hasMessageContaining("minimum spacing");
        assertThatThrownBy(() -> check().minSpacing(Amounts.metres(0)).build()).hasMessageContaining("spacing");
        assertThatThrownBy(() -> check().wallClearance(Amounts.metres(-1)).build())
                .hasMessageContaining("wall clearance");
    }
}
