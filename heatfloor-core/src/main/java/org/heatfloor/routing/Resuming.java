package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Finding;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.jspecify.annotations.Nullable;

/** One re-planning: where the laid part is sound, how much must be lifted at least, and the search from head to head. */
final class Resuming {

    private static final double CLOSE_METRES = 1e-9;
    private static final int HALVINGS = 5;
    /** How much more is spent where all of the heating part is lifted, the last chance to keep the lead. */
    private static final int LAST_RESORT = 3;

    private final RouteSite site;
    private final OpenFloor floor;
    private final LaidPart laidPart;
    private final CableToLay cable;
    private final Effort effort;
    private final long seed;
    private final Track track;
    private final double laidMetres;
    private final double targetMetres;
    private final boolean[] open;
    private final Part part;
    private final WholeCable drawing;
    private double longest;

    /** A head that was tried. */
    private record Tried(LaidStretch stretch, RestRoute route) {}

    Resuming(RouteSite site, OpenFloor floor, LaidPart laid, double inHand, Effort effort, long seed) {
        this.site = site;
        this.floor = floor;
        this.laidPart = laid;
        this.effort = effort;
        this.seed = seed;
        track = laid.track(floor);
        laidMetres = laid.metres(track, floor);
        targetMetres = laidMetres + inHand;
        CableToLay bought = laid.cable();
        cable = new CableToLay(
                bought.name(), bought.conductors(), Amounts.metres(targetMetres), bought.diameter(), bought.coldLead());
        open = floor.clearOf(laid.firstLead().map(l -> track.offChannels(l, site.pitch)).stream()
                .toList());
        double lead = Math.max(0, Si.in("cold lead", bought.coldLead(), Units.METRE) - site.riser);
        LeadWays ways = LeadWays.of(
                site.room.polygon(),
                site.keepOuts,
                floor.frame,
                floor.whole,
                site.start,
                site.wallClearanceMetres,
                site.minSpacing / 2,
                Math.max(0, lead - site.jointLength - site.bendRadius));
        Lattice here = floor.joinedTo(freeNode(), floor.lattice.free);
        part = new Part(site, floor.frame, here, here.unionOfSquares(site.minSpacing / site.pitch), ways, lead);
        drawing = new WholeCable(floor, part, cable, laid);
    }

    private int freeNode() {
        for (int v : track.nodes()) {
            if (floor.lattice.free[v]) {
                return v;
            }
        }
        return track.nodes()[0];
    }

