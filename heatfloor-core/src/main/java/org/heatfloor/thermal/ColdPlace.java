package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Temperature;

/**
 * A connected place of the floor that is cooler than asked for.
 *
 * @param coldest where it is coldest
 * @param lowest surface temperature there
 * @param area how large the place is
 */
public record ColdPlace(SurfaceSummary.Spot coldest, Quantity<Temperature> lowest, Quantity<Area> area) {}
