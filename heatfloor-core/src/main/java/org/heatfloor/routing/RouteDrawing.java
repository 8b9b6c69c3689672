package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** Draws a route that was found: its bends and those of its cold leads as the arcs they are laid in. */
final class RouteDrawing {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Part part;
    private final Candidate best;

    private RouteDrawing(Part part, Candidate best) {
        this.part = part;
        this.best = best;
    }

    /** A route with the strip along the walls to itself. */
    static CableRoute of(Part part, CableToLay cable, Candidate best) {
        double clear = part.site.wallClearanceMetres - part.site.minSpacing / 2;
        double offset = Math.max(0, Math.min(Part.TRACK_METRES, clear));
        return of(part, cable, best, offset / 3, offset);
    }

    /**
     * A route whose leads lie at given distances from the wall; of two leads the one that goes farther along the wall lies
     * nearer to it.
     */
    static CableRoute of(Part part, CableToLay cable, Candidate best, double farOffset, double nearOffset) {
        RouteDrawing drawing = new RouteDrawing(part, best);
        List<LineString> leads = new ArrayList<>();
        boolean firstFarther = best.last == null
                || Math.abs(best.first.way().along())
                        >= Math.abs(best.last.way().along());
        leads.add(drawing.lead(best.first, false, best.movedFirst, firstFarther ? farOffset : nearOffset));
        if (best.last != null) {
            leads.add(drawing.lead(best.last, true, best.movedLast, firstFarther ? nearOffset : farOffset));
        }
        double pitch = part.site.pitch;
        return new CableRoute(
                cable,
                line(Polyline.rounded(best.corners(), part.site.bendRadius, c -> false)),
                leads,
                Amounts.metres(best.laidMetres),
                best.turns,
                Amounts.metres(part.evenSpacingMetres(Si.in("cable length", cable.length(), Units.METRE))),
                Amounts.metres(part.capacityMetres()),
                Amounts.of(part.area * pitch * pitch, Units.SQUARE_METRE),
                Amounts.of(best.coldShare, Units.ONE),
                Amounts.metres(best.farthestMetres),
                best.first.way().sleeved()
                        || (best.last != null && best.last.way().sleeved()));
    }

    private LineString lead(Ends end, boolean reversed, double moved, double offsetMetres) {
        return line(Polyline.rounded(
                best.lead(end, reversed, moved, offsetMetres),
                part.site.bendRadius,
                c -> part.leads.sharp(c, offsetMetres)));
    }

    private static LineString line(List<Coordinate> points) {
        return FACTORY.createLineString(points.toArray(new Coordinate[0]));
    }
}
