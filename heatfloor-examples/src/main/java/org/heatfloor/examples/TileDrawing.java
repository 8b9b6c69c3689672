package org.heatfloor.examples;

import java.awt.Color;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.TileLayout;
import org.heatfloor.takeoff.TilePiece;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;

/** The tiles as laid: setting-out lines with their distances, cut tiles shaded with number and size, and the list of cuts. */
final class TileDrawing {

    private static final double TWO_LINES = 6.4;

    /** A piece that fills its rectangle but for less than this is cut straight. */
    private static final double SHAPED_SHARE = 1e-3;

    private final Pen pen;
    private final RoomFile file;
    private final TileLayout layout;
    private final LengthUnit unit;

    TileDrawing(Pen pen, RoomFile file, TileLayout layout) {
        this.pen = pen;
        this.file = file;
        this.layout = layout;
        this.unit = file.coordinateUnit().isImperial() ? file.coordinateUnit() : LengthUnit.MILLIMETRE;
    }

    void draw() {
        pen.fill(file.room().polygon(), Pen.TINT);
        for (TilePiece piece : layout.pieces()) {
            pen.fill(piece.shape(), piece.isWhole() ? Color.WHITE : Pen.PALE);
            pen.draw(piece.shape(), LineKind.NARROW, Pen.INK);
        }
        Optional<SettingOut> lines = SettingOut.of(layout, file.room().polygon().getEnvelopeInternal());
        List<LineString> slanted = lines.isPresent()
                ? List.of()
                : SlantedSettingOut.lines(layout, file.room().polygon());
        lines.ifPresent(this::settingOut);
        slanted.forEach(line -> pen.draw(line, LineKind.DASH_DOT, Pen.ACCENT));
        if (!slanted.isEmpty()) {
            List<Coordinate> met = slanted.stream()
                    .flatMap(l -> Arrays.stream(l.getCoordinates()))
                    .toList();
            new WallChains(pen, unit, file.room().polygon()).draw(met);
        }
        for (TilePiece piece : layout.pieces()) {
            if (!piece.isWhole()) {
                label(piece);
            }
        }
        double below = CutSheet.legend(pen, CutSheet.TOP, legend(lines.isPresent(), !slanted.isEmpty()));
        CutSheet.list(pen, below, list());
    }

    private void settingOut(SettingOut lines) {
        Envelope room = file.room().polygon().getEnvelopeInternal();
        Point2D low = pen.at(new Coordinate(lines.lineAcross(), room.getMinY()));
        Point2D high = pen.at(new Coordinate(lines.lineAcross(), room.getMaxY()));
        pen.line(low.getX(), low.getY() + 4, high.getX(), high.getY() - 4, LineKind.DASH_DOT, Pen.ACCENT);
        Point2D left = pen.at(new Coordinate(room.getMinX(), lines.lineUp()));
        Point2D right = pen.at(new Coordinate(room.getMaxX(), lines.lineUp()));
        pen.line(left.getX() - 4, left.getY(), right.getX() + 4, right.getY(), LineKind.DASH_DOT, Pen.ACCENT);
        new Dimensions(pen, unit, file.room().polygon()).draw(lines.stopsAcross(), lines.stopsUp());
        Point2D row = pen.at(lines.row().centre());
        Point2D end = pen.at(new Coordinate(lines.row().getMaxX(), lines.row().centre().y));
        pen.triangle(new Point2D.Double(end.getX() + 1.5, row.getY()), Math.PI, 2.4, Pen.ACCENT);
    }

