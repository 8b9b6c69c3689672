package org.heatfloor.electrical;

import org.heatfloor.finding.Source;

/** What is said where a code is silent or a figure was not given: nothing is invented. */
final class Silence {

    static final Source SOURCE = Source.commonPractice("follow the listing and local code");

    private Silence() {}
}
