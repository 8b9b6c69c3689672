package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.Room;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;

/**
 * Heights of a floor at spots. Between spots the surface is taken as flat triangles (Delaunay); a corner of the floor takes
 * the height of the nearest spot.
 */
public final class SpotSurvey {

    private static final double ASIDE_METRES = 0.05;
    private static final int MOST_SPOTS = 500;

    private final List<Spot> spots;

    /**
     * One spot.
     *
     * @param x in metres in the room's frame
     * @param y in metres in the room's frame
     * @param height above any one level
     */
    public record Spot(double x, double y, Quantity<Length> height) {

        /**
         * Checks the values.
         *
         * @param x in metres in the room's frame
         * @param y in metres in the room's frame
         * @param height above any one level
         * @throws IllegalArgumentException if a coordinate is not finite or the height not -10 m to 10 m
         */
        public Spot {
            if (!Double.isFinite(x) || !Double.isFinite(y)) {
                throw new IllegalArgumentException("spot: " + x + " " + y + " was given; finite numbers are expected");
            }
            Si.within("spot height", height, Units.METRE, -10, 10);
        }

        double metres() {
            return Si.in("height", height, Units.METRE);
        }
    }

    private SpotSurvey(List<Spot> spots) {
        this.spots = spots;
    }

    /**
     * A survey.
     *
     * @param spots 3 to 500 spots, no two closer than 1 mm
     * @return the survey
     * @throws IllegalArgumentException if there are fewer or more, or two coincide
     */
    public static SpotSurvey of(List<Spot> spots) {
        if (!(spots.size() >= 3 && spots.size() <= MOST_SPOTS)) {
            throw new IllegalArgumentException(
                    "spots: " + spots.size() + " were given; 3 to " + MOST_SPOTS + " are expected");
        }
        for (int i = 0; i < spots.size(); i++) {
            for (int k = i + 1; k < spots.size(); k++) {
                if (Math.hypot(spots.get(i).x - spots.get(k).x, spots.get(i).y - spots.get(k).y) < 1e-3) {
                    throw new IllegalArgumentException("spots " + (i + 1) + " and " + (k + 1)
                            + ": the same place was given twice; spots 1 mm apart or more are expected");
                }
            }
        }
        return new SpotSurvey(List.copyOf(spots));
    }

    /**
     * The spots.
     *
     * @return in the order given
     */
    public List<Spot> spots() {
        return spots;
    }

    /**
     * Levelling compound that brings the floor to one level, the highest spot covered by a least thickness.
     *
     * @param room the floor
     * @param compound the compound and its least thickness
     * @return the need
     */
    public LevellerNeed leveller(Room room, LevellerSpec compound) {
        return leveller(FloorRegions.covered(room.polygon(), List.of()), compound);
    }

    /** The base between the spots, and the level it is brought to. */
    private record Base(List<Polygon> triangles, double top) {}

    private Base base(Geometry covered, LevellerSpec compound) {
        double least = Si.in("leveller cover", compound.cover(), Units.METRE);
        List<Coordinate> net = new ArrayList<>();
        spots.forEach(s -> net.add(new Coordinate(s.x, s.y, s.metres())));
        for (Coordinate corner : covered.convexHull().getCoordinates()) {
            if (net.stream().noneMatch(c -> c.distance(corner) < 1e-3)) {
                net.add(new Coordinate(corner.x, corner.y, nearest(corner)));
            }
        }
        double top = net.stream().mapToDouble(Coordinate::getZ).max().orElse(0) + least;
        DelaunayTriangulationBuilder delaunay = new DelaunayTriangulationBuilder();
        delaunay.setSites(net);
        return new Base(FloorRegions.polygons(delaunay.getTriangles(FloorRegions.FACTORY)), top);
    }

    /** Thickness of the compound at a place on the floor's edge. */
    double depthMetres(Geometry covered, LevellerSpec compound, Coordinate at) {
        Base base = base(covered, compound);
        Point place = FloorRegions.FACTORY.createPoint(at);
        return base.triangles.stream()
                .min(Comparator.comparingDouble(t -> t.distance(place)))
                .map(t -> Math.max(0, base.top - heightOn(t, at)))
                .orElse(0.0);
    }

