package org.heatfloor.area;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * Whether the floor's geometry is ready to be heated: the bays between movement joints against a rule, joints that end short
 * of a wall, and the strip along the walls that stays unheated.
 *
 * @param bays the bays, the largest first
 * @param findings what is worth saying
 */
public record FloorReadiness(List<Bay> bays, List<Finding> findings) {

    /** A joint drawn this near to a wall reaches it. */
    private static final double REACH_METRES = 0.005;

    /**
     * Copies the lists.
     *
     * @param bays the bays, the largest first
     * @param findings what is worth saying
     */
    public FloorReadiness {
        bays = List.copyOf(bays);
        findings = List.copyOf(findings);
    }

    /**
     * Checks a floor.
     *
     * @param room the room
     * @param keepOuts those of kind {@link KeepOutKind#MOVEMENT_JOINT}, drawn as lines or as wide as they are, part the floor
     * @param heatable what of it may be heated
     * @param rule how large a bay may be
     * @return bays and findings
     */
    public static FloorReadiness of(Room room, List<KeepOut> keepOuts, HeatableArea heatable, JointRule rule) {
        Geometry floor = withoutWideJoints(room, keepOuts);
        List<Finding> findings = new ArrayList<>();
        Geometry lines = floor.getBoundary();
        for (KeepOut keepOut : keepOuts) {
            if (keepOut.kind() == KeepOutKind.MOVEMENT_JOINT && keepOut.shape() instanceof LineString joint) {
                lines = OverlayNGRobust.overlay(lines, extended(joint), OverlayNG.UNION);
                endsShort(keepOut.name(), joint, floor, keepOuts, findings);
            }
        }
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(lines);
        List<Polygon> shapes = new ArrayList<>();
        for (Object found : polygonizer.getPolygons()) {
            Polygon shape = (Polygon) found;
            Point inside = shape.getInteriorPoint();
            if (floor.contains(inside)) {
                shapes.add(shape);
            }
        }
        shapes.sort((a, b) -> Double.compare(b.getArea(), a.getArea()));
        Geometry region = heatable.heatableRegion();
        List<Bay> bays = new ArrayList<>();
        for (Polygon shape : shapes) {
            Bay bay = new Bay("bay " + (bays.size() + 1), shape, region.intersects(shape.buffer(-1e-4)));
            bays.add(bay);
            judge(bay, rule, findings);
        }
        findings.add(strip(heatable));
        return new FloorReadiness(bays, findings);
    }

    private static Geometry withoutWideJoints(Room room, List<KeepOut> keepOuts) {
        Geometry floor = room.polygon();
        for (KeepOut keepOut : keepOuts) {
            if (keepOut.kind() == KeepOutKind.MOVEMENT_JOINT && keepOut.shape() instanceof Polygon wide) {
                floor = Offsets.difference(floor, wide);
            }
        }
        return floor;
    }

    /** A bay without cable moves less; what it breaks is only noted. */
    private static void judge(Bay bay, JointRule rule, List<Finding> findings) {
        String what = (bay.isHeated() ? "The heated " : "The unheated ") + bay.name();
        Severity severity = bay.isHeated() ? Severity.WARNING : Severity.NOTE;
        double length = Si.in("length", bay.length(), Units.METRE);
        double limit = Si.in("limit", rule.longestSide(), Units.METRE);
        if (length > limit + 1e-9) {
            int parts = (int) Math.ceil(length / limit - 1e-9);
            findings.add(Finding.of(
                    severity,
                    bay.name(),
                    what + " is longer than " + rule.name() + " allows; " + (parts - 1)
                            + (parts == 2 ? " joint" : " joints") + " across it would make "
                            + parts + " bays of " + QuantityText.number(length / parts, 2) + " m.",
                    bay.length(),
                    rule.longestSide(),
                    rule.source()));
        }
        rule.largestArea().ifPresent(largest -> {
            if (Si.in("area", bay.area(), Units.SQUARE_METRE) > Si.in("limit", largest, Units.SQUARE_METRE) + 1e-9) {
                findings.add(Finding.of(
                        severity,
                        bay.name(),
                        what + " is larger than " + rule.name() + " allows.",
                        bay.area(),
                        largest,
                        rule.source()));
            }
        });
        double ratio = length / Si.in("width", bay.width(), Units.METRE);
        if (rule.greatestRatio().isPresent() && ratio > rule.greatestRatio().getAsDouble() + 1e-9) {
            findings.add(Finding.of(
                    Severity.NOTE,
                    bay.name(),
                    what + " is longer for its width than " + rule.name() + " allows.",
                    Amounts.of(ratio, Units.ONE),
                    Amounts.of(rule.greatestRatio().getAsDouble(), Units.ONE),
                    rule.source()));
        }
    }

    private static Finding strip(HeatableArea heatable) {
        TakenArea strip = heatable.taken().get(0);
        return Finding.withValue(
                Severity.NOTE,
                strip.name(),
                "It stays unheated; keep the edge joint along all walls free of mortar, for a heated floor moves at every"
                        + " switching.",
                strip.area(),
                Source.document("ANSI A108.02 (edition not stated), as quoted in TileLetter", "4.4.1"));
    }

    /** A joint parts bays only when both its ends reach a wall or another joint. */
    private static void endsShort(
            String name, LineString joint, Geometry floor, List<KeepOut> keepOuts, List<Finding> findings) {
        for (Point end : List.of(joint.getStartPoint(), joint.getEndPoint())) {
            double gap = floor.getBoundary().distance(end);
            for (KeepOut other : keepOuts) {
                boolean otherJoint = other.kind() == KeepOutKind.MOVEMENT_JOINT
                        && !other.name().equals(name);
                gap = otherJoint ? Math.min(gap, other.distanceMetres(end)) : gap;
            }
            if (floor.contains(end) && gap > REACH_METRES) {
                Quantity<Length> found = Amounts.metres(gap);
                findings.add(Finding.of(
                        Severity.WARNING,
                        name,
                        "The joint ends short of the wall, so it does not part the floor.",
                        found,
                        Amounts.metres(REACH_METRES),
                        Source.derived("a joint parts the floor only from wall to wall")));
            }
        }
    }

    private static LineString extended(LineString joint) {
        Coordinate[] c = joint.copy().getCoordinates();
        int n = c.length - 1;
        Coordinate first = beyond(c[1], c[0]);
        Coordinate last = beyond(c[n - 1], c[n]);
        c[0] = first;
        c[n] = last;
        return joint.getFactory().createLineString(c);
    }

    private static Coordinate beyond(Coordinate from, Coordinate to) {
        double length = from.distance(to);
        double share = REACH_METRES / length;
        return new Coordinate(to.x + (to.x - from.x) * share, to.y + (to.y - from.y) * share);
    }
}
