package org.heatfloor.area;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * What of a room's floor may be heated: the places where the cable's centre line may lie. Clearances are never short (the
 * region errs to the inside by at most 0.13 % of a clearance). Areas are computed on a grid of 1 µm, so parts add up to the
 * floor within that grid times the length of their edges. Coordinates are metres.
 */
public final class HeatableArea {

    /** A line keeps at least this much from the cable, so that it parts the region. */
    private static final double LEAST_LINE_CLEARANCE_METRES = 5e-6;

    private final double floorSquareMetres;
    private final Geometry region;
    private final List<Polygon> parts;

    private HeatableArea(double floorSquareMetres, Geometry region) {
        this.floorSquareMetres = floorSquareMetres;
        this.region = region;
        this.parts = polygons(region);
    }

    /**
     * The heatable area of a room.
     *
     * @param room the room
     * @param wallClearance from every wall and inner ring to the cable's centre line
     * @param keepOuts places without cable; furniture on legs that stands high enough takes nothing
     * @param studPitch gives clearances stated in studs their length
     * @return the heatable area
     * @throws IllegalArgumentException if a keep-out lies wholly outside the room, or the pitch is not above zero
     */
    public static HeatableArea of(
            Room room, TradeLength wallClearance, List<KeepOut> keepOuts, Quantity<Length> studPitch) {
        room.requireInside(keepOuts);
        Polygon floor = room.polygon();
        Geometry region =
                Offsets.shrunk(floor, Si.notNegative("wall clearance", wallClearance.with(studPitch), Units.METRE));
        for (KeepOut keepOut : keepOuts) {
            if (keepOut.blocksCable()) {
                region = Offsets.difference(region, taken(keepOut, studPitch));
            }
        }
        return new HeatableArea(floor.getArea(), region);
    }

    private static Geometry taken(KeepOut keepOut, Quantity<Length> studPitch) {
        Geometry shape = keepOut.shape();
        double clearance = Si.notNegative(
                "keep-out '" + keepOut.name() + "' clearance",
                keepOut.clearance().with(studPitch),
                Units.METRE);
        double radius = Si.in("radius", keepOut.radius(), Units.METRE);
        double distance =
                shape instanceof LineString ? Math.max(clearance, LEAST_LINE_CLEARANCE_METRES) : radius + clearance;
        return Offsets.grown(shape, distance);
    }

    /**
     * Area of the floor inside the walls.
     *
     * @return the area
     */
    public Quantity<Area> floorArea() {
        return Amounts.squareMetres(floorSquareMetres);
    }

    /**
     * Area of the places where the cable's centre line may lie.
     *
     * @return the area
     */
    public Quantity<Area> heatableArea() {
        return Amounts.squareMetres(region.getArea());
    }

    /**
     * Area of the floor taken by clearances and keep-outs.
     *
     * @return the area
     */
    public Quantity<Area> keptOutArea() {
        return Amounts.squareMetres(floorSquareMetres - region.getArea());
    }

    /**
     * The places where the cable's centre line may lie.
     *
     * @return a copy, in metres; empty when nothing is left
     */
    public Geometry region() {
        return region.copy();
    }

    /**
     * The connected parts of the region, the largest first.
     *
     * @return copies, in metres
     */
    public List<Polygon> parts() {
        return parts.stream().map(p -> (Polygon) p.copy()).toList();
    }

    private static List<Polygon> polygons(Geometry geometry) {
        List<Polygon> out = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                out.add(polygon);
            }
        }
        out.sort((a, b) -> Double.compare(b.getArea(), a.getArea()));
        return List.copyOf(out);
    }
}
