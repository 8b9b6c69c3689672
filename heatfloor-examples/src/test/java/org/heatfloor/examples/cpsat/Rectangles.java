package org.heatfloor.examples.cpsat;

import java.util.ArrayList;
import java.util.List;

/** Cells of a grid gathered into few disjoint rectangles. */
final class Rectangles {

    /** Which cells. */
    interface Cells {
        boolean holds(int x, int y);
    }

    private Rectangles() {}

    /** Rectangles {@code {x0, x1, y0, y1}}, ends excluded, that hold exactly the given cells of a box. */
    static List<int[]> of(int x0, int x1, int y0, int y1, Cells cells) {
        List<int[]> out = new ArrayList<>();
        boolean[][] taken = new boolean[y1 - y0][x1 - x0];
        for (int y = y0; y < y1; y++) {
            for (int x = x0; x < x1; x++) {
                if (taken[y - y0][x - x0] || !cells.holds(x, y)) {
                    continue;
                }
                int right = x;
                while (right < x1 && !taken[y - y0][right - x0] && cells.holds(right, y)) {
                    right++;
                }
                int top = y + 1;
                while (top < y1 && whole(x, right, top, cells, taken[top - y0], x0)) {
                    top++;
                }
                for (int j = y; j < top; j++) {
                    for (int i = x; i < right; i++) {
                        taken[j - y0][i - x0] = true;
                    }
                }
                out.add(new int[] {x, right, y, top});
            }
        }
        return out;
    }

    private static boolean whole(int from, int to, int y, Cells cells, boolean[] taken, int x0) {
        for (int x = from; x < to; x++) {
            if (taken[x - x0] || !cells.holds(x, y)) {
                return false;
            }
        }
        return true;
    }
}
