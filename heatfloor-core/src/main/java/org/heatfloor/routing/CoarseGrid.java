package org.heatfloor.routing;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The grid of lattice lines a route may use: lines at least the least gap apart, so that a route on them keeps the spacing
 * by construction. Node (i, j) has the number {@code j * columns + i}.
 */
final class CoarseGrid {

    final int[] xs;
    final int[] ys;
    final int columns;
    final int rows;
    /** Bits of the edges leaving each node, {@link Lattice#EAST} and so on. */
    final byte[] edges;

    final int nodes;
    /** Gaps between neighbouring columns, and rows, in pitches. */
    final int[] wide;

    final int[] tall;
    /** Whether all four edges of the square with this lower left node exist. */
    final boolean[] whole;
    /** The lower left nodes of those squares. */
    final int[] squares;
    /** What a step along each bit adds to a node's number. */
    final int[] steps;

    CoarseGrid(Lattice lattice, int[] xs, int[] ys) {
        this.xs = xs;
        this.ys = ys;
        columns = xs.length;
        rows = ys.length;
        steps = new int[] {0, 1, columns, 0, -1, 0, 0, 0, -columns};
        edges = new byte[columns * rows];
        boolean[] used = new boolean[edges.length];
        for (int j = 0; j < rows; j++) {
            for (int i = 0; i < columns; i++) {
                int v = j * columns + i;
                if (i + 1 < columns && lattice.freeRun(xs[i], ys[j], xs[i + 1], ys[j])) {
                    edges[v] |= Lattice.EAST;
                    edges[v + 1] |= Lattice.WEST;
                    used[v] = true;
                    used[v + 1] = true;
                }
                if (j + 1 < rows && lattice.freeRun(xs[i], ys[j], xs[i], ys[j + 1])) {
                    edges[v] |= Lattice.NORTH;
                    edges[v + columns] |= Lattice.SOUTH;
                    used[v] = true;
                    used[v + columns] = true;
                }
            }
        }
        int n = 0;
        for (boolean u : used) {
            n += u ? 1 : 0;
        }
        nodes = n;
        wide = gaps(xs);
        tall = gaps(ys);
        whole = new boolean[edges.length];
        for (int v = 0; v + columns + 1 < edges.length; v++) {
            whole[v] = (edges[v] & 3) == 3
                    && (edges[v + 1] & Lattice.NORTH) != 0
                    && (edges[v + columns] & Lattice.EAST) != 0;
        }
        squares = IntStream.range(0, whole.length).filter(v -> whole[v]).toArray();
    }

    private static int[] gaps(int[] lines) {
        int[] out = new int[Math.max(0, lines.length - 1)];
        for (int i = 0; i < out.length; i++) {
            out[i] = lines[i + 1] - lines[i];
        }
        return out;
    }

    /** The node one step along a bit. */
    int step(int node, int bit) {
        return node + steps[bit];
    }

    /** Length in pitches of the edge leaving a node along a bit. */
    int length(int node, int bit) {
        int i = node % columns;
        int j = node / columns;
        return switch (bit) {
            case Lattice.EAST -> xs[i + 1] - xs[i];
            case Lattice.WEST -> xs[i] - xs[i - 1];
            case Lattice.NORTH -> ys[j + 1] - ys[j];
            default -> ys[j] - ys[j - 1];
        };
    }

    static int opposite(int bit) {
        return bit <= Lattice.NORTH ? bit << 2 : bit >> 2;
    }

    @Override
    public String toString() {
        return Arrays.toString(xs) + " x " + Arrays.toString(ys);
    }
}
