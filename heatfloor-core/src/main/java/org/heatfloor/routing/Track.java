package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * A drawn cable read back onto the lattice: the junctions it passes, those of its cold leads in the floor included, and
 * where on that string of junctions the heating part begins and ends. Places are pitches from the first junction.
 */
final class Track {

    /** How far a drawn corner may lie from its junction, in pitches. */
    private static final double DRAWN = 0.02;
    /** How far a corner measured on the floor may lie from its junction, in pitches. */
    static final double MEASURED = 0.34;
    /** A piece counts as straight along a channel when it leans less than this. */
    private static final double LEAN = 0.008;
    /** How much the first chord of a bend leans from the channel at most. */
    private static final double CHORD = 0.2;

    private final int[] nodes;
    private final double joint;
    private final double end;

    private Track(int[] nodes, double joint, double end) {
        this.nodes = nodes;
        this.joint = joint;
        this.end = end;
    }

    /** Numbers of the junctions, each next to the one before; not to be changed. */
    int[] nodes() {
        return nodes;
    }

    /** Place where the heating part begins; may lie before the first junction. */
    double joint() {
        return joint;
    }

    /** Place where the drawn heating part ends. */
    double end() {
        return end;
    }

    /** A straight stretch along one channel line, or none: a piece that follows no channel. */
    private record Straight(boolean eastward, int sign, double line, double from, double to, boolean broken) {
        static final Straight BROKEN = new Straight(false, 0, 0, 0, 0, true);
    }

    /** A point of the lattice, not rounded. */
    private record Place(double x, double y) {}

    /** Reads a drawn heating part with its leads; empty if it does not lie in the channels. */
    static Optional<Track> drawn(Frame frame, Lattice floor, LineString heating, List<LineString> leads) {
        return of(floor, places(frame, heating), backwards(frame, leads));
    }

    /** Reads a heating part given by corner points measured on the floor; empty if it does not lie in the channels. */
    static Optional<Track> measured(Frame frame, Lattice floor, LineString heating, List<LineString> leads) {
        List<Place> raw = places(frame, heating);
        List<Place> snapped = new ArrayList<>();
        for (int i = 0; i < raw.size(); i++) {
            Place p = raw.get(i);
            Place q = raw.get(i == 0 ? 1 : i - 1);
            boolean inner = i > 0 && i < raw.size() - 1;
            boolean eastward = Math.abs(p.x - q.x) > Math.abs(p.y - q.y);
            double x = inner || !eastward ? Math.rint(p.x) : p.x;
            double y = inner || eastward ? Math.rint(p.y) : p.y;
            if (Math.abs(x - p.x) > MEASURED || Math.abs(y - p.y) > MEASURED) {
                return Optional.empty();
            }
            snapped.add(new Place(x, y));
        }
        // A lead measured with a tape may lean too much to be followed; the heating part is read without it.
        return of(floor, snapped, backwards(frame, leads)).or(() -> of(floor, snapped, List.of()));
    }

    /** The first cold lead up to where it comes into the channels; from there on it is part of the track. */
    LineString offChannels(LineString lead, double pitchMetres) {
        double off = Math.max(0, lead.getLength() - Math.max(0, joint) * pitchMetres);
        return (LineString) new LengthIndexedLine(lead).extractLine(0, off);
    }

    private static List<List<Place>> backwards(Frame frame, List<LineString> leads) {
        List<List<Place>> out = new ArrayList<>();
        leads.forEach(lead -> out.add(places(frame, lead.reverse())));
        return out;
    }

    private static List<Place> places(Frame frame, LineString line) {
        List<Place> out = new ArrayList<>();
        for (Coordinate c : line.getCoordinates()) {
            Place p = new Place(frame.columnOf(c), frame.rowOf(c));
            if (out.isEmpty() || distance(out.get(out.size() - 1), p) > 1e-7) {
                out.add(p);
            }
        }
        return out;
    }

    private static double distance(Place a, Place b) {
        return Math.hypot(a.x - b.x, a.y - b.y);
    }

    private static Optional<Track> of(Lattice floor, List<Place> heating, List<List<Place>> leadsBackwards) {
        List<Place> corners = corners(heating, false);
        if (corners.size() < 2) {
            return Optional.empty();
        }
        List<Place> all = new ArrayList<>(corners);
        double before = 0;
        double after = 0;
        for (int end = 0; end < leadsBackwards.size(); end++) {
            List<Place> onward = onFloor(floor, corners(leadsBackwards.get(end), true));
            double length = 0;
            for (int i = 1; i < onward.size(); i++) {
                length += distance(onward.get(i - 1), onward.get(i));
                if (end == 0) {
                    all.add(0, onward.get(i));
                } else {
                    all.add(onward.get(i));
                }
            }
            // The joint lies straight, so that it is no corner.
            Place joint = corners.get(end == 0 ? 0 : corners.size() - 1);
            Place next = corners.get(end == 0 ? 1 : corners.size() - 2);
            if (onward.size() > 1 && !isBetween(onward.get(1), joint, next)) {
                return Optional.empty();
            }
            if (onward.size() > 1 && end == 0) {
                all.remove(onward.size() - 1);
                before = length;
            } else if (onward.size() > 1) {
                all.remove(all.size() - onward.size());
                after = length;
            }
        }
        return strung(floor, all, before, after);
    }

