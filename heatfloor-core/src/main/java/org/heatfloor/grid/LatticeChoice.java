package org.heatfloor.grid;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * Chooses how the membrane is laid when nobody has fixed it: turned with the longest wall direction, and shifted so that
 * most channels are usable. Of equals, the one whose channels run nearest to the long walls is taken, then the first tried.
 * Then the phases are swept, one axis after the other; a lattice off the walls is taken only where it has more than a
 * thousandth more channels. The same input gives the same lattice.
 */
public final class LatticeChoice {

    /** Wall directions tried, the one with most wall first. */
    static final int MOST_ANGLES = 2;

    /** Phases tried along each axis. */
    static final int MOST_PHASES = 12;

    /** Evenly spread phases among them. */
    private static final int EVEN_PHASES = 4;

    /** Phases of the coarse sweep along each axis. */
    static final int COARSE_PHASES = 8;

    /** Phases of the fine sweep along one axis, each axis being swept twice. */
    static final int FINE_PHASES = 24;

    /** Phases at edges of obstacles tried in each fine sweep beside the even ones. */
    static final int EDGE_PHASES = 24;

    /** Fine sweeps. */
    static final int SWEEPS = 4;

    /** A lattice off the walls must have more channels by this share. */
    static final double WORTH_LEAVING_THE_WALLS = 0.001;

    /** Junctions, and corners of obstacles for each line of them, looked at in all; 100 m² at a pitch of 34 mm take a quarter. */
    private static final long MOST_WORK = 200_000_000;

    /** Walls whose directions differ by less belong together. */
    private static final double SAME_DIRECTION_RADIANS = Math.toRadians(0.25);

    private final Membrane membrane;
    private final Room room;
    private final TradeLength wallClearance;
    private final List<KeepOut> keepOuts;
    private final double pitch;
    private final double clearance;
    private long work;

    private LatticeChoice(Membrane membrane, Room room, TradeLength wallClearance, List<KeepOut> keepOuts) {
        this.membrane = membrane;
        this.room = room;
        this.wallClearance = wallClearance;
        this.keepOuts = keepOuts;
        this.pitch = Si.in("stud pitch", membrane.studPitch(), Units.METRE);
        this.clearance = ChannelGrid.metres("wall clearance", wallClearance, membrane.studPitch());
    }

    private record Direction(double radians, double metres) {}

    private record Candidate(Direction direction, double u, double v, StudLattice lattice, int channels, double gap) {
        boolean beats(Candidate other) {
            return channels > other.channels || (channels == other.channels && gap < other.gap - 1e-9);
        }
    }

    /**
     * Chooses a lattice.
     *
     * @param membrane gives pitch and stud
     * @param room the room
     * @param wallClearance from every wall to the cable's centre line
     * @param keepOuts places without cable
     * @return the lattice with most usable channels of those tried
     * @throws IllegalArgumentException as for {@link ChannelGrid#of}
     */
    public static StudLattice choose(Membrane membrane, Room room, TradeLength wallClearance, List<KeepOut> keepOuts) {
        room.requireInside(keepOuts);
        return new LatticeChoice(membrane, room, wallClearance, keepOuts).best().lattice();
    }

    private Candidate best() {
        Candidate best = null;
        for (Direction direction : directions(room.polygon())) {
            Obstacles obstacles = obstacles(direction);
            for (double u : phases(obstacles.roomRings(), 0, pitch, clearance)) {
                for (double v : phases(obstacles.roomRings(), 1, pitch, clearance)) {
                    if (best == null || work < MOST_WORK) {
                        Candidate candidate = candidate(obstacles, direction, u, v);
                        best = best == null || candidate.beats(best) ? candidate : best;
                    }
                }
            }
        }
        if (best == null) {
            throw new IllegalStateException("a room without walls");
        }
        Candidate swept = swept(best);
        return swept.channels() > best.channels() * (1 + WORTH_LEAVING_THE_WALLS) ? swept : best;
    }

