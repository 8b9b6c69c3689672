package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.LineString;

/**
 * An order in which a planned route can be laid, and how open it keeps what is not laid yet. A floor that stays open can
 * take the rest of the cable another way when something changes half way; a floor that is cut into strips one run wide
 * can not.
 *
 * @param route the route in the order of laying: its first joint is where laying begins
 * @param fromTheOtherEnd whether that is the other way round than planned, which a cable with two ends allows
 * @param stages how open the rest is after 10, 20 … 90 % of the cable are laid
 * @param openShare mean of the stages' open shares; the higher, the better the rest can still be changed
 * @param leastSpare the least of the stages' spare lengths
 */
public record LayOrder(
        CableRoute route,
        boolean fromTheOtherEnd,
        List<Stage> stages,
        Quantity<Dimensionless> openShare,
        Quantity<Length> leastSpare) {

    private static final int STAGES = 9;

    /**
     * Copies the list.
     *
     * @param route the route in the order of laying: its first joint is where laying begins
     * @param fromTheOtherEnd whether that is the other way round than planned, which a cable with two ends allows
     * @param stages how open the rest is after 10, 20 … 90 % of the cable are laid
     * @param openShare mean of the stages' open shares; the higher, the better the rest can still be changed
     * @param leastSpare the least of the stages' spare lengths
     */
    public LayOrder {
        stages = List.copyOf(stages);
    }

    /**
     * How open the rest is at one stage of laying.
     *
     * @param laid length of the heating part that lies
     * @param inHand length still to be laid
     * @param most longest rest that could still be laid from here, proved
     * @param spare {@code most − inHand}: what may be lost to a change before the bound says no
     * @param openShare share of the junctions still within reach at which two runs fit side by side, that is which lie in
     *     a square of such junctions one least spacing wide
     */
    public record Stage(
            Quantity<Length> laid,
            Quantity<Length> inHand,
            Quantity<Length> most,
            Quantity<Length> spare,
            Quantity<Dimensionless> openShare) {}

    /**
     * The orders of several planned routes of one cable, the most open first. A cable that comes back can be begun at
     * either end; a cable with one end begins at its joint, so that only another route gives another order.
     *
     * @param site where they lie
     * @param plans the routes to choose among
     * @return the orders; of orders that are equally open the one with more spare length comes first
     * @throws IllegalArgumentException if a route does not lie in the site's channels
     */
    public static List<LayOrder> of(RouteSite site, List<CableRoute> plans) {
        OpenFloor floor = new OpenFloor(site, List.of());
        List<LayOrder> out = new ArrayList<>();
        for (CableRoute plan : plans) {
            out.add(of(floor, plan, false));
            if (plan.cable().returns()) {
                out.add(of(floor, reversed(plan), true));
            }
        }
        out.sort(Comparator.comparingDouble((LayOrder o) -> -share(o.openShare))
                .thenComparingDouble(o -> -Si.in("spare", o.leastSpare, Units.METRE)));
        return List.copyOf(out);
    }

    private static double share(Quantity<Dimensionless> quantity) {
        return quantity.to(Units.ONE).getValue().doubleValue();
    }

    private static CableRoute reversed(CableRoute r) {
        List<LineString> leads = r.coldLeads();
        return new CableRoute(
                r.cable(),
                r.line().reverse(),
                List.of(leads.get(1), leads.get(0)),
                r.laidLength(),
                r.turns(),
                r.evenSpacing(),
                r.capacity(),
                r.reachArea(),
                r.coldShare(),
                r.farthest(),
                r.sleeved());
    }

    private static LayOrder of(OpenFloor floor, CableRoute plan, boolean otherEnd) {
        double length = Si.in("laid length", plan.laidLength(), Units.METRE);
        Track track = LaidPart.upTo(plan, Amounts.metres(0)).track(floor);
        boolean[] open = floor.clearOf(plan.coldLeads().stream()
                .map(lead -> track.offChannels(lead, floor.site.pitch))
                .limit(1)
                .toList());
        List<Stage> stages = new ArrayList<>();
        double sum = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int s = 1; s <= STAGES; s++) {
            double laid = length * s / (STAGES + 1);
            LaidStretch stretch = LaidStretch.upTo(track, floor, laid).orElse(null);
            double most = 0;
            double share = 0;
            if (stretch != null) {
                Lattice rest = stretch.reach(floor, open);
                most = stretch.metresToTip(floor.site)
                        - laid
                        + Capacity.metres(
                                floor.site, rest, rest.unionOfSquares(floor.site.minSpacing / floor.site.pitch));
                share = openShare(rest, floor.site.spacingPitches() + 1);
            }
            double spare = most - (length - laid);
            least = Math.min(least, spare);
            sum += share;
            stages.add(new Stage(
                    Amounts.metres(laid),
                    Amounts.metres(length - laid),
                    Amounts.metres(most),
                    Amounts.metres(spare),
                    Amounts.of(share, Units.ONE)));
        }
        return new LayOrder(plan, otherEnd, stages, Amounts.of(sum / STAGES, Units.ONE), Amounts.metres(least));
    }

    /** Share of the free junctions that lie in a square of free junctions of a side. */
    static double openShare(Lattice rest, int side) {
        boolean[] covered = new boolean[rest.free.length];
        for (int y = 0; y + side <= rest.height; y++) {
            for (int x = 0; x + side <= rest.width; x++) {
                if (full(rest, x, y, side)) {
                    for (int dy = 0; dy < side; dy++) {
                        for (int dx = 0; dx < side; dx++) {
                            covered[(y + dy) * rest.width + x + dx] = true;
                        }
                    }
                }
            }
        }
        int open = 0;
        for (boolean c : covered) {
            open += c ? 1 : 0;
        }
        return (double) open / Math.max(1, rest.nodes());
    }

    private static boolean full(Lattice rest, int x, int y, int side) {
        for (int dy = 0; dy < side; dy++) {
            for (int dx = 0; dx < side; dx++) {
                if (!rest.free[(y + dy) * rest.width + x + dx]) {
                    return false;
                }
            }
        }
        return true;
    }
}