    private static boolean isBetween(Place a, Place middle, Place b) {
        return distance(a, middle) + distance(middle, b) - distance(a, b) <= DRAWN;
    }

    /** The beginning of a lead, from its joint backwards, as far as it lies on free junctions. */
    private static List<Place> onFloor(Lattice floor, List<Place> back) {
        List<Place> out = new ArrayList<>();
        for (int i = 0; i < back.size(); i++) {
            Place c = back.get(i);
            boolean inner = i < back.size() - 1;
            if (i == 0 || (inner && floor.free((int) Math.rint(c.x), (int) Math.rint(c.y)))) {
                out.add(c);
            } else {
                Place entry = entry(floor, back.get(i - 1), c);
                if (distance(entry, back.get(i - 1)) > 1e-9) {
                    out.add(entry);
                }
                break;
            }
        }
        return out;
    }

    /** The farthest free junction in one line from a place towards another. */
    private static Place entry(Lattice floor, Place from, Place to) {
        double length = distance(from, to);
        int dx = (int) Math.rint((to.x - from.x) / Math.max(1e-9, length));
        int dy = (int) Math.rint((to.y - from.y) / Math.max(1e-9, length));
        Place best = from;
        int steps = (int) Math.floor(length + 1e-6);
        for (int t = 0; t <= steps; t++) {
            double x = dx > 0 ? Math.ceil(from.x - 1e-6) + t : dx < 0 ? Math.floor(from.x + 1e-6) - t : from.x;
            double y = dy > 0 ? Math.ceil(from.y - 1e-6) + t : dy < 0 ? Math.floor(from.y + 1e-6) - t : from.y;
            Place here = new Place(x, y);
            if (distance(from, here) > length + 1e-6 || !floor.free((int) Math.rint(x), (int) Math.rint(y))) {
                break;
            }
            best = here;
        }
        return best;
    }

    private static Optional<Track> strung(Lattice floor, List<Place> corners, double before, double after) {
        int[] nodes = new int[64];
        int n = 0;
        double along = 0;
        double firstNode = Double.NaN;
        for (int c = 0; c + 1 < corners.size(); c++) {
            Place a = corners.get(c);
            Place b = corners.get(c + 1);
            double length = distance(a, b);
            if (length < 1e-9) {
                continue;
            }
            int dx = (int) Math.rint((b.x - a.x) / length);
            int dy = (int) Math.rint((b.y - a.y) / length);
            if (Math.abs(dx) + Math.abs(dy) != 1) {
                return Optional.empty();
            }
            double from = dx != 0 ? a.x * dx : a.y * dy;
            for (double at = Math.ceil(from - 1e-6); at <= from + length + 1e-6; at++) {
                int x = (int) Math.rint(dx != 0 ? at * dx : a.x);
                int y = (int) Math.rint(dy != 0 ? at * dy : a.y);
                if (x < 0 || y < 0 || x >= floor.width || y >= floor.height) {
                    return Optional.empty();
                }
                int v = y * floor.width + x;
                if (n > 0 && nodes[n - 1] == v) {
                    continue;
                }
                if (n == 0) {
                    firstNode = along + at - from;
                }
                if (n == nodes.length) {
                    nodes = Arrays.copyOf(nodes, 2 * n);
                }
                nodes[n++] = v;
            }
            along += length;
        }
        return n == 0
                ? Optional.empty()
                : Optional.of(new Track(Arrays.copyOf(nodes, n), before - firstNode, along - firstNode - after));
    }

    /** Corner points of a drawn line whose bends are arcs; where it leaves the channels it is cut off, or refused. */
    private static List<Place> corners(List<Place> points, boolean cutOff) {
        List<Straight> straights = straights(points);
        if (!cutOff) {
            withBareBends(points, straights);
        }
        List<Place> out = new ArrayList<>();
        if (straights.isEmpty() || straights.get(0).broken) {
            return out;
        }
        out.add(points.get(0));
        Straight last = straights.get(0);
        for (int i = 1; i < straights.size(); i++) {
            Straight next = straights.get(i);
            if (next.broken || next.eastward == last.eastward) {
                if (!cutOff) {
                    return List.of();
                }
                break;
            }
            Place corner = last.eastward ? new Place(next.line, last.line) : new Place(last.line, next.line);
            if (Math.abs(corner.x - Math.rint(corner.x)) > DRAWN || Math.abs(corner.y - Math.rint(corner.y)) > DRAWN) {
                if (!cutOff) {
                    return List.of();
                }
                break;
            }
            out.add(new Place(Math.rint(corner.x), Math.rint(corner.y)));
            last = next;
        }
        Place end = points.get(points.size() - 1);
        double to = straights.get(straights.size() - 1).equals(last) ? (last.eastward ? end.x : end.y) : last.to;
        out.add(last.eastward ? new Place(to, Math.rint(last.line)) : new Place(Math.rint(last.line), to));
        Place first = out.get(0);
        Straight start = straights.get(0);
        out.set(
                0,
                start.eastward ? new Place(first.x, Math.rint(start.line)) : new Place(Math.rint(start.line), first.y));
        return out;
    }

