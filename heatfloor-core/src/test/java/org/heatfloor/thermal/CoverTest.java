package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rugs, mats and furniture on the field as laid. */
class CoverTest {

    private static final double SIDE = 0.4;

    private static FloorCover cover(double resistance, double x1, double y1) {
        return new FloorCover(
                "rug", Floors.rectangle(0, 0, x1, y1), Amounts.of(resistance, Units.SQUARE_METRE_KELVIN_PER_WATT));
    }

    private static FloorFieldBuilder patch() {
        return FloorField.builder(FloorBlocks.buildUp(), Floors.climate(22, 12, 2), Floors.rectangle(0, 0, SIDE, SIDE))
                .law(Floors.film(11))
                .cable(Floors.run(Floors.cable(11, 2.5, 6.5), FloorBlocks.serpentine(0.05, 0.1, 4, 0.1, 0.3)));
    }

    /** A rug, a mat and a cabinet over part of a serpentine with its turns, against three-dimensional finite volumes. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.25, 0.2, 0.1", "0.06, 0.4, 0.15, 0.1", "2, 0.15, 0.3, 0.3"})
    void coveredFieldAgreesWithFiniteVolumes(double resistance, double x1, double y1, double mostAtEdge) {
        FloorField field = patch().cover(cover(resistance, x1, y1)).solve();
        int n = 80;
        FiniteVolumeBlock block = FloorBlocks.block(SIDE, SIDE, n, n, (x, y) -> true);
        block.path(FloorBlocks.serpentine(0.05, 0.1, 4, 0.1, 0.3), FloorBlocks.axisRow(), 11);
        double under = 1 / (1 / 11.0 + resistance);
        block.solve((x, y) -> x < x1 && y < y1 ? under : 11, 22, 2, 12);
        double worst = 0;
        double worstAwayFromEdge = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double x = FiniteVolumes.mid(block.x, i);
                double y = FiniteVolumes.mid(block.y, j);
                double surface = block.surface(i, j, x < x1 && y < y1 ? under : 11, 22);
                double apart = Math.abs(Floors.celsius(Floors.at(field, x, y)) - surface);
                worst = Math.max(worst, apart);
                if (Math.abs(x - x1) > 0.03 && Math.abs(y - y1) > 0.03) {
                    worstAwayFromEdge = Math.max(worstAwayFromEdge, apart);
                }
            }
        }
        assertThat(worst).isLessThan(mostAtEdge);
        assertThat(worstAwayFromEdge).isLessThan(0.1);
    }

    @Test
    void heatInIsHeatOutUnderCovers() {
        FloorField field = FloorField.builder(
                        Floors.washroom(), Floors.climate(22, 12, 5.88), Floors.rectangle(0, 0, 1.2, 0.9))
                .cable(Floors.run(Floors.cable(11, 2.5, 6.5), Routes.wandering(7, 1.2, 0.9, 9)))
                .cover(cover(0.1, 0.55, 0.47))
                .cover(new FloorCover(
                        "chest",
                        Floors.rectangle(0.8, 0.2, 1.4, 0.8),
                        Amounts.of(3, Units.SQUARE_METRE_KELVIN_PER_WATT)))
                .solve();
        double supplied = Floors.value(field.supplied());
        assertThat(Floors.value(field.upward()) + Floors.value(field.downward()))
                .isCloseTo(supplied, within(1e-9 * supplied));
        assertThat(field.covered()).hasSize(2).allSatisfy(part -> {
            assertThat(Floors.celsius(part.tile().max())).isGreaterThan(Floors.celsius(part.tileOpen()));
            assertThat(Floors.value(part.planeRise())).isPositive();
        });
    }

    /** A cover over the whole floor is a covering: the section with the resistance on top. */
    @Test
    void coverOverAllIsASection() {
        FloorFieldBuilder builder = FloorField.builder(
                        Floors.washroom(), Floors.climate(22, 12, 5.88), Floors.rectangle(0, 0, 1, 0.8))
                .heatedWithin(Amounts.metres(0.05));
        for (double[][] run : Floors.parallel(1, 0.8, 0.1)) {
            builder.cable(Floors.run(Floors.cable(11, 2.5, 6.5), run));
        }
        FloorField field = builder.cover(cover(0.1, 1, 0.8)).solve();
        Layer felt = Layer.of("felt", Amounts.millimetres(0.001), Amounts.wattsPerMetreKelvin(0.01));
        BuildUp covered = Floors.washroom()
                .coveredBy(felt)
                .withContactUnder(0, Amounts.of(0.0999, Units.SQUARE_METRE_KELVIN_PER_WATT));
        SteadySection section = SteadySection.of(
                covered, Floors.climate(22, 12, 5.88), Floors.cable(11, 2.5, 6.5), Amounts.metres(0.1));
        double tile = Floors.celsius(section.surfaceMean()) + 0.1 * Floors.value(section.upward());
        assertThat(Floors.celsius(field.floor().mean())).isCloseTo(tile, within(0.01));
        assertThat(Floors.value(field.upward())).isCloseTo(0.8 * Floors.value(section.upward()), within(0.02));
        CoveredPart part = field.covered().get(0);
        SteadySection open = SteadySection.of(
                Floors.washroom(), Floors.climate(22, 12, 5.88), Floors.cable(11, 2.5, 6.5), Amounts.metres(0.1));
        assertThat(Floors.celsius(part.sheath(open.sheath()))).isCloseTo(Floors.celsius(section.sheath()), within(0.2));
    }

    @Test
    void thickerCoverIsHotterAndCoversAreJudged() {
        double before = 0;
        for (double resistance : new double[] {0.02, 0.1, 0.14, 0.5, 2}) {
            CoveredPart part = patch().cover(cover(resistance, 0.25, 0.25))
                    .solve()
                    .covered()
                    .get(0);
            double tile = Floors.celsius(part.tile().max());
            assertThat(tile).isGreaterThan(before);
            before = tile;
            assertThat(part.judge(Amounts.celsius(36), Amounts.celsius(90)).severity())
                    .isEqualTo(resistance > 0.15 ? Severity.WARNING : Severity.NOTE);
            assertThat(part.judge(Amounts.celsius(36), Amounts.celsius(36)).isError())
                    .isTrue();
        }
    }
}
