package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** Looks for room for a longer cable about a drawn route. What is drawn is read back into junctions. */
final class ReserveSearch {

    private static final int MOST_STEPS = 4_000;
    private static final int MOST_SHIFT = 4;
    private static final int MOST_ADJUSTERS = 12;
    private static final int[] DX = {1, 0, -1, 0};
    private static final int[] DY = {0, 1, 0, -1};

    private final RouteSite site;
    private final Frame frame;
    private final Lattice lattice;
    private final CableRoute route;
    private final double pitch;
    private final int spacing;
    /** Junctions of the route in order, as node numbers. */
    private final int[] nodes;
    /** Place of each junction on the route, plus one. */
    private final int[] at;
    /** Base nodes of adjusters already counted. */
    private final boolean[] taken;

    private int steps = MOST_STEPS;
    private double bestMetres;

    /** A router of the floor with every other cable on it, and the route. */
    ReserveSearch(Router others, CableRoute route) {
        site = others.site;
        frame = others.frame;
        pitch = site.pitch;
        spacing = site.spacingPitches();
        this.route = route;
        lattice = withoutLeads(others.whole);
        nodes = junctions();
        at = new int[lattice.free.length];
        for (int i = 0; i < nodes.length; i++) {
            at[nodes[i]] = i + 1;
        }
        taken = new boolean[lattice.free.length];
    }

    /** The junctions that the route passes. */
    boolean[] mask() {
        boolean[] out = new boolean[at.length];
        for (int node : nodes) {
            out[node] = true;
        }
        return out;
    }

    EndReserve find(double wantedMetres) {
        double ahead = route.cable().returns() ? 0 : ahead(wantedMetres);
        List<EndReserve.Adjuster> adjusters = new ArrayList<>();
        double sum = ahead;
        List<int[]> bases = bases();
        for (int b = bases.size() - 1; b >= 0 && sum < wantedMetres && adjusters.size() < MOST_ADJUSTERS; b--) {
            int shift = shift(bases.get(b)[0], bases.get(b)[1]);
            if (shift > 0) {
                double gain = 2 * shift * pitch;
                sum += gain;
                adjusters.add(adjuster(bases.get(b)[0], bases.get(b)[1], gain));
            }
        }
        return new EndReserve(Amounts.metres(wantedMetres), Amounts.metres(ahead), adjusters);
    }

    /** The floor without the junctions nearer than half the spacing to the route's own leads, the route itself left in. */
    private Lattice withoutLeads(Lattice whole) {
        boolean[] kept = whole.free.clone();
        GeometryFactory factory = new GeometryFactory();
        List<LineString> leads = route.coldLeads();
        for (int v = 0; v < kept.length; v++) {
            Coordinate c = frame.junction(v, whole.width);
            for (LineString lead : leads) {
                kept[v] &= lead.getEnvelopeInternal().distance(new org.locationtech.jts.geom.Envelope(c))
                                >= site.minSpacing / 2
                        || lead.distance(factory.createPoint(c)) >= site.minSpacing / 2 - 1e-9;
            }
        }
        return new Lattice(whole.width, whole.height, kept, Division.channelsWithin(whole, kept));
    }

    /** The junctions that a drawn line passes; a corner cut by its arc is put in. */
    private int[] junctions() {
        LineString line = route.line();
        int[] out = new int[lattice.free.length];
        int n = 0;
        for (int i = 0; i + 1 < line.getNumPoints(); i++) {
            Coordinate a = line.getCoordinateN(i);
            Coordinate b = line.getCoordinateN(i + 1);
            int parts = Math.max(1, (int) Math.ceil(8 * a.distance(b) / pitch));
            for (int t = 0; t <= parts; t++) {
                Coordinate c = new Coordinate(a.x + (b.x - a.x) * t / parts, a.y + (b.y - a.y) * t / parts);
                int x = (int) Math.rint(frame.columnOf(c));
                int y = (int) Math.rint(frame.rowOf(c));
                int v = y * lattice.width + x;
                // A place half-way between two junctions may be rounded to either; a route never goes back.
                boolean back = n > 1 && out[n - 2] == v;
                if (back || (n > 0 && out[n - 1] == v)) {
                    continue;
                }
                int before = n > 0 ? out[n - 1] : v;
                if (n > 1 && x != before % lattice.width && y != before / lattice.width) {
                    out[n] = before + (before - out[n - 2]);
                    n++;
                }
                out[n++] = v;
            }
        }
        return Arrays.copyOf(out, n);
    }

    private int direction(int from, int to) {
        int d = to - from;
        return d == 1 ? 0 : d == lattice.width ? 1 : d == -1 ? 2 : 3;
    }

    private double ahead(double wantedMetres) {
        int last = nodes.length - 1;
        if (last < 1) {
            return 0;
        }
        int d = direction(nodes[last - 1], nodes[last]);
        int run = 1;
        while (last - run > 0 && direction(nodes[last - run - 1], nodes[last - run]) == d) {
            run++;
        }
        Coordinate end = route.line().getCoordinateN(route.line().getNumPoints() - 1);
        int column = nodes[last] % lattice.width;
        int row = nodes[last] / lattice.width;
        double beyond = (frame.columnOf(end) - column) * DX[d] + (frame.rowOf(end) - row) * DY[d];
        bestMetres = 0;
        grow(nodes[last], d, run, last + 1, -beyond * pitch, wantedMetres);
        return Math.max(0, Math.min(bestMetres, wantedMetres));
    }

