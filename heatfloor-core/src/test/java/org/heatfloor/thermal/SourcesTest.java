package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What limits and judgements rest on, and the judgements on comfort. */
class SourcesTest {

    static Stream<Source> sources() {
        List<Source> all = new ArrayList<>();
        for (SurfaceLimit limit : SurfaceLimit.values()) {
            all.add(limit.source());
        }
        for (Beneath beneath : Beneath.values()) {
            all.add(beneath.source());
        }
        for (SealMaterial seal : SealMaterial.values()) {
            all.add(seal.source());
        }
        for (BarefootFloor floor : BarefootFloor.values()) {
            all.add(floor.source());
        }
        for (FloorComfort.Category category : FloorComfort.Category.values()) {
            all.add(category.source());
        }
        for (SurfaceLaw law : SurfaceLaws.sideBySide(Optional.empty(), Amounts.metres(3))) {
            all.add(law.source());
            all.add(law.rangeSource());
        }
        Material.all().forEach(material -> all.add(material.source()));
        all.add(SurfaceLaws.radiationSource());
        all.add(HeatSources.COVERING);
        findings().forEach(finding -> all.add(finding.source()));
        return all.stream();
    }

    private static Stream<Finding> findings() {
        CoveredPart covered = new CoveredPart(
                new FloorCover(
                        "rug", Floors.rectangle(0, 0, 1, 1), Amounts.of(0.1, Units.SQUARE_METRE_KELVIN_PER_WATT)),
                FloorField.builder(Floors.washroom(), Floors.climate(22, 12, 6), Floors.rectangle(0, 0, 0.4, 0.4))
                        .cable(Floors.run(Floors.cable(11, 2.5, 6.5), new double[][] {{0.1, 0.1}, {0.3, 0.3}}))
                        .solve()
                        .floor(),
                Amounts.celsius(30),
                Amounts.kelvins(4));
        return Stream.of(
                FloorComfort.judge("floor", Amounts.celsius(25), FloorComfort.Category.A),
                BarefootFloor.OAK.judge("floor", Amounts.celsius(25)),
                HeatFindings.insulationBelow(Floors.washroom(), Beneath.HEATED_ROOM),
                HeatFindings.lawRange(SurfaceLaws.floorCurve(), Amounts.celsius(60), Amounts.celsius(20)),
                HeatFindings.heatLoss(Amounts.watts(1), Amounts.watts(2)),
                covered.judge(Amounts.celsius(35), Amounts.celsius(90)),
                covered.judge(Amounts.celsius(35), Amounts.celsius(30)));
    }

    /** A document is named with its edition; without one it may only stand as recalled, practice, derived or the brief's. */
    @ParameterizedTest
    @MethodSource("sources")
    void editionOrHonestMark(Source source) {
        if (source.kind() == Source.Kind.DOCUMENT) {
            assertThat(source.text()).containsPattern("\\b(19|20)\\d\\d\\b");
        }
    }

    /** Standards that set limits carry an edition even where it is recalled. */
    @Test
    void recalledLimitsNameTheirEditionToo() {
        for (SurfaceLimit limit : SurfaceLimit.values()) {
            if (limit.source().kind() != Source.Kind.COMMON_PRACTICE) {
                assertThat(limit.source().toString())
                        .startsWith("from memory: ")
                        .containsPattern("[:-]20\\d\\d");
            }
        }
        for (Beneath beneath : Beneath.values()) {
            assertThat(beneath.source().toString()).startsWith("from memory: EN 1264-4:2009");
        }
        for (SurfaceLaw law : SurfaceLaws.sideBySide(Optional.empty(), Amounts.metres(3))) {
            assertThat(law.source().text()).containsPattern("\\b(19|20)\\d\\d\\b");
            assertThat(law.rangeSource().toString()).contains("own range");
        }
    }

    @Test
    void shodComfortHasFigureAndLimit() {
        Finding warm = FloorComfort.judge("K1", Amounts.celsius(29), FloorComfort.Category.B);
        assertThat(warm.severity()).isEqualTo(Severity.WARNING);
        assertThat(warm.message()).contains("12.1 %").contains("too warm");
        assertThat(Floors.value(warm.value().orElseThrow())).isBetween(12.13, 12.15);
        assertThat(Floors.value(warm.limit().orElseThrow())).isEqualTo(10);
        assertThat(FloorComfort.judge("K1", Amounts.celsius(29), FloorComfort.Category.C)
                        .severity())
                .isEqualTo(Severity.NOTE);
        assertThat(FloorComfort.judge("K1", Amounts.celsius(17), FloorComfort.Category.C)
                        .message())
                .contains("too cool");
        for (double edge : new double[] {19.3, 27.9}) {
            assertThat(FloorComfort.judge("K1", Amounts.celsius(edge), FloorComfort.Category.A)
                            .severity())
                    .isEqualTo(Severity.NOTE);
        }
        for (double beyond : new double[] {19.1, 28.1}) {
            assertThat(FloorComfort.judge("K1", Amounts.celsius(beyond), FloorComfort.Category.A)
                            .severity())
                    .isEqualTo(Severity.WARNING);
        }
    }

    /** The bands' ends are where the formula gives the category's share; beyond the formula a floor is still judged. */
    @Test
    void comfortBandsEndAtTheirShare() {
        for (FloorComfort.Category category : FloorComfort.Category.values()) {
            double most = Floors.value(category.mostDissatisfied());
            assertThat(Floors.value(FloorComfort.dissatisfied(category.warmest())))
                    .isCloseTo(most, within(1e-9));
            assertThat(Floors.value(FloorComfort.dissatisfied(category.coolest())))
                    .isCloseTo(most, within(1e-9));
        }
        assertThat(Floors.celsius(FloorComfort.Category.B.warmest())).isCloseTo(28.0, within(0.05));
        assertThat(Floors.celsius(FloorComfort.Category.C.warmest())).isCloseTo(30.1, within(0.05));
        Finding hot = FloorComfort.judge("floor", Amounts.celsius(42), FloorComfort.Category.C);
        assertThat(hot.severity()).isEqualTo(Severity.WARNING);
        assertThat(hot.message()).contains("far too warm");
        assertThat(FloorComfort.judge("floor", Amounts.celsius(1), FloorComfort.Category.C)
                        .message())
                .contains("far too cool");
    }

    @Test
    void barefootComfortDependsOnTheFloor() {
        assertThat(BarefootFloor.STONE_AND_TILE
                        .judge("floor", Amounts.celsius(29))
                        .severity())
                .isEqualTo(Severity.NOTE);
        Finding cool = BarefootFloor.STONE_AND_TILE.judge("floor", Amounts.celsius(25));
        assertThat(cool.severity()).isEqualTo(Severity.WARNING);
        assertThat(cool.message()).contains("too cool");
        assertThat(Floors.value(cool.limit().orElseThrow())).isEqualTo(28);
        assertThat(BarefootFloor.CORK.judge("floor", Amounts.celsius(25)).severity())
                .isEqualTo(Severity.NOTE);
        Finding warm = BarefootFloor.TEXTILE.judge("floor", Amounts.celsius(30));
        assertThat(warm.message()).contains("too warm");
        assertThat(Floors.value(warm.limit().orElseThrow())).isEqualTo(28);
    }
}
