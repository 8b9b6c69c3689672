package org.heatfloor.routing;

import java.util.List;
import org.heatfloor.finding.Finding;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.jspecify.annotations.Nullable;

/**
 * The whole cable laid anew, the cold lead too. Where the router's routes are a little too short, one of them is laid
 * again piece by piece until it is long enough.
 */
final class Anew {

    /** By how much less than the longest found the router is asked for, in pitches. */
    private static final double[] LESS_PITCHES = {0.5, 2.5, 5.5, 9.5};

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
            @Nullable RestRoute route = null;
            if (outcome instanceof RouteOutcome.Laid l) {
                route = cable.drawing.anew(l.route(), capacity);
            } else if (outcome instanceof RouteOutcome.NotFound n) {
                double found = Si.in("longest", n.longestFound(), Units.METRE);
                longest = Math.max(longest, found);
                route = lengthened(p, Math.min(cable.targetMetres, found));
            }
            if (route != null && route.check().passes()) {
                return route;
            }
        }
        return null;
    }

    /** A route of the router that is somewhat too short, laid again until it is long enough. */
    private @Nullable RestRoute lengthened(int part, double found) {
        for (double less : LESS_PITCHES) {
            double metres = found - less * floor.site.pitch;
            if (metres > 0
                    && !Thread.currentThread().isInterrupted()
                    && router.route(part, HalfLaid.withLength(cable.cable, metres), effort, seed)
                            instanceof RouteOutcome.Laid shorter) {
                LaidPart nothing = LaidPart.upTo(shorter.route(), Amounts.metres(0));
                HalfLaid again = new HalfLaid(floor, nothing, cable.targetMetres, effort, seed);
                HalfLaid.@Nullable Tried tried = again.attempt(0);
                longest = Math.max(longest, again.longestMetres());
                return tried == null ? null : cable.drawing.anew(tried.route().whole(), capacity);
            }
        }
        return null;
    }
}
