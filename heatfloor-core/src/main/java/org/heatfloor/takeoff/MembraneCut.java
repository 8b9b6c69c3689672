package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.heatfloor.area.Room;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * How the membrane is cut: every piece on its sheet or roll and in the room, with the studs in phase from piece to piece.
 * Joints lie midway between two rows of studs and are butted.
 *
 * <p>Two bounds stand beside the count. {@link #lowerBound()} holds for every cut whatever: covered area over the area of one.
 * {@link #stripBound()} holds for every cut in strips, which is: strips as wide as the stock in either direction of the
 * lattice (a sheet either way round), the first joint between any two rows of studs; each strip cut across into as few pieces
 * as the stock's length allows or one more, at any whole pitches but none under three; the pieces cut as lengths across the
 * stock, each ripped side by side; a narrow strip without a joint across may be cut a quarter turn round.
 */
public final class MembraneCut {

    private final MembraneStock stock;
    private final List<MembranePiece> pieces;
    private final List<LineString> joints;
    private final int stockCount;
    private final int lowerBound;
    private final int stripBound;
    private final double coveredSquareMetres;
    private final double stockSquareMetres;
    private final double directionRadians;

    MembraneCut(
            MembraneStock stock,
            List<MembranePiece> pieces,
            List<LineString> joints,
            int stockCount,
            int lowerBound,
            int stripBound,
            double coveredSquareMetres,
            double stockSquareMetres,
            double directionRadians) {
        this.stock = stock;
        this.pieces = List.copyOf(pieces);
        this.joints = List.copyOf(joints);
        this.stockCount = stockCount;
        this.lowerBound = lowerBound;
        this.stripBound = stripBound;
        this.coveredSquareMetres = coveredSquareMetres;
        this.stockSquareMetres = stockSquareMetres;
        this.directionRadians = directionRadians;
    }

    /**
     * The cut for a whole room, wall to wall less its columns.
     *
     * @param room the floor
     * @param membrane with its stock
     * @param lattice where the studs lie
     * @return the cut
     * @throws IllegalArgumentException if the membrane has no stock, the stock is narrower than a stud pitch, or it takes
     *     more than 2000 pieces
     */
    public static MembraneCut of(Room room, Membrane membrane, StudLattice lattice) {
        return CutSearch.best(
                FloorRegions.parted(FloorRegions.covered(room.polygon(), List.of()), List.of()),
                CutSearch.stockOf(membrane),
                lattice,
                CutRule.FEWEST);
    }

    /**
     * How the membrane is sold.
     *
     * @return the stock
     */
    public MembraneStock stock() {
        return stock;
    }

    /**
     * The pieces in laying order.
     *
     * @return one or more pieces
     */
    public List<MembranePiece> pieces() {
        return pieces;
    }

    /**
     * Where the pieces meet.
     *
     * @return copies of the joints, in metres in the room's frame
     */
    public List<LineString> joints() {
        return joints.stream().map(j -> (LineString) j.copy()).toList();
    }

    /**
     * Length of all joints together.
     *
     * @return the length
     */
    public Quantity<Length> jointLength() {
        return Amounts.metres(joints.stream().mapToDouble(LineString::getLength).sum());
    }

    /**
     * Sheets or rolls to buy.
     *
     * @return the count
     */
    public int stockCount() {
        return stockCount;
    }

    /**
     * Sheets or rolls no cut can do without: covered area over the area of one, rounded up.
     *
     * @return the bound
     */
    public int lowerBound() {
        return lowerBound;
    }

    /**
     * Sheets or rolls no cut in strips can do without: stud cells the floor touches over those of one, the length of what is
     * too wide to lie beside another, or the count itself where every cut in strips was tried.
     *
     * @return the bound, at least {@link #lowerBound()}
     */
    public int stripBound() {
        return stripBound;
    }

    /**
     * Whether no cut of any kind needs less stock.
     *
     * @return true when the count equals {@link #lowerBound()}
     */
    public boolean isProvenLeast() {
        return stockCount == lowerBound;
    }

    /**
     * Whether no cut in strips needs less stock.
     *
     * @return true when the count equals {@link #stripBound()}; false when the work budget ran out before that was known
     */
    public boolean isLeastInStrips() {
        return stockCount == stripBound;
    }

    /**
     * How far the count is proven, in words.
     *
     * @return for example "no cut takes fewer"
     */
    public String proof() {
        if (isProvenLeast()) {
            return "no cut takes fewer";
        }
        String any = "any cut at least " + lowerBound + " by area";
        return isLeastInStrips()
                ? "no cut in strips takes fewer, " + any
                : "within " + (stockCount - stripBound) + " of the least in strips, " + any;
    }

    /**
     * Floor covered.
     *
     * @return the area
     */
    public Quantity<Area> covered() {
        return Amounts.squareMetres(coveredSquareMetres);
    }

    /**
     * Share of the bought membrane that does not end up on the floor.
     *
     * @return the share
     */
    public Quantity<Dimensionless> waste() {
        return Amounts.of(100 * (1 - coveredSquareMetres / (stockCount * stockSquareMetres)), Units.PERCENT);
    }

    /**
     * Direction of the stock's length in the room.
     *
     * @return the angle against the x axis, counter-clockwise
     */
    public Quantity<Angle> direction() {
        return Amounts.degrees(Math.toDegrees(directionRadians));
    }

    static List<LineString> joints(List<Polygon> shapes) {
        List<LineString> joints = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            for (int k = i + 1; k < shapes.size(); k++) {
                if (shapes.get(i).getEnvelopeInternal().intersects(shapes.get(k).getEnvelopeInternal())) {
                    JointFinder.add(joints, shapes.get(i), shapes.get(k));
                }
            }
        }
        return joints;
    }
}
