package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

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
        limits.factoryReading().ifPresent(read -> findings.add(tag(cable, limits, read)));
        for (MeterTest test : tests) {
            findings.addAll(ReadingFindings.of(cable, limits, test));
            if (test.screen().isEmpty()) {
                findings.add(unmeasured(cable, test, "the continuity of the screen to the protective conductor"));
            }
            if (test.sensor().isEmpty() && limits.sensorCurve().isPresent()) {
                findings.add(
                        unmeasured(cable, test, "the sensor, which is proved before covering and before energising,"));
            }
        }
        if (limits.sensorCurve().isEmpty()) {
            findings.add(Finding.of(
                    Severity.NOTE,
                    cable.name(),
                    "no floor sensor was stated: none is judged, and no temperature is confirmed by one",
                    Silence.SOURCE));
        }
        TestStage last = tests.get(tests.size() - 1).stage();
        Set<TestStage> tested = stages(cable, limits, tests);
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
     * Whether the cable may be covered: core and insulation tested out of the box and on the membrane, there with its screen
     * and with the floor sensor where one is stated (neither can be reached under the tile), with no fault and no failed
     * reading. A failed reading that the diagnosis does not call a fault counts no more once the whole test was repeated at
     * its stage; insulation that has fallen to a tenth is dried and measured again first.
     *
     * @return true if so
     */
    public boolean mayBeCovered() {
        return proved(TestStage.FIXED_ON_MEMBRANE) && passedThrough(TestStage.FIXED_ON_MEMBRANE);
    }

    /**
     * Whether the cable may be handed to the electrician for energising: core and insulation tested at all four stages, the
     * screen's continuity and the floor sensor, where one is stated, at the last (a thermostat that is blind to the floor
     * overheats it), with no fault and no failed reading. Insulation that has fallen but passes does not forbid it: mortar
     * that has not dried yet lowers it too.
     *
     * @return true if so
     */
    public boolean mayBeEnergised() {
        return proved(TestStage.BEFORE_ENERGISING) && passedThrough(TestStage.BEFORE_ENERGISING);
    }

    /** Screen and sensor were read at a stage, the sensor where one is stated. */
    private boolean proved(TestStage stage) {
        List<MeterTest> there =
                tests.stream().filter(test -> test.stage() == stage).toList();
        return there.stream().anyMatch(test -> test.screen().isPresent())
                && (limits.sensorCurve().isEmpty()
                        || there.stream().anyMatch(test -> test.sensor().isPresent()));
    }

    private boolean passedThrough(TestStage stage) {
        boolean fallen = diagnosis.fault() == CableFault.INSULATION_FALLING && stage == TestStage.BEFORE_ENERGISING;
        boolean noFault = diagnosis.fault() == CableFault.NONE || fallen;
        boolean tagBelongs = limits.factoryReading()
                .map(read -> !tag(cable, limits, read).isError())
                .orElse(true);
        boolean readingsPass = IntStream.range(0, tests.size())
                .filter(i -> !repeated(i))
                .boxed()
                .flatMap(i -> ReadingFindings.of(cable, limits, tests.get(i)).stream())
                .noneMatch(Finding::isError);
        return noFault
                && tagBelongs
                && readingsPass
                && stages(cable, limits, tests).containsAll(EnumSet.range(TestStage.OUT_OF_THE_BOX, stage));
    }

    /** A later test of the same stage read all that this one did. */
    private boolean repeated(int number) {
        MeterTest test = tests.get(number);
        return tests.subList(number + 1, tests.size()).stream()
                .filter(later -> later.stage() == test.stage())
                .anyMatch(later -> (test.conductor().isEmpty()
                                || later.conductor().isPresent())
                        && (test.insulation().isEmpty() || later.insulation().isPresent())
                        && (test.screen().isEmpty() || later.screen().isPresent())
                        && (test.sensor().isEmpty() || later.sensor().isPresent()));
    }

    private static Finding unmeasured(HeatingCable cable, MeterTest test, String what) {
        return Finding.of(
                Severity.WARNING,
                cable.name() + " " + words(test.stage()),
                what + " was not measured",
                TestLimits.PRACTICE);
    }

    /** The maker's reading against the label's tolerance. */
    private static Finding tag(HeatingCable cable, TestLimits limits, Quantity<ElectricResistance> read) {
        double label = Ohm.resistance(cable.volts(), cable.watts());
        double low = label * limits.tolerance().lowFactor();
        double high = label * limits.tolerance().highFactor();
        double ohms = Si.in("factory reading", read, Units.OHM);
        boolean inside = ohms >= low * (1 - limits.accuracy()) && ohms <= high * (1 + limits.accuracy());
        return Finding.of(
                inside ? Severity.NOTE : Severity.ERROR,
                cable.name(),
                inside
                        ? "the maker's reading on the tag lies within the label's tolerance"
                        : "the maker's reading on the tag does not belong to the label: it is another cable",
                read,
                Amounts.ohms(ohms > label ? high : low),
                limits.tolerance().source());
    }

    private static Set<TestStage> stages(HeatingCable cable, TestLimits limits, List<MeterTest> tests) {
        Set<TestStage> tested = EnumSet.noneOf(TestStage.class);
        tests.stream()
                .filter(test -> complete(cable, test, limits))
                .map(MeterTest::stage)
                .forEach(tested::add);
        return tested;
    }

    /** A meter whose range ends too low, or an insulation test at too low a voltage, has shown nothing. */
    private static boolean complete(HeatingCable cable, MeterTest test, TestLimits limits) {
        return test.conductor()
                        .filter(reading ->
                                !ReadingFindings.rangeTooSmall(reading, ReadingFindings.coreBand(cable, limits, test)))
                        .isPresent()
                && !ReadingFindings.voltageTooLow(limits, test)
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
