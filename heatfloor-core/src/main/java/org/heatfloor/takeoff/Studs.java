package org.heatfloor.takeoff;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.heatfloor.grid.Membrane;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.quantity.VolumePerArea;

/**
 * The form of a membrane's studs, for the mortar between them: the height times the share of a cell the studs leave free, and
 * what hollow studs take. Derived geometry; cut studs at walls are left out of account.
 *
 * @param grid how the studs stand to each other
 * @param pitch distance of neighbouring stud centres
 * @param plan the outline seen from above
 * @param foot diameter or side at the foot
 * @param head diameter or side at the head; larger than the foot on a cut-back stud
 * @param height of the studs
 * @param hollow the hole, where the stud is open at the top and takes mortar
 */
public record Studs(
        StudGrid grid,
        Quantity<Length> pitch,
        StudPlan plan,
        Quantity<Length> foot,
        Quantity<Length> head,
        Quantity<Length> height,
        Optional<Hollow> hollow) {

    /**
     * The hole in a stud, with the stud's outline.
     *
     * @param width diameter or side
     * @param depth from the stud's top
     */
    public record Hollow(Quantity<Length> width, Quantity<Length> depth) {

        /**
         * Checks the sizes.
         *
         * @param width diameter or side
         * @param depth from the stud's top
         * @throws IllegalArgumentException if one is not above zero
         */
        public Hollow {
            Si.positive("stud hollow width", width, Units.METRE);
            Si.positive("stud hollow depth", depth, Units.METRE);
        }
    }

    /**
     * Checks the sizes.
     *
     * @param grid how the studs stand to each other
     * @param pitch distance of neighbouring stud centres
     * @param plan the outline seen from above
     * @param foot diameter or side at the foot
     * @param head diameter or side at the head
     * @param height of the studs
     * @param hollow the hole, where the stud is open at the top and takes mortar
     * @throws IllegalArgumentException if the pitch is not 5 mm to 500 mm, foot or head not above zero and below the pitch,
     *     the height not above zero and at most 100 mm, or the hole not smaller than head and foot and at most as deep as the
     *     stud is high
     */
    public Studs {
        Objects.requireNonNull(grid, "grid");
        Objects.requireNonNull(plan, "plan");
        double p = Si.within("stud pitch", pitch, Units.MILLIMETRE, 5, 500);
        double narrowest = Math.min(below("stud foot", foot, p, pitch), below("stud head", head, p, pitch));
        Si.positive("stud height", height, Units.MILLIMETRE);
        double h = Si.within("stud height", height, Units.MILLIMETRE, 0, 100);
        hollow.ifPresent(hole -> {
            if (!(Si.in("hollow", hole.width(), Units.MILLIMETRE) < narrowest)) {
                throw new IllegalArgumentException("stud hollow width: " + hole.width()
                        + " was given; less than the stud's foot of " + foot + " and head of " + head
                        + " is expected");
            }
            if (!(Si.in("hollow", hole.depth(), Units.MILLIMETRE) <= h + 1e-9)) {
                throw new IllegalArgumentException("stud hollow depth: " + hole.depth()
                        + " was given; at most the stud's height of " + height + " is expected");
            }
        });
    }

    private static double below(String what, Quantity<Length> size, double pitchMillimetres, Quantity<Length> pitch) {
        double millimetres = Si.positive(what, size, Units.MILLIMETRE);
        if (!(millimetres < pitchMillimetres)) {
            throw new IllegalArgumentException(
                    what + ": " + size + " was given; less than the stud pitch of " + pitch + " is expected");
        }
        return millimetres;
    }

    /**
     * Straight, solid studs.
     *
     * @param grid how the studs stand to each other
     * @param pitch distance of neighbouring stud centres
     * @param plan the outline seen from above
     * @param size diameter or side
     * @param height of the studs
     * @return the studs
     * @throws IllegalArgumentException as for the constructor
     */
    public static Studs straight(
            StudGrid grid, Quantity<Length> pitch, StudPlan plan, Quantity<Length> size, Quantity<Length> height) {
        return new Studs(grid, pitch, plan, size, size, height, Optional.empty());
    }

    /**
     * A membrane's studs taken as round, straight and solid, as far as the membrane itself tells.
     *
     * @param membrane the membrane
     * @return its studs
     */
    public static Studs of(Membrane membrane) {
        return straight(
                StudGrid.SQUARE, membrane.studPitch(), StudPlan.ROUND, membrane.studDiameter(), membrane.height());
    }

    /**
     * The same studs with another size at the head: tapered when smaller, cut back when larger than the foot.
     *
     * @param size diameter or side at the head
     * @return a copy
     * @throws IllegalArgumentException if it is not above zero and below the pitch, or not above the hole's width
     */
    public Studs withHead(Quantity<Length> size) {
        return new Studs(grid, pitch, plan, foot, size, height, hollow);
    }

    /**
     * The same studs, open at the top.
     *
     * @param width diameter or side of the hole
     * @param depth from the stud's top
     * @return a copy
     * @throws IllegalArgumentException if the hole does not fit the stud
     */
    public Studs withHollow(Quantity<Length> width, Quantity<Length> depth) {
        return new Studs(grid, pitch, plan, foot, head, height, Optional.of(new Hollow(width, depth)));
    }

    /**
     * Floor of one stud: the pitch squared, times √3/2 in a triangular grid.
     *
     * @return the area
     */
    public Quantity<Area> cell() {
        return Amounts.squareMetres(cellSquareMetres());
    }

    /**
     * A stud's outer volume over its height: {@code π/12·(D₁² + D₁·D₂ + D₂²)} round, {@code (b₁² + b₁·b₂ + b₂²)/3} square.
     *
     * @return the mean plan area
     */
    public Quantity<Area> meanPlanArea() {
        return Amounts.squareMetres(studSquareMetres());
    }

    /**
     * Mortar that fills the channels to the stud tops and the holes in the studs, per floor area, without a cable.
     *
     * @return the volume per area; in litres per square metre it is also the mean depth in millimetres
     */
    public Quantity<VolumePerArea> openVolume() {
        return Amounts.of(openMetres(), Units.CUBIC_METRE_PER_SQUARE_METRE);
    }

    /**
     * The same less a cable laid at a spacing: the cable's section over the spacing. Where the laid length is known use that,
     * as {@link TakeOff} does.
     *
     * @param diameter of the cable
     * @param spacing between the cable's runs
     * @return the volume per area, at least zero
     * @throws IllegalArgumentException if a length is not above zero
     */
    public Quantity<VolumePerArea> fillVolume(Quantity<Length> diameter, Quantity<Length> spacing) {
        double d = Si.positive("cable diameter", diameter, Units.METRE);
        double cable = cableSquareMetres(d) / Si.positive("cable spacing", spacing, Units.METRE);
        return Amounts.of(Math.max(0, openMetres() - cable), Units.CUBIC_METRE_PER_SQUARE_METRE);
    }

    /**
     * Mortar when the channels are flooded only part of the way up: the height replaced by that depth, the stud by its mean
     * over that depth. Holes are open at the top and stay empty until the studs are covered.
     *
     * @param depth from the foot, above 0 and at most the height
     * @return the volume per area, without a cable
     * @throws IllegalArgumentException if the depth is out of range
     */
    public Quantity<VolumePerArea> openVolumeTo(Quantity<Length> depth) {
        double to = Si.positive("fill depth", depth, Units.METRE);
        double h = Si.in("height", height, Units.METRE);
        Si.within("fill depth", depth, Units.METRE, 0, h + 1e-12);
        double bottom = Si.in("foot", foot, Units.METRE);
        double top = bottom + (Si.in("head", head, Units.METRE) - bottom) * to / h;
        return Amounts.of(
                to * (1 - plan.meanSquareMetres(bottom, top) / cellSquareMetres()), Units.CUBIC_METRE_PER_SQUARE_METRE);
    }

    /**
     * Volume of a cable.
     *
     * @param length of the cable
     * @param diameter of the cable
     * @return the volume
     * @throws IllegalArgumentException if one is negative
     */
    public static Quantity<Volume> cableVolume(Quantity<Length> length, Quantity<Length> diameter) {
        return Amounts.of(
                1000
                        * Si.notNegative("cable length", length, Units.METRE)
                        * cableSquareMetres(Si.notNegative("cable diameter", diameter, Units.METRE)),
                Units.LITRE);
    }

    double openMetres() {
        double solid = Si.in("height", height, Units.METRE) * studSquareMetres();
        double hole = hollow.map(x -> {
                    double width = Si.in("hollow", x.width(), Units.METRE);
                    return plan.meanSquareMetres(width, width) * Si.in("hollow", x.depth(), Units.METRE);
                })
                .orElse(0.0);
        return Si.in("height", height, Units.METRE) - (solid - hole) / cellSquareMetres();
    }

    private double cellSquareMetres() {
        return grid.cellSquareMetres(Si.in("pitch", pitch, Units.METRE));
    }

    private double studSquareMetres() {
        return plan.meanSquareMetres(Si.in("foot", foot, Units.METRE), Si.in("head", head, Units.METRE));
    }

    static double cableSquareMetres(double diameterMetres) {
        return Math.PI * diameterMetres * diameterMetres / 4;
    }
}
