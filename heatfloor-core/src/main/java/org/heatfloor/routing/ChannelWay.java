package org.heatfloor.routing;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Cheapest ways along free channels with a price on turns and a least run between two of them: Dijkstra over junction,
 * direction and length of the run so far.
 */
final class ChannelWay {

    static final int MOST_TURN_PRICE = 12;
    private static final int FAR = Integer.MAX_VALUE;

    private final Lattice lattice;
    private final int leastRun;
    private final int[] cost;
    private final int[] parent;
    private final int[] best;
    private final int[][] buckets;
    private final int[] filled;
    private boolean[] permitted = new boolean[0];
    private int turnPrice;

    ChannelWay(Lattice lattice, int leastRun) {
        this.lattice = lattice;
        this.leastRun = Math.max(1, leastRun);
        int states = lattice.free.length * 4 * this.leastRun;
        cost = new int[states];
        parent = new int[states];
        best = new int[lattice.free.length];
        buckets = new int[MOST_TURN_PRICE + 2][64];
        filled = new int[MOST_TURN_PRICE + 2];
    }

    private int number(int node, int direction, int run) {
        return (node * 4 + direction) * leastRun + run - 1;
    }

    private int nodeOf(int state) {
        return state / (4 * leastRun);
    }

    static int direction(int step, int width) {
        return step == 1 ? 0 : step == width ? 1 : step == -1 ? 2 : 3;
    }

    private int stepOf(int direction) {
        return direction == 0 ? 1 : direction == 1 ? lattice.width : direction == 2 ? -1 : -lattice.width;
    }

    /**
     * Searches from a junction reached in a direction.
     *
     * @param allowed junctions that may be used
     * @param price pitches that a turn counts for
     * @param from the junction
     * @param direction 0 east, 1 north, 2 west, 3 south
     * @param firstTurn −1, 0 or 1 to leave the junction only to the right, straight on or to the left; 2 for any of them
     * @param goal a junction at which to stop; −1 to search everything
     */
    void search(boolean[] allowed, int price, int from, int direction, int firstTurn, int goal) {
        permitted = allowed;
        turnPrice = Math.min(MOST_TURN_PRICE, price);
        Arrays.fill(cost, FAR);
        Arrays.fill(parent, -1);
        Arrays.fill(best, -1);
        Arrays.fill(filled, 0);
        int start = number(from, direction, leastRun);
        cost[start] = 0;
        push(start, 0);
        int empty = 0;
        for (int now = 0; empty <= buckets.length; now++) {
            int slot = now % buckets.length;
            empty = filled[slot] == 0 ? empty + 1 : 0;
            for (int i = 0; i < filled[slot]; i++) {
                int state = buckets[slot][i];
                if (cost[state] != now) {
                    continue;
                }
                int node = nodeOf(state);
                if (best[node] < 0) {
                    best[node] = state;
                }
                if (node == goal) {
                    return;
                }
                expand(state, node, now, state == start ? firstTurn : 2);
            }
            filled[slot] = 0;
        }
    }

    private void expand(int state, int node, int price, int firstTurn) {
        int run = state % leastRun + 1;
        int direction = state / leastRun % 4;
        for (int turn = -1; turn <= 1; turn++) {
            if ((turn != 0 && run < leastRun) || (firstTurn != 2 && turn != firstTurn)) {
                continue;
            }
            int out = (direction + turn + 4) % 4;
            if ((lattice.channels[node] & (1 << out)) == 0) {
                continue;
            }
            int next = node + stepOf(out);
            if (!permitted[next]) {
                continue;
            }
            int reached = number(next, out, turn != 0 ? 1 : Math.min(leastRun, run + 1));
            int sum = price + 1 + (turn != 0 ? turnPrice : 0);
            if (sum < cost[reached]) {
                cost[reached] = sum;
                parent[reached] = state;
                push(reached, sum);
            }
        }
    }

    private void push(int state, int price) {
        int slot = price % buckets.length;
        if (filled[slot] == buckets[slot].length) {
            buckets[slot] = Arrays.copyOf(buckets[slot], 2 * filled[slot]);
        }
        buckets[slot][filled[slot]++] = state;
    }

    boolean reaches(int node) {
        return best[node] >= 0;
    }

    /** Price of the way to a junction that is reached. */
    int price(int node) {
        return cost[best[node]];
    }

    /** The junctions reached that are farthest away: by the way, in the diagonal directions and along the axes. */
    List<Integer> farthest() {
        int[] chosen = new int[9];
        double[] worth = new double[9];
        Arrays.fill(worth, Double.NEGATIVE_INFINITY);
        Arrays.fill(chosen, -1);
        for (int v = 0; v < best.length; v++) {
            if (!reaches(v)) {
                continue;
            }
            int x = v % lattice.width;
            int y = v / lattice.width;
            double[] now = {
                price(v), x + y, x - y, y - x, -x - y, x + 0.01 * y, -x + 0.01 * y, y + 0.01 * x, -y + 0.01 * x
            };
            for (int i = 0; i < now.length; i++) {
                if (now[i] > worth[i]) {
                    worth[i] = now[i];
                    chosen[i] = v;
                }
            }
        }
        return Arrays.stream(chosen).filter(v -> v >= 0).distinct().boxed().toList();
    }

    /** The junctions after the first one on the cheapest way, the last included; null if there is no way. */
    int @Nullable [] to(int node) {
        return best[node] < 0 ? null : back(best[node]);
    }

    /** The same, arriving so that the route can go on in a direction. */
    int @Nullable [] to(int node, int onward) {
        int chosen = -1;
        for (int direction = 0; direction < 4; direction++) {
            for (int run = 1; run <= leastRun; run++) {
                int state = number(node, direction, run);
                boolean fits = direction == onward || (direction != (onward + 2) % 4 && run == leastRun);
                if (fits && cost[state] != FAR && (chosen < 0 || cost[state] < cost[chosen])) {
                    chosen = state;
                }
            }
        }
        return chosen < 0 ? null : back(chosen);
    }

    private int[] back(int state) {
        int n = 0;
        for (int s = state; parent[s] >= 0; s = parent[s]) {
            n++;
        }
        int[] out = new int[n];
        for (int s = state; parent[s] >= 0; s = parent[s]) {
            out[--n] = nodeOf(s);
        }
        return out;
    }
}
