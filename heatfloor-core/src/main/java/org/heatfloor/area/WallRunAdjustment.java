package org.heatfloor.area;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.locationtech.jts.geom.Coordinate;

/** Turns wall runs into a room. */
final class WallRunAdjustment {

    private static final double FULL_TURN = 2 * Math.PI;
    private static final double CHORD_ERROR_METRES = 0.0001;

    /** Measured turns may miss a full turn by this much for each of them. Common practice, no source. */
    private static final double ANGLE_PER_TURN = Math.toRadians(2);

    private final WallRuns runs;
    private final int count;
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
        Outline outline = new Outline(runs.fittings, leftHanded);
        for (int i = 0; i < count; i++) {
            side(outline, i, corners[i], corners[(i + 1) % count], leftHanded);
        }
        return new SurveyedRoom(
                outline.room(),
                outline.doors(corners),
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
    private void side(Outline outline, int leg, Coordinate from, Coordinate to, boolean leftHanded) {
        WallRuns.Leg wall = runs.legs.get(leg);
        if (wall.isArc()) {
            for (Coordinate c : arc(wall, from, to, leftHanded)) {
                outline.add(c.x, c.y, wall(leg));
            }
        } else {
            outline.straight(leg, wall(leg), from, to);
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
