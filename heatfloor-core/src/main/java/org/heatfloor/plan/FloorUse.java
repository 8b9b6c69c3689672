package org.heatfloor.plan;

import java.math.BigDecimal;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Time;
import org.heatfloor.thermal.HeatedWeek;
import org.heatfloor.thermal.Tariff;

/**
 * The floor in use: when it must start, what it takes and what it costs. What was not asked for in the brief is empty.
 *
 * @param timeToWanted from a floor at room temperature to the floor temperature wanted; empty too where full power never
 *     gets there
 * @param week the week on the schedule, of the cable that must start first
 * @param energyPerWeek electricity of all cables in that week
 * @param costPerWeek what it costs
 * @param energyPerSeason electricity by which the floor gives the room's heat of a season
 * @param costPerSeason what it costs
 * @param tariff what the costs rest on
 */
public record FloorUse(
        Optional<Quantity<Time>> timeToWanted,
        Optional<HeatedWeek> week,
        Optional<Quantity<Energy>> energyPerWeek,
        Optional<BigDecimal> costPerWeek,
        Optional<Quantity<Energy>> energyPerSeason,
        Optional<BigDecimal> costPerSeason,
        Optional<Tariff> tariff) {}
