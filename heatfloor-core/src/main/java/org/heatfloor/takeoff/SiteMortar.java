package org.heatfloor.takeoff;

import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Density;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * Cement and sand mortar mixed on site, by volume. Dry materials fill more than the mortar they make; texts take 1.25 to 1.5
 * times, most often 1.33, so the factor is an input.
 *
 * @param cementParts parts of cement
 * @param sandParts parts of sand
 * @param bulking volume of dry materials per volume of mortar in place
 */
public record SiteMortar(double cementParts, double sandParts, double bulking) {

    /**
     * Checks the values.
     *
     * @param cementParts parts of cement
     * @param sandParts parts of sand
     * @param bulking volume of dry materials per volume of mortar in place
     * @throws IllegalArgumentException if a part is not above 0 and at most 100, or the factor not 1 to 2
     */
    public SiteMortar {
        if (!(cementParts > 0 && cementParts <= 100 && sandParts > 0 && sandParts <= 100)) {
            throw new IllegalArgumentException("mortar mix: " + cementParts + " to " + sandParts
                    + " was given; parts above 0 and at most 100 are expected");
        }
        if (!(bulking >= 1 && bulking <= 2)) {
            throw new IllegalArgumentException("bulking: " + bulking + " was given; 1 to 2 is expected");
        }
    }

    /**
     * Dry materials for a volume in place.
     *
     * @param inPlace the mortar in place
     * @return the volume of cement and sand together
     */
    public Quantity<Volume> dry(Quantity<Volume> inPlace) {
        return Amounts.of(Si.notNegative("mortar in place", inPlace, Units.CUBIC_METRE) * bulking, Units.CUBIC_METRE);
    }

    /**
     * Cement for a volume in place.
     *
     * @param inPlace the mortar in place
     * @return the loose volume
     */
    public Quantity<Volume> cement(Quantity<Volume> inPlace) {
        return share(inPlace, cementParts);
    }

    /**
     * Sand for a volume in place.
     *
     * @param inPlace the mortar in place
     * @return the volume
     */
    public Quantity<Volume> sand(Quantity<Volume> inPlace) {
        return share(inPlace, sandParts);
    }

    /**
     * Mass of cement for a volume in place.
     *
     * @param inPlace the mortar in place
     * @param loose density of loose cement
     * @return the mass
     */
    public Quantity<Mass> cement(Quantity<Volume> inPlace, Quantity<Density> loose) {
        return Amounts.kilograms(Si.in("cement", cement(inPlace), Units.CUBIC_METRE)
                * Si.positive("cement density", loose, Units.KILOGRAM_PER_CUBIC_METRE));
    }

    private Quantity<Volume> share(Quantity<Volume> inPlace, double parts) {
        return Amounts.of(
                Si.in("dry", dry(inPlace), Units.CUBIC_METRE) * parts / (cementParts + sandParts), Units.CUBIC_METRE);
    }
}
