package org.heatfloor.thermal;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.HeatLossCoefficient;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.TemperatureDifference;
import org.heatfloor.quantity.Units;

/**
 * Energy of a heating season by degree hours: a room losing {@code H} W/K needs {@code H·Σ(θi − θe)⁺·Δt}; the floor draws
 * that over its upward share, since the heat lost downwards is paid as well.
 */
public final class SeasonEnergy {

    private final double kelvinHours;

    private SeasonEnergy(double kelvinHours) {
        this.kelvinHours = kelvinHours;
    }

    /**
     * From a mean temperature difference over a time. So many degree days are that many kelvins over one day, so many degree
     * hours that many over one hour.
     *
     * @param difference mean of indoor less outdoor temperature over the time, 0 or more
     * @param time the time, 0 or more
     * @return their product as degree hours
     * @throws IllegalArgumentException if one is negative
     */
    public static SeasonEnergy of(Quantity<TemperatureDifference> difference, Quantity<Time> time) {
        return new SeasonEnergy(Si.notNegative("difference", difference, Units.KELVIN_DIFFERENCE)
                * Si.notNegative("time", time, Units.HOUR));
    }

    /**
     * The mean difference that gives the same degree hours over a time.
     *
     * @param time the time, above 0
     * @return degree hours over the time
     * @throws IllegalArgumentException if the time is not above 0
     */
    public Quantity<TemperatureDifference> meanOver(Quantity<Time> time) {
        return Amounts.kelvins(kelvinHours / Si.positive("time", time, Units.HOUR));
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
