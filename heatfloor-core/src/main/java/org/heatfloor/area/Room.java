package org.heatfloor.area;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.DistanceOp;

/** A room's floor: the inside faces of the walls, with columns as inner rings. Coordinates are metres in a local frame. */
public final class Room {

    /** A keep-out this near to the room touches it. */
    private static final double TOUCHING_METRES = 1e-6;

    /** A place this near to a wall is on it; the trade measures with a tape. */
    private static final double NEAR_WALL_METRES = 0.025;

    private static final double SAME_PLACE_METRES = 1e-9;

    private final Polygon polygon;

    private Room(Polygon polygon) {
        this.polygon = polygon;
    }

    /**
     * A room from a polygon.
     *
     * @param outline the inside faces of the walls; inner rings are columns
     * @param unit the unit of its coordinates
     * @return the room
     * @throws IllegalArgumentException if the outline is empty, crosses itself, is not finite or lies farther than 1 km
     *     from the origin; the message names the place and the walls, counted from the outline's first corner
     */
    public static Room of(Polygon outline, Unit<Length> unit) {
        return new Room(Geometries.taken(Geometries.OUTLINE, outline, unit));
    }

    /**
     * A room from Well-Known Text.
     *
     * @param wkt a POLYGON
     * @param unit the unit of its coordinates
     * @return the room
     * @throws IllegalArgumentException as for {@link #of}, or if the text is not a POLYGON
     */
    public static Room ofWkt(String wkt, Unit<Length> unit) {
        return new Room(Geometries.ofWkt(Geometries.OUTLINE, wkt, unit, Polygon.class));
    }

    /**
     * The floor.
     *
     * @return a copy, in metres
     */
    public Polygon polygon() {
        return (Polygon) polygon.copy();
    }

    /**
     * The floor's area.
     *
     * @return the area inside the walls, columns taken out
     */
    public Quantity<Area> area() {
        return Amounts.of(polygon.getArea(), Units.SQUARE_METRE);
    }

    /**
     * Checks that every keep-out takes part in this room.
     *
     * @param keepOuts the keep-outs
     * @throws IllegalArgumentException naming the first one that lies wholly outside the walls
     */
    public void requireInside(List<KeepOut> keepOuts) {
        for (KeepOut keepOut : keepOuts) {
            double away = keepOut.distanceMetres(polygon);
            if (!(away <= TOUCHING_METRES)) {
                throw new IllegalArgumentException("keep-out '" + keepOut.name() + "': a place "
                        + QuantityText.number(away * 1000, 1)
                        + " mm outside the room was given; a place in the room or touching it is expected");
            }
        }
    }

    /**
     * The place on a wall that is meant by one measured near it.
     *
     * @param what the place's name, for the message
     * @param place the place
     * @param unit the unit of its coordinates
     * @return the nearest place on a wall, in metres; the place itself where it lies more than 25 mm from every wall
     * @throws IllegalArgumentException if the place is empty, is not finite or lies farther than 1 km from the origin
     */
    public Point onWall(String what, Point place, Unit<Length> unit) {
        Point taken = Geometries.taken(what, place, unit);
        Coordinate near = DistanceOp.nearestPoints(polygon.getBoundary(), taken)[0];
        double away = near.distance(taken.getCoordinate());
        return away <= SAME_PLACE_METRES || away > NEAR_WALL_METRES
                ? taken
                : polygon.getFactory().createPoint(near.copy());
    }

    /**
     * Checks that a place is one where a cold lead can leave the wall.
     *
     * @param what the place's name, for the message
     * @param place the place
     * @param unit the unit of its coordinates
     * @param keepOuts places it may not lie in
     * @return the place, in metres
     * @throws IllegalArgumentException if it lies more than 25 mm from every wall or inside a keep-out, which is named
     */
    public Point requireOnWall(String what, Point place, Unit<Length> unit, List<KeepOut> keepOuts) {
        Point taken = Geometries.taken(what, place, unit);
        double away = polygon.getBoundary().distance(taken);
        if (!(away <= NEAR_WALL_METRES)) {
            throw new IllegalArgumentException(what + ": " + place.toText() + " was given, "
                    + QuantityText.number(away * 1000, 1)
                    + " mm from the nearest wall; a place on a wall (within 25 mm) is expected");
        }
        for (KeepOut keepOut : keepOuts) {
            if (keepOut.holdsInside(taken)) {
                throw new IllegalArgumentException(what + ": " + place.toText() + " was given, inside the keep-out '"
                        + keepOut.name() + "'; a place outside every keep-out is expected");
            }
        }
        return taken;
    }
}
