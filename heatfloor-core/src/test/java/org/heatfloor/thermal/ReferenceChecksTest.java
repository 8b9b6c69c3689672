package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Every formula check, one row a figure, with its source and tolerance. */
class ReferenceChecksTest {

    private static final Map<String, ToDoubleFunction<double[]>> CALCULATIONS = Map.ofEntries(
            Map.entry("curve", in -> flux(SurfaceLaws.floorCurve(), 20 + in[0], 20)),
            Map.entry("curve inverse", in -> Floors.celsius(section(in[0]).surfaceMean()) - 20),
            Map.entry("radiation", in -> film(ConvectionFilms.radiative(in[0] + 273.15, in[1] + 273.15), in)),
            Map.entry(
                    "convection",
                    in -> flux(handbook(in[1]), in[0], in[1])
                            - film(ConvectionFilms.radiative(in[0] + 273.15, in[1] + 273.15), in)),
            Map.entry("radiation and convection", in -> flux(handbook(in[1]), in[0], in[2])),
            Map.entry("radiation US", in -> {
                double surface = Si.kelvin("surface", Amounts.of(in[0], Units.FAHRENHEIT));
                double walls = Si.kelvin("walls", Amounts.of(in[1], Units.FAHRENHEIT));
                // The SI form has 5e-8 W/(m²·K⁴), the US form 0.15e-8 Btu/(h·ft²·°R⁴); 1 K is 1.8 °R.
                double ratio = 0.15e-8 * Math.pow(1.8, 4) / 5e-8;
                return ConvectionFilms.radiative(surface, walls) * (surface - walls) * ratio;
            }),
            Map.entry("Awbi-Hatton", in -> ConvectionFilms.awbiHatton(in[0], in[1])),
            Map.entry("Walton", in -> ConvectionFilms.walton(in[0])),
            Map.entry("Walton flux", in -> ConvectionFilms.walton(in[0]) * in[0]),
            Map.entry("dissatisfied", in -> Floors.value(FloorComfort.dissatisfied(Amounts.celsius(in[0])))),
            Map.entry(
                    "hydronic",
                    in -> Floors.value(HydronicCharacteristic.coefficient(
                            Amounts.metres(in[0]),
                            Amounts.metres(in[1]),
                            Amounts.metres(in[2]),
                            Amounts.wattsPerMetreKelvin(in[3]),
                            Amounts.of(in[4], Units.SQUARE_METRE_KELVIN_PER_WATT)))),
            Map.entry(
                    "log mean",
                    in -> Floors.value(HydronicCharacteristic.meanExcess(
                            Amounts.celsius(in[0]), Amounts.celsius(in[1]), Amounts.celsius(in[2])))),
            Map.entry(
                    "hydronic downward",
                    in -> Floors.value(HydronicCharacteristic.downward(
                            Amounts.of(in[0], Units.WATT_PER_SQUARE_METRE),
                            Amounts.of(1 / 10.8 + 0.045, Units.SQUARE_METRE_KELVIN_PER_WATT),
                            Amounts.of(1.02, Units.SQUARE_METRE_KELVIN_PER_WATT),
                            Amounts.kelvins(0)))),
            Map.entry("row", in -> Floors.value(ShapeFactor.row(mm(in[0]), mm(in[1]), mm(in[2])))),
            Map.entry("buried", in -> in[2] * Floors.value(ShapeFactor.buried(mm(in[0]), mm(in[1])))),
            Map.entry("deeply buried", in -> in[2] * Floors.value(ShapeFactor.deeplyBuried(mm(in[0]), mm(in[1])))),
            Map.entry(
                    "buried heat",
                    in -> in[2]
                            * Floors.value(ShapeFactor.deeplyBuried(mm(in[0]), mm(in[1])))
                            * in[3]
                            * (in[4] - in[5])),
            Map.entry("between planes", in -> Floors.value(ShapeFactor.betweenPlanes(mm(in[0]), mm(in[1])))),
            Map.entry(
                    "shell",
                    in -> Floors.value(RadialConduction.shell(
                            Amounts.of(1 / in[3], Units.WATT_PER_METRE),
                            Amounts.metres(in[0] / 2),
                            Amounts.metres(in[1] / 2),
                            Amounts.wattsPerMetreKelvin(in[2])))),
            Map.entry("balance up", in -> balance(in).upward()),
            Map.entry("balance down", in -> balance(in).downward()),
            Map.entry("balance surface", in -> balance(in).surfaceKelvin() - 273.15),
            Map.entry("balance plane", in -> balance(in).planeKelvin() - 273.15),
            Map.entry("lumped capacity", in -> lump().capacity()),
            Map.entry("lumped tau", in -> Floors.value(lump().timeConstant())),
            Map.entry(
                    "lumped minutes",
                    in -> Floors.value(lump().timeToRise(
                                            Amounts.of(in[0], Units.WATT_PER_SQUARE_METRE), Amounts.kelvins(6))
                                    .orElseThrow())
                            / 60),
            Map.entry(
                    "fabric",
                    in -> Floors.value(new RoomHeatLoss(
                                    List.of(
                                            element(in[0], in[1]),
                                            element(in[2], in[3]),
                                            element(in[4], in[5]),
                                            element(in[6], in[7])),
                                    Amounts.of(0, Units.CUBIC_METRE),
                                    Amounts.of(0, RoomHeatLoss.CHANGES_PER_HOUR))
                            .total())),
            Map.entry(
                    "degree hours",
                    in -> 1000
                            * Floors.value(SeasonEnergy.of(Amounts.kelvins(in[2]), Amounts.of(1, Units.HOUR))
                                    .heat(Amounts.of(in[0] * in[1], Units.WATT_PER_KELVIN)))),
            Map.entry(
                    "bare interface",
                    in -> in[5]
                            + Floors.value(RadialConduction.film(
                                    Amounts.of(in[3], Units.WATT_PER_METRE),
                                    mm(in[0] / 2 + in[1]),
                                    Amounts.of(in[4], Units.WATT_PER_SQUARE_METRE_KELVIN)))
                            + Floors.value(RadialConduction.shell(
                                    Amounts.of(in[3], Units.WATT_PER_METRE),
                                    mm(in[0] / 2),
                                    mm(in[0] / 2 + in[1]),
                                    Amounts.wattsPerMetreKelvin(in[2])))),
            Map.entry(
                    "critical radius",
                    in -> 1000
                            * Floors.value(RadialConduction.criticalRadius(
                                    Amounts.wattsPerMetreKelvin(in[0]),
                                    Amounts.of(in[1], Units.WATT_PER_SQUARE_METRE_KELVIN)))),
            Map.entry(
                    "air gap",
                    in -> Floors.value(
                            RadialConduction.airGap(Amounts.of(in[0], Units.WATT_PER_METRE), mm(in[1]), mm(in[2])))),
            Map.entry("drift end", in -> Floors.celsius(drift(in).end())),
            Map.entry("drift mean", in -> Floors.celsius(drift(in).mean())),
            Map.entry("drift saved", in -> 100 * Floors.value(drift(in).mostSavedShare())));

