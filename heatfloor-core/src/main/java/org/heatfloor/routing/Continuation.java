package org.heatfloor.routing;

import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * The search for a way to lay the rest of a cable from its head. The rest as planned is mended first; beside that the rest
 * is laid afresh: a spine from the head along the floor, from which fingers fill it, wide apart where the length allows.
 * What is still too short is taken up piece by piece and laid again. All work is counted.
 */
final class Continuation {

    /** How many of the strands that are too short are laid again. */
    private static final int RELAID = 3;

    private final Rest rest;
    private final ChannelWay ways;
    private final Trials trials;
    private final Relaying relaying;

    Continuation(Rest rest, SplittableRandom random) {
        this.rest = rest;
        ways = new ChannelWay(rest.floor.lattice, rest.floor.site.leastRun());
        Growing growing = new Growing(
                rest.floor.lattice, rest.open, ways, rest.returns, rest::missing, rest.turnPairPitches(), random);
        trials = new Trials(rest, growing);
        relaying = new Relaying(growing, ways, rest.returns, rest::missing, random);
    }

    /** Longest heating part that was found, in metres, whether or not it could be made exact. */
    double longestMetres() {
        return trials.longestMetres();
    }

    /**
     * Searches.
     *
     * @param planned junctions of the cable as planned, beginning with those that stay; null where there is no plan
     * @param rounds how often to take up and re-lay a piece when nothing is long enough
     * @return exact routes, the best first
     */
    List<Resting> run(int @Nullable [] planned, int rounds) {
        if (planned != null) {
            new Mending(rest, trials, ways, planned).mend();
        }
        Spines spines = new Spines(rest, ways);
        if (rest.returns) {
            for (int[] exit : new Exits(rest).list(planned == null ? -1 : planned[planned.length - 1])) {
                if (!trials.enough()) {
                    trials.lengthenAny(spines.home(exit));
                }
            }
        } else {
            trials.lengthenAny(spines.open());
        }
        List<Strand> tooShort = trials.tooShort();
        for (int i = 0; i < Math.min(RELAID, tooShort.size()) && trials.none(); i++) {
            relaying.relaid(tooShort.get(i), rounds / RELAID, trials::passes, true);
        }
        return trials.found();
    }
}
