package org.heatfloor.area;

import java.util.List;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Finding;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;

/**
 * A room made from measurements, with what the measurements say about themselves. The frame's zero is the first corner and
 * its x axis runs along the first wall.
 */
public final class SurveyedRoom {

    private final Room room;
    private final List<Door> doors;
    private final double misclosureMetres;
    private final double perimeterMetres;
    private final double angularMisclosureRadians;
    private final List<Measurement> measurements;
    private final List<Finding> findings;

    SurveyedRoom(
            Room room,
            List<Door> doors,
            double misclosureMetres,
            double perimeterMetres,
            double angularMisclosureRadians,
            List<Measurement> measurements,
            List<Finding> findings) {
        this.room = room;
        this.doors = List.copyOf(doors);
        this.misclosureMetres = misclosureMetres;
        this.perimeterMetres = perimeterMetres;
        this.angularMisclosureRadians = angularMisclosureRadians;
        this.measurements = List.copyOf(measurements);
        this.findings = List.copyOf(findings);
    }

    /**
     * The adjusted room.
     *
     * @return the room
     */
    public Room room() {
        return room;
    }

    /**
     * The door openings, in the room's frame.
     *
     * @return the doors in the order given
     */
    public List<Door> doors() {
        return doors;
    }

    /**
     * By how far the measurements fail to close. For wall runs: the distance from the end of the last wall to the first
     * corner. For walls and diagonals: the largest residual.
     *
     * @return the misclosure; zero when they close
     */
    public Quantity<Length> misclosure() {
        return Amounts.metres(misclosureMetres);
    }

    /**
     * The perimeter in units of the misclosure: 500 means one in five hundred.
     *
     * @return the ratio; empty when the misclosure is below a micrometre
     */
    public OptionalDouble misclosureRatio() {
        return misclosureMetres < 1e-6 ? OptionalDouble.empty() : OptionalDouble.of(perimeterMetres / misclosureMetres);
    }

    /**
     * By how much the measured turns fail to add up to a full turn.
     *
     * @return the angle; zero when the last turn was not measured
     */
    public Quantity<Angle> angularMisclosure() {
        return Amounts.of(angularMisclosureRadians, Units.RADIAN);
    }

    /**
     * Every reading with its residual.
     *
     * @return the readings in the order given
     */
    public List<Measurement> measurements() {
        return measurements;
    }

    /**
     * What is worth saying about the measurements.
     *
     * @return the findings
     */
    public List<Finding> findings() {
        return findings;
    }
}
