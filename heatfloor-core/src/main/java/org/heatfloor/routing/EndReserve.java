package org.heatfloor.routing;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;

/**
 * Room for a cable that is longer than its stated length: free channel ahead of the end of a cable that ends in the floor,
 * and adjusters, which are U-turns that can be moved outwards along their legs by whole pitches. Both keep the least
 * spacing. A cable that is shorter ends sooner, or its U-turns are moved inwards.
 *
 * @param wanted what the tolerance of the length asks for
 * @param ahead free channel ahead of the end; zero for a cable that comes back
 * @param adjusters U-turns that make up what is missing, the one nearest to the end of the cable first
 */
public record EndReserve(Quantity<Length> wanted, Quantity<Length> ahead, List<Adjuster> adjusters) {

    /**
     * Copies the list in.
     *
     * @param wanted what the tolerance of the length asks for
     * @param ahead free channel ahead of the end
     * @param adjusters U-turns that make up what is missing
     */
    public EndReserve {
        adjusters = List.copyOf(adjusters);
    }

    /**
     * A U-turn that can be moved outwards.
     *
     * @param at middle of its base, in metres
     * @param alongCable from the beginning of the heating part to its base
     * @param gain length of cable that it takes up when moved as far as it goes
     */
    public record Adjuster(Coordinate at, Quantity<Length> alongCable, Quantity<Length> gain) {

        /**
         * Copies the place in.
         *
         * @param at middle of its base, in metres
         * @param alongCable from the beginning of the heating part to its base
         * @param gain length of cable that it takes up
         */
        public Adjuster {
            at = at.copy();
        }

        /**
         * Middle of its base.
         *
         * @return a copy, in metres
         */
        @Override
        public Coordinate at() {
            return at.copy();
        }
    }

    /**
     * Channel ahead and adjusters together.
     *
     * @return the length that can be taken up
     */
    public Quantity<Length> total() {
        double sum = Si.in("ahead", ahead, Units.METRE);
        for (Adjuster adjuster : adjusters) {
            sum += Si.in("gain", adjuster.gain(), Units.METRE);
        }
        return Amounts.metres(sum);
    }

    /**
     * Whether the reserve covers what is wanted.
     *
     * @return true if it does
     */
    public boolean isKept() {
        return Si.in("total", total(), Units.METRE) >= Si.in("wanted", wanted, Units.METRE) - 1e-9;
    }
}
