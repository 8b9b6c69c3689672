package org.heatfloor.takeoff;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.heatfloor.area.Door;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.Room;
import org.heatfloor.finding.Finding;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
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

    private TakeOff(Builder b) {
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
                .map(x -> MortarNeed.both(coveredSquareMetres, b.membrane, x, b.cableCubicMetres))
                .orElse(List.of());
        this.layout = b.tile.map(tile -> LayoutBuilder.lay(covered, joints, tile, b.layoutRule));
        this.grout = layout.map(l -> GroutNeed.of(l, b.grout));
        this.height = b.bedding.flatMap(bedding -> b.tile.map(tile -> FloorHeight.of(b.membrane, bedding, tile)));
        this.doorSteps = height.flatMap(h -> b.bedding.map(bedding -> DoorSteps.of(b.doors, h, bedding, b.stepRule)))
                .orElse(List.of());
        this.softJoints = b.tile.map(tile -> SoftJoints.of(covered, joints, b.layoutRule));
        this.leveller = b.survey.map(survey -> survey.leveller(covered, b.levellerCover));
        this.mortarWaste = b.bedding.map(Bedding::waste).orElse(Amounts.of(0, Units.PERCENT));
        this.wayOut = b.doors.stream().findFirst().map(d -> d.at().getCentroid().getCoordinate());
        this.findings = List.copyOf(TakeOffFindings.of(this, b));
    }

    /**
     * Starts a take-off.
     *
     * @param room the floor
     * @param membrane the membrane, with its stock where the cut is wanted
     * @param lattice where its studs lie
     * @return a builder
     */
    public static Builder of(Room room, Membrane membrane, StudLattice lattice) {
        return new Builder(room, membrane, lattice);
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
     * The mortars to buy, each by itself.
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
     * Batches of a mortar that fit open time and pot life, from the part of the floor farthest from the first door to the
     * door; without doors along the longest wall.
     *
     * @param mortar one of {@link #mortars()}
     * @param pace how fast the floor is laid
     * @return the batches in laying order
     * @throws IllegalArgumentException if more than 1000 batches would be needed
     */
    public List<MortarBatch> batches(MortarNeed mortar, LayingPace pace) {
        return Batches.of(covered, LayoutBuilder.longestWall(covered), wayOut, mortar, pace);
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

    /** Gathers what a take-off is made from. Not safe to share between threads; the take-off it builds is. */
    public static final class Builder {

        final Room room;
        final Membrane membrane;
        final StudLattice lattice;
        List<KeepOut> keepOuts = List.of();
        double cableCubicMetres;
        double cableDiameterMetres;
        Optional<TileSpec> tile = Optional.empty();
        LayoutRule layoutRule = LayoutRule.USUAL;
        Optional<Bedding> bedding = Optional.empty();
        GroutSpec grout = GroutSpec.USUAL;
        List<Door> doors = List.of();
        StepRule stepRule = StepRule.ADA_2010;
        TileStandard standard = TileStandard.ANSI_A108;
        MovementRule movementRule = MovementRule.BS_5385_HEATED;
        Optional<SpotSurvey> survey = Optional.empty();
        Quantity<Length> levellerCover = Amounts.millimetres(0);
        Optional<Quantity<Length>> lippage = Optional.empty();
        final Map<HeightPart, Stated> stated = new EnumMap<>(HeightPart.class);

        record Stated(String layer, Quantity<Length> thickness) {}

        private Builder(Room room, Membrane membrane, StudLattice lattice) {
            this.room = Objects.requireNonNull(room, "room");
            this.membrane = Objects.requireNonNull(membrane, "membrane");
            this.lattice = Objects.requireNonNull(lattice, "lattice");
        }

        /**
         * The keep-outs: columns and shower trays are left out of the covered floor, movement joints part it.
         *
         * @param given every keep-out of the room
         * @return this builder
         */
        public Builder keepOuts(List<KeepOut> given) {
            this.keepOuts = List.copyOf(given);
            return this;
        }

        /**
         * Cable in the channels, which takes the place of mortar. Call once for each kind; lengths add up.
         *
         * @param length of all such cable in the membrane
         * @param diameter of the cable
         * @return this builder
         * @throws IllegalArgumentException if the length is negative or the diameter not above 0 and at most 50 mm
         */
        public Builder cable(Quantity<Length> length, Quantity<Length> diameter) {
            double metres = Si.notNegative("cable length", length, Units.METRE);
            Si.positive("cable diameter", diameter, Units.MILLIMETRE);
            double d = Si.within("cable diameter", diameter, Units.MILLIMETRE, 0, 50) / 1000;
            this.cableCubicMetres += metres * Cavity.cableSection(d);
            this.cableDiameterMetres = Math.max(cableDiameterMetres, d);
            return this;
        }

        /**
         * The tile, set out as {@link LayoutRule#USUAL}.
         *
         * @param given the tile
         * @return this builder
         */
        public Builder tile(TileSpec given) {
            this.tile = Optional.of(given);
            return this;
        }

        /**
         * How the tile is set out.
         *
         * @param rule the rule
         * @return this builder
         */
        public Builder layoutRule(LayoutRule rule) {
            this.layoutRule = Objects.requireNonNull(rule, "rule");
            return this;
        }

        /**
         * The mortar beds.
         *
         * @param given the beds
         * @return this builder
         */
        public Builder bedding(Bedding given) {
            this.bedding = Optional.of(given);
            return this;
        }

        /**
         * The grout; {@link GroutSpec#USUAL} when not called.
         *
         * @param given the grout
         * @return this builder
         */
        public Builder grout(GroutSpec given) {
            this.grout = Objects.requireNonNull(given, "grout");
            return this;
        }

        /**
         * The doors.
         *
         * @param given doors; those without the height of the floor beyond are left out
         * @return this builder
         */
        public Builder doors(List<Door> given) {
            this.doors = List.copyOf(given);
            return this;
        }

        /**
         * The limits for steps at doors; {@link StepRule#ADA_2010} when not called.
         *
         * @param rule the rule
         * @return this builder
         */
        public Builder stepRule(StepRule rule) {
            this.stepRule = Objects.requireNonNull(rule, "rule");
            return this;
        }

        /**
         * A layer's thickness as the build-up states it. A difference of more than 1 mm from the thickness that membrane,
         * bedding and tile give is a finding.
         *
         * @param part which part of the height it is
         * @param layer the layer's name
         * @param thickness as stated
         * @return this builder
         * @throws IllegalArgumentException if the thickness is negative
         */
        public Builder stated(HeightPart part, String layer, Quantity<Length> thickness) {
            Si.notNegative("layer '" + layer + "' thickness", thickness, Units.METRE);
            stated.put(part, new Stated(layer, thickness));
            return this;
        }

        /**
         * Whose limits joints, lippage and flatness are held to; {@link TileStandard#ANSI_A108} when not called.
         *
         * @param given the standard
         * @return this builder
         */
        public Builder standard(TileStandard given) {
            this.standard = Objects.requireNonNull(given, "standard");
            return this;
        }

        /**
         * How large a bay may be; {@link MovementRule#BS_5385_HEATED} when not called.
         *
         * @param rule the rule
         * @return this builder
         */
        public Builder movementRule(MovementRule rule) {
            this.movementRule = Objects.requireNonNull(rule, "rule");
            return this;
        }

        /**
         * Heights of the base at spots, for levelling compound and flatness.
         *
         * @param given the survey
         * @param cover least thickness of compound over the highest spot
         * @return this builder
         * @throws IllegalArgumentException if the cover is negative
         */
        public Builder survey(SpotSurvey given, Quantity<Length> cover) {
            Si.notNegative("leveller cover", cover, Units.METRE);
            this.survey = Optional.of(given);
            this.levellerCover = cover;
            return this;
        }

        /**
         * The largest difference of height measured between neighbouring tile edges.
         *
         * @param measured on a trial field or the finished floor
         * @return this builder
         * @throws IllegalArgumentException if it is not 0 to 50 mm
         */
        public Builder lippage(Quantity<Length> measured) {
            Si.within("lippage", measured, Units.MILLIMETRE, 0, 50);
            this.lippage = Optional.of(measured);
            return this;
        }

        /**
         * Takes off.
         *
         * @return the take-off
         * @throws IllegalArgumentException if the membrane's stock is narrower than a stud pitch, columns leave no floor,
         *     or membrane or tile would take more pieces than a room has
         */
        public TakeOff build() {
            return new TakeOff(this);
        }
    }
}
