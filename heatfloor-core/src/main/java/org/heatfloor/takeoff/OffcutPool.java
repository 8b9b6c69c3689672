package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;

/**
 * Which cut pieces come out of one tile. A piece is cut from the place in the tile it has in the floor, so that its factory
 * edges stay at the joints and its sawn edges at the wall; the tile may be turned where that is allowed. Pieces share a tile
 * when saw cuts from edge to edge part the rectangles around them. First fit, largest first, then every sharing there is
 * while the work lasts.
 */
final class OffcutPool {

    /** Work budget of the search, and of the first fit before it: once that is spent each place takes a tile of its own. */
    private static final long STEPS = 50_000_000;

    private static final long FITTING_STEPS = 3_000_000_000L;

    /** More cut places than this are fitted once and not searched: the search goes as deep as there are places. */
    static final int MOST_SEARCHED = 400;

    /** Areas closer than this are the same: units must not change the order. */
    private static final double SAME_SQUARE_METRES = 1e-8;

    /** Rectangles a tile position needs, in the tile's own frame with its lower left corner at 0. */
    record Need(List<Envelope> boxes) {
        double area() {
            return boxes.stream().mapToDouble(Envelope::getArea).sum();
        }
    }

    /** For each need the number of its tile, from 0; the tiles it takes, and those no sharing can do without. */
    record Sharing(List<Integer> tileOf, int tiles, int bound) {}

    private final List<Need> needs;
    private final double length;
    private final double width;
    private final double kerf;
    private final int turns;
    private final int bound;
    private final Integer[] order;
    private final int[] tileOf;
    private final List<List<Envelope>> tiles = new ArrayList<>();
    private final Work fitting = new Work(FITTING_STEPS);
    private final Work work = new Work(STEPS);
    private int[] best;
    private int fewest;

    private OffcutPool(List<Need> needs, double length, double width, double kerf, boolean turnable) {
        this.needs = needs;
        this.length = length;
        this.width = width;
        this.kerf = kerf;
        this.turns = turnable ? (Math.abs(length - width) < 1e-6 ? 4 : 2) : 1;
        this.bound = bound(needs, length, width);
        this.order = IntStream.range(0, needs.size()).boxed().toArray(Integer[]::new);
        Arrays.sort(
                order,
                Comparator.<Integer>comparingLong(i -> -Math.round(needs.get(i).area() / SAME_SQUARE_METRES))
                        .thenComparingInt(i -> i));
        this.tileOf = new int[needs.size()];
        for (int i : order) {
            tileOf[i] = firstFit(needs.get(i));
        }
        this.best = tileOf.clone();
        this.fewest = tiles.size();
    }

    static Sharing share(List<Need> needs, double length, double width, double kerf, boolean turnable) {
        OffcutPool pool = new OffcutPool(needs, length, width, kerf, turnable);
        pool.tiles.clear();
        boolean least = needs.size() <= MOST_SEARCHED && pool.place(0);
        return new Sharing(Arrays.stream(pool.best).boxed().toList(), pool.fewest, least ? pool.fewest : pool.bound);
    }

    /** Tiles no reuse can do without: area, and pieces of which two never lie in one tile. */
    static int bound(List<Need> needs, double length, double width) {
        double area = needs.stream().mapToDouble(Need::area).sum();
        long large = needs.stream()
                .filter(n -> n.boxes.stream()
                        .anyMatch(b -> 2 * b.getWidth() > length + 1e-6 && 2 * b.getHeight() > width + 1e-6))
                .count();
        return (int) Math.max(Math.ceil(area / (length * width) - 1e-9), (double) large);
    }

    private int firstFit(Need need) {
        List<List<Envelope>> ways = ways(need);
        for (int t = 0; t < tiles.size() && !fitting.isSpent(); t++) {
            for (List<Envelope> boxes : ways) {
                fitting.take(20L * (1 + (long) tiles.get(t).size() * boxes.size()));
                if (fits(tiles.get(t), boxes)) {
                    tiles.get(t).addAll(boxes);
                    return t;
                }
            }
        }
        tiles.add(new ArrayList<>(need.boxes));
        return tiles.size() - 1;
    }

