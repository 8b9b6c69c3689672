package org.heatfloor.plan;

import java.util.Objects;
import javax.measure.Quantity;
import org.heatfloor.quantity.HeatLossCoefficient;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.thermal.SeasonEnergy;

/**
 * A heating season the floor is to heat the room through.
 *
 * @param degreeHours how cold how long
 * @param loss heat the room loses a kelvin
 */
public record HeatingSeason(SeasonEnergy degreeHours, Quantity<HeatLossCoefficient> loss) {

    /**
     * Checks the figures.
     *
     * @param degreeHours how cold how long
     * @param loss heat the room loses a kelvin
     * @throws IllegalArgumentException if the loss is negative
     */
    public HeatingSeason {
        Objects.requireNonNull(degreeHours, "degreeHours");
        Si.notNegative("season loss", loss, Units.WATT_PER_KELVIN);
    }
}
