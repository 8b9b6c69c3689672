package org.heatfloor.area;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** The walls of a measured room with their niches, piers, columns and doors, drawn side by side. */
final class Outline {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Corners this near are one. */
    private static final double SAME_PLACE_METRES = 1e-9;

    private final Fittings fittings;
    private final boolean leftHanded;
    private final List<Coordinate> ring = new ArrayList<>();
    private final List<String> names = new ArrayList<>();

    /**
     * An outline without walls.
     *
     * @param leftHanded whether the room lies at the left hand of the walk
     */
    Outline(Fittings fittings, boolean leftHanded) {
        this.fittings = fittings;
        this.leftHanded = leftHanded;
    }

    /** Adds a straight wall with its niches and piers, to just before its last corner. */
    void straight(int wall, String name, Coordinate from, Coordinate to) {
        add(from.x, from.y, name);
        double length = from.distance(to);
        double ux = (to.x - from.x) / length;
        double uy = (to.y - from.y) / length;
        double outward = leftHanded ? 1 : -1;
        fittings.recesses.stream()
                .filter(r -> r.wall() == wall)
                .sorted(Comparator.comparingDouble(Fittings.Recess::fromMetres))
                .forEach(r -> {
                    double start = Math.min(r.fromMetres(), Math.max(0, length - r.widthMetres()));
                    double end = Math.min(start + r.widthMetres(), length);
                    double dx = outward * r.depthMetres() * uy;
                    double dy = -outward * r.depthMetres() * ux;
                    add(from.x + start * ux, from.y + start * uy, r.what());
                    add(from.x + start * ux + dx, from.y + start * uy + dy, r.what());
                    add(from.x + end * ux + dx, from.y + end * uy + dy, r.what());
                    add(from.x + end * ux, from.y + end * uy, name);
                });
        int last = ring.size() - 1;
        if (ring.get(last).distance(to) < SAME_PLACE_METRES && last > 0) {
            ring.remove(last);
            names.remove(last);
        }
    }

    /** A corner and the name of the side that begins there; a corner already there begins the later side. */
    void add(double x, double y, String name) {
        Coordinate next = new Coordinate(x, y);
        int last = ring.size() - 1;
        if (last >= 0 && ring.get(last).distance(next) <= SAME_PLACE_METRES) {
            names.set(last, name);
        } else {
            ring.add(next);
            names.add(name);
        }
    }

    /** The room, once no walls cross and every column stands in it. */
    Room room() {
        refuseCrossing();
        List<Coordinate> closed = new ArrayList<>(ring);
        closed.add(ring.get(0).copy());
        return Room.of(withColumns(FACTORY.createPolygon(closed.toArray(Coordinate[]::new))), Units.METRE);
    }

    private void refuseCrossing() {
        Sides sides = new Sides();
        sides.ring(ring, names);
        sides.meeting().ifPresent(m -> {
            throw new IllegalArgumentException(m.first() + " and " + m.second() + ": they " + m.verb() + " near "
                    + QuantityText.number(m.at().x, 3) + " m " + QuantityText.number(m.at().y, 3)
                    + " m; walls that meet at their common corner only are expected");
        });
    }

    private Polygon withColumns(Polygon outline) {
        List<LinearRing> holes = new ArrayList<>();
        for (int i = 0; i < fittings.columns.size(); i++) {
            Fittings.Column c = fittings.columns.get(i);
            LinearRing hole = FACTORY.createLinearRing(new Coordinate[] {
                new Coordinate(c.fromX(), c.fromY()),
                new Coordinate(c.toX(), c.fromY()),
                new Coordinate(c.toX(), c.toY()),
                new Coordinate(c.fromX(), c.toY()),
                new Coordinate(c.fromX(), c.fromY())
            });
            Polygon column = FACTORY.createPolygon(hole);
            if (!outline.contains(column) || outline.getBoundary().intersects(column)) {
                throw new IllegalArgumentException("column '" + c.name()
                        + "': it does not stand inside the walls, clear of them; a column inside the room, or a pier where it"
                        + " joins a wall, is expected");
            }
            for (int k = 0; k < i; k++) {
                if (FACTORY.createPolygon(holes.get(k)).intersects(column)) {
                    throw new IllegalArgumentException(
                            "column '" + fittings.columns.get(k).name() + "' and column '" + c.name()
                                    + "': they meet; columns clear of each other are expected");
                }
            }
            holes.add(hole);
        }
        return FACTORY.createPolygon(outline.getExteriorRing(), holes.toArray(LinearRing[]::new));
    }

    /** The doors along the walls between these corners. */
    List<Door> doors(Coordinate[] corners) {
        List<Door> out = new ArrayList<>();
        for (Fittings.Opening opening : fittings.openings) {
            Coordinate from = corners[opening.wall()];
            Coordinate to = corners[(opening.wall() + 1) % corners.length];
            double length = from.distance(to);
            double a = Math.min(1, opening.fromMetres() / length);
            double b = Math.min(1, (opening.fromMetres() + opening.widthMetres()) / length);
            LineString at = FACTORY.createLineString(new Coordinate[] {
                new Coordinate(from.x + a * (to.x - from.x), from.y + a * (to.y - from.y)),
                new Coordinate(from.x + b * (to.x - from.x), from.y + b * (to.y - from.y))
            });
            out.add(Door.of(opening.name(), at, Units.METRE));
        }
        return out;
    }
}
