package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/**
 * One cable as it lies in the drawing, with what is known of it before it is laid. Coordinates are metres; arcs are drawn
 * as chords at most 0.2 mm off.
 *
 * @param name what the fitter calls the cable
 * @param heatingLine centre line of the heating part; its first point is the joint with the first cold lead
 * @param coldLeads centre lines of the cold leads, each from the place on the wall to its joint; the first belongs to the
 *     heating line's first point, the second (of a single-conductor cable) to its last
 * @param cableLength length of the heating part as made
 * @param diameter outer diameter
 * @param conductors 2 for a cable with one end, 1 for a cable with two
 * @param coldLeadLength length of each cold lead as made, the part inside the wall included
 */
public record LaidCable(
        String name,
        LineString heatingLine,
        List<LineString> coldLeads,
        Quantity<Length> cableLength,
        Quantity<Length> diameter,
        int conductors,
        Quantity<Length> coldLeadLength) {

    /**
     * Checks and copies the parts.
     *
     * @param name what the fitter calls the cable
     * @param heatingLine centre line of the heating part; its first point is the joint with the first cold lead
     * @param coldLeads centre lines of the cold leads, each from the place on the wall to its joint; the first belongs to the
     *     heating line's first point, the second (of a single-conductor cable) to its last
     * @param cableLength length of the heating part as made
     * @param diameter outer diameter
     * @param conductors 2 for a cable with one end, 1 for a cable with two
     * @param coldLeadLength length of each cold lead as made, the part inside the wall included
     * @throws IllegalArgumentException if the name is blank, a line has no length or a coordinate that is not finite, a
     *     length is not above zero, or there are neither one nor two conductors
     */
    public LaidCable {
        if (name.isBlank()) {
            throw new IllegalArgumentException("cable name: blank was given; a name is expected");
        }
        heatingLine = taken("cable '" + name + "' heating line", heatingLine);
        List<LineString> leads = new ArrayList<>();
        for (LineString lead : coldLeads) {
            leads.add(taken("cable '" + name + "' cold lead", lead));
        }
        coldLeads = List.copyOf(leads);
        Si.positive("cable '" + name + "' length", cableLength, Units.METRE);
        Si.positive("cable '" + name + "' diameter", diameter, Units.METRE);
        Si.notNegative("cable '" + name + "' cold lead length", coldLeadLength, Units.METRE);
        if (conductors != 1 && conductors != 2) {
            throw new IllegalArgumentException(
                    "cable '" + name + "' conductors: " + conductors + " was given; 1 or 2 is expected");
        }
    }

    /**
     * Centre line of the heating part.
     *
     * @return a copy, in metres
     */
    @Override
    public LineString heatingLine() {
        return (LineString) heatingLine.copy();
    }

    /**
     * Centre lines of the cold leads.
     *
     * @return copies, in metres
     */
    @Override
    public List<LineString> coldLeads() {
        return coldLeads.stream().map(lead -> (LineString) lead.copy()).toList();
    }

    private static LineString taken(String what, LineString line) {
        for (Coordinate c : line.getCoordinates()) {
            if (!Double.isFinite(c.x) || !Double.isFinite(c.y)) {
                throw new IllegalArgumentException(
                        what + ": the coordinate " + c.x + " " + c.y + " was given; finite numbers are expected");
            }
        }
        if (!(line.getLength() > 0)) {
            throw new IllegalArgumentException(what + ": a line without length was given; a line is expected");
        }
        return (LineString) line.copy();
    }
}
