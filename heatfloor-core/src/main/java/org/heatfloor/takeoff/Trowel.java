package org.heatfloor.takeoff;

import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * A notched trowel and the angle it is held at. A ridge of mortar is the notch seen along the stroke: as wide as the notch
 * and its depth times the sine of the angle high (derived geometry; a worn trowel leaves less).
 *
 * @param notch shape of a notch
 * @param width width of a notch
 * @param depth depth of a notch
 * @param gap the tooth between two notches, zero or more
 * @param angle between blade and floor, above 0° and at most 90°
 */
public record Trowel(
        Notch notch, Quantity<Length> width, Quantity<Length> depth, Quantity<Length> gap, Quantity<Angle> angle) {

    /** The angle a trowel is held at when none is given, in degrees: the angle of the laboratory tests, from memory. */
    static final double USUAL_ANGLE_DEGREES = 60;

    /**
     * Checks the sizes.
     *
     * @param notch shape of a notch
     * @param width width of a notch
     * @param depth depth of a notch
     * @param gap the tooth between two notches, zero or more
     * @param angle between blade and floor, above 0° and at most 90°
     * @throws IllegalArgumentException if width or depth is not above zero and at most 50 mm, the gap not 0 to 50 mm, the
     *     angle not above 0° and at most 90°, or the notch is a U less deep than half its width
     */
    public Trowel {
        Objects.requireNonNull(notch, "notch");
        Si.positive("trowel notch width", width, Units.MILLIMETRE);
        double w = Si.within("trowel notch width", width, Units.MILLIMETRE, 0, 50);
        Si.positive("trowel notch depth", depth, Units.MILLIMETRE);
        double d = Si.within("trowel notch depth", depth, Units.MILLIMETRE, 0, 50);
        Si.within("trowel gap between notches", gap, Units.MILLIMETRE, 0, 50);
        Si.positive("trowel angle", angle, Units.DEGREE);
        Si.within("trowel angle", angle, Units.DEGREE, 0, 90 + 1e-9);
        if (notch == Notch.U && !(d >= w / 2 - 1e-9)) {
            throw new IllegalArgumentException("trowel notch depth: " + depth
                    + " was given for a U notch; at least half its width of " + width + " is expected");
        }
    }

    /**
     * A trowel held at 60°.
     *
     * @param notch shape of a notch
     * @param width width of a notch
     * @param depth depth of a notch
     * @param gap the tooth between two notches
     * @return the trowel
     * @throws IllegalArgumentException as for the constructor
     */
    public static Trowel of(Notch notch, Quantity<Length> width, Quantity<Length> depth, Quantity<Length> gap) {
        return new Trowel(notch, width, depth, gap, Amounts.degrees(USUAL_ANGLE_DEGREES));
    }

    /**
     * A trowel held at 60° whose notches are given by their spacing, centre to centre.
     *
     * @param notch shape of a notch
     * @param width width of a notch
     * @param depth depth of a notch
     * @param spacing from the centre of one notch to the centre of the next
     * @return the trowel
     * @throws IllegalArgumentException if the notch is wider than its spacing, or as for the constructor
     */
    public static Trowel atSpacing(
            Notch notch, Quantity<Length> width, Quantity<Length> depth, Quantity<Length> spacing) {
        double gap = Si.positive("trowel notch spacing", spacing, Units.METRE)
                - Si.positive("trowel notch width", width, Units.METRE);
        if (!(gap >= -1e-9)) {
            throw new IllegalArgumentException("trowel notch width: " + width
                    + " was given; at most the notch spacing of " + spacing + " is expected");
        }
        return of(notch, width, depth, Amounts.metres(Math.max(0, gap)));
    }

    /**
     * The same trowel held at another angle.
     *
     * @param held between blade and floor
     * @return a copy
     * @throws IllegalArgumentException if the angle is not above 0° and at most 90°
     */
    public Trowel withAngle(Quantity<Angle> held) {
        return new Trowel(notch, width, depth, gap, held);
    }

    /**
     * Mean thickness of the combed mortar: notch area times the sine of the angle over width and gap. It is also the volume
     * of mortar per area. Derived geometry; example: square 6 mm by 6 mm at 6 mm gives 2.598 mm at 60°.
     *
     * @return the thickness
     */
    public Quantity<Length> combedThickness() {
        return Amounts.millimetres(combedMetres() * 1000);
    }

    /**
     * Thickness of the bed once the tile is beaten in, the mortar's volume kept: combed thickness over the contact share.
     *
     * @param contact share of the face in contact, above 0 and at most 1
     * @return the thickness
     * @throws IllegalArgumentException if the share is out of range
     */
    public Quantity<Length> bedThickness(Quantity<Dimensionless> contact) {
        return Amounts.millimetres(combedMetres() * 1000 / Bedding.contactShare(contact));
    }

    double combedMetres() {
        double w = Si.in("width", width, Units.METRE);
        double area = notch.areaSquareMetres(w, Si.in("depth", depth, Units.METRE));
        return area * Math.sin(Si.in("angle", angle, Units.RADIAN)) / (w + Si.in("gap", gap, Units.METRE));
    }

    /** One line in the trade's order: shape, width, depth, gap. */
    @Override
    public String toString() {
        return notch.name().toLowerCase(Locale.ROOT) + " notch " + QuantityText.write(width, 2) + " by "
                + QuantityText.write(depth, 2) + ", gap " + QuantityText.write(gap, 2) + ", held at "
                + QuantityText.write(angle.to(Units.DEGREE), 0);
    }
}
