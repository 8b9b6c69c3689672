package org.heatfloor.routing;

import org.jspecify.annotations.Nullable;

/** The rest of a cable that lies in part: what stays, the floor it may use and the length the whole cable must have. */
final class Rest {

    final OpenFloor floor;
    final Part part;
    /** Junctions the rest may use. */
    final boolean[] open;

    final LaidStretch laid;
    /** Whether the cable comes back to the wall. */
    final boolean returns;

    /** Length of the whole heating part. */
    final double targetMetres;

    Rest(OpenFloor floor, Part part, boolean[] open, LaidStretch laid, boolean returns, double targetMetres) {
        this.floor = floor;
        this.part = part;
        this.open = open;
        this.laid = laid;
        this.returns = returns;
        this.targetMetres = targetMetres;
    }

    /** Place of the last junction that stays; the rest may turn there. */
    int first() {
        return laid.first();
    }

    /** The junction there. */
    int head() {
        return laid.nodes()[first()];
    }

    /** Direction in which the rest comes to the head. */
    int headDirection() {
        return direction(laid.nodes(), first() - 1);
    }

    /** Direction from one place of a string of junctions to the next. */
    int direction(int[] nodes, int place) {
        return ChannelWay.direction(nodes[place + 1] - nodes[place], floor.lattice.width);
    }

    /** Least spacing, in pitches. */
    int spacing() {
        return floor.site.spacingPitches();
    }

    /** A strand that begins with what stays. */
    Strand strand(int[] nodes, int count, int keptAtEnd) {
        return new Strand(floor.lattice, open, spacing(), floor.site.leastRun(), nodes, count, first(), keptAtEnd);
    }

    /** The junctions that may lie between two places of a string of junctions. */
    boolean[] between(int[] nodes, int from, int to) {
        return Strand.permitted(floor.lattice, open, spacing(), nodes, from, to, nodes.length);
    }

    /** Even spacing of the length still to be laid over the floor still open, in pitches. */
    double evenGap() {
        double area = laid.reach(floor, open).unionOfSquares(part.spacing);
        return area / Math.max(1, (targetMetres - laid.metres()) / floor.site.pitch);
    }

    /** Length of a strand's heating part, in metres. */
    double metres(Strand strand) {
        return Resting.availableMetres(floor.site, laid.joint(), strand)
                - (strand.keptAtEnd > 0 ? exitLost(strand) : 0);
    }

    /** Pitches that a strand is too short by; negative where it is too long. */
    double missing(Strand strand) {
        return (targetMetres - metres(strand)) / floor.site.pitch;
    }

    /** Metres at the end of a returning strand that are cold lead. */
    private double exitLost(Strand strand) {
        return floor.site.jointLength + (strand.keptAtEnd - 1 > straightExit() ? floor.site.bendRadius : 0);
    }

    /** Pitches that the joint and a bend before it take up on the way to the wall. */
    int straightExit() {
        return (int) Math.ceil((floor.site.jointLength + floor.site.bendRadius) / floor.site.pitch - 1e-6);
    }

    /** Pitches that two turns take by their rounding. */
    double turnPairPitches() {
        return 2 * Part.CORNER * floor.site.bendRadius / floor.site.pitch;
    }

    /**
     * Whether a strand may be brought to the exact length. Where a cable comes back, its second joint may lie a little way
     * outside the channels, so that up to a joint's length may be missing.
     */
    boolean mayDo(Strand strand) {
        return missing(strand) <= (returns ? floor.site.jointLength / floor.site.pitch : 0);
    }

    /** The strand brought to the exact length; null if that fails. */
    @Nullable
    Resting exact(Strand strand) {
        return Resting.of(floor, part, laid, strand, returns, targetMetres);
    }
}
