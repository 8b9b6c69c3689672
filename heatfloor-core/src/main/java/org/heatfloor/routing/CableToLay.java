package org.heatfloor.routing;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * What the router needs to know of a heating cable.
 *
 * @param name its name
 * @param conductors 2 for a twin-conductor cable, which ends anywhere; 1 for a single-conductor cable, which comes back
 * @param length length of the heating part
 * @param diameter outer diameter
 * @param coldLead length of one cold lead
 */
public record CableToLay(
        String name, int conductors, Quantity<Length> length, Quantity<Length> diameter, Quantity<Length> coldLead) {

    /**
     * Checks the figures.
     *
     * @param name its name
     * @param conductors 2 for a twin-conductor cable, which ends anywhere; 1 for a single-conductor cable, which comes back
     * @param length length of the heating part
     * @param diameter outer diameter
     * @param coldLead length of one cold lead
     * @throws IllegalArgumentException if the name is blank, there are not 1 or 2 conductors, or a length is not above
     *     zero
     */
    public CableToLay {
        if (name.isBlank()) {
            throw new IllegalArgumentException("cable name: blank was given; a name is expected");
        }
        if (conductors != 1 && conductors != 2) {
            throw new IllegalArgumentException(
                    "cable '" + name + "' conductors: " + conductors + " was given; 1 or 2 is expected");
        }
        Si.within("cable '" + name + "' length", length, Units.METRE, 0.1, 10_000);
        Si.positive("cable '" + name + "' diameter", diameter, Units.METRE);
        Si.positive("cable '" + name + "' cold lead", coldLead, Units.METRE);
    }

    boolean returns() {
        return conductors == 1;
    }
}
