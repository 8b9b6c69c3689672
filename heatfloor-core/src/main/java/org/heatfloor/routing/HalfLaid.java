package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.jspecify.annotations.Nullable;

/** A cable that lies in part on its floor, what is proved of every length of it that stays, and the attempt to go on from there. */
final class HalfLaid {

    /** How much more is spent where all of the heating part is lifted, the last chance to keep the lead. */
    private static final int LAST_RESORT = 15;

    /** Length of the heating part that lies. */
    final double laidMetres;
    /** What lies and what is left in hand. */
    final double targetMetres;
    /** The cable with that length. */
    final CableToLay cable;

    final WholeCable drawing;
    private final OpenFloor floor;
    private final LaidPart laidPart;
    private final Effort effort;
    private final long seed;
    private final Track track;
    private final boolean[] open;
    private final Part part;
    private double longest;

    /** A head from which an exact route was found. */
    record Tried(LaidStretch stretch, RestRoute route) {}

    HalfLaid(OpenFloor floor, LaidPart laid, double inHand, Effort effort, long seed) {
        this.floor = floor;
        this.laidPart = laid;
        this.effort = effort;
        this.seed = seed;
        RouteSite site = floor.site;
        track = laid.track(floor);
        laidMetres = laid.metres(track, floor);
        targetMetres = laidMetres + inHand;
        cable = withLength(laid.cable(), targetMetres);
        open = floor.clearOf(laid.firstLead().map(l -> track.offChannels(l, site.pitch)).stream()
                .toList());
        double lead = Math.max(0, Si.in("cold lead", cable.coldLead(), Units.METRE) - site.riser);
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

    static CableToLay withLength(CableToLay cable, double metres) {
        return new CableToLay(
                cable.name(), cable.conductors(), Amounts.metres(metres), cable.diameter(), cable.coldLead());
    }

    private int freeNode() {
        for (int v : track.nodes()) {
            if (floor.lattice.free[v]) {
                return v;
            }
        }
        return track.nodes()[0];
    }

    Soundness soundness() {
        return new Soundness(drawing, track, floor, laidMetres);
    }

    /** Longest heating part that an attempt came to, at most the target. */
    double longestMetres() {
        return longest;
    }

    /** Lengths that may stay, the longest first: a sound one, the ends of the rows before it, nothing. */
    List<Double> heads(double soundMetres) {
        List<Double> heads = new ArrayList<>();
        if (soundMetres >= 0) {
            heads.add(soundMetres);
            List<Double> rows = LaidPart.rowEnds(track, floor);
            for (int r = rows.size() - 1; r >= 0; r--) {
                if (rows.get(r) < soundMetres - Resuming.CLOSE_METRES && rows.get(r) > 0) {
                    heads.add(rows.get(r));
                }
            }
            if (soundMetres > 0) {
                heads.add(0.0);
            }
        }
        return heads;
    }

    /** Whether it is proved that the cable cannot be laid with a length kept. */
    boolean refused(double kept) {
        return mostMetres(kept) < targetMetres - Resuming.CLOSE_METRES;
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
        return stretch.metresToTip(floor.site) + Capacity.metres(floor.site, rest, area);
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

    /** Lays the rest with a length kept; null if no exact route was found. */
    @Nullable
    Tried attempt(double kept) {
        Optional<LaidStretch> stretch = LaidStretch.upTo(track, floor, kept);
        if (stretch.isEmpty() || !leadsOn(stretch.get())) {
            return null;
        }
        Rest rest = new Rest(floor, part, open, stretch.get(), cable.returns(), targetMetres);
        Continuation continuation = new Continuation(rest, new SplittableRandom(seed));
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
}
