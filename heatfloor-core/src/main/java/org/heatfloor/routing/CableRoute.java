package org.heatfloor.routing;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.locationtech.jts.geom.LineString;

/**
 * One cable as it is to be laid, with what bounds it. Coordinates are metres; arcs are chords within 0.04 mm.
 *
 * @param cable the cable
 * @param line centre line of the heating part, from the joint onwards
 * @param coldLeads centre lines of the cold leads in the floor, from the start point to the joint; two for a
 *     single-conductor cable
 * @param laidLength length of the heating part along its arcs
 * @param turns right-angle turns of the heating part
 * @param evenSpacing {@code A/L}: area the cable can reach over its length
 * @param capacity longest cable that can lie here with the least spacing, proved: {@code A/s − s} less the rounding of the
 *     fewest turns
 * @param reachArea A: union of squares of the least spacing's side about the junctions the cable can reach
 * @param coldShare share of those junctions farther from the cable than the even spacing, or where zones are wanted
 *     warmer than the spacing wanted there
 * @param farthest greatest distance of such a junction from the cable
 * @param sleeved whether a cold lead passes a movement joint
 */
public record CableRoute(
        CableToLay cable,
        LineString line,
        List<LineString> coldLeads,
        Quantity<Length> laidLength,
        int turns,
        Quantity<Length> evenSpacing,
        Quantity<Length> capacity,
        Quantity<Area> reachArea,
        Quantity<Dimensionless> coldShare,
        Quantity<Length> farthest,
        boolean sleeved) {

    /**
     * Copies the geometries in.
     *
     * @param cable the cable
     * @param line centre line of the heating part, from the joint onwards
     * @param coldLeads centre lines of the cold leads in the floor, from the start point to the joint; two for a single-conductor cable
     * @param laidLength length of the heating part along its arcs
     * @param turns right-angle turns of the heating part
     * @param evenSpacing {@code A/L}: area the cable can reach over its length
     * @param capacity longest cable that can lie here with the least spacing, proved: {@code A/s − s} less the rounding of the fewest turns
     * @param reachArea A: union of squares of the least spacing's side about the junctions the cable can reach
     * @param coldShare share of those junctions farther from the cable than the even spacing, or where zones are wanted warmer
     *     than the spacing wanted there
     * @param farthest greatest distance of such a junction from the cable
     * @param sleeved whether a cold lead passes a movement joint
     */
    public CableRoute {
        line = (LineString) line.copy();
        coldLeads = copies(coldLeads);
    }

    /** The same route with its area, and with it the even spacing, in proportion to a share of a larger floor. */
    CableRoute ofShare(double factor) {
        return new CableRoute(
                cable,
                line,
                coldLeads,
                laidLength,
                turns,
                evenSpacing.multiply(factor),
                capacity,
                reachArea.multiply(factor),
                coldShare,
                farthest,
                sleeved);
    }

    /**
     * The centre line of the heating part.
     *
     * @return a copy, in metres
     */
    @Override
    public LineString line() {
        return (LineString) line.copy();
    }

    /**
     * The centre lines of the cold leads in the floor.
     *
     * @return copies, in metres
     */
    @Override
    public List<LineString> coldLeads() {
        return copies(coldLeads);
    }

    private static List<LineString> copies(List<LineString> lines) {
        return lines.stream().map(l -> (LineString) l.copy()).toList();
    }
}
