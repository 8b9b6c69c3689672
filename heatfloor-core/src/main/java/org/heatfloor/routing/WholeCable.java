package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Finding;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** Draws a cable, laid part and rest, and has it checked. */
final class WholeCable {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final OpenFloor floor;
    private final Part part;
    private final CableToLay cable;
    private final LaidPart laidPart;
    private final RouteCheck check;

    WholeCable(OpenFloor floor, Part part, CableToLay cable, LaidPart laidPart) {
        this.floor = floor;
        this.part = part;
        this.cable = cable;
        this.laidPart = laidPart;
        RouteSite site = floor.site;
        check = RouteCheck.builder(site.room, site.grid.lattice())
                .wallClearance(Amounts.metres(site.wallClearanceMetres))
                .keepOuts(site.keepOuts)
                .minSpacing(Amounts.metres(site.minSpacing))
                .minBendRadius(Amounts.metres(site.bendRadius))
                .start(FACTORY.createPoint(site.start), Units.METRE)
                .riser(Amounts.metres(site.riser))
                .jointLength(Amounts.metres(site.jointLength))
                .build();
    }

    /** What the check finds in the laid part alone, up to a length of it. */
    List<Finding> checkLaid(Track track, double metres) {
        LaidStretch.Head head = LaidStretch.Head.of(track, floor.site, metres);
        LineString line = rounded(corners(track.nodes(), track.joint(), head.place()));
        double length = LaidStretch.metresTo(track, head.place(), floor.site.bendRadius, floor.site.pitch);
        // A single lead lies so far: the piece is judged as a cable with one end.
        return check.check(List.of(new LaidCable(
                        cable.name(),
                        line,
                        laidPart.firstLead().stream().toList(),
                        Amounts.metres(length),
                        cable.diameter(),
                        2,
                        cable.coldLead())))
                .findings();
    }

    RestRoute draw(Resting resting, LaidStretch stretch, double most) {
        RouteSite site = floor.site;
        List<LineString> leads = new ArrayList<>(laidPart.firstLead().stream().toList());
        Ends last = resting.last;
        LatticePath path = resting.path;
        boolean sleeved = false;
        if (last != null && path != null) {
            leads.add(lead(last, path, resting.movedLast));
            sleeved = last.way().sleeved();
        }
        CableRoute whole = new CableRoute(
                cable,
                rounded(resting.corners(floor, resting.joint, resting.end)),
                leads,
                Amounts.metres(resting.laidMetres),
                resting.turns,
                Amounts.metres(part.evenSpacingMetres(length())),
                Amounts.metres(part.capacityMetres()),
                Amounts.of(part.area * site.pitch * site.pitch, Units.SQUARE_METRE),
                Amounts.of(resting.coldShare, Units.ONE),
                Amounts.metres(resting.farthestMetres),
                sleeved);
        LineString kept = rounded(resting.corners(floor, resting.joint, stretch.head()));
        LineString rest = rounded(resting.corners(floor, stretch.head(), resting.end));
        int turnsKept = stretch.row() - 1;
        return new RestRoute(
                whole,
                Amounts.metres(stretch.metres()),
                kept,
                rest,
                Amounts.metres(resting.laidMetres - stretch.metres()),
                resting.turns - turnsKept,
                Amounts.metres(most),
                checked(whole));
    }

    RestRoute anew(CableRoute route, double capacity) {
        Coordinate joint = route.line().getCoordinateN(0);
        return new RestRoute(
                route,
                Amounts.metres(0),
                line(List.of(joint, joint)),
                route.line(),
                route.laidLength(),
                route.turns(),
                Amounts.metres(capacity),
                checked(route));
    }

    private RouteCheckReport checked(CableRoute route) {
        List<LaidCable> lying = new ArrayList<>();
        lying.add(new LaidCable(
                cable.name(),
                route.line(),
                route.coldLeads(),
                cable.length(),
                cable.diameter(),
                cable.conductors(),
                cable.coldLead()));
        for (CableRoute other : floor.others) {
            CableToLay c = other.cable();
            lying.add(new LaidCable(
                    c.name(), other.line(), other.coldLeads(), c.length(), c.diameter(), c.conductors(), c.coldLead()));
        }
        RouteCheckReport report = check.check(lying);
        return new RouteCheckReport(report.cables().subList(0, 1));
    }

    private double length() {
        Quantity<Length> length = cable.length();
        return Si.in("cable length", length, Units.METRE);
    }

    private LineString lead(Ends last, LatticePath path, double moved) {
        RouteSite site = floor.site;
        double most = Math.max(0, Math.min(0.006, site.wallClearanceMetres - site.minSpacing / 2));
        double first = laidPart.firstLead().map(LineString::getLength).orElse(0.0);
        double offset = first > last.way().lengthMetres() + site.jointLength ? most : most / 3;
        List<Coordinate> out = new ArrayList<>(part.leads.line(last.way(), offset));
        List<Coordinate> onward = last.leadPoints(part, path, true, moved);
        out.addAll(onward.subList(1, onward.size()));
        for (int i = out.size() - 2; i > 0; i--) {
            Coordinate a = out.get(i - 1);
            Coordinate b = out.get(i);
            Coordinate c = out.get(i + 1);
            double cross = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
            double dot = (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y);
            if (Math.abs(cross) < 1e-12 && dot >= 0) {
                out.remove(i);
            }
        }
        return line(Polyline.rounded(out, site.bendRadius, c -> part.leads.sharp(c, offset)));
    }

    private List<Coordinate> corners(int[] nodes, double from, double to) {
        return Resting.corners(floor, nodes, from, to);
    }

    private LineString rounded(List<Coordinate> corners) {
        List<Coordinate> drawn = new ArrayList<>(Polyline.rounded(corners, floor.site.bendRadius, c -> false));
        if (drawn.size() < 2) {
            drawn.add(drawn.get(0).copy());
        }
        return line(drawn);
    }

    private static LineString line(List<Coordinate> points) {
        return FACTORY.createLineString(points.toArray(new Coordinate[0]));
    }
}
