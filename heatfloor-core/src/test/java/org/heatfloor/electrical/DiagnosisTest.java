package org.heatfloor.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;

class DiagnosisTest {

    static final int SEEDS = 20;

    private static TestSeries series(String core, SimulatedFault fault, long seed) {
        TestLimits limits = FaultCases.limits(core);
        return TestSeries.of(FaultCases.cable(), limits, MeterSimulator.tests(FaultCases.cable(), limits, fault, seed));
    }

    @Test
    void everySimulatedFaultIsPutInItsClass() {
        List<String> missed = new ArrayList<>();
        int cases = 0;
        for (String core : FaultCases.CORES) {
            for (FaultCases.Case each : FaultCases.all()) {
                for (long seed = 0; seed < SEEDS; seed++) {
                    cases++;
                    CableFault named =
                            series(core, each.fault(), seed).diagnosis().fault();
                    if (named != each.expected()) {
                        missed.add(core + " " + each.fault() + " seed " + seed + ": " + named);
                    }
                }
            }
        }
        assertThat(cases).isEqualTo(4 * 57 * SEEDS);
        assertThat(missed).isEmpty();
    }

    @Test
    void aFaultIsSeenAtItsStageAndStopsTheWork() {
        TestSeries cut = series("CuNi44", new SimulatedFault.Cut(TestStage.AFTER_COVERING), 3);
        assertThat(cut.diagnosis().stage()).contains(TestStage.AFTER_COVERING);
        assertThat(cut.mayBeEnergised()).isFalse();
        TestSeries nick = series("CuNi44", new SimulatedFault.Nick(TestStage.FIXED_ON_MEMBRANE, Amounts.ohms(100)), 3);
        assertThat(nick.diagnosis().stage()).contains(TestStage.FIXED_ON_MEMBRANE);
        assertThat(nick.mayBeCovered()).isFalse();
    }

    @Test
    void aShortIsPlacedFromTheColdLead() {
        TestSeries bridged = series("CuNi44", new SimulatedFault.Shorted(TestStage.AFTER_COVERING, 0.5), 11);
        assertThat(Given.in(bridged.diagnosis().distance().orElseThrow(), Units.METRE))
                .isCloseTo(31.5 / 2, within(0.5));
    }

    private static CableFault named(TestFigures figures, SimulatedFault fault, long seed) {
        return Diagnostician.of(FaultCases.cable(), figures, MeterSimulator.tests(figures, fault, seed))
                .fault();
    }

    /**
     * Healthy cables drawn uniformly within −5 % / +10 %, the meter's error normal with 0.5 % standard deviation, the
     * thermometer's with 0.5 K: how many of so many are called faulty.
     */
    static int falseAlarms(String core, int cables) {
        TestFigures figures = TestFigures.of(FaultCases.cable(), FaultCases.limits(core));
        int alarms = 0;
        for (long seed = 0; seed < cables; seed++) {
            if (named(figures, new SimulatedFault.None(), 1_000_000 + seed) != CableFault.NONE) {
                alarms++;
            }
        }
        return alarms;
    }

    @Test
    void healthyCablesPass() {
        for (long seed = 0; seed < 20; seed++) {
            TestSeries healthy = series("CuNi44", new SimulatedFault.None(), seed);
            assertThat(healthy.diagnosis().fault()).isEqualTo(CableFault.NONE);
            assertThat(healthy.mayBeCovered()).isTrue();
            assertThat(healthy.mayBeEnergised()).isTrue();
        }
    }

    private static TestLimits plain() {
        return FaultCases.limits("CuNi44");
    }

    private static MeterTest good(TestStage stage) {
        return MeterTest.at(stage, Amounts.celsius(20))
                .withConductor(Reading.of(Amounts.ohms(152.7)))
                .withInsulation(Reading.above(Amounts.of(999, Units.MEGAOHM)));
    }

    @Test
    void anUntestedStageForbidsCoveringAndEnergising() {
        TestSeries skipped = TestSeries.of(
                FaultCases.cable(), plain(), List.of(good(TestStage.OUT_OF_THE_BOX), good(TestStage.AFTER_COVERING)));
        assertThat(skipped.mayBeCovered()).isFalse();
        assertThat(skipped.findings())
                .filteredOn(Finding::isError)
                .singleElement()
                .satisfies(f -> assertThat(f.message()).contains("when fixed on the membrane"));
        assertThat(TestSeries.of(FaultCases.cable(), plain(), List.of(good(TestStage.OUT_OF_THE_BOX)))
                        .mayBeCovered())
                .isFalse();
    }

