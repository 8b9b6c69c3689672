package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.heatfloor.grid.ChannelGrid;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * Lays a cable of fixed length in the channels of one connected part of the floor.
 *
 * <p>Lines with the gap that the length asks for carry a spanning-tree loop, which is shortened, straightened and brought
 * to the length by local moves, cut open at the wall and tuned to the exact length by single pitches. The same input and
 * seed give the same route; the work is bounded by the effort.
 */
public final class Router {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    final RouteSite site;
    final Frame frame;
    final Lattice whole;
    final List<Lattice> parts;
    /** Reach of each part, in pitch²; that of the untouched floor where cables lie already. */
    final double[] areas;

    private final PriorityZones wish;

    private Router(
            RouteSite site, Frame frame, Lattice whole, List<Lattice> parts, double[] areas, PriorityZones wish) {
        this.site = site;
        this.frame = frame;
        this.whole = whole;
        this.parts = parts;
        this.areas = areas;
        this.wish = wish;
    }

    /**
     * Prepares a site.
     *
     * @param site where cables are to be laid
     * @return the router
     */
    public static Router of(RouteSite site) {
        return prepared(site, List.of(), List.of(), null);
    }

    /**
     * The same site with cables on it; new cable keeps the least spacing from them.
     *
     * @param laid heating cables already placed, in metres
     * @return the router
     */
    public Router avoiding(List<LineString> laid) {
        return avoiding(laid, List.of());
    }

    /**
     * The same site with cables and their cold leads on it; new cable keeps the least spacing from the heating cables and
     * half of it from the leads.
     *
     * @param laid heating cables already placed, in metres
     * @param leads cold leads already placed, in metres
     * @return the router
     */
    public Router avoiding(List<LineString> laid, List<LineString> leads) {
        return laid.isEmpty() && leads.isEmpty() ? this : prepared(site, laid, leads, this);
    }