    @ParameterizedTest(name = "{0} {1}")
    @CsvFileSource(resources = "checks.csv", numLinesToSkip = 1, delimiter = ';')
    void check(String id, String what, String inputs, double expected, double tolerance, String source) {
        double[] in = Arrays.stream(inputs.split(" ", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
        assertThat(CALCULATIONS.get(what).applyAsDouble(in))
                .as(id + ": " + source)
                .isCloseTo(expected, within(tolerance));
    }

    private static double film(double coefficient, double[] in) {
        return coefficient * (in[0] - in[1]);
    }

    private static SurfaceLaw handbook(double surroundings) {
        return SurfaceLaws.radiationAndConvection(Optional.of(Amounts.celsius(surroundings)));
    }

    private static double flux(SurfaceLaw law, double surface, double air) {
        return Floors.value(law.flux(Amounts.celsius(surface), Amounts.celsius(air)));
    }

    /** All heat goes up: the curve is inverted by the balance. */
    private static SteadySection section(double flux) {
        return SteadySection.of(
                Floors.one(0.02, 1.0), Floors.climate(20, 20, 0), Floors.cable(flux / 10, 1, 10), Amounts.metres(0.1));
    }

    private static MeanBalance balance(double[] in) {
        return MeanBalance.solve(in[0], in[1], 1 / in[2], SurfaceLaws.floorCurve(), in[3] + 273.15, in[4] + 273.15);
    }

    private static LumpedCover lump() {
        return LumpedCover.of(
                List.of(Floors.layer(10, 1.3, 2300, 840, false), Floors.layer(8, 1.0, 1800, 1000, true)),
                Amounts.of(10.8, Units.WATT_PER_SQUARE_METRE_KELVIN));
    }

    private static RoomHeatLoss.Element element(double area, double transmittance) {
        return new RoomHeatLoss.Element(
                "part",
                Amounts.squareMetres(area),
                Amounts.of(transmittance, Units.WATT_PER_SQUARE_METRE_KELVIN),
                Amounts.of(1, Units.ONE));
    }

    private static SetbackDrift drift(double[] in) {
        return SetbackDrift.of(
                Amounts.celsius(in[0]),
                Amounts.celsius(in[1]),
                Amounts.of(in[2], Units.HOUR),
                Amounts.of(in[3], Units.HOUR));
    }

    private static Quantity<Length> mm(double value) {
        return Amounts.millimetres(value);
    }
}
