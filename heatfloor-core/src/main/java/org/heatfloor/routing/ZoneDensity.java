package org.heatfloor.routing;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;

/**
 * Cable per area in a priority zone over that outside every zone: asked for, wanted and got. The area is that of
 * the reach, and a length lies in a zone as far as the drawn line does; over its edges runs are shared out by chance, so a
 * small zone may get a little more or less than its gaps tell.
 *
 * @param zone name of the zone
 * @param asked the zone's weight
 * @param wanted what of it the spacings and the length of the cable allow, see {@link PriorityZones}
 * @param got as drawn
 * @param length cable inside the zone
 * @param area reach inside the zone
 */
public record ZoneDensity(
        String zone,
        Quantity<Dimensionless> asked,
        Quantity<Dimensionless> wanted,
        Quantity<Dimensionless> got,
        Quantity<Length> length,
        Quantity<Area> area) {}
