package org.heatfloor.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.TileLayout;
import org.heatfloor.takeoff.TilePiece;
import org.locationtech.jts.geom.Coordinate;

/** The tiles as laid, cut ones shaded and numbered by the tile they come from, and the list of cuts. */
final class TileDrawing {

    private final Pen pen;
    private final RoomFile file;
    private final TileLayout layout;

    TileDrawing(Pen pen, RoomFile file, TileLayout layout) {
        this.pen = pen;
        this.file = file;
        this.layout = layout;
    }

    void draw() {
        pen.fill(file.room().polygon(), Pen.TINT);
        for (TilePiece piece : layout.pieces()) {
            pen.fill(piece.shape(), piece.isWhole() ? java.awt.Color.WHITE : Pen.PALE);
            pen.draw(piece.shape(), LineKind.NARROW, Pen.INK);
        }
        for (TilePiece piece : layout.pieces()) {
            if (!piece.isWhole()) {
                Coordinate at = piece.shape().getInteriorPoint().getCoordinate();
                pen.label(String.valueOf(piece.tileNumber()), pen.at(at), Pen.SMALL, Pen.INK, Pen.PALE);
            }
        }
        CutSheet.list(pen, CutSheet.TOP, list());
    }

    private List<String> list() {
        LengthUnit unit = file.coordinateUnit();
        List<String> lines = new ArrayList<>();
        lines.add(layout.wholeTiles() + " whole tiles, " + layout.cutTiles() + " cut places");
        lines.add(layout.tilesNeeded() + " tiles as laid, " + layout.tilesToBuy() + " to buy");
        lines.add("Shaded: cut; the number is the tile");
        lines.add("it comes from, length × width" + (unit.isImperial() ? ":" : " in " + unit + ":"));
        Map<Integer, List<String>> cuts = new TreeMap<>();
        for (TilePiece piece : layout.pieces()) {
            if (!piece.isWhole()) {
                cuts.computeIfAbsent(piece.tileNumber(), n -> new ArrayList<>())
                        .add(Dimensions.length(metres(piece.length()), unit) + " × "
                                + Dimensions.length(metres(piece.width()), unit));
            }
        }
        cuts.forEach((tile, pieces) -> lines.add(tile + ": " + String.join("; ", pieces)));
        return lines;
    }

    private static double metres(Quantity<Length> length) {
        return length.to(Units.METRE).getValue().doubleValue();
    }
}
