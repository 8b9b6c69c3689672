package org.heatfloor.routing;

import java.util.Arrays;

/**
 * One connected part of the channel lattice: which junctions are free and which channels between them. Lengths are in
 * pitches; node (x, y) has the number {@code y * width + x}.
 */
final class Lattice {

    static final int EAST = 1;
    static final int NORTH = 2;
    static final int WEST = 4;
    static final int SOUTH = 8;

    final int width;
    final int height;
    /** Bits of the free channels leaving each node. */
    final byte[] channels;
    /** Free nodes of this part. */
    final boolean[] free;

    private int firstColumn = Integer.MAX_VALUE;
    private int lastColumn = -1;
    private int firstRow = Integer.MAX_VALUE;
    private int lastRow = -1;
    private int nodes;

    Lattice(int width, int height, boolean[] free, byte[] channels) {
        this.width = width;
        this.height = height;
        this.free = free;
        this.channels = channels;
        for (int v = 0; v < free.length; v++) {
            if (free[v]) {
                nodes++;
                firstColumn = Math.min(firstColumn, v % width);
                lastColumn = Math.max(lastColumn, v % width);
                firstRow = Math.min(firstRow, v / width);
                lastRow = Math.max(lastRow, v / width);
            }
        }
    }

    int nodes() {
        return nodes;
    }

    int firstColumn() {
        return firstColumn;
    }

    int lastColumn() {
        return lastColumn;
    }

    int firstRow() {
        return firstRow;
    }

    int lastRow() {
        return lastRow;
    }

    boolean free(int x, int y) {
        return x >= 0 && y >= 0 && x < width && y < height && free[y * width + x];
    }

    /** Whether every channel of the straight stretch between two nodes on one line is free. */
    boolean freeRun(int x0, int y0, int x1, int y1) {
        if (!free(x0, y0) || !free(x1, y1)) {
            return false;
        }
        int dx = Integer.signum(x1 - x0);
        int dy = Integer.signum(y1 - y0);
        int bit = bit(dx, dy);
        for (int x = x0, y = y0; x != x1 || y != y1; x += dx, y += dy) {
            if ((channels[y * width + x] & bit) == 0) {
                return false;
            }
        }
        return true;
    }

    static int bit(int dx, int dy) {
        return dx > 0 ? EAST : dx < 0 ? WEST : dy > 0 ? NORTH : SOUTH;
    }

    /**
     * Area in pitch² of the union of squares of the given side centred on the free nodes. Along each axis the squares'
     * edges fall on at most two places within a pitch, so three cells a pitch hold the union exactly.
     */
    double unionOfSquares(double side) {
        double half = side / 2;
        double fraction = half - Math.floor(half);
        double[] cuts = {0, Math.min(fraction, 1 - fraction), Math.max(fraction, 1 - fraction), 1};
        int margin = (int) Math.ceil(half) + 1;
        int w = width + 2 * margin;
        int h = height + 2 * margin;
        int[][] sum = new int[height + 1][width + 1];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                sum[y + 1][x + 1] = sum[y][x + 1] + sum[y + 1][x] - sum[y][x] + (free[y * width + x] ? 1 : 0);
            }
        }
        double area = 0;
        for (int cy = 0; cy < 3; cy++) {
            double tall = cuts[cy + 1] - cuts[cy];
            for (int cx = 0; cx < 3; cx++) {
                double wide = cuts[cx + 1] - cuts[cx];
                if (tall < 1e-9 || wide < 1e-9) {
                    continue;
                }
                double midX = (cuts[cx] + cuts[cx + 1]) / 2;
                double midY = (cuts[cy] + cuts[cy + 1]) / 2;
                long covered = 0;
                for (int y = 0; y < h; y++) {
                    int y0 = clamp((int) Math.ceil(y - margin + midY - half), height);
                    int y1 = clamp((int) Math.floor(y - margin + midY + half) + 1, height);
                    for (int x = 0; x < w; x++) {
                        int x0 = clamp((int) Math.ceil(x - margin + midX - half), width);
                        int x1 = clamp((int) Math.floor(x - margin + midX + half) + 1, width);
                        if (sum[y1][x1] - sum[y0][x1] - sum[y1][x0] + sum[y0][x0] > 0) {
                            covered++;
                        }
                    }
                }
                area += covered * wide * tall;
            }
        }
        return area;
    }

    private static int clamp(int value, int most) {
        return Math.max(0, Math.min(value, most));
    }

    /**
     * The largest part in which two runs fit side by side: the nodes of free squares of the given side, as far as such squares
     * overlap one another along a side.
     *
     * @param side of the squares, in pitches
     */
    Lattice wideEnough(int side) {
        boolean[] kept = new boolean[free.length];
        byte[] bits = new byte[free.length];
        for (int y = 0; y + side < height; y++) {
            for (int x = 0; x + side < width; x++) {
                if (freeSquare(x, y, side)) {
                    keepSquare(kept, bits, x, y, side);
                }
            }
        }
        Lattice wide = new Lattice(width, height, kept, bits);
        int[] numbers = parts(width, height, kept, bits);
        int[] sizes = new int[free.length + 1];
        int largest = 0;
        for (int n : numbers) {
            if (n >= 0 && ++sizes[n] > sizes[largest]) {
                largest = n;
            }
        }
        return wide.part(numbers, largest);
    }

    private boolean freeSquare(int x, int y, int side) {
        for (int t = 0; t <= side; t++) {
            if (!freeRun(x, y + t, x + side, y + t) || !freeRun(x + t, y, x + t, y + side)) {
                return false;
            }
        }
        return true;
    }

    private void keepSquare(boolean[] kept, byte[] bits, int x, int y, int side) {
        for (int j = y; j <= y + side; j++) {
            for (int i = x; i <= x + side; i++) {
                int v = j * width + i;
                kept[v] = true;
                if (i < x + side) {
                    bits[v] |= EAST;
                    bits[v + 1] |= WEST;
                }
                if (j < y + side) {
                    bits[v] |= NORTH;
                    bits[v + width] |= SOUTH;
                }
            }
        }
    }

    /** Numbers of the connected part each free node belongs to, largest part first; -1 for blocked nodes. */
    static int[] parts(int width, int height, boolean[] free, byte[] channels) {
        int[] part = new int[free.length];
        Arrays.fill(part, -1);
        int[] queue = new int[free.length];
        int count = 0;
        for (int seed = 0; seed < free.length; seed++) {
            if (!free[seed] || part[seed] >= 0) {
                continue;
            }
            int head = 0;
            int tail = 0;
            queue[tail++] = seed;
            part[seed] = count;
            while (head < tail) {
                int v = queue[head++];
                int[] next = {v + 1, v + width, v - 1, v - width};
                for (int d = 0; d < 4; d++) {
                    if ((channels[v] & (1 << d)) != 0 && part[next[d]] < 0) {
                        part[next[d]] = count;
                        queue[tail++] = next[d];
                    }
                }
            }
            count++;
        }
        return part;
    }

    /** The part of this lattice with the given number of a {@link #parts} result. */
    Lattice part(int[] parts, int number) {
        boolean[] kept = new boolean[free.length];
        byte[] bits = new byte[free.length];
        for (int v = 0; v < free.length; v++) {
            if (parts[v] == number) {
                kept[v] = true;
                bits[v] = channels[v];
            }
        }
        return new Lattice(width, height, kept, bits);
    }
}
