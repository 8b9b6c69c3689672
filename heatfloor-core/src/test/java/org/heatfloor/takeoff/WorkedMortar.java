package org.heatfloor.takeoff;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Volume;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** The worked room of 15.48 m² with its two beds: checks W35 and W36. */
final class WorkedMortar {

    private static final double AREA = 4.3 * 3.6;
    private static final Quantity<Area> FLOOR = Amounts.squareMetres(AREA);

    private static final Studs STUDS = Studs.straight(
            StudGrid.SQUARE, Amounts.millimetres(36), StudPlan.SQUARE, Amounts.millimetres(20), Amounts.millimetres(6));

    /** 5 mm cable at 108 mm. */
    private static final Quantity<Volume> CABLE =
            Studs.cableVolume(Amounts.metres(AREA / 0.108), Amounts.millimetres(5));

    private static final Bedding BEDS = Bedding.of(at(6, 12), at(8, 16), Amounts.kilograms(25))
            .withContact(Amounts.of(100, Units.PERCENT))
            .withWaste(Amounts.of(10, Units.PERCENT));

    private WorkedMortar() {}

    private static Trowel at(double notch, double spacing) {
        return Trowel.atSpacing(
                Notch.SQUARE, Amounts.millimetres(notch), Amounts.millimetres(notch), Amounts.millimetres(spacing));
    }

    static double value(String quantity, double[] x) {
        List<MortarNeed> needs = MortarNeed.of(FLOOR, STUDS, BEDS, CABLE);
        MortarNeed lower = needs.get(0);
        MortarNeed upper = needs.get(1);
        return switch (quantity) {
            case "lower mortar kg" -> Si.in("dry", lower.dry(), Units.KILOGRAM);
            case "lower mortar bags" -> lower.bags();
            case "upper mortar kg" -> Si.in("dry", upper.dry(), Units.KILOGRAM);
            case "upper mortar bags" -> upper.bags();
            case "two mortars bags" -> lower.bags() + upper.bags();
            case "one mortar bags" -> MortarNeed.bagsTogether(oneMortar());
            case "one mortar kg" ->
                oneMortar().stream()
                        .mapToDouble(n -> Si.in("dry", n.dry(), Units.KILOGRAM))
                        .sum();
            case "water kg" ->
                Si.in("water", lower.water(), Units.KILOGRAM) + Si.in("water", upper.water(), Units.KILOGRAM);
            case "mortar litres per m2" ->
                (Si.in("volume", lower.inPlace(), Units.LITRE) + Si.in("volume", upper.inPlace(), Units.LITRE)) / AREA;
            case "rise mm" -> WorkedChecks.mm(height(BEDS.lowerBed(), BEDS.upperBed()));
            case "rise upper bed mm" ->
                WorkedChecks.mm(height(
                        BEDS.lowerBed(),
                        BEDS.withContact(Amounts.of(x[0], Units.PERCENT)).upperBed()));
            default -> throw new IllegalArgumentException(quantity);
        };
    }

    private static List<MortarNeed> oneMortar() {
        return MortarNeed.of(FLOOR, STUDS, BEDS.withMortars(BEDS.mortarOver(), BEDS.mortarOver()), CABLE);
    }

    private static javax.measure.Quantity<javax.measure.quantity.Length> height(
            javax.measure.Quantity<javax.measure.quantity.Length> lower,
            javax.measure.Quantity<javax.measure.quantity.Length> upper) {
        return new FloorHeight(lower, Amounts.millimetres(6), upper, Amounts.millimetres(10)).total();
    }
}
