package org.heatfloor.plan;

import java.util.Optional;
import org.heatfloor.electrical.CableRating;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.routing.CableCheck;
import org.heatfloor.routing.CableRoute;
import org.heatfloor.routing.EndReserve;
import org.heatfloor.routing.SensorPlace;

/**
 * One cable of a plan.
 *
 * @param name its name in the plan: the catalogue's, with a number where the same cable is laid twice
 * @param cable the cable
 * @param route as it is to be laid
 * @param check what the independent check measured of it
 * @param rating resistance, power and current at the supply's voltage
 * @param reserve room for it to be longer than stated
 * @param heat temperatures and heat flow, where build-up and climate were given
 * @param sensor place of the floor sensor, where one was found
 * @param spareSensor a second place
 */
public record PlannedCable(
        String name,
        HeatingCable cable,
        CableRoute route,
        CableCheck check,
        CableRating rating,
        EndReserve reserve,
        Optional<CableHeat> heat,
        Optional<SensorPlace> sensor,
        Optional<SensorPlace> spareSensor) {}
