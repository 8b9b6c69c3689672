package org.heatfloor.grid;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;

/**
 * Where the studs lie in the room: pitch, the centre of one stud, and the turn of the rows against the x axis. Junctions
 * of channels lie half a pitch from the stud centres in both directions.
 */
public final class StudLattice {

    private static final double FARTHEST_METRES = 1_000;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final double pitchMetres;
    private final double studDiameterMetres;
    private final double originX;
    private final double originY;
    private final double angleRadians;

    private StudLattice(
            double pitchMetres, double studDiameterMetres, double originX, double originY, double angleRadians) {
        this.pitchMetres = pitchMetres;
        this.studDiameterMetres = studDiameterMetres;
        this.originX = originX;
        this.originY = originY;
        this.angleRadians = angleRadians;
    }

    /**
     * The lattice of a membrane as laid.
     *
     * @param membrane gives pitch and stud
     * @param origin the centre of one stud
     * @param unit the unit of the origin's coordinates
     * @param angle turn of the rows against the x axis, counter-clockwise
     * @return the lattice
     * @throws IllegalArgumentException if the origin is empty, not finite or farther than 1 km from the frame's zero, or the
     *     angle is more than a full turn
     */
    public static StudLattice of(Membrane membrane, Point origin, Unit<Length> unit, Quantity<Angle> angle) {
        if (origin.isEmpty() || !Double.isFinite(origin.getX()) || !Double.isFinite(origin.getY())) {
            throw new IllegalArgumentException(
                    "lattice origin: " + origin + " was given; a point with finite coordinates is expected");
        }
        double metres = Si.in("lattice origin", Amounts.of(1, unit), Units.METRE);
        if (!(Math.abs(origin.getX() * metres) <= FARTHEST_METRES
                && Math.abs(origin.getY() * metres) <= FARTHEST_METRES)) {
            throw new IllegalArgumentException("lattice origin: " + origin + " in " + unit
                    + " was given; a point within " + FARTHEST_METRES + " m of the room's frame is expected");
        }
        double radians = Si.in("lattice angle", angle, Units.RADIAN);
        if (!(Math.abs(radians) <= 2 * Math.PI + 1e-9)) {
            throw new IllegalArgumentException("lattice angle: " + QuantityText.write(angle.to(Units.DEGREE), 3)
                    + " was given; at most 360 ° either way is expected");
        }
        return new StudLattice(
                Si.in("stud pitch", membrane.studPitch(), Units.METRE),
                Si.in("stud diameter", membrane.studDiameter(), Units.METRE),
                origin.getX() * metres,
                origin.getY() * metres,
                radians);
    }

    /**
     * Distance of neighbouring studs.
     *
     * @return the pitch
     */
    public Quantity<Length> pitch() {
        return Amounts.metres(pitchMetres);
    }

    /**
     * Diameter of a stud.
     *
     * @return the diameter
     */
    public Quantity<Length> studDiameter() {
        return Amounts.metres(studDiameterMetres);
    }

    /**
     * The centre of one stud.
     *
     * @return a point, in metres
     */
    public Point origin() {
        return FACTORY.createPoint(new Coordinate(originX, originY));
    }

    /**
     * Turn of the rows against the x axis.
     *
     * @return the angle, counter-clockwise
     */
    public Quantity<Angle> angle() {
        return Amounts.of(angleRadians, Units.RADIAN);
    }

    /**
     * The junction of channels with the given index; junction (0, 0) lies half a pitch beyond the origin in both
     * directions of the lattice.
     *
     * @param column index along the rows
     * @param row index across the rows
     * @return its place, in metres
     */
    public Coordinate junction(int column, int row) {
        double u = (column + 0.5) * pitchMetres;
        double v = (row + 0.5) * pitchMetres;
        double cos = Math.cos(angleRadians);
        double sin = Math.sin(angleRadians);
        return new Coordinate(originX + u * cos - v * sin, originY + u * sin + v * cos);
    }
}
