package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;

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

    /** Surface some minutes after power comes on over an insulating board. */
    static double onBoard(double minutes) {
        return after(
                heatUp(0.5, Floors.layer(20, 0.034, 35, 1450, false), Floors.layer(100, 2.0, 2400, 1000, false)),
                minutes);
    }

    /** The same straight on concrete. */
    static double onConcrete(double minutes) {
        return after(
                heatUp(2, Floors.layer(100, 2.0, 2400, 1000, false), Floors.layer(50, 0.035, 30, 1450, false)),
                minutes);
    }

    /**
     * The law is kept as the floor warms: a cover so thin and so well conducting that it is one lump obeys {@code C·dT/dt = q
     * − 8.92·T^1.1}, solved here by Runge and Kutta's rule with a step of a second.
     */
    @Test
    void filmFollowsTheLaw() {
        BuildUp lump = BuildUp.of(List.of(Floors.layer(10, 400, 2000, 1000, true)));
        HeatUp heatUp = HeatUp.fromCold(
                lump, Floors.climate(20, 20, 0), SurfaceLaws.floorCurve(), Floors.cable(12, 1, 5), Amounts.metres(0.1));
        double t = 0;
        double worst = 0;
        double heldFilm = 8.92 * Math.pow(Math.pow(120 / 8.92, 1 / 1.1), 0.1);
        double worstHeld = 0;
        for (int s = 1; s <= 20_000; s++) {
            double k1 = slope(t);
            double k2 = slope(t + k1 / 2);
            double k3 = slope(t + k2 / 2);
            t += (k1 + 2 * k2 + 2 * k3 + slope(t + k3)) / 6;
            if (s % 200 == 0) {
                double found = Floors.celsius(heatUp.surfaceAfter(Amounts.seconds(s))) - 20;
                worst = Math.max(worst, Math.abs(found - t));
                double held = 120 / heldFilm * (1 - Math.exp(-heldFilm * s / 20_000));
                worstHeld = Math.max(worstHeld, Math.abs(held - t));
            }
        }
        assertThat(worst).isLessThan(0.005);
        assertThat(worstHeld).isBetween(0.1, 0.5);
    }

    private static double slope(double rise) {
        return (120 - 8.92 * Math.pow(Math.max(0, rise), 1.1)) / 20_000;
    }

    /** Held at a setback by less power, the floor stays there when no more comes; with full power it ends at the section. */
    @Test
    void setbackIsSteady() {
        HeatUp cold = HeatUp.fromCold(
                Floors.washroom(),
                Floors.climate(22, 12, 5.88),
                SurfaceLaws.floorCurve(),
                Floors.cable(11, 2.5, 6.5),
                Amounts.metres(0.102));
        assertThat(Floors.celsius(cold.fromSetback(Amounts.celsius(24)).surfaceAfter(Amounts.seconds(0))))
                .isCloseTo(24, within(1e-9));
        SteadySection section = SteadySection.of(
                Floors.washroom(), Floors.climate(22, 12, 5.88), Floors.cable(11, 2.5, 6.5), Amounts.metres(0.102));
        assertThat(Floors.celsius(cold.surfaceAfter(Amounts.of(400, Units.HOUR))))
                .isCloseTo(Floors.celsius(section.surfaceMean()), within(1e-3));
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
