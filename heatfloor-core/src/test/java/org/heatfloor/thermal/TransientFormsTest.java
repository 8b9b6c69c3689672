package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

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

    private static final Map<String, ToDoubleFunction<double[]>> FORMS = Map.ofEntries(
            Map.entry("flux on thick body", TransientFormsTest::fluxOnThickBody),
            Map.entry("film on thick body", TransientFormsTest::filmOnThickBody),
            Map.entry("insulated face", in -> slab(NONE, NONE, in[0], true)),
            Map.entry("heated face", in -> slab(NONE, NONE, in[0], false)),
            Map.entry("slab top", in -> slab(10.8, 1e-12, in[0], true)),
            Map.entry("slab base", in -> slab(10.8, 1e-12, in[0], false)),
            Map.entry(
                    "slab eigenvalue",
                    in -> Math.sqrt(
                            0.03 * 0.03 / (1.4 / 2e6 * slabColumn(10.8, 1e-12).slowestSeconds()))),
            Map.entry("slab time constant", in -> slabColumn(10.8, 1e-12).slowestSeconds()),
            Map.entry("cooling centre", in -> cooling(in, false)),
            Map.entry("cooling surface", in -> cooling(in, true)),
            Map.entry("warm-up on board", in -> HeatUpTest.onBoard(in[0])),
            Map.entry("warm-up on concrete", in -> HeatUpTest.onConcrete(in[0])),
            Map.entry("first eigenvalue", in -> {
                LayerStack stack = LayerStack.of(BuildUp.of(List.of(Floors.layer(30, 1, 1000, 1000, true))));
                ThermalColumn column = ThermalColumn.of(stack, 1e-12, in[0] / 0.03, 1e-12, 0);
                return Math.sqrt(0.03 * 0.03 / (1e-6 * column.slowestSeconds()));
            }));

    @ParameterizedTest(name = "{0} {1}")
    @CsvFileSource(resources = "transients.csv", numLinesToSkip = 1, delimiter = ';')
    void check(String id, String what, String inputs, double expected, double tolerance, String source) {
        double[] in = inputs == null
                ? new double[0]
                : Arrays.stream(inputs.split(" ", -1))
                        .mapToDouble(Double::parseDouble)
                        .toArray();
        assertThat(FORMS.get(what).applyAsDouble(in)).as(id + ": " + source).isCloseTo(expected, within(tolerance));
    }

    /** Conductivity, diffusivity, start, flux, seconds, depth; held against the closed form as well. */
    private static double fluxOnThickBody(double[] in) {
        LayerStack stack = body(in[0], in[0] / in[1]);
        ThermalColumn column = ThermalColumn.of(stack, stack.thicknessMetres[0], NONE, NONE, 0);
        double[] state = column.after(column.uniform(0), column.steady(in[3], 0, 0), in[4]);
        double found = in[2] + column.node(state, (int) Math.round(in[5] / 0.001));
        double root = Math.sqrt(in[1] * in[4] / Math.PI);
        double closed = in[2]
                + 2 * in[3] / in[0] * root * Math.exp(-in[5] * in[5] / (4 * in[1] * in[4]))
                - in[3] * in[5] / in[0] * (1 - Erf.erf(in[5] / (2 * Math.sqrt(in[1] * in[4]))));
        assertThat(found).isCloseTo(closed, within(0.05));
        return found;
    }

    /** Conductivity, diffusivity, start, air, film, seconds. */
    private static double filmOnThickBody(double[] in) {
        LayerStack stack = body(in[0], in[0] / in[1]);
        ThermalColumn column = ThermalColumn.of(stack, stack.thicknessMetres[0] / 2, in[4], NONE, 0);
        double[] end = column.steady(0, in[3] - in[2], in[3] - in[2]);
        return in[2] + column.surface(column.after(column.uniform(0), end, in[5]));
    }

    private static ThermalColumn slabColumn(double filmTop, double filmBelow) {
        LayerStack stack = LayerStack.of(BuildUp.of(List.of(Floors.layer(30, 1.4, 2000, 1000, true))));
        return ThermalColumn.of(stack, 1e-12, filmTop, filmBelow, 0);
    }

    /** A slab of 30 mm, 1.4 W/(m·K), 2 MJ/(m³·K), 150 W/m² into its underside. */
    private static double slab(double filmTop, double filmBelow, double seconds, boolean top) {
        ThermalColumn column = slabColumn(filmTop, filmBelow);
        double[] state = column.after(column.uniform(0), column.steady(150, 0, 0), seconds);
        return top ? column.surface(state) : column.plane(state);
    }

    /** Biot and Fourier number of a slab cooling from 1. */
    private static double cooling(double[] in, boolean surface) {
        LayerStack stack = LayerStack.of(BuildUp.of(List.of(Floors.layer(30, 1, 1000, 1000, true))));
        ThermalColumn column = ThermalColumn.of(stack, 1e-12, in[0] / 0.03, 1e-12, 0);
        double[] state = column.after(column.uniform(1), column.steady(0, 0, 0), in[1] * 0.03 * 0.03 / 1e-6);
        return surface ? column.surface(state) : column.plane(state);
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
