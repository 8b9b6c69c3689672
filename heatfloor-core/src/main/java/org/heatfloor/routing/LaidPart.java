package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.LineString;

/**
 * What of a heating cable lies on the floor already: as planned up to a point or up to a row, or as it was measured on the
 * floor. The cable was begun at its joint, and its head, the last place that lies, is where laying stopped.
 */
public final class LaidPart {

    private final CableToLay cable;
    private final LineString line;
    private final List<LineString> coldLeads;
    private final boolean planned;
    /** Length laid, or not a number: up to the end of the line. */
    private final double laidMetres;
    /** Row up to which the cable lies, or 0. */
    private final int row;

    private LaidPart(
            CableToLay cable,
            LineString line,
            List<LineString> coldLeads,
            boolean planned,
            double laidMetres,
            int row) {
        finite("heating line of cable '" + cable.name() + "'", line);
        coldLeads.forEach(lead -> finite("cold lead of cable '" + cable.name() + "'", lead));
        this.cable = cable;
        this.line = (LineString) line.copy();
        this.coldLeads = coldLeads.stream().map(l -> (LineString) l.copy()).toList();
        this.planned = planned;
        this.laidMetres = laidMetres;
        this.row = row;
    }

    /**
     * A cable laid as planned up to a point.
     *
     * @param plan the planned route
     * @param laid length of the heating part that lies, from the joint on
     * @return the laid part
     * @throws IllegalArgumentException if the length is negative or more than the planned one
     */
    public static LaidPart upTo(CableRoute plan, Quantity<Length> laid) {
        return upTo(plan.cable(), plan.line(), plan.coldLeads(), laid);
    }

    /**
     * A cable laid as drawn up to a point.
     *
     * @param cable the cable
     * @param line drawn centre line of the whole heating part, from the joint on, in metres
     * @param coldLeads drawn centre lines of the cold leads, from the start to the joint, in metres
     * @param laid length of the heating part that lies, from the joint on
     * @return the laid part
     * @throws IllegalArgumentException if the length is negative or more than the cable's, or a coordinate is not finite
     */
    public static LaidPart upTo(CableToLay cable, LineString line, List<LineString> coldLeads, Quantity<Length> laid) {
        double most = Si.in("cable length", cable.length(), Units.METRE);
        double metres = Si.within("length laid", laid, Units.METRE, 0, most);
        return new LaidPart(cable, line, coldLeads, true, metres, 0);
    }

    /**
     * A cable laid as planned up to the end of a row. A row is a straight run, counted from the joint; the bend at its end
     * does not lie yet.
     *
     * @param plan the planned route
     * @param row number of the last row that lies, from 1
     * @return the laid part
     * @throws IllegalArgumentException if there is no such row
     */
    public static LaidPart upToRow(CableRoute plan, int row) {
        if (!(row >= 1 && row <= plan.turns() + 1)) {
            throw new IllegalArgumentException(
                    "row: " + row + " was given; 1 to " + (plan.turns() + 1) + " is expected");
        }
        return upToRow(plan.cable(), plan.line(), plan.coldLeads(), row);
    }

    /**
     * A cable laid as drawn up to the end of a row, counted from the joint. A number beyond the last row stands for the
     * whole cable.
     *
     * @param cable the cable
     * @param line drawn centre line of the whole heating part, from the joint on, in metres
     * @param coldLeads drawn centre lines of the cold leads, from the start to the joint, in metres
     * @param row number of the last row that lies, from 1
     * @return the laid part
     * @throws IllegalArgumentException if the number is less than 1 or a coordinate is not finite
     */
    public static LaidPart upToRow(CableToLay cable, LineString line, List<LineString> coldLeads, int row) {
        if (!(row >= 1)) {
            throw new IllegalArgumentException("row: " + row + " was given; 1 or more is expected");
        }
        return new LaidPart(cable, line, coldLeads, true, Double.NaN, row);
    }

