package org.heatfloor.takeoff;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Density;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.quantity.VolumePerArea;

/**
 * A bagged tile mortar as its data sheet gives it. Two mortars are the same purchase when all of this is the same.
 *
 * @param kind unmodified or modified
 * @param density of the mixed mortar
 * @param water mass of water per mass of dry mortar, 0 to 1
 * @param bag dry mass of one bag
 * @param openTime how long combed mortar still wets a tile
 * @param potLife how long mixed mortar keeps in the bucket
 */
public record Mortar(
        MortarKind kind,
        Quantity<Density> density,
        Quantity<Dimensionless> water,
        Quantity<Mass> bag,
        Quantity<Time> openTime,
        Quantity<Time> potLife) {

    /**
     * Checks the values.
     *
     * @param kind unmodified or modified
     * @param density of the mixed mortar
     * @param water mass of water per mass of dry mortar, 0 to 1
     * @param bag dry mass of one bag
     * @param openTime how long combed mortar still wets a tile
     * @param potLife how long mixed mortar keeps in the bucket
     * @throws IllegalArgumentException if the density is not 0.5 to 3 kg/L, the water not 0 to 1, the bag not above zero, a
     *     time not above zero and at most one day, or the pot life shorter than the open time
     */
    public Mortar {
        Objects.requireNonNull(kind, "kind");
        Si.within("mortar density", density, Units.KILOGRAM_PER_LITRE, 0.5, 3);
        Si.within("mortar water", water, Units.ONE, 0, 1);
        Si.positive("bag", bag, Units.KILOGRAM);
        double open = Si.positive("open time", openTime, Units.HOUR);
        Si.within("open time", openTime, Units.HOUR, 0, 24);
        double pot = Si.positive("pot life", potLife, Units.HOUR);
        Si.within("pot life", potLife, Units.HOUR, 0, 24);
        if (!(pot >= open)) {
            throw new IllegalArgumentException(
                    "pot life: " + potLife + " was given; at least the open time of " + openTime + " is expected");
        }
    }

    /**
     * A usual mortar: 1.6 kg/L mixed, 0.25 of water by mass (both from memory), open for 20 min, the least of EN 12004 for a
     * normal adhesive, and a pot life of 2 h, the short end of 2 to 4 h at 20 °C (from memory).
     *
     * @param kind unmodified or modified
     * @param bag dry mass of one bag
     * @return the mortar
     * @throws IllegalArgumentException if the bag is not above zero
     */
    public static Mortar usual(MortarKind kind, Quantity<Mass> bag) {
        return new Mortar(
                kind,
                Amounts.of(1.6, Units.KILOGRAM_PER_LITRE),
                Amounts.of(0.25, Units.ONE),
                bag,
                Amounts.of(20, Units.MINUTE),
                Amounts.of(2, Units.HOUR));
    }

    /**
     * The same mortar mixed otherwise.
     *
     * @param mixed density of the mixed mortar, 0.5 to 3 kg/L
     * @param share mass of water per mass of dry mortar, 0 to 1
     * @return a copy
     * @throws IllegalArgumentException if a value is out of range
     */
    public Mortar withMix(Quantity<Density> mixed, Quantity<Dimensionless> share) {
        return new Mortar(kind, mixed, share, bag, openTime, potLife);
    }

    /**
     * The same mortar with other times.
     *
     * @param open how long combed mortar still wets a tile
     * @param pot how long mixed mortar keeps in the bucket
     * @return a copy
     * @throws IllegalArgumentException as for the constructor
     */
    public Mortar withTimes(Quantity<Time> open, Quantity<Time> pot) {
        return new Mortar(kind, density, water, bag, open, pot);
    }

    /**
     * What a bag makes: its mass and its water over the mixed density (mass balance). 25 kg at 1.6 kg/L and 0.25 make 19.53 L.
     *
     * @return the volume of mixed mortar
     */
    public Quantity<Volume> bagYield() {
        return Amounts.of(1000 * Si.in("bag", bag, Units.KILOGRAM) / dryKilograms(1), Units.LITRE);
    }

    /**
     * Dry mass in a volume of mixed mortar: volume times mixed density over one plus the water share (mass balance).
     *
     * @param mixed the volume, zero or more
     * @return the dry mass
     * @throws IllegalArgumentException if the volume is negative
     */
    public Quantity<Mass> dry(Quantity<Volume> mixed) {
        return Amounts.kilograms(dryKilograms(Si.notNegative("mortar volume", mixed, Units.CUBIC_METRE)));
    }

    /**
     * The most floor to comb before tiles go down: pace times open time.
     *
     * @param perHour floor laid in an hour
     * @return the area
     * @throws IllegalArgumentException if the pace is not above zero
     */
    public Quantity<Area> largestSpread(Quantity<Area> perHour) {
        return Amounts.squareMetres(squareMetres(perHour, openTime));
    }

    /**
     * The most dry mortar to mix at once: pace times pot life times depth times dry mass per volume.
     *
     * @param perHour floor laid in an hour
     * @param depth volume of mortar per floor area
     * @return the dry mass
     * @throws IllegalArgumentException if a value is not above zero
     */
    public Quantity<Mass> largestBatch(Quantity<Area> perHour, Quantity<VolumePerArea> depth) {
        double metres = Si.positive("mortar depth", depth, Units.CUBIC_METRE_PER_SQUARE_METRE);
        return Amounts.kilograms(dryKilograms(squareMetres(perHour, potLife) * metres));
    }

    /**
     * Whether another mortar is the same purchase, whatever units either was given in.
     *
     * @param other the other mortar
     * @return true when kind, mix, bag and times are the same
     */
    public boolean isSameAs(Mortar other) {
        return kind == other.kind
                && same(Si.in("density", density, Units.KILOGRAM_PER_LITRE), other.density, Units.KILOGRAM_PER_LITRE)
                && same(Si.in("water", water, Units.ONE), other.water, Units.ONE)
                && same(Si.in("bag", bag, Units.KILOGRAM), other.bag, Units.KILOGRAM)
                && same(Si.in("open time", openTime, Units.HOUR), other.openTime, Units.HOUR)
                && same(Si.in("pot life", potLife, Units.HOUR), other.potLife, Units.HOUR);
    }

    private static <Q extends Quantity<Q>> boolean same(double value, Quantity<Q> other, Unit<Q> unit) {
        return Math.abs(value - Si.in("other", other, unit)) <= 1e-6 * Math.abs(value);
    }

    /** Dry mass in mixed mortar, without waste. */
    double dryKilograms(double cubicMetres) {
        return cubicMetres
                * Si.in("density", density, Units.KILOGRAM_PER_CUBIC_METRE)
                / (1 + Si.in("water", water, Units.ONE));
    }

    static double squareMetres(Quantity<Area> perHour, Quantity<Time> time) {
        return Si.positive("laying pace", perHour, Units.SQUARE_METRE) * Si.in("time", time, Units.HOUR);
    }
}