    LevellerNeed leveller(Geometry covered, LevellerSpec compound) {
        Base base = base(covered, compound);
        double volume = 0;
        double deepest = 0;
        for (Polygon triangle : base.triangles) {
            Geometry part = OverlayNG.overlay(triangle, covered, OverlayNG.INTERSECTION, FloorRegions.GRID);
            for (Polygon piece : FloorRegions.polygons(part)) {
                Coordinate centre = piece.getCentroid().getCoordinate();
                volume += piece.getArea() * (base.top - heightOn(triangle, centre));
                for (Coordinate c : piece.getCoordinates()) {
                    deepest = Math.max(deepest, base.top - heightOn(triangle, c));
                }
            }
        }
        return LevellerNeed.of(volume, deepest, compound);
    }

    private double nearest(Coordinate at) {
        return spots.stream()
                .min(Comparator.comparingDouble(s -> Math.hypot(s.x - at.x, s.y - at.y)))
                .map(Spot::metres)
                .orElse(0.0);
    }

    /** Height of a triangle's plane above a point; the prism under a plane has its mean height at the centroid. */
    private static double heightOn(Polygon triangle, Coordinate at) {
        Coordinate[] c = triangle.getCoordinates();
        double dx1 = c[1].x - c[0].x;
        double dy1 = c[1].y - c[0].y;
        double dx2 = c[2].x - c[0].x;
        double dy2 = c[2].y - c[0].y;
        double twice = dx1 * dy2 - dx2 * dy1;
        double s = ((at.x - c[0].x) * dy2 - dx2 * (at.y - c[0].y)) / twice;
        double t = (dx1 * (at.y - c[0].y) - (at.x - c[0].x) * dy1) / twice;
        return c[0].getZ() + s * (c[1].getZ() - c[0].getZ()) + t * (c[2].getZ() - c[0].getZ());
    }

    /**
     * The largest gap found under, or hump found above, a straightedge laid from spot to spot: for every two spots no farther
     * apart than the straightedge, how far a third spot on the line between them lies off it. Spots more than 50 mm aside are
     * left out, so survey in straight rows.
     *
     * @param straightedge its length
     * @return the gap; empty when no three spots in a row lie within the straightedge, so that the survey cannot tell
     * @throws IllegalArgumentException if the length is not above zero
     */
    public Optional<Quantity<Length>> gapUnder(Quantity<Length> straightedge) {
        double reach = Si.positive("straightedge", straightedge, Units.METRE);
        OptionalDouble worst = OptionalDouble.empty();
        for (int i = 0; i < spots.size(); i++) {
            for (int k = i + 1; k < spots.size(); k++) {
                Spot a = spots.get(i);
                Spot b = spots.get(k);
                double length = Math.hypot(b.x - a.x, b.y - a.y);
                if (length <= reach + 1e-9) {
                    worst = larger(worst, gapBetween(a, b, length));
                }
            }
        }
        return worst.isEmpty() ? Optional.empty() : Optional.of(Amounts.millimetres(worst.getAsDouble() * 1000));
    }

    private OptionalDouble gapBetween(Spot a, Spot b, double length) {
        OptionalDouble worst = OptionalDouble.empty();
        for (Spot c : spots) {
            double along = ((c.x - a.x) * (b.x - a.x) + (c.y - a.y) * (b.y - a.y)) / length;
            double aside = Math.abs((c.x - a.x) * (b.y - a.y) - (c.y - a.y) * (b.x - a.x)) / length;
            if (aside <= ASIDE_METRES && along > 1e-6 && along < length - 1e-6) {
                double off = Math.abs(c.metres() - a.metres() - (b.metres() - a.metres()) * along / length);
                worst = larger(worst, OptionalDouble.of(off));
            }
        }
        return worst;
    }

    private static OptionalDouble larger(OptionalDouble a, OptionalDouble b) {
        if (a.isEmpty() || b.isEmpty()) {
            return a.isEmpty() ? b : a;
        }
        return OptionalDouble.of(Math.max(a.getAsDouble(), b.getAsDouble()));
    }
}
