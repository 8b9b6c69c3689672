package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Judgements on one cable at one supply. */
final class CableFindings {

    /** Below this share of its power a cable is taken for the wrong one. */
    private static final double WRONG_CABLE_SHARE = 0.5;

    private static final double SAME = 1e-6;

    private CableFindings() {}

    static List<Finding> of(Supply supply, HeatingCable cable, InstallationDetails details) {
        ElectricalCode code = supply.code();
        List<Finding> findings = new ArrayList<>();
        voltage(supply, cable, findings);
        findings.addAll(ScreenFindings.of(code, cable, details));
        code.rule(RuleTopic.COLD_LEAD_LENGTH).ifPresent(rule -> {
            double least = code.limit(RuleTopic.COLD_LEAD_LENGTH, Units.METRE);
            if (!(Si.in("cold lead", cable.coldLead(), Units.METRE) >= least * (1 - SAME))) {
                findings.add(Finding.of(
                        Severity.WARNING,
                        cable.name(),
                        "the cold lead is shorter than a factory-made one may be",
                        cable.coldLead(),
                        rule.limit(Units.METRE),
                        rule.source()));
            }
        });
        code.rule(RuleTopic.LINEAR_POWER).ifPresent(rule -> {
            double most = code.limit(RuleTopic.LINEAR_POWER, Units.WATT_PER_METRE);
            if (EditionFindings.inConcrete(details) && !(cable.watts() / cable.metres() <= most * (1 + SAME))) {
                findings.add(Finding.of(
                        Severity.ERROR,
                        cable.name(),
                        "power per length is above the limit for cable in concrete",
                        cable.linearPower(),
                        rule.limit(Units.WATT_PER_METRE),
                        rule.source()));
            }
        });
        return findings;
    }

    private static void voltage(Supply supply, HeatingCable cable, List<Finding> findings) {
        double ratio = supply.volts() / cable.volts();
        if (Math.abs(ratio - 1) <= SAME) {
            return;
        }
        SupplyTolerance usual = SupplyTolerance.of(supply.code());
        Quantity<Power> power = Amounts.watts(Ohm.power(supply.volts(), Ohm.resistance(cable.volts(), cable.watts())));
        String on = "a cable for " + QuantityText.write(cable.voltage(), 1) + " on "
                + QuantityText.write(supply.voltage(), 1) + " gives " + QuantityText.write(power, 1) + ", "
                + QuantityText.number(100 * ratio * ratio, 1) + " % of its rated power; ";
        if (ratio > usual.highFactor() * (1 + SAME)) {
            findings.add(Finding.of(
                    Severity.ERROR,
                    cable.name(),
                    on + "it would overheat: take a cable rated for the supply",
                    supply.voltage(),
                    Amounts.volts(cable.volts() * usual.highFactor()),
                    usual.source()));
        } else if (ratio * ratio < WRONG_CABLE_SHARE) {
            findings.add(Finding.of(
                    Severity.ERROR,
                    cable.name(),
                    on + "it is the wrong cable for this supply",
                    supply.voltage(),
                    cable.voltage(),
                    Source.commonPractice("less than half the rated power points to the wrong cable")));
        } else {
            findings.add(Finding.of(
                    Severity.WARNING,
                    cable.name(),
                    on + "count on that power and ask the cable's maker",
                    power,
                    cable.power(),
                    Source.document(Ohm.TEXTBOOK, "ch. 2 (power goes with the square of the voltage)")));
        }
    }
}
