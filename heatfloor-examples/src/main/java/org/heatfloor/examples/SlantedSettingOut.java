package org.heatfloor.examples;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.TileLayout;
import org.heatfloor.takeoff.TilePiece;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Two setting-out lines for tiles that lie slantwise: through the crossing of joints nearest the middle, wall to wall. */
final class SlantedSettingOut {

    private SlantedSettingOut() {}

    /** The line along the tiles and the line across them; empty where no tile is whole. */
    static List<LineString> lines(TileLayout layout, Polygon room) {
        double angle = layout.direction().to(Units.RADIAN).getValue().doubleValue();
        double half = layout.tile().joint().to(Units.METRE).getValue().doubleValue() / 2;
        Coordinate middle = room.getCentroid().getCoordinate();
        Optional<Coordinate> crossing = layout.pieces().stream()
                .filter(TilePiece::isWhole)
                .map(p -> crossing(p.shape(), angle, half))
                .min(Comparator.comparingDouble(c -> c.distance(middle)));
        List<LineString> lines = new ArrayList<>();
        if (crossing.isPresent()) {
            for (double direction : new double[] {angle, angle + Math.PI / 2}) {
                through(crossing.get(), direction, room).ifPresent(lines::add);
            }
        }
        return lines;
    }

    /** Where the joints cross at a tile's lower left corner. */
    private static Coordinate crossing(Polygon tile, double angle, double half) {
        Geometry straight = AffineTransformation.rotationInstance(-angle).transform(tile);
        Coordinate corner = new Coordinate(
                straight.getEnvelopeInternal().getMinX() - half,
                straight.getEnvelopeInternal().getMinY() - half);
        return AffineTransformation.rotationInstance(angle).transform(corner, new Coordinate());
    }

    /** The part of a line between the walls it meets first on either side of a place. */
    private static Optional<LineString> through(Coordinate at, double direction, Polygon room) {
        double far = room.getEnvelopeInternal().getDiameter() + 1;
        double dx = far * Math.cos(direction);
        double dy = far * Math.sin(direction);
        Geometry line = room.getFactory()
                .createLineString(
                        new Coordinate[] {new Coordinate(at.x - dx, at.y - dy), new Coordinate(at.x + dx, at.y + dy)});
        Geometry inside = OverlayNGRobust.overlay(room, line, OverlayNG.INTERSECTION);
        Geometry place = room.getFactory().createPoint(at);
        List<LineString> parts = new ArrayList<>();
        for (int i = 0; i < inside.getNumGeometries(); i++) {
            if (inside.getGeometryN(i) instanceof LineString part) {
                parts.add(part);
            }
        }
        return parts.stream().min(Comparator.comparingDouble(p -> p.distance(place)));
    }
}
