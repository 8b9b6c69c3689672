package org.heatfloor.plan;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import javax.measure.quantity.Time;

/**
 * Heat into the room and of the floor.
 *
 * @param heatOutput heat the floor gives the room at full power, from the field of the routes as laid
 * @param heatLoss the room's heat loss, where given
 * @param coversHeatLoss whether the output covers it; true where none was given
 * @param heatUpTime from every layer at the room's temperature to 90 % of the steady rise of the surface; empty if it takes
 *     longer than the simulation runs
 * @param floor surface, sensors, seals and cold places at steady full power
 * @param use start, energy and cost, as far as asked for
 */
public record RoomHeat(
        Quantity<Power> heatOutput,
        Optional<Quantity<Power>> heatLoss,
        boolean coversHeatLoss,
        Optional<Quantity<Time>> heatUpTime,
        FloorHeat floor,
        FloorUse use) {}