    /** Places need number {@code k} in every way that could take fewer tiles; false when the work is spent. */
    private boolean place(int k) {
        if (tiles.size() >= fewest || fewest == bound) {
            return true;
        }
        if (k == order.length) {
            fewest = tiles.size();
            best = tileOf.clone();
            return true;
        }
        int need = order[k];
        List<List<Envelope>> ways = ways(needs.get(need));
        for (int t = 0; t < tiles.size(); t++) {
            for (List<Envelope> boxes : ways) {
                if (!placeIn(t, boxes, k)) {
                    return false;
                }
            }
        }
        tileOf[need] = tiles.size();
        tiles.add(new ArrayList<>(needs.get(need).boxes));
        boolean finished = place(k + 1);
        tiles.remove(tiles.size() - 1);
        return finished;
    }

    private boolean placeIn(int t, List<Envelope> boxes, int k) {
        List<Envelope> taken = tiles.get(t);
        work.take(20L * (1 + (long) taken.size() * boxes.size()));
        if (work.isSpent()) {
            return false;
        }
        if (!fits(taken, boxes)) {
            return true;
        }
        int before = taken.size();
        taken.addAll(boxes);
        tileOf[order[k]] = t;
        boolean finished = place(k + 1);
        taken.subList(before, taken.size()).clear();
        return finished;
    }

    private boolean fits(List<Envelope> taken, List<Envelope> boxes) {
        for (Envelope a : taken) {
            for (Envelope b : boxes) {
                if (!parted(a, b)) {
                    return false;
                }
            }
        }
        if (taken.size() + boxes.size() < 4) {
            return true;
        }
        List<Envelope> all = new ArrayList<>(taken);
        all.addAll(boxes);
        return isSawn(all);
    }

    /** Whether saw cuts from edge to edge part them all; up to three that lie apart always are. */
    private boolean isSawn(List<Envelope> boxes) {
        if (boxes.size() < 4) {
            return true;
        }
        for (boolean alongX : new boolean[] {true, false}) {
            List<Envelope> sorted = boxes.stream()
                    .sorted(Comparator.comparingDouble(b -> alongX ? b.getMinX() : b.getMinY()))
                    .toList();
            double reached = Double.NEGATIVE_INFINITY;
            for (int i = 0; i + 1 < sorted.size(); i++) {
                Envelope before = sorted.get(i);
                Envelope after = sorted.get(i + 1);
                reached = Math.max(reached, alongX ? before.getMaxX() : before.getMaxY());
                if ((alongX ? after.getMinX() : after.getMinY()) - reached >= kerf - 1e-6) {
                    return isSawn(sorted.subList(0, i + 1)) && isSawn(sorted.subList(i + 1, sorted.size()));
                }
            }
        }
        return false;
    }

    private boolean parted(Envelope a, Envelope b) {
        double gapX = Math.max(a.getMinX() - b.getMaxX(), b.getMinX() - a.getMaxX());
        double gapY = Math.max(a.getMinY() - b.getMaxY(), b.getMinY() - a.getMaxY());
        return Math.max(gapX, gapY) >= kerf - 1e-6;
    }

    /** A need's rectangles in every way its tile may be turned. */
    private List<List<Envelope>> ways(Need need) {
        return IntStream.range(0, turns)
                .mapToObj(turn -> need.boxes.stream().map(b -> turned(b, turn)).toList())
                .toList();
    }

    private Envelope turned(Envelope b, int turn) {
        return switch (turn) {
            case 0 -> b;
            case 1 ->
                new Envelope(length - b.getMaxX(), length - b.getMinX(), width - b.getMaxY(), width - b.getMinY());
            case 2 -> new Envelope(length - b.getMaxY(), length - b.getMinY(), b.getMinX(), b.getMaxX());
            default -> new Envelope(b.getMinY(), b.getMaxY(), width - b.getMaxX(), width - b.getMinX());
        };
    }
}
