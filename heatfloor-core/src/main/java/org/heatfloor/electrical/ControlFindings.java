package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Judgements on the thermostat or contactor of a circuit. */
final class ControlFindings {

    static final Source RATING = Source.commonPractice(
            "a switching device is not loaded above its rated current and voltage; a contactor takes larger loads");

    private ControlFindings() {}

    private static Optional<Finding> ratedToDisconnect(
            ElectricalCode code, Circuit circuit, ControlDevice device, CodeRule rule) {
        double least = CircuitSizing.amperes(circuit.current()) * code.limit(RuleTopic.DISCONNECTION_RATING, Units.ONE);
        return device.amperes() >= least * (1 - 1e-9)
                ? Optional.empty()
                : Optional.of(Finding.of(
                        Severity.WARNING,
                        circuit.name(),
                        device.name() + " is rated too low for a means of disconnection: provide another that opens all"
                                + " live conductors together",
                        device.ratedCurrent(),
                        Amounts.amperes(least),
                        rule.source()));
    }

    static List<Finding> of(Supply supply, Circuit circuit, ControlDevice device) {
        List<Finding> findings = new ArrayList<>();
        double load = CircuitSizing.amperes(circuit.current());
        boolean carries = load <= device.amperes() * (1 + 1e-9);
        findings.add(Finding.of(
                carries ? Severity.NOTE : Severity.ERROR,
                circuit.name(),
                carries
                        ? device.name() + " carries the circuit"
                        : device.name() + " is overloaded: let it switch a contactor rated "
                                + QuantityText.number(Math.ceil(load), 0) + " A or more, or take cables of less power",
                circuit.current(),
                device.ratedCurrent(),
                RATING));
        double rated = Si.in("rated voltage", device.ratedVoltage(), Units.VOLT);
        if (!(supply.volts() <= rated * (1 + 1e-9))) {
            findings.add(Finding.of(
                    Severity.ERROR,
                    circuit.name(),
                    device.name() + " is not rated for the supply voltage",
                    supply.voltage(),
                    device.ratedVoltage(),
                    RATING));
        }
        ElectricalCode code = supply.code();
        if (!device.disconnects()) {
            Source source = code.rule(RuleTopic.THERMOSTAT_DISCONNECTION)
                    .map(CodeRule::source)
                    .orElseGet(() -> code.source(RuleTopic.DISCONNECTION));
            findings.add(Finding.of(
                    Severity.WARNING,
                    circuit.name(),
                    device.name() + " does not serve as the means of disconnection: provide one that opens all live"
                            + " conductors together",
                    source));
        } else {
            code.rule(RuleTopic.DISCONNECTION_RATING)
                    .flatMap(rule -> ratedToDisconnect(code, circuit, device, rule))
                    .ifPresent(findings::add);
        }
        return findings;
    }
}
