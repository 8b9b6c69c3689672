package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeatUpTest {

    /** 160 W/m² at the underside of the mortar. */
    private static HeatUp heatUp(double filmBelow, Layer... below) {
        List<Layer> layers = new java.util.ArrayList<>(
                List.of(Floors.layer(10, 1.3, 2300, 840, false), Floors.layer(8, 1.0, 1800, 1000, true)));
        layers.addAll(List.of(below));
        return HeatUp.fromCold(
                BuildUp.of(layers),
                Floors.climate(20, 20, filmBelow),
                Floors.film(10.8),
                Floors.cable(16, 0.0001, 0.0001),
                Amounts.metres(0.1));
    }

    private static double after(HeatUp heatUp, double minutes) {
        return Floors.celsius(heatUp.surfaceAfter(Amounts.of(minutes, Units.MINUTE)));
    }

    /** Source: an implicit one-dimensional solve made apart from this library, converged to 1e-4 K (derived). */
    @ParameterizedTest
    @CsvSource({"10, 22.08", "30, 25.69", "60, 28.92", "120, 31.57"})
    void overInsulationBoard(double minutes, double expected) {
        HeatUp heatUp =
                heatUp(0.5, Floors.layer(20, 0.034, 35, 1450, false), Floors.layer(100, 2.0, 2400, 1000, false));
        assertThat(after(heatUp, minutes)).isCloseTo(expected, within(0.01));
    }

    /** Source: as above (derived). */
    @ParameterizedTest
    @CsvSource({"10, 20.79", "30, 21.91", "60, 22.88", "120, 24.22"})
    void straightOnConcrete(double minutes, double expected) {
        HeatUp heatUp = heatUp(2, Floors.layer(100, 2.0, 2400, 1000, false), Floors.layer(50, 0.035, 30, 1450, false));
        assertThat(after(heatUp, minutes)).isCloseTo(expected, within(0.01));
    }

    @Test
    void timeToNinetyPercent() {
        HeatUp heatUp =
                heatUp(0.5, Floors.layer(20, 0.034, 35, 1450, false), Floors.layer(100, 2.0, 2400, 1000, false));
        double seconds =
                Floors.value(heatUp.timeToShare(Amounts.of(0.9, Units.ONE)).orElseThrow());
        double target = 20 + 0.9 * (Floors.celsius(heatUp.steadySurface()) - 20);
        assertThat(Floors.celsius(heatUp.surfaceAfter(Amounts.seconds(seconds))))
                .isCloseTo(target, within(1e-6));
        assertThat(seconds).isBetween(3600.0, 40_000.0);
    }
}
