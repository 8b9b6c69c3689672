package org.heatfloor.routing;

import org.heatfloor.grid.ChannelGrid;
import org.locationtech.jts.geom.Coordinate;

/** Lattice coordinates, in pitches from junction (0, 0), to metres in the room and back. */
final class Frame {

    final double pitchMetres;
    private final Coordinate origin;
    private final double ux;
    private final double uy;

    Frame(ChannelGrid grid) {
        origin = grid.junction(0, 0);
        Coordinate east = grid.junction(1, 0);
        ux = east.x - origin.x;
        uy = east.y - origin.y;
        pitchMetres = Math.hypot(ux, uy);
    }

    Coordinate metres(double x, double y) {
        return new Coordinate(origin.x + x * ux - y * uy, origin.y + x * uy + y * ux);
    }

    /** Place of a junction by its number in a lattice of a width. */
    Coordinate junction(int node, int width) {
        int row = node / width;
        return metres(node % width, row);
    }

    double columnOf(Coordinate c) {
        return ((c.x - origin.x) * ux + (c.y - origin.y) * uy) / (pitchMetres * pitchMetres);
    }

    double rowOf(Coordinate c) {
        return ((c.y - origin.y) * ux - (c.x - origin.x) * uy) / (pitchMetres * pitchMetres);
    }
}
