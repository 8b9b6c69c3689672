package org.heatfloor.takeoff;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Source;

/**
 * The difference of height at a door.
 *
 * @param door the door's name
 * @param step this floor's height less the floor beyond; negative where this floor lies lower
 * @param leveller levelling compound under the floor there, part of this floor's height
 * @param verdict what it asks for
 * @param run length of the bevel or ramp; zero where the step may stand upright
 * @param source where the limit stands
 * @param remedies what would make it flush, the nearest first; empty where it is flush
 */
public record DoorStep(
        String door,
        Quantity<Length> step,
        Quantity<Length> leveller,
        StepVerdict verdict,
        Quantity<Length> run,
        Source source,
        List<Remedy> remedies) {

    /**
     * Checks the parts.
     *
     * @param door the door's name
     * @param step this floor's height less the floor beyond; negative where this floor lies lower
     * @param leveller levelling compound under the floor there, part of this floor's height
     * @param verdict what it asks for
     * @param run length of the bevel or ramp; zero where the step may stand upright
     * @param source where the limit stands
     * @param remedies what would make it flush, the nearest first; empty where it is flush
     */
    public DoorStep {
        Objects.requireNonNull(door, "door");
        Objects.requireNonNull(step, "step");
        Objects.requireNonNull(leveller, "leveller");
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(run, "run");
        Objects.requireNonNull(source, "source");
        remedies = List.copyOf(remedies);
    }
}
