package org.heatfloor.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import java.util.function.IntPredicate;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/**
 * Joints between pieces of membrane as seams of a grid: which channels cross them. A joint that leaves the channel lines is
 * no seam: there the membrane ends, as at a movement joint, which no cable crosses.
 */
final class JointSeams {

    /** A joint this far from a channel line, in pitches, is on it. */
    static final double ON_LINE = 0.01;

    private final ChannelGrid grid;
    private final Coordinate zero;
    private final double alongX;
    private final double alongY;
    private final double pitchMetres;

    private static final class Stretch {
        private double from = Double.POSITIVE_INFINITY;
        private double to = Double.NEGATIVE_INFINITY;
        private int crossing;
        private final List<double[]> pieces = new ArrayList<>();
    }

    JointSeams(ChannelGrid grid) {
        this.grid = grid;
        this.pitchMetres = Si.positive("stud pitch", grid.lattice().pitch(), Units.METRE);
        this.zero = grid.junction(0, 0);
        Coordinate next = grid.junction(1, 0);
        this.alongX = (next.x - zero.x) / pitchMetres;
        this.alongY = (next.y - zero.y) / pitchMetres;
    }

    List<Seam> of(List<LineString> joints) {
        Map<Integer, Stretch> columns = new TreeMap<>();
        Map<Integer, Stretch> rows = new TreeMap<>();
        for (LineString joint : joints) {
            Coordinate[] c = joint.getCoordinates();
            for (int i = 0; i + 1 < c.length; i++) {
                add(c[i], c[i + 1], columns, rows);
            }
        }
        List<Seam> out = new ArrayList<>();
        columns.forEach((column, s) -> out.add(seam("column " + column, s, at -> place(column, at))));
        rows.forEach((row, s) -> out.add(seam("row " + row, s, at -> place(at, row))));
        return out;
    }

    private static Seam seam(String where, Stretch stretch, DoubleFunction<Coordinate> place) {
        List<LineString> pieces = new ArrayList<>();
        for (double[] piece : stretch.pieces) {
            pieces.add(SheetSeams.line(place.apply(piece[0]), place.apply(piece[1])));
        }
        LineString line = SheetSeams.line(place.apply(stretch.from), place.apply(stretch.to));
        return new Seam("seam along " + where, line, stretch.crossing, pieces);
    }

    private void add(Coordinate a, Coordinate b, Map<Integer, Stretch> columns, Map<Integer, Stretch> rows) {
        double columnA = column(a);
        double rowA = row(a);
        if (isOne(columnA, column(b))) {
            int column = (int) Math.round(columnA);
            add(columns.computeIfAbsent(column, k -> new Stretch()), rowA, row(b), row -> isFree(column, row, true));
        } else if (isOne(rowA, row(b))) {
            int row = (int) Math.round(rowA);
            add(
                    rows.computeIfAbsent(row, k -> new Stretch()),
                    columnA,
                    column(b),
                    column -> isFree(column, row, false));
        }
    }

    private static void add(Stretch stretch, double from, double to, IntPredicate free) {
        double low = Math.min(from, to);
        double high = Math.max(from, to);
        stretch.from = Math.min(stretch.from, low);
        stretch.to = Math.max(stretch.to, high);
        stretch.pieces.add(new double[] {low, high});
        for (int i = (int) Math.ceil(low - ON_LINE); i < high - ON_LINE; i++) {
            stretch.crossing += free.test(i) ? 1 : 0;
        }
    }

    private boolean isFree(int column, int row, boolean east) {
        return east
                ? grid.isFreeEast(column - 1, row) && grid.isFreeEast(column, row)
                : grid.isFreeNorth(column, row - 1) && grid.isFreeNorth(column, row);
    }

    private static boolean isOne(double a, double b) {
        return Math.abs(a - b) < ON_LINE && Math.abs(a - Math.rint(a)) < ON_LINE;
    }

    private double column(Coordinate c) {
        return ((c.x - zero.x) * alongX + (c.y - zero.y) * alongY) / pitchMetres;
    }

    private double row(Coordinate c) {
        return ((c.y - zero.y) * alongX - (c.x - zero.x) * alongY) / pitchMetres;
    }

    private Coordinate place(double column, double row) {
        double u = column * pitchMetres;
        double v = row * pitchMetres;
        return new Coordinate(zero.x + u * alongX - v * alongY, zero.y + u * alongY + v * alongX);
    }
}
