package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Lays several cables in one part of the floor: divisions of the part in the order of their price, for each the tracks of the
 * cold leads along the wall, then one route a piece; the first division on which every cable lies is taken. The work is
 * bounded by the count of divisions laid out.
 */
final class Sharing {

    private static final int MOST_CUTS = 8;
    private static final int MOST_DIVISIONS = 5;
    private static final double CHORDS_METRES = 0.0004;
    /** Leads leave the wall together; that near the start they do not count as crossing. */
    private static final double AT_THE_START_METRES = 0.02;

    private final Router router;
    private final Lattice part;
    private final double area;
    private final List<CableToLay> cables;
    private final double[] lengths;
    private final double even;
    private final Effort effort;
    private final long seed;
    private int laidOut;

    Sharing(Router router, int part, List<CableToLay> cables, Effort effort, long seed) {
        this.router = router;
        this.part = router.parts.get(part);
        this.area = router.areas[part];
        this.cables = cables;
        this.effort = effort;
        this.seed = seed;
        lengths = cables.stream()
                .mapToDouble(c -> Si.in("cable length", c.length(), Units.METRE))
                .toArray();
        even = area * router.site.pitch / Arrays.stream(lengths).sum();
    }

    /** Greatest total length of cables, the same for every division; proved. */
    static double capacityMetres(Router router, int part, List<CableToLay> cables) {
        double spacing = router.site.minSpacing / router.site.pitch;
        return Math.max(0, router.areas[part] / spacing - cables.size() * spacing) * router.site.pitch;
    }

    /** The first cable inside a zone, the second on the rest. */
    SharedOutcome layZone(int number, Polygon zone) {
        boolean[] inside = new boolean[part.free.length];
        IndexedPointInAreaLocator locator = new IndexedPointInAreaLocator(zone);
        for (int v = 0; v < inside.length; v++) {
            inside[v] = part.free[v] && locator.locate(router.frame.junction(v, part.width)) != Location.EXTERIOR;
        }
        int gap = router.site.spacingPitches();
        Divisions.Cutter cutter = (whole, l) -> {
            boolean[] left = inside.clone();
            for (int v = 0; v < left.length; v++) {
                left[v] &= whole.free[v];
            }
            return Division.cutOut(whole, left, gap).map(pieces -> Division.of(List.of(pieces[0], pieces[1]), side()));
        };
        Optional<Division> division = cutter.cut(part, lengths);
        if (division.isPresent()) {
            Optional<SharedOutcome> laid = first(
                    List.of(new Divisions.Cut(division.orElseThrow(), cutter)),
                    new Divisions(part, lengths, gap, side(), even));
            if (laid.isPresent()) {
                return laid.orElseThrow();
            }
        }
        return none(capacityMetres(router, number, cables));
    }

    SharedOutcome lay(int number) {
        double capacity = capacityMetres(router, number, cables);
        double total = Arrays.stream(lengths).sum();
        if (total > capacity) {
            return new SharedOutcome.TooLong(Amounts.metres(capacity), Amounts.metres(total - capacity));
        }
        int least = router.site.spacingPitches();
        for (int gap = Math.max(least, (int) Math.floor(even)); gap >= least; gap = gap > least ? least : 0) {
            Optional<SharedOutcome> laid = lay(new Divisions(part, lengths, gap, side(), even));
            if (laid.isPresent()) {
                return laid.orElseThrow();
            }
        }
        return none(capacity);
    }

    private SharedOutcome none(double capacity) {
        double lead = cables.stream()
                .mapToDouble(c -> Si.in("cold lead", c.coldLead(), Units.METRE) - router.site.riser)
                .min()
                .orElse(0);
        return laidOut > 0
                ? new SharedOutcome.NotFound(laidOut, Amounts.metres(capacity))
                : new SharedOutcome.NotReached(Amounts.metres(Math.max(0, lead)));
    }

    private double side() {
        return router.site.minSpacing / router.site.pitch;
    }

    private Optional<SharedOutcome> lay(Divisions divisions) {
        int before = laidOut;
        Optional<SharedOutcome> laid = first(divisions.straight(), divisions);
        if (laid.isPresent() || laidOut > before) {
            return laid;
        }
        LeadWays ways = ways(router.whole);
        double[] in = ways.inward();
        var start = router.site.start;
        double column = router.frame.columnOf(start);
        double row = router.frame.rowOf(start);
        var inside = new org.locationtech.jts.geom.Coordinate(start.x + in[0], start.y + in[1]);
        return first(
                divisions.aboutStart(
                        column, row, router.frame.columnOf(inside) - column, router.frame.rowOf(inside) - row),
                divisions);
    }

    private Optional<SharedOutcome> first(List<Divisions.Cut> cuts, Divisions divisions) {
        List<Laying> layings = new ArrayList<>();
        for (Divisions.Cut cut : cuts.subList(0, Math.min(MOST_CUTS, cuts.size()))) {
            laying(cut).ifPresent(layings::add);
        }
        // Room for the leads changes the pieces: what counts is their price in the end.
        layings.sort(Comparator.comparingDouble(l -> divisions.price(l.division)));
        for (Laying laying : layings.subList(0, Math.min(MOST_DIVISIONS, layings.size()))) {
            if (Thread.currentThread().isInterrupted()) {
                break;
            }
            laidOut++;
            Optional<List<CableRoute>> routes = laying.routes();
            if (routes.isPresent()) {
                return Optional.of(new SharedOutcome.Laid(
                        routes.orElseThrow(), Amounts.of(laying.division.unevenness(lengths), Units.ONE)));
            }
        }
        return Optional.empty();
    }

