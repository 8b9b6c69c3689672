package org.heatfloor.takeoff;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.Door;
import org.heatfloor.area.JointRule;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.Room;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Gathers what a take-off is made from. Not safe to share between threads; the take-off it builds is. */
public final class TakeOffBuilder {

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
    Practice practice = Practice.EUROPE;
    private Optional<StepRule> stepRule = Optional.empty();
    private Optional<TileStandard> standard = Optional.empty();
    private Optional<JointRule> jointRule = Optional.empty();
    Optional<SpotSurvey> survey = Optional.empty();
    LevellerSpec leveller = LevellerSpec.USUAL;
    Studs studs;
    Optional<Quantity<Length>> lippage = Optional.empty();
    final Map<HeightPart, Stated> stated = new EnumMap<>(HeightPart.class);

    record Stated(String layer, Quantity<Length> thickness) {}

    TakeOffBuilder(Room room, Membrane membrane, StudLattice lattice) {
        this.room = Objects.requireNonNull(room, "room");
        this.membrane = Objects.requireNonNull(membrane, "membrane");
        this.lattice = Objects.requireNonNull(lattice, "lattice");
        this.studs = Studs.of(membrane);
    }

    /**
     * The keep-outs: columns and shower trays are left out of the covered floor, movement joints part it.
     *
     * @param given every keep-out of the room
     * @return this builder
     */
    public TakeOffBuilder keepOuts(List<KeepOut> given) {
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
    public TakeOffBuilder cable(Quantity<Length> length, Quantity<Length> diameter) {
        double metres = Si.notNegative("cable length", length, Units.METRE);
        Si.positive("cable diameter", diameter, Units.MILLIMETRE);
        double d = Si.within("cable diameter", diameter, Units.MILLIMETRE, 0, 50) / 1000;
        this.cableCubicMetres += metres * Studs.cableSquareMetres(d);
        this.cableDiameterMetres = Math.max(cableDiameterMetres, d);
        return this;
    }

    /**
     * The tile, set out as {@link LayoutRule#USUAL}.
     *
     * @param given the tile
     * @return this builder
     */
    public TakeOffBuilder tile(TileSpec given) {
        this.tile = Optional.of(given);
        return this;
    }

    /**
     * How the tile is set out.
     *
     * @param rule the rule
     * @return this builder
     */
    public TakeOffBuilder layoutRule(LayoutRule rule) {
        this.layoutRule = Objects.requireNonNull(rule, "rule");
        return this;
    }

    /**
     * The mortar beds.
     *
     * @param given the beds
     * @return this builder
     */
    public TakeOffBuilder bedding(Bedding given) {
        this.bedding = Optional.of(given);
        return this;
    }

    /**
     * The grout; {@link GroutSpec#USUAL} when not called.
     *
     * @param given the grout
     * @return this builder
     */
    public TakeOffBuilder grout(GroutSpec given) {
        this.grout = Objects.requireNonNull(given, "grout");
        return this;
    }

    /**
     * The doors.
     *
     * @param given doors; those without the height of the floor beyond are left out
     * @return this builder
     */
    public TakeOffBuilder doors(List<Door> given) {
        this.doors = List.copyOf(given);
        return this;
    }

    /**
     * The region's building practice, which chooses all limits and units; {@link Practice#EUROPE} when not called. The
     * findings name it.
     *
     * @param given the practice
     * @return this builder
     */
    public TakeOffBuilder practice(Practice given) {
        this.practice = Objects.requireNonNull(given, "practice");
        return this;
    }

    /**
     * The limits for steps at doors; those of the practice when not called.
     *
     * @param rule the rule
     * @return this builder
     */
    public TakeOffBuilder stepRule(StepRule rule) {
        this.stepRule = Optional.of(rule);
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
    public TakeOffBuilder stated(HeightPart part, String layer, Quantity<Length> thickness) {
        Si.notNegative("layer '" + layer + "' thickness", thickness, Units.METRE);
        stated.put(part, new Stated(layer, thickness));
        return this;
    }

    /**
     * Whose limits joints, lippage and flatness are held to; the practice's when not called.
     *
     * @param given the standard
     * @return this builder
     */
    public TakeOffBuilder standard(TileStandard given) {
        this.standard = Optional.of(given);
        return this;
    }

    /**
     * How large a bay may be; the practice's rule for heated floors when not called.
     *
     * @param rule the rule
     * @return this builder
     */
    public TakeOffBuilder jointRule(JointRule rule) {
        this.jointRule = Optional.of(rule);
        return this;
    }

    /**
     * Heights of the base at spots, for levelling compound and flatness.
     *
     * @param given the survey
     * @param compound the levelling compound and its least thickness
     * @return this builder
     */
    public TakeOffBuilder survey(SpotSurvey given, LevellerSpec compound) {
        this.survey = Optional.of(given);
        this.leveller = Objects.requireNonNull(compound, "compound");
        return this;
    }

    /**
     * The studs' form, where they are not round, straight and solid; {@link Studs#of} the membrane when not called.
     *
     * @param given the studs, in a square grid with the membrane's pitch and height
     * @return this builder
     * @throws IllegalArgumentException if grid, pitch or height are not the membrane's
     */
    public TakeOffBuilder studs(Studs given) {
        boolean fits = given.grid() == StudGrid.SQUARE
                && same(given.pitch(), membrane.studPitch())
                && same(given.height(), membrane.height());
        if (!fits) {
            throw new IllegalArgumentException("studs: a " + given.grid().name().toLowerCase(Locale.ROOT) + " grid of "
                    + given.pitch() + ", " + given.height() + " high, was given; the membrane's square grid of "
                    + membrane.studPitch() + ", " + membrane.height() + " high, is expected");
        }
        this.studs = given;
        return this;
    }

    private static boolean same(Quantity<Length> a, Quantity<Length> b) {
        return Math.abs(Si.in("length", a, Units.METRE) - Si.in("length", b, Units.METRE)) < 1e-6;
    }

    /**
     * The largest difference of height measured between neighbouring tile edges.
     *
     * @param measured on a trial field or the finished floor
     * @return this builder
     * @throws IllegalArgumentException if it is not 0 to 50 mm
     */
    public TakeOffBuilder lippage(Quantity<Length> measured) {
        Si.within("lippage", measured, Units.MILLIMETRE, 0, 50);
        this.lippage = Optional.of(measured);
        return this;
    }

    StepRule stepRule() {
        return stepRule.orElse(practice.stepRule());
    }

    TileStandard standard() {
        return standard.orElse(practice.tileStandard());
    }

    JointRule jointRule() {
        return jointRule.orElse(practice.jointRule());
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
