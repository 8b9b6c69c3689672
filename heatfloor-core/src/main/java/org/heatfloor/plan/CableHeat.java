package org.heatfloor.plan;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.HeatFlux;
import org.heatfloor.thermal.SurfaceSummary;

/**
 * Steady heat of one cable at full power. The surface is that of the field of the route as laid; fluxes, sheath and the
 * three temperatures named so are those of an endless regular row whose spacing gives the cable's power over its heated area.
 *
 * @param heatedArea floor within half the even spacing of the cable
 * @param powerDensity power over the heated area
 * @param asLaid surface of the floor this cable heats, as laid
 * @param upward heat flux into the room of the regular row
 * @param downward heat flux below of the regular row
 * @param regularMean mean surface temperature of the regular row
 * @param regularMax surface temperature above a run of the regular row
 * @param regularMin surface temperature midway between two runs of the regular row
 * @param sheath temperature of the cable's sheath in the regular row
 */
public record CableHeat(
        Quantity<Area> heatedArea,
        Quantity<HeatFlux> powerDensity,
        SurfaceSummary asLaid,
        Quantity<HeatFlux> upward,
        Quantity<HeatFlux> downward,
        Quantity<Temperature> regularMean,
        Quantity<Temperature> regularMax,
        Quantity<Temperature> regularMin,
        Quantity<Temperature> sheath) {}
