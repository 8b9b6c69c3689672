package org.heatfloor.routing;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * Plans a cable anew that lies in part: a fixture has moved, a place without cable was added, a mistake was found, or the
 * cable is longer or shorter than stated. The rest is laid exactly from the head on; if that cannot be, the least to lift
 * is sought and the rest laid from there.
 *
 * <p>The rest as planned is mended where that will do; beside that the rest is laid afresh. Every answer with a route has
 * passed the independent check of the whole cable. The same input and seed give the same answer; the work is bounded by
 * the effort, and an interrupted search answers with what it has.
 */
public final class Replanner {

    private final OpenFloor floor;

    private Replanner(RouteSite site, List<CableRoute> others) {
        floor = new OpenFloor(site, others);
    }

    /**
     * Prepares a site as it is now, new places without cable and changed clearances included.
     *
     * @param site the site
     * @return the re-planner
     */
    public static Replanner of(RouteSite site) {
        return new Replanner(site, List.of());
    }

    /**
     * The same site with other cables on it, from which the rest keeps the least spacing.
     *
     * @param others cables that stay where they are
     * @return the re-planner
     */
    public Replanner avoiding(List<CableRoute> others) {
        return new Replanner(floor.site, others);
    }

    /**
     * Lays the rest of a cable.
     *
     * @param laid what lies already
     * @param inHand length of heating cable really left in hand, which need not be what the plan leaves
     * @param effort how much work to spend
     * @param seed of the search; the same seed gives the same answer
     * @return the rest laid exactly, the least to lift with the rest laid from there, or why there is neither
     * @throws IllegalArgumentException if the laid part does not lie in the site's channels, or no length is left in hand
     */
    public Resumption resume(LaidPart laid, Quantity<Length> inHand, Effort effort, long seed) {
        Objects.requireNonNull(effort, "effort");
        double rest = Si.within("length in hand", inHand, Units.METRE, 0.001, 10_000);
        return new Resuming(floor, laid, rest, effort, seed).answer();
    }
}
