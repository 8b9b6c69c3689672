package org.heatfloor.routing;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Finding;

/** What became of the rest of a cable that lies in part: four answers that are never mixed. */
public sealed interface Resumption {

    /**
     * Nothing has to be lifted: the rest lies exactly from the head on.
     *
     * @param route the whole cable
     */
    record Onward(RestRoute route) implements Resumption {}

    /**
     * Some cable has to be lifted; then the rest lies exactly.
     *
     * @param route the whole cable with what stays
     * @param lifted length of heating cable to lift, the least for which a route was found
     * @param keptRows number of straight runs that stay, the last of them perhaps in part; 0 when the cable is lifted up to
     *     its joint or wholly
     * @param proved length that must be lifted at least, proved; what lies between this and {@code lifted} is not proved
     * @param leadToo whether the cold lead has to be lifted as well and the cable begun anew
     * @param reasons why the laid part cannot stay as it is, where it breaks a rule of the site as it is now
     */
    record AfterLifting(
            RestRoute route,
            Quantity<Length> lifted,
            int keptRows,
            Quantity<Length> proved,
            boolean leadToo,
            List<Finding> reasons)
            implements Resumption {

        /**
         * Copies the list.
         *
         * @param route the whole cable with what stays
         * @param lifted length of heating cable to lift, the least for which a route was found
         * @param keptRows number of straight runs that stay, the last of them perhaps in part; 0 when the cable is lifted
         *     up to its joint or wholly
         * @param proved length that must be lifted at least, proved; what lies between this and {@code lifted} is not
         *     proved
         * @param leadToo whether the cold lead has to be lifted as well and the cable begun anew
         * @param reasons why the laid part cannot stay as it is, where it breaks a rule of the site as it is now
         */
        public AfterLifting {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * Proved: even with all of it lifted the cable is too long for the site as it is now.
     *
     * @param capacity longest heating part that could lie here
     * @param excess by how much the cable is longer
     * @param help what would make room for it, by the bound
     */
    record TooLong(Quantity<Length> capacity, Quantity<Length> excess, List<Finding> help) implements Resumption {

        /**
         * Copies the list.
         *
         * @param capacity longest heating part that could lie here
         * @param excess by how much the cable is longer
         * @param help what would make room for it, by the bound
         */
        public TooLong {
            help = List.copyOf(help);
        }
    }

    /**
     * Not proved: the bound allows it, but no route was found, whatever was lifted.
     *
     * @param longestFound longest heating part that was found with something lifted or nothing
     * @param capacity the bound with everything lifted
     * @param mustLift length that the laid part's own faults force to be lifted, where it breaks a rule
     * @param help what would make room for it, by the bound
     */
    record NotFound(
            Quantity<Length> longestFound,
            Quantity<Length> capacity,
            Optional<Quantity<Length>> mustLift,
            List<Finding> help)
            implements Resumption {

        /**
         * Copies the list.
         *
         * @param longestFound longest heating part that was found with something lifted or nothing
         * @param capacity the bound with everything lifted
         * @param mustLift length that the laid part's own faults force to be lifted, where it breaks a rule
         * @param help what would make room for it, by the bound
         */
        public NotFound {
            help = List.copyOf(help);
        }
    }
}
