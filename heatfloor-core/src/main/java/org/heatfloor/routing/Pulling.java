package org.heatfloor.routing;

/** Shortens a strand by pulling the bases of U-turns back, one pitch each and from everywhere in turn. */
final class Pulling {

    private Pulling() {}

    /**
     * Shortens a strand by an even number of pitches.
     *
     * @param strand the strand, which is changed
     * @param by pitches to take out at most
     * @return whether anything was taken out
     */
    static boolean shorten(Strand strand, int by) {
        int left = by;
        boolean any = false;
        int start = strand.first;
        while (left >= 2) {
            boolean moved = false;
            for (int i = Math.max(1, start); i + 1 < strand.last() && left >= 2; i++) {
                if (!strand.turnsAt(i)) {
                    continue;
                }
                int end = i + 1;
                while (end + 1 < strand.count() && !strand.turnsAt(end)) {
                    end++;
                }
                if (end + 1 >= strand.count() || strand.step(end) != -strand.step(i - 1)) {
                    continue;
                }
                int many = left > 24 ? Math.min(left / 2, 8) : 1;
                for (int d = many; d >= 1; d /= 2) {
                    if (pull(strand, i, end, d)) {
                        left -= 2 * d;
                        any = true;
                        moved = true;
                        break;
                    }
                }
            }
            if (!moved) {
                return any;
            }
        }
        return any;
    }

    private static boolean pull(Strand strand, int start, int end, int depth) {
        int from = start - depth;
        int to = end + depth;
        if (from < strand.first || to > Math.min(strand.last(), strand.count() - 1)) {
            return false;
        }
        int out = strand.step(start - 1);
        int across = end - start;
        for (int t = 0; t < depth; t++) {
            if (strand.step(start - 1 - t) != out || strand.step(end + t) != -out) {
                return false;
            }
        }
        int along = strand.step(start);
        int[] fresh = new int[across];
        int v = strand.node(from);
        for (int t = 0; t + 1 < across; t++) {
            v += along;
            fresh[t] = v;
        }
        return strand.replace(from, to, fresh, across - 1);
    }
}
