package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Loops round spanning trees of 2 × 2 blocks (Y. Gabriely, E. Rimon, Spanning-tree based coverage of continuous areas by a
 * mobile robot, Annals of Mathematics and Artificial Intelligence 31 (2001); from memory). A tree is made of straight
 * teeth or of rings, joined where a joint costs the fewest turns. The teeth run along the rows, along the columns, or are
 * the fewest of both that cover all blocks: a least cover in the bipartite graph whose edges are the blocks and whose nodes
 * are the straight stretches through them, which a greatest matching gives (D. Kőnig 1931; from memory). The rings run
 * through the blocks that lie equally deep in the floor, or in the rectangle about it, each open at one place.
 */
final class TreeLoops {

    /** A joint is held in one number: the block, then the bit towards its neighbour in the last two binary digits. */
    private static final int DIGITS = 2;

    private static final int BIT = 3;

    private final CoarseGrid grid;
    private final int offsetX;
    private final int offsetY;
    private final int across;
    private final int up;
    private final boolean[] block;
    private final boolean[] openEast;
    private final boolean[] openNorth;
    /** Blocks already joined. */
    private final DisjointSets pieces;

    /** All joints there may be, in turn from each corner; empty until asked for. */
    private final int[][] joints = {{}, {}, {}, {}};

    private int blocks;

    /**
     * One alignment of the blocks.
     *
     * @param grid the coarse grid
     * @param offsetX 0 or 1: first column of blocks
     * @param offsetY 0 or 1: first row of blocks
     */
    TreeLoops(CoarseGrid grid, int offsetX, int offsetY) {
        this.grid = grid;
        this.offsetX = offsetX;
        this.offsetY = offsetY;
        across = Math.max(0, (grid.columns - offsetX) / 2);
        up = Math.max(0, (grid.rows - offsetY) / 2);
        int n = across * up;
        block = new boolean[n];
        openEast = new boolean[n];
        openNorth = new boolean[n];
        pieces = new DisjointSets(n);
        for (int b = 0; b < n; b++) {
            block[b] = grid.whole[corner(b)];
        }
        for (int b = 0; b < n; b++) {
            int v = corner(b);
            openEast[b] = block[b] && (b + 1) % across != 0 && block[b + 1] && grid.whole[v + 1];
            openNorth[b] = block[b] && b + across < n && block[b + across] && grid.whole[v + grid.columns];
        }
        keepLargest();
    }

    /**
     * The loops round trees of teeth.
     *
     * @param alongRow for each node of the grid whether a tooth there runs along the row, as one more pattern; null where
     *     there is no such wish
     * @return for each loop the edges used at each node; empty if there is no block
     */
    List<byte[]> teeth(boolean @Nullable [] alongRow) {
        List<boolean[]> teeth = new ArrayList<>();
        boolean[] all = new boolean[block.length];
        teeth.add(all.clone());
        Arrays.fill(all, true);
        teeth.add(all);
        for (boolean[] cover : covers()) {
            if (teeth.stream().noneMatch(t -> same(t, cover))) {
                teeth.add(cover);
            }
        }
        if (alongRow != null) {
            boolean[] wish = new boolean[block.length];
            for (int b = 0; b < wish.length; b++) {
                wish[b] = alongRow[corner(b)];
            }
            teeth.add(wish);
        }
        return loops(teeth.stream().map(this::straight).toList(), 2);
    }

    /**
     * The loops round trees of rings.
     *
     * @return for each loop the edges used at each node; empty if there is no block
     */
    List<byte[]> rings() {
        int[] deep = depths();
        int[] boxed = depthsInRectangle();
        return loops(Arrays.equals(deep, boxed) ? List.of(rings(deep)) : List.of(rings(deep), rings(boxed)), 4);
    }

    private List<byte[]> loops(List<byte[]> patterns, int corners) {
        List<byte[]> loops = new ArrayList<>();
        for (int from = 0; blocks > 0 && from < corners; from++) {
            for (byte[] pattern : patterns) {
                loops.add(loop(pattern, from));
            }
        }
        return loops;
    }

