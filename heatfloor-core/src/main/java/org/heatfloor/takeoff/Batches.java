package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/** Parts a floor into slices of equal area, across the way out, the farthest first, one for each batch of mortar. */
final class Batches {

    private static final int MOST_BATCHES = 1_000;
    private static final int BISECTIONS = 50;

    private Batches() {}

    static List<MortarBatch> of(
            Geometry covered,
            double alongRadians,
            Optional<Coordinate> wayOut,
            MortarNeed need,
            Quantity<Area> perHour) {
        double area = covered.getArea();
        double oneSpread = Mortar.squareMetres(perHour, need.mortar().openTime());
        double exact = area / Mortar.squareMetres(perHour, need.mortar().potLife());
        if (!(exact <= MOST_BATCHES)) {
            throw new IllegalArgumentException("laying pace: " + perHour
                    + " an hour was given; a pace that needs at most " + MOST_BATCHES + " batches is expected");
        }
        int count = Math.max(1, (int) Math.ceil(exact - 1e-9));
        List<Geometry> parts = slices(covered, outward(covered, alongRadians, wayOut), count);
        double dry = Si.in("dry", need.dry(), Units.KILOGRAM);
        double water = Si.in("water", need.water(), Units.KILOGRAM);
        List<MortarBatch> batches = new ArrayList<>();
        for (Geometry part : parts) {
            double share = part.getArea() / area;
            int spreads = (int) Math.ceil(part.getArea() / oneSpread - 1e-9);
            batches.add(new MortarBatch(batches.size() + 1, part, dry * share, water * share, Math.max(1, spreads)));
        }
        return batches;
    }

    /** The direction, square to the walls, that leads best from the floor's middle to the way out. */
    private static double outward(Geometry covered, double alongRadians, Optional<Coordinate> wayOut) {
        if (wayOut.isEmpty()) {
            return alongRadians + Math.PI;
        }
        Coordinate middle = covered.getEnvelopeInternal().centre();
        double towards = Math.atan2(wayOut.get().y - middle.y, wayOut.get().x - middle.x);
        return alongRadians + Math.rint((towards - alongRadians) / (Math.PI / 2)) * Math.PI / 2;
    }

    private static List<Geometry> slices(Geometry covered, double outward, int count) {
        AffineTransformation turn = AffineTransformation.rotationInstance(-outward);
        AffineTransformation back = AffineTransformation.rotationInstance(outward);
        Geometry turned = turn.transform(covered);
        double whole = turned.getArea();
        List<Double> cuts = new ArrayList<>();
        for (int i = 1; i < count; i++) {
            cuts.add(cutAt(turned, whole * i / count));
        }
        List<Geometry> parts = new ArrayList<>();
        addParts(parts, turned, cuts);
        parts.replaceAll(part -> FloorRegions.FACTORY.buildGeometry(FloorRegions.polygons(back.transform(part))));
        return parts;
    }

    /** Halves the floor at the middle cut and each half again: a cut through a part costs less than one through the whole. */
    private static void addParts(List<Geometry> parts, Geometry floor, List<Double> cuts) {
        if (cuts.isEmpty()) {
            parts.add(floor);
            return;
        }
        int middle = cuts.size() / 2;
        Envelope e = floor.getEnvelopeInternal();
        double at = cuts.get(middle);
        addParts(parts, between(floor, Math.min(e.getMinX(), at) - 1, at), cuts.subList(0, middle));
        addParts(parts, between(floor, at, Math.max(e.getMaxX(), at) + 1), cuts.subList(middle + 1, cuts.size()));
    }

    private static double cutAt(Geometry turned, double area) {
        double low = turned.getEnvelopeInternal().getMinX();
        double high = turned.getEnvelopeInternal().getMaxX();
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = (low + high) / 2;
            if (areaLeftOf(turned, middle) < area) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return FloorRegions.GRID.makePrecise((low + high) / 2);
    }

    /** Area of the part with x under a limit: the integral of the lesser of x and the limit by y round every ring (Green). */
    private static double areaLeftOf(Geometry floor, double limit) {
        double area = 0;
        for (Polygon part : FloorRegions.polygons(floor)) {
            area += Math.abs(ringLeftOf(part.getExteriorRing(), limit));
            for (int i = 0; i < part.getNumInteriorRing(); i++) {
                area -= Math.abs(ringLeftOf(part.getInteriorRingN(i), limit));
            }
        }
        return area;
    }

    private static double ringLeftOf(LinearRing ring, double limit) {
        CoordinateSequence c = ring.getCoordinateSequence();
        double sum = 0;
        for (int i = 1; i < c.size(); i++) {
            double x0 = c.getX(i - 1) - limit;
            double x1 = c.getX(i) - limit;
            double rise = c.getY(i) - c.getY(i - 1);
            double under = Math.min(x0, 0) + Math.min(x1, 0);
            double share = x0 * x1 < 0 ? Math.abs(Math.min(x0, x1) / (x0 - x1)) : 1;
            sum += rise * share * under / 2;
        }
        return sum;
    }

    private static Geometry between(Geometry turned, double from, double to) {
        Envelope e = turned.getEnvelopeInternal();
        return OverlayNG.overlay(
                turned,
                FloorRegions.rectangle(from, e.getMinY() - 1, to, e.getMaxY() + 1),
                OverlayNG.INTERSECTION,
                FloorRegions.GRID);
    }
}
