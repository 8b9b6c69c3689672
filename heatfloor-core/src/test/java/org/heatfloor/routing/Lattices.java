package org.heatfloor.routing;

import java.util.Arrays;
import java.util.SplittableRandom;

/** Free lattices for tests. */
final class Lattices {

    private Lattices() {}

    static Lattice rectangle(int columns, int rows) {
        boolean[] free = new boolean[columns * rows];
        Arrays.fill(free, true);
        return of(columns, rows, free);
    }

    /** A rectangle with a few rectangular holes. */
    static Lattice withHoles(int columns, int rows, SplittableRandom random) {
        boolean[] free = new boolean[columns * rows];
        Arrays.fill(free, true);
        for (int hole = random.nextInt(4); hole > 0; hole--) {
            int w = 1 + random.nextInt(Math.max(1, columns / 3));
            int h = 1 + random.nextInt(Math.max(1, rows / 3));
            int x0 = random.nextInt(columns - w + 1);
            int y0 = random.nextInt(rows - h + 1);
            for (int y = y0; y < y0 + h; y++) {
                Arrays.fill(free, y * columns + x0, y * columns + x0 + w, false);
            }
        }
        return of(columns, rows, free);
    }

    private static Lattice of(int columns, int rows, boolean[] free) {
        byte[] channels = new byte[free.length];
        for (int v = 0; v < free.length; v++) {
            if (free[v] && v % columns + 1 < columns && free[v + 1]) {
                channels[v] |= Lattice.EAST;
                channels[v + 1] |= Lattice.WEST;
            }
            if (free[v] && v + columns < free.length && free[v + columns]) {
                channels[v] |= Lattice.NORTH;
                channels[v + columns] |= Lattice.SOUTH;
            }
        }
        return new Lattice(columns, rows, free, channels);
    }

    static int[] lines(int count, int gap) {
        int[] lines = new int[count];
        for (int i = 0; i < count; i++) {
            lines[i] = i * gap;
        }
        return lines;
    }
}
