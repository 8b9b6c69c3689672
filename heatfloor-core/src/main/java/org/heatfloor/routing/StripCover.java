package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Fewest rows and columns that together hold every given crossing: a least vertex cover from a greatest matching. */
final class StripCover {

    private final List<List<Integer>> columnsOf = new ArrayList<>();
    private final List<List<Integer>> rowsOf = new ArrayList<>();
    private final int[] columnMatched;
    private final int[] rowMatched;
    private boolean matched;

    StripCover(int rows, int columns) {
        for (int r = 0; r < rows; r++) {
            columnsOf.add(new ArrayList<>());
        }
        for (int c = 0; c < columns; c++) {
            rowsOf.add(new ArrayList<>());
        }
        columnMatched = new int[rows];
        rowMatched = new int[columns];
        Arrays.fill(columnMatched, -1);
        Arrays.fill(rowMatched, -1);
    }

    /** A crossing that must lie on a chosen row or column. */
    void add(int row, int column) {
        columnsOf.get(row).add(column);
        rowsOf.get(column).add(row);
    }

    /**
     * A least cover.
     *
     * @param fromRows which of the two extreme covers: the one with most columns, or with most rows
     * @return whether each row, then whether each column, is chosen
     */
    boolean[][] least(boolean fromRows) {
        if (!matched) {
            for (int row = 0; row < columnMatched.length; row++) {
                augment(row);
            }
            matched = true;
        }
        boolean[] near = reached(fromRows);
        boolean[] far = new boolean[fromRows ? rowMatched.length : columnMatched.length];
        List<List<Integer>> across = fromRows ? columnsOf : rowsOf;
        for (int n = 0; n < near.length; n++) {
            for (int f : near[n] ? across.get(n) : List.<Integer>of()) {
                far[f] = true;
            }
        }
        for (int n = 0; n < near.length; n++) {
            near[n] = !near[n];
        }
        return fromRows ? new boolean[][] {near, far} : new boolean[][] {far, near};
    }

    /** Lines of one kind that alternating paths reach from its unmatched lines. */
    private boolean[] reached(boolean fromRows) {
        List<List<Integer>> across = fromRows ? columnsOf : rowsOf;
        int[] out = fromRows ? columnMatched : rowMatched;
        int[] back = fromRows ? rowMatched : columnMatched;
        boolean[] seen = new boolean[out.length];
        int[] queue = new int[out.length];
        int tail = 0;
        for (int n = 0; n < out.length; n++) {
            if (out[n] < 0) {
                seen[n] = true;
                queue[tail++] = n;
            }
        }
        for (int head = 0; head < tail; head++) {
            for (int f : across.get(queue[head])) {
                int next = back[f];
                if (next >= 0 && !seen[next]) {
                    seen[next] = true;
                    queue[tail++] = next;
                }
            }
        }
        return seen;
    }

    private void augment(int row) {
        int[] cameFrom = new int[rowMatched.length];
        Arrays.fill(cameFrom, -1);
        int[] queue = new int[columnMatched.length];
        int tail = 0;
        queue[tail++] = row;
        for (int head = 0; head < tail; head++) {
            for (int column : columnsOf.get(queue[head])) {
                if (cameFrom[column] >= 0) {
                    continue;
                }
                cameFrom[column] = queue[head];
                if (rowMatched[column] < 0) {
                    flip(column, cameFrom);
                    return;
                }
                queue[tail++] = rowMatched[column];
            }
        }
    }

    private void flip(int end, int[] cameFrom) {
        int column = end;
        while (column >= 0) {
            int row = cameFrom[column];
            int next = columnMatched[row];
            columnMatched[row] = column;
            rowMatched[column] = row;
            column = next;
        }
    }
}
