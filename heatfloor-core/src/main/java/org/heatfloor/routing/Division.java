package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One connected part of the floor cut into pieces, one a cable, whose areas are in proportion to the cables' lengths. Two
 * junctions of different pieces are at least a gap of whole pitches apart, in the larger of |dx| and |dy|, so that every
 * cable may use all of its piece. What a cut leaves over between and beside the pieces belongs to none.
 */
final class Division {

    /** Floor that a piece may lose because a cut severs it. */
    private static final double MOST_SEVERED = 0.03;

    private final List<Lattice> pieces;
    private final double[] areas;

    Division(List<Lattice> pieces, double[] areas) {
        this.pieces = List.copyOf(pieces);
        this.areas = areas;
    }

    /** Disjoint and connected, in the order of the lengths. */
    List<Lattice> pieces() {
        return pieces;
    }

    /** Areas of the unions of squares about the pieces' junctions, in pitch². */
    double[] areas() {
        return areas;
    }

    /** Order in which a sweep goes over the junctions; whole numbers make straight cuts. */
    interface Sweep {
        double at(int x, int y);
    }

    /** Widest over closest even spacing of the pieces; 1 is fair. */
    double unevenness(double[] lengths) {
        double widest = 0;
        double closest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < areas.length; i++) {
            widest = Math.max(widest, areas[i] / lengths[i]);
            closest = Math.min(closest, areas[i] / lengths[i]);
        }
        return widest / closest;
    }

    /**
     * The pieces one after the other in the order of a sweep.
     *
     * @param whole the part of the floor
     * @param lengths of the cables; only their proportions count
     * @param gap between pieces, in pitches
     * @param side of the squares, in pitches
     * @param sweep the order
     * @return the division; empty if a cut severs a piece or leaves nothing of it
     */
    static Optional<Division> inOrder(Lattice whole, double[] lengths, int gap, double side, Sweep sweep) {
        List<Lattice> pieces = new ArrayList<>();
        Lattice rest = whole;
        for (int i = 0; i + 1 < lengths.length; i++) {
            double left = Arrays.stream(lengths, i, lengths.length).sum();
            Optional<Lattice[]> cut = cut(rest, lengths[i] / left, gap, side, sweep);
            if (cut.isEmpty()) {
                return Optional.empty();
            }
            pieces.add(cut.orElseThrow()[0]);
            rest = cut.orElseThrow()[1];
        }
        pieces.add(rest);
        return Optional.of(of(pieces, side));
    }

    /**
     * The pieces by halving again and again, the axis of each depth given.
     *
     * @param alongColumns for each depth, whether the cut runs along a column; the last holds for all deeper ones
     */
    static Optional<Division> halving(Lattice whole, double[] lengths, int gap, double side, boolean[] alongColumns) {
        List<Lattice> pieces = new ArrayList<>();
        return halve(whole, lengths, gap, side, alongColumns, 0, pieces)
                ? Optional.of(of(pieces, side))
                : Optional.empty();
    }

    // As deep as the logarithm of the number of cables.
    private static boolean halve(
            Lattice whole, double[] lengths, int gap, double side, boolean[] axes, int depth, List<Lattice> out) {
        if (lengths.length == 1) {
            out.add(whole);
            return true;
        }
        int first = lengths.length / 2;
        double[] low = Arrays.copyOf(lengths, first);
        double[] high = Arrays.copyOfRange(lengths, first, lengths.length);
        double share = Arrays.stream(low).sum() / Arrays.stream(lengths).sum();
        boolean columns = axes[Math.min(depth, axes.length - 1)];
        Optional<Lattice[]> cut = cut(whole, share, gap, side, (x, y) -> columns ? x : y);
        return cut.isPresent()
                && halve(cut.orElseThrow()[0], low, gap, side, axes, depth + 1, out)
                && halve(cut.orElseThrow()[1], high, gap, side, axes, depth + 1, out);
    }

    /** A given set of junctions as first piece and the rest as second; empty where either is severed or nothing is left. */
    static Optional<Lattice[]> cutOut(Lattice whole, boolean[] inside, int gap) {
        return separated(whole, inside, gap);
    }

    static Division of(List<Lattice> pieces, double side) {
        double[] areas = pieces.stream().mapToDouble(p -> area(p, side)).toArray();
        return new Division(pieces, areas);
    }

    /**
     * The cut at which the first piece's share of both areas comes nearest to the one wanted: from the place with that share
     * of the junctions, step by step to where the share of the areas gets no nearer.
     */
    private static Optional<Lattice[]> cut(Lattice whole, double share, int gap, double side, Sweep sweep) {
        double[] order = new double[whole.free.length];
        double[] values = new double[whole.nodes()];
        int n = 0;
        for (int v = 0; v < order.length; v++) {
            if (whole.free[v]) {
                order[v] = sweep.at(v % whole.width, v / whole.width);
                values[n++] = order[v];
            }
        }
        Arrays.sort(values);
        double[] places = Arrays.stream(values).distinct().toArray();
        int guess = Arrays.binarySearch(places, values[(int) Math.min(n - 1.0, share * n)]) - gap / 2;
        int place = Math.max(0, Math.min(guess, places.length - 1));
        Optional<Lattice[]> best = cutAt(whole, order, places[place], gap);
        double off = off(best, share, side);
        for (int step : new int[] {1, -1}) {
            for (int next = place + step; next >= 0 && next < places.length; next += step) {
                Optional<Lattice[]> cut = cutAt(whole, order, places[next], gap);
                double nextOff = off(cut, share, side);
                if (nextOff > off + 1e-12 && Math.abs(next - place) > 1) {
                    break;
                }
                if (nextOff < off - 1e-12) {
                    off = nextOff;
                    best = cut;
                }
                if (Math.abs(next - place) > 3 * gap) {
                    break;
                }
            }
        }
        return best;
    }

    private static double off(Optional<Lattice[]> cut, double share, double side) {
        return cut.map(c -> Math.abs(shareOf(c, side) - share)).orElse(Double.POSITIVE_INFINITY);
    }

    private static double shareOf(Lattice[] cut, double side) {
        double first = area(cut[0], side);
        return first / (first + area(cut[1], side));
    }

    /** Area of the union of squares, reckoned on the piece's own rows and columns alone. */
    private static double area(Lattice piece, double side) {
        if (piece.nodes() == 0) {
            return 0;
        }
        int width = piece.lastColumn() - piece.firstColumn() + 1;
        int height = piece.lastRow() - piece.firstRow() + 1;
        boolean[] free = new boolean[width * height];
        for (int y = 0; y < height; y++) {
            System.arraycopy(
                    piece.free, (y + piece.firstRow()) * piece.width + piece.firstColumn(), free, y * width, width);
        }
        return new Lattice(width, height, free, new byte[free.length]).unionOfSquares(side);
    }

    private static Optional<Lattice[]> cutAt(Lattice whole, double[] order, double place, int gap) {
        boolean[] inside = new boolean[order.length];
        for (int v = 0; v < order.length; v++) {
            inside[v] = whole.free[v] && order[v] <= place;
        }
        return separated(whole, inside, gap);
    }

    private static Optional<Lattice[]> separated(Lattice whole, boolean[] inside, int gap) {
        Optional<Lattice> first = largest(whole, inside);
        if (first.isEmpty()) {
            return Optional.empty();
        }
        boolean[] near = grown(first.orElseThrow(), gap - 1);
        boolean[] beyond = new boolean[inside.length];
        for (int v = 0; v < beyond.length; v++) {
            beyond[v] = whole.free[v] && !inside[v] && !near[v];
        }
        return largest(whole, beyond).map(second -> new Lattice[] {first.orElseThrow(), second});
    }

    /** Junctions within a distance of a piece, in the larger of |dx| and |dy|. */
    static boolean[] grown(Lattice piece, int reach) {
        boolean[] rows = new boolean[piece.free.length];
        for (int v = 0; v < rows.length; v++) {
            int x = v % piece.width;
            for (int d = Math.max(-reach, -x); piece.free[v] && d <= Math.min(reach, piece.width - 1 - x); d++) {
                rows[v + d] = true;
            }
        }
        boolean[] out = new boolean[rows.length];
        for (int v = 0; v < rows.length; v++) {
            int y = v / piece.width;
            for (int d = Math.max(-reach, -y); rows[v] && d <= Math.min(reach, piece.height - 1 - y); d++) {
                out[v + d * piece.width] = true;
            }
        }
        return out;
    }

    /** The largest connected piece of some junctions; empty if it is not nearly all of them. */
    static Optional<Lattice> largest(Lattice whole, boolean[] kept) {
        byte[] channels = channelsWithin(whole, kept);
        int[] numbers = Lattice.parts(whole.width, whole.height, kept, channels);
        int[] counts = new int[1 + Arrays.stream(numbers).max().orElse(-1) + 1];
        int all = 0;
        for (int number : numbers) {
            if (number >= 0) {
                counts[number]++;
                all++;
            }
        }
        int best = 0;
        for (int i = 1; i < counts.length; i++) {
            best = counts[i] > counts[best] ? i : best;
        }
        if (all == 0 || counts[best] < (1 - MOST_SEVERED) * all) {
            return Optional.empty();
        }
        boolean[] free = new boolean[kept.length];
        for (int v = 0; v < free.length; v++) {
            free[v] = numbers[v] == best;
        }
        return Optional.of(new Lattice(whole.width, whole.height, free, channelsWithin(whole, free)));
    }

    /** The channels of a lattice that join two of the junctions kept. */
    static byte[] channelsWithin(Lattice whole, boolean[] kept) {
        int[] next = {1, whole.width, -1, -whole.width};
        byte[] out = new byte[kept.length];
        for (int v = 0; v < kept.length; v++) {
            for (int d = 0; kept[v] && d < 4; d++) {
                if ((whole.channels[v] & (1 << d)) != 0 && kept[v + next[d]]) {
                    out[v] |= (byte) (1 << d);
                }
            }
        }
        return out;
    }
}
