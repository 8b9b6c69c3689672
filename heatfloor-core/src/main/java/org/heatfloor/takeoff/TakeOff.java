package org.heatfloor.takeoff;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
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

    private final double coveredSquareMetres;
    private final Optional<MembraneCut> membraneCut;
    private final List<MortarNeed> mortars;
    private final Optional<TileLayout> layout;
    private final Optional<GroutNeed> grout;
    private final Optional<FloorHeight> height;
    private final List<DoorStep> doorSteps;
    private final List<Finding> findings;

    private TakeOff(Builder b) {
        Geometry covered = FloorRegions.covered(b.room.polygon(), b.keepOuts);
        List<LineString> joints = FloorRegions.movementJoints(b.keepOuts);
        this.coveredSquareMetres = covered.getArea();
        this.membraneCut = b.membrane
                .stock()
                .map(stock -> CutSearch.best(FloorRegions.parted(covered, joints), stock, b.lattice, CutRule.FEWEST));
        this.mortars = b.bedding.map(bedding -> mortars(b, bedding)).orElse(List.of());
        this.layout = b.tile.map(tile -> LayoutBuilder.lay(covered, joints, tile, b.layoutRule));
        this.grout = layout.map(l -> GroutNeed.of(l, b.grout));
        this.height = b.bedding.flatMap(bedding -> b.tile.map(tile -> FloorHeight.of(b.membrane, bedding, tile)));
        this.doorSteps = height.flatMap(h -> b.bedding.map(bedding -> DoorSteps.of(b.doors, h, bedding, b.stepRule)))
                .orElse(List.of());
        this.findings = List.copyOf(TakeOffFindings.of(this, b));
    }

    private List<MortarNeed> mortars(Builder b, Bedding bedding) {
        double pitch = Si.in("pitch", b.membrane.studPitch(), Units.METRE);
        double stud = Si.in("stud", b.membrane.studDiameter(), Units.METRE);
        double depth = Cavity.openDepth(
                Si.in("height", b.membrane.height(), Units.METRE),
                Cavity.squareCell(pitch),
                Cavity.roundStud(stud, stud));
        double fill = Math.max(0, coveredSquareMetres * depth - b.cableCubicMetres);
        return List.of(
                MortarNeed.of(MortarUse.UNDER_MEMBRANE, coveredSquareMetres * bedding.lowerVolumeMetres(), bedding),
                MortarNeed.of(
                        MortarUse.IN_AND_OVER_MEMBRANE,
                        fill + coveredSquareMetres * bedding.upperVolumeMetres(),
                        bedding));
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
