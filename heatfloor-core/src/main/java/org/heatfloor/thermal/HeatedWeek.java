package org.heatfloor.thermal;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
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
 * @param overshoot how far the sensor rose above the temperature wanted at most, within periods; cooling down to a lower
 *     temperature does not count
 * @param surfaceMax highest surface temperature above a cable in the week
 * @param sensorAtFullPower what full power would bring the sensor to in the end
 */
public record HeatedWeek(
        List<Warming> warmings,
        Quantity<Dimensionless> onShare,
        Quantity<HeatFlux> meanFlux,
        int switchings,
        Quantity<TemperatureDifference> overshoot,
        Quantity<Temperature> surfaceMax,
        Quantity<Temperature> sensorAtFullPower) {

    /**
     * Copies the list.
     *
     * @param warmings one entry a period a day, in the week's order
     * @param onShare share of the week with power on
     * @param meanFlux mean heat given to a square metre of heated floor over the week
     * @param switchings how often power came on
     * @param overshoot how far the sensor rose above the temperature wanted at most, within periods; cooling down to a lower
     *     temperature does not count
     * @param surfaceMax highest surface temperature above a cable in the week
     * @param sensorAtFullPower what full power would bring the sensor to in the end
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
     * @param wanted sensor temperature wanted
     * @param sensor sensor temperature at the beginning
     * @param surfaceMean mean surface temperature at the beginning
     * @param reached whether the sensor was at most half the hysteresis, within which power goes on and off, below the temperature
     *     wanted
     */
    public record Warming(
            DayOfWeek day,
            LocalTime from,
            Quantity<Time> lead,
            Quantity<Temperature> wanted,
            Quantity<Temperature> sensor,
            Quantity<Temperature> surfaceMean,
            boolean reached) {}

    /**
     * Longest time ahead of a period at which the thermostat began to heat for it.
     *
     * @return the lead; 0 when no period needed one
     */
    public Quantity<Time> longestLead() {
        return Amounts.of(
                warmings.stream()
                        .mapToDouble(w -> Si.in("lead", w.lead(), Units.MINUTE))
                        .max()
                        .orElse(0),
                Units.MINUTE);
    }

    /**
     * Periods that begin too cool: one warning a temperature wanted, with the first such period, and whether full power would
     * ever bring the floor there.
     *
     * @param subject the floor or cable judged
     * @return the warnings; none when every period is reached
     */
    public List<Finding> findings(String subject) {
        double full = Si.in("full power", sensorAtFullPower, Units.CELSIUS);
        Map<Double, List<Warming>> late = new TreeMap<>();
        for (Warming warming : warmings) {
            double wanted = Si.in("wanted", warming.wanted(), Units.CELSIUS);
            if (!warming.reached() || full <= wanted) {
                late.computeIfAbsent(wanted, w -> new ArrayList<>()).add(warming);
            }
        }
        List<Finding> out = new ArrayList<>();
        late.forEach((wanted, times) -> {
            Warming first = times.get(0);
            String when = first.day().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + first.from();
            boolean never = full <= wanted;
            out.add(Finding.of(
                    Severity.WARNING,
                    subject,
                    never
                            ? HeatFindings.text(
                                    "The sensor never reads the %.1f °C wanted from %s: full power ends at %.1f °C and would"
                                            + " stay on; ask for less or take more power a square metre.",
                                    wanted, when, full)
                            : HeatFindings.text(
                                    "On %s the sensor reads %.1f °C and not the %.1f °C wanted: begin earlier.",
                                    when, Si.in("sensor", first.sensor(), Units.CELSIUS), wanted),
                    never ? sensorAtFullPower : first.sensor(),
                    first.wanted(),
                    Source.derived("the week of an on/off thermostat on the schedule given")));
        });
        return List.copyOf(out);
    }

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
