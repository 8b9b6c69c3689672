package org.heatfloor.thermal;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.HeatFlux;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.TemperatureDifference;
import org.heatfloor.quantity.Units;

/**
 * A week of an on/off thermostat on a schedule, after two weeks of settling.
 *
 * @param warmings one entry a period a day, in the week's order
 * @param onShare share of the week with power on
 * @param meanFlux mean heat given to a square metre of heated floor over the week
 * @param switchings how often power came on
 * @param overshoot how far the sensor rose above the temperature wanted at most, within periods
 * @param surfaceMax highest surface temperature above a cable in the week
 */
public record HeatedWeek(
        List<Warming> warmings,
        Quantity<Dimensionless> onShare,
        Quantity<HeatFlux> meanFlux,
        int switchings,
        Quantity<TemperatureDifference> overshoot,
        Quantity<Temperature> surfaceMax) {

    /**
     * Copies the list.
     *
     * @param warmings one entry a period a day, in the week's order
     * @param onShare share of the week with power on
     * @param meanFlux mean heat given to a square metre of heated floor over the week
     * @param switchings how often power came on
     * @param overshoot how far the sensor rose above the temperature wanted at most, within periods
     * @param surfaceMax highest surface temperature above a cable in the week
     */
    public HeatedWeek {
        warmings = List.copyOf(warmings);
    }

    /**
     * One warm-up before a period.
     *
     * @param day day of the period
     * @param from beginning of the period
     * @param lead how long before the beginning the thermostat began to heat for it; 0 when it was warm
     * @param sensor sensor temperature at the beginning
     * @param surfaceMean mean surface temperature at the beginning
     * @param reached whether the sensor was within the hysteresis of the temperature wanted
     */
    public record Warming(
            DayOfWeek day,
            LocalTime from,
            Quantity<Time> lead,
            Quantity<Temperature> sensor,
            Quantity<Temperature> surfaceMean,
            boolean reached) {}

    /**
     * Electricity of the week.
     *
     * @param heatedArea area the cable heats
     * @return mean flux times area times 7 days
     */
    public Quantity<Energy> energy(Quantity<Area> heatedArea) {
        double watts = Si.in("meanFlux", meanFlux, Units.WATT_PER_SQUARE_METRE)
                * Si.positive("heatedArea", heatedArea, Units.SQUARE_METRE);
        return Amounts.of(watts * 7 * 24 / 1000, Units.KILOWATT_HOUR);
    }

    /**
     * Electricity of a mean day.
     *
     * @param heatedArea area the cable heats
     * @return a seventh of the week's
     */
    public Quantity<Energy> energyPerDay(Quantity<Area> heatedArea) {
        return energy(heatedArea).divide(7);
    }

    /**
     * Cost of the week.
     *
     * @param heatedArea area the cable heats
     * @param tariff what electricity costs
     * @return the cost
     */
    public BigDecimal cost(Quantity<Area> heatedArea, Tariff tariff) {
        return tariff.cost(energy(heatedArea));
    }
}