    /** Joints of straight teeth: along the row where a block says so, along the column elsewhere. */
    private byte[] straight(boolean[] alongRow) {
        byte[] joints = new byte[block.length];
        for (int b = 0; b < block.length; b++) {
            if (openEast[b] && alongRow[b] && alongRow[b + 1]) {
                joints[b] |= Lattice.EAST;
            }
            if (openNorth[b] && !alongRow[b] && !alongRow[b + across]) {
                joints[b] |= Lattice.NORTH;
            }
        }
        return joints;
    }

    /** Joints of rings: between blocks that lie equally deep in the floor. */
    private byte[] rings(int[] depth) {
        byte[] joints = new byte[block.length];
        for (int b = 0; b < block.length; b++) {
            if (openEast[b] && depth[b] == depth[b + 1]) {
                joints[b] |= Lattice.EAST;
            }
            if (openNorth[b] && depth[b] == depth[b + across]) {
                joints[b] |= Lattice.NORTH;
            }
        }
        return joints;
    }

    /** How many blocks lie between each block and the nearest edge of the floor, straight or aslant. */
    private int[] depths() {
        int[] depth = new int[block.length];
        for (int b = 0; b < block.length; b++) {
            depth[b] = block[b]
                    ? 1
                            + Math.min(
                                    Math.min(at(depth, b, -1, 0), at(depth, b, 0, -1)),
                                    Math.min(at(depth, b, -1, -1), at(depth, b, 1, -1)))
                    : 0;
        }
        for (int b = block.length - 1; b >= 0; b--) {
            depth[b] = Math.min(
                    depth[b],
                    1
                            + Math.min(
                                    Math.min(at(depth, b, 1, 0), at(depth, b, 0, 1)),
                                    Math.min(at(depth, b, 1, 1), at(depth, b, -1, 1))));
        }
        return depth;
    }

    /** The same in the rectangle about the floor. */
    private int[] depthsInRectangle() {
        int[] depth = new int[block.length];
        for (int b = 0; b < block.length; b++) {
            int x = b % across;
            int y = b / across;
            depth[b] = block[b] ? 1 + Math.min(Math.min(x, across - 1 - x), Math.min(y, up - 1 - y)) : 0;
        }
        return depth;
    }

    private int at(int[] depth, int b, int dx, int dy) {
        int x = b % across + dx;
        int y = b / across + dy;
        return x >= 0 && x < across && y >= 0 && y < up ? depth[y * across + x] : 0;
    }

    private boolean same(boolean[] a, boolean[] b) {
        for (int i = 0; i < block.length; i++) {
            if (block[i] && a[i] != b[i]) {
                return false;
            }
        }
        return true;
    }

    private int corner(int b) {
        return (b / across * 2 + offsetY) * grid.columns + b % across * 2 + offsetX;
    }

    private void keepLargest() {
        for (int b = 0; b < block.length; b++) {
            if (openEast[b]) {
                pieces.join(b, b + 1);
            }
            if (openNorth[b]) {
                pieces.join(b, b + across);
            }
        }
        int largest = -1;
        for (int b = 0; b < block.length; b++) {
            if (block[b] && (largest < 0 || pieces.size(b) > pieces.size(largest))) {
                largest = b;
            }
        }
        for (int b = 0; b < block.length; b++) {
            if (block[b] && !pieces.together(b, largest)) {
                block[b] = false;
                openEast[b] = false;
                openNorth[b] = false;
            }
            blocks += block[b] ? 1 : 0;
        }
    }

    /** For each block whether it lies on a tooth along its row, in the two extreme least covers. */
    private List<boolean[]> covers() {
        int[] row = new int[block.length];
        int[] column = new int[block.length];
        int rows = 0;
        int columns = 0;
        for (int b = 0; b < block.length; b++) {
            if (!block[b]) {
                continue;
            }
            row[b] = b % across > 0 && openEast[b - 1] ? row[b - 1] : rows++;
            column[b] = b >= across && openNorth[b - across] ? column[b - across] : columns++;
        }
        StripCover cover = new StripCover(rows, columns);
        for (int b = 0; b < block.length; b++) {
            if (block[b]) {
                cover.add(row[b], column[b]);
            }
        }
        List<boolean[]> out = new ArrayList<>();
        for (int side = 0; side < 2; side++) {
            boolean[][] chosen = cover.least(side == 0);
            boolean[] alongRow = new boolean[block.length];
            for (int b = 0; b < block.length; b++) {
                alongRow[b] = block[b] && (side == 0 ? chosen[0][row[b]] : !chosen[1][column[b]]);
            }
            out.add(alongRow);
        }
        return out;
    }