    @Test
    void sensorScreenAndDampAreNamed() {
        assertThat(last(t -> t.withSensor(Reading.above(Amounts.ohms(2e6))))).isEqualTo(CableFault.SENSOR_OPEN);
        assertThat(last(t -> t.withSensor(Reading.of(Amounts.ohms(0.4))))).isEqualTo(CableFault.SENSOR_SHORT);
        assertThat(last(t -> t.withScreen(Reading.above(Amounts.ohms(2e6))))).isEqualTo(CableFault.SCREEN_OPEN);
        assertThat(last(t -> t.withInsulation(Reading.of(Amounts.of(4, Units.MEGAOHM)))))
                .isEqualTo(CableFault.INSULATION_FALLING);
        assertThat(last(t -> t.withConductor(Reading.of(Amounts.ohms(161))))).isEqualTo(CableFault.RESISTANCE_RISEN);
    }

    private static CableFault last(java.util.function.UnaryOperator<MeterTest> change) {
        return TestSeries.of(
                        FaultCases.cable(),
                        plain(),
                        List.of(
                                good(TestStage.OUT_OF_THE_BOX),
                                good(TestStage.FIXED_ON_MEMBRANE),
                                change.apply(good(TestStage.AFTER_COVERING))))
                .diagnosis()
                .fault();
    }

    @Test
    void theCoreTellsWhetherThermometerOrSensorIsWrong() {
        TestLimits copper = FaultCases.limits("copper, annealed");
        Reading at20 = Reading.of(Amounts.ohms(152.7));
        Reading sensor20 = Reading.of(copper.sensorCurve().orElseThrow().resistanceAt(Amounts.celsius(20)));
        Reading sensor40 = Reading.of(copper.sensorCurve().orElseThrow().resistanceAt(Amounts.celsius(40)));
        MeterTest sound = MeterTest.at(TestStage.OUT_OF_THE_BOX, Amounts.celsius(20))
                .withConductor(at20)
                .withSensor(sensor20);
        MeterTest sensorOff = MeterTest.at(TestStage.FIXED_ON_MEMBRANE, Amounts.celsius(20))
                .withConductor(at20)
                .withSensor(sensor40);
        MeterTest thermometerOff = MeterTest.at(TestStage.FIXED_ON_MEMBRANE, Amounts.celsius(40))
                .withConductor(at20)
                .withSensor(sensor20);
        assertThat(TestSeries.of(FaultCases.cable(), copper, List.of(sound, sensorOff))
                        .diagnosis()
                        .fault())
                .isEqualTo(CableFault.SENSOR_MISMATCH);
        assertThat(TestSeries.of(FaultCases.cable(), copper, List.of(sound, thermometerOff))
                        .diagnosis()
                        .fault())
                .isEqualTo(CableFault.WRONG_TEMPERATURE);
    }

    @Test
    void aMeterThatEndsTooLowProvesNothing() {
        MeterTest test = MeterTest.at(TestStage.OUT_OF_THE_BOX, Amounts.celsius(20))
                .withInsulation(Reading.above(Amounts.ohms(200_000)));
        TestSeries series = TestSeries.of(FaultCases.cable(), plain(), List.of(test));
        assertThat(series.diagnosis().fault()).isEqualTo(CableFault.NONE);
        assertThat(series.findings()).anySatisfy(f -> assertThat(f.message()).contains("insulation tester"));
        assertThat(series.mayBeEnergised()).isFalse();
    }

    /** Four stages, nothing wrong with the core; only what was proved counts. */
    private static TestSeries everyStage(java.util.function.UnaryOperator<MeterTest> change) {
        return TestSeries.of(
                FaultCases.cable(),
                plain(),
                java.util.Arrays.stream(TestStage.values())
                        .map(stage -> change.apply(good(stage).withScreen(Reading.of(Amounts.ohms(0.5)))))
                        .toList());
    }

    @Test
    void onlyProvedInsulationAndScreenLetItBeEnergised() {
        assertThat(everyStage(test -> test).mayBeEnergised()).isTrue();
        TestSeries shortRange = everyStage(test -> test.withInsulation(Reading.above(Amounts.ohms(200_000))));
        assertThat(shortRange.mayBeCovered()).isFalse();
        assertThat(shortRange.mayBeEnergised()).isFalse();
        TestSeries noScreen = everyStage(test -> good(test.stage()));
        assertThat(noScreen.mayBeEnergised()).isFalse();
        assertThat(noScreen.findings())
                .filteredOn(f -> f.severity() == Severity.WARNING && f.message().contains("screen"))
                .hasSize(4);
    }

    @Test
    void stagesComeInOrder() {
        assertThatThrownBy(() -> TestSeries.of(
                        FaultCases.cable(),
                        plain(),
                        List.of(good(TestStage.AFTER_COVERING), good(TestStage.OUT_OF_THE_BOX))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("OUT_OF_THE_BOX was given after AFTER_COVERING");
    }
}
