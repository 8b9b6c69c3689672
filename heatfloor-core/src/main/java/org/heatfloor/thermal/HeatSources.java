package org.heatfloor.thermal;

import org.heatfloor.finding.Source;

/**
 * The documents several judgements rest on. None of these standards was read for this library: the figures were seen in
 * secondary texts or are recalled, and so are the editions.
 */
final class HeatSources {

    private static final String SEEN = "; figure seen in a secondary text, edition recalled";

    static final Source COVERING = Source.fromMemory("EN 1264-2:2008+A1:2012, coverings up to 0.15 m²·K/W" + SEEN);

    private HeatSources() {}

    /** A limit of surface temperature. */
    static Source surfaceLimit(String which) {
        return Source.fromMemory("EN 1264-2:2008+A1:2012 and ISO 11855-2:2012, " + which + SEEN);
    }

    /** A least insulation whose figure was seen in a secondary text. */
    static Source insulation(String which) {
        return Source.fromMemory("EN 1264-4:2009, least insulation below, " + which + SEEN);
    }

    /** A least insulation that is recalled altogether. */
    static Source insulationRecalled(String which) {
        return Source.fromMemory("EN 1264-4:2009, least insulation below, " + which);
    }
}
