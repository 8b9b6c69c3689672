package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;

/** Judgements on the supply as a whole. */
final class SupplyFindings {

    private static final String SUBJECT = "supply";

    private SupplyFindings() {}

    static List<Finding> of(Supply supply, CircuitSharing sharing) {
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
        grouping(supply, sharing, findings);
        findings.addAll(Duties.of(code));
        return findings;
    }

    private static void grouping(Supply supply, CircuitSharing sharing, List<Finding> findings) {
        int circuits = sharing.shares().size();
        int rated = sharing.supply().groupedCircuits();
        if (rated > supply.groupedCircuits()) {
            findings.add(Finding.of(
                    Severity.NOTE,
                    SUBJECT,
                    circuits
                            + " circuits are needed; as nothing says that they lie apart, their conductors are rated for "
                            + rated + " laid together (factor "
                            + QuantityText.number(sharing.ampacity().groupingFactor(), 2) + ")",
                    sharing.ampacity().sources().get(2)));
        }
        if (sharing.beyondTable()) {
            findings.add(Finding.of(
                    Severity.ERROR,
                    SUBJECT,
                    circuits + " circuits laid together are more than the " + CircuitSharing.MOST_TOGETHER
                            + " that can be rated: take a larger conductor, or lay them apart",
                    sharing.ampacity().sources().get(2)));
        }
    }

    static Finding split(Supply supply, CircuitSharing sharing, double[] amperes) {
        double total = Arrays.stream(amperes).sum();
        Optional<ControlDevice> control = sharing.control();
        return Finding.of(
                Severity.NOTE,
                SUBJECT,
                control.map(ControlDevice::name).orElse("one circuit of " + supply.conductor())
                        + (control.isPresent() ? " switches " : " carries ")
                        + QuantityText.number(sharing.capacityAmperes(), 1) + " A of heating; the cables need "
                        + QuantityText.number(total, 1) + " A and are shared over "
                        + sharing.shares().size() + " circuits"
                        + (control.isPresent()
                                ? ", each with such a control of its own; a contactor could take more"
                                : ""),
                Amounts.amperes(total),
                Amounts.of(sharing.capacityAmperes(), Units.AMPERE),
                control.isPresent() ? ControlFindings.RATING : supply.code().source(RuleTopic.CONTINUOUS_LOAD_DEVICE));
    }
}
