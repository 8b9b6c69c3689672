package org.heatfloor.takeoff;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Cuts rectangles from the fewest stock rectangles the way a fitter does: lengths across the stock, each length ripped side
 * by side. All sizes are whole stud pitches. The search is exact branch and bound over the pieces in falling order of
 * length; it stops early when it meets a lower bound, and gives the best found when the budget of nodes is spent.
 */
final class LevelPacker {

    /** Where a piece lies: number of the stock, offset along it and across it, and whether it is a quarter turn round. */
    record Slot(int stock, int along, int across, boolean turned) {}

    /** The cut: stock used, a slot for each piece in the order given, a lower bound, and whether the search was finished. */
    record Packing(int stocks, List<Slot> slots, int bound, boolean proven) {}

    private final int[] length;
    private final int[] width;
    private final Integer[] order;
    private final int stockLength;
    private final int stockWidth;
    private final int bound;
    private final int[] shelfOf;
    private final int[] shelfStock;
    private final int[] shelfLength;
    private final int[] shelfLeft;
    private final int[] stockLeft;
    private int shelves;
    private int stocks;
    private int best = Integer.MAX_VALUE;
    private int[] bestShelfOf = new int[0];
    private int[] bestShelfStock = new int[0];
    private int nodesLeft;

    private LevelPacker(int[] length, int[] width, int stockLength, int stockWidth, int budget) {
        int n = length.length;
        this.length = length;
        this.width = width;
        this.stockLength = stockLength;
        this.stockWidth = stockWidth;
        this.nodesLeft = budget;
        this.order = IntStream.range(0, n).boxed().toArray(Integer[]::new);
        Arrays.sort(
                order,
                Comparator.<Integer>comparingInt(i -> -length[i])
                        .thenComparingInt(i -> -width[i])
                        .thenComparingInt(i -> i));
        this.shelfOf = new int[n];
        this.shelfStock = new int[n];
        this.shelfLength = new int[n];
        this.shelfLeft = new int[n];
        this.stockLeft = new int[n];
        this.bound = bound(length, width, stockLength, stockWidth);
    }

    /** Packs pieces that each fit the stock; the budget is in nodes of the search. */
    static Packing pack(int[] length, int[] width, int stockLength, int stockWidth, int budget) {
        for (int i = 0; i < length.length; i++) {
            if (!(length[i] >= 1 && length[i] <= stockLength && width[i] >= 1 && width[i] <= stockWidth)) {
                throw new IllegalArgumentException("piece " + i + ": " + length[i] + " by " + width[i]
                        + " pitches was given; 1 by 1 to " + stockLength + " by " + stockWidth + " is expected");
            }
        }
        if (length.length == 0) {
            return new Packing(0, List.of(), 0, true);
        }
        LevelPacker packer = new LevelPacker(length, width, stockLength, stockWidth, budget);
        boolean finished = packer.place(0);
        return new Packing(packer.best, packer.slots(), packer.bound, finished || packer.best == packer.bound);
    }

    /** Largest of the area bound and the bound of the pieces too wide to lie side by side. */
    static int bound(int[] length, int[] width, int stockLength, int stockWidth) {
        long area = 0;
        for (int i = 0; i < length.length; i++) {
            area += (long) length[i] * width[i];
        }
        long stockArea = (long) stockLength * stockWidth;
        int byArea = (int) ((area + stockArea - 1) / stockArea);
        int[] wide = IntStream.range(0, length.length)
                .filter(i -> 2L * width[i] > stockWidth)
                .map(i -> length[i])
                .toArray();
        return Math.max(byArea, lengthBound(wide, stockLength));
    }

