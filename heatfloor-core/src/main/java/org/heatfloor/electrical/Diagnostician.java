package org.heatfloor.electrical;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.heatfloor.quantity.QuantityText;

/**
 * From a series of readings to the class of fault, one fault at a time, the most dangerous first: an open core, failed
 * insulation, a temperature that cannot be right, a core that no longer is or never was what the label says ({@link
 * CoreTrend}), screen, insulation that falls.
 */
final class Diagnostician {

    /** A core above this many times its label is called open: a corroded or barely touching break. */
    private static final double OPEN_FACTOR = 20;

    private static final double SLACK = 1e-9;

    private final HeatingCable cable;
    private final TestFigures figures;
    private final List<MeterTest> tests;

    private Diagnostician(HeatingCable cable, TestFigures figures, List<MeterTest> tests) {
        this.cable = cable;
        this.figures = figures;
        this.tests = tests;
    }

    static Diagnosis of(HeatingCable cable, TestFigures figures, List<MeterTest> tests) {
        Diagnostician self = new Diagnostician(cable, figures, tests);
        return self.open()
                .or(self::insulation)
                .or(self::sensorEnds)
                .or(self::temperature)
                .or(() -> CoreTrend.of(cable, figures, tests))
                .or(self::screen)
                .or(self::falling)
                .or(self::rangeTooSmall)
                .orElseGet(self::none);
    }

