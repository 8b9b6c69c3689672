package org.heatfloor.area;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Offset curves that are never nearer than asked, and overlays on one agreed grid of a micrometre.
 *
 * <p>A buffer of chords lies inside the true offset curve. The fillet of a corner has its segments rounded to the nearest
 * count, so a chord spans at most 1.5 quanta: {@code 1 − cos(3π/(8·quadrantSegments))} of the distance is missing; and
 * where two offset ends lie nearer than 0.05 of the distance one point stands for the join: {@code 1 − cos(0.05)} is
 * missing. The radius is enlarged by the larger of both, plus two micrometres for the snapping to the grid. Derived from the
 * published source of the geometry library and held to by a property test.
 */
final class Offsets {

    /** All areas are computed with coordinates on this grid. */
    static final double GRID_METRES = 1e-6;

    private static final PrecisionModel GRID = new PrecisionModel(1 / GRID_METRES);
    private static final int QUADRANT_SEGMENTS = 24;
    private static final double LOST_AT_JOINS = Math.cos(Math.max(3 * Math.PI / (8 * QUADRANT_SEGMENTS), 0.05));
    private static final double LOST_TO_GRID_METRES = 2 * GRID_METRES;
    private static final double MITRE_LIMIT = 5;

    /** Half a square's diagonal is 0.71 of its side; 0.75 does for corners down to 84°. */
    static final double REACH = 0.75;

    private Offsets() {}

    /**
     * Everything within the distance, and never less. Where a hole of the shape nearly closes, the curve can turn inside
     * out and leave a false hole; such a hole is found by its distance and filled.
     */
    static Geometry grown(Geometry shape, double distanceMetres) {
        if (!(distanceMetres > 0)) {
            return shape;
        }
        Geometry outer = buffer(shape, enlarged(distanceMetres), BufferParameters.JOIN_ROUND);
        List<Polygon> parts = new ArrayList<>();
        for (Polygon part : polygons(outer)) {
            List<LinearRing> holes = new ArrayList<>();
            for (int i = 0; i < part.getNumInteriorRing(); i++) {
                if (farEnough(part.getInteriorRingN(i), shape, distanceMetres)) {
                    holes.add(part.getInteriorRingN(i));
                }
            }
            parts.add(shape.getFactory().createPolygon(part.getExteriorRing(), holes.toArray(LinearRing[]::new)));
        }
        return collected(parts, shape.getFactory());
    }

    /**
     * Everything that keeps the distance from the boundary, and never more. Where the area nearly closes, the curve can
     * turn inside out and leave a false part; such a part is found by its distance and dropped.
     */
    static Geometry shrunk(Polygon area, double distanceMetres) {
        if (!(distanceMetres > 0)) {
            return area;
        }
        Geometry inner = buffer(area, -enlarged(distanceMetres), BufferParameters.JOIN_ROUND);
        Geometry boundary = area.getBoundary();
        List<Polygon> parts = new ArrayList<>();
        for (Polygon part : polygons(inner)) {
            if (farEnough(part, boundary, distanceMetres)) {
                parts.add(part);
            }
        }
        return collected(parts, area.getFactory());
    }

    /**
     * Every place near the centre of a free circle of the width, so near that a square around the circle has it even where a
     * corner is some degrees out of square: within three quarters of the width. Shrinking and growing by fixed distances
     * keep the order of areas, so a part of an area is reached in no more places than the whole.
     */
    static Geometry reached(Geometry area, double widthMetres) {
        List<Polygon> centres = new ArrayList<>();
        for (Polygon part : polygons(area)) {
            centres.addAll(polygons(shrunk(part, widthMetres / 2)));
        }
        return grown(collected(centres, area.getFactory()), REACH * widthMetres);
    }

    private static boolean farEnough(Geometry curve, Geometry shape, double distanceMetres) {
        return IndexedFacetDistance.distance(shape, curve) >= distanceMetres;
    }

    private static Geometry collected(List<Polygon> parts, GeometryFactory factory) {
        return parts.size() == 1 ? parts.get(0) : factory.createMultiPolygon(parts.toArray(Polygon[]::new));
    }

    /** What a square-cornered brush of the width reaches: shrunk and grown again by half the width with mitred corners. */
    static Geometry swept(Geometry area, double widthMetres) {
        Geometry inner = buffer(area, -widthMetres / 2, BufferParameters.JOIN_MITRE);
        return buffer(inner, widthMetres / 2, BufferParameters.JOIN_MITRE);
    }

    static Geometry difference(Geometry from, Geometry taken) {
        return overlay(from, taken, OverlayNG.DIFFERENCE);
    }

    /** A difference off the grid, for a chain of many that is put on the grid once at its end. */
    static Geometry chained(Geometry from, Geometry taken) {
        try {
            return areas(OverlayNGRobust.overlay(from, taken, OverlayNG.DIFFERENCE));
        } catch (TopologyException selfCrossing) {
            return areas(
                    OverlayNGRobust.overlay(GeometryFixer.fix(from), GeometryFixer.fix(taken), OverlayNG.DIFFERENCE));
        }
    }

    static Geometry onGrid(Geometry area) {
        return overlay(area, area.getFactory().createPolygon(), OverlayNG.UNION);
    }

    static Geometry intersection(Geometry a, Geometry b) {
        return overlay(a, b, OverlayNG.INTERSECTION);
    }

    static Geometry union(Geometry a, Geometry b) {
        return overlay(a, b, OverlayNG.UNION);
    }

    /** Offset curves can cross themselves by less than the grid; then they are mended and the overlay is done again. */
    private static Geometry overlay(Geometry a, Geometry b, int operation) {
        try {
            return areas(OverlayNG.overlay(a, b, operation, GRID));
        } catch (TopologyException selfCrossing) {
            return areas(OverlayNGRobust.overlay(GeometryFixer.fix(a), GeometryFixer.fix(b), operation));
        }
    }

    /** Edges and corners that two areas merely share are no area. */
    private static Geometry areas(Geometry overlaid) {
        return overlaid instanceof Polygon || overlaid instanceof MultiPolygon
                ? overlaid
                : collected(polygons(overlaid), overlaid.getFactory());
    }

    /** The polygons among the parts of a geometry, the largest first. */
    static List<Polygon> polygons(Geometry geometry) {
        List<Polygon> out = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                out.add(polygon);
            }
        }
        out.sort((a, b) -> Double.compare(b.getArea(), a.getArea()));
        return List.copyOf(out);
    }

    private static double enlarged(double distanceMetres) {
        return distanceMetres / LOST_AT_JOINS + LOST_TO_GRID_METRES;
    }

    private static Geometry buffer(Geometry shape, double distanceMetres, int join) {
        BufferParameters parameters =
                new BufferParameters(QUADRANT_SEGMENTS, BufferParameters.CAP_ROUND, join, MITRE_LIMIT);
        parameters.setSimplifyFactor(0);
        return BufferOp.bufferOp(shape, distanceMetres, parameters);
    }
}
