package org.heatfloor.plan;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.HeatFlux;

/**
 * Steady heat of one cable at full power. Fluxes and the section's temperatures are those of an endless regular row whose
 * spacing gives the cable's power over its heated area.
 *
 * @param heatedArea floor within half the even spacing of the cable
 * @param powerDensity power over the heated area
 * @param upward heat flux into the room
 * @param downward heat flux below
 * @param surfaceMean mean surface temperature
 * @param surfaceMax highest surface temperature, above a run
 * @param surfaceMin lowest surface temperature, midway between two runs
 * @param sheath temperature of the cable's sheath
 * @param heatOutput heat given off into the room
 * @param warmestAsLaid highest surface temperature of the whole-floor field of the route as laid
 */
public record CableHeat(
        Quantity<Area> heatedArea,
        Quantity<HeatFlux> powerDensity,
        Quantity<HeatFlux> upward,
        Quantity<HeatFlux> downward,
        Quantity<Temperature> surfaceMean,
        Quantity<Temperature> surfaceMax,
        Quantity<Temperature> surfaceMin,
        Quantity<Temperature> sheath,
        Quantity<Power> heatOutput,
        Quantity<Temperature> warmestAsLaid) {}