    private static Router prepared(
            RouteSite site, List<LineString> laid, List<LineString> leads, @Nullable Router base) {
        ChannelGrid grid = site.grid;
        int width = grid.columns();
        int height = grid.rows();
        boolean[] free = new boolean[width * height];
        byte[] channels = new byte[free.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                free[y * width + x] = grid.isFree(x, y)
                        && clearOf(laid, grid.junction(x, y), site.minSpacing)
                        && clearOf(leads, grid.junction(x, y), site.minSpacing / 2);
            }
        }
        for (int v = 0; v < free.length; v++) {
            int x = v % width;
            int y = v / width;
            if (free[v] && x + 1 < width && free[v + 1] && grid.isFreeEast(x, y)) {
                channels[v] |= Lattice.EAST;
                channels[v + 1] |= Lattice.WEST;
            }
            if (free[v] && y + 1 < height && free[v + width] && grid.isFreeNorth(x, y)) {
                channels[v] |= Lattice.NORTH;
                channels[v + width] |= Lattice.SOUTH;
            }
        }
        Lattice whole = new Lattice(width, height, free, channels);
        int[] numbers = Lattice.parts(width, height, free, channels);
        int count = 0;
        for (int n : numbers) {
            count = Math.max(count, n + 1);
        }
        List<Lattice> parts = new ArrayList<>();
        for (int n = 0; n < count; n++) {
            parts.add(whole.part(numbers, n));
        }
        parts.sort(Comparator.comparingInt(Lattice::nodes).reversed());
        double[] areas = new double[parts.size()];
        for (int n = 0; n < areas.length; n++) {
            areas[n] = base == null
                    ? parts.get(n).unionOfSquares(site.minSpacing / site.pitch)
                    : base.areas[base.partOf(parts.get(n))];
        }
        PriorityZones wish = base == null ? new PriorityZones(List.of(), Amounts.metres(1)) : base.wish;
        return new Router(site, new Frame(grid), whole, List.copyOf(parts), areas, wish);
    }

    /**
     * The same site with zones in which the runs of every cable lie closer than elsewhere, as far as the spacings and the
     * cable's length allow. Routes stay exact and keep the least spacing; a price on the cable that lies in the wrong place
     * stands beside that of turns and of cold floor, so what is got may fall short of what is wanted.
     *
     * @param zones the zones and the greatest spacing
     * @return the router; {@link #densities} tells wanted and got
     */
    public Router wanting(PriorityZones zones) {
        return new Router(site, frame, whole, parts, areas, Objects.requireNonNull(zones, "zones"));
    }

    /** What the zones make of the spacing of a cable in a part or a piece of one; null where it is the same everywhere. */
    @Nullable
    Wanted wanted(Lattice piece, double area, double lengthMetres) {
        if (wish.zones().isEmpty()) {
            return null;
        }
        Wanted wanted = Wanted.of(piece, frame, wish, lengthMetres / site.pitch, area, site.minSpacing / site.pitch);
        return wanted.matters() ? wanted : null;
    }

    /**
     * How closely cables lie in each zone of {@link #wanting}, measured on the drawn lines.
     *
     * @param part number of a part
     * @param routes all cables laid; those of other parts are left out
     * @return heaviest first, one for each zone with more reach in the part than a square of twice the least spacing; none
     *     where the zones leave no more than that outside
     */
    public List<ZoneDensity> densities(int part, List<CableRoute> routes) {
        return ZoneDensities.of(this, wish, part, routes);
    }

    private int partOf(Lattice piece) {
        for (int v = 0; v < piece.free.length; v++) {
            for (int n = 0; piece.free[v] && n < parts.size(); n++) {
                if (parts.get(n).free[v]) {
                    return n;
                }
            }
        }
        throw new IllegalStateException("a part of the floor that the untouched floor does not have");
    }

    /**
     * The largest part that belongs to a part of another router of the same site.
     *
     * @param base the router of the untouched floor
     * @param part number of its part
     * @return the number here; empty if nothing of it is left
     */
    public OptionalInt partWithin(Router base, int part) {
        for (int n = 0; n < parts.size(); n++) {
            if (base.partOf(parts.get(n)) == part) {
                return OptionalInt.of(n);
            }
        }
        return OptionalInt.empty();
    }

    private static boolean clearOf(List<LineString> laid, Coordinate c, double metres) {
        for (LineString line : laid) {
            if (line.getEnvelopeInternal().distance(new org.locationtech.jts.geom.Envelope(c)) < metres
                    && line.distance(FACTORY.createPoint(c)) < metres - 1e-9) {
                return false;
            }
        }
        return true;
    }

    /**
     * The connected parts of the floor in which cable can lie, largest first.
     *
     * @return how many there are
     */
    public int parts() {
        return parts.size();
    }

    /**
     * Union of the squares of the least spacing's side about the junctions of a part.
     *
     * @param part number of the part
     * @return its area
     */
    public Quantity<Area> reachArea(int part) {
        return Amounts.of(areas[part] * site.pitch * site.pitch, Units.SQUARE_METRE);
    }

    /**
     * A junction inside a part, to tell where it is.
     *
     * @param part number of the part
     * @return its place, in metres
     */
    public Coordinate somewhereIn(int part) {
        Lattice lattice = parts.get(part);
        int seen = 0;
        for (int v = 0; v < lattice.free.length; v++) {
            if (lattice.free[v] && ++seen > lattice.nodes() / 2) {
                int row = v / lattice.width;
                return frame.metres(v % lattice.width, row);
            }
        }
        return frame.metres(0, 0);
    }

    /**
     * The longest cable that can lie in a part, proved.
     *
     * @param part number of the part
     * @return the bound
     */
    public Quantity<Length> capacity(int part) {
        return Amounts.metres(Capacity.metres(site, parts.get(part), areas[part]));
    }

    /**
     * Cold lead that is needed in the floor to reach a part.
     *
     * @param part number of the part
     * @return the length from the wall to the end of the joint; empty if there is no way for a lead, because keep-outs stand
     *     in the way or the clearance from the wall is less than half the least spacing
     */
    public Optional<Quantity<Length>> leadNeeded(int part) {
        LeadWays ways = leadWays(Double.MAX_VALUE);
        return ways.ways().stream()
                .filter(w -> parts.get(part).free[w.node()])
                .mapToDouble(LeadWays.Way::lengthMetres)
                .boxed()
                .min(Comparator.naturalOrder())
                .map(metres -> Amounts.metres(metres + site.jointLength + site.bendRadius));
    }

    /**
     * Lays a cable in a part.
     *
     * @param number number of the part
     * @param cable the cable
     * @param effort how much work to spend
     * @param seed of the search; the same seed gives the same route
     * @return the route, or why there is none
     */
    public RouteOutcome route(int number, CableToLay cable, Effort effort, long seed) {
        Objects.requireNonNull(effort, "effort");
        double length = Si.in("cable length", cable.length(), Units.METRE);
        double lead = Si.in("cold lead", cable.coldLead(), Units.METRE) - site.riser;
        LeadWays leads = leadWays(Math.max(0, lead - site.jointLength - site.bendRadius));
        Part part = new Part(
                site,
                frame,
                parts.get(number),
                areas[number],
                leads,
                lead,
                Part.TRACK_METRES,
                wanted(parts.get(number), areas[number], length));
        double capacity = part.capacityMetres();
        if (length > capacity) {
            return new RouteOutcome.TooLong(Amounts.metres(capacity), Amounts.metres(length - capacity));
        }
        if (!part.reached()) {
            return new RouteOutcome.NotReached(Amounts.metres(Math.max(0, lead)));
        }
        Search search = new Search(part, cable.returns(), length, effort, seed);
        Candidate best = search.run();
        if (best == null) {
            return new RouteOutcome.NotFound(Amounts.metres(search.longestMetres()), Amounts.metres(capacity));
        }
        return new RouteOutcome.Laid(RouteDrawing.of(part, cable, best));
    }

    /**
     * The longest cable that can lie where two runs fit side by side: the same bound on the floor that rows can reach. A
     * cable with a free end may end in a place only one run wide, and be a little longer than this.
     *
     * @param part number of the part
     * @return the bound; at most {@link #capacity(int)}
     */
    public Quantity<Length> rowCapacity(int part) {
        Lattice rows = parts.get(part).wideEnough(site.spacingPitches());
        double area = Math.min(areas[part], rows.unionOfSquares(site.minSpacing / site.pitch));
        return Amounts.metres(Capacity.metres(site, rows, area));
    }

    /**
     * The greatest total length of several cables in a part, proved: the area over the spacing, less one spacing for each
     * cable.
     *
     * @param part number of the part
     * @param cables the cables
     * @return the bound
     */
    public Quantity<Length> capacity(int part, List<CableToLay> cables) {
        return Amounts.metres(Sharing.capacityMetres(this, part, cables));
    }

    /**
     * Lays several cables in one part, each on a piece of its own: the part is cut so that the pieces' areas are in
     * proportion to the lengths, the pieces keep at least the least spacing between each other, and the cold leads lie
     * beside each other along the wall.
     *
     * @param number number of the part
     * @param cables the cables, two or more; their order says who lies beside whom
     * @param effort how much work to spend on each route
     * @param seed of the search; the same seed gives the same routes
     * @return the routes, or why there are none
     * @throws IllegalArgumentException if there are fewer than two cables
     */
    public SharedOutcome routeSeveral(int number, List<CableToLay> cables, Effort effort, long seed) {
        Objects.requireNonNull(effort, "effort");
        if (cables.size() < 2) {
            throw new IllegalArgumentException("cables: " + cables.size() + " was given; two or more are expected");
        }
        return new Sharing(this, number, List.copyOf(cables), effort, seed).lay(number);
    }

    /**
     * Lays a cable in a part so that it may be longer than stated: a cable that ends in the floor keeps free channel ahead
     * of its end, where such a route is found.
     *
     * @param number number of the part
     * @param cable the cable
     * @param reserve by how much it may be longer
     * @param effort how much work to spend on each route sought; there are at most two
     * @param seed of the search; the same seed gives the same route
     * @return the route, or why there is none; {@link #reserve} tells how much reserve it has
     * @throws IllegalArgumentException if the reserve is negative
     */
    public RouteOutcome route(int number, CableToLay cable, Quantity<Length> reserve, Effort effort, long seed) {
        return Reserved.route(this, number, cable, reserve, effort, seed);
    }

    /**
     * Room for a route's cable to be longer than stated. Call it on the router of the floor with every other cable on it.
     *
     * @param route a route laid on this site
     * @param wanted by how much the cable may be longer
     * @return free channel ahead of its end, and U-turns that can be moved outwards
     * @throws IllegalArgumentException if the length wanted is negative
     */
    public EndReserve reserve(CableRoute route, Quantity<Length> wanted) {
        return new ReserveSearch(this, route).find(Si.notNegative("reserve", wanted, Units.METRE));
    }

    /**
     * Lays a cable in a zone of a part and another one on the rest of it, as where a zone is wanted warmer or is switched
     * for itself. The zone must touch the strip along a wall that the cold lead reaches; the rest must stay connected.
     *
     * @param number number of the part
     * @param zone the zone, in metres; junctions on its edge belong to it
     * @param inside the cable of the zone
     * @param outside the cable of the rest
     * @param effort how much work to spend on each route
     * @param seed of the search; the same seed gives the same routes
     * @return the two routes, each with its own even spacing, or why there are none
     */
    public SharedOutcome routeZone(
            int number, Polygon zone, CableToLay inside, CableToLay outside, Effort effort, long seed) {
        Objects.requireNonNull(effort, "effort");
        return new Sharing(this, number, List.of(inside, outside), effort, seed).layZone(number, zone);
    }

    private LeadWays leadWays(double longestMetres) {
        return leadWays(whole, site.wallClearanceMetres, longestMetres);
    }

    LeadWays leadWays(Lattice lattice, double stripMetres, double longestMetres) {
        return LeadWays.of(
                site.room.polygon(),
                site.keepOuts,
                frame,
                lattice,
                site.start,
                stripMetres,
                site.minSpacing / 2,
                longestMetres);
    }
}
