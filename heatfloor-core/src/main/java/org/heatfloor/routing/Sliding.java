package org.heatfloor.routing;

/**
 * Slides runs between two bends of opposite hand sideways. The length stays; the room beside the runs is gathered on one
 * side, where more cable may then find place (the compaction of orthogonal drawings, G. Klau, P. Mutzel, IPCO 1999, from
 * memory).
 */
final class Sliding {

    private static final int PASSES = 6;

    private Sliding() {}

    /**
     * Slides every run that can be slid in a direction as far as it goes.
     *
     * @param strand the strand, which is changed
     * @param off difference of the numbers of neighbouring junctions in the direction
     * @return whether anything moved
     */
    static boolean gather(Strand strand, int off) {
        return gather(strand, off, Box.whole(strand.lattice));
    }

    /** The same for the runs that reach into a box. */
    static boolean gather(Strand strand, int off, Box box) {
        boolean any = false;
        for (int pass = 0; pass < PASSES; pass++) {
            boolean moved = false;
            for (int start = Math.max(1, strand.first); start + 1 < strand.last(); start++) {
                if (!strand.turnsAt(start)) {
                    continue;
                }
                int end = start + 1;
                while (end + 1 < strand.count() && !strand.turnsAt(end)) {
                    end++;
                }
                if (box.misses(strand, start, end)
                        || end + 1 >= strand.count()
                        || end > strand.last()
                        || strand.step(end) != strand.step(start - 1)
                        || Math.abs(strand.step(end)) != Math.abs(off)) {
                    continue;
                }
                for (int d = 4; d >= 1; d /= 2) {
                    if (slide(strand, start, end, off, d)) {
                        moved = true;
                        break;
                    }
                }
            }
            any |= moved;
            if (!moved) {
                break;
            }
        }
        return any;
    }

    private static boolean slide(Strand strand, int start, int end, int off, int by) {
        int along = strand.step(start);
        int across = end - start;
        int[] fresh = new int[by + across];
        int n = 0;
        if (strand.step(end) == off) {
            if (end + by > Math.min(strand.last(), strand.count() - 1) || !straight(strand, end, by, off)) {
                return false;
            }
            int v = strand.node(start);
            for (int t = 0; t < by; t++) {
                v += off;
                fresh[n++] = v;
            }
            for (int t = 1; t < across; t++) {
                v += along;
                fresh[n++] = v;
            }
            return strand.replace(start, end + by, fresh, n);
        }
        if (start - by < strand.first || !straight(strand, start - by, by, -off)) {
            return false;
        }
        int v = strand.node(start - by);
        for (int t = 0; t < across; t++) {
            v += along;
            fresh[n++] = v;
        }
        for (int t = 1; t < by; t++) {
            v -= off;
            fresh[n++] = v;
        }
        return strand.replace(start - by, end, fresh, n);
    }

    private static boolean straight(Strand strand, int from, int steps, int step) {
        for (int i = from; i < from + steps; i++) {
            if (i + 1 >= strand.count() || strand.step(i) != step) {
                return false;
            }
        }
        return true;
    }
}
