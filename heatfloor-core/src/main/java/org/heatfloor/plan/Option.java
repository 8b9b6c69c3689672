package org.heatfloor.plan;

import org.heatfloor.electrical.HeatingCable;

/**
 * One cable of the catalogue for one part of the floor, judged by bounds alone.
 *
 * @param cable the cable
 * @param lengthMetres its length
 * @param spacingMetres the even spacing that results
 * @param outputWatts heat it would give into the room; NaN where build-up and climate are not known
 * @param verdict what the bounds say
 * @param reason one clause for a reader; empty when it may work
 */
record Option(
        HeatingCable cable,
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

    boolean mayWork() {
        return verdict == Verdict.MAY_WORK;
    }
}
