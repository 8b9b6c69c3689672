package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.heatfloor.quantity.Amounts;
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

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "layered.csv", numLinesToSkip = 1, delimiter = ';')
    void layered(
            String id,
            String layers,
            double power,
            double radius,
            double axis,
            double spacing,
            double h,
            double air,
            double u,
            double below,
            double mean,
            double max,
            double min,
            double share,
            double sheath,
            String source) {
        SteadySection section = SteadySection.of(
                Floors.layers(layers),
                Floors.climate(air, below, u),
                Floors.film(h),
                Floors.cable(power, radius, axis),
                Amounts.millimetres(spacing));
        assertThat(Floors.celsius(section.surfaceMean())).isCloseTo(mean, within(0.005));
        assertThat(Floors.celsius(section.surfaceMax())).isCloseTo(max, within(0.005));
        assertThat(Floors.celsius(section.surfaceMin())).isCloseTo(min, within(0.005));
        assertThat(Floors.celsius(section.sheath())).isCloseTo(sheath, within(0.005));
        assertThat(Floors.value(section.shareUpward())).isCloseTo(share, within(0.0002));
    }
}
