package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Lengthens the longest routes that were found on grids of lines when none is long enough for its cable. The joints and the
 * cold leads stay where they are; the rest may lie on any junction of the lattice.
 */
final class Lengthening {

    /** Routes that are lengthened. */
    private static final int ROUTES = 4;
    /** Routes kept, of which some may not be fit to be lengthened. */
    private static final int KEPT = 8;

    private final Part part;
    private final boolean returns;
    private final double lengthMetres;
    private final double turnPitches;
    private final List<TooShort> longest = new ArrayList<>();
    private final List<LatticePath> lengthened = new ArrayList<>();
    private double longestMetres;

    /** A route and its length with rounded corners. */
    private record TooShort(LatticePath path, double pitches) {}

    Lengthening(Part part, boolean returns, double lengthMetres) {
        this.part = part;
        this.returns = returns;
        this.lengthMetres = lengthMetres;
        turnPitches = Part.CORNER * part.site.bendRadius / part.site.pitch;
    }

    /** Longest cable that any route seen could take, in metres, whether or not it could be made exact. */
    double longestMetres() {
        return longestMetres;
    }

    /** The routes lengthened so far, longest first. */
    List<LatticePath> lengthened() {
        return lengthened.stream()
                .sorted(Comparator.comparingDouble(path -> -Candidate.reachMetres(part, path, returns)))
                .toList();
    }

    /** Takes note of a route that could not be brought to the length; the longest are looked at again if none can. */
    void keep(LatticePath path) {
        double pitches = path.length() - turnPitches * path.turns();
        if (longest.size() < KEPT || pitches > longest.get(KEPT - 1).pitches()) {
            longest.add(new TooShort(path, pitches));
            longest.sort(Comparator.comparingDouble(route -> -route.pitches()));
            if (longest.size() > KEPT) {
                longest.remove(KEPT);
            }
        }
    }

    /**
     * Lengthens the longest routes in turn until one is exact.
     *
     * @param rounds how many stretches of each to take up
     * @param random what to take up, and how to lay it anew
     * @return the exact route, or null
     */
    @Nullable
    Candidate run(int rounds, SplittableRandom random) {
        ChannelWay ways = new ChannelWay(part.lattice, part.site.leastRun());
        int tried = 0;
        for (TooShort route : longest) {
            double reach = Candidate.reachMetres(part, route.path(), returns);
            longestMetres = Math.max(longestMetres, reach);
            if (!(reach > 0) || ++tried > ROUTES) {
                continue;
            }
            LatticePath path = lengthened(route, reach, rounds, ways, random);
            if (path != null) {
                lengthened.add(path);
                longestMetres = Math.max(longestMetres, Candidate.reachMetres(part, path, returns));
                Candidate exact = Candidate.of(part, path, returns, lengthMetres, random);
                if (exact != null) {
                    return exact;
                }
            }
        }
        return null;
    }

    private @Nullable LatticePath lengthened(
            TooShort route, double reachMetres, int rounds, ChannelWay ways, SplittableRandom random) {
        LatticePath path = route.path();
        Ends first = Ends.of(part, path, false);
        Ends last = returns ? Ends.of(part, path, true) : null;
        if (first == null) {
            return null;
        }
        int[] junctions = path.junctions();
        Strand strand = new Strand(
                part.lattice,
                part.lattice.free,
                part.site.spacingPitches(),
                part.site.leastRun(),
                junctions,
                junctions.length,
                first.pitches(part, path, false),
                last == null ? 0 : last.pitches(part, path, true) + 1);
        if (!strand.sound()) {
            return null;
        }
        double lacking = (lengthMetres - reachMetres) / part.site.pitch + route.pitches();
        ToDoubleFunction<Strand> missing = s -> lacking - (s.count() - 1) + turnPitches * s.turnsAfter(0);
        Growing growing = new Growing(part.lattice, part.lattice.free, ways, returns, missing, 2 * turnPitches, random);
        Strand best = new Relaying(growing, ways, returns, missing, random)
                .relaid(strand, rounds, s -> missing.applyAsDouble(s) <= 0, false);
        return LatticePath.of(part.lattice, strand.spacing, strand.leastRun, best.nodes());
    }
}
