package org.heatfloor.routing;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.routing.HalfLaid.Tried;
import org.jspecify.annotations.Nullable;

/** One re-planning: where the laid part is sound, how much must be lifted at least, and the search from head to head. */
final class Resuming {

    static final double CLOSE_METRES = 1e-9;
    private static final int HALVINGS = 5;

    private final OpenFloor floor;
    private final HalfLaid cable;
    private final Effort effort;
    private final long seed;

    Resuming(OpenFloor floor, LaidPart laid, double inHand, Effort effort, long seed) {
        this.floor = floor;
        this.effort = effort;
        this.seed = seed;
        cable = new HalfLaid(floor, laid, inHand, effort, seed);
    }

    Resumption answer() {
        Soundness soundness = cable.soundness();
        double sound = soundness.soundMetres();
        List<Double> heads = cable.heads(sound);
        double proved = cable.laidMetres - Math.max(0, sound);
        int from = 0;
        for (int i = 0; i < heads.size(); i++) {
            if (cable.refused(heads.get(i))) {
                from = i + 1;
                proved = Math.max(proved, cable.laidMetres - heads.get(i));
            }
        }
        if (from > 0 && from < heads.size()) {
            proved = Math.max(proved, cable.laidMetres - provedKept(heads.get(from), heads.get(from - 1)));
        }
        @Nullable Tried best = search(heads, from);
        if (best == null) {
            return anew(proved, soundness);
        }
        double lifted = cable.laidMetres - best.stretch().metres();
        if (lifted <= 1e-6) {
            return new Resumption.Onward(best.route());
        }
        return new Resumption.AfterLifting(
                best.route(),
                Amounts.metres(lifted),
                best.stretch().metres() > 0 ? best.stretch().row() : 0,
                Amounts.metres(Math.min(lifted, proved)),
                false,
                soundness.reasons());
    }

    /** The least kept length for which the bound still says no, between one that it allows and one that it does not. */
    private double provedKept(double allowed, double refused) {
        double low = allowed;
        double high = refused;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (cable.refused(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    /** From head to head with growing steps until a route is found, then back between the last two. */
    private @Nullable Tried search(List<Double> heads, int from) {
        int failed = from - 1;
        int step = 1;
        @Nullable Tried best = null;
        int good = -1;
        for (int i = from; i < heads.size(); ) {
            best = cable.attempt(heads.get(i));
            if (best != null) {
                good = i;
                break;
            }
            if (Thread.currentThread().isInterrupted()) {
                return null;
            }
            failed = i;
            if (i == heads.size() - 1) {
                return null;
            }
            i = Math.min(heads.size() - 1, i + step);
            step = step < 3 ? step + 1 : step * 3 / 2;
        }
        if (best == null) {
            return null;
        }
        while (good - failed > 1) {
            int middle = (good + failed) / 2;
            @Nullable Tried tried = cable.attempt(heads.get(middle));
            if (tried != null) {
                best = tried;
                good = middle;
            } else {
                failed = middle;
            }
        }
        if (good > 0) {
            double low = heads.get(good);
            double high = heads.get(good - 1);
            for (int i = 0; i < HALVINGS && high - low > 2 * floor.site.pitch; i++) {
                double middle = (low + high) / 2;
                @Nullable Tried tried = cable.attempt(middle);
                if (tried != null) {
                    best = tried;
                    low = middle;
                } else {
                    high = middle;
                }
            }
        }
        return best;
    }

    /** Everything lifted, the cold lead included. */
    private Resumption anew(double proved, Soundness soundness) {
        Anew anew = new Anew(floor, cable, effort, seed);
        Quantity<Length> capacity = Amounts.metres(anew.capacityMetres());
        double excess = cable.targetMetres - anew.capacityMetres();
        if (excess > 0) {
            return new Resumption.TooLong(capacity, Amounts.metres(excess), anew.help());
        }
        @Nullable RestRoute route = anew.route();
        if (route != null) {
            return new Resumption.AfterLifting(
                    route,
                    Amounts.metres(cable.laidMetres),
                    0,
                    Amounts.metres(Math.min(cable.laidMetres, proved)),
                    true,
                    soundness.reasons());
        }
        double longest = Math.max(cable.longestMetres(), anew.longestMetres());
        double must = cable.laidMetres - Math.max(0, soundness.soundMetres());
        Optional<Quantity<Length>> mustLift = must > 1e-6 ? Optional.of(Amounts.metres(must)) : Optional.empty();
        return new Resumption.NotFound(Amounts.metres(longest), capacity, mustLift, anew.help());
    }
}
