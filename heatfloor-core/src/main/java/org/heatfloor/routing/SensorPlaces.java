package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.KeepOut;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Point;

/**
 * Places for a floor sensor: midway between two straight parallel runs whose distance is near the even spacing, well
 * inside the field, away from walls and fixtures, with a lead to the wall that keeps half the least spacing from every
 * heating cable (common practice, no source). Works on a grid of half pitches, so that the middle between any two runs is
 * on it.
 */
public final class SensorPlaces {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double FROM_WALL_METRES = 0.3;
    private static final double APART_METRES = 0.25;
    /** What crossing a cold lead at the wall costs, as metres of sensor lead. */
    private static final double CROSSING_METRES = 4;

    private static final double BESIDE_LEAD_METRES = 0.008;

    private final RouteSite site;
    private final Frame frame;
    private final WallRing ring;
    private final double startPlace;
    private final int width;
    private final int height;
    private final boolean[] open;
    private final boolean[] heat;
    private final double[] wallMetres;
    private final int[] from;
    private final double[] cost;

    private SensorPlaces(RouteSite site, List<LineString> heating, List<LineString> coldLeads) {
        this.site = site;
        frame = new Frame(site.grid);
        ring = new WallRing(site.room.polygon());
        startPlace = ring.nearest(site.start);
        width = 2 * site.grid.columns() - 1;
        height = 2 * site.grid.rows() - 1;
        heat = new boolean[width * height];
        heating.forEach(this::draw);
        open = new boolean[width * height];
        wallMetres = new double[width * height];
        from = new int[width * height];
        cost = new double[width * height];
        markOpen(coldLeads);
        spread(coldLeads);
    }

    /**
     * The best places beside one cable.
     *
     * @param site where the cables lie
     * @param heating every heating cable of the room
     * @param coldLeads every cold lead of the room; a sensor's lead crosses one only where it must
     * @param beside the cable whose spacing counts
     * @param spacing its even spacing
     * @param count how many places are wanted
     * @return at most that many, best first; fewer where the field has no such place
     */
    public static List<SensorPlace> find(
            RouteSite site,
            List<LineString> heating,
            List<LineString> coldLeads,
            LineString beside,
            Quantity<Length> spacing,
            int count) {
        SensorPlaces places = new SensorPlaces(site, heating, coldLeads);
        return places.best(beside, Si.positive("spacing", spacing, Units.METRE) / site.pitch * 2, count);
    }

    private Coordinate metres(int v) {
        return frame.metres(v % width / 2.0, Math.floorDiv(v, width) / 2.0);
    }

    private void draw(LineString line) {
        Coordinate[] c = line.getCoordinates();
        for (int i = 1; i < c.length; i++) {
            int pieces = (int) Math.ceil(c[i].distance(c[i - 1]) / (site.pitch / 4));
            for (int t = 0; t <= pieces; t++) {
                double share = pieces == 0 ? 0 : (double) t / pieces;
                int v = node(new Coordinate(
                        c[i - 1].x + share * (c[i].x - c[i - 1].x), c[i - 1].y + share * (c[i].y - c[i - 1].y)));
                if (v >= 0) {
                    heat[v] = true;
                }
            }
        }
    }

    private int node(Coordinate c) {
        int x = (int) Math.round(frame.columnOf(c) * 2);
        int y = (int) Math.round(frame.rowOf(c) * 2);
        return x < 0 || y < 0 || x >= width || y >= height ? -1 : y * width + x;
    }

    private void markOpen(List<LineString> coldLeads) {
        double[] squared = Coverage.squaredDistances(width, height, heat);
        double least = site.minSpacing / site.pitch - 0.02;
        IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(site.room.polygon());
        for (int v = 0; v < open.length; v++) {
            if (squared[v] < least * least) {
                continue;
            }
            Coordinate c = metres(v);
            if (inside.locate(c) == Location.EXTERIOR) {
                continue;
            }
            Point p = FACTORY.createPoint(c);
            boolean clear = coldLeads.stream().noneMatch(lead -> lead.distance(p) < BESIDE_LEAD_METRES);
            for (KeepOut k : site.keepOuts) {
                double radius = Si.in("radius", k.radius(), Units.METRE);
                clear &= k.shape().distance(p) - radius > 0.01;
            }
            open[v] = clear;
            wallMetres[v] = ring.point(ring.nearest(c)).distance(c);
        }
    }

