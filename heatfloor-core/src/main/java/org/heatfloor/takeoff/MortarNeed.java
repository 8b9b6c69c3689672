package org.heatfloor.takeoff;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * What one bed takes of its mortar. Dry mass is the volume in place times mixed density over one plus the water share (mass
 * balance), with the waste share added; bags are rounded up for this bed by itself.
 *
 * @param use what it is for
 * @param mortar the mortar
 * @param inPlace volume of mixed mortar in the floor
 * @param dry dry mass, waste included
 * @param water mass of mixing water for it
 * @param bags bags to buy
 */
public record MortarNeed(
        MortarUse use, Mortar mortar, Quantity<Volume> inPlace, Quantity<Mass> dry, Quantity<Mass> water, int bags) {

    /**
     * Checks the parts.
     *
     * @param use what it is for
     * @param mortar the mortar
     * @param inPlace volume of mixed mortar in the floor
     * @param dry dry mass, waste included
     * @param water mass of mixing water for it
     * @param bags bags to buy
     * @throws IllegalArgumentException if a quantity is negative
     */
    public MortarNeed {
        Objects.requireNonNull(use, "use");
        Objects.requireNonNull(mortar, "mortar");
        Si.notNegative("mortar volume", inPlace, Units.CUBIC_METRE);
        Si.notNegative("dry mortar", dry, Units.KILOGRAM);
        Si.notNegative("water", water, Units.KILOGRAM);
    }

    /**
     * The mortars of a floor: under the membrane the combed bed; in and over it the open volume between its studs less the
     * cable, and the bed over the studs.
     *
     * @param floor area covered
     * @param studs the membrane's studs
     * @param bedding trowels and mortars
     * @param cable volume of all cable between the studs
     * @return the need under the membrane, then that in and over it
     * @throws IllegalArgumentException if area or volume is negative
     */
    public static List<MortarNeed> of(Quantity<Area> floor, Studs studs, Bedding bedding, Quantity<Volume> cable) {
        double area = Si.notNegative("floor", floor, Units.SQUARE_METRE);
        double fill = area * studs.openMetres() - Si.notNegative("cable volume", cable, Units.CUBIC_METRE);
        return List.of(
                of(
                        MortarUse.UNDER_MEMBRANE,
                        bedding.mortarUnder(),
                        area * bedding.lowerVolumeMetres(),
                        bedding.waste()),
                of(
                        MortarUse.IN_AND_OVER_MEMBRANE,
                        bedding.mortarOver(),
                        Math.max(0, fill) + area * bedding.upperVolumeMetres(),
                        bedding.waste()));
    }

    static MortarNeed of(MortarUse use, Mortar mortar, double cubicMetres, Quantity<Dimensionless> waste) {
        double dry = mortar.dryKilograms(cubicMetres) * (1 + Si.in("waste", waste, Units.ONE));
        return new MortarNeed(
                use,
                mortar,
                Amounts.of(cubicMetres * 1000, Units.LITRE),
                Amounts.kilograms(dry),
                Amounts.kilograms(dry * Si.in("water", mortar.water(), Units.ONE)),
                wholeBags(dry, Si.in("bag", mortar.bag(), Units.KILOGRAM)));
    }

    /**
     * Bags when one mortar serves all uses: dry masses added up, then rounded up.
     *
     * @param needs needs of one and the same mortar
     * @return the bags
     * @throws IllegalArgumentException if they are of different mortars
     */
    public static int bagsTogether(List<MortarNeed> needs) {
        if (!needs.stream().allMatch(n -> n.mortar.isSameAs(needs.get(0).mortar))) {
            throw new IllegalArgumentException(
                    "mortars: different mortars were given; needs of one and the same mortar are expected");
        }
        double dry = needs.stream()
                .mapToDouble(n -> Si.in("dry", n.dry(), Units.KILOGRAM))
                .sum();
        return needs.isEmpty()
                ? 0
                : wholeBags(dry, Si.in("bag", needs.get(0).mortar().bag(), Units.KILOGRAM));
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
        return inHand(Si.in("dry", dry, Units.KILOGRAM), bags, mortar);
    }

    static Quantity<Dimensionless> inHand(double needed, int bags, Mortar mortar) {
        double bought = bags * Si.in("bag", mortar.bag(), Units.KILOGRAM);
        return Amounts.of(needed > 0 ? 100 * (bought / needed - 1) : 0, Units.PERCENT);
    }
}
