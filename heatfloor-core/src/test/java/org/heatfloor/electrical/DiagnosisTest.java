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

    static final int SEEDS = 3;

    private static TestSeries series(String core, SimulatedFault fault, long seed) {
        TestLimits limits = FaultCases.limits(core);
        return TestSeries.of(FaultCases.cable(), limits, MeterSimulator.tests(FaultCases.cable(), limits, fault, seed));
    }

    /** How many series were judged, how many of them within the detectable range, and those put in a wrong class. */
    record Tally(int cases, int detectable, int named, List<String> wrong) {}

    /** Worked out once for this test and the chapter's. */
    static Tally tally() {
        return Once.TALLY;
    }

    private static final class Once {
        static final Tally TALLY = counted();
    }

    private static Tally counted() {
        List<String> wrong = new ArrayList<>();
        int cases = 0;
        int detectable = 0;
        int named = 0;
        for (FaultCases.Site site : FaultCases.sites()) {
            TestFigures figures = TestFigures.of(FaultCases.cable(), site.limits());
            for (FaultCases.Case each : FaultCases.all(site)) {
                for (int i = 0; i < SEEDS; i++) {
                    long seed = cases++;
                    TestFigures known = site.tag()
                            ? figures.withFactory(MeterSimulator.factoryOhms(figures, each.fault(), seed))
                            : figures;
                    CableFault fault = named(known, each.fault(), seed);
                    detectable += each.detectable() ? 1 : 0;
                    named += each.detectable() && fault == each.right() ? 1 : 0;
                    if (!each.allows(fault)) {
                        wrong.add(site + " " + each.fault() + " seed " + seed + ": " + fault);
                    }
                }
            }
        }
        return new Tally(cases, detectable, named, wrong);
    }

    /** Within the detectable range every fault is named; beyond it none is put in a wrong class. */
    @Test
    void everySimulatedFaultIsPutInItsClassOverItsWholeRange() {
        Tally tally = tally();
        assertThat(tally.wrong()).isEmpty();
        assertThat(tally.named()).isEqualTo(tally.detectable());
        assertThat(tally.detectable()).isGreaterThan(tally.cases() / 2);
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
     * thermometer's with 0.5 K: how many of so many are called faulty, and how many have a reading outside its band.
     */
    static int[] falseAlarms(String core, int cables) {
        TestFigures figures = TestFigures.of(FaultCases.cable(), FaultCases.limits(core));
        int alarms = 0;
        int outside = 0;
        for (long seed = 0; seed < cables; seed++) {
            List<MeterTest> tests = MeterSimulator.tests(figures, new SimulatedFault.None(), 1_000_000 + seed);
            if (Diagnostician.of(FaultCases.cable(), figures, tests).fault() != CableFault.NONE) {
                alarms++;
            }
            boolean inside = tests.stream()
                    .allMatch(t -> figures.inBand(
                            figures.ratio(t.conductor().orElseThrow().ohms(), t.celsius())));
            outside += inside ? 0 : 1;
        }
        return new int[] {alarms, outside};
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

    static TestLimits plain() {
        return FaultCases.limits("CuNi44");
    }

    static MeterTest good(TestStage stage) {
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
                        .map(stage -> change.apply(good(stage)
                                .withScreen(Reading.of(Amounts.ohms(0.5)))
                                .withSensor(sensorAt20())))
                        .toList());
    }

    static Reading sensorAt20() {
        return Reading.of(plain().sensorCurve().orElseThrow().resistanceAt(Amounts.celsius(20)));
    }

    @Test
    void onlyProvedInsulationScreenAndSensorLetItBeCoveredAndEnergised() {
        TestSeries sound = everyStage(test -> test);
        assertThat(sound.mayBeCovered()).isTrue();
        assertThat(sound.mayBeEnergised()).isTrue();
        TestSeries shortRange = everyStage(test -> test.withInsulation(Reading.above(Amounts.ohms(200_000))));
        assertThat(shortRange.mayBeCovered()).isFalse();
        assertThat(shortRange.mayBeEnergised()).isFalse();
        TestSeries noScreen = everyStage(test -> good(test.stage()).withSensor(sensorAt20()));
        assertThat(noScreen.mayBeCovered()).isFalse();
        assertThat(noScreen.mayBeEnergised()).isFalse();
        assertThat(noScreen.findings())
                .filteredOn(f -> f.severity() == Severity.WARNING && f.message().contains("screen"))
                .hasSize(4);
        TestSeries noSensor = everyStage(test -> good(test.stage()).withScreen(Reading.of(Amounts.ohms(0.5))));
        assertThat(noSensor.mayBeCovered()).isFalse();
        assertThat(noSensor.mayBeEnergised()).isFalse();
        assertThat(noSensor.findings())
                .filteredOn(f -> f.severity() == Severity.WARNING && f.message().contains("sensor"))
                .hasSize(4);
    }

    /** The sensor is proved where it counts: on the membrane for covering, at the last stage for energising. */
    @Test
    void theSensorIsProvedBeforeCoveringAndBeforeEnergising() {
        for (TestStage without : TestStage.values()) {
            TestSeries series = everyStage(
                    test -> test.stage() == without ? good(without).withScreen(Reading.of(Amounts.ohms(0.5))) : test);
            assertThat(series.mayBeCovered()).isEqualTo(without != TestStage.FIXED_ON_MEMBRANE);
            assertThat(series.mayBeEnergised()).isEqualTo(without != TestStage.BEFORE_ENERGISING);
        }
        TestLimits noSensor = TestLimits.of(ElectricalCode.of("IEC 60364"), Alloy.of("CuNi44"));
        TestSeries bare = TestSeries.of(
                FaultCases.cable(),
                noSensor,
                java.util.Arrays.stream(TestStage.values())
                        .map(stage -> good(stage).withScreen(Reading.of(Amounts.ohms(0.5))))
                        .toList());
        assertThat(bare.mayBeEnergised()).isTrue();
        assertThat(bare.findings()).anySatisfy(f -> assertThat(f.message()).contains("no floor sensor was stated"));
    }

    @Test
    void anInsulationTestAtTooLowAVoltageProvesNothing() {
        Reading high = Reading.above(Amounts.of(999, Units.MEGAOHM));
        TestSeries low = everyStage(test -> test.withInsulation(high, Amounts.volts(9)));
        assertThat(low.mayBeCovered()).isFalse();
        assertThat(low.mayBeEnergised()).isFalse();
        assertThat(low.findings())
                .filteredOn(f -> f.message().contains("too low a voltage"))
                .hasSize(4)
                .allSatisfy(f -> assertThat(f.source().text()).contains("IEC 60364-6:2016", "Table 6.1"));
        assertThat(everyStage(test -> test.withInsulation(high, Amounts.volts(500)))
                        .mayBeEnergised())
                .isTrue();
    }

    @Test
    void aMeterWhoseRangeEndsTooLowDoesNotProveAnOpenCore() {
        TestSeries small = everyStage(test -> test.withConductor(Reading.above(Amounts.ohms(200))));
        assertThat(small.diagnosis().fault()).isEqualTo(CableFault.UNDECIDED);
        assertThat(small.mayBeEnergised()).isFalse();
        assertThat(everyStage(test -> test.withConductor(Reading.above(Amounts.ohms(1e6))))
                        .diagnosis()
                        .fault())
                .isEqualTo(CableFault.OPEN_CORE);
    }

    @Test
    void theMakersReadingTellsAShortFromAnotherCable() {
        TestLimits tagged = plain().withFactoryReading(Amounts.ohms(152.7));
        List<MeterTest> half = List.of(good(TestStage.OUT_OF_THE_BOX)
                .withConductor(Reading.of(Amounts.ohms(76.3)))
                .withSensor(sensorAt20()));
        Diagnosis known = TestSeries.of(FaultCases.cable(), tagged, half).diagnosis();
        assertThat(known.fault()).isEqualTo(CableFault.SHORTED_CORE);
        assertThat(Given.in(known.distance().orElseThrow(), Units.METRE)).isCloseTo(31.5 / 2, within(0.1));
        Diagnosis unknown = TestSeries.of(FaultCases.cable(), plain(), half).diagnosis();
        assertThat(unknown.fault()).isEqualTo(CableFault.WRONG_CABLE_OR_SHORT);
        assertThat(unknown.message()).contains("two equal cables", "touch already", "tag");
        TestSeries other = TestSeries.of(FaultCases.cable(), plain().withFactoryReading(Amounts.ohms(76.4)), half);
        assertThat(other.diagnosis().fault()).isEqualTo(CableFault.WRONG_CABLE);
        assertThat(other.findings()).anySatisfy(f -> assertThat(f.message()).contains("does not belong to the label"));
    }

    /** A damaged screen is seen against what its length gives: 0.02 Ω/m over 50 m and two leads of 4 m, 1.16 Ω. */
    @Test
    void theScreenIsHeldAgainstItsLength() {
        HeatingCable single =
                Cables.single("s50", 50, 500, 230).withScreen(CableScreen.of(Amounts.of(0.02, Units.OHM_PER_METRE)));
        Band<?> band = plain().screenBand(single, Amounts.celsius(20)).orElseThrow();
        assertThat(band.low().getValue().doubleValue()).isCloseTo(0.8 * 1.16, within(1e-9));
        assertThat(band.nominal().getValue().doubleValue()).isCloseTo(1.16, within(1e-9));
        assertThat(band.high().getValue().doubleValue()).isCloseTo(1.2 * 1.16 + 0.5, within(1e-9));
        for (double[] each : new double[][] {{1.2, 0}, {2.0, 2}, {0.5, 1}, {9, 2}}) {
            TestSeries series = TestSeries.of(
                    single,
                    plain(),
                    List.of(MeterTest.at(TestStage.OUT_OF_THE_BOX, Amounts.celsius(20))
                            .withScreen(Reading.of(Amounts.ohms(each[0])))));
            Severity expected =
                    List.of(Severity.NOTE, Severity.WARNING, Severity.ERROR).get((int) each[1]);
            assertThat(series.findings())
                    .filteredOn(f -> f.message().startsWith("screen"))
                    .singleElement()
                    .satisfies(f -> assertThat(f.severity()).isEqualTo(expected));
            assertThat(series.diagnosis().fault()).isEqualTo(each[1] == 2 ? CableFault.SCREEN_OPEN : CableFault.NONE);
        }
        HeatingCable twin =
                Cables.twin("t50", 50, 500, 230).withScreen(CableScreen.of(Amounts.of(0.02, Units.OHM_PER_METRE)));
        assertThat(plain().screenBand(twin, Amounts.celsius(20))
                        .orElseThrow()
                        .low()
                        .getValue()
                        .doubleValue())
                .isEqualTo(0);
        assertThat(plain().screenBand(Cables.twin("u", 50, 500, 230), Amounts.celsius(20)))
                .isEmpty();
    }

    @Test
    void aHealthyVerdictSaysWhatItCannotTell() {
        assertThat(everyStage(test -> test).diagnosis().message())
                .contains("cannot be told from tolerance", "in the last 2.3 m", "82.6 % to 121.1 %");
        TestLimits fine = plain().withMeterAccuracy(Amounts.of(0.2, Units.PERCENT));
        assertThat(Given.in(fine.resolution().shortenedShare(), Units.ONE))
                .isGreaterThan(Given.in(plain().resolution().shortenedShare(), Units.ONE));
    }

    /** A single reading just outside its band stops the work until it is repeated; a fault stays one. */
    @Test
    void aRepeatedTestTakesThePlaceOfTheFirst() {
        // 94.0 % of the label, where 94.05 % is accepted; the mean of three is inside.
        double edge = 0.940 * 230 * 230 / 346.5;
        double inside = 0.945 * 230 * 230 / 346.5;
        MeterTest first = good(TestStage.OUT_OF_THE_BOX)
                .withConductor(Reading.of(Amounts.ohms(inside)))
                .withScreen(Reading.of(Amounts.ohms(0.5)))
                .withSensor(sensorAt20());
        MeterTest fixed = MeterTest.at(TestStage.FIXED_ON_MEMBRANE, Amounts.celsius(20))
                .withConductor(Reading.of(Amounts.ohms(edge)))
                .withInsulation(first.insulation().orElseThrow())
                .withScreen(first.screen().orElseThrow())
                .withSensor(sensorAt20());
        MeterTest again = fixed.withConductor(Reading.of(Amounts.ohms(inside)));
        assertThat(mayBeCovered(first, fixed)).isFalse();
        assertThat(mayBeCovered(first, fixed, again)).isTrue();
        // The same failed reading twice is no repeated test that passed.
        assertThat(mayBeCovered(first, fixed, fixed)).isFalse();
        assertThat(mayBeCovered(first, fixed, MeterTest.at(TestStage.FIXED_ON_MEMBRANE, Amounts.celsius(20))))
                .isFalse();
        MeterTest nicked =
                fixed.withConductor(Reading.of(Amounts.ohms(inside))).withInsulation(Reading.of(Amounts.ohms(1000)));
        assertThat(mayBeCovered(first, nicked, again)).isFalse();
    }

    static boolean mayBeCovered(MeterTest... tests) {
        return TestSeries.of(FaultCases.cable(), plain(), List.of(tests)).mayBeCovered();
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