    /** The pieces with room made for the tracks, where every cable's lead reaches its own and no piece is too small. */
    private Optional<Laying> laying(Divisions.Cut cut) {
        Optional<Tracks> first = tracks(cut.division());
        if (first.isEmpty()) {
            return Optional.empty();
        }
        // The floor is cut anew without the junctions that give way to the tracks, so that the pieces stay fair.
        boolean[] kept = new boolean[part.free.length];
        for (Lattice piece : cleared(cut.division(), first.orElseThrow()).pieces()) {
            for (int v = 0; v < kept.length; v++) {
                kept[v] |= piece.free[v];
            }
        }
        for (int v = 0; v < kept.length; v++) {
            kept[v] |= part.free[v] && !within(cut.division(), v);
        }
        Optional<Division> again =
                Division.largest(part, kept).flatMap(rest -> cut.cutter().cut(rest, lengths));
        Optional<Tracks> tracks = again.flatMap(this::tracks);
        return tracks.flatMap(t -> laying(cleared(again.orElseThrow(), t), t));
    }

    private static boolean within(Division division, int node) {
        return division.pieces().stream().anyMatch(p -> p.free[node]);
    }

    private Optional<Tracks> tracks(Division division) {
        return Tracks.of(router.site, ways(joined(division.pieces())), division.pieces(), cables);
    }

    private Division cleared(Division division, Tracks tracks) {
        LeadWays ways = ways(joined(division.pieces()));
        return Division.of(
                division.pieces().stream()
                        .map(p -> tracks.cleared(router.site, router.frame, ways, p))
                        .toList(),
                side());
    }

    private Optional<Laying> laying(Division division, Tracks tracks) {
        // The tracks may take a narrow piece whole.
        if (Arrays.stream(division.areas()).anyMatch(area -> area == 0)) {
            return Optional.empty();
        }
        LeadWays ways = ways(joined(division.pieces()));
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < cables.size(); i++) {
            Tracks.Lane lane = tracks.lanes().get(i);
            double lead = Si.in("cold lead", cables.get(i).coldLead(), Units.METRE) - router.site.riser;
            double most = Tracks.leadMetres(router.site, cables.get(i));
            Part own = new Part(
                    router.site,
                    router.frame,
                    division.pieces().get(i),
                    division.areas()[i],
                    ways.onTrack(w -> lane.holds(w) && w.lengthMetres() <= most),
                    lead,
                    lane.nearerOffsetMetres(),
                    router.wanted(division.pieces().get(i), division.areas()[i], lengths[i]));
            if (!own.reached() || own.capacityMetres() < lengths[i]) {
                return Optional.empty();
            }
            parts.add(own);
        }
        return Optional.of(new Laying(division, tracks, parts));
    }

    private LeadWays ways(Lattice lattice) {
        double longest = cables.stream()
                .mapToDouble(c -> Tracks.leadMetres(router.site, c))
                .max()
                .orElse(0);
        return router.leadWays(lattice, Math.max(router.site.wallClearanceMetres, router.site.minSpacing / 2), longest);
    }

    /** All free junctions of the floor but those of this part that no piece has. */
    private Lattice joined(List<Lattice> pieces) {
        boolean[] kept = router.whole.free.clone();
        for (int v = 0; v < kept.length; v++) {
            kept[v] &= !part.free[v];
            for (Lattice piece : pieces) {
                kept[v] |= piece.free[v];
            }
        }
        return new Lattice(part.width, part.height, kept, Division.channelsWithin(router.whole, kept));
    }

    /** Pieces ready for the search. */
    private final class Laying {

        private final Division division;
        private final Tracks tracks;
        private final List<Part> parts;

        Laying(Division division, Tracks tracks, List<Part> parts) {
            this.division = division;
            this.tracks = tracks;
            this.parts = parts;
        }

        Optional<List<CableRoute>> routes() {
            double shared = area / Arrays.stream(division.areas()).sum();
            List<CableRoute> out = new ArrayList<>();
            for (int i = 0; i < parts.size(); i++) {
                CableToLay cable = cables.get(i);
                Search search = new Search(parts.get(i), cable.returns(), lengths[i], effort, seed);
                @Nullable Candidate best = search.run();
                if (best == null) {
                    return Optional.empty();
                }
                Tracks.Lane lane = tracks.lanes().get(i);
                CableRoute route =
                        RouteDrawing.of(parts.get(i), cable, best, lane.offsetMetres(), lane.nearerOffsetMetres());
                out.add(route.ofShare(shared));
            }
            return leadsKeepOff(out) ? Optional.of(out) : Optional.empty();
        }
    }

    /** Whether every cold lead keeps half the least spacing from the other cables and crosses none of their leads. */
    private boolean leadsKeepOff(List<CableRoute> routes) {
        var start = new org.locationtech.jts.geom.GeometryFactory().createPoint(router.site.start);
        var beginning = start.buffer(AT_THE_START_METRES);
        for (int i = 0; i < routes.size(); i++) {
            for (int j = 0; j < routes.size(); j++) {
                for (LineString lead :
                        i == j ? List.<LineString>of() : routes.get(i).coldLeads()) {
                    CableRoute other = routes.get(j);
                    boolean near = lead.distance(other.line()) < router.site.minSpacing / 2 - CHORDS_METRES;
                    Geometry beyond = OverlayNGRobust.overlay(lead, beginning, OverlayNG.DIFFERENCE);
                    boolean crossing = other.coldLeads().stream().anyMatch(beyond::intersects);
                    if (near || crossing) {
                        return false;
                    }
                }
            }
        }
        return true;
    }
}
