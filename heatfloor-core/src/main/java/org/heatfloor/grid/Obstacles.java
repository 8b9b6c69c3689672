package org.heatfloor.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** A room and its keep-outs as plain numbers in a frame turned with the lattice, so that any phase is tried cheaply. */
final class Obstacles {

    private static final class Chain {
        final double[] places;
        final double radiusMetres;

        Chain(double[] places, double radiusMetres) {
            this.places = places;
            this.radiusMetres = radiusMetres;
        }
    }

    private record Disc(double u, double v, double radiusMetres) {}

    private final double pitch;
    private final double cos;
    private final double sin;
    private final double[][] roomRings;
    private final List<double[][]> areas = new ArrayList<>();
    private final List<Chain> chains = new ArrayList<>();
    private final List<Disc> discs = new ArrayList<>();
    private double leastU = Double.POSITIVE_INFINITY;
    private double leastV = Double.POSITIVE_INFINITY;
    private double mostU = Double.NEGATIVE_INFINITY;
    private double mostV = Double.NEGATIVE_INFINITY;

    Obstacles(
            Room room,
            TradeLength wallClearance,
            List<KeepOut> keepOuts,
            Quantity<Length> studPitch,
            Quantity<Angle> angle) {
        this.pitch = Si.positive("stud pitch", studPitch, Units.METRE);
        double radians = Si.in("lattice angle", angle, Units.RADIAN);
        this.cos = Math.cos(radians);
        this.sin = Math.sin(radians);
        this.roomRings = rings(room.polygon());
        for (int i = 0; i < roomRings[0].length; i += 2) {
            leastU = Math.min(leastU, roomRings[0][i]);
            mostU = Math.max(mostU, roomRings[0][i]);
            leastV = Math.min(leastV, roomRings[0][i + 1]);
            mostV = Math.max(mostV, roomRings[0][i + 1]);
        }
        addChains(roomRings, ChannelGrid.metres("wall clearance", wallClearance, studPitch));
        for (KeepOut keepOut : keepOuts) {
            if (keepOut.blocksCable()) {
                add(
                        keepOut,
                        ChannelGrid.metres(
                                "keep-out '" + keepOut.name() + "' clearance", keepOut.clearance(), studPitch));
            }
        }
    }

    private void add(KeepOut keepOut, double clearanceMetres) {
        Geometry shape = keepOut.shape();
        double radius = Si.notNegative("radius", keepOut.radius(), Units.METRE);
        if (shape instanceof Polygon polygon) {
            double[][] rings = rings(polygon);
            areas.add(rings);
            addChains(rings, clearanceMetres);
        } else if (shape instanceof LineString line) {
            chains.add(new Chain(
                    places(line.getCoordinates()),
                    Math.max(clearanceMetres, 2 * LineMask.TOLERANCE_METRES) - LineMask.TOLERANCE_METRES));
        } else {
            Coordinate c = shape.getCoordinate();
            discs.add(new Disc(u(c), v(c), radius + clearanceMetres - LineMask.TOLERANCE_METRES));
        }
    }

    private void addChains(double[][] rings, double clearanceMetres) {
        for (double[] ring : rings) {
            chains.add(new Chain(ring, clearanceMetres - LineMask.TOLERANCE_METRES));
        }
    }

    /** The coordinate along the rows, from the frame's own zero. */
    double u(Coordinate c) {
        return c.x * cos + c.y * sin;
    }

    /** The coordinate across the rows, from the frame's own zero. */
    double v(Coordinate c) {
        return c.y * cos - c.x * sin;
    }

    /** The walls' rings in the frame of the lattice. */
    double[][] roomRings() {
        return roomRings.clone();
    }

    /** Where lines across an axis graze the clearance of a disc or a corner, on either side; the walls' corners last. */
    double[] edges(int axis) {
        DoubleStream round =
                discs.stream().flatMapToDouble(disc -> beside(axis == 0 ? disc.u() : disc.v(), disc.radiusMetres()));
        DoubleStream corners = IntStream.range(0, chains.size())
                .mapToObj(n -> chains.get(chains.size() - 1 - n))
                .flatMapToDouble(chain -> IntStream.range(0, chain.places.length / 2)
                        .mapToDouble(i -> chain.places[2 * i + axis])
                        .flatMap(at -> beside(at, chain.radiusMetres)));
        return DoubleStream.concat(round, corners).toArray();
    }

