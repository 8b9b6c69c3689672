package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/**
 * The ways of a cold lead: from the start point along the wall, in the strip where no heating cable lies, then straight
 * along a channel to a first free junction. A lead does not pass under keep-outs; past a movement joint it lies in a
 * sleeve.
 */
final class LeadWays {

    private static final double STEP_METRES = 0.01;
    private static final double TOUCH_METRES = 1e-3;
    private static final double RAMP_METRES = 0.05;

    /**
     * One way to one junction.
     *
     * @param node number of the junction
     * @param bit direction in which the lead arrives, {@link Lattice#EAST} and so on
     * @param along signed metres along the wall from the start
     * @param inMetres from the wall to the junction
     * @param sleeved whether it passes a movement joint
     */
    record Way(int node, int bit, double along, double inMetres, boolean sleeved) {

        double lengthMetres() {
            return Math.abs(along) + inMetres;
        }
    }

    private final Frame frame;
    private final Coordinate start;
    private final WallRing ring;
    private final double startPlace;
    private final int width;
    private final List<Way> ways;
    /** Metres after which a lead lies on its track; zero where it goes straight to its turning-in. */
    private final double rampMetres;

    private LeadWays(
            Frame frame,
            Coordinate start,
            WallRing ring,
            double startPlace,
            int width,
            List<Way> ways,
            double rampMetres) {
        this.frame = frame;
        this.start = start;
        this.ring = ring;
        this.startPlace = startPlace;
        this.width = width;
        this.ways = List.copyOf(ways);
        this.rampMetres = rampMetres;
    }

    List<Way> ways() {
        return ways;
    }

    /** Some of the ways, drawn on a track beside those of other cables. */
    LeadWays onTrack(Predicate<Way> kept) {
        return new LeadWays(
                frame,
                start,
                ring,
                startPlace,
                width,
                ways.stream().filter(kept).toList(),
                RAMP_METRES);
    }

    /** The wall from the start onwards, to a signed distance along it. */
    LineString wall(double along) {
        List<Coordinate> out = new ArrayList<>();
        out.add(ring.point(startPlace));
        out.addAll(ring.corners(startPlace, along, 0));
        out.add(ring.point(startPlace + along));
        return new GeometryFactory().createLineString(out.toArray(new Coordinate[0]));
    }

    /** Unit normal of the wall at the start, into the room. */
    double[] inward() {
        return ring.inward(startPlace);
    }

    /**
     * All ways no longer than the lead.
     *
     * @param room the floor
     * @param keepOuts places without cable
     * @param frame lattice to metres
     * @param lattice all free junctions of the room
     * @param start where the lead leaves the wall
     * @param stripMetres least clearance of the heating cable from the wall
     * @param halfSpacingMetres what the lead keeps from heating cable
     * @param longestMetres lead available in the floor
     */
    static LeadWays of(
            Polygon room,
            List<KeepOut> keepOuts,
            Frame frame,
            Lattice lattice,
            Coordinate start,
            double stripMetres,
            double halfSpacingMetres,
            double longestMetres) {
        WallRing ring = WallRing.nearest(room, start);
        double startPlace = ring.nearest(start);
        // Where the strip is narrower than half a spacing a lead along the wall would come too near the rows.
        double along = stripMetres >= halfSpacingMetres - 1e-9 ? longestMetres : frame.pitchMetres;
        Reach ahead = Reach.walk(ring, startPlace, 1, along, keepOuts);
        Reach behind = Reach.walk(ring, startPlace, -1, along, keepOuts);
        IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(room);
        double farthest = 2 * stripMetres + 3 * frame.pitchMetres;
        List<Way> ways = new ArrayList<>();
        for (int v = 0; v < lattice.free.length; v++) {
            for (int d = 0; lattice.free[v] && d < 4; d++) {
                int dx = d == 0 ? 1 : d == 2 ? -1 : 0;
                int dy = d == 1 ? 1 : d == 3 ? -1 : 0;
                int x = v % lattice.width;
                int y = v / lattice.width;
                if (lattice.free(x + dx, y + dy)) {
                    continue;
                }
                double out = distanceToWall(inside, frame, lattice, x, y, dx, dy, farthest);
                if (!(out <= farthest) || blocked(keepOuts, frame, x, y, dx, dy, out)) {
                    continue;
                }
                double place = ring.nearest(footOf(frame, x, y, dx, dy, out));
                if (ring.point(place).distance(footOf(frame, x, y, dx, dy, out)) > 1e-6) {
                    continue;
                }
                add(
                        ways,
                        v,
                        1 << ((d + 2) % 4),
                        ring.wrap(place - startPlace),
                        out,
                        ring.length,
                        ahead,
                        behind,
                        longestMetres);
            }
        }
        return new LeadWays(frame, start, ring, startPlace, lattice.width, ways, 0);
    }

    private static void add(
            List<Way> ways,
            int node,
            int bit,
            double forward,
            double in,
            double ringLength,
            Reach ahead,
            Reach behind,
            double longest) {
        double backward = ringLength - forward;
        boolean goes = forward <= ahead.metres && forward + in <= longest;
        boolean comes = backward <= behind.metres && backward + in <= longest;
        boolean sleevedAhead = forward > ahead.firstJoint;
        boolean sleevedBehind = backward > behind.firstJoint;
        if (goes && (!comes || (sleevedAhead == sleevedBehind ? forward <= backward : sleevedBehind))) {
            ways.add(new Way(node, bit, forward, in, sleevedAhead));
        } else if (comes) {
            ways.add(new Way(node, bit, -backward, in, sleevedBehind));
        }
    }

