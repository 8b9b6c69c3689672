package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.geom.Coordinate;

/**
 * One end of a route at the wall: the way its cold lead comes, and where on the route's first runs the joint can lie so
 * that it is straight and clear of the wall.
 *
 * @param way the cold lead's way
 * @param run run of the path, counted from this end, on which the joint lies
 * @param fromRunStart metres from the start of that run to the beginning of the heating part
 * @param slack metres by which the joint may still be moved on along the run, as far as the lead is long enough
 * @param back metres by which the joint may be moved back into the strip along the wall, where the lead comes straight; the
 *     heating part still begins clear of the wall
 */
record Ends(LeadWays.Way way, int run, double fromRunStart, double slack, double back) {

    /** The best end for a path read from its first point, or from its last when reversed; null if there is none. */
    static @Nullable Ends of(Part part, LatticePath path, boolean reversed) {
        RouteSite site = part.site;
        int p0 = reversed ? path.points() - 1 : 0;
        int p1 = reversed ? p0 - 1 : 1;
        if (path.points() < 2) {
            return null;
        }
        int bit = Lattice.bit(path.x(p1) - path.x(p0), path.y(p1) - path.y(p0));
        @Nullable Ends best = null;
        for (LeadWays.Way way : part.waysAt.get(path.y(p0) * part.lattice.width + path.x(p0))) {
            if (way.bit() == CoarseGrid.opposite(bit)) {
                continue;
            }
            double before = way.bit() == bit ? 0 : site.bendRadius;
            double lost = 0;
            for (int run = 0; run < Math.min(4, path.runs() - 1); run++) {
                double length = path.runLength(reversed ? path.runs() - 1 - run : run) * site.pitch;
                double at = before + site.jointLength;
                double spare = part.leadMetres - way.lengthMetres() - lost - at;
                double slack = Math.min(length - site.bendRadius - at, spare);
                if (slack >= -1e-9) {
                    Ends end = new Ends(way, run, at, slack, run == 0 && way.bit() == bit ? back(part, way) : 0);
                    if (best == null || end.price(path, reversed) < best.price(path, reversed) - 1e-9) {
                        best = end;
                    }
                    break;
                }
                before = site.bendRadius;
                lost += length;
            }
        }
        return best;
    }

    /** Metres of straight lead before the junction, as far as the joint may lie on them. */
    private static double back(Part part, LeadWays.Way way) {
        RouteSite site = part.site;
        double straight = Math.abs(way.along()) > 2 * site.pitch ? way.inMetres() : way.inMetres() / 2;
        double bend = way.along() == 0
                ? 0
                : Math.max(part.trackMetres + 0.001 + site.bendRadius, straight - straightMetres(part, way));
        return Math.max(0, Math.min(site.jointLength, straight - bend));
    }

    /** The same as drawn: a lead that comes along a slanting wall may turn by more than a right angle. */
    private static double straightMetres(Part part, LeadWays.Way way) {
        List<Coordinate> lead = part.leads.line(way, part.trackMetres);
        int n = lead.size();
        if (n < 3) {
            return way.inMetres();
        }
        double turn = Math.PI - Angle.angleBetween(lead.get(n - 3), lead.get(n - 2), lead.get(n - 1));
        double tangent = part.site.bendRadius * Math.tan(turn / 2);
        return lead.get(n - 2).distance(lead.get(n - 1)) - tangent - 0.001;
    }

    /** Whole pitches from the path's end to where it may turn after the joint. */
    int pitches(Part part, LatticePath path, boolean reversed) {
        double pitches = (fromRunStart + part.site.bendRadius) / part.site.pitch;
        for (int r = 0; r < run; r++) {
            pitches += path.runLength(reversed ? path.runs() - 1 - r : r);
        }
        return (int) Math.ceil(pitches - 1e-6);
    }

    private double price(LatticePath path, boolean reversed) {
        double lost = fromRunStart;
        for (int r = 0; r < run; r++) {
            lost += path.runLength(reversed ? path.runs() - 1 - r : r);
        }
        return lost + 0.05 * way.lengthMetres();
    }

    /** The corner points from the lead's junction to the beginning of the heating part, in metres. */
    List<Coordinate> leadPoints(Part part, LatticePath path, boolean reversed, double moved) {
        List<Coordinate> out = new ArrayList<>();
        for (int r = 0; r <= run; r++) {
            int p = reversed ? path.points() - 1 - r : r;
            out.add(part.frame.metres(path.x(p), path.y(p)));
        }
        out.add(heatingStart(part, path, reversed, moved));
        return out;
    }

    Coordinate heatingStart(Part part, LatticePath path, boolean reversed, double moved) {
        int a = reversed ? path.points() - 1 - run : run;
        int b = reversed ? a - 1 : a + 1;
        double pitches = (fromRunStart + moved) / part.site.pitch;
        return part.frame.metres(
                path.x(a) + Integer.signum(path.x(b) - path.x(a)) * pitches,
                path.y(a) + Integer.signum(path.y(b) - path.y(a)) * pitches);
    }
}
