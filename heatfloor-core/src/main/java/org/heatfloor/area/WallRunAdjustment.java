package org.heatfloor.area;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Turns wall runs into a room. */
final class WallRunAdjustment {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double FULL_TURN = 2 * Math.PI;
    private static final double CHORD_ERROR_METRES = 0.0001;

    /** Measured turns may miss a full turn by this much for each of them. Common practice, no source. */
    private static final double ANGLE_PER_TURN = Math.toRadians(2);

    /** Corners this near are one. */
    private static final double SAME_PLACE_METRES = 1e-9;

    private final WallRuns runs;
    private final int count;
    private final List<Coordinate> ring = new ArrayList<>();
    private final List<String> names = new ArrayList<>();
    private double angularMisclosure;

    WallRunAdjustment(WallRuns runs) {
        this.runs = runs;
        this.count = runs.legs.size();
    }

    SurveyedRoom adjusted() {
        if (count < 2 || (count == 2 && runs.legs.stream().noneMatch(WallRuns.Leg::isArc))) {
            throw new IllegalArgumentException(
                    "wall runs: " + count + " walls were given; at least three are expected");
        }
        double[] turns = balancedTurns();
        double[] x = new double[count];
        double[] y = new double[count];
        double[] lengths = new double[count];
        double heading = 0;
        for (int i = 0; i < count; i++) {
            WallRuns.Leg leg = runs.legs.get(i);
            double direction = heading + leg.sweepRadians / 2;
            x[i] = leg.chordMetres() * Math.cos(direction);
            y[i] = leg.chordMetres() * Math.sin(direction);
            lengths[i] = leg.lengthMetres;
            heading += leg.sweepRadians + (i < turns.length ? turns[i] : 0);
        }
        Traverse traverse = new Traverse(x, y, lengths);
        refuseWorse(traverse);
        Coordinate[] corners = corners(traverse);
        boolean leftHanded = signedArea(corners) > 0;
        for (int i = 0; i < count; i++) {
            side(i, corners[i], corners[(i + 1) % count], leftHanded);
        }
        refuseCrossing();
        return new SurveyedRoom(
                Room.of(withColumns(outline()), Units.METRE),
                doors(corners),
                traverse.misclosure(),
                traverse.perimeter(),
                angularMisclosure,
                measurements(traverse),
                findings(traverse));
    }

    private double[] balancedTurns() {
        double[] turns = new double[runs.turns.size()];
        int measured = 0;
        double total = 0;
        for (int i = 0; i < turns.length; i++) {
            turns[i] = runs.turns.get(i);
            total += turns[i];
            measured += runs.turnMeasured.get(i) ? 1 : 0;
        }
        for (WallRuns.Leg leg : runs.legs) {
            total += leg.sweepRadians;
        }
        if (turns.length < count) {
            return turns;
        }
        angularMisclosure = total - Math.signum(total) * FULL_TURN;
        if (!(Math.abs(angularMisclosure) <= ANGLE_PER_TURN * measured + 1e-9)) {
            throw new IllegalArgumentException("turns: they add up to "
                    + QuantityText.number(Math.toDegrees(total), 3)
                    + "°; 360° to one side is expected, within 2° for each measured turn");
        }
        for (int i = 0; i < turns.length && measured > 0; i++) {
            if (runs.turnMeasured.get(i)) {
                turns[i] -= angularMisclosure / measured;
            }
        }
        return turns;
    }

    private void refuseWorse(Traverse traverse) {
        double misclosure = traverse.misclosure();
        if (misclosure <= traverse.perimeter() / runs.leastRatio) {
            return;
        }
        throw new IllegalArgumentException("wall runs: they fail to close by "
                + QuantityText.number(misclosure * 1000, 1) + " mm in "
                + QuantityText.number(traverse.perimeter(), 3) + " m (1 : "
                + QuantityText.number(traverse.perimeter() / misclosure, 0) + "); 1 : "
                + QuantityText.number(runs.leastRatio, 0) + " or better is expected; measure again "
                + String.join(", ", suspects(traverse)));
    }

