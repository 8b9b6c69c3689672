package org.heatfloor.takeoff;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.locationtech.jts.geom.Polygon;

/**
 * One piece of membrane: where it lies in the room and where it is cut from. The piece needs a rectangle of whole stud
 * pitches of its stock, so that its studs continue those of its neighbours. On the stock, x runs along the length from the
 * end and y across the width.
 */
public final class MembranePiece {

    private final int number;
    private final int stockNumber;
    private final Polygon inRoom;
    private final Polygon onStock;
    private final Polygon cutRectangle;
    private final double directionRadians;

    MembranePiece(
            int number,
            int stockNumber,
            Polygon inRoom,
            Polygon onStock,
            Polygon cutRectangle,
            double directionRadians) {
        this.number = number;
        this.stockNumber = stockNumber;
        this.inRoom = inRoom;
        this.onStock = onStock;
        this.cutRectangle = cutRectangle;
        this.directionRadians = directionRadians;
    }

    /**
     * The number written on the piece.
     *
     * @return 1 and up, in laying order
     */
    public int number() {
        return number;
    }

    /**
     * The sheet or roll it is cut from.
     *
     * @return 1 and up
     */
    public int stockNumber() {
        return stockNumber;
    }

    /**
     * The piece as it lies.
     *
     * @return a copy, in metres, in the room's frame
     */
    public Polygon inRoom() {
        return (Polygon) inRoom.copy();
    }

    /**
     * The piece as it is marked out on its sheet or roll.
     *
     * @return a copy, in metres; x along the stock, y across it
     */
    public Polygon onStock() {
        return (Polygon) onStock.copy();
    }

    /**
     * The rectangle of whole pitches cut from the sheet or roll before the piece is trimmed to the wall.
     *
     * @return a copy, in metres; x along the stock, y across it
     */
    public Polygon cutRectangle() {
        return (Polygon) cutRectangle.copy();
    }

    /**
     * Where the cut begins along the stock.
     *
     * @return distance from the stock's end
     */
    public Quantity<Length> from() {
        return Amounts.metres(cutRectangle.getEnvelopeInternal().getMinX());
    }

    /**
     * Where the cut begins across the stock.
     *
     * @return distance from the stock's edge
     */
    public Quantity<Length> across() {
        return Amounts.metres(cutRectangle.getEnvelopeInternal().getMinY());
    }

    /**
     * Length of the cut along the stock.
     *
     * @return a whole number of pitches
     */
    public Quantity<Length> length() {
        return Amounts.metres(cutRectangle.getEnvelopeInternal().getWidth());
    }

    /**
     * Width of the cut across the stock.
     *
     * @return a whole number of pitches
     */
    public Quantity<Length> width() {
        return Amounts.metres(cutRectangle.getEnvelopeInternal().getHeight());
    }

    /**
     * Direction of the stock's length in the room once the piece lies. Round studs on a square lattice allow a narrow piece
     * to be cut a quarter turn round; it then differs by 90° from {@link MembraneCut#direction()}.
     *
     * @return the angle against the x axis, counter-clockwise
     */
    public Quantity<Angle> direction() {
        return Amounts.degrees(Math.toDegrees(directionRadians));
    }
}
