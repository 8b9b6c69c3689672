package org.heatfloor.electrical;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Whether a cable is screened, or covered by an earthed mesh, as its code and its room ask. */
final class ScreenFindings {

    private ScreenFindings() {}

    static List<Finding> of(ElectricalCode code, HeatingCable cable, InstallationDetails details) {
        boolean wet = details.roomUse().map(RoomUse::wet).orElse(false);
        Optional<CodeRule> rule = wet ? code.rule(RuleTopic.SCREEN_IN_BATHROOM) : Optional.empty();
        Source source =
                rule.or(() -> code.rule(RuleTopic.SCREEN)).map(CodeRule::source).orElse(Silence.SOURCE);
        String room = wet ? " in a room with bath or shower" : "";
        if (cable.screen().isEmpty()) {
            return wet
                    ? List.of(Finding.of(
                            Severity.WARNING,
                            cable.name(),
                            "whether the cable has an earthed screen was not stated, and" + room
                                    + " it needs one: look at its label before buying it",
                            source))
                    : List.of();
        }
        if (cable.screen().get().present()) {
            return List.of(Finding.of(
                    Severity.NOTE,
                    cable.name(),
                    "the cable is screened; its screen is joined to the protective conductor and its continuity measured"
                            + " before covering and before energising",
                    source));
        }
        if (code.isNec()) {
            boolean silent = code.rule(RuleTopic.SCREEN).isEmpty();
            return List.of(Finding.of(
                    silent ? Severity.WARNING : Severity.ERROR,
                    cable.name(),
                    silent
                            ? "the cable has no screen" + room + "; no clause of " + code
                                    + " known here forbids it: its listing decides"
                            : "the cable has no grounding braid or sheath" + room + ": take one that has",
                    source));
        }
        return List.of(mesh(code, cable, details.earthedMesh(), room, source));
    }

    private static Finding mesh(
            ElectricalCode code, HeatingCable cable, Optional<Quantity<Length>> mesh, String room, Source source) {
        Quantity<Length> most = code.required(RuleTopic.SCREEN).limit(Units.MILLIMETRE);
        if (mesh.isEmpty()) {
            return Finding.of(
                    Severity.ERROR,
                    cable.name(),
                    "the cable has no screen" + room
                            + ": take a screened cable, or cover it with a metal mesh of 30 mm or finer joined to the"
                            + " protective conductor",
                    source);
        }
        boolean fine = Si.in("mesh", mesh.get(), Units.MILLIMETRE)
                <= Si.in("greatest mesh", most, Units.MILLIMETRE) * (1 + 1e-9);
        return Finding.of(
                fine ? Severity.NOTE : Severity.ERROR,
                cable.name(),
                fine
                        ? "the cable has no screen" + room
                                + "; the mesh that covers it is joined to the protective conductor"
                        : "the mesh over the cable without screen" + room + " is too coarse: take a finer one",
                mesh.get(),
                most,
                source);
    }
}
