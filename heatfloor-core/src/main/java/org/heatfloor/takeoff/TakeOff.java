package org.heatfloor.takeoff;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import org.heatfloor.area.Door;
import org.heatfloor.area.Room;
import org.heatfloor.finding.Finding;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;

/**
 * What a floor takes: membrane cut in phase, mortar, tiles as laid, grout, the floor's height and the steps at its doors.
 *
 * <p>Membrane and tile cover the room wall to wall, less its columns (inner rings of the room, and keep-outs that are
 * columns or shower trays). Furniture, baths, flanges, registers and drains stand on, or are cut into, a floor that is
 * bought for, as the trade does not deduct small openings (common practice, no source). Movement joints part both membrane
 * and tile.
 */
public final class TakeOff {

    private final Geometry covered;
    private final Optional<Coordinate> wayOut;
    private final double coveredSquareMetres;
    private final Optional<MembraneCut> membraneCut;
    private final List<MortarNeed> mortars;
    private final Optional<TileLayout> layout;
    private final Optional<GroutNeed> grout;
    private final Optional<FloorHeight> height;
    private final List<DoorStep> doorSteps;
    private final Optional<SoftJoints> softJoints;
    private final Optional<LevellerNeed> leveller;
    private final Quantity<Dimensionless> mortarWaste;
    private final List<Finding> findings;

    TakeOff(TakeOffBuilder b) {
        Geometry covered = FloorRegions.covered(b.room.polygon(), b.keepOuts);
        List<LineString> joints = FloorRegions.movementJoints(b.keepOuts);
        this.covered = covered;
        this.coveredSquareMetres = covered.getArea();
        if (!(coveredSquareMetres > 0)) {
            throw new IllegalArgumentException("keep-outs: columns and shower trays leave no floor to cover");
        }
        this.membraneCut = b.membrane
                .stock()
                .map(stock -> CutSearch.best(FloorRegions.parted(covered, joints), stock, b.lattice, CutRule.FEWEST));
        this.mortars = b.bedding
                .map(x -> MortarNeed.of(membraneArea(), b.studs, x, Amounts.of(b.cableCubicMetres, Units.CUBIC_METRE)))
                .orElse(List.of());
        this.layout = b.tile.map(tile -> LayoutBuilder.lay(covered, joints, tile, b.layoutRule));
        this.grout = layout.map(l -> GroutNeed.of(l, b.grout));
        this.height = b.bedding.flatMap(bedding -> b.tile.map(tile -> FloorHeight.of(b.membrane, bedding, tile)));
        this.doorSteps = height.flatMap(
                        h -> b.bedding.map(bedding -> new DoorSteps(h, bedding, b.stepRule(), b.practice.units())
                                .of(b.doors, door -> leveller(b, door))))
                .orElse(List.of());
        this.softJoints = b.tile.map(tile -> SoftJoints.of(covered, joints, b.layoutRule));
        this.leveller = b.survey.map(survey -> survey.leveller(covered, b.leveller));
        this.mortarWaste = b.bedding.map(Bedding::waste).orElse(Amounts.of(0, Units.PERCENT));
        this.wayOut = b.doors.stream().findFirst().map(d -> d.at().getCentroid().getCoordinate());
        this.findings = List.copyOf(TakeOffFindings.of(this, b));
    }

    private double leveller(TakeOffBuilder b, Door door) {
        Coordinate at = door.at().getCentroid().getCoordinate();
        return b.survey.map(s -> s.depthMetres(covered, b.leveller, at)).orElse(0.0);
    }

    /**
     * Starts a take-off.
     *
     * @param room the floor
     * @param membrane the membrane, with its stock where the cut is wanted
     * @param lattice where its studs lie
     * @return a builder
     */
    public static TakeOffBuilder of(Room room, Membrane membrane, StudLattice lattice) {
        return new TakeOffBuilder(room, membrane, lattice);
    }

    /**
     * Floor covered with membrane, wall to wall less columns; also the tiled floor.
     *
     * @return the area
     */
    public Quantity<Area> membraneArea() {
        return Amounts.squareMetres(coveredSquareMetres);
    }

    /**
     * How the membrane is cut.
     *
     * @return the cut, where the membrane's stock is known
     */
    public Optional<MembraneCut> membraneCut() {
        return membraneCut;
    }

    /**
     * What each bed takes of its mortar. One mortar that serves for both is one line of the {@link #shoppingList}.
     *
     * @return under the membrane, then in and over it; empty without bedding
     */
    public List<MortarNeed> mortars() {
        return mortars;
    }

    /**
     * The tiles as laid.
     *
     * @return the layout, where a tile was given
     */
    public Optional<TileLayout> layout() {
        return layout;
    }

    /**
     * The grout.
     *
     * @return the grout, where a tile was given
     */
    public Optional<GroutNeed> grout() {
        return grout;
    }

    /**
     * The floor's height.
     *
     * @return the height above the structural floor, where bedding and tile were given
     */
    public Optional<FloorHeight> height() {
        return height;
    }

    /**
     * Steps at the doors beyond which a floor height was given.
     *
     * @return the steps in the order of the doors; empty where the height is not known
     */
    public List<DoorStep> doorSteps() {
        return doorSteps;
    }

    /**
     * Perimeter and movement joints, edge strip and sealant.
     *
     * @return the joints, where a tile was given
     */
    public Optional<SoftJoints> softJoints() {
        return softJoints;
    }

    /**
     * Levelling compound for the base.
     *
     * @return the need, where a survey was given
     */
    public Optional<LevellerNeed> leveller() {
        return leveller;
    }

    /**
     * Batches of a mortar that fit its open time and pot life, from the part of the floor farthest from the first door to
     * the door; without doors along the longest wall.
     *
     * @param mortar one of {@link #mortars()}
     * @param perHour floor laid in an hour
     * @return the batches in laying order
     * @throws IllegalArgumentException if the pace is not above zero, or more than 1000 batches would be needed
     */
    public List<MortarBatch> batches(MortarNeed mortar, Quantity<Area> perHour) {
        return Batches.of(covered, LayoutBuilder.longestWall(covered), wayOut, mortar, perHour);
    }

    /**
     * Everything to buy on one list.
     *
     * @param units the list is written in
     * @param prices of what is bought, where known
     * @return the list
     */
    public ShoppingList shoppingList(PurchaseUnits units, Optional<Prices> prices) {
        return ShoppingList.of(this, units, prices);
    }

    Quantity<Dimensionless> mortarWaste() {
        return mortarWaste;
    }

    /**
     * What was judged.
     *
     * @return the findings
     */
    public List<Finding> findings() {
        return findings;
    }
}
