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
 * when a saw cut passes between the rectangles around them. First fit, largest first.
 */
final class OffcutPool {

    /** Rectangles a tile position needs, in the tile's own frame with its lower left corner at 0. */
    record Need(List<Envelope> boxes) {
        double area() {
            return boxes.stream().mapToDouble(Envelope::getArea).sum();
        }
    }

    private final double length;
    private final double width;
    private final double kerf;
    private final int turns;

    private OffcutPool(double length, double width, double kerf, boolean turnable) {
        this.length = length;
        this.width = width;
        this.kerf = kerf;
        this.turns = turnable ? (Math.abs(length - width) < 1e-6 ? 4 : 2) : 1;
    }

    /** For each need the number of its tile, from 0. */
    static int[] share(List<Need> needs, double length, double width, double kerf, boolean turnable) {
        return new OffcutPool(length, width, kerf, turnable).firstFit(needs);
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

    private int[] firstFit(List<Need> needs) {
        Integer[] order = IntStream.range(0, needs.size()).boxed().toArray(Integer[]::new);
        Arrays.sort(
                order,
                Comparator.<Integer>comparingDouble(i -> -needs.get(i).area()).thenComparingInt(i -> i));
        List<List<Envelope>> tiles = new ArrayList<>();
        int[] tileOf = new int[needs.size()];
        for (int i : order) {
            tileOf[i] = placed(needs.get(i), tiles);
        }
        return tileOf;
    }

    private int placed(Need need, List<List<Envelope>> tiles) {
        for (int t = 0; t < tiles.size(); t++) {
            for (int turn = 0; turn < turns; turn++) {
                List<Envelope> boxes = turned(need.boxes, turn);
                if (fits(tiles.get(t), boxes)) {
                    tiles.get(t).addAll(boxes);
                    return t;
                }
            }
        }
        tiles.add(new ArrayList<>(need.boxes));
        return tiles.size() - 1;
    }

    private boolean fits(List<Envelope> taken, List<Envelope> boxes) {
        return taken.stream().allMatch(a -> boxes.stream().allMatch(b -> parted(a, b)));
    }

    private boolean parted(Envelope a, Envelope b) {
        double gapX = Math.max(a.getMinX() - b.getMaxX(), b.getMinX() - a.getMaxX());
        double gapY = Math.max(a.getMinY() - b.getMaxY(), b.getMinY() - a.getMaxY());
        return Math.max(gapX, gapY) >= kerf - 1e-6;
    }

    private List<Envelope> turned(List<Envelope> boxes, int turn) {
        return boxes.stream().map(b -> turned(b, turn)).toList();
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
