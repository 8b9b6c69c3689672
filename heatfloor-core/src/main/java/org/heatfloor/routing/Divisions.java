package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Ways to cut a part of the floor into one piece a cable, those that promise fair and simple laying first. */
final class Divisions {

    private static final int MOST_DEPTHS = 3;
    /** Turns that an unevenness of one percent is worth. */
    private static final double PERCENT = 2;

    private static final double[] FEET = {0.75, 0.5, 0.35};

    private final Lattice whole;
    private final double[] lengths;
    private final int gap;
    private final double side;
    private final double evenPitches;

    /**
     * A task.
     *
     * @param whole the part of the floor
     * @param lengths of the cables
     * @param gap between pieces, in pitches
     * @param side of the squares, in pitches
     * @param evenPitches even spacing of all cables together
     */
    Divisions(Lattice whole, double[] lengths, int gap, double side, double evenPitches) {
        this.whole = whole;
        this.lengths = lengths;
        this.gap = gap;
        this.side = side;
        this.evenPitches = evenPitches;
    }

    /** Straight cuts along columns or rows: slices, and halves of halves. */
    List<Cut> straight() {
        List<Cut> out = new ArrayList<>();
        for (boolean falling : orders()) {
            add(out, falling, (w, l) -> Division.inOrder(w, l, gap, side, (x, y) -> x));
            add(out, falling, (w, l) -> Division.inOrder(w, l, gap, side, (x, y) -> y));
            for (int choice = 0; lengths.length > 2 && choice < 1 << MOST_DEPTHS; choice++) {
                boolean[] axes = new boolean[MOST_DEPTHS];
                for (int d = 0; d < MOST_DEPTHS; d++) {
                    axes[d] = (choice >> d & 1) == 0;
                }
                // Of choices that differ below the deepest cut only the first is needed.
                if (lengths.length > 4 || !(axes[2] ^ axes[1])) {
                    add(out, falling, (w, l) -> Division.halving(w, l, gap, side, axes));
                }
            }
        }
        out.sort(Comparator.comparingDouble(c -> price(c.division())));
        return out;
    }

    /**
     * Cuts for short cold leads: slices that stand on feet drawn together at the start, and wedges about the start.
     *
     * @param column of the start
     * @param row of the start
     * @param inColumns direction into the room there, in columns
     * @param inRows the same in rows
     */
    List<Cut> aboutStart(double column, double row, double inColumns, double inRows) {
        List<Cut> out = new ArrayList<>();
        boolean acrossColumns = Math.abs(inColumns) < Math.abs(inRows);
        for (boolean falling : orders()) {
            for (double foot : FEET) {
                for (int height : new int[] {8 * gap, 14 * gap}) {
                    Division.Sweep sweep = (x, y) -> {
                        double along = acrossColumns ? x - column : y - row;
                        double off = Math.abs(acrossColumns ? y - row : x - column);
                        // Whole steps along the wall keep the cuts straight.
                        return off < height ? Math.rint(along / foot) : Math.rint(along);
                    };
                    add(out, falling, (w, l) -> Division.inOrder(w, l, gap, side, sweep));
                }
            }
            Division.Sweep wedge = (x, y) -> {
                double cross = inColumns * (y - row) - inRows * (x - column);
                double dot = inColumns * (x - column) + inRows * (y - row);
                return Math.rint(Math.atan2(cross, dot) * 500);
            };
            add(out, falling, (w, l) -> Division.inOrder(w, l, gap, side, wedge));
        }
        out.sort(Comparator.comparingDouble(c -> price(c.division())));
        return out;
    }

    private boolean[] orders() {
        boolean alike = Arrays.stream(lengths).allMatch(l -> l == lengths[0]);
        return alike ? new boolean[] {false} : new boolean[] {false, true};
    }

    /** A way to cut a floor for cables of given lengths. */
    interface Cutter {
        Optional<Division> cut(Lattice whole, double[] lengths);
    }

    /** A division and the way it was cut. */
    record Cut(Division division, Cutter cutter) {}

    /** Cuts with the cables from one end or from the other; the pieces come back in the cables' order. */
    private void add(List<Cut> out, boolean falling, Cutter cutter) {
        Cutter ordered = falling ? (w, l) -> cutter.cut(w, turned(l)).map(Divisions::turned) : cutter;
        Optional<Division> found = ordered.cut(whole, lengths);
        if (found.isPresent() && out.stream().noneMatch(c -> same(c.division(), found.orElseThrow()))) {
            out.add(new Cut(found.orElseThrow(), ordered));
        }
    }

    private static double[] turned(double[] values) {
        double[] out = new double[values.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = values[out.length - 1 - i];
        }
        return out;
    }

    private static Division turned(Division division) {
        List<Lattice> pieces = new ArrayList<>(division.pieces());
        Collections.reverse(pieces);
        return new Division(pieces, turned(division.areas()));
    }

    private static boolean same(Division a, Division b) {
        for (int i = 0; i < a.pieces().size(); i++) {
            if (!Arrays.equals(a.pieces().get(i).free, b.pieces().get(i).free)) {
                return false;
            }
        }
        return true;
    }

    /** Turns that rows along the longer side of each piece would take, and the unevenness in turns. */
    double price(Division division) {
        double turns = 0;
        for (Lattice piece : division.pieces()) {
            int across = Math.min(piece.lastColumn() - piece.firstColumn(), piece.lastRow() - piece.firstRow());
            turns += 2 * across / evenPitches;
        }
        return turns + 100 * PERCENT * (division.unevenness(lengths) - 1);
    }
}
