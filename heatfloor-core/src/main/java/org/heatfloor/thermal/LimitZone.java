package org.heatfloor.thermal;

import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;

/**
 * A part of the floor that has its own surface limit, for example the strip along an outer wall.
 *
 * @param name what the part is
 * @param shape where it lies
 * @param limit the limit that holds there
 */
public record LimitZone(String name, FloorShape shape, SurfaceLimit limit) {

    private static final double MOST_PERIPHERAL_METRES = 1;

    /**
     * Checks the name.
     *
     * @param name what the part is
     * @param shape where it lies
     * @param limit the limit that holds there
     * @throws IllegalArgumentException if the name is blank or the limit along outer walls is asked for on more than a strip of
     *     1 m
     */
    public LimitZone {
        if (name.isBlank()) {
            throw new IllegalArgumentException("limit zone name: blank; the name of a part of the floor is expected");
        }
        if (limit == SurfaceLimit.PERIPHERAL && shape.holdsCircle(MOST_PERIPHERAL_METRES / 2 + 1e-6)) {
            throw new IllegalArgumentException("limit zone '" + name + "': a part wider than " + MOST_PERIPHERAL_METRES
                    + " m was given; a strip of at most that is expected for the limit along outer walls");
        }
    }

    /**
     * Judges the part by its warmest place.
     *
     * @param field the floor
     * @param floorSensor whether a floor sensor limits the floor
     * @return as {@link HeatFindings#surface}; a warning when no node of the field's grid lies in the part
     */
    public Finding judge(FloorField field, boolean floorSensor) {
        return field.within(shape)
                .map(part -> HeatFindings.surface(name, part.max(), limit.temperature(), floorSensor, limit.source()))
                .orElseGet(() -> Finding.of(
                        Severity.WARNING,
                        name,
                        "No place of the floor lies in it, so its surface limit was not judged.",
                        Source.brief("limit zone")));
    }
}
