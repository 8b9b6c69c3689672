package org.heatfloor.routing;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * Keeps a reserve for a cable that ends in the floor: where a route leaves none, one is sought for the longest cable that
 * the tolerance allows, and the stated length of it is drawn. The rest of its channel is the reserve.
 */
final class Reserved {

    private Reserved() {}

    static RouteOutcome route(
            Router router, int part, CableToLay cable, Quantity<Length> reserve, Effort effort, long seed) {
        RouteOutcome plain = router.route(part, cable, effort, seed);
        double more = Si.notNegative("reserve", reserve, Units.METRE);
        if (!(plain instanceof RouteOutcome.Laid laid)
                || cable.returns()
                || router.reserve(laid.route(), reserve).isKept()) {
            return plain;
        }
        double length = Si.in("cable length", cable.length(), Units.METRE);
        CableToLay longest = new CableToLay(
                cable.name(), cable.conductors(), Amounts.metres(length + more), cable.diameter(), cable.coldLead());
        return router.route(part, longest, effort, seed) instanceof RouteOutcome.Laid longer
                ? new RouteOutcome.Laid(cut(router, part, longer.route(), cable, more))
                : plain;
    }

    private static CableRoute cut(Router router, int part, CableRoute longer, CableToLay cable, double more) {
        LengthIndexedLine whole = new LengthIndexedLine(longer.line());
        LineString line = (LineString) whole.extractLine(0, whole.getEndIndex() - more);
        double length = Si.in("cable length", cable.length(), Units.METRE);
        double area = Si.in("reach", longer.reachArea(), Units.SQUARE_METRE);
        CableRoute drawn = new CableRoute(
                cable,
                line,
                longer.coldLeads(),
                cable.length(),
                turns(line),
                Amounts.metres(area / length),
                longer.capacity(),
                longer.reachArea(),
                longer.coldShare(),
                longer.farthest(),
                longer.sleeved());
        double pitch = router.site.pitch;
        Wanted wanted = router.wanted(router.parts.get(part), router.areas[part], length);
        double[] cold = Coverage.measure(
                router.parts.get(part),
                new ReserveSearch(router, drawn).mask(),
                v -> wanted == null ? area / length / pitch : wanted.at(v));
        return new CableRoute(
                cable,
                line,
                longer.coldLeads(),
                cable.length(),
                drawn.turns(),
                drawn.evenSpacing(),
                longer.capacity(),
                longer.reachArea(),
                Amounts.of(cold[0], Units.ONE),
                Amounts.metres(cold[1] * pitch),
                longer.sleeved());
    }

    private static int turns(LineString line) {
        double sum = 0;
        for (int i = 1; i + 1 < line.getNumPoints(); i++) {
            Coordinate a = line.getCoordinateN(i - 1);
            Coordinate b = line.getCoordinateN(i);
            Coordinate c = line.getCoordinateN(i + 1);
            double cross = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
            double dot = (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y);
            sum += Math.abs(Math.atan2(cross, dot));
        }
        return (int) Math.rint(sum / (Math.PI / 2));
    }
}
