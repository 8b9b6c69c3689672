package org.heatfloor.area;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.LineString;

/** A door opening and the floor beyond it. Coordinates are metres. */
public final class Door {

    private final String name;
    private final LineString at;
    private final Optional<Quantity<Length>> adjacentFloorHeight;

    private Door(String name, LineString at, Optional<Quantity<Length>> adjacentFloorHeight) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("door name: blank was given; a name is expected");
        }
        this.name = name;
        this.at = at;
        this.adjacentFloorHeight = adjacentFloorHeight;
    }

    /**
     * A door.
     *
     * @param name where it leads
     * @param at the opening in the wall
     * @param unit the unit of its coordinates
     * @return the door
     * @throws IllegalArgumentException if the name is blank or the line faulty
     */
    public static Door of(String name, LineString at, Unit<Length> unit) {
        return new Door(name, Geometries.taken("door '" + name + "'", at, unit), Optional.empty());
    }

    /**
     * The same door with the height of the floor beyond it.
     *
     * @param height above the structural floor of this room; negative where the other floor lies lower
     * @return a copy
     * @throws IllegalArgumentException if it is not a length between -10 m and 10 m
     */
    public Door withAdjacentFloorHeight(Quantity<Length> height) {
        Si.within("door '" + name + "' adjacent floor height", height, Units.METRE, -10, 10);
        return new Door(name, at, Optional.of(height));
    }

    /**
     * Where it leads.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * The opening in the wall.
     *
     * @return a copy, in metres
     */
    public LineString at() {
        return (LineString) at.copy();
    }

    /**
     * Height of the floor beyond the door above this room's structural floor.
     *
     * @return the height, where one was given
     */
    public Optional<Quantity<Length>> adjacentFloorHeight() {
        return adjacentFloorHeight;
    }
}
