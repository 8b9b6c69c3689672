package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** The verdict on each reading of one test against its band. */
final class ReadingFindings {

    private static final double SLACK = 1e-9;

    private ReadingFindings() {}

    static List<Finding> of(HeatingCable cable, TestLimits limits, MeterTest test) {
        List<Finding> findings = new ArrayList<>();
        String subject = cable.name() + " " + TestSeries.words(test.stage());
        test.conductor().ifPresent(reading -> {
            Band<ElectricResistance> band = coreBand(cable, limits, test);
            if (rangeTooSmall(reading, band)) {
                findings.add(shortRange(subject, "core", reading, band.high(), TestLimits.PRACTICE));
            } else {
                findings.add(between(subject, "core", reading, band, source(limits)));
            }
        });
        test.insulation().ifPresent(reading -> {
            findings.add(atLeast(subject, reading, limits.insulationLeast(), limits.insulationSource()));
            voltage(subject, limits, test).ifPresent(findings::add);
        });
        test.screen().ifPresent(reading -> findings.add(screen(subject, cable, limits, test, reading)));
        test.sensor()
                .flatMap(reading -> limits.sensorBand(test.ambient())
                        .map(band -> between(subject, "sensor", reading, band, TestLimits.PRACTICE)))
                .ifPresent(findings::add);
        return findings;
    }

    /** The band of the core with the meter's accuracy, which the band around a maker's reading has in it already. */
    static Band<ElectricResistance> coreBand(HeatingCable cable, TestLimits limits, MeterTest test) {
        Band<ElectricResistance> band = limits.conductorBand(cable, test.ambient());
        return limits.factoryReading().isPresent() ? band : widened(band, limits.accuracy());
    }

    /** A range that ends within the band has shown nothing about the core. */
    static boolean rangeTooSmall(Reading reading, Band<ElectricResistance> band) {
        return reading.overRange() && reading.ohms() < Si.in("high", band.high(), Units.OHM);
    }

    private static Source source(TestLimits limits) {
        return limits.factoryReading().isPresent()
                ? TestLimits.PRACTICE
                : limits.tolerance().source();
    }

    private static Finding screen(
            String subject, HeatingCable cable, TestLimits limits, MeterTest test, Reading reading) {
        Optional<Band<ElectricResistance>> band = limits.screenBand(cable, test.ambient());
        Quantity<ElectricResistance> most = band.map(Band::high).orElse(limits.screenMost());
        if (reading.overRange() || reading.ohms() > Si.in("screen", most, Units.OHM) * (1 + SLACK)) {
            return error(
                    subject,
                    "screen " + shown(reading) + "; at most " + QuantityText.write(most, 2) + " is accepted",
                    reading,
                    most,
                    TestLimits.PRACTICE);
        }
        if (band.isPresent() && reading.ohms() < Si.in("screen", band.get().low(), Units.OHM) * (1 - SLACK)) {
            return Finding.of(
                    Severity.WARNING,
                    subject,
                    "screen " + shown(reading) + "; at least "
                            + QuantityText.write(band.get().low(), 2)
                            + " is expected from end to end: another path bridges it, or it is not the whole screen",
                    reading.resistance(),
                    band.get().low(),
                    TestLimits.PRACTICE);
        }
        return note(
                subject, "screen", reading, band.map(Band::nominal).orElse(limits.screenMost()), TestLimits.PRACTICE);
    }

    /** A test at a lower voltage proves little: damage shows at the test voltage. */
    static boolean voltageTooLow(TestLimits limits, MeterTest test) {
        double least = Si.in("test voltage", limits.testVoltage(), Units.VOLT) * 0.99;
        return test.insulationVoltage()
                .map(volts -> Si.in("test voltage", volts, Units.VOLT) < least)
                .orElse(false);
    }

    private static Optional<Finding> voltage(String subject, TestLimits limits, MeterTest test) {
        if (test.insulationVoltage().isEmpty()) {
            return Optional.of(Finding.of(
                    Severity.NOTE,
                    subject,
                    "the voltage of the insulation test was not written down; "
                            + QuantityText.write(limits.testVoltage(), 0) + " direct voltage is expected",
                    limits.insulationSource()));
        }
        return voltageTooLow(limits, test)
                ? Optional.of(Finding.of(
                        Severity.WARNING,
                        subject,
                        "the insulation was tested at too low a voltage to show damage: test it again",
                        test.insulationVoltage().get(),
                        limits.testVoltage(),
                        limits.insulationSource()))
                : Optional.empty();
    }

    private static Finding shortRange(
            String subject, String what, Reading reading, Quantity<ElectricResistance> needed, Source source) {
        return Finding.of(
                Severity.WARNING,
                subject,
                what + " " + shown(reading) + "; the meter's range ends too low to show anything: choose a greater one",
                reading.resistance(),
                needed,
                source);
    }

    private static Band<ElectricResistance> widened(Band<ElectricResistance> band, double share) {
        return Band.of(
                Si.in("low", band.low(), Units.OHM) * (1 - share),
                Si.in("nominal", band.nominal(), Units.OHM),
                Si.in("high", band.high(), Units.OHM) * (1 + share),
                Units.OHM);
    }

    private static Finding between(
            String subject, String what, Reading reading, Band<ElectricResistance> band, Source source) {
        String accepted = QuantityText.write(band.low(), 2) + " to " + QuantityText.write(band.high(), 2);
        boolean above = reading.overRange() || reading.ohms() > Si.in("high", band.high(), Units.OHM);
        if (!reading.overRange() && band.contains(reading.resistance())) {
            return note(subject, what, reading, band.nominal(), source);
        }
        return error(
                subject,
                what + " " + shown(reading) + "; " + accepted + " is accepted",
                reading,
                above ? band.high() : band.low(),
                source);
    }

    private static Finding atLeast(String subject, Reading reading, Quantity<ElectricResistance> least, Source source) {
        double ohms = Si.in("least", least, Units.OHM);
        if (reading.ohms() >= ohms * (1 - SLACK)) {
            return note(subject, "insulation", reading, least, source);
        }
        if (reading.overRange()) {
            return Finding.of(
                    Severity.WARNING,
                    subject,
                    "insulation " + shown(reading) + "; the meter's range ends below the "
                            + QuantityText.write(least, 2) + " that must be shown: use an insulation tester",
                    reading.resistance(),
                    least,
                    source);
        }
        return error(
                subject,
                "insulation " + shown(reading) + "; at least " + QuantityText.write(least, 2)
                        + " is accepted: do not cover, do not energise",
                reading,
                least,
                source);
    }

    private static Finding note(
            String subject, String what, Reading reading, Quantity<ElectricResistance> limit, Source source) {
        return Finding.of(
                Severity.NOTE,
                subject,
                what + " " + shown(reading) + " is accepted",
                reading.resistance(),
                limit,
                source);
    }

    private static Finding error(
            String subject, String message, Reading reading, Quantity<ElectricResistance> limit, Source source) {
        return Finding.of(Severity.ERROR, subject, message, reading.resistance(), limit, source);
    }

    private static String shown(Reading reading) {
        String value = reading.ohms() >= 1e6
                ? QuantityText.write(Amounts.of(reading.ohms() / 1e6, Units.MEGAOHM), 2)
                : QuantityText.write(Amounts.ohms(reading.ohms()), 2);
        return (reading.overRange() ? "above " : "") + value;
    }
}
