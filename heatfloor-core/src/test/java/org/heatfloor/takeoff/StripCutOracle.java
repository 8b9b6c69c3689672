package org.heatfloor.takeoff;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The fewest sheets or rolls over every cut in strips, tried one by one on whole cells, sharing nothing with the search: both
 * directions (sheets either way round); the first joint at every place; every way to cut each strip across into as few pieces
 * as the length allows or one more, none under three cells unless the stock is at most six long; every narrow uncut strip as it
 * lies or a quarter turn round; every grouping side by side; every grouping of lengths into stock.
 */
final class StripCutOracle {

    private static final int LONG_STOCK = 6;
    private static final int SHORTEST = 3;

    private record Box(int length, int width) {}

    private record Cell(int u, int v) {}

    private final Map<List<List<Integer>>, Integer> known = new HashMap<>();
    private int best = Integer.MAX_VALUE;

    private StripCutOracle() {}

    /** The floor as cells: {@code floor[u][v]}. */
    static int fewest(boolean[][] floor, int across, int along, boolean sheet) {
        StripCutOracle oracle = new StripCutOracle();
        for (boolean[][] turned : List.of(floor, transposed(floor))) {
            oracle.lay(turned, across, along);
            if (sheet) {
                oracle.lay(turned, along, across);
            }
        }
        return oracle.best;
    }

    private static boolean[][] transposed(boolean[][] floor) {
        boolean[][] turned = new boolean[floor[0].length][floor.length];
        for (int u = 0; u < floor.length; u++) {
            for (int v = 0; v < floor[u].length; v++) {
                turned[v][u] = floor[u][v];
            }
        }
        return turned;
    }

    private void lay(boolean[][] floor, int band, int stockLength) {
        for (int phase = 0; phase < band; phase++) {
            List<Set<Cell>> strips = new ArrayList<>();
            for (int v = phase - band; v < floor[0].length; v += band) {
                Set<Cell> cells = new HashSet<>();
                for (int u = 0; u < floor.length; u++) {
                    for (int w = Math.max(0, v); w < Math.min(floor[0].length, v + band); w++) {
                        if (floor[u][w]) {
                            cells.add(new Cell(u, w));
                        }
                    }
                }
                strips.addAll(connected(cells));
            }
            cut(strips, 0, List.of(), band, stockLength);
        }
    }

    private static List<Set<Cell>> connected(Set<Cell> cells) {
        Set<Cell> left = new HashSet<>(cells);
        List<Set<Cell>> parts = new ArrayList<>();
        while (!left.isEmpty()) {
            Set<Cell> part = new HashSet<>();
            Deque<Cell> open = new ArrayDeque<>(List.of(left.iterator().next()));
            while (!open.isEmpty()) {
                Cell c = open.pop();
                if (left.remove(c)) {
                    part.add(c);
                    open.add(new Cell(c.u + 1, c.v));
                    open.add(new Cell(c.u - 1, c.v));
                    open.add(new Cell(c.u, c.v + 1));
                    open.add(new Cell(c.u, c.v - 1));
                }
            }
            parts.add(part);
        }
        return parts;
    }

    private static Box box(Set<Cell> cells) {
        return new Box(extent(cells, true), extent(cells, false));
    }

    private static int extent(Set<Cell> cells, boolean alongU) {
        TreeSet<Integer> at = new TreeSet<>();
        cells.forEach(c -> at.add(alongU ? c.u : c.v));
        return at.last() - at.first() + 1;
    }

