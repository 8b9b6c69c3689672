package org.heatfloor.takeoff;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.heatfloor.area.Room;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * Every tile of a floor as it lies, and the tiles that takes. A cut piece keeps its place within its tile, so that sawn
 * edges lie at the wall; cut positions share a tile when saw cuts from edge to edge part the rectangles around their pieces.
 */
public final class TileLayout {

    /** A piece narrower than this share of the tile is called a sliver here (common practice, no source). */
    static final double SLIVER_SHARE = 0.25;

    private final TileSpec tile;
    private final List<TilePiece> pieces;
    private final int positions;
    private final int cutPositions;
    private final int needed;
    private final int bound;
    private final Geometry field;
    private final double coveredSquareMetres;
    private final double directionRadians;

    TileLayout(
            TileSpec tile,
            List<TilePiece> pieces,
            int positions,
            int cutPositions,
            int needed,
            int bound,
            Geometry field,
            double coveredSquareMetres,
            double directionRadians) {
        this.tile = tile;
        this.pieces = List.copyOf(pieces);
        this.positions = positions;
        this.cutPositions = cutPositions;
        this.needed = needed;
        this.bound = bound;
        this.field = field;
        this.coveredSquareMetres = coveredSquareMetres;
        this.directionRadians = directionRadians;
    }

    /**
     * The layout of a whole room, wall to wall less its columns.
     *
     * @param room the floor
     * @param tile the tile
     * @param rule how it is set out
     * @return the layout
     * @throws IllegalArgumentException if it would take more than 100000 tiles, or the gaps leave nothing to tile
     */
    public static TileLayout of(Room room, TileSpec tile, LayoutRule rule) {
        return LayoutBuilder.lay(FloorRegions.covered(room.polygon(), List.of()), List.of(), tile, rule);
    }

    /**
     * The tile laid.
     *
     * @return the tile
     */
    public TileSpec tile() {
        return tile;
    }

    /**
     * Every tile and piece of a tile.
     *
     * @return the pieces, row by row
     */
    public List<TilePiece> pieces() {
        return pieces;
    }

    /**
     * Whole tiles in the floor.
     *
     * @return the count
     */
    public int wholeTiles() {
        return positions - cutPositions;
    }

    /**
     * Places in the grid where a tile is cut.
     *
     * @return the count
     */
    public int cutTiles() {
        return cutPositions;
    }

    /**
     * Tiles the layout takes if nothing is reused: one for every place of the grid.
     *
     * @return the count
     */
    public int tilesWithoutReuse() {
        return positions;
    }

    /**
     * Tiles the layout takes, offcuts reused as the rule allows.
     *
     * @return the count, before breakage
     */
    public int tilesNeeded() {
        return needed;
    }

    /**
     * Tiles no reuse of offcuts can do without for this layout: {@link #tilesNeeded()} itself where every sharing was tried,
     * else by area and by pieces too large to share a tile.
     *
     * @return the bound
     */
    public int lowerBound() {
        return bound;
    }

    /**
     * Tiles to buy: those needed plus the waste share, rounded up.
     *
     * @return the count, before attic stock and boxes
     */
    public int tilesToBuy() {
        return (int) Math.ceil(needed * (1 + Si.in("waste", tile.waste(), Units.ONE)) - 1e-9);
    }

    /**
     * Tiles kept for repairs: the attic share of those needed, rounded up.
     *
     * @return the count
     */
    public int atticTiles() {
        return (int) Math.ceil(needed * Si.in("attic", tile.supply().attic(), Units.ONE) - 1e-9);
    }

    /**
     * Boxes to buy for floor and attic.
     *
     * @return the count; tiles when they are sold singly
     */
    public int boxes() {
        int perBox = tile.supply().perBox();
        return (tilesToBuy() + atticTiles() + perBox - 1) / perBox;
    }

    /**
     * The tiled floor, perimeter gaps included.
     *
     * @return the area
     */
    public Quantity<Area> covered() {
        return Amounts.squareMetres(coveredSquareMetres);
    }

    /**
     * The faces of all pieces.
     *
     * @return the area
     */
    public Quantity<Area> faces() {
        return Amounts.squareMetres(facesSquareMetres());
    }

    /**
     * The grout joints seen from above.
     *
     * @return the area
     */
    public Quantity<Area> groutJoints() {
        return Amounts.squareMetres(jointsSquareMetres());
    }

    /**
     * The soft gaps at walls, columns and movement joints seen from above.
     *
     * @return the area
     */
    public Quantity<Area> softJoints() {
        return Amounts.squareMetres(coveredSquareMetres - field.getArea());
    }

    /**
     * The field between the soft gaps.
     *
     * @return a copy, in metres
     */
    public Geometry field() {
        return field.copy();
    }

    /**
     * Direction of the tiles' length in the room.
     *
     * @return the angle against the x axis, counter-clockwise
     */
    public Quantity<Angle> direction() {
        return Amounts.degrees(Math.toDegrees(directionRadians));
    }

    /**
     * The narrowest piece: the smaller of its extents as a share of the tile's.
     *
     * @return 100 % when nothing is cut
     */
    public Quantity<Dimensionless> narrowest() {
        return Amounts.of(100 * pieces.stream().mapToDouble(this::share).min().orElse(1), Units.PERCENT);
    }

    /**
     * The narrowest piece's smaller extent.
     *
     * @return the length
     */
    public Quantity<Length> narrowestWidth() {
        return Amounts.metres(pieces.stream()
                .mapToDouble(
                        p -> Math.min(Si.in("length", p.length(), Units.METRE), Si.in("width", p.width(), Units.METRE)))
                .min()
                .orElse(0));
    }

    /**
     * Cut pieces narrower than a share of the tile.
     *
     * @param share of the tile's length or width, 0 to 1
     * @return the count
     * @throws IllegalArgumentException if the share is out of range
     */
    public int piecesUnder(Quantity<Dimensionless> share) {
        double limit = Si.within("share", share, Units.ONE, 0, 1);
        return (int) pieces.stream()
                .filter(p -> !p.isWhole() && share(p) < limit - 1e-4)
                .count();
    }

    double facesSquareMetres() {
        return pieces.stream().mapToDouble(p -> p.shape().getArea()).sum();
    }

    double jointsSquareMetres() {
        return field.getArea() - facesSquareMetres();
    }

    private double share(TilePiece piece) {
        return Math.min(
                Si.in("length", piece.length(), Units.METRE) / tile.lengthMetres(),
                Si.in("width", piece.width(), Units.METRE) / tile.widthMetres());
    }

    static Envelope local(TileGrid.Laid laid) {
        Envelope e = laid.shape().getEnvelopeInternal();
        return new Envelope(
                e.getMinX() - laid.x(), e.getMaxX() - laid.x(), e.getMinY() - laid.y(), e.getMaxY() - laid.y());
    }
}
