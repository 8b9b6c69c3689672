package org.heatfloor.routing;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;

/**
 * A place for a floor sensor midway between two runs, and the way of its lead to the wall. Coordinates are metres.
 *
 * @param at the sensor
 * @param lead from the wall to the sensor, crossing no heating cable
 * @param gap distance of the two runs
 */
public record SensorPlace(Point at, LineString lead, Quantity<Length> gap) {

    /**
     * Copies the geometries in.
     *
     * @param at the sensor
     * @param lead from the wall to the sensor, crossing no heating cable
     * @param gap distance of the two runs
     */
    public SensorPlace {
        at = (Point) at.copy();
        lead = (LineString) lead.copy();
    }

    /**
     * The sensor.
     *
     * @return a copy
     */
    @Override
    public Point at() {
        return (Point) at.copy();
    }

    /**
     * The lead from the wall to the sensor.
     *
     * @return a copy
     */
    @Override
    public LineString lead() {
        return (LineString) lead.copy();
    }
}