    private void cut(List<Set<Cell>> strips, int k, List<Box> boxes, int band, int stockLength) {
        if (k == strips.size()) {
            best = Math.min(best, packed(boxes, band, stockLength));
            return;
        }
        Set<Cell> strip = strips.get(k);
        Box whole = box(strip);
        int first = strip.stream().mapToInt(Cell::u).min().orElseThrow();
        int fewest = (whole.length + stockLength - 1) / stockLength;
        if (fewest == 1) {
            cut(strips, k + 1, with(boxes, whole), band, stockLength);
            if (whole.width < band && whole.length <= band && whole.width <= stockLength) {
                cut(strips, k + 1, with(boxes, new Box(whole.width, whole.length)), band, stockLength);
            }
        }
        for (int count = Math.max(2, fewest); count <= fewest + 1; count++) {
            for (List<Integer> lengths : ways(whole.length, count, stockLength)) {
                List<Box> more = new ArrayList<>(boxes);
                int at = first;
                for (int length : lengths) {
                    int from = at;
                    Set<Cell> part = new HashSet<>(strip);
                    part.removeIf(c -> c.u < from || c.u >= from + length);
                    connected(part).forEach(p -> more.add(box(p)));
                    at += length;
                }
                cut(strips, k + 1, more, band, stockLength);
            }
        }
    }

    private static List<Box> with(List<Box> boxes, Box one) {
        List<Box> more = new ArrayList<>(boxes);
        more.add(one);
        return more;
    }

    private static List<List<Integer>> ways(int length, int count, int stockLength) {
        int least = stockLength > LONG_STOCK ? SHORTEST : 1;
        List<List<Integer>> ways = new ArrayList<>();
        if (count == 1) {
            if (length >= least && length <= stockLength) {
                ways.add(List.of(length));
            }
            return ways;
        }
        for (int first = least; first <= Math.min(stockLength, length); first++) {
            for (List<Integer> rest : ways(length - first, count - 1, stockLength)) {
                List<Integer> way = new ArrayList<>(List.of(first));
                way.addAll(rest);
                ways.add(way);
            }
        }
        return ways;
    }

    private int packed(List<Box> boxes, int band, int stockLength) {
        List<Box> sorted = boxes.stream()
                .sorted(Comparator.comparingInt(Box::length).thenComparingInt(Box::width))
                .toList();
        List<List<Integer>> key = List.of(
                sorted.stream().map(Box::length).toList(),
                sorted.stream().map(Box::width).toList(),
                List.of(band, stockLength));
        return known.computeIfAbsent(key, k -> stocks(sorted, band, stockLength));
    }

    /** Over sets of boxes: the least length each set takes on one stock, then the fewest stocks for all. */
    private static int stocks(List<Box> boxes, int band, int stockLength) {
        int all = (1 << boxes.size()) - 1;
        int[] lengthOf = new int[all + 1];
        int[] stocksOf = new int[all + 1];
        for (int set = 1; set <= all; set++) {
            int lowest = Integer.lowestOneBit(set);
            lengthOf[set] = Integer.MAX_VALUE / 2;
            stocksOf[set] = boxes.size();
            for (int part = set; part > 0; part = (part - 1) & set) {
                if ((part & lowest) != 0) {
                    int width = sum(boxes, part);
                    if (width <= band) {
                        lengthOf[set] = Math.min(lengthOf[set], longest(boxes, part) + lengthOf[set & ~part]);
                    }
                }
            }
        }
        for (int set = 1; set <= all; set++) {
            int lowest = Integer.lowestOneBit(set);
            for (int part = set; part > 0; part = (part - 1) & set) {
                if ((part & lowest) != 0 && lengthOf[part] <= stockLength) {
                    stocksOf[set] = Math.min(stocksOf[set], 1 + stocksOf[set & ~part]);
                }
            }
        }
        return stocksOf[all];
    }

    private static int sum(List<Box> boxes, int set) {
        int sum = 0;
        for (int i = 0; i < boxes.size(); i++) {
            sum += ((set >> i) & 1) * boxes.get(i).width;
        }
        return sum;
    }

    private static int longest(List<Box> boxes, int set) {
        int longest = 0;
        for (int i = 0; i < boxes.size(); i++) {
            longest = Math.max(longest, ((set >> i) & 1) * boxes.get(i).length);
        }
        return longest;
    }
}
