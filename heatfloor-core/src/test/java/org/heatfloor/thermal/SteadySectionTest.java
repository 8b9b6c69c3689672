package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.heatfloor.quantity.Amounts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class SteadySectionTest {

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "one-layer.csv", numLinesToSkip = 1, delimiter = ';')
    void oneLayer(
            String id,
            double thickness,
            double k,
            double h,
            double air,
            double u,
            double below,
            double power,
            double axis,
            double spacing,
            double mean,
            double max,
            double min,
            double share,
            double sheath,
            double a1,
            String source) {
        SteadySection section = SteadySection.of(
                Floors.one(thickness, k),
                Floors.climate(air, below, u),
                Floors.film(h),
                Floors.cable(power, 3, 1000 * axis),
                Amounts.metres(spacing));
        assertThat(Floors.celsius(section.surfaceMean())).isCloseTo(mean, within(0.005));
        assertThat(Floors.celsius(section.surfaceMax())).isCloseTo(max, within(0.005));
        assertThat(Floors.celsius(section.surfaceMin())).isCloseTo(min, within(0.005));
        assertThat(Floors.celsius(section.sheath())).isCloseTo(sheath, within(0.005));
        assertThat(Floors.value(section.shareUpward())).isCloseTo(share, within(0.0002));
        assertThat(Floors.value(section.firstAmplitude())).isCloseTo(a1, within(0.0005));
    }

    @Test
    void layeredTileOverBoard() {
        BuildUp floor = BuildUp.of(List.of(
                Floors.layer(10, 1.3, false),
                Floors.layer(10, 1.0, true),
                Floors.layer(10, 0.034, false),
                Floors.layer(120, 2.0, false)));
        SteadySection section = SteadySection.of(
                floor, Floors.climate(20, 10, 0.5), Floors.film(10.8), Floors.cable(12, 3, 4), Amounts.metres(0.08));
        assertThat(Floors.celsius(section.surfaceMean())).isCloseTo(32.914, within(0.005));
        assertThat(Floors.celsius(section.surfaceMax())).isCloseTo(34.416, within(0.005));
        assertThat(Floors.celsius(section.surfaceMin())).isCloseTo(31.748, within(0.005));
        assertThat(Floors.celsius(section.sheath())).isCloseTo(38.945, within(0.005));
        assertThat(Floors.value(section.shareUpward())).isCloseTo(0.9298, within(0.0002));
    }

    @Test
    void layeredStoneOverPlywood() {
        BuildUp floor = BuildUp.of(List.of(
                Floors.layer(12, 2.8, false),
                Floors.layer(8, 1.2, true),
                Floors.layer(1.5, 0.22, false),
                Floors.layer(18, 0.13, false)));
        SteadySection section = SteadySection.of(
                floor, Floors.climate(22, 20, 5.882), Floors.film(10.8), Floors.cable(9, 2.5, 4), Amounts.metres(0.06));
        assertThat(Floors.celsius(section.surfaceMean())).isCloseTo(32.124, within(0.005));
        assertThat(Floors.celsius(section.surfaceMax())).isCloseTo(32.495, within(0.005));
        assertThat(Floors.celsius(section.surfaceMin())).isCloseTo(31.809, within(0.005));
        assertThat(Floors.celsius(section.sheath())).isCloseTo(34.706, within(0.005));
        assertThat(Floors.value(section.shareUpward())).isCloseTo(0.7289, within(0.0002));
    }
}