    // As deep as the reserve has pitches.
    private void grow(int node, int d, int run, int index, double metres, double wanted) {
        bestMetres = Math.max(bestMetres, metres);
        int least = Math.max(1, site.leastRun());
        for (int turn : new int[] {0, 1, 3}) {
            int next = (d + turn) % 4;
            if (bestMetres >= wanted || --steps < 0 || (turn != 0 && run < least)) {
                return;
            }
            int x = node % lattice.width + DX[next];
            int y = node / lattice.width + DY[next];
            if (!lattice.free(x, y)
                    || !lattice.freeRun(node % lattice.width, node / lattice.width, x, y)
                    || !joins(x, y, index)) {
                continue;
            }
            int v = y * lattice.width + x;
            at[v] = index + 1;
            double corner = turn == 0 ? 0 : Part.CORNER * site.bendRadius;
            grow(v, next, turn == 0 ? run + 1 : 1, index + 1, metres + pitch - corner, wanted);
            at[v] = 0;
        }
    }

    /** Whether a junction put at a place of the route keeps the planning rule. */
    private boolean joins(int x, int y, int index) {
        int reach = spacing - 1;
        for (int v = Math.max(0, y - reach); v <= Math.min(lattice.height - 1, y + reach); v++) {
            for (int u = Math.max(0, x - reach); u <= Math.min(lattice.width - 1, x + reach); u++) {
                int held = at[v * lattice.width + u] - 1;
                if (held >= 0 && index - held != Math.abs(u - x) + Math.abs(v - y)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** First and last place of the bases of U-turns. */
    private List<int[]> bases() {
        List<int[]> out = new ArrayList<>();
        int corner = -1;
        int before = -1;
        for (int i = 1; i + 1 < nodes.length; i++) {
            int in = direction(nodes[i - 1], nodes[i]);
            int next = direction(nodes[i], nodes[i + 1]);
            if (in == next) {
                continue;
            }
            if (corner >= 0 && next == (before + 2) % 4) {
                out.add(new int[] {corner, i});
            }
            corner = i;
            before = in;
        }
        return out;
    }

    /** Pitches by which a base can be moved outwards, all else as it is. */
    private int shift(int from, int to) {
        int d = direction(nodes[from - 1], nodes[from]);
        int first = legEnd(from, -1);
        int last = legEnd(to, 1);
        for (int shift = 1; shift <= MOST_SHIFT; shift++) {
            int step = shift * (DX[d] + DY[d] * lattice.width);
            int x0 = nodes[from] % lattice.width;
            int y0 = nodes[from] / lattice.width;
            int x1 = nodes[to] % lattice.width;
            int y1 = nodes[to] / lattice.width;
            int sx = shift * DX[d];
            int sy = shift * DY[d];
            boolean free = lattice.freeRun(x0 + sx, y0 + sy, x1 + sx, y1 + sy)
                    && lattice.freeRun(x0, y0, x0 + sx, y0 + sy)
                    && lattice.freeRun(x1, y1, x1 + sx, y1 + sy);
            for (int i = from; free && i <= to; i++) {
                free = clear(nodes[i] + step, first, last);
            }
            if (!free) {
                take(from, to, d, shift - 1);
                return shift - 1;
            }
        }
        take(from, to, d, MOST_SHIFT);
        return MOST_SHIFT;
    }

    private void take(int from, int to, int d, int shift) {
        for (int i = from; i <= to && shift > 0; i++) {
            taken[nodes[i] + shift * (DX[d] + DY[d] * lattice.width)] = true;
        }
    }

    /** The other end of the leg that begins at a corner. */
    private int legEnd(int corner, int way) {
        int i = corner;
        int d = direction(nodes[Math.min(i, i + way)], nodes[Math.max(i, i + way)]);
        while (i + way >= 0
                && i + way < nodes.length
                && direction(nodes[Math.min(i, i + way)], nodes[Math.max(i, i + way)]) == d) {
            i += way;
        }
        return i;
    }

    private boolean clear(int node, int first, int last) {
        int reach = spacing - 1;
        int x = node % lattice.width;
        int y = node / lattice.width;
        for (int v = Math.max(0, y - reach); v <= Math.min(lattice.height - 1, y + reach); v++) {
            for (int u = Math.max(0, x - reach); u <= Math.min(lattice.width - 1, x + reach); u++) {
                int held = at[v * lattice.width + u] - 1;
                if ((held >= 0 && (held < first || held > last)) || taken[v * lattice.width + u]) {
                    return false;
                }
            }
        }
        return true;
    }

    private EndReserve.Adjuster adjuster(int from, int to, double gain) {
        int a = nodes[from];
        int b = nodes[to];
        double length = Si.in("laid", route.laidLength(), Units.METRE);
        double along = Math.min(length, (from + to) / 2.0 / Math.max(1, nodes.length - 1) * length);
        Coordinate p = frame.junction(a, lattice.width);
        Coordinate q = frame.junction(b, lattice.width);
        return new EndReserve.Adjuster(
                new Coordinate((p.x + q.x) / 2, (p.y + q.y) / 2), Amounts.metres(along), Amounts.metres(gain));
    }
}
