package org.heatfloor.routing;

import javax.measure.Quantity;
import javax.measure.quantity.Length;

/** What became of a cable: laid, or one of three answers that are never mixed. */
public sealed interface RouteOutcome {

    /**
     * The cable lies exactly.
     *
     * @param route the route
     */
    record Laid(CableRoute route) implements RouteOutcome {}

    /**
     * Proved: no route of this length keeps the least spacing here.
     *
     * @param capacity the longest that could lie here
     * @param excess by how much the cable is longer
     */
    record TooLong(Quantity<Length> capacity, Quantity<Length> excess) implements RouteOutcome {}

    /**
     * Not proved: shorter than the bound, but no route was found.
     *
     * @param longestFound the longest route found
     * @param capacity the bound
     */
    record NotFound(Quantity<Length> longestFound, Quantity<Length> capacity) implements RouteOutcome {}

    /**
     * No cold lead reaches this part of the floor.
     *
     * @param coldLead cold lead left after the riser
     */
    record NotReached(Quantity<Length> coldLead) implements RouteOutcome {}
}
