package org.heatfloor.examples;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.heatfloor.routing.LaidCable;
import org.heatfloor.routing.RouteCheckReport;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * A one-ended route of a small room as corner points of the lattice, the cold lead's runs first: how far it leaves the floor
 * cold, and how it is drawn for the independent check.
 */
public final class LatticeRoute {

    private static final double CORNER = 2 - Math.PI / 2;
    private static final int CHORDS = 12;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final SmallRoom room;
    private final int leadRuns;
    private final int[] xs;
    private final int[] ys;
    private final SmallRoom.Entry entry;
    /** Pitches from the first heating run's corner to the heating part, and given up at the free end. */
    private final double begins;

    private final double trimmed;
    private final double laid;

    /**
     * A route.
     *
     * @param room the floor and its cable
     * @param leadRuns runs before the joint
     * @param xs columns of the corners
     * @param ys rows of the corners
     * @throws IllegalArgumentException if the cable's length cannot be laid on it exactly
     */
    public LatticeRoute(SmallRoom room, int leadRuns, int[] xs, int[] ys) {
        this.room = room;
        this.leadRuns = leadRuns;
        this.xs = xs.clone();
        this.ys = ys.clone();
        int dx = Integer.signum(xs[1] - xs[0]);
        int dy = Integer.signum(ys[1] - ys[0]);
        SmallRoom.Entry best = null;
        for (SmallRoom.Entry e : room.entries()) {
            boolean here = e.x() == xs[0] && e.y() == ys[0];
            boolean straight = e.dx() == dx && e.dy() == dy;
            boolean within = e.lead() + leadLength() + room.jointLength() + (straight ? 0 : room.bendRadius())
                    <= room.leadInFloor() + 1e-6;
            if (here && within && (best == null || straight)) {
                best = e;
            }
        }
        if (best == null) {
            throw new IllegalArgumentException("no cold lead reaches " + xs[0] + " " + ys[0]);
        }
        entry = best;
        boolean straight = leadRuns == 0 && entry.dx() == dx && entry.dy() == dy;
        double r = room.bendRadius();
        double at = room.jointLength() + (straight ? 0 : r);
        double excess = length() * room.pitch() - at - CORNER * r * turns() - room.cableLength();
        double back =
                straight ? Math.max(0, Math.min(room.jointLength(), entry.in() - (entry.along() < 1e-6 ? 0 : r))) : 0;
        double tail = Math.min(Math.max(0, excess), runLength(runs() - 1) * room.pitch() - r);
        double moved = Math.max(0, excess) - tail;
        double slack = runLength(leadRuns) * room.pitch() - r - at;
        if (excess < -back - 1e-5 || moved > slack + 1e-5 || slack < -1e-6) {
            throw new IllegalArgumentException("not exact: " + excess + " m more than the cable");
        }
        double drawn = Math.min(back, Math.max(0, -excess));
        begins = (at + moved - drawn) / room.pitch();
        trimmed = tail / room.pitch();
        laid = room.cableLength() + Math.min(0, excess + drawn);
    }

    private double leadLength() {
        double sum = 0;
        for (int run = 0; run < leadRuns; run++) {
            sum += runLength(run) * room.pitch();
        }
        return sum;
    }

    private int runs() {
        return xs.length - 1;
    }

    private int runLength(int run) {
        return Math.abs(xs[run + 1] - xs[run]) + Math.abs(ys[run + 1] - ys[run]);
    }

    /** Pitches from the first heating run's corner to the end. */
    private int length() {
        int sum = 0;
        for (int run = leadRuns; run < runs(); run++) {
            sum += runLength(run);
        }
        return sum;
    }

    /**
     * Turns of the heating part.
     *
     * @return how many
     */
    public int turns() {
        return runs() - leadRuns - 1;
    }

    /**
     * Runs before the joint.
     *
     * @return how many
     */
    public int leadRuns() {
        return leadRuns;
    }

    /**
     * Length laid.
     *
     * @return metres
     */
    public double laidMetres() {
        return laid;
    }

    /**
     * Free junctions farther than the even spacing from the heating part's junctions.
     *
     * @return {@code {x, y}} each, the farthest first
     */
    public List<int[]> coldJunctions() {
        double even = room.evenSpacing() / room.pitch();
        boolean[] heated = heated();
        List<int[]> cold = new ArrayList<>();
        List<Double> distances = new ArrayList<>();
        for (int v = 0; v < heated.length; v++) {
            int x = v % room.width();
            int y = v / room.width();
            if (!room.free(x, y)) {
                continue;
            }
            double nearest = Double.POSITIVE_INFINITY;
            for (int h = 0; h < heated.length; h++) {
                if (heated[h]) {
                    int hy = h / room.width();
                    nearest = Math.min(nearest, Math.hypot(x - h % room.width(), y - hy));
                }
            }
            if (nearest > even + 1e-9) {
                int at = 0;
                while (at < cold.size() && distances.get(at) >= nearest) {
                    at++;
                }
                cold.add(at, new int[] {x, y});
                distances.add(at, nearest);
            }
        }
        return cold;
    }

