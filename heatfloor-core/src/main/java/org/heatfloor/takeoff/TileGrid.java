package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The grid of tiles in its own frame: rows along x. Metres. */
final class TileGrid {

    /** Pieces narrower than this are filled with grout, and tiles short by less are whole. */
    static final double NOTHING_METRES = 50e-6;

    /** The tile in row and column, cut to one part of the field. */
    record Laid(int row, int column, double x, double y, Polygon shape, boolean whole) {}

    private final List<Polygon> field;
    private final List<PreparedGeometry> prepared;
    private final double length;
    private final double width;
    private final double joint;
    private final TilePattern pattern;

    TileGrid(List<Polygon> field, double length, double width, double joint, TilePattern pattern) {
        this.field = field;
        this.prepared = field.stream().map(PreparedGeometryFactory::prepare).toList();
        this.length = length;
        this.width = width;
        this.joint = joint;
        this.pattern = pattern;
    }

    double columnStep() {
        return length + joint;
    }

    double rowStep() {
        return width + joint;
    }

    double length() {
        return length;
    }

    double width() {
        return width;
    }

    TilePattern pattern() {
        return pattern;
    }

    List<Polygon> field() {
        return field;
    }

    /** Every tile, or part of one, when tile (0, 0) has its lower left corner at (x0, y0). */
    List<Laid> lay(double x0, double y0) {
        List<Laid> laid = new ArrayList<>();
        for (int f = 0; f < field.size(); f++) {
            Envelope e = field.get(f).getEnvelopeInternal();
            int firstRow = (int) Math.floor((e.getMinY() - y0 - width) / rowStep());
            int lastRow = (int) Math.ceil((e.getMaxY() - y0) / rowStep());
            for (int row = firstRow; row <= lastRow; row++) {
                double shift = x0 + pattern.shift(row) * columnStep();
                double y = y0 + row * rowStep();
                int first = (int) Math.floor((e.getMinX() - shift - length) / columnStep());
                int last = (int) Math.ceil((e.getMaxX() - shift) / columnStep());
                for (int column = first; column <= last; column++) {
                    addTile(laid, f, row, column, shift + column * columnStep(), y);
                }
            }
        }
        return laid;
    }

    private void addTile(List<Laid> laid, int f, int row, int column, double x, double y) {
        Polygon tile = FloorRegions.rectangle(x, y, x + length, y + width);
        if (prepared.get(f).covers(tile)) {
            laid.add(new Laid(row, column, x, y, tile, true));
            return;
        }
        if (!prepared.get(f).intersects(tile)) {
            return;
        }
        Geometry part = OverlayNGRobust.overlay(field.get(f), tile, OverlayNG.INTERSECTION);
        Polygon almost = FloorRegions.rectangle(
                x + NOTHING_METRES, y + NOTHING_METRES, x + length - NOTHING_METRES, y + width - NOTHING_METRES);
        for (Polygon piece : FloorRegions.polygons(part)) {
            Envelope e = piece.getEnvelopeInternal();
            if (Math.min(e.getWidth(), e.getHeight()) > NOTHING_METRES) {
                laid.add(new Laid(row, column, x, y, piece, piece.covers(almost)));
            }
        }
    }
}
