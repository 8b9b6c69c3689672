package org.heatfloor.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableRoute;
import org.heatfloor.routing.CableToLay;
import org.heatfloor.routing.Effort;
import org.heatfloor.routing.LaidCable;
import org.heatfloor.routing.RouteCheck;
import org.heatfloor.routing.RouteCheckReport;
import org.heatfloor.routing.RouteOutcome;
import org.heatfloor.routing.RouteSite;
import org.heatfloor.routing.Router;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;

/** A floor given to the router and, apart from it, to the check. The start is in metres. */
record RouterCase(
        String name,
        Room room,
        TradeLength wallClearance,
        List<KeepOut> keepOuts,
        StudLattice lattice,
        TradeLength minSpacing,
        Quantity<Length> minBendRadius,
        Point start,
        Quantity<Length> riser,
        Quantity<Length> jointLength) {

    /** What came of one cable. */
    record Outcome(CableToLay cable, RouteOutcome answer, Optional<RouteCheckReport> report, double milliseconds) {

        boolean laid() {
            return report.isPresent();
        }

        boolean clean() {
            return report.isPresent() && report.get().passes();
        }

        Optional<CableRoute> route() {
            return answer instanceof RouteOutcome.Laid laid ? Optional.of(laid.route()) : Optional.empty();
        }
    }

    static Point metres(Point millimetres) {
        return new GeometryFactory().createPoint(new Coordinate(millimetres.getX() / 1000, millimetres.getY() / 1000));
    }

    /** The same floor with one more place without cable. */
    RouterCase with(KeepOut added) {
        List<KeepOut> all = new ArrayList<>(keepOuts);
        all.add(added);
        return new RouterCase(
                name, room, wallClearance, all, lattice, minSpacing, minBendRadius, start, riser, jointLength);
    }

    Router router() {
        return Router.of(site());
    }

    RouteSite site() {
        return RouteSite.of(
                room,
                wallClearance,
                keepOuts,
                lattice,
                minSpacing.with(lattice.pitch()),
                minBendRadius,
                start,
                riser,
                jointLength);
    }

    RouteCheck check() {
        return RouteCheck.builder(room, lattice)
                .wallClearance(wallClearance.with(lattice.pitch()))
                .keepOuts(keepOuts)
                .minSpacing(minSpacing.with(lattice.pitch()))
                .minBendRadius(minBendRadius)
                .start(start, Units.METRE)
                .riser(riser)
                .jointLength(jointLength)
                .build();
    }

    /** Lays a cable in the largest part of the floor and checks what was drawn. */
    Outcome lay(Router router, CableToLay cable, Effort effort) {
        return lay(router, cable, effort, RandomRooms.SEED);
    }

    Outcome lay(Router router, CableToLay cable, Effort effort, long seed) {
        long begun = System.nanoTime();
        RouteOutcome answer = router.route(0, cable, effort, seed);
        double milliseconds = (System.nanoTime() - begun) / 1e6;
        Optional<RouteCheckReport> report = Optional.empty();
        if (answer instanceof RouteOutcome.Laid laid) {
            CableRoute route = laid.route();
            report = Optional.of(check().check(List.of(new LaidCable(
                    cable.name(),
                    route.line(),
                    route.coldLeads(),
                    cable.length(),
                    cable.diameter(),
                    cable.conductors(),
                    cable.coldLead()))));
        }
        return new Outcome(cable, answer, report, milliseconds);
    }
}
