package org.heatfloor.grid;

import java.util.List;
import java.util.Objects;
import org.locationtech.jts.geom.LineString;

/** Where two sheets of membrane meet, along a channel line of the lattice. Coordinates are metres. */
public final class Seam {

    private final String name;
    private final LineString line;
    private final int crossingChannels;
    private final List<LineString> pieces;

    Seam(String name, LineString line, int crossingChannels, List<LineString> pieces) {
        this.name = Objects.requireNonNull(name);
        this.line = line;
        this.pieces = List.copyOf(pieces);
        this.crossingChannels = crossingChannels;
    }

    /**
     * Its name.
     *
     * @return for example {@code seam along column 35}
     */
    public String name() {
        return name;
    }

    /**
     * Its line across the grid.
     *
     * @return a copy, in metres
     */
    public LineString line() {
        return (LineString) line.copy();
    }

    /** Where two pieces of membrane do meet along the line, each from its lower end to its upper. */
    List<LineString> pieces() {
        return pieces;
    }

    /**
     * Channels in which a cable may pass from one sheet to the other.
     *
     * @return the number
     */
    public int crossingChannels() {
        return crossingChannels;
    }
}
