package org.heatfloor.plan;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import javax.measure.quantity.Time;

/**
 * Heat into the room.
 *
 * @param heatOutput heat given off upward at full power
 * @param heatLoss the room's heat loss, where given
 * @param coversHeatLoss whether the output covers it; true where none was given
 * @param heatUpTime from the air temperature to 90 % of the steady rise of the surface; empty if it takes longer than the
 *     simulation runs
 */
public record RoomHeat(
        Quantity<Power> heatOutput,
        Optional<Quantity<Power>> heatLoss,
        boolean coversHeatLoss,
        Optional<Quantity<Time>> heatUpTime) {}