    private boolean[] heated() {
        boolean[] heated = new boolean[room.width() * room.height()];
        double place = -begins;
        double end = length() - begins - trimmed;
        for (int run = leadRuns; run < runs(); run++) {
            int dx = Integer.signum(xs[run + 1] - xs[run]);
            int dy = Integer.signum(ys[run + 1] - ys[run]);
            for (int t = 0; t <= runLength(run); t++) {
                if (place + t >= -1e-6 && place + t <= end + 1e-6) {
                    heated[(ys[run] + t * dy) * room.width() + xs[run] + t * dx] = true;
                }
            }
            place += runLength(run);
        }
        return heated;
    }

    /**
     * Draws the route, its cold lead along the wall, and asks the independent check.
     *
     * @return its report
     */
    public RouteCheckReport check() {
        var grid = room.floor().site().channels();
        List<Coordinate> corners = new ArrayList<>();
        for (int p = 0; p < xs.length; p++) {
            corners.add(grid.junction(xs[p], ys[p]));
        }
        double pitch = room.pitch();
        Coordinate joint = along(corners.get(leadRuns), corners.get(leadRuns + 1), begins * pitch);
        int last = corners.size() - 1;
        List<Coordinate> heating = new ArrayList<>();
        heating.add(joint);
        heating.addAll(corners.subList(leadRuns + 1, last));
        heating.add(along(corners.get(last), corners.get(last - 1), trimmed * pitch));
        List<Coordinate> lead = new ArrayList<>(wall(corners.get(0)));
        lead.addAll(corners.subList(0, leadRuns + 1));
        lead.add(joint);
        return room.floor()
                .check()
                .check(List.of(new LaidCable(
                        room.cable().name(),
                        rounded(heating, room.bendRadius()),
                        List.of(FACTORY.createLineString(lead.toArray(new Coordinate[0]))),
                        room.cable().length(),
                        room.cable().diameter(),
                        room.cable().conductors(),
                        room.cable().coldLead())));
    }

    private List<Coordinate> wall(Coordinate first) {
        LineString ring = room.floor().room().polygon().getExteriorRing();
        LengthIndexedLine places = new LengthIndexedLine(ring);
        double start = places.project(room.floor().start().getCoordinate());
        double foot =
                places.project(new Coordinate(first.x - entry.dx() * entry.in(), first.y - entry.dy() * entry.in()));
        List<Coordinate> out = new ArrayList<>();
        if (Math.abs(foot - start) <= ring.getLength() / 2) {
            out.addAll(Arrays.asList(places.extractLine(start, foot).getCoordinates()));
        } else if (foot > start) {
            out.addAll(Arrays.asList(places.extractLine(start, 0).getCoordinates()));
            out.addAll(Arrays.asList(places.extractLine(ring.getLength(), foot).getCoordinates()));
        } else {
            out.addAll(Arrays.asList(places.extractLine(start, ring.getLength()).getCoordinates()));
            out.addAll(Arrays.asList(places.extractLine(0, foot).getCoordinates()));
        }
        return out;
    }

    private static Coordinate along(Coordinate from, Coordinate to, double metres) {
        double share = metres / from.distance(to);
        return new Coordinate(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
    }

    private static LineString rounded(List<Coordinate> corners, double radius) {
        List<Coordinate> out = new ArrayList<>();
        out.add(corners.get(0));
        for (int c = 1; c < corners.size() - 1; c++) {
            Coordinate corner = corners.get(c);
            Coordinate in = along(corner, corners.get(c - 1), radius);
            Coordinate on = along(corner, corners.get(c + 1), radius);
            Coordinate centre = new Coordinate(in.x + on.x - corner.x, in.y + on.y - corner.y);
            for (int n = 0; n <= CHORDS; n++) {
                double angle = Math.PI / 2 * n / CHORDS;
                out.add(new Coordinate(
                        centre.x + (in.x - centre.x) * Math.cos(angle) + (on.x - centre.x) * Math.sin(angle),
                        centre.y + (in.y - centre.y) * Math.cos(angle) + (on.y - centre.y) * Math.sin(angle)));
            }
        }
        out.add(corners.get(corners.size() - 1));
        return FACTORY.createLineString(out.toArray(new Coordinate[0]));
    }

    /**
     * Share of the free junctions that stay cold.
     *
     * @return cold junctions over all
     */
    public double coldShare() {
        return (double) coldJunctions().size() / room.freeJunctions();
    }

    /**
     * The corners.
     *
     * @return columns and rows, as {@code x y} joined by commas
     */
    public String text() {
        StringBuilder out = new StringBuilder();
        for (int p = 0; p < xs.length; p++) {
            out.append(p == 0 ? "" : ", ").append(xs[p]).append(' ').append(ys[p]);
        }
        return out.toString();
    }
}
