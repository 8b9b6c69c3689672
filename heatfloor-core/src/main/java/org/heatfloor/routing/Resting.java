package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;

/** A whole cable, laid part and rest, brought to the exact length. */
final class Resting {

    private static final double CLOSE_METRES = 1e-9;

    final int[] nodes;
    /** Place where the heating part ends, in pitches from the first junction. */
    final double end;

    final double joint;
    final double laidMetres;
    final int turns;
    final double coldShare;
    final double farthestMetres;
    /** The end at the wall of a cable that comes back; null for an open route. */
    final @Nullable Ends last;

    final double movedLast;
    final @Nullable LatticePath path;

    private Resting(
            OpenFloor floor,
            Part part,
            int[] nodes,
            double joint,
            double end,
            double laidMetres,
            int turns,
            double targetMetres,
            @Nullable Ends last,
            double movedLast,
            @Nullable LatticePath path) {
        this.nodes = nodes;
        this.joint = joint;
        this.end = end;
        this.laidMetres = laidMetres;
        this.turns = turns;
        this.last = last;
        this.movedLast = movedLast;
        this.path = path;
        boolean[] heated = new boolean[floor.lattice.free.length];
        for (int i = Math.max(0, (int) Math.ceil(joint)); i < nodes.length && i <= end + 1e-9; i++) {
            heated[nodes[i]] = true;
        }
        double[] cold = Coverage.measure(part.lattice, heated, part.area * floor.site.pitch / targetMetres);
        coldShare = cold[0];
        farthestMetres = cold[1] * floor.site.pitch;
    }

    /** Turns with the cold share priced at three turns a percent. */
    double cost() {
        return turns + 300 * coldShare;
    }

    static double availableMetres(RouteSite site, double joint, Strand strand) {
        return (strand.count() - 1 - joint) * site.pitch - Part.CORNER * site.bendRadius * strand.turnsAfter(joint);
    }

    /** Makes a strand exact that is long enough; null if that fails. */
    static @Nullable Resting of(
            OpenFloor floor, Part part, LaidStretch laid, Strand strand, boolean returns, double targetMetres) {
        return returns
                ? closed(floor, part, laid, strand, targetMetres)
                : open(floor, part, laid, strand, targetMetres);
    }

    private static @Nullable Resting open(
            OpenFloor floor, Part part, LaidStretch laid, Strand strand, double targetMetres) {
        double pitch = floor.site.pitch;
        double bend = floor.site.bendRadius;
        double arc = Part.CORNER * bend;
        int turns = strand.turnsAfter(laid.joint());
        int to = strand.count() - 1;
        while (to > 0) {
            int from = to - 1;
            while (from > 0 && !(strand.turnsAt(from) && from > laid.joint())) {
                from--;
            }
            boolean corner = from > 0;
            double least = corner ? from + bend / pitch : Math.max(0, laid.joint());
            double wanted = laid.joint() + (targetMetres + turns * arc) / pitch;
            if (wanted >= least - 1e-9) {
                double end = Math.min(wanted, to);
                if (end < laid.head() - 1e-9) {
                    return null;
                }
                double metres = (end - laid.joint()) * pitch - turns * arc;
                if (targetMetres - metres > pitch) {
                    return null;
                }
                int[] kept = Arrays.copyOf(strand.nodes(), Math.min(strand.count(), (int) Math.ceil(end - 1e-9) + 1));
                return new Resting(floor, part, kept, laid.joint(), end, metres, turns, targetMetres, null, 0, null);
            }
            turns--;
            to = from;
        }
        return null;
    }

    private static @Nullable Resting closed(
            OpenFloor floor, Part part, LaidStretch laid, Strand strand, double targetMetres) {
        double pitch = floor.site.pitch;
        for (int pass = 0; pass < 400; pass++) {
            LatticePath path = LatticePath.of(floor.lattice, strand.spacing, strand.leastRun, strand.nodes());
            Ends last = Ends.of(part, path, true);
            if (last == null || path.runs() - 1 - last.run() < 0) {
                return null;
            }
            double lost = last.fromRunStart();
            int lostTurns = 0;
            for (int r = 0; r < last.run(); r++) {
                lost += path.runLength(path.runs() - 1 - r) * pitch;
                lostTurns++;
            }
            int turns = strand.turnsAfter(laid.joint()) - lostTurns;
            double available =
                    (strand.count() - 1 - laid.joint()) * pitch - Part.CORNER * floor.site.bendRadius * turns - lost;
            double excess = available - targetMetres;
            if (excess < -last.back() - CLOSE_METRES) {
                return null;
            }
            if (excess > Math.min(last.slack(), 2 * pitch)
                    && Pulling.shorten(strand, (int) Math.floor(excess / pitch))) {
                continue;
            }
            if (excess > last.slack() + CLOSE_METRES) {
                return null;
            }
            double end = strand.count() - 1 - (lost + excess) / pitch;
            if (end < laid.head()) {
                return null;
            }
            return new Resting(
                    floor,
                    part,
                    strand.nodes(),
                    laid.joint(),
                    end,
                    targetMetres,
                    turns,
                    targetMetres,
                    last,
                    excess,
                    path);
        }
        return null;
    }

    /** Corner points between two places, in metres; the places are the first and the last point. */
    List<Coordinate> corners(OpenFloor floor, double from, double to) {
        return corners(floor, nodes, from, to);
    }

    static List<Coordinate> corners(OpenFloor floor, int[] nodes, double from, double to) {
        List<Coordinate> out = new ArrayList<>();
        out.add(point(floor, nodes, from));
        for (int i = Math.max(1, (int) Math.floor(from) + 1); i < to - 1e-9 && i + 1 < nodes.length; i++) {
            if (nodes[i + 1] - nodes[i] != nodes[i] - nodes[i - 1]) {
                out.add(floor.metres(nodes[i]));
            }
        }
        out.add(point(floor, nodes, to));
        return out;
    }

    private static Coordinate point(OpenFloor floor, int[] nodes, double place) {
        int i = Math.max(0, Math.min(nodes.length - 2, (int) Math.floor(place)));
        Coordinate a = floor.metres(nodes[i]);
        Coordinate b = floor.metres(nodes[i + 1]);
        double share = place - i;
        return new Coordinate(a.x + share * (b.x - a.x), a.y + share * (b.y - a.y));
    }
}
