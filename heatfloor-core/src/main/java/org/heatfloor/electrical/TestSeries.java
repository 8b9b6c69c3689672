package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;

/**
 * The record of a cable's meter tests from the box to the first energising, with the verdict on each reading and on the
 * whole. Never cover an untested cable; never energise one that failed a test.
 *
 * @param cable the cable
 * @param limits what readings are accepted
 * @param tests the tests in the order taken
 * @param findings a verdict for every reading and every missing test
 * @param diagnosis what the series points to
 */
public record TestSeries(
        HeatingCable cable, TestLimits limits, List<MeterTest> tests, List<Finding> findings, Diagnosis diagnosis) {

    /**
     * Copies the lists.
     *
     * @param cable the cable
     * @param limits what readings are accepted
     * @param tests the tests in the order taken
     * @param findings a verdict for every reading and every missing test
     * @param diagnosis what the series points to
     */
    public TestSeries {
        Objects.requireNonNull(cable, "cable");
        Objects.requireNonNull(limits, "limits");
        Objects.requireNonNull(diagnosis, "diagnosis");
        tests = List.copyOf(tests);
        findings = List.copyOf(findings);
    }

    /**
     * Judges a series.
     *
     * @param cable the cable
     * @param limits what readings are accepted
     * @param tests the tests in the order taken, 1 to 100; a stage may be tested again
     * @return verdicts and diagnosis
     * @throws IllegalArgumentException if there is no test, more than 100, or a stage comes before an earlier one
     */
    public static TestSeries of(HeatingCable cable, TestLimits limits, List<MeterTest> tests) {
        if (tests.isEmpty() || tests.size() > 100) {
            throw new IllegalArgumentException("tests: " + tests.size() + " were given; 1 to 100 are expected");
        }
        for (int i = 1; i < tests.size(); i++) {
            if (tests.get(i).stage().compareTo(tests.get(i - 1).stage()) < 0) {
                throw new IllegalArgumentException("tests: " + tests.get(i).stage() + " was given after "
                        + tests.get(i - 1).stage() + "; the order of the work is expected");
            }
        }
        List<Finding> findings = new ArrayList<>();
        for (MeterTest test : tests) {
            findings.addAll(ReadingFindings.of(cable, limits, test));
            if (test.screen().isEmpty()) {
                findings.add(unmeasured(cable, test, "the continuity of the screen to the protective conductor"));
            }
            if (test.sensor().isEmpty() && limits.sensorCurve().isPresent()) {
                findings.add(unmeasured(cable, test, "the sensor"));
            }
        }
        TestStage last = tests.get(tests.size() - 1).stage();
        Set<TestStage> tested = EnumSet.noneOf(TestStage.class);
        tests.stream()
                .filter(test -> complete(test, limits))
                .map(MeterTest::stage)
                .forEach(tested::add);
        for (TestStage stage : TestStage.values()) {
            if (stage.compareTo(last) <= 0 && !tested.contains(stage)) {
                findings.add(Finding.of(
                        stage.compareTo(last) < 0 ? Severity.ERROR : Severity.WARNING,
                        cable.name(),
                        "no complete test " + words(stage) + ": core and insulation are tested at every stage, and no"
                                + " cable is covered or energised untested",
                        TestLimits.PRACTICE));
            }
        }
        Diagnosis diagnosis = Diagnostician.of(cable, TestFigures.of(cable, limits), tests);
        return new TestSeries(cable, limits, tests, findings, diagnosis);
    }

    /**
     * Whether the cable may be covered: tested out of the box and on the membrane, with no fault and no failed reading.
     *
     * @return true if so
     */
    public boolean mayBeCovered() {
        return passedThrough(TestStage.FIXED_ON_MEMBRANE);
    }

    /**
     * Whether the cable may be handed to the electrician for energising: core and insulation tested at all four stages and
     * the screen's continuity at the last, with no fault and no failed reading.
     *
     * @return true if so
     */
    public boolean mayBeEnergised() {
        boolean screened = tests.stream()
                .anyMatch(test -> test.stage() == TestStage.BEFORE_ENERGISING
                        && test.screen().isPresent());
        return screened && passedThrough(TestStage.BEFORE_ENERGISING);
    }

    private boolean passedThrough(TestStage stage) {
        boolean noFault = diagnosis.fault() == CableFault.NONE || diagnosis.fault() == CableFault.INSULATION_FALLING;
        Set<TestStage> tested = EnumSet.noneOf(TestStage.class);
        tests.stream()
                .filter(test -> complete(test, limits))
                .map(MeterTest::stage)
                .forEach(tested::add);
        return noFault
                && findings.stream().noneMatch(Finding::isError)
                && tested.containsAll(EnumSet.range(TestStage.OUT_OF_THE_BOX, stage));
    }

    private static Finding unmeasured(HeatingCable cable, MeterTest test, String what) {
        return Finding.of(
                Severity.WARNING,
                cable.name() + " " + words(test.stage()),
                what + " was not measured",
                TestLimits.PRACTICE);
    }

    /** A meter whose range ends below the least insulation has shown nothing about it. */
    private static boolean complete(MeterTest test, TestLimits limits) {
        return test.conductor().isPresent()
                && test.insulation()
                        .filter(reading -> !reading.overRange() || reading.ohms() >= limits.insulationLeastOhms())
                        .isPresent();
    }

    static String words(TestStage stage) {
        return switch (stage) {
            case OUT_OF_THE_BOX -> "out of the box";
            case FIXED_ON_MEMBRANE -> "when fixed on the membrane";
            case AFTER_COVERING -> "after covering";
            case BEFORE_ENERGISING -> "before energising";
        };
    }
}
