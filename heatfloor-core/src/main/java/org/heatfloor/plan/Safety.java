package org.heatfloor.plan;

import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;

/** The caution that goes with every plan. */
final class Safety {

    static final Finding MAINS = Finding.of(
            Severity.NOTE,
            "mains voltage",
            "Connection by a licensed electrician to the local code; isolate and prove dead. Never cut, cross or overlap"
                    + " the cable, never energise it on the reel, test before and after covering. The cable's own"
                    + " instructions override this plan.",
            Source.commonPractice("cautions for mains voltage and wet rooms"));

    private Safety() {}
}