    /** Where a heating part begins or ends with a bend, its straight piece there is of no length; it is added. */
    private static void withBareBends(List<Place> points, List<Straight> straights) {
        int end = points.size() - 1;
        if (end < 1) {
            return;
        }
        bare(points.get(0), points.get(0), points.get(1)).ifPresent(s -> straights.add(0, s));
        bare(points.get(end), points.get(end - 1), points.get(end)).ifPresent(straights::add);
    }

    /** A straight piece of no length at a place, if the chord there leans from a channel no more than that of a bend does. */
    private static Optional<Straight> bare(Place at, Place a, Place b) {
        double heading = Math.atan2(b.y - a.y, b.x - a.x);
        double quarter = Math.rint(heading / (Math.PI / 2)) * Math.PI / 2;
        double lean = Math.abs(Math.sin(heading - quarter));
        boolean eastward = Math.abs(Math.sin(quarter)) < 0.5;
        double line = eastward ? at.y : at.x;
        return lean > LEAN && lean < CHORD && Math.abs(line - Math.rint(line)) <= DRAWN
                ? Optional.of(new Straight(
                        eastward,
                        (int) Math.rint(eastward ? Math.cos(quarter) : Math.sin(quarter)),
                        line,
                        eastward ? at.x : at.y,
                        eastward ? at.x : at.y,
                        false))
                : Optional.empty();
    }

    private static List<Straight> straights(List<Place> points) {
        List<Straight> out = new ArrayList<>();
        double turned = 0;
        double heading = Double.NaN;
        double lastStep = 0;
        for (int i = 0; i + 1 < points.size(); i++) {
            Place a = points.get(i);
            Place b = points.get(i + 1);
            double dx = b.x - a.x;
            double dy = b.y - a.y;
            double length = Math.hypot(dx, dy);
            boolean east = Math.abs(dy) <= LEAN * length;
            boolean north = Math.abs(dx) <= LEAN * length;
            double now = Math.atan2(dy, dx);
            double step = 0;
            if (!Double.isNaN(heading)) {
                step = Math.IEEEremainder(now - heading, 2 * Math.PI);
                turned += step;
                if (Math.abs(step) > Math.PI / 2 + 0.05) {
                    out.add(Straight.BROKEN);
                }
            }
            double quarter = Math.rint(heading / (Math.PI / 2)) * Math.PI / 2;
            boolean between = !Double.isNaN(heading)
                    && !east
                    && !north
                    && Math.abs(Math.IEEEremainder(heading - quarter, 2 * Math.PI)) > LEAN
                    && Math.signum(Math.sin(heading - quarter)) != Math.signum(Math.sin(now - quarter));
            // Where a bend goes over into one the other way, the chords before and after lean alike.
            boolean inflected = !east
                    && !north
                    && Math.abs(step) < 0.3 * Math.abs(lastStep)
                    && Math.abs(Math.sin(heading - quarter)) < CHORD;
            lastStep = step;
            if (east || north) {
                add(out, east, (int) Math.signum(east ? dx : dy), east ? (a.y + b.y) / 2 : (a.x + b.x) / 2, a, b);
                turned = 0;
            } else if ((between || inflected) && Math.abs(turned) > 1.2) {
                boolean e = Math.abs(Math.sin(quarter)) < 0.5;
                add(out, e, (int) Math.rint(e ? Math.cos(quarter) : Math.sin(quarter)), e ? a.y : a.x, a, a);
                turned = 0;
            } else if (Math.abs(turned) > Math.PI / 2 + 0.1) {
                out.add(Straight.BROKEN);
                turned = 0;
            }
            heading = now;
        }
        return out;
    }

    private static void add(List<Straight> out, boolean eastward, int sign, double line, Place a, Place b) {
        double from = eastward ? a.x : a.y;
        double to = eastward ? b.x : b.y;
        if (!out.isEmpty()) {
            Straight last = out.get(out.size() - 1);
            if (!last.broken && last.eastward == eastward && last.sign == sign && Math.abs(last.line - line) < 0.01) {
                out.set(out.size() - 1, new Straight(eastward, sign, last.line, last.from, to, false));
                return;
            }
        }
        out.add(new Straight(eastward, sign, line, from, to, false));
    }
}
