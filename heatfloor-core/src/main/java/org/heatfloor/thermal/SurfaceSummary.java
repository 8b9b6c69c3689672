package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;

/**
 * The surface over one part of the floor.
 *
 * @param area the part's area
 * @param mean mean temperature
 * @param max highest temperature
 * @param min lowest temperature
 * @param hottest where it is hottest
 * @param coldest where it is coldest
 */
public record SurfaceSummary(
        Quantity<Area> area,
        Quantity<Temperature> mean,
        Quantity<Temperature> max,
        Quantity<Temperature> min,
        Spot hottest,
        Spot coldest) {

    /**
     * A place on the floor.
     *
     * @param x distance along x
     * @param y distance along y
     */
    public record Spot(Quantity<Length> x, Quantity<Length> y) {}
}
