package org.heatfloor.area;

import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.locationtech.jts.geom.Polygon;

/** A part of the floor where people stand and more heat is wanted. Coordinates are metres. */
public final class PriorityZone {

    private final String name;
    private final Polygon shape;
    private final double weight;

    private PriorityZone(String name, Polygon shape, double weight) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("priority zone name: blank was given; a name is expected");
        }
        if (!(weight > 0 && weight <= 100)) {
            throw new IllegalArgumentException("priority zone '" + name + "' weight: " + weight
                    + " was given; more than 0 and at most 100 is expected");
        }
        this.name = name;
        this.shape = shape;
        this.weight = weight;
    }

    /**
     * A priority zone.
     *
     * @param name what the fitter calls it
     * @param shape the part of the floor
     * @param unit the unit of its coordinates
     * @param weight heat wanted relative to the rest of the floor, which weighs 1; above 0 and at most 100
     * @return the zone
     * @throws IllegalArgumentException if the name is blank, the shape faulty or the weight out of range
     */
    public static PriorityZone of(String name, Polygon shape, Unit<Length> unit, double weight) {
        return new PriorityZone(name, Geometries.taken("priority zone '" + name + "'", shape, unit), weight);
    }

    /**
     * What the fitter calls it.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * The part of the floor.
     *
     * @return a copy, in metres
     */
    public Polygon shape() {
        return (Polygon) shape.copy();
    }

    /**
     * Heat wanted relative to the rest of the floor.
     *
     * @return the weight, above 0
     */
    public double weight() {
        return weight;
    }
}
