package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.heatfloor.quantity.Amounts;
import org.junit.jupiter.api.Test;

class FloorFieldTest {

    private static final Climate CLIMATE = Climate.of(Amounts.celsius(22), Amounts.celsius(12));

    private static FloorField rows(double width, double height, double spacing, EmbeddedCable cable) {
        FloorFieldBuilder builder =
                FloorField.builder(Floors.washroom(), CLIMATE, FloorShape.rectangle(0, 0, width, height));
        for (double[][] run : Floors.parallel(width, height, spacing)) {
            builder.cable(CableRun.of(cable, run));
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
        assertThat(Floors.celsius(field.at(1.25, 0.7))).isCloseTo(Floors.celsius(section.surfaceMax()), within(0.01));
        assertThat(Floors.celsius(field.at(1.2, 0.7))).isCloseTo(Floors.celsius(section.surfaceMin()), within(0.01));
        assertThat(Floors.celsius(field.floor().max())).isCloseTo(Floors.celsius(section.surfaceMax()), within(0.01));
        assertThat(Floors.celsius(field.floor().min())).isCloseTo(Floors.celsius(section.surfaceMin()), within(0.01));
    }

    @Test
    void energyBalanceCloses() {
        FloorField field = FloorField.builder(Floors.washroom(), CLIMATE, FloorShape.rectangle(0, 0, 2.41, 1.96))
                .cable(CableRun.of(Floors.cable(11, 2.5, 6.5), new double[][] {{0.1, 0.1}, {2.2, 0.1}, {2.2, 1.4}}))
                .solve();
        double supplied = Floors.value(field.supplied());
        double lost = Floors.value(field.upward()) + Floors.value(field.downward());
        assertThat(lost).isCloseTo(supplied, within(1e-9 * supplied));
    }
}
