package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.Currency;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;

class ThermostatTest {

    private static final Climate CLIMATE = Climate.of(Amounts.celsius(20), Amounts.celsius(12));
    private static final EmbeddedCable CABLE = Floors.cable(14, 2.5, 6.5);

    /** Weekdays from six, weekends from eight. */
    private static WeeklySchedule schedule() {
        return new WeeklySchedule(
                Amounts.celsius(20),
                List.of(
                        new WeeklySchedule.Period(
                                EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
                                LocalTime.of(6, 0),
                                LocalTime.of(8, 30),
                                Amounts.celsius(27)),
                        new WeeklySchedule.Period(
                                Set.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY),
                                LocalTime.of(8, 0),
                                LocalTime.of(11, 0),
                                Amounts.celsius(27))));
    }

    private static HeatedWeek run(boolean optimalStart, double hysteresis) {
        return new Thermostat(Amounts.kelvins(hysteresis), optimalStart)
                .run(Floors.washroom(), CLIMATE, SurfaceLaws.floorCurve(), CABLE, Amounts.metres(0.102), schedule());
    }

    @Test
    void optimalStartIsWarmInTime() {
        HeatedWeek week = run(true, 0.6);
        assertThat(week.warmings()).hasSize(7).allMatch(HeatedWeek.Warming::reached);
        for (HeatedWeek.Warming warming : week.warmings()) {
            assertThat(Floors.celsius(warming.sensor())).isBetween(26.7, 27.5);
            assertThat(Floors.value(warming.lead())).isBetween(10.0, 300.0);
        }
        assertThat(week.warmings().get(0).from()).isEqualTo(LocalTime.of(6, 0));
        assertThat(week.warmings().get(6).from()).isEqualTo(LocalTime.of(8, 0));
    }

    /** A warmer period straight after a cooler one, whose warm-up takes longer than the cooler one lasts. */
    @Test
    void adjoiningPeriodIsWarmInTimeToo() {
        Set<DayOfWeek> monday = Set.of(DayOfWeek.MONDAY);
        WeeklySchedule steps = new WeeklySchedule(
                Amounts.celsius(20),
                List.of(
                        new WeeklySchedule.Period(monday, LocalTime.of(6, 0), LocalTime.of(6, 20), Amounts.celsius(23)),
                        new WeeklySchedule.Period(
                                monday, LocalTime.of(6, 20), LocalTime.of(8, 0), Amounts.celsius(28))));
        HeatedWeek week = new Thermostat(Amounts.kelvins(0.6), true)
                .run(Floors.washroom(), CLIMATE, SurfaceLaws.floorCurve(), CABLE, Amounts.metres(0.102), steps);
        assertThat(week.warmings()).hasSize(2).allMatch(HeatedWeek.Warming::reached);
        HeatedWeek.Warming second = week.warmings().get(1);
        assertThat(Floors.celsius(second.sensor())).isBetween(27.3, 28.5);
        assertThat(Floors.value(second.lead())).isGreaterThan(20);
    }

    @Test
    void withoutItTheFloorIsLate() {
        HeatedWeek late = run(false, 0.6);
        assertThat(late.warmings()).hasSize(7).noneMatch(HeatedWeek.Warming::reached);
        assertThat(Floors.value(late.onShare()))
                .isLessThan(Floors.value(run(true, 0.6).onShare()));
    }

    @Test
    void widerHysteresisSwitchesLessAndOvershootsMore() {
        HeatedWeek narrow = run(true, 0.4);
        HeatedWeek wide = run(true, 2);
        assertThat(wide.switchings()).isLessThan(narrow.switchings());
        assertThat(Floors.value(wide.overshoot())).isGreaterThan(Floors.value(narrow.overshoot()));
        assertThat(Floors.value(narrow.overshoot())).isBetween(0.2, 0.6);
    }

    private static HeatedWeek monday(WeeklySchedule.Period... periods) {
        return new Thermostat(Amounts.kelvins(1), true)
                .run(
                        Floors.washroom(),
                        CLIMATE,
                        SurfaceLaws.floorCurve(),
                        CABLE,
                        Amounts.metres(0.102),
                        new WeeklySchedule(Amounts.celsius(18), List.of(periods)));
    }

    private static WeeklySchedule.Period period(int from, int to, double celsius) {
        return new WeeklySchedule.Period(
                Set.of(DayOfWeek.MONDAY), LocalTime.of(from, 0), LocalTime.of(to, 0), Amounts.celsius(celsius));
    }

    /** A floor that cools from a warm period into a cooler one has not shot over the cooler temperature. */
    @Test
    void coolingDownIsNoOvershoot() {
        double step = Floors.value(monday(period(6, 9, 29), period(9, 12, 24)).overshoot());
        assertThat(step).isBetween(0.3, 1.3);
    }

    @Test
    void midnightEndsTheDay() {
        HeatedWeek late = monday(period(22, 0, 26));
        HeatedWeek short1 = monday(period(22, 23, 26));
        assertThat(Floors.value(late.onShare())).isGreaterThan(Floors.value(short1.onShare()));
        assertThat(late.warmings()).singleElement().matches(HeatedWeek.Warming::reached);
    }

    /** What full power never reaches is said, and not heated for two days long. */
    @Test
    void unreachableTemperatureIsTold() {
        HeatedWeek week = monday(period(6, 9, 55));
        assertThat(week.findings("floor")).singleElement().satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.WARNING);
            assertThat(f.message()).contains("never reads the 55.0 °C wanted from Monday 06:00");
            assertThat(f.value()).contains(week.sensorAtFullPower());
        });
        assertThat(Floors.value(week.longestLead())).isBetween(60.0, 480.0);
        HeatedWeek late = new Thermostat(Amounts.kelvins(1), false)
                .run(Floors.washroom(), CLIMATE, SurfaceLaws.floorCurve(), CABLE, Amounts.metres(0.102), schedule());
        assertThat(late.findings("floor")).singleElement().matches(f -> f.message()
                .startsWith("On Monday 06:00 the sensor reads"));
        assertThat(run(true, 0.6).findings("floor")).isEmpty();
    }

    /** Held at one temperature, the mean flux is what the steady balance asks for at that temperature. */
    @Test
    void holdingCostsWhatTheBalanceSays() {
        WeeklySchedule always = new WeeklySchedule(Amounts.celsius(27), List.of());
        HeatedWeek week = new Thermostat(Amounts.kelvins(0.4), false)
                .run(Floors.washroom(), CLIMATE, Floors.film(10.8), CABLE, Amounts.metres(0.102), always);
        double share = Floors.value(week.onShare());
        SlowModes floor = new SlowModes(LayerStack.of(Floors.washroom()), CABLE, 0.102, CLIMATE, Floors.film(10.8), 30);
        double full = floor.sensorAtFullPower() - 273.15;
        double idle = floor.sensor() - 273.15;
        assertThat(share).isCloseTo((27 - idle) / (full - idle), within(0.02));
        Tariff tariff = new Tariff(new BigDecimal("0.30"), Currency.getInstance("EUR"));
        double kilowattHours = Floors.value(week.energy(Amounts.squareMetres(2)));
        assertThat(kilowattHours).isCloseTo(share * 14 / 0.102 * 2 * 168 / 1000, within(1e-6));
        assertThat(week.cost(Amounts.squareMetres(2), tariff).doubleValue())
                .isCloseTo(kilowattHours * 0.3, within(0.006));
        assertThat(Floors.value(week.energyPerDay(Amounts.squareMetres(2)))).isCloseTo(kilowattHours / 7, within(1e-9));
    }

    /** The slow modes at full power end where the steady section is. */
    @Test
    void slowModesEndAtTheSection() {
        SlowModes floor =
                new SlowModes(LayerStack.of(Floors.washroom()), CABLE, 0.102, CLIMATE, SurfaceLaws.floorCurve(), 30);
        SteadySection section = SteadySection.of(Floors.washroom(), CLIMATE, CABLE, Amounts.metres(0.102));
        floor.holdSensorAt(1000);
        assertThat(floor.surfaceMean() - 273.15).isCloseTo(Floors.celsius(section.surfaceMean()), within(0.01));
        assertThat(floor.surfaceMax() - 273.15).isCloseTo(Floors.celsius(section.surfaceMax()), within(0.02));
    }

    @Test
    void boardHelpsOnConcrete() {
        BuildUp concrete = BuildUp.of(List.of(
                Floors.layer(9, 1.3, 2300, 840, false),
                Floors.layer(12, 1.0, 1800, 1000, true),
                Floors.layer(100, 2.0, 2400, 1000, false),
                Floors.layer(50, 0.035, 30, 1450, false)));
        BoardComparison both = BoardComparison.of(
                concrete,
                Floors.layer(10, 0.034, 35, 1450, false),
                CLIMATE,
                SurfaceLaws.floorCurve(),
                CABLE,
                Amounts.metres(0.102),
                new Thermostat(Amounts.kelvins(1), true),
                schedule());
        assertThat(Floors.value(both.heatUpWith().orElseThrow()))
                .isLessThan(0.5 * Floors.value(both.heatUpWithout().orElseThrow()));
        assertThat(Floors.value(both.with().shareUpward()))
                .isGreaterThan(Floors.value(both.without().shareUpward()));
        assertThat(Floors.value(both.weekWith().meanFlux()))
                .isLessThan(Floors.value(both.weekWithout().meanFlux()));
    }

    @Test
    void setbackHeatUpIsFasterThanCold() {
        HeatUp cold =
                HeatUp.fromCold(Floors.washroom(), CLIMATE, SurfaceLaws.floorCurve(), CABLE, Amounts.metres(0.102));
        HeatUp setback = cold.fromSetback(Amounts.celsius(23));
        assertThat(Floors.celsius(setback.surfaceAfter(Amounts.seconds(0)))).isCloseTo(23, within(1e-9));
        double fromCold = Floors.value(cold.timeTo(Amounts.celsius(28)).orElseThrow());
        double fromSetback = Floors.value(setback.timeTo(Amounts.celsius(28)).orElseThrow());
        assertThat(fromSetback).isBetween(60.0, fromCold);
        assertThat(cold.timeTo(Amounts.celsius(90))).isEmpty();
        assertThat(Floors.value(setback.timeTo(Amounts.celsius(22)).orElseThrow()))
                .isZero();
    }

    @Test
    void seasonByDegreeHours() {
        SeasonEnergy season = SeasonEnergy.of(Amounts.kelvins(2463), Amounts.of(1, Units.DAY));
        double heat = Floors.value(season.heat(Amounts.of(10, Units.WATT_PER_KELVIN)));
        assertThat(heat).isCloseTo(10 * 2463 * 24 / 1000.0, within(1e-9));
        assertThat(Floors.value(
                        season.electricity(Amounts.of(10, Units.WATT_PER_KELVIN), Amounts.of(80, Units.PERCENT))))
                .isCloseTo(heat / 0.8, within(1e-6));
        assertThat(Floors.value(
                        SeasonEnergy.ofHours(Amounts.celsius(20), List.of(Amounts.celsius(5), Amounts.celsius(25)))
                                .meanOver(Amounts.of(1, Units.HOUR))))
                .isCloseTo(15, within(1e-9));
    }
}
