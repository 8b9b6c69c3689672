package org.heatfloor.thermal;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.HeatLossCoefficient;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * Energy of a heating season by degree hours: a room losing {@code H} W/K needs {@code H·Σ(θi − θe)⁺·Δt}; the floor draws
 * that over its upward share, since the heat lost downwards is paid as well.
 *
 * @param kelvinHours degree hours, K·h, 0 or more
 */
public record SeasonEnergy(double kelvinHours) {

    /**
     * Checks the figure.
     *
     * @param kelvinHours degree hours, K·h, 0 or more
     * @throws IllegalArgumentException if it is negative or not finite
     */
    public SeasonEnergy {
        if (!(kelvinHours >= 0 && kelvinHours < 1e9)) {
            throw new IllegalArgumentException("kelvinHours: " + kelvinHours + " was given; 0 or more is expected");
        }
    }

    /**
     * From degree days.
     *
     * @param kelvinDays degree days, K·d
     * @return 24 times as many degree hours
     */
    public static SeasonEnergy ofDegreeDays(double kelvinDays) {
        return new SeasonEnergy(24 * kelvinDays);
    }

    /**
     * From hourly outdoor temperatures.
     *
     * @param indoor indoor temperature
     * @param hourlyOutdoor one outdoor temperature an hour
     * @return the sum of the differences above zero
     */
    public static SeasonEnergy ofHours(Quantity<Temperature> indoor, List<Quantity<Temperature>> hourlyOutdoor) {
        double inside = Si.kelvin("indoor", indoor);
        double sum = 0;
        for (Quantity<Temperature> outdoor : hourlyOutdoor) {
            sum += Math.max(0, inside - Si.kelvin("outdoor", outdoor));
        }
        return new SeasonEnergy(sum);
    }

    /**
     * Heat the room needs.
     *
     * @param loss heat loss a kelvin
     * @return the heat
     */
    public Quantity<Energy> heat(Quantity<HeatLossCoefficient> loss) {
        return Amounts.of(
                Si.notNegative("loss", loss, Units.WATT_PER_KELVIN) * kelvinHours / 1000, Units.KILOWATT_HOUR);
    }

    /**
     * Electricity a heated floor draws for that heat.
     *
     * @param loss heat loss a kelvin
     * @param shareUpward share of the floor's heat that goes up, above 0 and at most 1
     * @return the heat over the share
     * @throws IllegalArgumentException if the share lies outside
     */
    public Quantity<Energy> electricity(Quantity<HeatLossCoefficient> loss, Quantity<Dimensionless> shareUpward) {
        double share = Si.in("shareUpward", shareUpward, Units.ONE);
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException(
                    "shareUpward: " + shareUpward + " was given; more than 0 and at most 1 is expected");
        }
        return Amounts.of(Si.in("heat", heat(loss), Units.KILOWATT_HOUR) / share, Units.KILOWATT_HOUR);
    }
}
