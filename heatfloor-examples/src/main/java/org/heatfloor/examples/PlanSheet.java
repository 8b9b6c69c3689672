package org.heatfloor.examples;

import java.util.List;
import java.util.Optional;
import org.heatfloor.grid.StudLattice;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * What a floor drawing shows, in metres. Only the drawing reads the geometry and it changes nothing.
 *
 * @param title the room's name
 * @param status one line under the title
 * @param unit the unit of the dimensions
 * @param room the floor
 * @param wallClearance the line the cable keeps from the walls, where one was asked for
 * @param fixtures places without cable
 * @param zones where people stand
 * @param doors the openings
 * @param lattice the studs
 * @param start where the cold lead leaves the wall
 * @param cables the cables as laid; none when the job is impossible
 */
record PlanSheet(
        String title,
        String status,
        LengthUnit unit,
        Polygon room,
        Optional<Geometry> wallClearance,
        List<Fixture> fixtures,
        List<Area> zones,
        List<Opening> doors,
        Optional<StudLattice> lattice,
        Point start,
        List<Run> cables) {

    PlanSheet {
        fixtures = List.copyOf(fixtures);
        zones = List.copyOf(zones);
        doors = List.copyOf(doors);
        cables = List.copyOf(cables);
    }

    /** A place without cable, its shape and the shape grown by its clearance. */
    record Fixture(String name, Geometry shape, Geometry withClearance) {}

    /** A named part of the floor. */
    record Area(String name, Polygon shape) {}

    /** A door. */
    record Opening(String name, LineString at) {}

    /** A cable: heating part, cold leads with the joint where each ends, and the sensors that go with it. */
    record Run(
            String name,
            String remark,
            LineString heating,
            List<LineString> coldLeads,
            List<Point> joints,
            boolean endsInFloor,
            Optional<Sensor> sensor,
            Optional<Sensor> spare) {

        Run {
            coldLeads = List.copyOf(coldLeads);
            joints = List.copyOf(joints);
        }
    }

    /** A floor sensor and its lead. */
    record Sensor(Point at, LineString lead) {}
}
