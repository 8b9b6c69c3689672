package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;

/** Judgements on the supply as a whole. */
final class SupplyFindings {

    private static final String SUBJECT = "supply";

    private SupplyFindings() {}

    static List<Finding> of(Supply supply, int circuits) {
        ElectricalCode code = supply.code();
        List<Finding> findings = new ArrayList<>();
        if (!code.isNominal(supply.volts())) {
            findings.add(Finding.withValue(
                    Severity.WARNING,
                    SUBJECT,
                    QuantityText.write(supply.voltage(), 1) + " is not a nominal voltage of " + code
                            + "; measure the supply and check the entry",
                    supply.voltage(),
                    code.source(RuleTopic.NOMINAL_VOLTAGES)));
        }
        if (supply.installation().isEmpty()) {
            findings.add(Finding.of(
                    Severity.NOTE,
                    SUBJECT,
                    "no method of installation was stated; the base of the code's table, "
                            + code.baseInstallationMethod() + ", is taken",
                    code.source(RuleTopic.AMPACITY_TABLE)));
        }
        if (supply.ambient().isEmpty()) {
            findings.add(Finding.withValue(
                    Severity.NOTE,
                    SUBJECT,
                    "no ambient temperature was stated; the base of the code's table, "
                            + QuantityText.write(code.baseAmbient(), 0) + ", is taken",
                    code.baseAmbient(),
                    code.source(RuleTopic.AMPACITY_TABLE)));
        }
        if (circuits > 1 && supply.groupedCircuits() < circuits) {
            findings.add(Finding.of(
                    Severity.WARNING,
                    SUBJECT,
                    circuits + " circuits are needed and the conductors were rated for "
                            + supply.groupedCircuits()
                            + " laid together; where more share a route, apply the grouping factor",
                    code.source(RuleTopic.AMPACITY_TABLE)));
        }
        findings.addAll(Duties.of(code));
        return findings;
    }

    static Finding split(Supply supply, int circuits, double[] amperes, double capacity) {
        double total = Arrays.stream(amperes).sum();
        return Finding.of(
                Severity.NOTE,
                SUBJECT,
                "one circuit of " + supply.conductor() + " carries " + QuantityText.number(capacity, 1)
                        + " A of heating; the cables need " + QuantityText.number(total, 1) + " A and are shared over "
                        + circuits + " circuits",
                Amounts.amperes(total),
                Amounts.of(capacity, Units.AMPERE),
                Source.derived("least number of circuits whose sums keep within the capacity by "
                        + supply.code().source(RuleTopic.CONTINUOUS_LOAD_DEVICE).text()));
    }
}
