package org.heatfloor.takeoff;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Cuts rectangles from the fewest stock rectangles the way a fitter does: lengths across the stock, each length ripped side
 * by side. All sizes are whole stud pitches. The search is exact branch and bound over the pieces in falling order of
 * length. It begins with the piece beside the tightest length it fits, else across the fullest stock it fits; it stops early
 * when it meets a lower bound, and gives the best found when the work is spent.
 */
final class LevelPacker {

    /** Where a piece lies: number of the stock, offset along it and across it, and whether it is a quarter turn round. */
    record Slot(int stock, int along, int across, boolean turned) {}

    /** The cut: stock used, a slot for each piece in the order given, a lower bound, and whether the search was finished. */
    record Packing(int stocks, List<Slot> slots, int bound, boolean proven) {}

    /** More pieces than this are laid once and not searched: the search goes as deep as there are pieces. */
    private static final int MOST_SEARCHED = 400;

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
    /** Area of the pieces from each place in the order on. */
    private final long[] areaFrom;

    private final Work work;
    private int shelves;
    private int stocks;
    /** Area of the stock opened that is neither taken nor beside a length too short for it. */
    private long free;

    private int best = Integer.MAX_VALUE;
    private int[] bestShelfOf = new int[0];
    private int[] bestShelfStock = new int[0];

    private LevelPacker(int[] length, int[] width, int stockLength, int stockWidth, Work work) {
        int n = length.length;
        this.length = length;
        this.width = width;
        this.stockLength = stockLength;
        this.stockWidth = stockWidth;
        this.work = work;
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
        this.areaFrom = new long[n + 1];
        for (int k = n - 1; k >= 0; k--) {
            areaFrom[k] = areaFrom[k + 1] + (long) length[order[k]] * width[order[k]];
        }
    }

    /** Packs pieces that each fit the stock. */
    static Packing pack(int[] length, int[] width, int stockLength, int stockWidth, Work work) {
        for (int i = 0; i < length.length; i++) {
            if (!(length[i] >= 1 && length[i] <= stockLength && width[i] >= 1 && width[i] <= stockWidth)) {
                throw new IllegalArgumentException("piece " + i + ": " + length[i] + " by " + width[i]
                        + " pitches was given; 1 by 1 to " + stockLength + " by " + stockWidth + " is expected");
            }
        }
        if (length.length == 0) {
            return new Packing(0, List.of(), 0, true);
        }
        LevelPacker packer = new LevelPacker(length, width, stockLength, stockWidth, work);
        packer.layOnce();
        boolean finished = packer.done() || (length.length <= MOST_SEARCHED && packer.place(0));
        return new Packing(packer.best, packer.slots(), packer.bound, finished || packer.done());
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

    /** The first way the search would try, without going deep. */
    private void layOnce() {
        for (int piece : order) {
            int shelf = find(shelfLeft, shelves, next(shelfLeft, shelves, width[piece]));
            if (shelf >= 0) {
                shelfOf[piece] = shelf;
                shelfLeft[shelf] -= width[piece];
            } else {
                int stock = find(stockLeft, stocks, next(stockLeft, stocks, length[piece]));
                if (stock < 0) {
                    openStock();
                }
                openShelf(piece, stock < 0 ? stocks - 1 : stock);
            }
        }
        keep();
        shelves = 0;
        stocks = 0;
        free = 0;
    }

    private void keep() {
        best = stocks;
        bestShelfOf = shelfOf.clone();
        bestShelfStock = shelfStock.clone();
    }

    /** Places piece number {@code k} in every way that differs and could take less stock; false when the work is spent. */
    private boolean place(int k) {
        if (stocks >= best || areaFrom[k] > free + (best - 1L - stocks) * stockLength * stockWidth) {
            return true;
        }
        if (k == order.length) {
            keep();
            return true;
        }
        int piece = order[k];
        return !work.isSpent() && beside(k, piece) && onNewShelf(k, piece) && onNewStock(k, piece);
    }

    private boolean done() {
        return best == bound;
    }

    private boolean beside(int k, int piece) {
        for (int left = next(shelfLeft, shelves, width[piece]);
                left <= stockWidth;
                left = next(shelfLeft, shelves, left + 1)) {
            int shelf = find(shelfLeft, shelves, left);
            long taken = (long) width[piece] * shelfLength[shelf];
            shelfOf[piece] = shelf;
            shelfLeft[shelf] -= width[piece];
            free -= taken;
            boolean finished = place(k + 1);
            free += taken;
            shelfLeft[shelf] += width[piece];
            if (!finished || done()) {
                return finished;
            }
        }
        return true;
    }

    private boolean onNewShelf(int k, int piece) {
        for (int left = next(stockLeft, stocks, length[piece]);
                left <= stockLength && !done();
                left = next(stockLeft, stocks, left + 1)) {
            openShelf(piece, find(stockLeft, stocks, left));
            boolean finished = place(k + 1);
            closeShelf(piece);
            if (!finished) {
                return false;
            }
        }
        return true;
    }

    private boolean onNewStock(int k, int piece) {
        if (done() || stocks + 1 >= best) {
            return true;
        }
        openStock();
        openShelf(piece, stocks - 1);
        boolean finished = place(k + 1);
        closeShelf(piece);
        stocks--;
        free -= (long) stockLength * stockWidth;
        return finished;
    }

    private void openStock() {
        stockLeft[stocks] = stockLength;
        stocks++;
        free += (long) stockLength * stockWidth;
    }

    private void openShelf(int piece, int stock) {
        shelfOf[piece] = shelves;
        shelfStock[shelves] = stock;
        shelfLength[shelves] = length[piece];
        shelfLeft[shelves] = stockWidth - width[piece];
        stockLeft[stock] -= length[piece];
        free -= (long) length[piece] * width[piece];
        shelves++;
    }

    private void closeShelf(int piece) {
        shelves--;
        stockLeft[shelfStock[shelves]] += length[piece];
        free += (long) length[piece] * width[piece];
    }

    /** The least value at or above {@code from} among the first {@code n}, or one beyond every value. */
    private int next(int[] values, int n, int from) {
        work.take(n + 1L);
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
