package org.heatfloor.electrical;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import org.heatfloor.quantity.LinearResistance;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * The conductive screen around a heating cable: braid, foil with drain wire, or sheath, which carries a fault current to the
 * protective conductor. A cable without one needs an earthed mesh over it, where its code allows that at all.
 *
 * @param present whether the cable has a screen
 * @param linearResistance resistance of the screen per length at 20 °C, where it is stated; empty without a screen
 */
public record CableScreen(boolean present, Optional<Quantity<LinearResistance>> linearResistance) {

    /** A cable without a screen. */
    public static final CableScreen NONE = new CableScreen(false, Optional.empty());

    /** A screen whose resistance is not stated. */
    public static final CableScreen UNMEASURED = new CableScreen(true, Optional.empty());

    /**
     * Checks the figure.
     *
     * @param present whether the cable has a screen
     * @param linearResistance resistance of the screen per length at 20 °C, where it is stated; empty without a screen
     * @throws IllegalArgumentException if the resistance is not above 0 and at most 10 Ω/m, or is given without a screen
     */
    public CableScreen {
        Objects.requireNonNull(linearResistance, "linearResistance");
        if (linearResistance.isPresent()) {
            Si.positive("screen resistance per length", linearResistance.get(), Units.OHM_PER_METRE);
            Si.within("screen resistance per length", linearResistance.get(), Units.OHM_PER_METRE, 0, 10);
            if (!present) {
                throw new IllegalArgumentException("screen resistance per length: " + linearResistance.get()
                        + " was given for a cable without a screen; none is expected");
            }
        }
    }

    /**
     * A screen with its resistance.
     *
     * @param linearResistance resistance per length at 20 °C, above 0 and at most 10 Ω/m
     * @return the screen
     * @throws IllegalArgumentException if it is out of range
     */
    public static CableScreen of(Quantity<LinearResistance> linearResistance) {
        return new CableScreen(true, Optional.of(linearResistance));
    }
}
