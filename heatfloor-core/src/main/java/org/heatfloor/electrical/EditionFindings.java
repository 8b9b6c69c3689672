package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.HeatFlux;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Limits that some editions have and others dropped: each is judged only where the edition in force states it. */
final class EditionFindings {

    private static final double SLACK = 1e-9;

    private EditionFindings() {}

    static List<Finding> of(Supply supply, List<HeatingCable> cables, InstallationDetails details) {
        List<Finding> findings = new ArrayList<>();
        ElectricalCode code = supply.code();
        spacing(code, details, findings);
        density(supply, cables, details, findings);
        colour(code, cables, details, findings);
        for (HeatingCable cable : cables.stream().distinct().toList()) {
            subdivision(supply, cable, findings);
        }
        return findings;
    }

    private static void spacing(ElectricalCode code, InstallationDetails details, List<Finding> findings) {
        if (!inConcrete(details) || details.runSpacing().isEmpty()) {
            return;
        }
        code.rule(RuleTopic.RUN_SPACING).ifPresent(rule -> {
            double least = code.limit(RuleTopic.RUN_SPACING, Units.MILLIMETRE);
            boolean kept = Si.in("run spacing", details.runSpacing().get(), Units.MILLIMETRE) >= least * (1 - SLACK);
            findings.add(Finding.of(
                    kept ? Severity.NOTE : Severity.ERROR,
                    "run spacing",
                    kept
                            ? "the runs keep the least spacing in concrete"
                            : "the runs lie closer than cable in concrete may: lay them wider",
                    details.runSpacing().get(),
                    rule.limit(Units.MILLIMETRE),
                    rule.source()));
        });
    }

    /** Where nothing is said of the embedding, the rules for concrete are applied, as the stricter of the two. */
    static boolean inConcrete(InstallationDetails details) {
        return details.embedding().orElse(Embedding.CONCRETE) == Embedding.CONCRETE;
    }

    private static void density(
            Supply supply, List<HeatingCable> cables, InstallationDetails details, List<Finding> findings) {
        if (!details.panelSet()
                || details.heatedArea().isEmpty()
                || details.embedding().isEmpty()) {
            return;
        }
        RuleTopic topic =
                inConcrete(details) ? RuleTopic.PANEL_DENSITY_IN_CONCRETE : RuleTopic.PANEL_DENSITY_UNDER_COVERING;
        supply.code().rule(topic).ifPresent(rule -> {
            double watts = cables.stream()
                    .mapToDouble(cable -> Ohm.power(supply.volts(), Ohm.resistance(cable.volts(), cable.watts())))
                    .sum();
            double found = watts / Si.in("heated area", details.heatedArea().get(), Units.SQUARE_METRE);
            Quantity<HeatFlux> value = Amounts.of(found, Units.WATT_PER_SQUARE_METRE);
            boolean kept = found <= supply.code().limit(topic, Units.WATT_PER_SQUARE_METRE) * (1 + SLACK);
            findings.add(Finding.of(
                    kept ? Severity.NOTE : Severity.ERROR,
                    "heated area",
                    kept
                            ? "the panel sets keep the greatest power per heated area"
                            : "the panel sets give more power per heated area than they may: take less power or more area",
                    value,
                    rule.limit(Units.WATT_PER_SQUARE_METRE),
                    rule.source()));
        });
    }

    private static void colour(
            ElectricalCode code, List<HeatingCable> cables, InstallationDetails details, List<Finding> findings) {
        if (details.leadColour().isEmpty()) {
            return;
        }
        LeadColour colour = details.leadColour().get();
        code.rule(RuleTopic.COLD_LEAD_COLOUR).ifPresent(rule -> {
            for (HeatingCable cable : cables.stream().distinct().toList()) {
                boolean coded = false;
                for (LeadColour each : LeadColour.values()) {
                    coded |= each.nominalVolts() > 0 && same(cable, each);
                }
                if (!coded && colour == LeadColour.OTHER) {
                    continue;
                }
                boolean right = same(cable, colour);
                findings.add(Finding.withValue(
                        right ? Severity.NOTE : Severity.ERROR,
                        cable.name(),
                        right
                                ? "the colour of the cold leads is that of the cable's voltage"
                                : "the colour of the cold leads is not that of the cable's voltage (" + rule.text()
                                        + "): the cable may be another than its label says",
                        cable.voltage(),
                        rule.source()));
            }
        });
    }

    private static boolean same(HeatingCable cable, LeadColour colour) {
        return Math.abs(cable.volts() - colour.nominalVolts()) <= 1e-6 * cable.volts();
    }

    private static void subdivision(Supply supply, HeatingCable cable, List<Finding> findings) {
        supply.code().rule(RuleTopic.SUBDIVISION).ifPresent(rule -> {
            double amperes = supply.volts() / Ohm.resistance(cable.volts(), cable.watts());
            double most = supply.code().limit(RuleTopic.SUBDIVISION, Units.AMPERE);
            if (amperes > most * (1 + SLACK)) {
                findings.add(Finding.of(
                        Severity.ERROR,
                        cable.name(),
                        "one cable takes " + QuantityText.number(amperes, 1)
                                + " A and cannot be subdivided: take several of less power",
                        Amounts.amperes(amperes),
                        rule.limit(Units.AMPERE),
                        rule.source()));
            }
        });
    }
}