    private Optional<Diagnosis> open() {
        for (MeterTest test : tests) {
            if (test.conductor().isPresent()) {
                Reading reading = test.conductor().get();
                if (reading.ohms() >= OPEN_FACTOR * figures.label()) {
                    return Optional.of(Diagnosis.of(
                            CableFault.OPEN_CORE,
                            test.stage(),
                            "the core is open " + TestSeries.words(test.stage())
                                    + ": cut through, or a joint with the cold lead has parted; the cable cannot be used"
                                    + " until it is found and repaired with the parts its instructions name"));
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Diagnosis> insulation() {
        for (MeterTest test : tests) {
            if (test.insulation().isPresent()
                    && !test.insulation().get().overRange()
                    && test.insulation().get().ohms() < figures.insulationLeast() * (1 - SLACK)) {
                return Optional.of(Diagnosis.of(
                        CableFault.INSULATION,
                        test.stage(),
                        "the core leaks to the screen " + TestSeries.words(test.stage())
                                + ": a nick, a nail, a crushed place or water in an open end; do not cover, do not"
                                + " energise"));
            }
        }
        return Optional.empty();
    }

    private Optional<Diagnosis> sensorEnds() {
        if (figures.sensor().isEmpty()) {
            return Optional.empty();
        }
        SensorKernel kernel = figures.sensor().get();
        for (MeterTest test : tests) {
            if (test.sensor().isEmpty()) {
                continue;
            }
            Reading reading = test.sensor().get();
            double expected = kernel.ohms(test.celsius());
            if (reading.overRange() || reading.ohms() > 100 * expected) {
                return Optional.of(Diagnosis.of(
                        CableFault.SENSOR_OPEN,
                        test.stage(),
                        "the sensor's circuit is open " + TestSeries.words(test.stage())
                                + ": lead cut, or a contact missing; use the spare sensor"));
            }
            if (reading.ohms() < 0.01 * expected) {
                return Optional.of(Diagnosis.of(
                        CableFault.SENSOR_SHORT,
                        test.stage(),
                        "the sensor's circuit is short " + TestSeries.words(test.stage())
                                + ": lead crushed; use the spare sensor"));
            }
        }
        return Optional.empty();
    }

    /** A meter that shows more than its range, where the range ends too low for an open core. */
    private Optional<Diagnosis> rangeTooSmall() {
        return tests.stream()
                .filter(test -> test.conductor().filter(Reading::overRange).isPresent())
                .findFirst()
                .map(
                        test -> Diagnosis.of(
                                CableFault.UNDECIDED,
                                test.stage(),
                                "the core is above the meter's range " + TestSeries.words(test.stage())
                                        + ", which ends too low to tell an open core from another cable: choose a greater range"));
    }

    private Diagnosis none() {
        Resolution resolution = figures.resolution();
        String part = cable.conductors() == 2
                ? "a touch in the last " + QuantityText.number((1 - resolution.shortened()) * cable.metres(), 1) + " m"
                : "a bridge of less than " + QuantityText.number(100 * (1 - resolution.shortened()), 1) + " % of it";
        return new Diagnosis(
                CableFault.NONE,
                Optional.empty(),
                "tolerance, meter and thermometer explain every reading; what is smaller cannot be told from tolerance: "
                        + part + ", or another cable of " + QuantityText.number(100 * resolution.low(), 1) + " % to "
                        + QuantityText.number(100 * resolution.high(), 1) + " % of the label's resistance",
                Optional.empty());
    }

    /** Sensor and thermometer disagree: the core tells which is right where its coefficient is large enough. */
    private Optional<Diagnosis> temperature() {
        for (MeterTest test : tests) {
            OptionalDouble sensed = figures.sensed(test);
            if (sensed.isEmpty() || Math.abs(sensed.getAsDouble() - test.celsius()) <= figures.sensorKelvins()) {
                continue;
            }
            boolean sensorWrong = false;
            OptionalDouble reference = reference();
            if (reference.isPresent() && test.conductor().isPresent()) {
                double recorded = Math.abs(ratio(test, test.celsius()) / reference.getAsDouble() - 1);
                double bySensor = Math.abs(ratio(test, sensed.getAsDouble()) / reference.getAsDouble() - 1);
                sensorWrong = recorded <= figures.drift() && bySensor > figures.drift();
            }
            String readings = "sensor " + QuantityText.number(sensed.getAsDouble(), 1) + " °C, thermometer "
                    + QuantityText.number(test.celsius(), 1) + " °C " + TestSeries.words(test.stage());
            return Optional.of(
                    sensorWrong
                            ? Diagnosis.of(
                                    CableFault.SENSOR_MISMATCH,
                                    test.stage(),
                                    readings
                                            + "; the core agrees with the thermometer: the sensor is of another kind or"
                                            + " damaged")
                            : Diagnosis.of(
                                    CableFault.WRONG_TEMPERATURE,
                                    test.stage(),
                                    readings + "; measure the cable's temperature again before judging its resistance"
                                            + " (if it stands, the sensor is of another kind)"));
        }
        return Optional.empty();
    }

    private Optional<Diagnosis> screen() {
        for (MeterTest test : tests) {
            if (test.screen().isPresent()
                    && !figures.screened(test.screen().get(), cable.conductors(), test.celsius())) {
                return Optional.of(Diagnosis.of(
                        CableFault.SCREEN_OPEN,
                        test.stage(),
                        "the screen has no path to the protective conductor " + TestSeries.words(test.stage())
                                + ": a fault to it would not be cleared; do not energise"));
            }
        }
        return Optional.empty();
    }

    private Optional<Diagnosis> falling() {
        OptionalDouble first = OptionalDouble.empty();
        for (int i = 0; i < tests.size(); i++) {
            MeterTest test = tests.get(i);
            if (test.insulation().isEmpty()) {
                continue;
            }
            double ohms = test.insulation().get().ohms();
            boolean fell = first.isPresent() && ohms < figures.insulationWatch() && ohms * 10 <= first.getAsDouble();
            if (fell && !test.insulation().get().overRange() && !testedAgain(i)) {
                return Optional.of(Diagnosis.of(
                        CableFault.INSULATION_FALLING,
                        test.stage(),
                        "the insulation has fallen to a tenth or less of the first test "
                                + TestSeries.words(test.stage())
                                + ": damp in an end, or damage on its way; let it dry and test again"));
            }
            if (first.isEmpty()) {
                first = OptionalDouble.of(ohms);
            }
        }
        return Optional.empty();
    }

    /** The insulation was measured again at the same stage: what was damp may have dried. */
    private boolean testedAgain(int number) {
        return tests.subList(number + 1, tests.size()).stream()
                .anyMatch(later -> later.stage() == tests.get(number).stage()
                        && later.insulation().isPresent());
    }

    /** The core's ratio by the tests whose sensor and thermometer agree. */
    private OptionalDouble reference() {
        return tests.stream()
                .filter(test -> test.conductor().isPresent())
                .filter(test -> figures.sensed(test).isPresent()
                        && Math.abs(figures.sensed(test).getAsDouble() - test.celsius()) <= figures.sensorKelvins())
                .mapToDouble(test -> ratio(test, test.celsius()))
                .average();
    }

    private double ratio(MeterTest test, double celsius) {
        return figures.ratio(test.conductor().map(Reading::ohms).orElse(0.0), celsius);
    }
}
