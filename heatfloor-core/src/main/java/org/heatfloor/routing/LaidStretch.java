package org.heatfloor.routing;

import java.util.Arrays;
import java.util.Optional;

/**
 * What of a cable stays on the floor: the junctions up to the first one at which it may turn again. The head lies on
 * the last run of it, or it has begun a bend, which then is finished.
 */
final class LaidStretch {

    private final int[] nodes;
    private final double joint;
    private final double head;
    private final double metres;
    private final int row;

    private LaidStretch(int[] nodes, double joint, double head, double metres, int row) {
        this.nodes = nodes;
        this.joint = joint;
        this.head = head;
        this.metres = metres;
        this.row = row;
    }

    /** The junctions, those of the cold lead included; not to be changed. */
    int[] nodes() {
        return nodes;
    }

    /** Place where the heating part begins, in pitches from the first junction. */
    double joint() {
        return joint;
    }

    /** Place of the head. */
    double head() {
        return head;
    }

    /** Length of the heating part up to the head. */
    double metres() {
        return metres;
    }

    /** Number of the straight run on which the head lies, from 1. */
    int row() {
        return row;
    }

    /** Place of the last junction: there the cable may turn. */
    int first() {
        return nodes.length - 1;
    }

    /**
     * Where the head lies for a length laid.
     *
     * @param place in pitches from the first junction; behind a bend that has been begun
     * @param corner place of the last corner before it; negative if there is none
     * @param row number of the straight run, from 1
     */
    record Head(double place, int corner, int row) {

        static Head of(Track track, RouteSite site, double metres) {
            double bend = site.bendRadius / site.pitch;
            int[] nodes = track.nodes();
            double laid = 0;
            double from = track.joint();
            int corner = -1;
            int row = 1;
            for (int i = Math.max(1, (int) Math.ceil(track.joint() + 1e-9)); ; i++) {
                boolean end = i >= nodes.length - 1 || i >= track.end();
                if (!end && nodes[i + 1] - nodes[i] == nodes[i] - nodes[i - 1]) {
                    continue;
                }
                double to = end ? Math.max(from, track.end()) : Math.max(from, i - bend);
                if (end || metres <= laid + (to - from) * site.pitch + 1e-9) {
                    return new Head(Math.min(to, from + Math.max(0, metres - laid) / site.pitch), corner, row);
                }
                laid += (to - from) * site.pitch + Math.PI / 2 * site.bendRadius;
                corner = i;
                row++;
                from = i + bend;
                if (metres < laid - 1e-9) {
                    return new Head(from, corner, row);
                }
            }
        }
    }

    /** The stretch of a track up to a length of the heating part; empty if the channel ahead of the head is not open. */
    static Optional<LaidStretch> upTo(Track track, OpenFloor floor, double metres) {
        Head head = Head.of(track, floor.site, metres);
        double bend = floor.site.bendRadius / floor.site.pitch;
        int least = head.corner < 0 ? 1 : head.corner + Math.max(1, floor.site.leastRun());
        int first = Math.max(least, (int) Math.ceil(head.place + bend - 1e-6));
        int[] old = track.nodes();
        int known = Math.min(
                old.length - 1, Math.max(1, Math.min(first, Math.max(head.corner + 1, (int) Math.floor(head.place)))));
        if (known < 1) {
            return Optional.empty();
        }
        int[] nodes = Arrays.copyOf(old, first + 1);
        int step = old[known] - old[known - 1];
        for (int i = known + 1; i <= first; i++) {
            nodes[i] = nodes[i - 1] + step;
        }
        for (int i = Math.max(1, (int) Math.floor(head.place + 1e-6) + 1); i <= first; i++) {
            if (!steps(floor.lattice, nodes[i - 1], nodes[i] - nodes[i - 1])) {
                return Optional.empty();
            }
        }
        return Optional.of(new LaidStretch(nodes, track.joint(), head.place, metres, head.row));
    }

    /** The junctions that the rest of the cable may still reach. */
    Lattice reach(OpenFloor floor, boolean[] open) {
        return floor.joinedTo(nodes[first()], permitted(floor, open, first()));
    }

    /** The junctions that may follow the stretch up to a place on it. */
    boolean[] permitted(OpenFloor floor, boolean[] open, int until) {
        return Strand.permitted(
                floor.lattice, open, floor.site.spacingPitches(), nodes, until, nodes.length, nodes.length);
    }

    /** Length of the heating part up to the last junction. */
    double metresToTip(RouteSite site) {
        int turns = 0;
        for (int i = Math.max(1, (int) Math.ceil(joint)); i + 1 < nodes.length; i++) {
            turns += nodes[i + 1] - nodes[i] != nodes[i] - nodes[i - 1] ? 1 : 0;
        }
        return (first() - joint) * site.pitch - turns * Part.CORNER * site.bendRadius;
    }

    private static boolean steps(Lattice lattice, int node, int step) {
        if (node < 0 || node >= lattice.channels.length) {
            return false;
        }
        int bit = step == 1
                ? Lattice.EAST
                : step == -1 ? Lattice.WEST : step == lattice.width ? Lattice.NORTH : Lattice.SOUTH;
        return (lattice.channels[node] & bit) != 0;
    }

    /** Length of a track's heating part up to a place on it, with the bends before it rounded. */
    static double metresTo(Track track, double place, double bendMetres, double pitchMetres) {
        int[] nodes = track.nodes();
        int turns = 0;
        for (int i = Math.max(1, (int) Math.ceil(track.joint())); i + 1 < nodes.length && i < place; i++) {
            turns += nodes[i + 1] - nodes[i] != nodes[i] - nodes[i - 1] ? 1 : 0;
        }
        return (place - track.joint()) * pitchMetres - turns * Part.CORNER * bendMetres;
    }
}
