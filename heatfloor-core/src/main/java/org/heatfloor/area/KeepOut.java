package org.heatfloor.area;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * A place without cable and the clearance the cable's centre line keeps from its edge. The shape is a polygon, a line (a
 * movement joint) or a disc given by its centre and diameter, kept exact. Coordinates are metres.
 */
public final class KeepOut {

    /**
     * Furniture on legs with at least this gap beneath it takes nothing from the heated floor, in metres. Common practice,
     * no source.
     */
    static final double USUAL_LEAST_FREE_HEIGHT_METRES = 0.06;

    private final String name;
    private final KeepOutKind kind;
    private final Geometry shape;
    private final double radiusMetres;
    private final TradeLength clearance;
    private final boolean clearanceAssumed;
    private final Optional<Quantity<Length>> freeHeight;
    private final double leastFreeHeightMetres;

    private KeepOut(
            String name,
            KeepOutKind kind,
            Geometry shape,
            double radiusMetres,
            TradeLength clearance,
            boolean clearanceAssumed,
            Optional<Quantity<Length>> freeHeight,
            double leastFreeHeightMetres) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("keep-out name: blank was given; a name is expected");
        }
        this.name = name;
        this.kind = Objects.requireNonNull(kind, "kind");
        this.shape = shape;
        this.radiusMetres = radiusMetres;
        this.clearance = Objects.requireNonNull(clearance, "clearance");
        this.clearanceAssumed = clearanceAssumed;
        this.freeHeight = freeHeight;
        this.leastFreeHeightMetres = leastFreeHeightMetres;
    }

    /**
     * A keep-out with a polygon or a line for its shape.
     *
     * @param name what the fitter calls it
     * @param kind what it is
     * @param shape a polygon or a line string
     * @param unit the unit of its coordinates
     * @param clearance from the shape's edge to the cable's centre line
     * @return the keep-out
     * @throws IllegalArgumentException if the name is blank or the shape is neither, empty, or crosses itself
     */
    public static KeepOut of(String name, KeepOutKind kind, Geometry shape, Unit<Length> unit, TradeLength clearance) {
        if (!(shape instanceof Polygon) && !(shape instanceof LineString)) {
            throw new IllegalArgumentException("keep-out '" + name + "': a " + shape.getGeometryType()
                    + " was given; a Polygon, a LineString, or a Point with a diameter is expected");
        }
        return new KeepOut(
                name,
                kind,
                Geometries.taken("keep-out '" + name + "'", shape, unit),
                0,
                clearance,
                false,
                Optional.empty(),
                USUAL_LEAST_FREE_HEIGHT_METRES);
    }

    /**
     * A keep-out with the usual clearance of its kind, {@link UsualClearance#of}, which the findings then say.
     *
     * @param name what the fitter calls it
     * @param kind what it is
     * @param shape a polygon or a line string
     * @param unit the unit of its coordinates
     * @return the keep-out
     * @throws IllegalArgumentException if the name is blank or the shape is neither, empty, or crosses itself
     */
    public static KeepOut of(String name, KeepOutKind kind, Geometry shape, Unit<Length> unit) {
        return of(name, kind, shape, unit, UsualClearance.of(kind).clearance()).assumed();
    }

    /**
     * A round keep-out.
     *
     * @param name what the fitter calls it
     * @param kind what it is
     * @param centre its centre
     * @param unit the unit of the centre's coordinates
     * @param diameter its diameter, greater than zero
     * @param clearance from the disc's edge to the cable's centre line
     * @return the keep-out
     * @throws IllegalArgumentException if the name is blank, the centre is not finite or the diameter not above zero
     */
    public static KeepOut round(
            String name,
            KeepOutKind kind,
            Point centre,
            Unit<Length> unit,
            Quantity<Length> diameter,
            TradeLength clearance) {
        String what = "keep-out '" + name + "'";
        return new KeepOut(
                name,
                kind,
                Geometries.taken(what, centre, unit),
                Si.positive(what + " diameter", diameter, Units.METRE) / 2,
                clearance,
                false,
                Optional.empty(),
                USUAL_LEAST_FREE_HEIGHT_METRES);
    }

    /**
     * A round keep-out with the usual clearance of its kind, {@link UsualClearance#of}, which the findings then say.
     *
     * @param name what the fitter calls it
     * @param kind what it is
     * @param centre its centre
     * @param unit the unit of the centre's coordinates
     * @param diameter its diameter, greater than zero
     * @return the keep-out
     * @throws IllegalArgumentException if the name is blank, the centre is not finite or the diameter not above zero
     */
    public static KeepOut round(
            String name, KeepOutKind kind, Point centre, Unit<Length> unit, Quantity<Length> diameter) {
        return round(name, kind, centre, unit, diameter, UsualClearance.of(kind).clearance())
                .assumed();
    }

    private KeepOut assumed() {
        return new KeepOut(name, kind, shape, radiusMetres, clearance, true, freeHeight, leastFreeHeightMetres);
    }

    /**
     * The same keep-out with the height of the free gap beneath it, for furniture on legs.
     *
     * @param height the gap, not negative
     * @return a copy
     * @throws IllegalArgumentException if the height is negative
     */
    public KeepOut withFreeHeight(Quantity<Length> height) {
        Si.notNegative("keep-out '" + name + "' free height", height, Units.METRE);
        return new KeepOut(
                name,
                kind,
                shape,
                radiusMetres,
                clearance,
                clearanceAssumed,
                Optional.of(height),
                leastFreeHeightMetres);
    }

    /**
     * The same keep-out with another gap from which furniture on legs lets the floor beneath it be heated; 60 mm (common
     * practice, no source) until it is replaced.
     *
     * @param height the gap, not negative
     * @return a copy
     * @throws IllegalArgumentException if the height is negative
     */
    public KeepOut withLeastFreeHeight(Quantity<Length> height) {
        double metres = Si.notNegative("keep-out '" + name + "' least free height", height, Units.METRE);
        return new KeepOut(name, kind, shape, radiusMetres, clearance, clearanceAssumed, freeHeight, metres);
    }

    /**
     * The same keep-out with another clearance, which counts as given.
     *
     * @param other from the shape's edge to the cable's centre line
     * @return a copy
     */
    public KeepOut withClearance(TradeLength other) {
        return new KeepOut(name, kind, shape, radiusMetres, other, false, freeHeight, leastFreeHeightMetres);
    }

    /**
     * What the fitter calls it.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * What it is.
     *
     * @return the kind
     */
    public KeepOutKind kind() {
        return kind;
    }

    /**
     * The polygon, the line, or the centre of the disc.
     *
     * @return a copy, in metres
     */
    public Geometry shape() {
        return shape.copy();
    }

    /**
     * The disc's radius.
     *
     * @return the radius; zero when the shape is a polygon or a line
     */
    public Quantity<Length> radius() {
        return Amounts.metres(radiusMetres);
    }

    /**
     * The clearance from the shape's edge to the cable's centre line.
     *
     * @return the clearance
     */
    public TradeLength clearance() {
        return clearance;
    }

    /**
     * Whether no clearance was given, so that the usual one of the kind is kept.
     *
     * @return true for a keep-out made without a clearance
     */
    public boolean clearanceAssumed() {
        return clearanceAssumed;
    }

    /**
     * The free gap beneath furniture on legs.
     *
     * @return the gap, where one was given
     */
    public Optional<Quantity<Length>> freeHeight() {
        return freeHeight;
    }

    /**
     * The gap from which furniture on legs lets the floor beneath it be heated.
     *
     * @return the gap
     */
    public Quantity<Length> leastFreeHeight() {
        return Amounts.metres(leastFreeHeightMetres);
    }

    /**
     * Whether heating cable is kept away. Furniture on legs with a known gap of at least {@link #leastFreeHeight()} takes
     * nothing: heat leaves beneath it.
     *
     * @return false only for furniture on legs that stands high enough
     */
    public boolean blocksCable() {
        return kind != KeepOutKind.FURNITURE_ON_LEGS
                || freeHeight.isEmpty()
                || Si.in("free height", freeHeight.get(), Units.METRE) < leastFreeHeightMetres - 1e-9;
    }

    /** Distance to the keep-out's edge in metres; zero where they meet. */
    double distanceMetres(Geometry other) {
        return Math.max(0, shape.distance(other) - radiusMetres);
    }

    /** Whether a point lies inside the shape, not merely on its edge. */
    boolean holdsInside(Point point) {
        return radiusMetres > 0 ? shape.distance(point) < radiusMetres : shape.contains(point);
    }

    double radiusMetres() {
        return radiusMetres;
    }

    double clearanceMetres(double pitchMetres) {
        return Si.notNegative(
                "keep-out '" + name + "' clearance", clearance.with(Amounts.metres(pitchMetres)), Units.METRE);
    }
}
