package org.heatfloor.examples;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.heatfloor.quantity.QuantityText;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;

/** Writes geometry in metres as Well-Known Text in a room file's unit, to a micrometre. */
final class WktText {

    private final double metres;
    private final int decimals;

    WktText(LengthUnit unit) {
        this.metres = unit.metres();
        this.decimals = (int) Math.ceil(Math.log10(metres / 1e-6) - 1e-9);
    }

    String of(Point point) {
        return "POINT (" + of(point.getCoordinate()) + ")";
    }

    /** A point at a place in metres. */
    String point(double x, double y) {
        return "POINT (" + of(new Coordinate(x, y)) + ")";
    }

    String of(LineString line) {
        return Arrays.stream(line.getCoordinates())
                .map(this::of)
                .collect(Collectors.joining(", ", "LINESTRING (", ")"));
    }

    private String of(Coordinate c) {
        return QuantityText.number(c.x / metres, decimals) + " " + QuantityText.number(c.y / metres, decimals);
    }
}
