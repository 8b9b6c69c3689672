package org.heatfloor.plan;

import org.heatfloor.electrical.ElectricalCode;
import org.heatfloor.takeoff.Practice;

/** The building practice that goes with the electrical code of a brief: both belong to the place where the floor lies. */
final class RegionalPractice {

    private RegionalPractice() {}

    static Practice of(ElectricalCode code) {
        if (code.name().startsWith("NEC")) {
            return Practice.NORTH_AMERICA;
        }
        return code.name().startsWith("BS") ? Practice.UNITED_KINGDOM : Practice.EUROPE;
    }
}