    /** Cheapest ways from the wall to every open node; beginning near the start point is cheaper. */
    private void spread(List<LineString> coldLeads) {
        Arrays.fill(cost, Double.POSITIVE_INFINITY);
        Arrays.fill(from, -1);
        double step = site.pitch / 2;
        PriorityQueue<double[]> queue = new PriorityQueue<>(
                Comparator.<double[]>comparingDouble(e -> e[0]).thenComparingDouble(e -> e[1]));
        for (int v = 0; v < open.length; v++) {
            if (open[v] && wallMetres[v] <= 2.02 * step) {
                double round = ring.wrap(ring.nearest(metres(v)) - startPlace);
                cost[v] = wallMetres[v] + 0.5 * Math.min(round, ring.length - round);
                if (crosses(coldLeads, metres(v))) {
                    cost[v] += CROSSING_METRES;
                }
                queue.add(new double[] {cost[v], v});
            }
        }
        while (!queue.isEmpty()) {
            double[] head = queue.remove();
            int v = (int) head[1];
            if (head[0] > cost[v]) {
                continue;
            }
            int x = v % width;
            int[] next = {x + 1 < width ? v + 1 : -1, x > 0 ? v - 1 : -1, v + width, v - width};
            for (int n : next) {
                if (n >= 0 && n < open.length && open[n] && cost[v] + step < cost[n] - 1e-12) {
                    cost[n] = cost[v] + step;
                    from[n] = v;
                    queue.add(new double[] {cost[n], n});
                }
            }
        }
    }

    private boolean crosses(List<LineString> coldLeads, Coordinate c) {
        LineString way = FACTORY.createLineString(new Coordinate[] {c, ring.point(ring.nearest(c))});
        return coldLeads.stream().anyMatch(lead -> lead.distance(way) < 1e-3);
    }

    private List<SensorPlace> best(LineString beside, double spacing, int count) {
        boolean[] own = new boolean[heat.length];
        boolean[] all = heat.clone();
        Arrays.fill(heat, false);
        draw(beside);
        System.arraycopy(heat, 0, own, 0, own.length);
        System.arraycopy(all, 0, heat, 0, all.length);
        List<double[]> scored = new ArrayList<>();
        for (int v = 0; v < open.length; v++) {
            if (!(cost[v] < Double.POSITIVE_INFINITY)) {
                continue;
            }
            for (int gap : new int[] {gap(own, v, 1, width), gap(own, v, width, 1)}) {
                if (gap > 0) {
                    scored.add(new double[] {score(v, gap, spacing), v, gap});
                }
            }
        }
        scored.sort(Comparator.<double[]>comparingDouble(e -> e[0]).thenComparingDouble(e -> e[1]));
        List<SensorPlace> out = new ArrayList<>();
        for (double[] e : scored) {
            Coordinate c = metres((int) e[1]);
            boolean apart = out.stream().allMatch(p -> p.at().getCoordinate().distance(c) >= APART_METRES);
            if (apart && out.size() < count) {
                out.add(new SensorPlace(
                        FACTORY.createPoint(c), lead((int) e[1]), Amounts.metres(e[2] * site.pitch / 2)));
            }
        }
        return List.copyOf(out);
    }

    /**
     * Distance, in half pitches, of two straight runs that a node lies midway between; 0 if it does not.
     *
     * @param across step from the node towards the runs
     * @param along step along the runs
     */
    private int gap(boolean[] own, int v, int across, int along) {
        int most = 2 * (int) Math.ceil(3 * site.minSpacing / site.pitch);
        for (int d = 1; d <= most; d++) {
            boolean a = at(own, v, across * d, across);
            boolean b = at(own, v, -across * d, across);
            if (a != b) {
                return 0;
            }
            if (a) {
                for (int t = -2 * d; t <= 2 * d; t++) {
                    int w = v + t * along;
                    if (w < 0
                            || w >= own.length
                            || !at(own, w, across * d, across)
                            || !at(own, w, -across * d, across)) {
                        return 0;
                    }
                }
                return 2 * d;
            }
        }
        return 0;
    }

    private boolean at(boolean[] own, int v, int offset, int across) {
        int w = v + offset;
        return w >= 0 && w < own.length && (across != 1 || w / width == v / width) && own[w];
    }

    private double score(int v, int gap, double spacing) {
        double off = Math.abs(gap - spacing) / spacing;
        Coordinate c = metres(v);
        Point p = FACTORY.createPoint(c);
        double nearest = wallMetres[v];
        for (KeepOut k : site.keepOuts) {
            nearest = Math.min(nearest, k.shape().distance(p) - Si.in("radius", k.radius(), Units.METRE));
        }
        double tooNear = Math.max(0, FROM_WALL_METRES - nearest) / FROM_WALL_METRES;
        return 4 * off + 4 * tooNear + 0.3 * cost[v];
    }

    private LineString lead(int v) {
        List<Coordinate> line = new ArrayList<>();
        int last = v;
        int direction = 0;
        line.add(metres(v));
        int w = v;
        while (from[w] >= 0) {
            int step = from[w] - w;
            if (direction != 0 && step != direction) {
                line.add(metres(w));
            }
            direction = step;
            w = from[w];
            last = w;
        }
        if (last != v) {
            line.add(metres(last));
        }
        Coordinate wall = ring.point(ring.nearest(metres(last)));
        if (wall.distance(metres(last)) > 1e-6) {
            line.add(wall);
        }
        if (line.size() == 1) {
            line.add(wall);
        }
        Collections.reverse(line);
        return FACTORY.createLineString(line.toArray(new Coordinate[0]));
    }
}
