package org.heatfloor.takeoff;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * A change that would let a step at a door stand.
 *
 * @param change what to change and to what, in words
 * @param step the step it leaves
 */
public record Remedy(String change, Quantity<Length> step) {

    /**
     * Checks the parts.
     *
     * @param change what to change and to what, in words
     * @param step the step it leaves
     */
    public Remedy {
        Objects.requireNonNull(change, "change");
        Objects.requireNonNull(step, "step");
    }
}
