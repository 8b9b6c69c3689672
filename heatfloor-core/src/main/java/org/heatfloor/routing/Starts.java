package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Where the search for a route of one length begins: loops round trees on sets of lines, opened where a cold lead reaches them. */
final class Starts {

    /** Length too much that trimming takes care of, in pitches. */
    private static final double SLACK = 8;

    private final Part part;
    private final boolean returns;
    private final double lengthMetres;
    private final double pricePerPitch;

    /**
     * Starts of one length of cable.
     *
     * @param pricePerPitch of a pitch of length too much or too little, in turns
     */
    Starts(Part part, boolean returns, double lengthMetres, double pricePerPitch) {
        this.part = part;
        this.returns = returns;
        this.lengthMetres = lengthMetres;
        this.pricePerPitch = pricePerPitch;
    }

    /** Loops on lines whose mean gap is nearly the even spacing, given as shares of it, that can make up the length. */
    List<Walk> nearEven(double closest, double widest, double leastShare) {
        Lattice lattice = part.lattice;
        Wanted wanted = part.wanted;
        if (wanted != null) {
            List<Walk> walks = new ArrayList<>();
            for (ZoneGrids.Ranked ranked : new ZoneGrids(wanted, part.leastGap(), closest, widest).best(target())) {
                loops(ranked.grid, walks, target(), ranked.alongRow);
            }
            return walks;
        }
        double even = steady(part.area / (lengthMetres / part.site.pitch));
        int least = part.leastGap();
        double low = Math.max(least, closest * even);
        double high = Math.max(least + 1, widest * even);
        List<int[]> columns = LineSets.of(
                lattice.firstColumn(), lattice.lastColumn(), least, low, high, LineSets.boundaries(lattice, true));
        List<int[]> rows = LineSets.of(
                lattice.firstRow(), lattice.lastRow(), least, low, high, LineSets.boundaries(lattice, false));
        double target = target();
        List<Walk> walks = new ArrayList<>();
        for (int[] xs : columns) {
            for (int[] ys : rows) {
                CoarseGrid grid = new CoarseGrid(lattice, xs, ys);
                double gx = mean(xs);
                double gy = mean(ys);
                if (grid.nodes * Math.max(gx, gy) < leastShare * target
                        || grid.nodes * Math.min(gx, gy) > 1.3 * target) {
                    continue;
                }
                loops(grid, walks, target);
            }
        }
        return walks;
    }

    /** Loops on the densest lines, for a room that the cable nearly fills. */
    List<Walk> densest() {
        Lattice lattice = part.lattice;
        int least = part.leastGap();
        List<int[]> rows =
                LineSets.dense(lattice.firstRow(), lattice.lastRow(), least, LineSets.boundaries(lattice, false));
        List<Walk> walks = new ArrayList<>();
        for (int[] xs : LineSets.dense(
                lattice.firstColumn(), lattice.lastColumn(), least, LineSets.boundaries(lattice, true))) {
            for (int[] ys : rows) {
                loops(new CoarseGrid(lattice, xs, ys), walks, target());
            }
        }
        return walks;
    }

    /** Of all loops the most promising ones that can be opened; they are filled where too short. */
    List<Walk> opened(List<Walk> loops, int most, int mostAlike) {
        List<Walk> opened = new ArrayList<>();
        Map<Walk.Family, Integer> alike = new HashMap<>();
        for (Walk walk : new CostOrder(part).mostPromisingFirst(loops)) {
            if (opened.size() == most) {
                break;
            }
            if (alike.getOrDefault(walk.family(), 0) < mostAlike && gate(walk)) {
                alike.merge(walk.family(), 1, Integer::sum);
                walk.fill();
                opened.add(walk);
            }
        }
        return opened;
    }

    /** A figure without the last digits, so that the same room in other units gives the same route. */
    private static double steady(double figure) {
        return Math.rint(figure * 1e6) / 1e6;
    }

    /** Length an open route should have, in pitches, with one joint after a bend. */
    private double target() {
        return steady(
                (lengthMetres + (part.site.jointLength + part.site.bendRadius) * (returns ? 2 : 1)) / part.site.pitch);
    }

