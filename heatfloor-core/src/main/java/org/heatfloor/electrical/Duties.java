package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.List;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;

/** What has to be done on every floor whatever the figures: the safety words and the duties the code names. */
final class Duties {

    private static final List<RuleTopic> SAID = List.of(
            RuleTopic.DISCONNECTION,
            RuleTopic.SCREEN,
            RuleTopic.LISTING,
            RuleTopic.METAL_IN_FLOOR,
            RuleTopic.FREE_LEAD,
            RuleTopic.COLD_LEAD_SURPLUS,
            RuleTopic.LEADS_LEAVING_FLOOR,
            RuleTopic.INSPECTION,
            RuleTopic.LENGTH_ALTERATION,
            RuleTopic.BOARD_LABEL,
            RuleTopic.BATHROOM);

    private Duties() {}

    static List<Finding> of(ElectricalCode code) {
        List<Finding> findings = new ArrayList<>();
        findings.add(Finding.of(
                Severity.NOTE,
                "safety",
                "mains voltage in a floor people stand on barefoot: a licensed electrician connects it; isolate and prove"
                        + " dead before touching; never energise the cable on the reel; never cut, cross or overlap it;"
                        + " never cover it untested",
                Source.commonPractice("follow the listing, the cable's instructions and the local code")));
        for (RuleTopic topic : SAID) {
            code.rule(topic)
                    .ifPresent(rule -> findings.add(Finding.of(Severity.NOTE, "duty", rule.text(), rule.source())));
        }
        return findings;
    }
}
