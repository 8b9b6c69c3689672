package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;

/** Judgements on the places a cable lies in or passes, by the edition in force. */
final class PlaceFindings {

    private static final String SUBJECT = "cable's way";

    private PlaceFindings() {}

    static List<Finding> of(ElectricalCode code, Set<CablePlace> places) {
        List<Finding> findings = new ArrayList<>();
        for (CablePlace place : places) {
            Optional<CodeRule> rule = code.rule(place.topic());
            findings.add(
                    rule.isPresent()
                            ? Finding.of(
                                    severity(code, place),
                                    SUBJECT,
                                    "a cable " + place.words() + ": "
                                            + rule.get().text(),
                                    rule.get().source())
                            : Finding.of(
                                    Severity.WARNING,
                                    SUBJECT,
                                    "a cable " + place.words() + ": no clause of " + code
                                            + " known here speaks of it; the cable's listing and instructions decide",
                                    Silence.SOURCE));
        }
        return findings;
    }

    private static Severity severity(ElectricalCode code, CablePlace place) {
        return switch (place) {
            case EXPANSION_JOINT_WITH_FITTING -> Severity.NOTE;
            case IN_WALL -> Severity.WARNING;
            case ANOTHER_ROOM -> code.keepsCableInItsRoom() ? Severity.ERROR : Severity.NOTE;
            default -> Severity.ERROR;
        };
    }
}
