package org.heatfloor.examples;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.grid.ChannelGrid;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableToLay;
import org.heatfloor.routing.Router;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * A room file with one cable, as a lattice in plain numbers: the same floor for a general solver and for the router. It
 * reads the free channels from the public grid and shares no code with the router's search. Lengths are in metres,
 * places in pitches.
 */
public final class SmallRoom {

    /**
     * A junction at which a cold lead can arrive from the wall.
     *
     * @param x column
     * @param y row
     * @param dx direction of arrival
     * @param dy direction of arrival
     * @param lead metres of lead from the start along the wall and straight in
     * @param along metres of it along the wall
     * @param in metres of it from the wall to the junction
     */
    public record Entry(int x, int y, int dx, int dy, double lead, double along, double in) {}

    private final String name;
    private final RouterCase floor;
    private final CableToLay cable;
    private final int width;
    private final int height;
    private final boolean[] free;
    private final boolean[] east;
    private final boolean[] north;
    private final List<Entry> entries;

    private SmallRoom(String name, RouterCase floor, CableToLay cable) {
        this.name = name;
        this.floor = floor;
        this.cable = cable;
        ChannelGrid grid = floor.site().channels();
        width = grid.columns();
        height = grid.rows();
        free = new boolean[width * height];
        east = new boolean[free.length];
        north = new boolean[free.length];
        for (int v = 0; v < free.length; v++) {
            free[v] = grid.isFree(v % width, v / width);
            east[v] = grid.isFreeEast(v % width, v / width);
            north[v] = grid.isFreeNorth(v % width, v / width);
        }
        entries = entries(grid);
    }

    /**
     * Reads a room file.
     *
     * @param file the file; it gives the lattice and one cable
     * @return the room
     * @throws IOException if it cannot be read
     */
    public static SmallRoom read(Path file) throws IOException {
        RoomFile room;
        try {
            room = RoomFileReader.read(file);
        } catch (BadRoomFile e) {
            throw new IOException(file + ": " + e.faults(), e);
        }
        HeatingCable offer = room.cable().catalogue().get(0);
        return new SmallRoom(
                PrototypeComparison.name(file),
                PrototypeComparison.routerCase(room),
                new CableToLay(offer.name(), offer.conductors(), offer.length(), offer.diameter(), offer.coldLead()));
    }

    /** The floor as router and check take it. */
    RouterCase floor() {
        return floor;
    }

    /**
     * The room's name.
     *
     * @return the file's name without its ending
     */
    public String name() {
        return name;
    }

    /**
     * The router of the floor.
     *
     * @return a new one
     */
    public Router router() {
        return floor.router();
    }

    /**
     * The cable.
     *
     * @return the one cable of the file
     */
    public CableToLay cable() {
        return cable;
    }

    /**
     * Columns of the lattice.
     *
     * @return how many
     */
    public int width() {
        return width;
    }

    /**
     * Rows of the lattice.
     *
     * @return how many
     */
    public int height() {
        return height;
    }

    /**
     * Whether cable may lie on a junction.
     *
     * @param x column
     * @param y row
     * @return false outside the lattice
     */
    public boolean free(int x, int y) {
        return x >= 0 && y >= 0 && x < width && y < height && free[y * width + x];
    }

    /**
     * Whether the channel from a junction to the next column is free.
     *
     * @param x column
     * @param y row
     * @return whether cable may lie in it
     */
    public boolean freeEast(int x, int y) {
        return free(x, y) && free(x + 1, y) && east[y * width + x];
    }

    /**
     * Whether the channel from a junction to the next row is free.
     *
     * @param x column
     * @param y row
     * @return whether cable may lie in it
     */
    public boolean freeNorth(int x, int y) {
        return free(x, y) && free(x, y + 1) && north[y * width + x];
    }

    /**
     * Where cold leads arrive: every junction that a straight channel joins to a wall the lead reaches. Keep-outs on the
     * lead's way are not looked at, so that there may be too many but never too few.
     *
     * @return the entries
     */
    public List<Entry> entries() {
        return entries;
    }

    /**
     * Stud pitch.
     *
     * @return metres
     */
    public double pitch() {
        return Si.in("pitch", floor.lattice().pitch(), Units.METRE);
    }

    /**
     * Least spacing in whole pitches.
     *
     * @return pitches
     */
    public int spacing() {
        double metres = Si.in("spacing", floor.minSpacing().with(floor.lattice().pitch()), Units.METRE);
        return (int) Math.ceil(metres / pitch() - 1e-6);
    }

    /**
     * Bend radius.
     *
     * @return metres
     */
    public double bendRadius() {
        return Si.in("radius", floor.minBendRadius(), Units.METRE);
    }

    /**
     * Length of the joint.
     *
     * @return metres
     */
    public double jointLength() {
        return Si.in("joint", floor.jointLength(), Units.METRE);
    }

    /**
     * Cold lead left for the floor.
     *
     * @return metres
     */
    public double leadInFloor() {
        return Si.in("cold lead", cable.coldLead(), Units.METRE) - Si.in("riser", floor.riser(), Units.METRE);
    }

    /**
     * Length of the heating part.
     *
     * @return metres
     */
    public double cableLength() {
        return Si.in("length", cable.length(), Units.METRE);
    }

    /**
     * Even spacing of the cable: the reach over its length.
     *
     * @return metres
     */
    public double evenSpacing() {
        return Si.in("reach", floor.router().reachArea(0), Units.SQUARE_METRE) / cableLength();
    }

    /**
     * Free junctions.
     *
     * @return how many
     */
    public int freeJunctions() {
        return floor.site().channels().freeJunctions();
    }

    private List<Entry> entries(ChannelGrid grid) {
        GeometryFactory factory = new GeometryFactory();
        LineString wall = floor.room().polygon().getExteriorRing();
        LengthIndexedLine places = new LengthIndexedLine(wall);
        double start = places.project(floor.start().getCoordinate());
        double reach = 2
                        * Si.in(
                                "clearance",
                                floor.wallClearance().with(floor.lattice().pitch()),
                                Units.METRE)
                + 3 * pitch();
        List<Entry> out = new ArrayList<>();
        int[][] ways = {{1, 0}, {0, 1}, {-1, 0}, {0, -1}};
        for (int v = 0; v < free.length; v++) {
            int x = v % width;
            int y = v / width;
            for (int[] way : ways) {
                if (!free[v] || free(x + way[0], y + way[1])) {
                    continue;
                }
                Coordinate from = grid.junction(x, y);
                LineString ray = factory.createLineString(
                        new Coordinate[] {from, new Coordinate(from.x + way[0] * reach, from.y + way[1] * reach)});
                Geometry foot = ray.intersection(wall);
                if (foot.isEmpty()) {
                    continue;
                }
                double in = foot.distance(factory.createPoint(from));
                double place = places.project(new Coordinate(from.x + way[0] * in, from.y + way[1] * in));
                double along = Math.abs(place - start);
                along = Math.min(along, wall.getLength() - along);
                out.add(new Entry(x, y, -way[0], -way[1], along + in, along, in));
            }
        }
        return List.copyOf(out);
    }
}
