package org.heatfloor.grid;

import java.util.Objects;
import org.locationtech.jts.geom.LineString;

/** Where two sheets of membrane meet, along a channel line of the lattice. Coordinates are metres. */
public final class Seam {

    private final String name;
    private final LineString line;
    private final int crossingChannels;

    Seam(String name, LineString line, int crossingChannels) {
        this.name = Objects.requireNonNull(name);
        this.line = line;
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

    /**
     * Channels in which a cable may pass from one sheet to the other.
     *
     * @return the number
     */
    public int crossingChannels() {
        return crossingChannels;
    }
}
