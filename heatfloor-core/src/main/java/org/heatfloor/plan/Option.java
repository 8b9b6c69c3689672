package org.heatfloor.plan;

import java.util.List;
import org.heatfloor.electrical.HeatingCable;

/**
 * One cable of the catalogue, or several that share the floor, for one part of the floor, judged by bounds alone.
 *
 * @param cables the cable, or the cables in the order in which they lie beside each other
 * @param lengthMetres their length together
 * @param spacingMetres the even spacing that results
 * @param outputWatts heat they would give into the room; NaN where build-up and climate are not known
 * @param verdict what the bounds say
 * @param reason one clause for a reader; empty when it may work
 */
record Option(
        List<HeatingCable> cables,
        double lengthMetres,
        double spacingMetres,
        double outputWatts,
        Verdict verdict,
        String reason) {

    enum Verdict {
        MAY_WORK,
        TOO_LONG,
        TOO_SHORT,
        NOT_FIT
    }

    Option {
        cables = List.copyOf(cables);
    }

    /** The cable, or the first of several. */
    HeatingCable cable() {
        return cables.get(0);
    }

    boolean several() {
        return cables.size() > 1;
    }

    boolean mayWork() {
        return verdict == Verdict.MAY_WORK;
    }
}
