package org.heatfloor.takeoff;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Density;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * The grout.
 *
 * @param density mass per volume of joint
 * @param waste share added, 0 to 1
 * @param bag mass of a bag, where known
 */
public record GroutSpec(Quantity<Density> density, Quantity<Dimensionless> waste, Optional<Quantity<Mass>> bag) {

    /** 1.6 kg/L, the usual estimating constant of cementitious grout (from memory), nothing added, no bag. */
    public static final GroutSpec USUAL =
            new GroutSpec(Amounts.of(1.6, Units.KILOGRAM_PER_LITRE), Amounts.of(0, Units.PERCENT), Optional.empty());

    /**
     * Checks the values.
     *
     * @param density mass per volume of joint
     * @param waste share added, 0 to 1
     * @param bag mass of a bag, where known
     * @throws IllegalArgumentException if the density is not 0.5 to 3 kg/L, the waste not 0 to 1 or the bag not above zero
     */
    public GroutSpec {
        Si.within("grout density", density, Units.KILOGRAM_PER_LITRE, 0.5, 3);
        Si.within("grout waste", waste, Units.ONE, 0, 1);
        bag.ifPresent(b -> Si.positive("grout bag", b, Units.KILOGRAM));
    }
}
