package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;

class FloorFieldTest {

    private static final Climate CLIMATE = Climate.of(Amounts.celsius(22), Amounts.celsius(12));

    private static FloorField rows(double width, double height, double spacing, EmbeddedCable cable) {
        FloorFieldBuilder builder =
                FloorField.builder(Floors.washroom(), CLIMATE, Floors.rectangle(0, 0, width, height));
        for (double[][] run : Floors.parallel(width, height, spacing)) {
            builder.cable(Floors.run(cable, run));
        }
        return builder.heatedWithin(Amounts.metres(spacing)).solve();
    }

    @Test
    void endlessRowsAreTheSection() {
        EmbeddedCable cable = EmbeddedCable.flushWithStuds(
                Floors.cable(11, 2.5, 6.5).power(), Amounts.millimetres(5), Amounts.millimetres(9));
        FloorField field = rows(2.4, 1.96, 0.1, cable);
        SteadySection section = SteadySection.of(Floors.washroom(), CLIMATE, cable, Amounts.metres(0.1));
        assertThat(Floors.celsius(field.floor().mean())).isCloseTo(Floors.celsius(section.surfaceMean()), within(1e-6));
        assertThat(Floors.celsius(Floors.at(field, 1.25, 0.7)))
                .isCloseTo(Floors.celsius(section.surfaceMax()), within(0.01));
        assertThat(Floors.celsius(Floors.at(field, 1.2, 0.7)))
                .isCloseTo(Floors.celsius(section.surfaceMin()), within(0.01));
        assertThat(Floors.celsius(field.floor().max())).isCloseTo(Floors.celsius(section.surfaceMax()), within(0.01));
        assertThat(Floors.celsius(field.floor().min())).isCloseTo(Floors.celsius(section.surfaceMin()), within(0.01));
    }

    @Test
    void energyBalanceCloses() {
        FloorField field = FloorField.builder(Floors.washroom(), CLIMATE, Floors.rectangle(0, 0, 2.41, 1.96))
                .cable(Floors.run(Floors.cable(11, 2.5, 6.5), new double[][] {{0.1, 0.1}, {2.2, 0.1}, {2.2, 1.4}}))
                .solve();
        double supplied = Floors.value(field.supplied());
        double lost = Floors.value(field.upward()) + Floors.value(field.downward());
        assertThat(lost).isCloseTo(supplied, within(1e-9 * supplied));
    }

    /** A U-turn in a patch of 300 mm against three-dimensional finite volumes. */
    @Test
    void turnAgreesWithFiniteVolumes() {
        List<double[]> path = new ArrayList<>();
        path.add(new double[] {0.1, 0});
        path.add(new double[] {0.1, 0.15});
        for (int a = 1; a < 24; a++) {
            double angle = Math.PI * (1 - a / 24.0);
            path.add(new double[] {0.15 + 0.05 * Math.cos(angle), 0.15 + 0.05 * Math.sin(angle)});
        }
        path.add(new double[] {0.2, 0.15});
        path.add(new double[] {0.2, 0});
        double[][] route = path.toArray(new double[0][]);
        FloorField field = FloorField.builder(
                        FloorBlocks.buildUp(), Floors.climate(22, 12, 2), Floors.rectangle(0, 0, 0.3, 0.3))
                .law(Floors.film(11))
                .cable(Floors.run(Floors.cable(11, 2.5, 6.5), route))
                .solve();

        int n = 75;
        FiniteVolumeBlock patch = FloorBlocks.block(0.3, 0.3, n, n, (x, y) -> true);
        patch.path(route, FloorBlocks.axisRow(), 11);
        patch.solve((x, y) -> 11, 22, 2, 12);
        double worst = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double difference =
                        Floors.celsius(Floors.at(field, FiniteVolumes.mid(patch.x, i), FiniteVolumes.mid(patch.y, j)))
                                - patch.surface(i, j, 11, 22);
                worst = Math.max(worst, Math.abs(difference));
            }
        }
        assertThat(worst).isLessThan(0.03);
    }

    @Test
    void sensorMidwayReadsWhatTheSectionSays() {
        EmbeddedCable cable = Floors.cable(11, 2.5, 6.5);
        FloorField field = rows(2.4, 1.96, 0.1, cable);
        SensorReading sensor = Floors.sensorAt(field, 1.2, 1.0);
        double plane = Floors.celsius(SteadySection.of(Floors.washroom(), CLIMATE, cable, Amounts.metres(0.1))
                .plane());
        ModeTransfer transfer = new ModeTransfer(LayerStack.of(Floors.washroom()), 0.0065, CLIMATE.filmBelowSi());
        double film = Floors.value(field.film());
        double midway = plane;
        for (int n = 1; n < 40_000; n++) {
            double weight = n == 39_999 ? 0.5 : 1;
            midway += weight
                    * (n % 2 == 0 ? 2 : -2)
                    * 110
                    * transfer.at(20 * Math.PI * n).plane(film);
        }
        assertThat(Floors.celsius(sensor.reading())).isCloseTo(midway, within(0.03));
        assertThat(Floors.value(sensor.aboveMean()))
                .isCloseTo(
                        Floors.celsius(sensor.reading())
                                - Floors.celsius(field.heated().mean()),
                        within(1e-9));
    }

    @Test
    void gapShowsAsColdPlace() {
        FloorFieldBuilder builder = FloorField.builder(Floors.washroom(), CLIMATE, Floors.rectangle(0, 0, 2.4, 1.96));
        int n = 0;
        for (double[][] run : Floors.parallel(2.4, 1.96, 0.1)) {
            if (n++ != 12) {
                builder.cable(Floors.run(Floors.cable(11, 2.5, 6.5), run));
            }
        }
        FloorField field = builder.heatedWithin(Amounts.metres(0.05)).solve();
        SurfaceSummary floor = field.floor();
        assertThat(Floors.value(floor.coldest().x())).isCloseTo(1.25, within(0.01));
        assertThat(Floors.celsius(Floors.at(field, 1.25, 1)))
                .isLessThan(Floors.celsius(field.heated().min()));
        assertThat(Floors.value(field.heatedBy(0).area())).isCloseTo(0.1 * 1.96, within(0.02));
        // The missing run leaves one cold stripe from wall to wall, and nothing else is as cold.
        List<ColdPlace> cold = field.coldPlaces(List.of(Floors.rectangle(0, 0, 2.4, 1.96)), Amounts.celsius(28));
        assertThat(cold).hasSize(1);
        assertThat(Floors.value(cold.get(0).coldest().x())).isCloseTo(1.25, within(0.01));
        assertThat(Floors.value(cold.get(0).area())).isBetween(0.04 * 1.96, 0.15 * 1.96);
        assertThat(field.coldPlaces(List.of(Floors.rectangle(0, 0, 1, 1.96)), Amounts.celsius(28)))
                .isEmpty();
        assertThat(Floors.celsius(field.heatedWithout(List.of(Floors.rectangle(0, 0, 1.2, 1.96)))
                        .orElseThrow()
                        .max()))
                .isLessThanOrEqualTo(Floors.celsius(field.heated().max()));
        assertThat(Floors.value(field.intoRoom())).isCloseTo(Floors.value(field.upward()), within(1e-9));
        double[][] grid = field.surfaceGrid(Units.CELSIUS);
        assertThat(grid[10][10])
                .isCloseTo(
                        Floors.celsius(
                                Floors.at(field, 10 * Floors.value(field.stepX()), 10 * Floors.value(field.stepY()))),
                        within(1e-9));
    }
}
