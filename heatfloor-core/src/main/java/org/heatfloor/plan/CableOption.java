package org.heatfloor.plan;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.HeatFlux;

/**
 * One length of the catalogue, or one set of cables, for one part of the floor: what the bounds say, and what became of it
 * where a route was sought.
 *
 * @param part where the part of the floor is
 * @param cable the cable's name; of several that share the floor, their names
 * @param length length of the heating part
 * @param evenSpacing area of the part over the length
 * @param powerDensity power at the supply's voltage over that area
 * @param coverage share of the part that lies within half the greatest spacing of the cable: by the bound, or, where it was
 *     laid, all but the cold share
 * @param margin proved greatest length less this one; negative where it is too long
 * @param keepsTolerance whether the bound allows the cable to be longer by the tolerance of its length
 * @param longestFound the longest route found, where one was sought
 * @param verdict what became of it
 * @param reason why not, in one clause; empty where there is nothing against it
 */
public record CableOption(
        String part,
        String cable,
        Quantity<Length> length,
        Quantity<Length> evenSpacing,
        Quantity<HeatFlux> powerDensity,
        Quantity<Dimensionless> coverage,
        Quantity<Length> margin,
        boolean keepsTolerance,
        Optional<Quantity<Length>> longestFound,
        Verdict verdict,
        String reason) {

    /** What became of a cable for a part of the floor. */
    public enum Verdict {
        /** It is laid in this plan. */
        CHOSEN,
        /** It was laid for trial, and another was chosen. */
        LAID,
        /** A route was sought and not found. */
        NOT_FOUND,
        /** The bounds allow it; it was not tried, since the choice was made before. */
        NOT_TRIED,
        /** Proved too long. */
        TOO_LONG,
        /** Its runs would lie farther apart than allowed. */
        TOO_SHORT,
        /** Channels, bends, lead or supply do not take it. */
        UNUSABLE
    }
}
