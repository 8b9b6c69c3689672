package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;

/** What the use of the room asks: residual current protection, and where the control may stand. */
final class RoomFindings {

    private RoomFindings() {}

    static List<Finding> of(ElectricalCode code, InstallationDetails details) {
        List<Finding> findings = new ArrayList<>();
        details.controlZone()
                .ifPresent(zone -> findings.add(zone.control(
                        code, details.control().map(ControlDevice::name).orElse("thermostat"))));
        if (code.isNec() && details.embedding().isPresent()) {
            groundFault(code, details).ifPresent(findings::add);
        }
        return findings;
    }

    private static Optional<Finding> groundFault(ElectricalCode code, InstallationDetails details) {
        if (details.embedding().orElseThrow() == Embedding.FLOOR_COVERING) {
            return Optional.of(code.rule(RuleTopic.GROUND_FAULT_UNDER_COVERING)
                    .map(RoomFindings::demanded)
                    .orElseGet(() -> silent(code)));
        }
        return details.roomUse().map(use -> {
            CodeRule rule = code.required(RuleTopic.GROUND_FAULT_IN_CONCRETE);
            boolean named = use.wet() || (use == RoomUse.KITCHEN && rule.text().contains("kitchens"));
            return named ? demanded(rule) : silent(code);
        });
    }

    private static Finding demanded(CodeRule rule) {
        return Finding.of(Severity.NOTE, "ground fault", "demanded: " + rule.text(), rule.source());
    }

    private static Finding silent(ElectricalCode code) {
        return Finding.of(
                Severity.NOTE,
                "ground fault",
                "no clause of " + code + " known here demands a ground-fault circuit interrupter for this floor; the"
                        + " design keeps it",
                Silence.SOURCE);
    }
}
