package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.heatfloor.takeoff.StripCutter.Piece;

/**
 * Every way to cut one strip across: into as few pieces as the stock's length allows, or one more, none shorter than a joint
 * may leave.
 */
final class StripWays {

    private final int shortest;
    private final int stockLength;
    private final int most;
    private final boolean anyOrder;
    private final List<int[]> ways = new ArrayList<>();
    private boolean complete = true;

    private StripWays(Piece strip, int stockLength, int most) {
        this.shortest = StripCutter.shortest(stockLength);
        this.stockLength = stockLength;
        this.most = most;
        this.anyOrder = StripCutter.isRectangle(strip.shape());
        int fewest = (strip.length() + stockLength - 1) / stockLength;
        for (int count = fewest; count <= fewest + 1; count++) {
            if (count == 1) {
                ways.add(new int[] {strip.length()});
            } else {
                add(new int[count], 0, strip.length());
            }
        }
    }

    /** At most so many ways; the order of a rectangle's pieces makes no difference. */
    static StripWays of(Piece strip, int stockLength, int most) {
        return new StripWays(strip, stockLength, most);
    }

    List<int[]> ways() {
        return ways;
    }

    /** Whether none was left out. */
    boolean isComplete() {
        return complete;
    }

    /** Tries only lengths that leave a rest the pieces after can make up, so that every path ends in a way. */
    private void add(int[] lengths, int at, int rest) {
        int after = lengths.length - at - 1;
        int before = anyOrder && at > 0 ? lengths[at - 1] : shortest;
        int least = Math.max(before, rest - after * stockLength);
        int greatest = Math.min(stockLength, anyOrder ? rest / (after + 1) : rest - after * shortest);
        for (int length = least; length <= greatest && complete; length++) {
            lengths[at] = length;
            if (after == 0) {
                keep(lengths);
            } else {
                add(lengths, at + 1, rest - length);
            }
        }
    }

    private void keep(int[] lengths) {
        if (ways.size() >= most) {
            complete = false;
        } else {
            ways.add(lengths.clone());
        }
    }
}
