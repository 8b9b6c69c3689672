package org.heatfloor.routing;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.grid.ChannelGrid;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Point;

/**
 * Where a cable is to be laid: the room, its lattice, the clearances, spacing and bend the cable keeps, and the place where
 * the cold lead leaves the wall.
 */
public final class RouteSite {

    final Room room;
    final TradeLength wallClearance;
    final List<KeepOut> keepOuts;
    final ChannelGrid grid;
    final double pitch;
    final double studDiameter;
    final double wallClearanceMetres;
    final double minSpacing;
    final double bendRadius;
    final Coordinate start;
    final double riser;
    final double jointLength;

    private RouteSite(
            Room room,
            TradeLength wallClearance,
            List<KeepOut> keepOuts,
            StudLattice lattice,
            Quantity<Length> minSpacing,
            Quantity<Length> minBendRadius,
            Point start,
            Quantity<Length> riser,
            Quantity<Length> jointLength) {
        this.room = Objects.requireNonNull(room, "room");
        this.wallClearance = Objects.requireNonNull(wallClearance, "wallClearance");
        this.keepOuts = keepOuts.stream().filter(KeepOut::blocksCable).toList();
        this.pitch = Si.in("stud pitch", lattice.pitch(), Units.METRE);
        this.studDiameter = Si.in("stud diameter", lattice.studDiameter(), Units.METRE);
        this.wallClearanceMetres = Si.in("wall clearance", wallClearance.with(lattice.pitch()), Units.METRE);
        this.minSpacing = Si.within("least spacing", minSpacing, Units.METRE, pitch * (1 - 1e-9), 100 * pitch);
        this.bendRadius = Si.notNegative("least bend radius", minBendRadius, Units.METRE);
        this.start = room.onWall("start", start, Units.METRE).getCoordinate().copy();
        this.riser = Si.notNegative("riser", riser, Units.METRE);
        this.jointLength = Si.notNegative("joint length", jointLength, Units.METRE);
        this.grid = ChannelGrid.of(lattice, room, wallClearance, this.keepOuts);
    }

    /**
     * A site.
     *
     * @param room the floor
     * @param wallClearance from walls and columns to the cable's centre line
     * @param keepOuts places without cable
     * @param lattice the studs as laid
     * @param minSpacing least spacing of runs, centre line to centre line; at least one stud pitch
     * @param minBendRadius least radius of a bend of the centre line
     * @param start where the cold lead leaves the wall, in metres; the nearest place on a wall where it is at most 25 mm off
     * @param riser cold lead used up inside the wall
     * @param jointLength length of the joint between cold lead and heating part, which lies straight
     * @return the site
     * @throws IllegalArgumentException if a figure is out of range; the message names it
     */
    public static RouteSite of(
            Room room,
            TradeLength wallClearance,
            List<KeepOut> keepOuts,
            StudLattice lattice,
            Quantity<Length> minSpacing,
            Quantity<Length> minBendRadius,
            Point start,
            Quantity<Length> riser,
            Quantity<Length> jointLength) {
        return new RouteSite(
                room, wallClearance, keepOuts, lattice, minSpacing, minBendRadius, start, riser, jointLength);
    }

    /**
     * The channels of the site.
     *
     * @return the free channels
     */
    public ChannelGrid channels() {
        return grid;
    }

    /**
     * Largest bend radius with which a cable rounds a stud between two crossing channels:
     * {@code (p/√2 − (D + d)/2)/(√2 − 1)} for pitch p, stud diameter D and cable diameter d.
     */
    double largestBend(double cableDiameter) {
        return (pitch / Math.sqrt(2) - (studDiameter + cableDiameter) / 2) / (Math.sqrt(2) - 1);
    }

    /**
     * Why a cable cannot lie between these studs, if it cannot.
     *
     * @param cableDiameter its diameter
     * @return the reason in one sentence; empty if it can
     */
    public Optional<String> tooThick(Quantity<Length> cableDiameter) {
        double d = Si.positive("cable diameter", cableDiameter, Units.METRE);
        if (d > pitch - studDiameter) {
            return Optional.of("the channels are " + millimetres(pitch - studDiameter) + " wide and the cable "
                    + millimetres(d) + " thick");
        }
        if (bendRadius > largestBend(d) + 1e-9) {
            return Optional.of("between these studs it can bend with at most "
                    + millimetres(Math.max(0, largestBend(d))) + " radius and needs " + millimetres(bendRadius));
        }
        return Optional.empty();
    }

    /**
     * The thickest cable that the channels and the least bend radius let in.
     *
     * @return the diameter; zero where none fits
     */
    public Quantity<Length> thickestCable() {
        double bends = 2 * (pitch / Math.sqrt(2) - bendRadius * (Math.sqrt(2) - 1)) - studDiameter;
        return Amounts.metres(Math.max(0, Math.min(pitch - studDiameter, bends)));
    }

    private static String millimetres(double metres) {
        return QuantityText.number(metres * 1000, 1) + " mm";
    }

    /** Least spacing in whole pitches. */
    int spacingPitches() {
        return (int) Math.ceil(minSpacing / pitch - 1e-6);
    }

    /** Shortest run between two bends, in whole pitches. */
    int leastRun() {
        return (int) Math.ceil(2 * bendRadius / pitch - 1e-6);
    }
}
