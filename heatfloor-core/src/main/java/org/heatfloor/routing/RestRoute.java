package org.heatfloor.routing;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.locationtech.jts.geom.LineString;

/**
 * A whole cable with its rest laid anew, and the independent check of the whole.
 *
 * @param whole the route of the whole cable, what lies and what is to be laid; its cable has the length really there
 * @param keptLength length of the heating part that stays as it lies
 * @param kept centre line of what stays, from the joint to the head, in metres
 * @param rest centre line of what is to be laid, from the head on, in metres
 * @param restLength length of the rest as laid
 * @param restTurns right-angle turns of the rest
 * @param most longest heating part that could lie here with what stays, proved
 * @param check the independent check of the whole cable on the site as it is now
 */
public record RestRoute(
        CableRoute whole,
        Quantity<Length> keptLength,
        LineString kept,
        LineString rest,
        Quantity<Length> restLength,
        int restTurns,
        Quantity<Length> most,
        RouteCheckReport check) {

    /**
     * Copies the geometries in.
     *
     * @param whole the route of the whole cable, what lies and what is to be laid; its cable has the length really there
     * @param keptLength length of the heating part that stays as it lies
     * @param kept centre line of what stays, from the joint to the head, in metres
     * @param rest centre line of what is to be laid, from the head on, in metres
     * @param restLength length of the rest as laid
     * @param restTurns right-angle turns of the rest
     * @param most longest heating part that could lie here with what stays, proved
     * @param check the independent check of the whole cable on the site as it is now
     */
    public RestRoute {
        kept = (LineString) kept.copy();
        rest = (LineString) rest.copy();
    }

    /**
     * Centre line of what stays.
     *
     * @return a copy, in metres
     */
    @Override
    public LineString kept() {
        return (LineString) kept.copy();
    }

    /**
     * Centre line of what is to be laid.
     *
     * @return a copy, in metres
     */
    @Override
    public LineString rest() {
        return (LineString) rest.copy();
    }
}
