package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;

/** What a design could not judge because it was not told. */
final class Unchecked {

    private Unchecked() {}

    static Optional<Finding> of(ElectricalCode code, List<HeatingCable> cables, InstallationDetails details) {
        List<String> missing = new ArrayList<>();
        add(missing, details.control().isEmpty(), "thermostat or contactor (its rating, disconnection)");
        add(missing, details.roomUse().isEmpty(), "use of the room");
        boolean dry = details.roomUse().map(use -> !use.wet()).orElse(false);
        add(missing, !dry && details.controlZone().isEmpty(), "place of the control (zones of a wet room)");
        add(missing, cables.stream().anyMatch(c -> c.screen().isEmpty()), "screen of the cable");
        add(missing, details.capacitance().isEmpty(), "capacitance of core to screen (leakage budget)");
        add(missing, details.coldLeadConductor().isEmpty(), "conductor of the cold leads (voltage drop in them)");
        add(missing, details.places().isEmpty(), "places the cable passes (walls, closets, cabinets, joints)");
        if (code.isNec()) {
            boolean counted = details.boxVolume().isPresent()
                    && details.coldLeadConductor().isPresent();
            add(missing, !counted, "volume of the box and conductor of the cold leads (box fill)");
            add(missing, details.embedding().isEmpty(), "in concrete or under a floor covering (ground-fault clauses)");
        }
        add(
                missing,
                code.rule(RuleTopic.RUN_SPACING).isPresent()
                        && details.runSpacing().isEmpty(),
                "spacing of the runs");
        add(
                missing,
                code.rule(RuleTopic.COLD_LEAD_COLOUR).isPresent()
                        && details.leadColour().isEmpty(),
                "colour of the cold leads");
        add(
                missing,
                code.rule(RuleTopic.PANEL_DENSITY_IN_CONCRETE).isPresent()
                        && details.panelSet()
                        && (details.heatedArea().isEmpty()
                                || details.embedding().isEmpty()),
                "heated area and embedding of the panel sets");
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of(Finding.of(
                        Severity.NOTE,
                        "not checked",
                        "not judged, because not given: " + String.join("; ", missing),
                        Silence.SOURCE));
    }

    private static void add(List<String> missing, boolean isMissing, String what) {
        if (isMissing) {
            missing.add(what);
        }
    }
}
