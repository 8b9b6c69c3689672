package org.heatfloor.routing;

import java.util.List;
import org.heatfloor.grid.ChannelGrid;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** The floor on which a cable that lies in part is to go on: its free channels, less what the cold leads take. */
final class OpenFloor {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    final RouteSite site;
    final Frame frame;
    /** Free channels of the room, other cables not considered. */
    final Lattice whole;
    /** Free channels that keep the spacing from other cables. */
    final Lattice lattice;

    /** Other cables on the floor. */
    final List<CableRoute> others;

    OpenFloor(RouteSite site, List<CableRoute> others) {
        this.site = site;
        this.others = List.copyOf(others);
        frame = new Frame(site.grid);
        whole = lattice(site.grid);
        lattice = others.isEmpty() ? whole : apart(site, frame, whole, others);
    }

    /** The lattice without the junctions nearer than the spacing to another cable. */
    private static Lattice apart(RouteSite site, Frame frame, Lattice untouched, List<CableRoute> others) {
        boolean[] free = untouched.free.clone();
        for (CableRoute other : others) {
            near(frame, untouched.width, free, other.line(), site.minSpacing);
            other.coldLeads().forEach(lead -> near(frame, untouched.width, free, lead, site.minSpacing / 2));
        }
        int[] steps = {1, untouched.width, -1, -untouched.width};
        byte[] channels = new byte[free.length];
        for (int v = 0; v < free.length; v++) {
            for (int d = 0; free[v] && d < 4; d++) {
                if ((untouched.channels[v] & (1 << d)) != 0 && free[v + steps[d]]) {
                    channels[v] |= (byte) (1 << d);
                }
            }
        }
        return new Lattice(untouched.width, untouched.height, free, channels);
    }

    private static Lattice lattice(ChannelGrid grid) {
        int width = grid.columns();
        int height = grid.rows();
        boolean[] free = new boolean[width * height];
        byte[] channels = new byte[free.length];
        for (int v = 0; v < free.length; v++) {
            free[v] = grid.isFree(v % width, v / width);
        }
        for (int v = 0; v < free.length; v++) {
            if (grid.isFreeEast(v % width, v / width)) {
                channels[v] |= Lattice.EAST;
                channels[v + 1] |= Lattice.WEST;
            }
            if (grid.isFreeNorth(v % width, v / width)) {
                channels[v] |= Lattice.NORTH;
                channels[v + width] |= Lattice.SOUTH;
            }
        }
        return new Lattice(width, height, free, channels);
    }

    Coordinate metres(int node) {
        int row = node / lattice.width;
        return frame.metres(node % lattice.width, row);
    }

    /** Free junctions that keep half the spacing from cold leads; junctions on the leads' own channels are not among them. */
    boolean[] clearOf(List<LineString> leads) {
        boolean[] open = lattice.free.clone();
        leads.forEach(lead -> near(frame, lattice.width, open, lead, site.minSpacing / 2));
        return open;
    }

    /** Takes out the junctions nearer to a line than a distance. */
    private static void near(Frame frame, int width, boolean[] open, LineString line, double metres) {
        Envelope box = line.getEnvelopeInternal();
        box.expandBy(metres);
        IndexedFacetDistance distance = new IndexedFacetDistance(line);
        for (int v = 0; v < open.length; v++) {
            if (open[v]) {
                int row = v / width;
                Coordinate c = frame.metres(v % width, row);
                open[v] = !box.contains(c) || !distance.isWithinDistance(FACTORY.createPoint(c), metres - 1e-9);
            }
        }
    }

    /** The part of the permitted junctions that channels join to one of them. */
    Lattice joinedTo(int node, boolean[] permitted) {
        boolean[] kept = new boolean[permitted.length];
        int[] queue = new int[permitted.length];
        int tail = 0;
        queue[tail++] = node;
        kept[node] = true;
        int[] steps = {1, lattice.width, -1, -lattice.width};
        for (int head = 0; head < tail; head++) {
            int v = queue[head];
            for (int d = 0; d < 4; d++) {
                int next = v + steps[d];
                if ((lattice.channels[v] & (1 << d)) != 0 && permitted[next] && !kept[next]) {
                    kept[next] = true;
                    queue[tail++] = next;
                }
            }
        }
        byte[] channels = new byte[permitted.length];
        for (int t = 0; t < tail; t++) {
            int v = queue[t];
            for (int d = 0; d < 4; d++) {
                if ((lattice.channels[v] & (1 << d)) != 0 && kept[v + steps[d]]) {
                    channels[v] |= (byte) (1 << d);
                }
            }
        }
        return new Lattice(lattice.width, lattice.height, kept, channels);
    }
}
