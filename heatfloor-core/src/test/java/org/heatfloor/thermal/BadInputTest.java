package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.ThermalConductivity;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;

class BadInputTest {

    private static void rejects(String words, ThrowingCallable call) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessageContaining(words);
    }

    private static BuildUp floor() {
        return Floors.washroom();
    }

    @Test
    void layersNameWhatIsWrong() {
        rejects("layer 'tile' thickness", () -> Layer.of("tile", Amounts.metres(0), Amounts.wattsPerMetreKelvin(1.3)));
        rejects("layer 'tile' thickness", () -> Layer.of("tile", Amounts.metres(9), Amounts.wattsPerMetreKelvin(1.3)));
        rejects(
                "layer 'tile' conductivity",
                () -> Layer.of("tile", Amounts.metres(0.01), Amounts.wattsPerMetreKelvin(1300)));
        rejects(
                "layer 'tile' conductivity",
                () -> Layer.of("tile", Amounts.metres(0.01), Amounts.wattsPerMetreKelvin(-1)));
        rejects("layer name", () -> Layer.of(" ", Amounts.metres(0.01), Amounts.wattsPerMetreKelvin(1)));
    }

    /** A film coefficient or a difference smuggled in by a raw cast is still caught at the door. */
    @Test
    @SuppressWarnings("unchecked")
    void wrongDimensionIsCaught() {
        Quantity<ThermalConductivity> film =
                (Quantity<ThermalConductivity>) (Quantity<?>) Amounts.of(1, Units.WATT_PER_SQUARE_METRE_KELVIN);
        rejects("layer 'tile' conductivity", () -> Layer.of("tile", Amounts.metres(0.01), film));
    }

    @Test
    void exactlyOneLayerIsHeated() {
        rejects("0 layers are heated", () -> BuildUp.of(List.of(Floors.layer(10, 1, false))));
        rejects("2 layers are heated", () -> BuildUp.of(List.of(Floors.layer(10, 1, true), Floors.layer(10, 1, true))));
        rejects("0 layers were given", () -> BuildUp.of(List.of()));
        rejects("layerIndex", () -> floor().withContactUnder(4, Amounts.of(0.1, Units.SQUARE_METRE_KELVIN_PER_WATT)));
    }

    @Test
    void temperaturesAreAbsolute() {
        rejects("climate air", () -> Climate.of(Amounts.of(-5, Units.KELVIN), Amounts.celsius(10)));
        rejects("climate below", () -> Climate.of(Amounts.celsius(20), Amounts.celsius(-300)));
        rejects("climate air", () -> Climate.of(Amounts.celsius(295), Amounts.celsius(10)));
    }

    @Test
    void cableLiesInItsLayer() {
        Climate climate = Floors.climate(20, 10, 1);
        rejects("below its layer", () -> Floors.cable(10, 3, 2));
        rejects(
                "inside its layer",
                () -> SteadySection.of(floor(), climate, Floors.cable(10, 3, 11), Amounts.metres(0.1)));
        rejects("spacing", () -> SteadySection.of(floor(), climate, Floors.cable(10, 3, 5), Amounts.millimetres(6)));
        rejects("cable power", () -> Floors.cable(-1, 3, 5));
        rejects("cable power", () -> Floors.cable(2000, 3, 5));
    }

    @Test
    void someHeatMustGetAway() {
        rejects("neither the surface", () -> MeanBalance.with(100, 0.1, 0, 0, 293, 283));
    }

    /** A law that jumps back and forth has no balance; the solvers say so and do not hand out the last guess. */
    @Test
    void noBalanceIsSaid() {
        SurfaceLaw jumping = new SurfaceLaw(
                "jumping",
                Source.derived("a law that cannot be balanced"),
                0,
                1,
                "none",
                (surface, air) -> new SurfaceLaw.Film(surface - air > 6 ? 40 : 4, air));
        assertThatIllegalStateException()
                .isThrownBy(() -> MeanBalance.solve(100, 0.01, 0.3, jumping, 293, 283))
                .withMessageContaining("'jumping': no balance");
        FloorFieldBuilder field = FloorField.builder(
                        floor(), Floors.climate(20, 10, 1), Floors.rectangle(0, 0, 0.5, 0.5))
                .law(jumping)
                .cable(Floors.run(
                        Floors.cable(25, 2, 6), new double[][] {{0.1, 0.1}, {0.1, 0.4}, {0.2, 0.4}, {0.2, 0.1}}));
        assertThatIllegalStateException().isThrownBy(field::solve).withMessageContaining("'jumping': no balance");
    }

    @Test
    void coversHaveShapeAndResistance() {
        FloorShape place = Floors.rectangle(0, 0, 1, 1);
        rejects("cover name", () -> new FloorCover(" ", place, Amounts.of(0.1, Units.SQUARE_METRE_KELVIN_PER_WATT)));
        rejects(
                "cover 'rug' resistance",
                () -> new FloorCover("rug", place, Amounts.of(0, Units.SQUARE_METRE_KELVIN_PER_WATT)));
        rejects(
                "cover 'rug' resistance",
                () -> new FloorCover("rug", place, Amounts.of(11, Units.SQUARE_METRE_KELVIN_PER_WATT)));
    }

    @Test
    void fieldNeedsCablesOnTheFloor() {
        FloorShape floor = Floors.rectangle(0, 0, 1, 1);
        Climate climate = Floors.climate(20, 10, 1);
        rejects("cables", () -> FloorField.builder(floor(), climate, floor).solve());
        rejects("outside the floor", () -> FloorField.builder(floor(), climate, floor)
                .cable(Floors.run(Floors.cable(10, 2, 6), new double[][] {{0, 0}, {1.5, 0}})));
        rejects("nodes are expected", () -> FloorField.builder(floor(), climate, Floors.rectangle(0, 0, 100, 100))
                .cable(Floors.run(Floors.cable(10, 2, 6), new double[][] {{0, 0}, {1, 0}}))
                .solve());
        rejects("corner 1", () -> Floors.run(Floors.cable(10, 2, 6), new double[][] {{0, 0}, {Double.NaN, 0}}));
        rejects("1 corners", () -> Floors.run(Floors.cable(10, 2, 6), new double[][] {{0, 0}}));
        rejects("rectangle", () -> Floors.rectangle(0, 0, 0, 1));
        FloorField field = FloorField.builder(floor(), climate, floor)
                .cable(Floors.run(Floors.cable(10, 2, 6), new double[][] {{0.2, 0.2}, {0.8, 0.2}}))
                .solve();
        rejects("place", () -> Floors.at(field, 2, 0));
        rejects("cableIndex", () -> field.heatedBy(1));
        assertThat(field.within(Floors.rectangle(3, 3, 4, 4))).isEmpty();
        assertThat(field.heatedWithout(List.of(floor))).isEmpty();
        rejects("places", () -> field.warmestOf(new double[0][], Units.METRE));
    }

    @Test
    void cableLiesOnTheFloorItself() {
        FloorShape angle = FloorShape.of(
                new double[][] {{0, 0}, {1, 0}, {1, 0.4}, {0.4, 0.4}, {0.4, 1}, {0, 1}}, List.of(), Units.METRE);
        FloorFieldBuilder field = FloorField.builder(floor(), Floors.climate(20, 10, 1), angle);
        EmbeddedCable cable = Floors.cable(10, 2, 6);
        // Both ends lie on the floor, the way between them does not.
        rejects(
                "outside the floor",
                () -> field.cable(Floors.run(cable, new double[][] {{0.2, 0.9}, {0.9, 0.9}, {0.9, 0.2}})));
        rejects("outside the floor", () -> field.cable(Floors.run(cable, new double[][] {{0.2, 0.9}, {0.9, 0.2}})));
        assertThat(field.cable(Floors.run(cable, new double[][] {{0.2, 0.9}, {0.2, 0.2}, {0.9, 0.2}}))
                        .solve()
                        .heated())
                .isNotNull();
        FloorShape column = FloorShape.of(
                new double[][] {{0, 0}, {1, 0}, {1, 1}, {0, 1}},
                List.<double[][]>of(new double[][] {{0.4, 0.4}, {0.6, 0.4}, {0.6, 0.6}, {0.4, 0.6}}),
                Units.METRE);
        rejects("outside the floor", () -> FloorField.builder(floor(), Floors.climate(20, 10, 1), column)
                .cable(Floors.run(cable, new double[][] {{0.2, 0.5}, {0.8, 0.5}})));
        rejects("longer than 0", () -> Floors.run(cable, new double[][] {{0.2, 0.2}, {0.2, 0.2}}));
    }

    @Test
    void outlinesAreSimpleRings() {
        rejects(
                "outline",
                () -> FloorShape.of(new double[][] {{0, 0}, {1, 1}, {1, 0}, {0, 1}}, List.of(), Units.METRE));
        rejects("outline", () -> FloorShape.of(new double[][] {{0, 0}, {1, 1}, {2, 2}}, List.of(), Units.METRE));
        rejects("outline", () -> FloorShape.of(new double[][] {{0, 0}, {0, 0}, {0, 0}}, List.of(), Units.METRE));
        rejects(
                "hole",
                () -> FloorShape.of(
                        new double[][] {{0, 0}, {3, 0}, {3, 3}, {0, 3}},
                        List.<double[][]>of(new double[][] {{1, 1}, {2, 2}, {2, 1}, {1, 2}}),
                        Units.METRE));
    }

    @Test
    void limitZonesAreNamedAndNarrow() {
        FloorShape strip = Floors.rectangle(0, 0, 5, 1);
        rejects("limit zone name", () -> new LimitZone(" ", strip, SurfaceLimit.OCCUPIED));
        assertThat(new LimitZone("window", strip, SurfaceLimit.PERIPHERAL).limit())
                .isEqualTo(SurfaceLimit.PERIPHERAL);
        rejects(
                "wider than 1.0 m",
                () -> new LimitZone("window", Floors.rectangle(0, 0, 5, 1.1), SurfaceLimit.PERIPHERAL));
    }

    /** Time needs a spacing that the cable fits into, as the section does. */
    @Test
    void spacingHoldsInTimeToo() {
        Climate climate = Floors.climate(20, 10, 1);
        EmbeddedCable cable = Floors.cable(10, 3, 5);
        rejects(
                "spacing",
                () -> HeatUp.fromCold(floor(), climate, SurfaceLaws.floorCurve(), cable, Amounts.millimetres(6)));
        rejects("spacing", () -> new Thermostat(Amounts.kelvins(1), true)
                .run(
                        floor(),
                        climate,
                        SurfaceLaws.floorCurve(),
                        cable,
                        Amounts.millimetres(5),
                        new WeeklySchedule(Amounts.celsius(20), List.of())));
    }

    /** A slip of the point passes the door but not unnoticed. */
    @Test
    void oddConductivitiesAreTold() {
        BuildUp slipped = BuildUp.of(List.of(
                Layer.of("porcelain tile", Amounts.millimetres(9), Amounts.wattsPerMetreKelvin(130)),
                Layer.heated("mortar", Amounts.millimetres(12), Amounts.wattsPerMetreKelvin(0.1)),
                Layer.of("plywood", Amounts.millimetres(18), Amounts.wattsPerMetreKelvin(0.13)),
                Layer.of("unobtainium", Amounts.millimetres(18), Amounts.wattsPerMetreKelvin(130))));
        assertThat(slipped.conductivityFindings())
                .extracting(Finding::subject)
                .containsExactly("porcelain tile", "unobtainium");
        assertThat(slipped.conductivityFindings().get(0).message())
                .contains("130.0 W/(m·K)")
                .contains("1.30 W/(m·K) of porcelain tile");
        assertThat(floor().conductivityFindings()).isEmpty();
        assertThat(Material.named("wood wool board").orElseThrow().name()).isEqualTo("cement-bonded wood wool board");
        assertThat(Material.named("aerated concrete").orElseThrow().name()).contains("aerated");
    }

    @Test
    void membraneIsPartedAtItsStudTops() {
        StuddedLayer studs = new StuddedLayer(
                Amounts.millimetres(34),
                Amounts.millimetres(22),
                Amounts.millimetres(9),
                Amounts.wattsPerMetreKelvin(1),
                Amounts.wattsPerMetreKelvin(0.2));
        BuildUp parted = studs.partedAtStudTops(floor());
        assertThat(parted.layers()).hasSize(6);
        assertThat(Floors.value(parted.heatedLayer().thickness().to(Units.MILLIMETRE)))
                .isCloseTo(9, within(1e-9));
        assertThat(Floors.value(parted.thickness().to(Units.METRE)))
                .isCloseTo(Floors.value(floor().thickness().to(Units.METRE)), within(1e-12));
        assertThat(studs.partedAtStudTops(parted)).isEqualTo(parted);
        rejects("stud height", () -> studs.partedAtStudTops(BuildUp.of(List.of(Floors.layer(8, 1, true)))));
        assertThat(studs.fits(floor(), Floors.cable(11, 2.5, 6.5))).isTrue();
        assertThat(studs.fits(floor(), Floors.cable(11, 2.5, 7))).isFalse();
        assertThat(studs.fits(floor(), Floors.cable(11, 6.5, 7))).isFalse();
    }

    @Test
    void schedulesAreSound() {
        WeeklySchedule.Period morning = new WeeklySchedule.Period(
                Set.of(DayOfWeek.MONDAY), LocalTime.of(6, 0), LocalTime.of(8, 0), Amounts.celsius(28));
        rejects(
                "later than",
                () -> new WeeklySchedule.Period(
                        Set.of(DayOfWeek.MONDAY), LocalTime.of(8, 0), LocalTime.of(6, 0), Amounts.celsius(28)));
        rejects(
                "whole minute",
                () -> new WeeklySchedule.Period(
                        Set.of(DayOfWeek.MONDAY), LocalTime.of(6, 0), LocalTime.of(6, 0, 20), Amounts.celsius(28)));
        rejects("overlap", () -> new WeeklySchedule(Amounts.celsius(18), List.of(morning, morning)));
        rejects("setback", () -> new WeeklySchedule(Amounts.celsius(28), List.of(morning)));
        rejects("hysteresis", () -> new Thermostat(Amounts.kelvins(0), true));
    }

    @Test
    void figuresHaveRanges() {
        rejects("share", () -> SeasonEnergy.of(Amounts.kelvins(10), Amounts.of(1, Units.HOUR))
                .electricity(Amounts.of(5, Units.WATT_PER_KELVIN), Amounts.of(0, Units.ONE)));
        rejects("difference", () -> SeasonEnergy.of(Amounts.kelvins(-1), Amounts.of(1, Units.HOUR)));
        rejects(
                "studDiameter",
                () -> new StuddedLayer(
                        Amounts.millimetres(20),
                        Amounts.millimetres(20),
                        Amounts.millimetres(9),
                        Amounts.wattsPerMetreKelvin(1),
                        Amounts.wattsPerMetreKelvin(0.2)));
        rejects(
                "outdoor",
                () -> SetbackDrift.of(
                        Amounts.celsius(10), Amounts.celsius(10), Amounts.seconds(1), Amounts.seconds(1)));
        rejects("depth", () -> ShapeFactor.buried(Amounts.metres(0.1), Amounts.metres(0.05)));
        rejects(
                "falling",
                () -> HydronicCharacteristic.meanExcess(Amounts.celsius(30), Amounts.celsius(35), Amounts.celsius(20)));
    }

    /** A raw cast gets past the compiler; a rise of 20 K is then no room temperature. */
    @Test
    @SuppressWarnings("unchecked")
    void differenceCastToTemperatureIsCaught() {
        Quantity<Temperature> rise = (Quantity<Temperature>) (Quantity<?>) Amounts.kelvins(20);
        rejects("climate air", () -> Climate.of(rise, Amounts.celsius(10)));
        rejects("climate below", () -> Climate.of(Amounts.celsius(20), rise));
    }
}
