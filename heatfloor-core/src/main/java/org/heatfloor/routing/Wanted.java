package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.heatfloor.area.PriorityZone;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateSequenceFilter;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * The spacing wanted at every junction of a part for one length of cable; lengths in pitches. The part falls into regions
 * of equal weight: region 0 lies outside every zone, a place in several zones belongs to the heaviest.
 */
final class Wanted {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final int HALVINGS = 60;

    final Lattice lattice;
    /** The zones, heaviest first; zone n is region n + 1. */
    final List<PriorityZone> zones;
    /** Their shapes, on the lattice. */
    final List<Geometry> shapes;
    /** Region of each junction. */
    final int[] region;
    /** Reach of each region, in pitch². */
    final double[] areas;
    /** Spacing wanted in each region. */
    final double[] spacings;

    /** Widest gap between lines, in whole pitches. */
    final int mostGap;

    private final double length;

    private Wanted(
            Lattice lattice,
            List<PriorityZone> zones,
            List<Geometry> shapes,
            int[] region,
            double[] areas,
            double[] spacings,
            int mostGap,
            double length) {
        this.lattice = lattice;
        this.zones = zones;
        this.shapes = shapes;
        this.region = region;
        this.areas = areas;
        this.spacings = spacings;
        this.mostGap = mostGap;
        this.length = length;
    }

    /**
     * What is wanted of a length of cable in a part of the floor.
     *
     * @param length of the cable
     * @param area to which the regions' areas add up
     * @param side of the squares that make the reach: the least spacing
     */
    static Wanted of(Lattice lattice, Frame frame, PriorityZones wish, double length, double area, double side) {
        List<PriorityZone> zones = wish.zones().stream()
                .sorted(Comparator.comparingDouble(PriorityZone::weight).reversed())
                .toList();
        List<Geometry> shapes =
                zones.stream().map(z -> onLattice(frame, z.shape())).toList();
        int[] region = new int[lattice.free.length];
        double[] areas = new double[zones.size() + 1];
        double[] weights = new double[areas.length];
        Geometry left = reach(lattice, side);
        for (int n = 0; n < zones.size(); n++) {
            Geometry shape = shapes.get(n);
            Geometry rest = OverlayNGRobust.overlay(left, shape, OverlayNG.DIFFERENCE);
            areas[n + 1] = left.getArea() - rest.getArea();
            weights[n + 1] = zones.get(n).weight();
            left = rest;
            IndexedPointInAreaLocator locator = new IndexedPointInAreaLocator(shape);
            for (int v = 0; v < region.length; v++) {
                int row = v / lattice.width;
                Coordinate place = new Coordinate(v % lattice.width, row);
                if (lattice.free[v] && region[v] == 0 && locator.locate(place) != Location.EXTERIOR) {
                    region[v] = n + 1;
                }
            }
        }
        areas[0] = left.getArea();
        weights[0] = 1;
        double factor = area / Arrays.stream(areas).sum();
        for (int n = 0; n < areas.length; n++) {
            areas[n] *= factor;
        }
        double most = Si.in("greatest spacing", wish.greatestSpacing(), Units.METRE) / frame.pitchMetres;
        double[] spacings = spacings(areas, weights, length, side, most);
        double widest = Arrays.stream(spacings).max().orElse(most);
        int mostGap = Math.max((int) Math.floor(most + 1e-6), (int) Math.ceil(widest - 1e-6));
        return new Wanted(lattice, zones, shapes, region, areas, spacings, mostGap, length);
    }

    /** Spacings in inverse proportion to the weights, held between the least and the greatest, that take up the length. */
    static double[] spacings(double[] areas, double[] weights, double length, double least, double most) {
        double area = 0;
        double heaviest = 0;
        double lightest = Double.POSITIVE_INFINITY;
        for (int n = 0; n < areas.length; n++) {
            area += areas[n];
            heaviest = Math.max(heaviest, weights[n]);
            lightest = Math.min(lightest, weights[n]);
        }
        double even = area / length;
        double dense = 1 / Math.min(least, even);
        double sparse = 1 / Math.max(most, even);
        double low = sparse / heaviest;
        double high = dense / lightest;
        double[] out = new double[areas.length];
        for (int halving = 0; halving < HALVINGS; halving++) {
            double factor = (low + high) / 2;
            double laid = 0;
            for (int n = 0; n < areas.length; n++) {
                double density = Math.max(sparse, Math.min(dense, factor * weights[n]));
                out[n] = Math.rint(1e6 / density) / 1e6;
                laid += areas[n] * density;
            }
            if (laid < length) {
                low = factor;
            } else {
                high = factor;
            }
        }
        return out;
    }

    /** Whether any place of the part wants another spacing than the rest. */
    boolean matters() {
        double first = Double.NaN;
        for (int n = 0; n < areas.length; n++) {
            if (areas[n] > 1e-6) {
                if (Math.abs(spacings[n] - first) > 1e-3) {
                    return true;
                }
                first = spacings[n];
            }
        }
        return false;
    }

    /** Cable per area wanted in a zone on average, where parts of it may belong to heavier ones. */
    double density(Geometry inside) {
        Geometry left = inside;
        double sum = 0;
        for (int n = 0; n < shapes.size() && !left.isEmpty(); n++) {
            Geometry rest = OverlayNGRobust.overlay(left, shapes.get(n), OverlayNG.DIFFERENCE);
            sum += (left.getArea() - rest.getArea()) / spacings[n + 1];
            left = rest;
        }
        return (sum + left.getArea() / spacings[0]) / inside.getArea();
    }

    double even() {
        return Arrays.stream(areas).sum() / length;
    }

    double at(int node) {
        return spacings[region[node]];
    }

    /** Share of the cable that lies in regions which have more than they want, given the length in each. */
    double misplaced(double[] lengths) {
        double laid = 0;
        double sum = 0;
        for (double l : lengths) {
            laid += l;
        }
        for (int n = 0; n < areas.length; n++) {
            sum += Math.max(0, lengths[n] / Math.max(1, laid) - areas[n] / spacings[n] / length);
        }
        return sum;
    }

    /** The union of the least spacing's squares about the free junctions. */
    static Geometry reach(Lattice lattice, double side) {
        double half = side / 2;
        List<Geometry> stretches = new ArrayList<>();
        for (int y = 0; y < lattice.height; y++) {
            for (int x = 0; x < lattice.width; x++) {
                int from = x;
                while (lattice.free(x, y)) {
                    x++;
                }
                if (x > from) {
                    stretches.add(FACTORY.toGeometry(new Envelope(from - half, x - 1 + half, y - half, y + half)));
                }
            }
        }
        @Nullable Geometry union = UnaryUnionOp.union(stretches, FACTORY);
        return union == null ? FACTORY.createPolygon() : union;
    }

    /** A copy of a geometry in metres, in pitches. */
    static Geometry onLattice(Frame frame, Geometry metres) {
        Geometry copy = metres.copy();
        copy.apply(new CoordinateSequenceFilter() {
            @Override
            public void filter(CoordinateSequence sequence, int i) {
                Coordinate c = sequence.getCoordinateCopy(i);
                // Steady, so that the same zone in other units lies on the same side of a junction.
                sequence.setOrdinate(i, 0, Math.rint(frame.columnOf(c) * 1e6) / 1e6);
                sequence.setOrdinate(i, 1, Math.rint(frame.rowOf(c) * 1e6) / 1e6);
            }

            @Override
            public boolean isDone() {
                return false;
            }

            @Override
            public boolean isGeometryChanged() {
                return true;
            }
        });
        return copy;
    }
}