    /**
     * A cable measured on the floor, which need not lie as planned. Corner points may be a third of a stud pitch off: the
     * cable lies in the channels, and is taken to lie there.
     *
     * @param cable the cable
     * @param corners the joint, the corner points in the order laid, and the head, in metres
     * @param coldLead centre line of the cold lead, from the start to the joint, in metres
     * @return the laid part
     * @throws IllegalArgumentException if there are fewer than two points or a coordinate is not finite
     */
    public static LaidPart measured(CableToLay cable, LineString corners, LineString coldLead) {
        return new LaidPart(cable, corners, List.of(coldLead), false, Double.NaN, 0);
    }

    private static void finite(String what, LineString line) {
        CoordinateSequence points = line.getCoordinateSequence();
        if (points.size() < 2) {
            throw new IllegalArgumentException(what + ": " + points.size() + " points were given; 2 are expected");
        }
        for (int i = 0; i < points.size(); i++) {
            if (!Double.isFinite(points.getX(i)) || !Double.isFinite(points.getY(i))) {
                throw new IllegalArgumentException(
                        what + ": " + points.getCoordinate(i) + " was given; finite coordinates are expected");
            }
        }
    }

    /**
     * The cable.
     *
     * @return the cable as bought
     */
    public CableToLay cable() {
        return cable;
    }

    /**
     * Length of the heating part that lies, along its bends.
     *
     * @param site where it lies
     * @return the length from the joint to the head
     * @throws IllegalArgumentException if the laid part does not lie in the site's channels
     */
    public Quantity<Length> length(RouteSite site) {
        OpenFloor floor = new OpenFloor(site, List.of());
        return Amounts.metres(metres(track(floor), floor));
    }

    /**
     * What would be left in hand if the cable were as long as stated and lay as drawn.
     *
     * @param site where it lies
     * @return cable length less the length laid
     * @throws IllegalArgumentException if the laid part does not lie in the site's channels
     */
    public Quantity<Length> leftAsStated(RouteSite site) {
        OpenFloor floor = new OpenFloor(site, List.of());
        return Amounts.metres(Si.in("cable length", cable.length(), Units.METRE) - metres(track(floor), floor));
    }

    boolean isPlanned() {
        return planned;
    }

    Optional<LineString> firstLead() {
        return coldLeads.stream().findFirst();
    }

    /** The whole drawn cable on the lattice, the planned rest included. */
    Track track(OpenFloor floor) {
        Optional<Track> track = planned
                ? Track.drawn(floor.frame, floor.lattice, line, coldLeads)
                : Track.measured(floor.frame, floor.lattice, line, coldLeads);
        return track.orElseThrow(() -> new IllegalArgumentException("laid part of cable '" + cable.name()
                + "': the line does not follow the channels of the site's studs; corners on junctions, straight runs"
                + " between them and no joint in a bend are expected"));
    }

    /** Length of the heating part that lies. */
    double metres(Track track, OpenFloor floor) {
        double bend = floor.site.bendRadius;
        double pitch = floor.site.pitch;
        double whole = LaidStretch.metresTo(track, track.end(), bend, pitch);
        if (row == 0) {
            return Double.isNaN(laidMetres) ? whole : Math.min(whole, laidMetres);
        }
        List<Double> ends = rowEnds(track, floor);
        return row > ends.size() ? whole : ends.get(row - 1);
    }

    /** Lengths of the heating part at the ends of its rows, the last row's end left out. */
    static List<Double> rowEnds(Track track, OpenFloor floor) {
        double bend = floor.site.bendRadius;
        double pitch = floor.site.pitch;
        int[] nodes = track.nodes();
        List<Double> out = new ArrayList<>();
        for (int i = Math.max(1, (int) Math.ceil(track.joint() + 1e-9)); i + 1 < nodes.length && i < track.end(); i++) {
            if (nodes[i + 1] - nodes[i] != nodes[i] - nodes[i - 1]) {
                out.add(LaidStretch.metresTo(track, i, bend, pitch) - bend);
            }
        }
        return out;
    }
}