    Resumption answer() {
        Soundness soundness = new Soundness(drawing, track, floor, laidMetres);
        double sound = soundness.soundMetres();
        List<Double> heads = new ArrayList<>();
        if (sound >= 0) {
            heads.add(sound);
            List<Double> rows = LaidPart.rowEnds(track, floor);
            for (int r = rows.size() - 1; r >= 0; r--) {
                if (rows.get(r) < sound - CLOSE_METRES && rows.get(r) > 0) {
                    heads.add(rows.get(r));
                }
            }
            if (sound > 0) {
                heads.add(0.0);
            }
        }
        double proved = laidMetres - Math.max(0, sound);
        int from = 0;
        for (int i = 0; i < heads.size(); i++) {
            if (mostMetres(heads.get(i)) < targetMetres - CLOSE_METRES) {
                from = i + 1;
                proved = Math.max(proved, laidMetres - heads.get(i));
            }
        }
        if (from > 0 && from < heads.size()) {
            proved = Math.max(proved, laidMetres - provedKept(heads.get(from), heads.get(from - 1)));
        }
        @Nullable Tried best = search(heads, from);
        if (best == null) {
            return anew(proved, soundness);
        }
        double lifted = laidMetres - best.stretch.metres();
        if (lifted <= 1e-6) {
            return new Resumption.Onward(best.route);
        }
        return new Resumption.AfterLifting(
                best.route,
                Amounts.metres(lifted),
                best.stretch.metres() > 0 ? best.stretch.row() : 0,
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
            if (mostMetres(middle) < targetMetres - CLOSE_METRES) {
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
            best = attempt(heads.get(i));
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
            @Nullable Tried tried = attempt(heads.get(middle));
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
            for (int i = 0; i < HALVINGS && high - low > 2 * site.pitch; i++) {
                double middle = (low + high) / 2;
                @Nullable Tried tried = attempt(middle);
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

    /** Longest heating part with a length kept, proved. */
    private double mostMetres(double kept) {
        Optional<LaidStretch> stretch = LaidStretch.upTo(track, floor, kept);
        return stretch.isEmpty() ? kept : mostMetres(stretch.get());
    }

    private double mostMetres(LaidStretch stretch) {
        Lattice rest = stretch.reach(floor, open);
        if (cable.returns() && !reachesGate(rest)) {
            return stretch.metres();
        }
        double area = rest.unionOfSquares(part.spacing);
        return stretch.metresToTip(site) + Capacity.metres(site, rest, area);
    }

    /** Whether a cold lead comes to one of the junctions. */
    private boolean reachesGate(Lattice rest) {
        for (int v = 0; v < rest.free.length; v++) {
            if (rest.free[v] && !part.waysAt.get(v).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /** Whether the straight piece ahead of the head keeps the spacing from what lies. */
    private boolean leadsOn(LaidStretch stretch) {
        int head = Math.max(0, Math.min(stretch.first(), (int) Math.floor(stretch.head() + 1e-6)));
        boolean[] permitted = stretch.permitted(floor, open, head);
        for (int i = head + 1; i < stretch.nodes().length; i++) {
            if (!permitted[stretch.nodes()[i]]) {
                return false;
            }
        }
        return true;
    }

    private @Nullable Tried attempt(double kept) {
        Optional<LaidStretch> stretch = LaidStretch.upTo(track, floor, kept);
        if (stretch.isEmpty() || !leadsOn(stretch.get())) {
            return null;
        }
        Continuation continuation = new Continuation(
                floor, part, open, stretch.get(), cable.returns(), targetMetres, new SplittableRandom(seed));
        List<Resting> exact = continuation.run(planned(stretch.get()), kept > 0 ? rounds() : LAST_RESORT * rounds());
        longest = Math.max(longest, Math.min(targetMetres, continuation.longestMetres()));
        for (Resting resting : exact) {
            RestRoute route = drawing.draw(resting, stretch.get(), mostMetres(stretch.get()));
            if (route.check().passes()) {
                return new Tried(stretch.get(), route);
            }
        }
        return null;
    }

    /** The planned junctions, if they go on from the stretch that stays. */
    private int @Nullable [] planned(LaidStretch stretch) {
        int[] nodes = track.nodes();
        if (!laidPart.isPlanned() || nodes.length <= stretch.nodes().length) {
            return null;
        }
        for (int i = 0; i < stretch.nodes().length; i++) {
            if (nodes[i] != stretch.nodes()[i]) {
                return null;
            }
        }
        return nodes;
    }

    private int rounds() {
        return switch (effort) {
            case QUICK -> 150;
            case NORMAL -> 450;
            case THOROUGH -> 2400;
        };
    }

    /** Everything lifted, the cold lead included. */
    private Resumption anew(double proved, Soundness soundness) {
        Router router = Router.of(site)
                .avoiding(floor.others.stream().map(CableRoute::line).toList());
        double capacity = 0;
        for (int p = 0; p < router.parts(); p++) {
            capacity = Math.max(capacity, Si.in("capacity", router.capacity(p), Units.METRE));
        }
        List<Finding> help = new Help(site, cable).list(capacity);
        if (targetMetres > capacity) {
            return new Resumption.TooLong(Amounts.metres(capacity), Amounts.metres(targetMetres - capacity), help);
        }
        for (int p = 0; p < router.parts() && !Thread.currentThread().isInterrupted(); p++) {
            RouteOutcome outcome = router.route(p, cable, effort, seed);
            if (outcome instanceof RouteOutcome.Laid l) {
                RestRoute route = drawing.anew(l.route(), capacity);
                if (route.check().passes()) {
                    return new Resumption.AfterLifting(
                            route,
                            Amounts.metres(laidMetres),
                            0,
                            Amounts.metres(Math.min(laidMetres, proved)),
                            true,
                            soundness.reasons());
                }
            } else if (outcome instanceof RouteOutcome.NotFound n) {
                longest = Math.max(longest, Si.in("longest", n.longestFound(), Units.METRE));
            }
        }
        double must = laidMetres - Math.max(0, soundness.soundMetres());
        Optional<Quantity<Length>> mustLift = must > 1e-6 ? Optional.of(Amounts.metres(must)) : Optional.empty();
        return new Resumption.NotFound(Amounts.metres(longest), Amounts.metres(capacity), mustLift, help);
    }
}
