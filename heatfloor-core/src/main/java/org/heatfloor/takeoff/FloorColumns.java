package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.heatfloor.takeoff.StripCutter.Piece;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * The stud cells a floor touches, column by column, for bounds that hold however strips are cut across. A piece of a strip
 * holds whole columns of it, so it is at least as wide as the floor is in each of its columns.
 */
final class FloorColumns {

    /** The rows from and to that one part of a region takes in a column. */
    private record Part(int from, int to, boolean convex) {}

    private final Map<Integer, List<Part>> columns = new HashMap<>();
    private long cells;

    FloorColumns(List<Polygon> floor) {
        for (Polygon region : floor) {
            Envelope e = region.getEnvelopeInternal();
            int first = (int) Math.floor(e.getMinX() + StripCutter.SLACK);
            int last = (int) Math.ceil(e.getMaxX() - StripCutter.SLACK);
            part(region, first, Math.max(first + 1, last), e);
        }
    }

    /** Halves the floor until each part is one column: a clip of a part costs less than one of the whole. */
    private void part(Geometry floor, int from, int to, Envelope region) {
        if (to - from == 1) {
            add(from, floor, region);
            return;
        }
        int middle = Math.floorDiv(from + to, 2);
        half(floor, from, middle, region);
        half(floor, middle, to, region);
    }

    private void half(Geometry floor, int from, int to, Envelope region) {
        Envelope box = new Envelope(from, to, region.getMinY() - 1, region.getMaxY() + 1);
        List<Polygon> clipped = new ArrayList<>();
        for (Polygon part : FloorRegions.polygons(floor)) {
            clipped.addAll(FloorRegions.polygons(StripCutter.clipped(part, box)));
        }
        if (!clipped.isEmpty()) {
            part(FloorRegions.FACTORY.buildGeometry(clipped), from, to, region);
        }
    }

    private void add(int u, Geometry column, Envelope region) {
        int base = (int) Math.floor(region.getMinY()) - 1;
        BitSet rows = new BitSet();
        for (Polygon part : FloorRegions.polygons(column)) {
            Envelope e = part.getEnvelopeInternal();
            if (Math.min(e.getWidth(), e.getHeight()) > StripCutter.SLACK) {
                int from = (int) Math.floor(e.getMinY() + StripCutter.SLACK);
                int to = Math.max(from + 1, (int) Math.ceil(e.getMaxY() - StripCutter.SLACK));
                rows.set(from - base, to - base);
                boolean convex = part.convexHull().getArea() - part.getArea() < StripCutter.SLACK;
                columns.computeIfAbsent(u, k -> new ArrayList<>()).add(new Part(from, to, convex));
            }
        }
        cells += rows.cardinality();
    }

    /** Stock no cut into whole pitches can do without: cells over the cells of one, rounded up. */
    int cellBound(int band, int stockLength) {
        long one = (long) band * stockLength;
        return (int) Math.max(1, (cells + one - 1) / one);
    }

    /**
     * Stock that no way to cut these strips across, to lay their pieces on the stock and to turn the narrow uncut ones can do
     * without: the cells, and the length of all that is too wide to lie beside another.
     */
    int stripBound(List<Piece> strips, int band, int phase, int stockLength) {
        Set<List<Integer>> claimed = new HashSet<>();
        long alone = 0;
        for (int pass = 0; pass < 2; pass++) {
            for (Piece strip : strips) {
                boolean turnable = strip.isTurnable(band, stockLength);
                if (turnable == (pass == 0)) {
                    int start = phase + Math.floorDiv(strip.v() - phase, band) * band;
                    int wide = wideColumns(strip, start, band, claimed);
                    int turned = 2 * strip.length() > band ? strip.width() : 0;
                    alone += turnable ? Math.min(wide, turned) : wide;
                }
            }
        }
        return Math.max(cellBound(band, stockLength), (int) ((alone + stockLength - 1) / stockLength));
    }

    private int wideColumns(Piece strip, int start, int band, Set<List<Integer>> claimed) {
        int wide = 0;
        for (int u = strip.u(); u < strip.u() + strip.length(); u++) {
            int widest = 0;
            for (Part part : columns.getOrDefault(u, List.of())) {
                int from = Math.max(part.from, strip.v());
                int to = Math.min(part.to, strip.v() + strip.width());
                widest = part.convex ? Math.max(widest, to - from) : widest;
            }
            if (2 * widest > band && claimed.add(List.of(start, u))) {
                wide++;
            }
        }
        return wide;
    }
}
