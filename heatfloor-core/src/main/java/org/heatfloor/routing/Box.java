package org.heatfloor.routing;

/** A rectangle of junctions, its edges included, to which work is confined. */
record Box(int left, int bottom, int right, int top) {

    static Box whole(Lattice lattice) {
        return new Box(0, 0, lattice.width - 1, lattice.height - 1);
    }

    /** The smallest box about some places of a strand, wider by a margin on every side, within the lattice. */
    static Box about(Strand strand, int from, int to, int margin) {
        int width = strand.lattice.width;
        int left = Integer.MAX_VALUE;
        int bottom = Integer.MAX_VALUE;
        int right = 0;
        int top = 0;
        for (int place = from; place <= to; place++) {
            int x = strand.node(place) % width;
            int y = strand.node(place) / width;
            left = Math.min(left, x);
            right = Math.max(right, x);
            bottom = Math.min(bottom, y);
            top = Math.max(top, y);
        }
        return new Box(left, bottom, right, top).wider(margin, strand.lattice);
    }

    Box wider(int margin, Lattice lattice) {
        return new Box(
                Math.max(0, left - margin),
                Math.max(0, bottom - margin),
                Math.min(lattice.width - 1, right + margin),
                Math.min(lattice.height - 1, top + margin));
    }

    boolean holds(Lattice lattice, int node) {
        int x = node % lattice.width;
        int y = node / lattice.width;
        return x >= left && x <= right && y >= bottom && y <= top;
    }

    /** Whether a straight stretch of a strand lies wholly outside. */
    boolean misses(Strand strand, int from, int to) {
        int width = strand.lattice.width;
        int ax = strand.node(from) % width;
        int bx = strand.node(to) % width;
        int ay = strand.node(from) / width;
        int by = strand.node(to) / width;
        return Math.max(ax, bx) < left
                || Math.min(ax, bx) > right
                || Math.max(ay, by) < bottom
                || Math.min(ay, by) > top;
    }
}
