package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.LinearPower;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * A heating cable in the heated layer.
 *
 * @param power power a metre, 0 to 200 W/m
 * @param diameter outer diameter, above 0 and at most 50 mm
 * @param axisHeight height of the cable's axis above the underside of the heated layer
 */
public record EmbeddedCable(Quantity<LinearPower> power, Quantity<Length> diameter, Quantity<Length> axisHeight) {

    /**
     * Checks the figures.
     *
     * @param power power a metre, 0 to 200 W/m
     * @param diameter outer diameter, above 0 and at most 50 mm
     * @param axisHeight height of the cable's axis above the underside of the heated layer
     * @throws IllegalArgumentException if a figure lies outside its range or the cable reaches below the heated layer
     */
    public EmbeddedCable {
        Si.within("cable power", power, Units.WATT_PER_METRE, 0, 200);
        Si.positive("cable diameter", diameter, Units.METRE);
        double d = Si.within("cable diameter", diameter, Units.METRE, 0, 0.05);
        double a = Si.positive("cable axisHeight", axisHeight, Units.METRE);
        if (!(a >= d / 2 - 1e-12)) {
            throw new IllegalArgumentException("cable axisHeight: " + axisHeight
                    + " was given; at least half the diameter of " + diameter
                    + " is expected, or the cable reaches below its layer");
        }
    }

    /**
     * A cable whose top is flush with the stud tops, the membrane's underside being the underside of the heated layer
     * (common practice, no source).
     *
     * @param power power a metre
     * @param diameter outer diameter
     * @param studHeight height of the membrane's studs
     * @return the cable, its axis at stud height less half its diameter
     */
    public static EmbeddedCable flushWithStuds(
            Quantity<LinearPower> power, Quantity<Length> diameter, Quantity<Length> studHeight) {
        double height = Si.positive("studHeight", studHeight, Units.METRE)
                - Si.positive("cable diameter", diameter, Units.METRE) / 2;
        return new EmbeddedCable(power, diameter, Amounts.metres(height));
    }

    double powerSi() {
        return Si.in("power", power, Units.WATT_PER_METRE);
    }

    double radiusMetres() {
        return Si.in("diameter", diameter, Units.METRE) / 2;
    }

    double axisHeightMetres() {
        return Si.in("axisHeight", axisHeight, Units.METRE);
    }

    /** The spacing in metres; throws unless it is more than the cable's diameter and at most 10 m. */
    double checkSpacing(Quantity<Length> spacing) {
        double w = Si.within("spacing", spacing, Units.METRE, 0, 10);
        if (!(w > 2 * radiusMetres())) {
            throw new IllegalArgumentException("spacing: " + spacing + " was given; more than the cable's diameter of "
                    + diameter + " is expected");
        }
        return w;
    }

    /** Throws unless the cable lies wholly inside the heated layer. */
    void checkInside(BuildUp buildUp) {
        double thickness = Si.in("thickness", buildUp.heatedLayer().thickness(), Units.METRE);
        if (!(axisHeightMetres() + radiusMetres() <= thickness + 1e-12)) {
            throw new IllegalArgumentException("cable axisHeight: " + axisHeight + " with a diameter of " + diameter
                    + " was given; the cable must lie inside its layer '"
                    + buildUp.heatedLayer().name() + "' of "
                    + buildUp.heatedLayer().thickness());
        }
    }
}
