package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Parts a floor into strips along the first coordinate and the strips into pieces, all joints on whole numbers.
 * Coordinates are stud pitches; cell k reaches from k to k + 1 and has its stud in the middle.
 */
final class StripCutter {

    /** A millionth of a pitch: the grid of every geometry counted in pitches. */
    static final PrecisionModel GRID = new PrecisionModel(1e6);

    /** No piece is made shorter than this by a joint across a strip (common practice, no source). */
    static final int SHORTEST_PIECE = 3;

    static final double SLACK = 2e-6;

    /** A piece, the whole cells it needs, and whether it is a whole strip, with no joint across it. */
    record Piece(Polygon shape, int u, int v, int length, int width, boolean uncut) {

        /** Whether it may be cut a quarter turn round: a narrow rest of a strip that fits across the stock. */
        boolean isTurnable(int band, int stockLength) {
            return uncut && width < band && length <= band && width <= stockLength && length != width;
        }

        /** Whether both are rectangles of the same whole cells. */
        boolean isSameRectangle(Piece other) {
            return length == other.length && width == other.width && isRectangle(shape) && isRectangle(other.shape);
        }
    }

    private StripCutter() {}

    /** The strips of a floor: bands of {@code band} cells, one of which begins at {@code phase}. */
    static List<Piece> strips(List<Polygon> floor, int band, int phase) {
        List<Piece> strips = new ArrayList<>();
        for (Polygon region : floor) {
            Envelope e = region.getEnvelopeInternal();
            int first = Math.floorDiv((int) Math.floor(e.getMinY() + SLACK) - phase, band);
            for (int b = first; phase + (double) b * band < e.getMaxY() - SLACK; b++) {
                int v = phase + b * band;
                addClipped(strips, region, e.getMinX() - 1, v, e.getMaxX() + 1, v + band, true);
            }
        }
        return strips;
    }

    /** Whether a shape fills its envelope, whatever points lie on its sides. */
    static boolean isRectangle(Polygon shape) {
        return shape.getEnvelopeInternal().getArea() - shape.getArea() < SLACK;
    }

    /** Steps of {@link Work} to clip a strip, as measured: a rectangle needs no overlay. */
    static long steps(Polygon strip) {
        return isRectangle(strip) ? 500 : 40_000 + 1_500L * strip.getNumPoints();
    }

    /** Steps of {@link Work} to part a floor into strips and those, twice, into pieces; most points lie outside a strip. */
    static long steps(List<Polygon> floor, int band, int stockLength) {
        long steps = 0;
        for (Polygon region : floor) {
            Envelope e = region.getEnvelopeInternal();
            double strips = e.getHeight() / band + 1;
            double pieces = strips + region.getArea() / ((double) band * stockLength);
            long strip = isRectangle(region) ? 500 : 40_000 + 300L * region.getNumPoints();
            long piece = isRectangle(region) ? 500 : 60_000;
            steps += (long) (strips * strip + 2 * pieces * piece + strips * e.getWidth() * 200);
        }
        return Math.max(1, steps);
    }

    /**
     * The strips cut to pieces no longer than the stock.
     *
     * @param carry whether a strip begins with what the strip before left of its last stock
     */
    static List<Piece> pieces(List<Piece> strips, int band, int stockLength, boolean carry) {
        List<Piece> pieces = new ArrayList<>();
        int offcut = 0;
        for (Piece strip : strips) {
            boolean full = strip.width == band;
            int first = carry && full ? firstLength(strip.length, offcut) : 0;
            int at = 0;
            int last = 0;
            while (at < strip.length) {
                last = at == 0 && first > 0 ? first : nextLength(strip.length - at, stockLength);
                cut(pieces, strip, at, last);
                at += last;
            }
            if (full) {
                offcut = last == first && first == strip.length ? offcut - first : stockLength - last;
            }
        }
        return pieces;
    }

