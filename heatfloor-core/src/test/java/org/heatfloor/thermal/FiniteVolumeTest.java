package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The series against finite volumes; the mesh is halved once and both answers extrapolated. */
class FiniteVolumeTest {

    private static double[] solve(
            BuildUp buildUp,
            double power,
            double radius,
            double axis,
            double spacing,
            double h,
            double air,
            double u,
            double below,
            double fineness) {
        LayerStack stack = LayerStack.of(buildUp);
        int n = stack.size();
        double[] levels = new double[n + 1];
        for (int i = 0; i < n; i++) {
            levels[i + 1] = levels[i] + stack.thicknessMetres[n - 1 - i];
        }
        double centre = levels[n - 1 - stack.heated] + axis;
        double[] fixedY = new double[n + 2];
        int at = 0;
        for (double level : levels) {
            if (level > centre && at > 0 && fixedY[at - 1] < centre) {
                fixedY[at++] = centre;
            }
            fixedY[at++] = level;
        }
        double[] y = FiniteVolumes.lines(fixedY, p -> fineness * (0.2e-3 + 0.09 * Math.abs(p - centre)));
        double[] x =
                FiniteVolumes.lines(new double[] {0, spacing / 2}, p -> fineness * Math.min(2.5e-3, 0.2e-3 + 0.09 * p));
        FiniteVolumes section = new FiniteVolumes(x, y, (px, py) -> {
            int i = 0;
            while (levels[i + 1] < py) {
                i++;
            }
            return stack.conductivity[n - 1 - i];
        });
        section.disc(0, centre, radius, power);
        section.scaleTo(power / 2);
        section.solve(p -> h, air, u, below);
        double[] s = section.surface(p -> h, air);
        return new double[] {section.mean(s), section.atLeft(s), section.atRight(s), section.circle(centre, radius)};
    }

    @ParameterizedTest(name = "{index}: {0}")
    @CsvFileSource(resources = "sections.csv", numLinesToSkip = 1, delimiter = ';')
    void seriesAgrees(
            String layers,
            double power,
            double radius,
            double axis,
            double spacing,
            double h,
            double air,
            double u,
            double below,
            String source) {
        BuildUp buildUp = Floors.layers(layers);
        SteadySection series = SteadySection.of(
                buildUp,
                Floors.climate(air, below, u),
                Floors.film(h),
                Floors.cable(power, radius, axis),
                Amounts.millimetres(spacing));
        double[] coarse = solve(buildUp, power, radius / 1000, axis / 1000, spacing / 1000, h, air, u, below, 1.4);
        double[] fine = solve(buildUp, power, radius / 1000, axis / 1000, spacing / 1000, h, air, u, below, 0.7);
        double[] found = {
            Floors.celsius(series.surfaceMean()),
            Floors.celsius(series.surfaceMax()),
            Floors.celsius(series.surfaceMin()),
            Floors.celsius(series.sheath())
        };
        for (int i = 0; i < 4; i++) {
            double extrapolated = fine[i] + (fine[i] - coarse[i]) / 3;
            assertThat(found[i]).as("figure " + i + " of " + layers).isCloseTo(extrapolated, within(0.005));
        }
    }

    @Test
    void blockedStripIsCloseEnough() {
        for (double[] c : new double[][] {{0.1, 0.4}, {0.1, 0.8}, {0.15, 0.6}, {0.5, 0.5}, {0.06, 0.3}}) {
            double cover = c[0];
            double width = c[1];
            BuildUp buildUp = BuildUp.of(List.of(
                    Floors.layer(9, 1.3, false),
                    Floors.layer(12.6, 1.0, true),
                    Floors.layer(2.7, 1.0, false),
                    Floors.layer(18, 0.13, false),
                    Floors.layer(40, 0.037, false)));
            BlockedArea blocked = BlockedArea.of(
                    buildUp,
                    Floors.climate(22, 18, 5.88),
                    Floors.film(10.8),
                    Floors.cable(1, 0.5, 6.5),
                    Amounts.millimetres(10),
                    Amounts.of(cover, Units.SQUARE_METRE_KELVIN_PER_WATT),
                    Amounts.metres(width));
            double plane = 0.0607 + 0.0065;
            double[] y = FiniteVolumes.lines(
                    new double[] {0, 0.04, 0.058, 0.0607, plane, 0.0733, 0.0823},
                    p -> 1e-3 + 0.05 * Math.abs(p - plane));
            double[] x = FiniteVolumes.lines(new double[] {0, width / 2, 1.6}, p -> 0.006);
            FiniteVolumes real = new FiniteVolumes(
                    x, y, (px, py) -> py < 0.04 ? 0.037 : py < 0.058 ? 0.13 : py < 0.0733 ? 1.0 : 1.3);
            real.sheet(plane, 100);
            DoubleUnaryOperator film = px -> px < width / 2 ? 1 / (1 / 10.8 + cover) : 10.8;
            real.solve(film, 22, 5.88, 18);
            double[] s = real.surface(film, 22);
            double rise = real.atLeft(s) - real.atRight(s);
            double found = Floors.celsius(blocked.tileCovered()) - Floors.celsius(blocked.tileOpen());
            assertThat(found).isCloseTo(rise, within(0.02 * rise));
        }
    }
}
