package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.Room;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Point;

/**
 * Tests drawn cables against the drawing alone. It knows nothing of how a route was found and shares no code with the
 * router: it reads centre lines and measures.
 *
 * <p>What is tested of every cable: inside the room; clearance to walls, columns and keep-outs; spacing to itself and to
 * the other cables; no crossing, no contact, no movement joint bridged; bend radius; the cable at its diameter clear of
 * every stud; {@code 0 ≤ cable length − laid length ≤ stud pitch}; and of every cold lead: number, start, joint straight,
 * inside the room, clear of keep-outs, half the spacing from heating cable, length.
 *
 * <p>Arcs are drawn as chords at most 0.2 mm off. Where an arc may bulge beyond its chord, the bulge worked out from the
 * drawing (never more than 0.2 mm) is allowed for in clearances and at studs, 0.2 mm in bend radii, 0.4 mm in spacings;
 * the length is judged with the arcs' lengths as estimated from the chords. Coordinates count as good to 1 µm.
 */
public final class RouteCheck {

    final Room room;
    final StudLattice lattice;
    final List<KeepOut> keepOuts;
    final double pitchMetres;
    final double studDiameterMetres;
    final double wallClearanceMetres;
    final double minSpacingMetres;
    final double minBendRadiusMetres;
    final Coordinate start;
    final double riserMetres;
    final double jointLengthMetres;

    private RouteCheck(Builder builder, Quantity<Length> minSpacing, Coordinate start) {
        room = builder.room;
        lattice = builder.lattice;
        keepOuts = builder.keepOuts.stream().filter(KeepOut::blocksCable).toList();
        pitchMetres = Si.in("stud pitch", lattice.pitch(), Units.METRE);
        studDiameterMetres = Si.in("stud diameter", lattice.studDiameter(), Units.METRE);
        wallClearanceMetres = Si.notNegative("wall clearance", builder.wallClearance, Units.METRE);
        minSpacingMetres = Si.positive("minimum spacing", minSpacing, Units.METRE);
        minBendRadiusMetres = Si.notNegative("minimum bend radius", builder.minBendRadius, Units.METRE);
        riserMetres = Si.notNegative("riser", builder.riser, Units.METRE);
        jointLengthMetres = Si.notNegative("joint length", builder.jointLength, Units.METRE);
        this.start = start;
    }

    /**
     * A builder for the check of one room.
     *
     * @param room the room
     * @param lattice the studs as they lie
     * @return a builder
     */
    public static Builder builder(Room room, StudLattice lattice) {
        return new Builder(room, lattice);
    }

    /**
     * Checks cables that lie in the room together.
     *
     * @param cables the drawn cables
     * @return what was measured and judged, cable by cable
     */
    public RouteCheckReport check(List<LaidCable> cables) {
        List<CheckedCable> lying = new ArrayList<>();
        for (LaidCable cable : cables) {
            lying.add(new CheckedCable(cable));
        }
        List<CableCheck> results = new ArrayList<>();
        for (CheckedCable cable : lying) {
            results.add(new CableInspection(this, cable, lying).result());
        }
        return new RouteCheckReport(results);
    }

    /** Collects what the check is to hold the cables against. */
    public static final class Builder {
        private final Room room;
        private final StudLattice lattice;
        private List<KeepOut> keepOuts = List.of();
        private Quantity<Length> wallClearance = Amounts.metres(0);
        private Quantity<Length> minBendRadius = Amounts.metres(0);
        private Quantity<Length> riser = Amounts.metres(1.2);
        private Quantity<Length> jointLength = Amounts.metres(0.1);
        private @Nullable Quantity<Length> minSpacing;
        private @Nullable Coordinate start;

        private Builder(Room room, StudLattice lattice) {
            this.room = room;
            this.lattice = lattice;
        }

        /**
         * Clearance of the centre line to walls and columns; 0 m when not given.
         *
         * @param clearance not negative
         * @return this builder
         */
        public Builder wallClearance(Quantity<Length> clearance) {
            wallClearance = clearance;
            return this;
        }

        /**
         * Places without cable; none when not given.
         *
         * @param places the keep-outs, each with its clearance
         * @return this builder
         */
        public Builder keepOuts(List<KeepOut> places) {
            keepOuts = List.copyOf(places);
            return this;
        }

        /**
         * Least distance of centre lines, above zero; required.
         *
         * @param spacing the spacing
         * @return this builder
         */
        public Builder minSpacing(Quantity<Length> spacing) {
            minSpacing = spacing;
            return this;
        }

        /**
         * Least radius of the centre line; 0 m when not given.
         *
         * @param radius not negative
         * @return this builder
         */
        public Builder minBendRadius(Quantity<Length> radius) {
            minBendRadius = radius;
            return this;
        }

        /**
         * Where the cold leads come out of the wall; required.
         *
         * @param point the place; the nearest one on a wall is meant where it is at most 25 mm off
         * @param unit unit of its coordinates
         * @return this builder
         * @throws IllegalArgumentException if the point is empty, not finite or farther than 1 km from the origin
         */
        public Builder start(Point point, Unit<Length> unit) {
            if (point.isEmpty() || !Double.isFinite(point.getX()) || !Double.isFinite(point.getY())) {
                throw new IllegalArgumentException(
                        "start: " + point + " was given; a point with finite coordinates is expected");
            }
            start = room.onWall("start", point, unit).getCoordinate();
            return this;
        }

        /**
         * Length of cold lead used up inside the wall; 1.2 m when not given.
         *
         * @param length not negative
         * @return this builder
         */
        public Builder riser(Quantity<Length> length) {
            riser = length;
            return this;
        }

        /**
         * Length of the joint of cold lead and heating part, which lies straight; 100 mm when not given.
         *
         * @param length not negative
         * @return this builder
         */
        public Builder jointLength(Quantity<Length> length) {
            jointLength = length;
            return this;
        }

        /**
         * The check.
         *
         * @return the check
         * @throws IllegalArgumentException if spacing or start is missing, the spacing is not above zero, or another
         *     length is negative
         */
        public RouteCheck build() {
            Quantity<Length> spacing = Optional.ofNullable(minSpacing)
                    .orElseThrow(() ->
                            new IllegalArgumentException("minimum spacing: nothing was given; a length is expected"));
            Coordinate place = Optional.ofNullable(start)
                    .orElseThrow(() -> new IllegalArgumentException("start: nothing was given; a point is expected"));
            return new RouteCheck(this, spacing, place);
        }
    }
}
