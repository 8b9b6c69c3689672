package org.heatfloor.area;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Polygon;

/** A room's floor: the inside faces of the walls, with columns as inner rings. Coordinates are metres in a local frame. */
public final class Room {

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
     *     from the origin; the message names the place
     */
    public static Room of(Polygon outline, Unit<Length> unit) {
        return new Room(Geometries.taken("outline", outline, unit));
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
        return new Room(Geometries.ofWkt("outline", wkt, unit, Polygon.class));
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
}
