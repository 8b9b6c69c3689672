package org.heatfloor.takeoff;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * Levelling compound for a floor.
 *
 * @param volume of compound in place
 * @param deepest greatest thickness
 * @param dry mass of dry compound, waste included
 * @param compound what it is
 */
public record LevellerNeed(
        Quantity<Volume> volume, Quantity<Length> deepest, Quantity<Mass> dry, LevellerSpec compound) {

    static LevellerNeed of(double cubicMetres, double deepestMetres, LevellerSpec compound) {
        double dry = cubicMetres
                * Si.in("density", compound.dry(), Units.KILOGRAM_PER_CUBIC_METRE)
                * (1 + Si.in("waste", compound.waste(), Units.ONE));
        return new LevellerNeed(
                Amounts.of(cubicMetres * 1000, Units.LITRE),
                Amounts.millimetres(deepestMetres * 1000),
                Amounts.kilograms(dry),
                compound);
    }
}
