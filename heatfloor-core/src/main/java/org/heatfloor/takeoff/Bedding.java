package org.heatfloor.takeoff;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * The mortar beds: one combed on the floor under the membrane, one combed over its studs once the channels are filled, each
 * with its own mortar.
 *
 * @param trowelUnder combs the bed under the membrane
 * @param mortarUnder the mortar under the membrane
 * @param trowelOver combs the bed over the studs
 * @param mortarOver the mortar in the channels and over the studs
 * @param contact share of the faces in contact after beating-in, above 0 and at most 1
 * @param waste share added to each mortar, 0 to 1
 * @param keyingCoat thickness rubbed into each face with the flat side before combing
 * @param backButter thickness spread on the tile's back
 */
public record Bedding(
        Trowel trowelUnder,
        Mortar mortarUnder,
        Trowel trowelOver,
        Mortar mortarOver,
        Quantity<Dimensionless> contact,
        Quantity<Dimensionless> waste,
        Quantity<Length> keyingCoat,
        Quantity<Length> backButter) {

    /** Contact taken for a heated floor when none is given, in percent (common practice, no source). */
    private static final double USUAL_CONTACT = 95;

    /**
     * Checks the values.
     *
     * @param trowelUnder combs the bed under the membrane
     * @param mortarUnder the mortar under the membrane
     * @param trowelOver combs the bed over the studs
     * @param mortarOver the mortar in the channels and over the studs
     * @param contact share of the faces in contact after beating-in, above 0 and at most 1
     * @param waste share added to each mortar, 0 to 1
     * @param keyingCoat thickness rubbed into each face with the flat side before combing
     * @param backButter thickness spread on the tile's back
     * @throws IllegalArgumentException if a share is out of range or a coat not 0 to 20 mm
     */
    public Bedding {
        Objects.requireNonNull(trowelUnder, "trowelUnder");
        Objects.requireNonNull(mortarUnder, "mortarUnder");
        Objects.requireNonNull(trowelOver, "trowelOver");
        Objects.requireNonNull(mortarOver, "mortarOver");
        contactShare(contact);
        Si.within("mortar waste", waste, Units.ONE, 0, 1);
        Si.within("keying coat", keyingCoat, Units.MILLIMETRE, 0, 20);
        Si.within("back-butter coat", backButter, Units.MILLIMETRE, 0, 20);
    }

    /**
     * Beds with the usual mortars in bags of one size: a modified one under the membrane, where it holds to the base, an
     * unmodified one in and over it, where it dries between membrane and tile (common practice, no source; the membrane's
     * instructions decide). Contact 95 %, no waste and no coats.
     *
     * @param trowelUnder combs the bed under the membrane
     * @param trowelOver combs the bed over the studs
     * @param bag dry mass of one bag of either mortar
     * @return the beds
     * @throws IllegalArgumentException if the bag is not above zero
     */
    public static Bedding of(Trowel trowelUnder, Trowel trowelOver, Quantity<Mass> bag) {
        return of(
                trowelUnder,
                Mortar.usual(MortarKind.MODIFIED, bag),
                trowelOver,
                Mortar.usual(MortarKind.UNMODIFIED, bag));
    }

    /**
     * Beds of given mortars: contact 95 %, no waste and no coats.
     *
     * @param trowelUnder combs the bed under the membrane
     * @param mortarUnder the mortar under the membrane
     * @param trowelOver combs the bed over the studs
     * @param mortarOver the mortar in the channels and over the studs
     * @return the beds
     */
    public static Bedding of(Trowel trowelUnder, Mortar mortarUnder, Trowel trowelOver, Mortar mortarOver) {
        return new Bedding(
                trowelUnder,
                mortarUnder,
                trowelOver,
                mortarOver,
                Amounts.of(USUAL_CONTACT, Units.PERCENT),
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
        return new Bedding(trowelUnder, mortarUnder, trowelOver, mortarOver, share, waste, keyingCoat, backButter);
    }

    /**
     * The same beds with other mortars; give one mortar twice where one serves for both.
     *
     * @param under the mortar under the membrane
     * @param over the mortar in the channels and over the studs
     * @return a copy
     */
    public Bedding withMortars(Mortar under, Mortar over) {
        return new Bedding(trowelUnder, under, trowelOver, over, contact, waste, keyingCoat, backButter);
    }

    /**
     * The same beds with a share added for what stays in the bucket and is squeezed out.
     *
     * @param share added to each mortar, 0 to 1
     * @return a copy
     * @throws IllegalArgumentException if the share is out of range
     */
    public Bedding withWaste(Quantity<Dimensionless> share) {
        return new Bedding(trowelUnder, mortarUnder, trowelOver, mortarOver, contact, share, keyingCoat, backButter);
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
        return new Bedding(trowelUnder, mortarUnder, trowelOver, mortarOver, contact, waste, keying, butter);
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
