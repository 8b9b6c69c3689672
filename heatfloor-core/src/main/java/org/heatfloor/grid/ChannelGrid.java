package org.heatfloor.grid;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;

/**
 * The channels of the lattice that a heating cable's centre line may use in a room. A junction is free when its point, and
 * a channel between two junctions when its whole length, lies inside the room and keeps the wall clearance from every wall
 * and inner ring and each keep-out's own clearance from the keep-out's edge. Distances are exact (segment to segment and
 * segment to disc, no raster), so oblique walls, turned lattices and round flanges are right; a clearance counts as kept
 * when at most 10⁻⁹ m are missing. A line, such as a movement joint, is never crossed or touched, even with a clearance of
 * zero. Indices start at 0 and cover the room's bounding box in the frame of the lattice.
 */
public final class ChannelGrid {

    /** More junctions than this are refused: the pitch and the room do not belong together. */
    static final long MOST_JUNCTIONS = 4_000_000;

    private final StudLattice lattice;
    private final int firstColumn;
    private final int firstRow;
    private final int columns;
    private final int rows;
    private final boolean[] junctionFree;
    private final boolean[] eastFree;
    private final boolean[] northFree;

    private ChannelGrid(
            StudLattice lattice, int firstColumn, int firstRow, int columns, int rows, LineMask along, LineMask up) {
        this.lattice = lattice;
        this.firstColumn = firstColumn;
        this.firstRow = firstRow;
        this.columns = columns;
        this.rows = rows;
        this.junctionFree = new boolean[columns * rows];
        this.eastFree = new boolean[columns * rows];
        this.northFree = new boolean[columns * rows];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                junctionFree[row * columns + column] =
                        !along.isPointTaken(row, column) && !up.isPointTaken(column, row);
            }
        }
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                int at = row * columns + column;
                eastFree[at] = column + 1 < columns
                        && junctionFree[at]
                        && junctionFree[at + 1]
                        && !along.isSpanTaken(row, column);
                northFree[at] = row + 1 < rows
                        && junctionFree[at]
                        && junctionFree[at + columns]
                        && !up.isSpanTaken(column, row);
            }
        }
    }

    /**
     * The free channels of a lattice in a room.
     *
     * @param lattice where the studs lie
     * @param room the room
     * @param wallClearance from every wall and inner ring to the cable's centre line
     * @param keepOuts places without cable; furniture on legs that stands high enough takes nothing
     * @return the grid
     * @throws IllegalArgumentException if a keep-out lies wholly outside the room, or if the room's bounding box holds more
     *     than 4 million junctions
     */
    public static ChannelGrid of(StudLattice lattice, Room room, TradeLength wallClearance, List<KeepOut> keepOuts) {
        Objects.requireNonNull(lattice, "lattice");
        room.requireInside(keepOuts);
        return new Obstacles(room, wallClearance, keepOuts, lattice.pitch(), lattice.angle()).gridOf(lattice);
    }

    static ChannelGrid of(
            StudLattice lattice, int firstColumn, int firstRow, int columns, int rows, LineMask along, LineMask up) {
        return new ChannelGrid(lattice, firstColumn, firstRow, columns, rows, along, up);
    }

    /**
     * The lattice.
     *
     * @return the lattice
     */
    public StudLattice lattice() {
        return lattice;
    }

    /**
     * Number of columns.
     *
     * @return 0 or more
     */
    public int columns() {
        return columns;
    }

    /**
     * Number of rows.
     *
     * @return 0 or more
     */
    public int rows() {
        return rows;
    }

    /**
     * Whether the cable may pass a junction.
     *
     * @param column from 0; any other index is not free
     * @param row from 0; any other index is not free
     * @return true when it keeps every clearance
     */
    public boolean isFree(int column, int row) {
        return holds(column, row) && junctionFree[row * columns + column];
    }

    /**
     * Whether the cable may lie in the channel from a junction to the next one along the row.
     *
     * @param column from 0; any other index is not free
     * @param row from 0; any other index is not free
     * @return true when the whole channel keeps every clearance
     */
    public boolean isFreeEast(int column, int row) {
        return holds(column, row) && eastFree[row * columns + column];
    }

    /**
     * Whether the cable may lie in the channel from a junction to the one in the next row.
     *
     * @param column from 0; any other index is not free
     * @param row from 0; any other index is not free
     * @return true when the whole channel keeps every clearance
     */
    public boolean isFreeNorth(int column, int row) {
        return holds(column, row) && northFree[row * columns + column];
    }

    /**
     * Where a junction lies.
     *
     * @param column any index; 0 is the grid's first column
     * @param row any index; 0 is the grid's first row
     * @return its place, in metres
     */
    public Coordinate junction(int column, int row) {
        return lattice.junction(firstColumn + column, firstRow + row);
    }

    /**
     * How many junctions are free.
     *
     * @return the number
     */
    public int freeJunctions() {
        return count(junctionFree);
    }

    /**
     * How many channels between neighbouring junctions are free.
     *
     * @return the number
     */
    public int freeChannels() {
        return count(eastFree) + count(northFree);
    }

    private boolean holds(int column, int row) {
        return column >= 0 && column < columns && row >= 0 && row < rows;
    }

    private static int count(boolean[] flags) {
        int n = 0;
        for (boolean flag : flags) {
            if (flag) {
                n++;
            }
        }
        return n;
    }

    /** The width of a clearance in metres, for a pitch. */
    static double metres(String what, TradeLength clearance, Quantity<Length> pitch) {
        return Si.notNegative(what, clearance.with(pitch), Units.METRE);
    }
}
