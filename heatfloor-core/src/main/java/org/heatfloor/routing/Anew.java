package org.heatfloor.routing;

import java.util.List;
import org.heatfloor.finding.Finding;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.jspecify.annotations.Nullable;

/** The whole cable laid anew, the cold lead too. */
final class Anew {

    private final OpenFloor floor;
    private final HalfLaid cable;
    private final Router router;
    private final Effort effort;
    private final long seed;
    private final double capacity;
    private double longest;

    Anew(OpenFloor floor, HalfLaid cable, Effort effort, long seed) {
        this.floor = floor;
        this.cable = cable;
        this.effort = effort;
        this.seed = seed;
        router = Router.of(floor.site)
                .avoiding(floor.others.stream().map(CableRoute::line).toList());
        double most = 0;
        for (int p = 0; p < router.parts(); p++) {
            most = Math.max(most, Si.in("capacity", router.capacity(p), Units.METRE));
        }
        capacity = most;
    }

    /** The longest cable that can lie here, proved. */
    double capacityMetres() {
        return capacity;
    }

    /** Longest heating part that was found. */
    double longestMetres() {
        return longest;
    }

    /** What would make room for the cable. */
    List<Finding> help() {
        return new Help(floor.site, cable.cable).list(capacity);
    }

    /** The cable laid in one of the parts of the floor; null if no exact route was found. */
    @Nullable
    RestRoute route() {
        for (int p = 0; p < router.parts() && !Thread.currentThread().isInterrupted(); p++) {
            RouteOutcome outcome = router.route(p, cable.cable, effort, seed);
            if (outcome instanceof RouteOutcome.Laid l) {
                RestRoute route = cable.drawing.anew(l.route(), capacity);
                if (route.check().passes()) {
                    return route;
                }
            } else if (outcome instanceof RouteOutcome.NotFound n) {
                longest = Math.max(longest, Si.in("longest", n.longestFound(), Units.METRE));
            }
        }
        return null;
    }
}
