package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The layers in time against closed forms and published worked examples. */
class TransientFormsTest {

    /** As good as no film, W/(m²·K); a film of nothing has no steady state. */
    private static final double NONE = 1e-4;

    /** A thick body, 1 mm between nodes in its first 160 mm; the topmost slice holds the source at its very top. */
    private static LayerStack body(double k, double rhoC) {
        List<Layer> layers = new ArrayList<>();
        for (double d : new double[] {40, 40, 40, 40, 700}) {
            layers.add(Floors.layer(d, k, 1000, rhoC / 1000, layers.isEmpty()));
        }
        return LayerStack.of(BuildUp.of(layers));
    }

    /** Constant flux on a thick body: Holman example 4-2 (25 mm deep) and an Incropera example (150 mm; from memory). */
    @ParameterizedTest
    @CsvSource({
        "45, 1.4e-5, 35, 3.2e5, 30, 0, 199.4",
        "45, 1.4e-5, 35, 3.2e5, 30, 0.025, 79.3",
        "401, 1.17e-4, 20, 3e5, 120, 0, 120.0",
        "401, 1.17e-4, 20, 3e5, 120, 0.15, 45.4"
    })
    void constantFluxOnThickBody(
            double k, double diffusivity, double start, double flux, double seconds, double depth, double expected) {
        LayerStack stack = body(k, k / diffusivity);
        double axis = stack.thicknessMetres[0];
        ThermalColumn column = ThermalColumn.of(stack, axis, NONE, NONE, 0);
        double[] state = column.after(column.uniform(0), column.steady(flux, 0, 0), seconds);
        double found = start + column.node(state, (int) Math.round(depth / 0.001));
        assertThat(found).isCloseTo(expected, within(0.1));
        double root = Math.sqrt(diffusivity * seconds / Math.PI);
        double closed = start
                + 2 * flux / k * root * Math.exp(-depth * depth / (4 * diffusivity * seconds))
                - flux * depth / k * (1 - Erf.erf(depth / (2 * Math.sqrt(diffusivity * seconds))));
        assertThat(found).isCloseTo(closed, within(0.05));
    }

    /** Air over the ground: Geankoplis example 5.3-1. */
    @Test
    void convectionOnThickBody() {
        double k = 0.865;
        LayerStack stack = body(k, k / 4.65e-7);
        ThermalColumn column = ThermalColumn.of(stack, stack.thicknessMetres[0] / 2, 11.36, NONE, 0);
        double[] end = column.steady(0, -17.8 - 15.6, -17.8 - 15.6);
        double found = 15.6 + column.surface(column.after(column.uniform(0), end, 5 * 3600));
        assertThat(found).isCloseTo(-5.17, within(0.02));
    }

    /** Carslaw and Jaeger 3.8: a slab insulated on one face, flux into the other. */
    @ParameterizedTest
    @CsvSource({"300, 0.279, 1.756", "1800, 3.964, 5.571", "7200, 17.464, 19.071"})
    void slabWithFlux(double seconds, double insulated, double heated) {
        LayerStack stack = LayerStack.of(BuildUp.of(List.of(Floors.layer(30, 1.4, 2000, 1000, true))));
        ThermalColumn column = ThermalColumn.of(stack, 1e-12, NONE, NONE, 0);
        double[] state = column.after(column.uniform(0), column.steady(150, 0, 0), seconds);
        assertThat(column.surface(state)).isCloseTo(insulated, within(0.002));
        assertThat(column.plane(state)).isCloseTo(heated, within(0.002));
    }

    /** A slab heated at its insulated base, film at the top (own derivation, checked by finite differences). */
    @ParameterizedTest
    @CsvSource({
        "600, 0.882, 2.553",
        "1800, 3.239, 5.198",
        "3600, 6.003, 8.288",
        "7200, 9.565, 12.270",
        "1e7, 13.889, 17.103"
    })
    void slabOnInsulation(double seconds, double top, double base) {
        LayerStack stack = LayerStack.of(BuildUp.of(List.of(Floors.layer(30, 1.4, 2000, 1000, true))));
        ThermalColumn column = ThermalColumn.of(stack, 1e-12, 10.8, 1e-12, 0);
        double[] state = column.after(column.uniform(0), column.steady(150, 0, 0), seconds);
        assertThat(column.surface(state)).isCloseTo(top, within(0.002));
        assertThat(column.plane(state)).isCloseTo(base, within(0.002));
        assertThat(column.slowestSeconds()).isCloseTo(5990, within(5.0));
        double zeta = Math.sqrt(0.03 * 0.03 / (1.4 / 2e6 * column.slowestSeconds()));
        assertThat(zeta).isCloseTo(0.46328, within(1e-4));
    }

    /** Incropera 5.5: a slab cooling at Bi 0.3, Fo 1. */
    @Test
    void slabCooling() {
        double k = 1.0;
        LayerStack stack = LayerStack.of(BuildUp.of(List.of(Floors.layer(30, k, 1000, 1000, true))));
        ThermalColumn column = ThermalColumn.of(stack, 1e-12, 0.3 * k / 0.03, 1e-12, 0);
        double[] state = column.after(column.uniform(1), column.steady(0, 0, 0), 0.03 * 0.03 / (k / 1e6));
        assertThat(column.plane(state)).isCloseTo(0.7960, within(1e-4));
        assertThat(column.surface(state)).isCloseTo(0.6900, within(1e-4));
    }

    /** A heater between two thick bodies: rise 2q·√(t/π)/(e1 + e2) (Carslaw and Jaeger). */
    @Test
    void heaterBetweenTwoBodies() {
        List<Layer> layers = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            layers.add(Floors.layer(30, 1.0, 1800, 1000, i == 9));
        }
        for (int i = 0; i < 10; i++) {
            layers.add(Floors.layer(30, 2.0, 2400, 1000, false));
        }
        LayerStack stack = LayerStack.of(BuildUp.of(layers));
        ThermalColumn column = ThermalColumn.of(stack, 1e-12, NONE, NONE, 0);
        double[] state = column.after(column.uniform(0), column.steady(160, 0, 0), 1800);
        double expected = 2 * 160 * Math.sqrt(1800 / Math.PI) / (Math.sqrt(1.8e6) + Math.sqrt(4.8e6));
        assertThat(column.plane(state)).isCloseTo(expected, within(0.002));
    }

    /** A lateral mode settles to what the series says. */
    @Test
    void lateralModeEndsAtTheSeries() {
        LayerStack stack = LayerStack.of(Floors.washroom());
        double beta = 2 * Math.PI / 0.1;
        ThermalColumn column = ThermalColumn.of(stack, 0.0065, 11, 5.88, beta);
        ModeTransfer.Mode mode = new ModeTransfer(stack, 0.0065, 5.88).at(beta);
        double[] end = column.steady(100, 0, 0);
        assertThat(column.surface(end)).isCloseTo(100 * mode.surface(11), within(0.002));
        assertThat(column.plane(end)).isCloseTo(100 * mode.plane(11), within(0.01));
    }
}