    private static DoubleStream beside(double at, double distance) {
        return DoubleStream.of(at - distance, at + distance);
    }

    /** How many corners the walls and keep-outs have. */
    int corners() {
        return discs.size()
                + chains.stream().mapToInt(chain -> chain.places.length / 2).sum();
    }

    ChannelGrid gridOf(StudLattice lattice) {
        Coordinate zero = lattice.junction(0, 0);
        double zeroU = u(zero);
        double zeroV = v(zero);
        long columnFrom = (long) Math.ceil((leastU - zeroU) / pitch - 1e-9);
        long columnTo = (long) Math.floor((mostU - zeroU) / pitch + 1e-9);
        long rowFrom = (long) Math.ceil((leastV - zeroV) / pitch - 1e-9);
        long rowTo = (long) Math.floor((mostV - zeroV) / pitch + 1e-9);
        long columns = Math.max(0, columnTo - columnFrom + 1);
        long rows = Math.max(0, rowTo - rowFrom + 1);
        if (!(columns * rows <= ChannelGrid.MOST_JUNCTIONS)) {
            throw new IllegalArgumentException("stud pitch: " + pitch + " m was given for a room that takes " + columns
                    + " by " + rows + " junctions; at most " + ChannelGrid.MOST_JUNCTIONS + " junctions are expected");
        }
        double firstU = zeroU + columnFrom * pitch;
        double firstV = zeroV + rowFrom * pitch;
        LineMask along = new LineMask(pitch, (int) rows, (int) columns);
        LineMask up = new LineMask(pitch, (int) columns, (int) rows);
        mark(along, firstU, firstV, false);
        mark(up, firstU, firstV, true);
        return ChannelGrid.of(lattice, (int) columnFrom, (int) rowFrom, (int) columns, (int) rows, along, up);
    }

    private void mark(LineMask mask, double firstU, double firstV, boolean swapped) {
        mask.takeArea(moved(roomRings, firstU, firstV, swapped), false);
        for (double[][] area : areas) {
            mask.takeArea(moved(area, firstU, firstV, swapped), true);
        }
        for (Chain chain : chains) {
            double[] p = moved(chain.places, firstU, firstV, swapped);
            for (int i = 0; i + 3 < p.length; i += 2) {
                mask.takeAround(p[i], p[i + 1], p[i + 2], p[i + 3], chain.radiusMetres);
            }
        }
        for (Disc disc : discs) {
            double u = disc.u() - firstU;
            double v = disc.v() - firstV;
            mask.takeDisc(swapped ? v : u, swapped ? u : v, disc.radiusMetres());
        }
    }

    private static double[][] moved(double[][] rings, double firstU, double firstV, boolean swapped) {
        double[][] out = new double[rings.length][];
        for (int i = 0; i < rings.length; i++) {
            out[i] = moved(rings[i], firstU, firstV, swapped);
        }
        return out;
    }

    private static double[] moved(double[] places, double firstU, double firstV, boolean swapped) {
        double[] out = new double[places.length];
        for (int i = 0; i < places.length; i += 2) {
            out[swapped ? i + 1 : i] = places[i] - firstU;
            out[swapped ? i : i + 1] = places[i + 1] - firstV;
        }
        return out;
    }

    private double[][] rings(Polygon polygon) {
        double[][] out = new double[1 + polygon.getNumInteriorRing()][];
        out[0] = places(polygon.getExteriorRing().getCoordinates());
        for (int i = 1; i < out.length; i++) {
            out[i] = places(polygon.getInteriorRingN(i - 1).getCoordinates());
        }
        return out;
    }

    private double[] places(Coordinate[] coordinates) {
        double[] out = new double[coordinates.length * 2];
        for (int i = 0; i < coordinates.length; i++) {
            out[2 * i] = u(coordinates[i]);
            out[2 * i + 1] = v(coordinates[i]);
        }
        return out;
    }
}
