package org.heatfloor.takeoff;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Density;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * The levelling compound.
 *
 * @param dry dry mass per volume in place
 * @param cover least thickness over the highest point
 * @param waste share added, 0 to 1
 * @param bag dry mass of a bag, where known
 */
public record LevellerSpec(
        Quantity<Density> dry, Quantity<Length> cover, Quantity<Dimensionless> waste, Optional<Quantity<Mass>> bag) {

    /** 1.7 kg/L of cement compound (from memory), no cover, nothing added, no bag. */
    public static final LevellerSpec USUAL = new LevellerSpec(
            Amounts.of(1.7, Units.KILOGRAM_PER_LITRE),
            Amounts.millimetres(0),
            Amounts.of(0, Units.PERCENT),
            Optional.empty());

    /**
     * Checks the values.
     *
     * @param dry dry mass per volume in place
     * @param cover least thickness over the highest point
     * @param waste share added, 0 to 1
     * @param bag dry mass of a bag, where known
     * @throws IllegalArgumentException if the density is not 0.5 to 3 kg/L, the cover negative, the waste not 0 to 1 or the
     *     bag not above zero
     */
    public LevellerSpec {
        Si.within("leveller density", dry, Units.KILOGRAM_PER_LITRE, 0.5, 3);
        Si.notNegative("leveller cover", cover, Units.METRE);
        Si.within("leveller waste", waste, Units.ONE, 0, 1);
        bag.ifPresent(b -> Si.positive("leveller bag", b, Units.KILOGRAM));
    }

    /**
     * The same compound with another cover.
     *
     * @param least thickness over the highest point
     * @return a copy
     * @throws IllegalArgumentException if it is negative
     */
    public LevellerSpec withCover(Quantity<Length> least) {
        return new LevellerSpec(dry, least, waste, bag);
    }
}