    private static Coordinate footOf(Frame frame, int x, int y, int dx, int dy, double out) {
        double pitches = out / frame.pitchMetres;
        return frame.metres(x + dx * pitches, y + dy * pitches);
    }

    /** Distance from a junction to the wall along a lattice direction; infinite if another free junction lies between. */
    private static double distanceToWall(
            IndexedPointInAreaLocator inside,
            Frame frame,
            Lattice lattice,
            int x,
            int y,
            int dx,
            int dy,
            double farthest) {
        double limit = farthest / frame.pitchMetres;
        for (int t = 1; t <= limit; t++) {
            if (lattice.free(x + t * dx, y + t * dy)) {
                return Double.POSITIVE_INFINITY;
            }
        }
        double low = 0;
        double high = 0;
        while (high <= limit && inside.locate(frame.metres(x + high * dx, y + high * dy)) != Location.EXTERIOR) {
            low = high;
            high += 0.25;
        }
        if (high > limit + 0.25) {
            return Double.POSITIVE_INFINITY;
        }
        for (int halving = 0; halving < 40; halving++) {
            double mid = (low + high) / 2;
            if (inside.locate(frame.metres(x + mid * dx, y + mid * dy)) == Location.EXTERIOR) {
                high = mid;
            } else {
                low = mid;
            }
        }
        return low * frame.pitchMetres;
    }

    private static boolean blocked(List<KeepOut> keepOuts, Frame frame, int x, int y, int dx, int dy, double out) {
        LineString ray = new GeometryFactory()
                .createLineString(new Coordinate[] {frame.metres(x, y), footOf(frame, x, y, dx, dy, out)});
        for (KeepOut k : keepOuts) {
            if (k.kind() != KeepOutKind.THRESHOLD && distance(k, ray) < TOUCH_METRES) {
                return true;
            }
        }
        return false;
    }

    private static double distance(KeepOut keepOut, LineString line) {
        return keepOut.shape().distance(line) - Si.in("radius", keepOut.radius(), Units.METRE);
    }

    /**
     * The line of a way from the start point to its junction, corners not rounded.
     *
     * @param way the way
     * @param offsetMetres distance kept from the wall
     */
    List<Coordinate> line(Way way, double offsetMetres) {
        int x = way.node() % width;
        int y = way.node() / width;
        int dx = way.bit() == Lattice.EAST ? -1 : way.bit() == Lattice.WEST ? 1 : 0;
        int dy = way.bit() == Lattice.NORTH ? -1 : way.bit() == Lattice.SOUTH ? 1 : 0;
        List<Coordinate> out = new ArrayList<>();
        out.add(start.copy());
        if (Math.abs(way.along()) > 2 * frame.pitchMetres) {
            ramp(way, offsetMetres, out);
            out.addAll(ring.corners(startPlace, way.along(), offsetMetres));
            double[] footIn = ring.inward(startPlace + way.along() - Math.signum(way.along()) * 1e-9);
            Coordinate unit = new Coordinate(
                    (frame.metres(x + dx, y + dy).x - frame.metres(x, y).x) / frame.pitchMetres,
                    (frame.metres(x + dx, y + dy).y - frame.metres(x, y).y) / frame.pitchMetres);
            double slant = Math.max(0.2, -(unit.x * footIn[0] + unit.y * footIn[1]));
            out.add(footOf(frame, x, y, dx, dy, Math.max(0, way.inMetres() - offsetMetres / slant)));
        } else if (Math.abs(way.along()) > 1e-6) {
            out.add(footOf(frame, x, y, dx, dy, way.inMetres() / 2));
        }
        out.add(frame.metres(x, y));
        return out;
    }

    /** Onto the track soon after the start, unless a corner of the wall comes first. */
    private void ramp(Way way, double offsetMetres, List<Coordinate> out) {
        double along = Math.signum(way.along()) * rampMetres;
        if (rampMetres > 0 && ring.corners(startPlace, along, offsetMetres).isEmpty()) {
            Coordinate wall = ring.point(startPlace + along);
            double[] in = ring.inward(startPlace + along);
            out.add(new Coordinate(wall.x + in[0] * offsetMetres, wall.y + in[1] * offsetMetres));
        }
    }

    /** Whether a point of a lead must not be rounded; see {@link WallRing#roundsCorner}. */
    boolean sharp(Coordinate c, double offsetMetres) {
        return ring.roundsCorner(c, offsetMetres);
    }

    /** How far a lead can go along the wall before a keep-out stands in the way, and where the first joint is. */
    private record Reach(double metres, double firstJoint) {

        static Reach walk(WallRing ring, double from, int direction, double longest, List<KeepOut> keepOuts) {
            double firstJoint = Double.POSITIVE_INFINITY;
            double most = Math.min(longest, ring.length);
            GeometryFactory factory = new GeometryFactory();
            Coordinate previous = ring.point(from);
            for (double t = STEP_METRES; t <= most; t += STEP_METRES) {
                Coordinate here = ring.point(from + direction * t);
                LineString piece = factory.createLineString(new Coordinate[] {previous, here});
                for (KeepOut k : keepOuts) {
                    if (k.kind() == KeepOutKind.THRESHOLD || distance(k, piece) > TOUCH_METRES) {
                        continue;
                    }
                    if (k.kind() != KeepOutKind.MOVEMENT_JOINT) {
                        return new Reach(t - 2 * STEP_METRES, firstJoint);
                    }
                    firstJoint = Math.min(firstJoint, t - STEP_METRES);
                }
                previous = here;
            }
            return new Reach(most, firstJoint);
        }
    }
}
