package org.heatfloor.takeoff;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.locationtech.jts.geom.Polygon;

/** One tile, or piece of a tile, as it lies. */
public final class TilePiece {

    private final int row;
    private final int column;
    private final boolean whole;
    private final int tileNumber;
    private final Polygon shape;
    private final double lengthMetres;
    private final double widthMetres;

    TilePiece(
            int row,
            int column,
            boolean whole,
            int tileNumber,
            Polygon shape,
            double lengthMetres,
            double widthMetres) {
        this.row = row;
        this.column = column;
        this.whole = whole;
        this.tileNumber = tileNumber;
        this.shape = shape;
        this.lengthMetres = lengthMetres;
        this.widthMetres = widthMetres;
    }

    /**
     * The row it lies in.
     *
     * @return the row; rows run along the tiles' length
     */
    public int row() {
        return row;
    }

    /**
     * Its place in the row.
     *
     * @return the column
     */
    public int column() {
        return column;
    }

    /**
     * Whether it is a whole tile.
     *
     * @return false when it is cut
     */
    public boolean isWhole() {
        return whole;
    }

    /**
     * The tile it comes from; pieces with the same number are cut from one tile.
     *
     * @return 1 and up
     */
    public int tileNumber() {
        return tileNumber;
    }

    /**
     * The piece as it lies.
     *
     * @return a copy, in metres in the room's frame
     */
    public Polygon shape() {
        return (Polygon) shape.copy();
    }

    /**
     * Its extent along the tile's length.
     *
     * @return the length to cut to
     */
    public Quantity<Length> length() {
        return Amounts.metres(lengthMetres);
    }

    /**
     * Its extent along the tile's width.
     *
     * @return the width to cut to
     */
    public Quantity<Length> width() {
        return Amounts.metres(widthMetres);
    }
}