    /**
     * The bound L2 of Martello and Toth for lengths that cannot lie side by side: for every split α it counts the lengths
     * that exclude each other and adds the room the short ones need beyond what is left beside the middling ones. The case
     * α = 0 is no worse than the plain sum of lengths.
     */
    static int lengthBound(int[] lengths, int stockLength) {
        int most = 0;
        int[] splits = IntStream.concat(IntStream.of(0), Arrays.stream(lengths))
                .filter(a -> 2L * a <= stockLength)
                .distinct()
                .toArray();
        for (int split : splits) {
            int alone = 0;
            int halves = 0;
            long halvesSum = 0;
            long shortSum = 0;
            for (int l : lengths) {
                if (l > stockLength - split) {
                    alone++;
                } else if (2L * l > stockLength) {
                    halves++;
                    halvesSum += l;
                } else if (l >= split) {
                    shortSum += l;
                }
            }
            long over = shortSum - ((long) halves * stockLength - halvesSum);
            int more = over > 0 ? (int) ((over + stockLength - 1) / stockLength) : 0;
            most = Math.max(most, alone + halves + more);
        }
        return most;
    }

    /** Places piece number {@code k} in every way that differs; false when the budget ran out. */
    private boolean place(int k) {
        if (k == order.length) {
            best = stocks;
            bestShelfOf = shelfOf.clone();
            bestShelfStock = shelfStock.clone();
            return true;
        }
        if (nodesLeft-- <= 0 && best != Integer.MAX_VALUE) {
            return false;
        }
        int piece = order[k];
        return beside(k, piece) && onNewShelf(k, piece) && onNewStock(k, piece);
    }

    private boolean done() {
        return best == bound;
    }

    private boolean beside(int k, int piece) {
        for (int left = width[piece]; left <= stockWidth; left = next(shelfLeft, shelves, left + 1)) {
            int shelf = find(shelfLeft, shelves, left);
            if (shelf >= 0) {
                shelfOf[piece] = shelf;
                shelfLeft[shelf] -= width[piece];
                boolean finished = place(k + 1);
                shelfLeft[shelf] += width[piece];
                if (!finished || done()) {
                    return finished;
                }
            }
        }
        return true;
    }

    private boolean onNewShelf(int k, int piece) {
        if (done()) {
            return true;
        }
        for (int left = length[piece]; left <= stockLength; left = next(stockLeft, stocks, left + 1)) {
            int stock = find(stockLeft, stocks, left);
            if (stock >= 0) {
                boolean finished = openShelf(k, piece, stock);
                if (!finished || done()) {
                    return finished;
                }
            }
        }
        return true;
    }

    private boolean onNewStock(int k, int piece) {
        if (done() || stocks + 1 >= best) {
            return true;
        }
        stockLeft[stocks] = stockLength;
        stocks++;
        boolean finished = openShelf(k, piece, stocks - 1);
        stocks--;
        return finished;
    }

    private boolean openShelf(int k, int piece, int stock) {
        shelfOf[piece] = shelves;
        shelfStock[shelves] = stock;
        shelfLength[shelves] = length[piece];
        shelfLeft[shelves] = stockWidth - width[piece];
        stockLeft[stock] -= length[piece];
        shelves++;
        boolean finished = place(k + 1);
        shelves--;
        stockLeft[stock] += length[piece];
        return finished;
    }

    /** The least value at or above {@code from} among the first {@code n}, or one beyond every value. */
    private static int next(int[] values, int n, int from) {
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < n; i++) {
            if (values[i] >= from) {
                least = Math.min(least, values[i]);
            }
        }
        return least;
    }

    private static int find(int[] values, int n, int wanted) {
        for (int i = 0; i < n; i++) {
            if (values[i] == wanted) {
                return i;
            }
        }
        return -1;
    }

    private List<Slot> slots() {
        int n = order.length;
        int[] shelfAt = new int[n];
        boolean[] laid = new boolean[n];
        int[] across = new int[n];
        int[] along = new int[best];
        Slot[] slots = new Slot[n];
        for (int piece : order) {
            int shelf = bestShelfOf[piece];
            int stock = bestShelfStock[shelf];
            if (!laid[shelf]) {
                laid[shelf] = true;
                shelfAt[shelf] = along[stock];
                along[stock] += length[piece];
            }
            slots[piece] = new Slot(stock, shelfAt[shelf], across[shelf], false);
            across[shelf] += width[piece];
        }
        return List.of(slots);
    }
}
