package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
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
        rejects("no node", () -> field.over(Floors.rectangle(3, 3, 4, 4)));
    }

    @Test
    void schedulesAreSound() {
        WeeklySchedule.Period morning = new WeeklySchedule.Period(
                Set.of(DayOfWeek.MONDAY), LocalTime.of(6, 0), LocalTime.of(8, 0), Amounts.celsius(28));
        rejects(
                "later than",
                () -> new WeeklySchedule.Period(
                        Set.of(DayOfWeek.MONDAY), LocalTime.of(8, 0), LocalTime.of(6, 0), Amounts.celsius(28)));
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
