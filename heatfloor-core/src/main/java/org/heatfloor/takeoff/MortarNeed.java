package org.heatfloor.takeoff;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.heatfloor.grid.Membrane;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Density;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * One mortar to buy. Dry mass is the volume in place times mixed density over one plus the water share (mass balance), with
 * the waste share added; bags are rounded up for each mortar by itself.
 *
 * @param use what it is for
 * @param inPlace volume of mixed mortar in the floor
 * @param dry dry mass, waste included
 * @param water mass of mixing water for it
 * @param bag dry mass of a bag
 * @param bags bags to buy
 */
public record MortarNeed(
        MortarUse use,
        Quantity<Volume> inPlace,
        Quantity<Mass> dry,
        Quantity<Mass> water,
        Quantity<Mass> bag,
        int bags) {

    /**
     * Checks the parts.
     *
     * @param use what it is for
     * @param inPlace volume of mixed mortar in the floor
     * @param dry dry mass, waste included
     * @param water mass of mixing water for it
     * @param bag dry mass of a bag
     * @param bags bags to buy
     * @throws IllegalArgumentException if a quantity is negative
     */
    public MortarNeed {
        Objects.requireNonNull(use, "use");
        Si.notNegative("mortar volume", inPlace, Units.CUBIC_METRE);
        Si.notNegative("dry mortar", dry, Units.KILOGRAM);
        Si.notNegative("water", water, Units.KILOGRAM);
        Si.positive("bag", bag, Units.KILOGRAM);
    }

    static MortarNeed of(MortarUse use, double cubicMetres, Bedding bedding) {
        double waste = Si.in("waste", bedding.waste(), Units.ONE);
        double water = Si.in("water", bedding.water(), Units.ONE);
        double dry = dryKilograms(cubicMetres, bedding.density(), bedding.water()) * (1 + waste);
        double bag = Si.in("bag", bedding.bag(), Units.KILOGRAM);
        return new MortarNeed(
                use,
                Amounts.of(cubicMetres * 1000, Units.LITRE),
                Amounts.kilograms(dry),
                Amounts.kilograms(dry * water),
                bedding.bag(),
                wholeBags(dry, bag));
    }

    /** Dry mass in a volume of mixed mortar, both without waste. */
    static double dryKilograms(double cubicMetres, Quantity<Density> density, Quantity<Dimensionless> water) {
        return cubicMetres
                * Si.in("density", density, Units.KILOGRAM_PER_CUBIC_METRE)
                / (1 + Si.in("water", water, Units.ONE));
    }

    /** The two mortars of a floor. */
    static List<MortarNeed> both(
            double coveredSquareMetres, Membrane membrane, Bedding bedding, double cableCubicMetres) {
        double stud = Si.in("stud", membrane.studDiameter(), Units.METRE);
        double depth = Cavity.openDepth(
                Si.in("height", membrane.height(), Units.METRE),
                Cavity.squareCell(Si.in("pitch", membrane.studPitch(), Units.METRE)),
                Cavity.roundStud(stud, stud));
        double fill = Math.max(0, coveredSquareMetres * depth - cableCubicMetres);
        return List.of(
                of(MortarUse.UNDER_MEMBRANE, coveredSquareMetres * bedding.lowerVolumeMetres(), bedding),
                of(MortarUse.IN_AND_OVER_MEMBRANE, fill + coveredSquareMetres * bedding.upperVolumeMetres(), bedding));
    }

    /**
     * Bags when one mortar serves all uses: dry masses added up, then rounded up.
     *
     * @param needs mortars bought in the same bag
     * @return the bags
     */
    public static int bagsTogether(List<MortarNeed> needs) {
        double dry = needs.stream()
                .mapToDouble(n -> Si.in("dry", n.dry(), Units.KILOGRAM))
                .sum();
        return needs.isEmpty() ? 0 : wholeBags(dry, Si.in("bag", needs.get(0).bag(), Units.KILOGRAM));
    }

    static int wholeBags(double kilograms, double bagKilograms) {
        return (int) Math.ceil(kilograms / bagKilograms - 1e-9);
    }

    /**
     * What the bags hold beyond the dry mass, as a share of it.
     *
     * @return the share in hand; zero when no mortar is needed
     */
    public Quantity<Dimensionless> inHand() {
        double needed = Si.in("dry", dry, Units.KILOGRAM);
        double bought = bags * Si.in("bag", bag, Units.KILOGRAM);
        return Amounts.of(needed > 0 ? 100 * (bought / needed - 1) : 0, Units.PERCENT);
    }
}
