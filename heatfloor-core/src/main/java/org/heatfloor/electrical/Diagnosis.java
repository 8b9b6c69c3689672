package org.heatfloor.electrical;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * What a series of readings points to. It names a class of fault, not a certainty: the meter decides, and a fault locator
 * finds the place.
 *
 * @param fault the class of fault
 * @param stage the first stage at which it shows; empty for {@link CableFault#NONE}
 * @param message what it is and what to do, in a sentence or two
 * @param distance for a shorted twin-conductor core, how far the touching place lies from the cold lead
 */
public record Diagnosis(
        CableFault fault, Optional<TestStage> stage, String message, Optional<Quantity<Length>> distance) {

    /**
     * Checks the parts.
     *
     * @param fault the class of fault
     * @param stage the first stage at which it shows; empty for {@link CableFault#NONE}
     * @param message what it is and what to do, in a sentence or two
     * @param distance for a shorted twin-conductor core, how far the touching place lies from the cold lead
     * @throws IllegalArgumentException if the message is blank
     */
    public Diagnosis {
        Objects.requireNonNull(fault, "fault");
        Objects.requireNonNull(stage, "stage");
        Objects.requireNonNull(distance, "distance");
        if (message.isBlank()) {
            throw new IllegalArgumentException("diagnosis message: blank; a sentence is expected");
        }
    }

    static Diagnosis of(CableFault fault, TestStage stage, String message) {
        return new Diagnosis(fault, Optional.of(stage), message, Optional.empty());
    }
}