    /** The number, and under it the size where both have room. */
    private void label(TilePiece piece) {
        Envelope box = piece.shape().getEnvelopeInternal();
        Point2D low = pen.at(new Coordinate(box.getMinX(), box.getMinY()));
        Point2D high = pen.at(new Coordinate(box.getMaxX(), box.getMaxY()));
        Point2D at = pen.at(piece.shape().getInteriorPoint().getCoordinate());
        String number = String.valueOf(piece.tileNumber());
        String size = size(piece);
        boolean plain = piece.shape().isRectangle();
        boolean fits =
                Pen.width(size, Pen.SMALL) < high.getX() - low.getX() - 1.5 && low.getY() - high.getY() > TWO_LINES;
        if (plain && fits) {
            pen.label(number, new Point2D.Double(at.getX(), at.getY() - 1.5), Pen.SMALL, Pen.INK, Pen.PALE);
            pen.label(size, new Point2D.Double(at.getX(), at.getY() + 1.5), Pen.SMALL, Pen.INK, Pen.PALE);
        } else {
            pen.label(number, at, Pen.SMALL, Pen.INK, Pen.PALE);
        }
    }

    private List<CutSheet.Entry> legend(boolean hasLines, boolean isSlanted) {
        List<CutSheet.Entry> entries = new ArrayList<>();
        entries.add(CutSheet.field(Color.WHITE, "whole tile"));
        entries.add(CutSheet.field(
                Pen.PALE,
                "cut tile: number of the tile it comes from, length × width" + (unit.isImperial() ? "" : " in mm")));
        entries.add(CutSheet.field(Pen.TINT, "soft joint at walls and columns, no grout, no mortar"));
        if (hasLines) {
            entries.add(CutSheet.line(
                    LineKind.DASH_DOT,
                    Pen.ACCENT,
                    "setting-out line; dimensions run to the middle of joints" + (unit.isImperial() ? "" : ", in mm")));
            entries.add(new CutSheet.Entry(
                    (p, at) -> p.triangle(at, Math.PI, 2.4, Pen.ACCENT), "row whose joints are measured across"));
        }
        if (isSlanted) {
            entries.add(CutSheet.line(
                    LineKind.DASH_DOT,
                    Pen.ACCENT,
                    "setting-out line, in the middle of a joint; dimensions run along the walls to where it meets them"
                            + (unit.isImperial() ? "" : ", in mm")));
        }
        entries.addAll(CutSheet.common(file));
        return entries;
    }

    private List<String> list() {
        List<String> lines = new ArrayList<>();
        lines.add(layout.wholeTiles() + " whole tiles, " + layout.cutTiles() + " cut places: " + layout.tilesNeeded()
                + " tiles as laid, " + layout.tilesToBuy() + " to buy");
        double angle = layout.direction().to(Units.DEGREE).getValue().doubleValue();
        lines.add(layout.tile()
                        .pattern()
                        .name()
                        .toLowerCase(java.util.Locale.ROOT)
                        .replace('_', ' ') + ", tiles' length at " + QuantityText.number(angle, 1)
                + "° to the sheet's lower edge");
        lines.add("Dry-lay "
                + (SettingOut.isStraight(layout) ? "the marked row" : "along both lines")
                + " first and check the cuts at both walls.");
        lines.add("Cuts by tile; a shaped one is marked on the tile from the floor:");
        Map<Integer, List<String>> cuts = new TreeMap<>();
        for (TilePiece piece : layout.pieces()) {
            if (!piece.isWhole()) {
                cuts.computeIfAbsent(piece.tileNumber(), n -> new ArrayList<>())
                        .add(size(piece) + (isStraight(piece) ? "" : " shaped"));
            }
        }
        cuts.forEach((tile, pieces) -> lines.add(tile + ": " + String.join("; ", pieces)));
        return lines;
    }

    /** Whether a piece is a rectangle along its tile, however that lies in the room. */
    private static boolean isStraight(TilePiece piece) {
        double box = metres(piece.length()) * metres(piece.width());
        return box - piece.shape().getArea() < SHAPED_SHARE * box;
    }

    private String size(TilePiece piece) {
        return Dimensions.length(metres(piece.length()), unit) + " × " + Dimensions.length(metres(piece.width()), unit);
    }

    private static double metres(Quantity<Length> length) {
        return length.to(Units.METRE).getValue().doubleValue();
    }
}