    /** The loop round a tree of a pattern, the blocks taken in turn from one of the four corners. */
    private byte[] loop(byte[] teeth, int corner) {
        pieces.split();
        int whole = block.length - blocks + 1;
        byte[] tree = new byte[block.length];
        int[] left = joints(corner).clone();
        int count = 0;
        for (int joint : left) {
            int b = joint >> DIGITS;
            int bit = joint & BIT;
            if ((teeth[b] & bit) != 0 && !pieces.together(b, other(b, bit))) {
                join(tree, b, bit);
            } else {
                left[count++] = joint;
            }
        }
        for (int allowed = -4; allowed <= 4 && pieces.count() > whole; allowed += 2) {
            int kept = 0;
            for (int n = 0; n < count && pieces.count() > whole; n++) {
                int b = left[n] >> DIGITS;
                int bit = left[n] & BIT;
                if (added(tree, b, bit) > allowed) {
                    left[kept++] = left[n];
                } else if (!pieces.together(b, other(b, bit))) {
                    join(tree, b, bit);
                }
            }
            count = kept;
        }
        byte[] used = new byte[grid.edges.length];
        for (int b = 0; b < block.length; b++) {
            if (block[b]) {
                int v = corner(b);
                square(used, v);
                if ((tree[b] & Lattice.EAST) != 0) {
                    square(used, v + 1);
                }
                if ((tree[b] & Lattice.NORTH) != 0) {
                    square(used, v + grid.columns);
                }
            }
        }
        return used;
    }

    /** The joints there may be between neighbouring blocks, in turn from a corner. */
    private int[] joints(int corner) {
        int[] known = joints[corner];
        if (known.length == 0) {
            known = new int[2 * block.length];
            int count = 0;
            for (int n = 0; n < block.length; n++) {
                int b = from(corner, n);
                if (openEast[b]) {
                    known[count++] = b << DIGITS | Lattice.EAST;
                }
                if (openNorth[b]) {
                    known[count++] = b << DIGITS | Lattice.NORTH;
                }
            }
            known = Arrays.copyOf(known, count);
            joints[corner] = known;
        }
        return known;
    }

    private int other(int b, int bit) {
        return bit == Lattice.EAST ? b + 1 : b + across;
    }

    private int from(int corner, int n) {
        int b = corner < 2 ? n : n - n % across + across - 1 - n % across;
        return (corner & 1) == 0 ? b : block.length - 1 - b;
    }

    private void join(byte[] tree, int b, int bit) {
        int other = other(b, bit);
        tree[b] |= (byte) bit;
        tree[other] |= (byte) CoarseGrid.opposite(bit);
        pieces.join(b, other);
    }

    /** Turns that joining a block to its neighbour adds to the loop. */
    private int added(byte[] tree, int b, int bit) {
        int other = other(b, bit);
        int back = CoarseGrid.opposite(bit);
        return turns(tree[b] | bit) - turns(tree[b]) + turns(tree[other] | back) - turns(tree[other]);
    }

    /** Turns of the loop about a block with the given joints: four alone, none on a straight tooth, two at an end or bend. */
    private static int turns(int joints) {
        return switch (Integer.bitCount(joints)) {
            case 0, 4 -> 4;
            case 2 -> joints == 5 || joints == 10 ? 0 : 2;
            default -> 2;
        };
    }

    private void square(byte[] used, int v) {
        int above = v + grid.columns;
        used[v] ^= Lattice.EAST | Lattice.NORTH;
        used[v + 1] ^= Lattice.WEST | Lattice.NORTH;
        used[above] ^= Lattice.EAST | Lattice.SOUTH;
        used[above + 1] ^= Lattice.WEST | Lattice.SOUTH;
    }
}