    /** All pairs of coarse phases, then fine phases and those at edges of obstacles along one axis and the other in turn. */
    private Candidate swept(Candidate start) {
        Obstacles obstacles = obstacles(start.direction());
        Candidate best = start;
        double coarse = pitch / COARSE_PHASES;
        for (int i = 0; i < COARSE_PHASES; i++) {
            for (int j = 0; j < COARSE_PHASES; j++) {
                best = better(best, obstacles, start.u() + i * coarse, start.v() + j * coarse);
            }
        }
        double[][] edges = {edgePhases(obstacles, 0), edgePhases(obstacles, 1)};
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            Candidate from = best;
            int axis = sweep % 2;
            for (int i = 1; i < FINE_PHASES; i++) {
                double step = i * pitch / FINE_PHASES;
                best = along(axis, best, obstacles, from, (axis == 0 ? from.u() : from.v()) + step);
            }
            for (double phase : edges[axis]) {
                best = along(axis, best, obstacles, from, phase);
            }
        }
        return best;
    }

    private Candidate along(int axis, Candidate best, Obstacles obstacles, Candidate from, double phase) {
        return axis == 0 ? better(best, obstacles, phase, from.v()) : better(best, obstacles, from.u(), phase);
    }

    /** Phases that put a channel line on a clearance line: between two of them the channels hardly change. */
    private double[] edgePhases(Obstacles obstacles, int axis) {
        Set<Long> seen = new HashSet<>();
        List<Double> out = new ArrayList<>();
        for (double at : obstacles.edges(axis)) {
            if (out.size() < EDGE_PHASES) {
                add(at, pitch, seen, out);
            }
        }
        return out.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private Candidate better(Candidate best, Obstacles obstacles, double u, double v) {
        if (work >= MOST_WORK) {
            return best;
        }
        Candidate candidate = candidate(obstacles, best.direction(), u, v);
        return candidate.beats(best) ? candidate : best;
    }

    private Candidate candidate(Obstacles obstacles, Direction direction, double u, double v) {
        Quantity<Angle> angle = Amounts.of(direction.radians(), Units.RADIAN);
        StudLattice lattice = StudLattice.of(membrane, studAt(u, v, pitch, direction), Units.METRE, angle);
        ChannelGrid grid = obstacles.gridOf(lattice);
        work += (long) grid.columns() * grid.rows() + (long) (grid.columns() + grid.rows()) * obstacles.corners();
        double gap = gap(obstacles.roomRings(), u, v, pitch, clearance);
        return new Candidate(direction, u, v, lattice, grid.freeChannels(), gap);
    }

    private Obstacles obstacles(Direction direction) {
        return new Obstacles(
                room, wallClearance, keepOuts, membrane.studPitch(), Amounts.of(direction.radians(), Units.RADIAN));
    }

    /** The stud half a pitch before the junction at (u, v) of the turned frame. */
    private static Point studAt(double u, double v, double pitch, Direction direction) {
        double cos = Math.cos(direction.radians());
        double sin = Math.sin(direction.radians());
        double su = u - pitch / 2;
        double sv = v - pitch / 2;
        return new GeometryFactory().createPoint(new Coordinate(su * cos - sv * sin, su * sin + sv * cos));
    }

    /** Directions of the walls within a quarter turn, those with most wall first. */
    private static List<Direction> directions(Polygon polygon) {
        List<Direction> found = new ArrayList<>();
        Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
        for (int i = 0; i + 1 < ring.length; i++) {
            double length = ring[i].distance(ring[i + 1]);
            double radians = quarter(Math.atan2(ring[i + 1].y - ring[i].y, ring[i + 1].x - ring[i].x));
            boolean joined = false;
            for (int k = 0; k < found.size() && !joined; k++) {
                Direction other = found.get(k);
                double apart = Math.abs(radians - other.radians());
                if (Math.min(apart, Math.PI / 2 - apart) < SAME_DIRECTION_RADIANS) {
                    found.set(k, new Direction(other.radians(), other.metres() + length));
                    joined = true;
                }
            }
            if (!joined) {
                found.add(new Direction(radians, length));
            }
        }
        found.sort((a, b) -> Double.compare(b.metres(), a.metres()));
        return found.subList(0, Math.min(MOST_ANGLES, found.size()));
    }

    private static double quarter(double radians) {
        double turned = radians % (Math.PI / 2);
        if (turned < 0) {
            turned += Math.PI / 2;
        }
        return Math.PI / 2 - turned < 1e-9 || turned < 1e-9 ? 0 : turned;
    }

    /** Where a channel line may lie, modulo the pitch: as near as allowed to the walls across the axis, longest first. */
    private static double[] phases(double[][] rings, int axis, double pitch, double clearance) {
        record Wall(double least, double most, double metres) {}
        List<Wall> walls = new ArrayList<>();
        for (double[] ring : rings) {
            for (int i = 0; i + 3 < ring.length; i += 2) {
                double across = Math.abs(ring[i + 2 + axis] - ring[i + axis]);
                double metres = Math.abs(ring[i + 3 - axis] - ring[i + 1 - axis]);
                if (across < Math.max(1e-6, metres * SAME_DIRECTION_RADIANS)) {
                    double least = Math.min(ring[i + axis], ring[i + 2 + axis]);
                    walls.add(new Wall(least, least + across, metres));
                }
            }
        }
        walls.sort((a, b) -> Double.compare(b.metres(), a.metres()));
        Set<Long> seen = new HashSet<>();
        List<Double> out = new ArrayList<>();
        for (Wall wall : walls) {
            for (double at : new double[] {wall.most() + clearance, wall.least() - clearance}) {
                if (out.size() < MOST_PHASES - EVEN_PHASES) {
                    add(at, pitch, seen, out);
                }
            }
        }
        for (int i = 0; i < EVEN_PHASES; i++) {
            add(rings[0][axis] + i * pitch / EVEN_PHASES, pitch, seen, out);
        }
        return out.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void add(double at, double pitch, Set<Long> seen, List<Double> out) {
        double phase = at - Math.floor(at / pitch) * pitch;
        long key = Math.round(phase / pitch * 10_000) % 10_000;
        if (seen.add(key)) {
            out.add(phase);
        }
    }

    /** Wall length times the distance from the clearance line to the first channel beside it, summed over walls. */
    private static double gap(double[][] rings, double u, double v, double pitch, double clearance) {
        double sum = 0;
        for (double[] ring : rings) {
            double turn = signedArea(ring) > 0 ? 1 : -1;
            double side = ring == rings[0] ? turn : -turn;
            for (int i = 0; i + 3 < ring.length; i += 2) {
                double du = ring[i + 2] - ring[i];
                double dv = ring[i + 3] - ring[i + 1];
                if (Math.abs(dv) < 1e-6) {
                    sum += Math.abs(du) * first(ring[i + 1], side * Math.signum(du), v, pitch, clearance);
                } else if (Math.abs(du) < 1e-6) {
                    sum += Math.abs(dv) * first(ring[i], -side * Math.signum(dv), u, pitch, clearance);
                }
            }
        }
        return sum;
    }

    private static double first(double wall, double inward, double phase, double pitch, double clearance) {
        double steps = inward * (phase - (wall + inward * clearance)) / pitch;
        double gap = steps - Math.floor(steps + 1e-7);
        return Math.max(0, gap) * pitch;
    }

    private static double signedArea(double[] ring) {
        double sum = 0;
        for (int i = 0; i + 3 < ring.length; i += 2) {
            sum += ring[i] * ring[i + 3] - ring[i + 2] * ring[i + 1];
        }
        return sum / 2;
    }
}
