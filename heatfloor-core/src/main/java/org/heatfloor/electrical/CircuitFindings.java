package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Judgements on one circuit. */
final class CircuitFindings {

    private static final double SLACK = 1e-9;

    private CircuitFindings() {}

    static List<Finding> of(Supply supply, Circuit circuit, List<HeatingCable> cables) {
        List<Finding> findings = new ArrayList<>();
        device(supply, circuit, cables, findings);
        holds(supply, circuit, findings);
        drop(supply, circuit, findings);
        CodeRule residual = supply.code().required(RuleTopic.RESIDUAL_CURRENT);
        findings.add(Finding.withValue(
                Severity.NOTE,
                circuit.name(),
                residual.text(),
                circuit.residualCurrentDevice().to(Units.MILLIAMPERE),
                residual.source()));
        return findings;
    }

    private static void device(Supply supply, Circuit circuit, List<HeatingCable> cables, List<Finding> findings) {
        ElectricalCode code = supply.code();
        boolean several = cables.size() > 1;
        if (circuit.protectiveDevice().isEmpty()) {
            findings.add(Finding.of(
                    Severity.ERROR,
                    circuit.name(),
                    "no standard protective device carries " + QuantityText.write(circuit.designCurrent(), 2)
                            + " and protects " + circuit.conductor() + " copper rated "
                            + QuantityText.write(circuit.ampacity().usable(), 2) + "; "
                            + remedy(supply, CircuitSizing.amperes(circuit.current()), several),
                    circuit.designCurrent(),
                    circuit.ampacity().usable(),
                    code.source(RuleTopic.DEVICE_AGAINST_CONDUCTOR)));
            return;
        }
        double greatest = CircuitSizing.greatestDevice(code, circuit.ampacity(), several);
        findings.add(Finding.of(
                Severity.NOTE,
                circuit.name(),
                QuantityText.write(circuit.protectiveDevice().get(), 1) + " is the least standard rating not below the"
                        + " design current; on " + circuit.conductor() + " the greatest allowed is "
                        + QuantityText.number(greatest, 1) + " A",
                circuit.designCurrent(),
                circuit.protectiveDevice().get(),
                code.source(RuleTopic.CONTINUOUS_LOAD_DEVICE)));
    }

    /** Whether the device carries what flows at the greatest voltage through the least resistance. */
    private static void holds(Supply supply, Circuit circuit, List<Finding> findings) {
        Optional<CodeRule> rule = supply.code().rule(RuleTopic.DEVICE_HOLDS);
        if (rule.isEmpty() || circuit.protectiveDevice().isEmpty()) {
            return;
        }
        SupplyTolerance usual = SupplyTolerance.of(supply.code());
        double most =
                CircuitSizing.amperes(circuit.current()) * usual.highFactor() / ResistanceTolerance.USUAL.lowFactor();
        double held = CircuitSizing.amperes(circuit.protectiveDevice().get())
                * supply.code().limit(RuleTopic.DEVICE_HOLDS, Units.ONE);
        if (most > held * (1 + SLACK)) {
            findings.add(Finding.of(
                    Severity.NOTE,
                    circuit.name(),
                    "at the greatest voltage of " + usual.name() + " and the least resistance of the usual tolerance "
                            + QuantityText.number(most, 1) + " A flow, which may open the "
                            + QuantityText.write(circuit.protectiveDevice().get(), 1)
                            + " device without a fault: take the next rating where the conductor allows it",
                    Amounts.amperes(most),
                    Amounts.amperes(held),
                    rule.get().source()));
        }
    }

    private static String remedy(Supply supply, double amperes, boolean several) {
        ElectricalCode code = supply.code();
        Optional<ConductorSize> size = code.conductorSizes().stream()
                .filter(each -> CircuitSizing.device(code, rated(supply, each), amperes, several)
                        .isPresent())
                .findFirst();
        return size.map(each -> each + " would carry it")
                .orElse("no conductor of the code's table would carry it on one circuit: take cables of less power");
    }

    private static Ampacity rated(Supply supply, ConductorSize size) {
        return new Supply(
                        supply.voltage(),
                        supply.code(),
                        supply.feederLength(),
                        size,
                        supply.installation(),
                        supply.ambient(),
                        supply.groupedCircuits())
                .ampacity();
    }

    private static void drop(Supply supply, Circuit circuit, List<Finding> findings) {
        ElectricalCode code = supply.code();
        double share = Si.in("share", circuit.voltageDropShare(), Units.PERCENT);
        double limit = code.limit(RuleTopic.VOLTAGE_DROP, Units.PERCENT);
        boolean kept = share <= limit * (1 + SLACK);
        String dropped = QuantityText.write(circuit.voltageDrop(), 2) + " is lost in the conductors, "
                + QuantityText.number(share, 2) + " % of the supply voltage ("
                + code.dropSource(circuit.conductor()) + ")";
        findings.add(Finding.of(
                kept ? Severity.NOTE : Severity.WARNING,
                circuit.name(),
                kept
                        ? dropped + "; " + QuantityText.number(limit, 1) + " % is the advice"
                        : dropped + ", more than " + QuantityText.number(limit, 1)
                                + " %: take a larger conductor or a shorter way",
                circuit.voltageDropShare().to(Units.PERCENT),
                circuit.voltageDropLimit().to(Units.PERCENT),
                code.source(RuleTopic.VOLTAGE_DROP)));
    }
}