    /** The target with what the chosen opening of the loop really takes. */
    private double target(Walk walk, int node, int bit) {
        int other = walk.grid.step(node, bit);
        double metres = lengthMetres + entry(walk, node, bit);
        double gate = 0;
        if (returns) {
            metres += entry(walk, other, CoarseGrid.opposite(bit));
            gate = walk.grid.length(node, bit);
        }
        return steady(metres / part.site.pitch) + gate;
    }

    private double entry(Walk walk, int node, int bit) {
        int left = walk.used[node] & ~bit;
        boolean straight =
                part.waysAt.get(latticeNode(walk.grid, node)).stream().anyMatch(w -> w.bit() == left);
        return part.site.jointLength + (straight ? 0 : part.site.bendRadius);
    }

    private int latticeNode(CoarseGrid grid, int node) {
        return grid.ys[node / grid.columns] * part.lattice.width + grid.xs[node % grid.columns];
    }

    private void loops(CoarseGrid grid, List<Walk> walks, double target) {
        loops(grid, walks, target, null);
    }

    private void loops(CoarseGrid grid, List<Walk> walks, double target, boolean @Nullable [] alongRow) {
        boolean[] mayStart = mayStart(grid);
        Aim aim = new Aim(
                target, rounding(), SLACK, pricePerPitch, Candidate.COLD_PRICE / Math.max(1, grid.squares.length));
        for (int offsets = 0; offsets < 4; offsets++) {
            TreeLoops trees = new TreeLoops(grid, offsets & 1, offsets >> 1);
            for (byte[] used : trees.teeth(alongRow)) {
                add(new Walk(grid, used, mayStart, false), aim, walks);
            }
            for (byte[] used : trees.rings()) {
                add(new Walk(grid, used, mayStart, true), aim, walks);
            }
        }
    }

    private void add(Walk walk, Aim aim, List<Walk> walks) {
        walk.aim(aim);
        if (walk.length > 0) {
            walks.add(walk);
        }
    }

    private static double mean(int[] lines) {
        return (double) (lines[lines.length - 1] - lines[0]) / Math.max(1, lines.length - 1);
    }

    private boolean[] mayStart(CoarseGrid grid) {
        boolean[] out = new boolean[grid.edges.length];
        for (int v = 0; v < out.length; v++) {
            out[v] = part.starts[latticeNode(grid, v)];
        }
        return out;
    }

    /** Opens the loop where a cold lead reaches it and most turns go; locks the place for a cable that comes back. */
    private boolean gate(Walk walk) {
        boolean[] mayStart = walk.mayStart;
        int bestNode = -1;
        int bestBit = 0;
        double bestPrice = Double.POSITIVE_INFINITY;
        for (int v = 0; v < walk.used.length; v++) {
            if (!mayStart[v]) {
                continue;
            }
            for (int bit = 1; bit <= 8; bit <<= 1) {
                if ((walk.used[v] & bit) == 0) {
                    continue;
                }
                int other = walk.grid.step(v, bit);
                if (returns && !mayStart[other]) {
                    continue;
                }
                double price = price(walk, v, bit) + (returns ? price(walk, other, CoarseGrid.opposite(bit)) : 0);
                if (price < bestPrice) {
                    bestPrice = price;
                    bestNode = v;
                    bestBit = bit;
                }
            }
        }
        if (bestNode < 0) {
            return false;
        }
        walk.aim(walk.aim().withTarget(target(walk, bestNode, bestBit)));
        if (returns) {
            walk.lock(bestNode, walk.grid.step(bestNode, bestBit));
        } else {
            walk.cut(bestNode, bestBit);
        }
        return true;
    }

    /** Length that a rounded corner takes off, in pitches. */
    private double rounding() {
        return steady(Part.CORNER * part.site.bendRadius / part.site.pitch);
    }

    /** Price of starting at a node when the edge along the bit is taken out. */
    private double price(Walk walk, int v, int bit) {
        int left = walk.used[v] & ~bit;
        int node = latticeNode(walk.grid, v);
        double best = 50;
        for (LeadWays.Way way : part.waysAt.get(node)) {
            double entry = way.bit() == left ? 0 : way.bit() == CoarseGrid.opposite(left) ? 50 : 1;
            best = Math.min(best, entry + steady(0.3 * way.lengthMetres()));
        }
        return best - (walk.used[v] == 5 || walk.used[v] == 10 ? 0 : 1);
    }
}
