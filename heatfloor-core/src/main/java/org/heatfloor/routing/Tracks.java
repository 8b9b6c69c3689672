package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/**
 * Tracks of the cold leads of several cables beside each other along the wall. The lead that goes farthest lies next to the
 * wall, so that a nearer one turns in without crossing it. Each cable has a stretch of wall from which its lead turns in;
 * beyond the stretch the next one's begins.
 *
 * @param lanes one a cable
 */
record Tracks(List<Lane> lanes) {

    /** Air between two leads side by side. */
    private static final double AIR_METRES = 0.001;

    /** Stretch of wall from which a lead may turn in, in least spacings. */
    private static final double STRETCH = 8;

    private static final int MOST_LAYERS = 12;

    /**
     * Where the leads of one cable lie.
     *
     * @param low least signed place along the wall from which they turn in
     * @param high greatest
     * @param offsetMetres from the wall to the lead that goes farther
     * @param nearerOffsetMetres from the wall to the other lead, where there are two
     */
    record Lane(double low, double high, double offsetMetres, double nearerOffsetMetres) {

        boolean holds(LeadWays.Way way) {
            return way.along() >= low - 1e-9 && way.along() <= high + 1e-9;
        }
    }

    /** The tracks for pieces of floor; empty if a piece is not reached. */
    static Optional<Tracks> of(RouteSite site, LeadWays ways, List<Lattice> pieces, List<CableToLay> cables) {
        List<LeadWays.Way> nearest = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Lattice piece = pieces.get(i);
            double lead = leadMetres(site, cables.get(i));
            Optional<LeadWays.Way> way = ways.ways().stream()
                    .filter(w -> piece.free[w.node()] && w.lengthMetres() <= lead)
                    .min(Comparator.<LeadWays.Way>comparingDouble(w -> (w.sleeved() ? 1000 : 0) + w.lengthMetres())
                            .thenComparingInt(LeadWays.Way::node));
            if (way.isEmpty()) {
                return Optional.empty();
            }
            nearest.add(way.orElseThrow());
        }
        return Optional.of(new Tracks(lanes(site, nearest, cables)));
    }

    /** Cold lead for the way from the start to the first junction. */
    static double leadMetres(RouteSite site, CableToLay cable) {
        return Si.in("cold lead", cable.coldLead(), Units.METRE) - site.riser - site.jointLength - site.bendRadius;
    }

    private static List<Lane> lanes(RouteSite site, List<LeadWays.Way> nearest, List<CableToLay> cables) {
        double stretch = STRETCH * site.minSpacing;
        double thickest = cables.stream()
                .mapToDouble(c -> Si.in("diameter", c.diameter(), Units.METRE))
                .max()
                .orElse(0);
        List<Integer> nearFirst = new ArrayList<>();
        for (int i = 0; i < nearest.size(); i++) {
            nearFirst.add(i);
        }
        nearFirst.sort(Comparator.comparingDouble(i -> Math.abs(nearest.get(i).along())));
        int nearestOfAll = nearFirst.get(0);
        // The lead next to the wall lies as a single one would: where the strip is narrow, against the wall.
        double first = Math.min(thickest / 2, Math.max(0, site.wallClearanceMetres - site.minSpacing / 2));
        Lane[] lanes = new Lane[nearest.size()];
        for (int i = 0; i < lanes.length; i++) {
            double along = nearest.get(i).along();
            boolean ahead = along >= 0;
            // What lies beyond on this side, and where the next of them turns in.
            double next = Double.POSITIVE_INFINITY;
            double nextBack = Double.POSITIVE_INFINITY;
            int beyond = 0;
            int beyondBack = 0;
            for (int j = 0; j < lanes.length; j++) {
                double other = nearest.get(j).along();
                if (j == i || (Math.abs(other) == Math.abs(along) && j < i)) {
                    continue;
                }
                int leads = cables.get(j).returns() ? 2 : 1;
                boolean farther = Math.abs(other) >= Math.abs(along);
                if (farther && (other >= 0) == ahead) {
                    beyond += leads;
                    next = Math.min(next, Math.abs(other));
                } else if (farther) {
                    beyondBack += leads;
                    nextBack = Math.min(nextBack, Math.abs(other));
                }
            }
            boolean bothWays = i == nearestOfAll && Math.abs(along) < stretch / 2;
            int track = bothWays ? Math.max(beyond, beyondBack) : beyond;
            double end = Math.min(Math.abs(along) + stretch, Math.max(Math.abs(along), next - site.pitch));
            double back = bothWays ? -Math.min(stretch, Math.max(0, nextBack - site.pitch)) : Math.abs(along);
            double offset = first + track * (thickest + AIR_METRES);
            lanes[i] = new Lane(
                    ahead ? back : -end,
                    ahead ? end : -back,
                    offset,
                    cables.get(i).returns() ? offset + thickest + AIR_METRES : offset);
        }
        return List.of(lanes);
    }

    /**
     * A lattice without the junctions too near to a track. A line of junctions along the wall goes as a whole, since rows
     * begin where the floor does.
     */
    Lattice cleared(RouteSite site, Frame frame, LeadWays ways, Lattice lattice) {
        boolean[] crowded = crowded(site, frame, ways, lattice);
        Lattice now = lattice;
        for (int layer = 0; layer < MOST_LAYERS; layer++) {
            boolean[] kept = now.free.clone();
            boolean any = false;
            for (int v = 0; v < kept.length; v++) {
                for (int d = 0; crowded[v] && now.free[v] && d < 4; d++) {
                    any |= drop(now, v, d, kept);
                }
            }
            if (!any) {
                return now;
            }
            now = new Lattice(now.width, now.height, kept, Division.channelsWithin(now, kept));
        }
        return now;
    }

    /** Takes away the straight edge of the floor through a junction, if there is one towards a direction. */
    private static boolean drop(Lattice lattice, int v, int d, boolean[] kept) {
        int dx = d == 0 ? 1 : d == 2 ? -1 : 0;
        int dy = d == 1 ? 1 : d == 3 ? -1 : 0;
        int x = v % lattice.width;
        int y = v / lattice.width;
        if (lattice.free(x + dx, y + dy)) {
            return false;
        }
        for (int way = -1; way <= 1; way += 2) {
            for (int t = 0; ; t++) {
                int u = x + way * t * dy;
                int w = y + way * t * dx;
                if (!lattice.free(u, w) || lattice.free(u + dx, w + dy)) {
                    break;
                }
                kept[w * lattice.width + u] = false;
            }
        }
        return true;
    }

    /** Junctions nearer than half the least spacing to a track. */
    private boolean[] crowded(RouteSite site, Frame frame, LeadWays ways, Lattice lattice) {
        boolean[] out = new boolean[lattice.free.length];
        GeometryFactory factory = new GeometryFactory();
        for (Lane lane : lanes) {
            double clear = lane.nearerOffsetMetres() + site.minSpacing / 2;
            if (clear <= site.wallClearanceMetres + 1e-9) {
                continue;
            }
            for (double end : new double[] {Math.min(0, lane.low()), Math.max(0, lane.high())}) {
                if (end == 0) {
                    continue;
                }
                LineString wall = ways.wall(end);
                for (int v = 0; v < out.length; v++) {
                    if (lattice.free[v] && !out[v]) {
                        Coordinate c = frame.junction(v, lattice.width);
                        out[v] = wall.getEnvelopeInternal().distance(new Envelope(c)) < clear
                                && wall.distance(factory.createPoint(c)) < clear - 1e-9;
                    }
                }
            }
        }
        return out;
    }
}
