package org.heatfloor.takeoff;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.quantity.VolumePerArea;

/**
 * How fast a fitter lays and how long the mortar waits.
 *
 * @param perHour floor laid in an hour
 * @param openTime how long combed mortar still wets a tile; at least 20 min by EN 12004 for a normal adhesive
 * @param potLife how long mixed mortar keeps in the bucket
 */
public record LayingPace(Quantity<Area> perHour, Quantity<Time> openTime, Quantity<Time> potLife) {

    /**
     * Checks the values.
     *
     * @param perHour floor laid in an hour
     * @param openTime how long combed mortar still wets a tile; at least 20 min by EN 12004 for a normal adhesive
     * @param potLife how long mixed mortar keeps in the bucket
     * @throws IllegalArgumentException if one is not above zero, a time is above one day, or the pot life is shorter than
     *     the open time
     */
    public LayingPace {
        Si.positive("laying pace", perHour, Units.SQUARE_METRE);
        double open = Si.positive("open time", openTime, Units.HOUR);
        Si.within("open time", openTime, Units.HOUR, 0, 24);
        double pot = Si.positive("pot life", potLife, Units.HOUR);
        Si.within("pot life", potLife, Units.HOUR, 0, 24);
        if (!(pot >= open)) {
            throw new IllegalArgumentException(
                    "pot life: " + potLife + " was given; at least the open time of " + openTime + " is expected");
        }
    }

    /**
     * The most floor to comb before tiles go down: pace times open time.
     *
     * @return the area
     */
    public Quantity<Area> largestSpread() {
        return Amounts.squareMetres(squareMetresIn(openTime));
    }

    /**
     * The most dry mortar to mix at once: pace times pot life times depth times dry mass per volume.
     *
     * @param bedding gives the mortar
     * @param depth volume of mortar per floor area
     * @return the dry mass
     * @throws IllegalArgumentException if the depth is not above zero
     */
    public Quantity<Mass> largestBatch(Bedding bedding, Quantity<VolumePerArea> depth) {
        double metres = Si.positive("mortar depth", depth, Units.CUBIC_METRE_PER_SQUARE_METRE);
        return Amounts.kilograms(
                MortarNeed.dryKilograms(largestBatchSquareMetres() * metres, bedding.density(), bedding.water()));
    }

    double largestBatchSquareMetres() {
        return squareMetresIn(potLife);
    }

    double squareMetresIn(Quantity<Time> time) {
        return Si.in("pace", perHour, Units.SQUARE_METRE) * Si.in("time", time, Units.HOUR);
    }
}
