package org.heatfloor.area;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * A part of the floor between movement joints and walls. Its length and width are the sides of the narrowest rectangle
 * around it. Coordinates are metres.
 */
public final class Bay {

    private final String name;
    private final Polygon shape;
    private final boolean heated;
    private final double lengthMetres;
    private final double widthMetres;

    Bay(String name, Polygon shape, boolean heated) {
        this.name = name;
        this.shape = shape;
        this.heated = heated;
        Geometry box = MinimumDiameter.getMinimumRectangle(shape);
        Coordinate[] corners = box.getCoordinates();
        double a = corners[0].distance(corners[1]);
        double b = corners[1].distance(corners[2]);
        this.lengthMetres = Math.max(a, b);
        this.widthMetres = Math.min(a, b);
    }

    /**
     * Its name.
     *
     * @return {@code bay 1} for the largest, and so on
     */
    public String name() {
        return name;
    }

    /**
     * Its shape.
     *
     * @return a copy, in metres
     */
    public Polygon shape() {
        return (Polygon) shape.copy();
    }

    /**
     * Whether any of it is heatable.
     *
     * @return true when a cable may lie in it
     */
    public boolean isHeated() {
        return heated;
    }

    /**
     * Its area.
     *
     * @return the area
     */
    public Quantity<Area> area() {
        return Amounts.squareMetres(shape.getArea());
    }

    /**
     * Its length.
     *
     * @return the longer side
     */
    public Quantity<Length> length() {
        return Amounts.metres(lengthMetres);
    }

    /**
     * Its width.
     *
     * @return the shorter side
     */
    public Quantity<Length> width() {
        return Amounts.metres(widthMetres);
    }
}
