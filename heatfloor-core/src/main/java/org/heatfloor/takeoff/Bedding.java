package org.heatfloor.takeoff;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Density;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * The mortar beds: one combed on the floor under the membrane, one combed over its studs once the channels are filled. The
 * mortar under the membrane and the mortar in and over it are two purchases, since membranes commonly want a different
 * mortar on each side (common practice, no source).
 *
 * @param trowelUnder combs the bed under the membrane
 * @param trowelOver combs the bed over the studs
 * @param bag dry mass of one bag
 * @param contact share of the faces in contact after beating-in, above 0 and at most 1
 * @param density of the mixed mortar
 * @param water mass of water per mass of dry mortar, 0 to 1
 * @param waste share added to each mortar, 0 to 1
 * @param keyingCoat thickness rubbed into each face with the flat side before combing
 * @param backButter thickness spread on the tile's back
 */
public record Bedding(
        Trowel trowelUnder,
        Trowel trowelOver,
        Quantity<Mass> bag,
        Quantity<Dimensionless> contact,
        Quantity<Density> density,
        Quantity<Dimensionless> water,
        Quantity<Dimensionless> waste,
        Quantity<Length> keyingCoat,
        Quantity<Length> backButter) {

    /**
     * Checks the values.
     *
     * @param trowelUnder combs the bed under the membrane
     * @param trowelOver combs the bed over the studs
     * @param bag dry mass of one bag
     * @param contact share of the faces in contact after beating-in, above 0 and at most 1
     * @param density of the mixed mortar
     * @param water mass of water per mass of dry mortar, 0 to 1
     * @param waste share added to each mortar, 0 to 1
     * @param keyingCoat thickness rubbed into each face with the flat side before combing
     * @param backButter thickness spread on the tile's back
     * @throws IllegalArgumentException if the bag is not above zero, a share is out of range, the density not 0.5 to 3 kg/L,
     *     or a coat not 0 to 20 mm
     */
    public Bedding {
        Objects.requireNonNull(trowelUnder, "trowelUnder");
        Objects.requireNonNull(trowelOver, "trowelOver");
        Si.positive("bag", bag, Units.KILOGRAM);
        contactShare(contact);
        Si.within("mortar density", density, Units.KILOGRAM_PER_LITRE, 0.5, 3);
        Si.within("mortar water", water, Units.ONE, 0, 1);
        Si.within("mortar waste", waste, Units.ONE, 0, 1);
        Si.within("keying coat", keyingCoat, Units.MILLIMETRE, 0, 20);
        Si.within("back-butter coat", backButter, Units.MILLIMETRE, 0, 20);
    }

    /**
     * Beds with the usual mortar: contact 95 %, mixed density 1.6 kg/L, 0.25 of water by mass (from memory), no waste and
     * no coats.
     *
     * @param trowelUnder combs the bed under the membrane
     * @param trowelOver combs the bed over the studs
     * @param bag dry mass of one bag
     * @return the beds
     * @throws IllegalArgumentException if the bag is not above zero
     */
    public static Bedding of(Trowel trowelUnder, Trowel trowelOver, Quantity<Mass> bag) {
        return new Bedding(
                trowelUnder,
                trowelOver,
                bag,
                Amounts.of(95, Units.PERCENT),
                Amounts.of(1.6, Units.KILOGRAM_PER_LITRE),
                Amounts.of(0.25, Units.ONE),
                Amounts.of(0, Units.PERCENT),
                Amounts.millimetres(0),
                Amounts.millimetres(0));
    }

    /**
     * The same beds with another contact share.
     *
     * @param share of the faces in contact, above 0 and at most 1
     * @return a copy
     * @throws IllegalArgumentException if the share is out of range
     */
    public Bedding withContact(Quantity<Dimensionless> share) {
        return new Bedding(trowelUnder, trowelOver, bag, share, density, water, waste, keyingCoat, backButter);
    }

    /**
     * The same beds with another mortar.
     *
     * @param mixedDensity of the mixed mortar, 0.5 to 3 kg/L
     * @param waterShare mass of water per mass of dry mortar, 0 to 1
     * @return a copy
     * @throws IllegalArgumentException if a value is out of range
     */
    public Bedding withMortar(Quantity<Density> mixedDensity, Quantity<Dimensionless> waterShare) {
        return new Bedding(
                trowelUnder, trowelOver, bag, contact, mixedDensity, waterShare, waste, keyingCoat, backButter);
    }

    /**
     * The same beds with a share added for what stays in the bucket and is squeezed out.
     *
     * @param share added to each mortar, 0 to 1
     * @return a copy
     * @throws IllegalArgumentException if the share is out of range
     */
    public Bedding withWaste(Quantity<Dimensionless> share) {
        return new Bedding(trowelUnder, trowelOver, bag, contact, density, water, share, keyingCoat, backButter);
    }

    /**
     * The same beds with coats besides the combed ridges.
     *
     * @param keying rubbed into the floor, and again over the studs, with the flat side
     * @param butter spread on the tile's back
     * @return a copy
     * @throws IllegalArgumentException if a coat is not 0 to 20 mm
     */
    public Bedding withCoats(Quantity<Length> keying, Quantity<Length> butter) {
        return new Bedding(trowelUnder, trowelOver, bag, contact, density, water, waste, keying, butter);
    }

    /**
     * Thickness of the bed under the membrane after beating-in, keying coat included.
     *
     * @return the thickness
     */
    public Quantity<Length> lowerBed() {
        return Amounts.millimetres(1000 * (lowerVolumeMetres() / contactShare(contact)));
    }

    /**
     * Thickness of the bed between stud tops and tile after beating-in, coats included.
     *
     * @return the thickness
     */
    public Quantity<Length> upperBed() {
        return Amounts.millimetres(1000 * (upperVolumeMetres() / contactShare(contact)));
    }

    /** Volume per area of the bed under the membrane, m³/m². */
    double lowerVolumeMetres() {
        return trowelUnder.combedMetres() + Si.in("keying coat", keyingCoat, Units.METRE);
    }

    /** Volume per area of the bed over the studs, m³/m². */
    double upperVolumeMetres() {
        return trowelOver.combedMetres()
                + Si.in("keying coat", keyingCoat, Units.METRE)
                + Si.in("back-butter coat", backButter, Units.METRE);
    }

    static double contactShare(Quantity<Dimensionless> contact) {
        Si.positive("contact share", contact, Units.ONE);
        return Si.within("contact share", contact, Units.ONE, 0, 1);
    }
}