    /** A misread length shows as a misclosure along that wall, so the walls nearest in direction come first. */
    private List<String> suspects(Traverse traverse) {
        record Suspect(String name, double apart) {}
        List<Suspect> out = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double cross = traverse.x(i) * traverse.misclosureY() - traverse.y(i) * traverse.misclosureX();
            double dot = traverse.x(i) * traverse.misclosureX() + traverse.y(i) * traverse.misclosureY();
            out.add(new Suspect("wall '" + runs.legs.get(i).name + "'", Math.atan2(Math.abs(cross), Math.abs(dot))));
        }
        out.sort(Comparator.comparingDouble(Suspect::apart));
        double nearest = out.get(0).apart();
        return out.stream()
                .filter(s -> s.apart() <= nearest + Math.toRadians(5))
                .map(Suspect::name)
                .toList();
    }

    private Coordinate[] corners(Traverse traverse) {
        Coordinate[] out = new Coordinate[count];
        double x = 0;
        double y = 0;
        for (int i = 0; i < count; i++) {
            out[i] = new Coordinate(x, y);
            x += traverse.adjustedX(i);
            y += traverse.adjustedY(i);
        }
        return out;
    }

    private double signedArea(Coordinate[] corners) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            Coordinate a = corners[i];
            Coordinate b = corners[(i + 1) % count];
            sum += a.x * b.y - b.x * a.y;
            double sweep = runs.legs.get(i).sweepRadians;
            double radius = runs.legs.get(i).radiusMetres;
            sum += radius * radius * (sweep - Math.sin(sweep));
        }
        return sum / 2;
    }

    /** Adds the points of one side from its first corner to just before the next. */
    private void side(int leg, Coordinate from, Coordinate to, boolean leftHanded) {
        WallRuns.Leg wall = runs.legs.get(leg);
        if (wall.isArc()) {
            for (Coordinate c : arc(wall, from, to, leftHanded)) {
                add(c.x, c.y, wall(leg));
            }
        } else {
            straight(leg, from, to, leftHanded);
        }
    }

    private String wall(int leg) {
        return "wall '" + runs.legs.get(leg).name + "'";
    }

    private static Coordinate[] arc(WallRuns.Leg wall, Coordinate from, Coordinate to, boolean leftHanded) {
        double sweep = wall.sweepRadians;
        double chord = from.distance(to);
        double radius = chord / (2 * Math.sin(Math.abs(sweep) / 2));
        int steps = Math.max(
                2, (int) Math.ceil(Math.abs(sweep) / (2 * Math.acos(1 - Math.min(0.5, CHORD_ERROR_METRES / radius)))));
        double start = Math.atan2(to.y - from.y, to.x - from.x) - sweep / 2;
        double side = Math.signum(sweep);
        double cx = from.x - side * radius * Math.sin(start);
        double cy = from.y + side * radius * Math.cos(start);
        boolean intoTheRoom = (sweep > 0) != leftHanded;
        // An arc that bulges into the room is drawn by tangents, so that no chord lies behind the wall's face.
        double drawn = intoTheRoom ? radius / Math.cos(sweep / steps / 2) : radius;
        List<Coordinate> out = new ArrayList<>();
        out.add(from);
        for (int i = intoTheRoom ? 0 : 1; i < steps; i++) {
            double angle = start - side * Math.PI / 2 + sweep * (i + (intoTheRoom ? 0.5 : 0)) / steps;
            out.add(new Coordinate(cx + drawn * Math.cos(angle), cy + drawn * Math.sin(angle)));
        }
        return out.toArray(Coordinate[]::new);
    }

    private void straight(int leg, Coordinate from, Coordinate to, boolean leftHanded) {
        add(from.x, from.y, wall(leg));
        double length = from.distance(to);
        double ux = (to.x - from.x) / length;
        double uy = (to.y - from.y) / length;
        double outward = leftHanded ? 1 : -1;
        runs.recesses.stream()
                .filter(r -> r.leg() == leg)
                .sorted(Comparator.comparingDouble(WallRuns.Recess::fromMetres))
                .forEach(r -> {
                    String name = (r.depthMetres() > 0 ? "niche '" : "pier '") + r.name() + "'";
                    double start = Math.min(r.fromMetres(), Math.max(0, length - r.widthMetres()));
                    double end = Math.min(start + r.widthMetres(), length);
                    double dx = outward * r.depthMetres() * uy;
                    double dy = -outward * r.depthMetres() * ux;
                    add(from.x + start * ux, from.y + start * uy, name);
                    add(from.x + start * ux + dx, from.y + start * uy + dy, name);
                    add(from.x + end * ux + dx, from.y + end * uy + dy, name);
                    add(from.x + end * ux, from.y + end * uy, wall(leg));
                });
        int last = ring.size() - 1;
        if (ring.get(last).distance(to) < SAME_PLACE_METRES && last > 0) {
            ring.remove(last);
            names.remove(last);
        }
    }

    /** A corner and the name of the side that begins there; a corner already there begins the later side. */
    private void add(double x, double y, String name) {
        Coordinate next = new Coordinate(x, y);
        int last = ring.size() - 1;
        if (last >= 0 && ring.get(last).distance(next) <= SAME_PLACE_METRES) {
            names.set(last, name);
        } else {
            ring.add(next);
            names.add(name);
        }
    }

    private void refuseCrossing() {
        Sides sides = new Sides();
        sides.ring(ring, names);
        sides.meeting().ifPresent(m -> {
            throw new IllegalArgumentException(m.first() + " and " + m.second() + ": they " + m.verb() + " near "
                    + written(m.at()) + "; walls that meet at their common corner only are expected");
        });
    }

    private static String written(Coordinate c) {
        return QuantityText.number(c.x, 3) + " m " + QuantityText.number(c.y, 3) + " m";
    }

    private Polygon outline() {
        List<Coordinate> closed = new ArrayList<>(ring);
        closed.add(ring.get(0).copy());
        return FACTORY.createPolygon(closed.toArray(Coordinate[]::new));
    }

    private Polygon withColumns(Polygon outline) {
        List<LinearRing> holes = new ArrayList<>();
        for (int i = 0; i < runs.columns.size(); i++) {
            double[] c = runs.columns.get(i);
            LinearRing ring = FACTORY.createLinearRing(new Coordinate[] {
                new Coordinate(c[0], c[1]),
                new Coordinate(c[2], c[1]),
                new Coordinate(c[2], c[3]),
                new Coordinate(c[0], c[3]),
                new Coordinate(c[0], c[1])
            });
            Polygon column = FACTORY.createPolygon(ring);
            if (!outline.contains(column) || outline.getBoundary().intersects(column)) {
                throw new IllegalArgumentException("column '" + runs.columnNames.get(i)
                        + "': it does not stand inside the walls, clear of them; a column inside the room, or a pier where it"
                        + " joins a wall, is expected");
            }
            for (int k = 0; k < i; k++) {
                if (FACTORY.createPolygon(holes.get(k)).intersects(column)) {
                    throw new IllegalArgumentException("column '" + runs.columnNames.get(k) + "' and column '"
                            + runs.columnNames.get(i) + "': they meet; columns clear of each other are expected");
                }
            }
            holes.add(ring);
        }
        return FACTORY.createPolygon(outline.getExteriorRing(), holes.toArray(LinearRing[]::new));
    }

    private List<Door> doors(Coordinate[] corners) {
        List<Door> out = new ArrayList<>();
        for (WallRuns.Opening opening : runs.openings) {
            Coordinate from = corners[opening.leg()];
            Coordinate to = corners[(opening.leg() + 1) % count];
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

    private List<Measurement> measurements(Traverse traverse) {
        List<Measurement> out = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            WallRuns.Leg leg = runs.legs.get(i);
            double share = Math.hypot(traverse.adjustedX(i), traverse.adjustedY(i)) / leg.chordMetres();
            double adjusted = leg.lengthMetres * share;
            out.add(new Measurement(
                    leg.name,
                    Amounts.metres(leg.lengthMetres),
                    Amounts.metres(adjusted),
                    Amounts.metres(adjusted - leg.lengthMetres),
                    0));
        }
        return out;
    }

    private List<Finding> findings(Traverse traverse) {
        if (traverse.misclosure() < 0.0005) {
            return List.of();
        }
        return List.of(Finding.of(
                Severity.NOTE,
                "wall runs",
                "The walls fail to close by 1 : "
                        + QuantityText.number(traverse.perimeter() / traverse.misclosure(), 0)
                        + "; shared out by the compass rule. Should one reading be wrong, it is most likely "
                        + String.join(" or ", suspects(traverse)) + ".",
                Amounts.metres(traverse.misclosure()),
                Amounts.metres(traverse.perimeter() / runs.leastRatio),
                Source.commonPractice("a misclosure up to 1 : " + QuantityText.number(runs.leastRatio, 0)
                        + " of the perimeter is shared out")));
    }
}