    /** What a strip takes of an offcut so that neither it nor the rest is too short; 0 when it takes none. */
    private static int firstLength(int strip, int offcut) {
        int first = Math.min(strip, offcut);
        int rest = strip - first;
        if (rest > 0 && rest < SHORTEST_PIECE) {
            first = strip - SHORTEST_PIECE;
        }
        return first >= Math.min(strip, SHORTEST_PIECE) ? first : 0;
    }

    private static int nextLength(int left, int stockLength) {
        if (left <= stockLength) {
            return left;
        }
        int lacking = shortest(stockLength) - (left - stockLength);
        return lacking > 0 ? stockLength - lacking : stockLength;
    }

    /** The shortest piece a joint across a strip may leave; very short stock allows any. */
    static int shortest(int stockLength) {
        return stockLength > 2 * SHORTEST_PIECE ? SHORTEST_PIECE : 1;
    }

    static void cut(List<Piece> pieces, Piece strip, int at, int length) {
        if (at == 0 && length == strip.length) {
            pieces.add(strip);
            return;
        }
        int u = strip.u + at;
        addClipped(pieces, strip.shape, u, strip.v, u + length, strip.v + strip.width, false);
    }

    /** The part of a shape inside a box; most shapes are rectangles, which need no overlay. */
    static Geometry clipped(Polygon shape, Envelope box) {
        Envelope e = shape.getEnvelopeInternal();
        if (box.contains(e)) {
            return shape;
        }
        Envelope shared = box.intersection(e);
        if (shared.getArea() == 0 || isRectangle(shape)) {
            return shared.getArea() == 0 ? FloorRegions.FACTORY.createPolygon() : rectangle(shared);
        }
        return FloorRegions.onGrid(OverlayNGRobust.overlay(shape, rectangle(box), OverlayNG.INTERSECTION), GRID);
    }

    private static Polygon rectangle(Envelope e) {
        return FloorRegions.rectangle(e.getMinX(), e.getMinY(), e.getMaxX(), e.getMaxY());
    }

    private static void addClipped(
            List<Piece> into, Polygon shape, double u0, double v0, double u1, double v1, boolean uncut) {
        Geometry clipped = clipped(shape, new Envelope(u0, u1, v0, v1));
        for (Polygon part : FloorRegions.polygons(clipped)) {
            Envelope e = part.getEnvelopeInternal();
            int u = (int) Math.floor(e.getMinX() + SLACK);
            int v = (int) Math.floor(e.getMinY() + SLACK);
            int length = Math.max(1, (int) Math.ceil(e.getMaxX() - SLACK) - u);
            int width = Math.max(1, (int) Math.ceil(e.getMaxY() - SLACK) - v);
            into.add(new Piece(part, u, v, length, width, uncut));
        }
    }

    /** The floor parted by a fixed grid of fields, {@code along} by {@code across} cells, one of which begins at (0, 0). */
    static List<Piece> fields(List<Polygon> floor, int across, int along) {
        List<Piece> fields = new ArrayList<>();
        for (Piece strip : strips(floor, across, 0)) {
            Envelope e = strip.shape.getEnvelopeInternal();
            int first = Math.floorDiv(strip.u, along);
            for (int b = first; (double) b * along < e.getMaxX() - SLACK; b++) {
                addClipped(fields, strip.shape, b * along, strip.v, (b + 1) * along, strip.v + strip.width, false);
            }
        }
        return fields;
    }

    /** Gives the pieces of each field a stock of its own; the number of fields. */
    static int fillSlots(List<Piece> pieces, int across, int along, LevelPacker.Slot[] slots) {
        List<Long> seen = new ArrayList<>();
        for (int i = 0; i < slots.length; i++) {
            Piece piece = pieces.get(i);
            int column = Math.floorDiv(piece.u, along);
            int row = Math.floorDiv(piece.v, across);
            long field = ((long) column << 32) ^ (row & 0xffffffffL);
            if (!seen.contains(field)) {
                seen.add(field);
            }
            slots[i] =
                    new LevelPacker.Slot(seen.indexOf(field), piece.u - column * along, piece.v - row * across, false);
        }
        return seen.size();
    }
}
