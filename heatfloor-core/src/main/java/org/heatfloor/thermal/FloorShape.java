package org.heatfloor.thermal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** A polygon on the floor with holes; a point is inside when it is inside an odd number of rings. */
public final class FloorShape {

    private static final int MOST_CORNERS = 10_000;

    private final List<double[][]> rings;

    private FloorShape(List<double[][]> rings) {
        this.rings = rings;
    }

    /**
     * A polygon with holes.
     *
     * @param outline corners of the outline, {@code {x, y}}; the closing corner may be repeated or not
     * @param holes corners of each hole
     * @param unit unit of the corners' numbers
     * @return the shape
     * @throws IllegalArgumentException if a ring has fewer than three corners or more than 10000, crosses or touches itself or encloses nothing, or
     *     a corner is not a pair of finite numbers
     */
    public static FloorShape of(double[][] outline, List<double[][]> holes, Unit<Length> unit) {
        List<double[][]> rings = new ArrayList<>();
        rings.add(ring("outline", outline, unit));
        for (double[][] hole : holes) {
            rings.add(ring("hole", hole, unit));
        }
        return new FloorShape(List.copyOf(rings));
    }

    private static double[][] ring(String what, double[][] corners, Unit<Length> unit) {
        double[][] ring = metres(what, corners, 3, unit);
        if (!(ring.length <= MOST_CORNERS && RingChecks.simple(ring))) {
            throw new IllegalArgumentException(what + ": " + ring.length + " corners were given; a ring of at most "
                    + MOST_CORNERS + " that encloses an area and neither crosses nor touches itself is expected");
        }
        return ring;
    }

    /** Where a path first leaves the shape by more than a micrometre; empty when it stays inside. */
    Optional<double[]> leaves(double[][] path) {
        return RingChecks.leaves(rings, path);
    }

    /**
     * A rectangle along the axes.
     *
     * @param x0 left
     * @param y0 lower
     * @param x1 right
     * @param y1 upper
     * @return the shape
     * @throws IllegalArgumentException if it is not wider and higher than 0
     */
    public static FloorShape rectangle(
            Quantity<Length> x0, Quantity<Length> y0, Quantity<Length> x1, Quantity<Length> y1) {
        double left = Si.in("rectangle left", x0, Units.METRE);
        double lower = Si.in("rectangle lower", y0, Units.METRE);
        double right = Si.in("rectangle right", x1, Units.METRE);
        double upper = Si.in("rectangle upper", y1, Units.METRE);
        if (!(right > left && upper > lower)) {
            throw new IllegalArgumentException("rectangle: " + x0 + " " + y0 + " to " + x1 + " " + y1
                    + " was given; right of left and upper above lower are expected");
        }
        return of(
                new double[][] {{left, lower}, {right, lower}, {right, upper}, {left, upper}}, List.of(), Units.METRE);
    }

    /**
     * Area of the outline less the holes.
     *
     * @return the area
     */
    public Quantity<Area> area() {
        return Amounts.squareMetres(areaSquareMetres());
    }

    double areaSquareMetres() {
        double sum = Math.abs(signedArea(rings.get(0)));
        for (double[][] hole : rings.subList(1, rings.size())) {
            sum -= Math.abs(signedArea(hole));
        }
        return sum;
    }

    /** Whether a circle of a radius fits inside the outline. */
    boolean holdsCircle(double radiusMetres) {
        return RingChecks.holdsCircle(rings.get(0), bounds(), radiusMetres);
    }

    /** Least x, least y, greatest x, greatest y of the outline. */
    double[] bounds() {
        double[] box = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        for (double[] corner : rings.get(0)) {
            box[0] = Math.min(box[0], corner[0]);
            box[1] = Math.min(box[1], corner[1]);
            box[2] = Math.max(box[2], corner[0]);
            box[3] = Math.max(box[3], corner[1]);
        }
        return box;
    }

    /** The nodes inside, row by row. A node on the rim (within 1 nm) counts as inside when it is on the lower or left. */
    boolean[][] mask(FieldGrid grid) {
        boolean[][] inside = new boolean[grid.ny() + 1][grid.nx() + 1];
        double nudge = 1e-9;
        for (int j = 0; j <= grid.ny(); j++) {
            double y = j == grid.ny() ? grid.y(j) - nudge : grid.y(j) + nudge;
            double[] crossings = crossings(y);
            for (int c = 0; c + 1 < crossings.length; c += 2) {
                int from = (int) Math.ceil((crossings[c] - nudge - grid.x0()) / grid.stepX());
                int to = (int) Math.floor((crossings[c + 1] + nudge - grid.x0()) / grid.stepX());
                for (int i = Math.max(0, from); i <= Math.min(grid.nx(), to); i++) {
                    inside[j][i] = true;
                }
            }
        }
        return inside;
    }

    boolean contains(double x, double y) {
        double[] crossings = crossings(y);
        int left = 0;
        for (double crossing : crossings) {
            if (crossing <= x) {
                left++;
            }
        }
        return left % 2 == 1;
    }

    private double[] crossings(double y) {
        double[] found = new double[0];
        for (double[][] ring : rings) {
            for (int i = 0; i < ring.length; i++) {
                double[] a = ring[i];
                double[] b = ring[(i + 1) % ring.length];
                if ((a[1] > y) != (b[1] > y)) {
                    found = Arrays.copyOf(found, found.length + 1);
                    found[found.length - 1] = a[0] + (y - a[1]) / (b[1] - a[1]) * (b[0] - a[0]);
                }
            }
        }
        Arrays.sort(found);
        return found;
    }

    private static double signedArea(double[][] ring) {
        double twice = 0;
        for (int i = 0; i < ring.length; i++) {
            double[] a = ring[i];
            double[] b = ring[(i + 1) % ring.length];
            twice += a[0] * b[1] - b[0] * a[1];
        }
        return twice / 2;
    }

    /** Corners in a unit as a copy in metres. */
    static double[][] metres(String what, double[][] corners, int least, Unit<Length> unit) {
        UnitConverter converter = unit.getConverterTo(Units.METRE);
        double[][] copy = copy(what, corners, least);
        for (double[] corner : copy) {
            corner[0] = converter.convert(corner[0]);
            corner[1] = converter.convert(corner[1]);
        }
        return copy;
    }

    static double[][] copy(String what, double[][] corners, int least) {
        if (corners.length < least || corners.length > 1_000_000) {
            throw new IllegalArgumentException(
                    what + ": " + corners.length + " corners were given; " + least + " to 1000000 are expected");
        }
        double[][] copy = new double[corners.length][];
        for (int i = 0; i < corners.length; i++) {
            double[] corner = corners[i];
            if (corner.length < 2 || !Double.isFinite(corner[0]) || !Double.isFinite(corner[1])) {
                throw new IllegalArgumentException(what + ": corner " + i + " is " + Arrays.toString(corner)
                        + "; two finite numbers are expected");
            }
            copy[i] = new double[] {corner[0], corner[1]};
        }
        return copy;
    }
}
