package org.heatfloor.electrical;

import org.heatfloor.finding.Source;

/** The provenance marks of the tables: V read in the document, VE read but its edition
 * recalled, M from memory, CP common practice, C calculated. */
final class Provenance {

    private Provenance() {}

    static Source source(String mark, String document, String clause, String text) {
        return switch (mark) {
            case "V" -> Source.document(document, clause);
            case "VE" -> Source.document(document + " (edition from memory)", clause);
            case "M" -> Source.fromMemory(document + ", " + clause);
            case "CP" -> Source.commonPractice(text);
            case "C" -> Source.derived(text);
            default -> throw new IllegalStateException("provenance mark '" + mark + "' is unknown; V, VE, M, CP or C");
        };
    }
}
