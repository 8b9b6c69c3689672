package org.heatfloor.thermal;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * One floor without and with an insulating board straight under the heated layer.
 *
 * @param without section without the board
 * @param with section with the board
 * @param heatUpWithout time from cold until the mean surface reaches the schedule's highest temperature, without the board;
 *     empty when full power never gets there
 * @param heatUpWith the same time with the board
 * @param weekWithout a thermostat's week without the board
 * @param weekWith the same week with the board
 */
public record BoardComparison(
        SteadySection without,
        SteadySection with,
        Optional<Quantity<Time>> heatUpWithout,
        Optional<Quantity<Time>> heatUpWith,
        HeatedWeek weekWithout,
        HeatedWeek weekWith) {

    /**
     * Solves both floors.
     *
     * @param buildUp the layers without the board
     * @param board the board
     * @param climate room and space below
     * @param law how the surface gives off heat
     * @param cable the cable
     * @param spacing distance of neighbouring cables
     * @param thermostat the thermostat
     * @param schedule what is wanted when
     * @return both floors side by side
     * @throws IllegalArgumentException if the cable reaches out of its layer
     */
    public static BoardComparison of(
            BuildUp buildUp,
            Layer board,
            Climate climate,
            SurfaceLaw law,
            EmbeddedCable cable,
            Quantity<Length> spacing,
            Thermostat thermostat,
            WeeklySchedule schedule) {
        BuildUp insulated = buildUp.withLayerUnderHeated(board);
        HeatUp bare = HeatUp.fromCold(buildUp, climate, law, cable, spacing);
        HeatUp boarded = HeatUp.fromCold(insulated, climate, law, cable, spacing);
        Quantity<Temperature> target = SteadySection.celsius(schedule.spans().stream()
                        .mapToDouble(WeeklySchedule.Span::celsius)
                        .max()
                        .orElse(Si.in("setback", schedule.setback(), Units.CELSIUS))
                + 273.15);
        return new BoardComparison(
                SteadySection.of(buildUp, climate, law, cable, spacing),
                SteadySection.of(insulated, climate, law, cable, spacing),
                bare.timeTo(target),
                boarded.timeTo(target),
                thermostat.run(buildUp, climate, law, cable, spacing, schedule),
                thermostat.run(insulated, climate, law, cable, spacing, schedule));
    }
}
