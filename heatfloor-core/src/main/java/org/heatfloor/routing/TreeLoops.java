package org.heatfloor.routing;

/**
 * Loops round a spanning tree of 2 × 2 blocks (Y. Gabriely, E. Rimon, Spanning-tree based coverage of continuous areas by
 * a mobile robot, Annals of Mathematics and Artificial Intelligence 31 (2001); from memory). The tree is a comb: teeth
 * along the rows or the columns, joined by a spine.
 */
final class TreeLoops {

    private TreeLoops() {}

    /**
     * The loop round one comb.
     *
     * @param grid the coarse grid
     * @param offsetX 0 or 1: first column of blocks
     * @param offsetY 0 or 1: first row of blocks
     * @param alongRows whether the teeth run along the rows
     * @param spine where across the teeth the spine is preferred, 0 to 1
     * @return edges used at each node; all zero if there is no block
     */
    static byte[] comb(CoarseGrid grid, int offsetX, int offsetY, boolean alongRows, double spine) {
        int across = (grid.columns - offsetX) / 2;
        int up = (grid.rows - offsetY) / 2;
        byte[] used = new byte[grid.edges.length];
        if (across <= 0 || up <= 0) {
            return used;
        }
        int[] parent = new int[across * up];
        int[] size = new int[parent.length];
        boolean[] block = new boolean[parent.length];
        for (int b = 0; b < parent.length; b++) {
            parent[b] = b;
            int v = corner(grid, b, across, offsetX, offsetY);
            block[b] = (grid.edges[v] & 3) == 3
                    && (grid.edges[v + 1] & Lattice.NORTH) != 0
                    && (grid.edges[v + grid.columns] & Lattice.EAST) != 0;
            size[b] = block[b] ? 1 : 0;
        }
        boolean[] joinedEast = new boolean[parent.length];
        boolean[] joinedNorth = new boolean[parent.length];
        joinAll(grid, parent, size, block, across, offsetX, offsetY, alongRows, joinedEast, joinedNorth);
        int extent = alongRows ? across : up;
        int wanted = (int) Math.round(spine * (extent - 1));
        for (int distance = 0; distance < extent; distance++) {
            for (int side = -1; side <= 1; side += 2) {
                int line = wanted + side * distance;
                if (line < 0 || line >= extent || (distance == 0 && side > 0)) {
                    continue;
                }
                for (int b = 0; b < parent.length; b++) {
                    if ((alongRows ? b % across : b / across) == line) {
                        join(
                                grid,
                                parent,
                                size,
                                block,
                                across,
                                offsetX,
                                offsetY,
                                b,
                                !alongRows,
                                joinedEast,
                                joinedNorth);
                    }
                }
            }
        }
        int largest = -1;
        for (int b = 0; b < parent.length; b++) {
            if (block[b] && (largest < 0 || size[root(parent, b)] > size[largest])) {
                largest = root(parent, b);
            }
        }
        for (int b = 0; b < parent.length; b++) {
            if (!block[b] || root(parent, b) != largest) {
                continue;
            }
            int v = corner(grid, b, across, offsetX, offsetY);
            square(grid, used, v);
            if (joinedEast[b]) {
                square(grid, used, v + 1);
            }
            if (joinedNorth[b]) {
                square(grid, used, v + grid.columns);
            }
        }
        return used;
    }

    private static void joinAll(
            CoarseGrid grid,
            int[] parent,
            int[] size,
            boolean[] block,
            int across,
            int offsetX,
            int offsetY,
            boolean east,
            boolean[] joinedEast,
            boolean[] joinedNorth) {
        for (int b = 0; b < parent.length; b++) {
            join(grid, parent, size, block, across, offsetX, offsetY, b, east, joinedEast, joinedNorth);
        }
    }

    private static void join(
            CoarseGrid grid,
            int[] parent,
            int[] size,
            boolean[] block,
            int across,
            int offsetX,
            int offsetY,
            int b,
            boolean east,
            boolean[] joinedEast,
            boolean[] joinedNorth) {
        int other = east ? b + 1 : b + across;
        if (other >= parent.length || (east && other % across == 0) || !block[b] || !block[other]) {
            return;
        }
        int v = corner(grid, b, across, offsetX, offsetY);
        boolean open = east
                ? (grid.edges[v + 1] & Lattice.EAST) != 0 && (grid.edges[v + 1 + grid.columns] & Lattice.EAST) != 0
                : (grid.edges[v + grid.columns] & Lattice.NORTH) != 0
                        && (grid.edges[v + 1 + grid.columns] & Lattice.NORTH) != 0;
        int p = root(parent, b);
        int q = root(parent, other);
        if (!open || p == q) {
            return;
        }
        parent[q] = p;
        size[p] += size[q];
        (east ? joinedEast : joinedNorth)[b] = true;
    }

    private static int corner(CoarseGrid grid, int b, int across, int offsetX, int offsetY) {
        return (b / across * 2 + offsetY) * grid.columns + b % across * 2 + offsetX;
    }

    private static int root(int[] parent, int b) {
        int r = b;
        while (parent[r] != r) {
            parent[r] = parent[parent[r]];
            r = parent[r];
        }
        return r;
    }

    private static void square(CoarseGrid grid, byte[] used, int v) {
        int up = v + grid.columns;
        used[v] ^= Lattice.EAST | Lattice.NORTH;
        used[v + 1] ^= Lattice.WEST | Lattice.NORTH;
        used[up] ^= Lattice.EAST | Lattice.SOUTH;
        used[up + 1] ^= Lattice.WEST | Lattice.SOUTH;
    }
}
