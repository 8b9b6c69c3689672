package org.heatfloor.routing;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;

/** What became of several cables that share one part of the floor: laid, or one of three answers that are never mixed. */
public sealed interface SharedOutcome {

    /**
     * Every cable lies exactly, each on a piece of its own.
     *
     * @param routes one a cable, in their order; the even spacing of each is that of its share of the whole part
     * @param unevenness widest over closest even spacing of the cables; 1 is fair
     */
    record Laid(List<CableRoute> routes, Quantity<Dimensionless> unevenness) implements SharedOutcome {

        /**
         * Copies the list in.
         *
         * @param routes one a cable, in their order
         * @param unevenness widest over closest even spacing of the cables
         */
        public Laid {
            routes = List.copyOf(routes);
        }
    }

    /**
     * Proved: together the cables are longer than what keeps the least spacing here.
     *
     * @param capacity the greatest total length
     * @param excess by how much the cables are longer
     */
    record TooLong(Quantity<Length> capacity, Quantity<Length> excess) implements SharedOutcome {}

    /**
     * Not proved: the bound allows the cables, but no division was found on which all of them lie.
     *
     * @param divisions how many divisions were laid out and given up
     * @param capacity the bound on the total length
     */
    record NotFound(int divisions, Quantity<Length> capacity) implements SharedOutcome {}

    /**
     * No division tried gives every cable a piece that its cold lead reaches.
     *
     * @param coldLead the shortest cold lead, less the riser
     */
    record NotReached(Quantity<Length> coldLead) implements SharedOutcome {}
}
