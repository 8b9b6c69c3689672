package org.heatfloor.routing;

import org.heatfloor.area.Room;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** Whether a line lies in a room; a line on the wall itself does. */
final class RoomCover {

    private RoomCover() {}

    static boolean covers(Room room, LineString line) {
        Polygon polygon = room.polygon();
        return polygon.covers(line)
                || polygon.buffer(DrawnClearance.ROUNDING_METRES).covers(line);
    }
}
