package org.heatfloor.takeoff;

import org.locationtech.jts.geom.LineString;

/** Where a tile layout is set out from. */
public sealed interface TileStart {

    /**
     * Centred on the runs of the room with equal cuts at both ends, none under half a tile where the room allows it.
     *
     * @return the rule
     */
    static TileStart balanced() {
        return new Balanced();
    }

    /**
     * A tile or a joint centred on a line, whichever leaves the wider cuts; balanced along the line.
     *
     * @param name what the line is, for example "door axis"
     * @param axis its first and last point, in metres
     * @return the rule
     * @throws IllegalArgumentException if the name is blank or the line has no length
     */
    static TileStart centredOn(String name, LineString axis) {
        return new CentredOn(name, axis);
    }

    /**
     * Whole tiles along a wall, behind its perimeter gap; balanced along the wall.
     *
     * @param name what the wall is
     * @param wall its first and last point, in metres
     * @return the rule
     * @throws IllegalArgumentException if the name is blank or the line has no length
     */
    static TileStart fromWall(String name, LineString wall) {
        return new FromWall(name, wall);
    }

    /**
     * A fixed corner: the grid has the corner of a tile there. Meant for comparing rooms.
     *
     * @param x of the corner, in metres in the room's frame
     * @param y of the corner, in metres in the room's frame
     * @return the rule
     * @throws IllegalArgumentException if a coordinate is not finite
     */
    static TileStart corner(double x, double y) {
        return new Corner(x, y);
    }

    /** Equal cuts at both ends of the runs. */
    record Balanced() implements TileStart {}

    /**
     * Centred on a line.
     *
     * @param name what the line is
     * @param axis the line, in metres; copied
     */
    record CentredOn(String name, LineString axis) implements TileStart {

        /**
         * Checks the line.
         *
         * @param name what the line is
         * @param axis the line, in metres; copied
         * @throws IllegalArgumentException if the name is blank or the line has no length
         */
        public CentredOn {
            axis = checked(name, axis);
        }

        /**
         * The line.
         *
         * @return a copy, in metres
         */
        @Override
        public LineString axis() {
            return (LineString) axis.copy();
        }
    }

    /**
     * Whole tiles along a wall.
     *
     * @param name what the wall is
     * @param wall the line, in metres; copied
     */
    record FromWall(String name, LineString wall) implements TileStart {

        /**
         * Checks the line.
         *
         * @param name what the wall is
         * @param wall the line, in metres; copied
         * @throws IllegalArgumentException if the name is blank or the line has no length
         */
        public FromWall {
            wall = checked(name, wall);
        }

        /**
         * The line.
         *
         * @return a copy, in metres
         */
        @Override
        public LineString wall() {
            return (LineString) wall.copy();
        }
    }

    /**
     * A fixed corner of the grid.
     *
     * @param x in metres
     * @param y in metres
     */
    record Corner(double x, double y) implements TileStart {

        /**
         * Checks the coordinates.
         *
         * @param x in metres
         * @param y in metres
         * @throws IllegalArgumentException if a coordinate is not finite
         */
        public Corner {
            if (!Double.isFinite(x) || !Double.isFinite(y)) {
                throw new IllegalArgumentException(
                        "layout corner: " + x + " " + y + " was given; finite numbers are expected");
            }
        }
    }

    private static LineString checked(String name, LineString line) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("layout line name: blank was given; a name is expected");
        }
        double length =
                line.isEmpty() ? 0 : line.getCoordinateN(0).distance(line.getCoordinateN(line.getNumPoints() - 1));
        if (!(length > 1e-3 && length < 10_000)) {
            throw new IllegalArgumentException("layout line '" + name + "': a line " + length
                    + " m from end to end was given; 1 mm to 10 km is expected");
        }
        return (LineString) line.copy();
    }
}
