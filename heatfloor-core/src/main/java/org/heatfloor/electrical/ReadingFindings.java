package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.List;
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

    private ReadingFindings() {}

    static List<Finding> of(HeatingCable cable, TestLimits limits, MeterTest test) {
        List<Finding> findings = new ArrayList<>();
        String subject = cable.name() + " " + TestSeries.words(test.stage());
        test.conductor().ifPresent(reading -> {
            Band<ElectricResistance> band = widened(limits.conductorBand(cable, test.ambient()), limits.accuracy());
            findings.add(
                    between(subject, "core", reading, band, limits.tolerance().source()));
        });
        test.insulation()
                .ifPresent(reading ->
                        findings.add(atLeast(subject, reading, limits.insulationLeast(), limits.insulationSource())));
        test.screen()
                .ifPresent(reading -> findings.add(
                        !reading.overRange() && reading.ohms() <= Si.in("screen", limits.screenMost(), Units.OHM)
                                ? note(subject, "screen", reading, limits.screenMost(), TestLimits.PRACTICE)
                                : error(
                                        subject,
                                        "screen " + shown(reading) + "; at most "
                                                + QuantityText.write(limits.screenMost(), 2) + " is accepted",
                                        reading,
                                        limits.screenMost(),
                                        TestLimits.PRACTICE)));
        test.sensor()
                .flatMap(reading -> limits.sensorBand(test.ambient())
                        .map(band -> between(subject, "sensor", reading, band, TestLimits.PRACTICE)))
                .ifPresent(findings::add);
        return findings;
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
        if (reading.ohms() >= ohms) {
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
