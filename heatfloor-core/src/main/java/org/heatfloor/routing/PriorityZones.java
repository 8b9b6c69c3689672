package org.heatfloor.routing;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.PriorityZone;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * Where more heat is wanted of one cable, and how far its runs may part elsewhere.
 *
 * <p>A weight is turned into a spacing in three steps. The cable per area is wanted in proportion to the weight, 1 outside
 * every zone and the greatest weight where zones overlap: {@code ρ = c·w}. It is held between what the two spacings
 * allow, {@code 1/greatest ≤ ρ ≤ 1/least}; the least is the site's. And c is the one figure with which the whole length
 * lies on the reach: {@code ∫ρ dA = L} (derived). So the ratio wanted between a zone and the rest is the weight where
 * the spacings allow it, at most greatest over least, and nearly 1 for a cable that fills the floor or hardly covers it.
 *
 * @param zones the zones; none, or only zones of the same weight as the rest, change nothing
 * @param greatestSpacing greatest spacing of runs, centre line to centre line
 */
public record PriorityZones(List<PriorityZone> zones, Quantity<Length> greatestSpacing) {

    /**
     * Checks the spacing and copies the list in.
     *
     * @param zones the zones
     * @param greatestSpacing greatest spacing of runs
     * @throws IllegalArgumentException if the greatest spacing is not above zero
     */
    public PriorityZones {
        zones = List.copyOf(zones);
        Si.positive("greatest spacing", greatestSpacing, Units.METRE);
    }
}
