package org.heatfloor.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.heatfloor.area.KeepOut;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.LaidCable;
import org.heatfloor.routing.RouteCheck;
import org.heatfloor.routing.RouteCheckReport;
import org.heatfloor.thermal.SteadySection;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;

/** Recomputes by other means what a plan states. */
final class PlanChecks {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double SLACK = 1e-9;

    private PlanChecks() {}

    static double metres(javax.measure.Quantity<javax.measure.quantity.Length> length) {
        return Si.in("length", length, Units.METRE);
    }

    static double watts(javax.measure.Quantity<javax.measure.quantity.Power> power) {
        return Si.in("power", power, Units.WATT);
    }

    /** The route check built afresh from the brief and the lines of the plan alone. */
    static RouteCheckReport checkedAfresh(Brief brief, Plan plan) {
        var pitch = brief.membrane.studPitch();
        List<LaidCable> laid = new ArrayList<>();
        for (PlannedCable c : plan.cables()) {
            laid.add(new LaidCable(
                    c.name(),
                    c.route().line(),
                    c.route().coldLeads(),
                    c.cable().length(),
                    c.cable().diameter(),
                    c.cable().conductors(),
                    c.cable().coldLead()));
        }
        return RouteCheck.builder(brief.room, plan.lattice())
                .wallClearance(brief.wallClearance.with(pitch))
                .keepOuts(brief.keepOuts)
                .minSpacing(brief.rules.minSpacing().with(pitch))
                .minBendRadius(brief.rules.minBendRadius())
                .start(brief.rules.start(), Units.METRE)
                .riser(brief.rules.riser())
                .jointLength(brief.rules.jointLength())
                .build()
                .check(laid);
    }

    /**
     * Areas of the unions of squares about the junctions of each connected part of the floor, largest first; by geometry
     * alone: a junction or channel is free where it keeps every clearance.
     */
    static List<Double> reachAreas(Brief brief, StudLattice lattice) {
        double side = metres(brief.rules.minSpacing().with(brief.membrane.studPitch()));
        List<Double> areas = new ArrayList<>();
        for (Set<List<Integer>> part : parts(brief, lattice)) {
            // Squares side by side in a row of junctions make one rectangle, since the side is at least the pitch.
            List<Geometry> rectangles = new ArrayList<>();
            for (List<Integer> at : part) {
                int column = at.get(0);
                int row = at.get(1);
                if (part.contains(List.of(column - 1, row))) {
                    continue;
                }
                int last = column;
                while (part.contains(List.of(last + 1, row))) {
                    last++;
                }
                Envelope run = new Envelope(lattice.junction(column, row), lattice.junction(last, row));
                run.expandBy(side / 2);
                rectangles.add(FACTORY.toGeometry(run));
            }
            areas.add(CascadedPolygonUnion.union(rectangles).getArea());
        }
        areas.sort((a, b) -> Double.compare(b, a));
        return areas;
    }

    private static List<Set<List<Integer>>> parts(Brief brief, StudLattice lattice) {
        Envelope room = brief.room.polygon().getEnvelopeInternal();
        Map<List<Integer>, Coordinate> free = new HashMap<>();
        for (int column = -20; column < 200; column++) {
            for (int row = -20; row < 200; row++) {
                Coordinate c = lattice.junction(column, row);
                if (room.contains(c) && isFree(brief, FACTORY.createPoint(c))) {
                    free.put(List.of(column, row), c);
                }
            }
        }
        List<Set<List<Integer>>> parts = new ArrayList<>();
        Set<List<Integer>> seen = new HashSet<>();
        for (List<Integer> seed : free.keySet()) {
            if (!seen.add(seed)) {
                continue;
            }
            Set<List<Integer>> part = new HashSet<>(Set.of(seed));
            Deque<List<Integer>> open = new ArrayDeque<>(List.of(seed));
            while (!open.isEmpty()) {
                List<Integer> here = open.remove();
                for (int[] step : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
                    List<Integer> next = List.of(here.get(0) + step[0], here.get(1) + step[1]);
                    Coordinate to = free.get(next);
                    if (to != null
                            && !seen.contains(next)
                            && isFree(brief, FACTORY.createLineString(new Coordinate[] {free.get(here), to}))) {
                        seen.add(next);
                        part.add(next);
                        open.add(next);
                    }
                }
            }
            parts.add(part);
        }
        return parts;
    }

    private static boolean isFree(Brief brief, Geometry place) {
        Geometry room = brief.room.polygon();
        var pitch = brief.membrane.studPitch();
        if (!room.contains(place)
                || room.getBoundary().distance(place) < metres(brief.wallClearance.with(pitch)) - SLACK) {
            return false;
        }
        for (KeepOut k : brief.keepOuts) {
            double clear = k.shape().distance(place) - metres(k.radius());
            boolean inside = k.shape().getDimension() == 2
                    && k.shape().intersects(place)
                    && !k.shape().touches(place);
            if (inside || clear < metres(k.clearance().with(pitch)) - SLACK) {
                return false;
            }
        }
        return true;
    }

    /** Whether A/L lies in the range of spacings, with the 2 % of the definition. */
    static boolean isSpacingAllowed(Brief brief, double area, HeatingCable cable) {
        double spacing = area / metres(cable.length());
        var pitch = brief.membrane.studPitch();
        return spacing >= metres(brief.rules.minSpacing().with(pitch)) * 0.98
                && spacing <= metres(brief.rules.maxSpacing().with(pitch)) * 1.02;
    }

    /** Heat into the room with runs A/L apart. */
    static double output(Brief brief, double area, HeatingCable cable) {
        double length = metres(cable.length());
        SteadySection section = SteadySection.of(
                brief.buildUp.orElseThrow(),
                brief.climate.orElseThrow(),
                HeatPlan.embedded(brief, cable),
                Amounts.metres(area / length));
        return watts(cable.power()) * Si.in("share", section.shareUpward(), Units.ONE);
    }
}
