package org.heatfloor.routing;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/**
 * Measures and judges the cold leads of one cable. Half of the minimum spacing is kept from heating cable in the spirit of
 * the spacing rule: on the line made of cold lead and heating part, places nearer along it than π/2 times the minimum
 * spacing do not count, so that a lead may run up to its own joint; no other place is excepted.
 */
final class LeadInspection {

    /** Ends drawn this close are one place. */
    private static final double SAME_PLACE_METRES = 0.0001;

    /** A start is moved at most 25 mm onto the wall; a lead that begins twice as far from it begins elsewhere. */
    private static final double NEAR_START_METRES = 0.05;

    private static final double ROUNDING = DrawnClearance.ROUNDING_METRES;

    private final RouteCheck check;
    private final CheckedCable cable;
    private final List<CheckedCable> all;
    private final CheckFindings findings;

    LeadInspection(RouteCheck check, CheckedCable cable, List<CheckedCable> all, CheckFindings findings) {
        this.check = check;
        this.cable = cable;
        this.all = all;
        this.findings = findings;
    }

    void inspect(List<Quantity<Length>> lengths, List<Quantity<Length>> surplus) {
        int wanted = cable.cable.conductors() == 1 ? 2 : 1;
        if (cable.leads.size() != wanted) {
            findings.error(
                    CheckFindings.LEAD_COUNT, cable.leads.size() + " cold leads are drawn; the cable has " + wanted);
        }
        for (int i = 0; i < cable.leads.size(); i++) {
            DrawnLine lead = cable.leads.get(i);
            double left = length(lead);
            lengths.add(Amounts.metres(lead.length()));
            surplus.add(Amounts.metres(left));
            place(lead, cable.leadGeometries.get(i));
            if (i < 2) {
                DrawnLine heating = i == 0 ? cable.heating : cable.heating.reversed();
                joint(lead, heating);
                ownHeating(lead, heating);
            }
            otherHeating(cable.leadGeometries.get(i));
        }
        if (cable.leads.size() == 2) {
            leadsCrossing(cable.leads.get(0), cable.leads.get(1));
        }
    }

    private double length(DrawnLine lead) {
        double available = cable.coldLeadMetres - check.riserMetres;
        double needed = lead.length() + DrawnBends.shorteningMetres(lead);
        if (!(needed <= available + ROUNDING)) {
            findings.error(CheckFindings.LEAD_LENGTH, "a cold lead is too short for its way", needed, available);
        }
        return available - lead.length();
    }

    /** The lead from the wall on, where it begins at a place measured a little off it. */
    private LineString fromTheWall(LineString lead) {
        Coordinate first = lead.getCoordinateN(0);
        double off = first.distance(check.start);
        if (off <= SAME_PLACE_METRES || off > NEAR_START_METRES) {
            return lead;
        }
        Coordinate[] points = lead.getCoordinates();
        points[0] = check.room
                .onWall("cold lead", lead.getFactory().createPoint(first), Units.METRE)
                .getCoordinate();
        return lead.getFactory().createLineString(points);
    }

    private void place(DrawnLine lead, LineString drawn) {
        LineString geometry = fromTheWall(drawn);
        double off = geometry.getCoordinateN(0).distance(check.start);
        if (!(off <= SAME_PLACE_METRES)) {
            findings.error(CheckFindings.LEAD_PLACE, "a cold lead does not begin at the start", lead.point(0), off, 0);
        }
        if (!RoomCover.covers(check.room, geometry)) {
            findings.error(CheckFindings.ROOM, "a cold lead leaves the room", lead.point(0));
        }
        for (KeepOut keepOut : check.keepOuts) {
            double radius = Si.in("keep-out radius", keepOut.radius(), Units.METRE);
            DrawnClearance clearance = new DrawnClearance(keepOut.shape(), radius);
            if (clearance.isEnteredBy(lead, geometry)) {
                Coordinate at = clearance.toEdge(lead).at();
                if (keepOut.kind() == KeepOutKind.MOVEMENT_JOINT) {
                    findings.warning(
                            CheckFindings.JOINT_CROSSED,
                            "a cold lead passes the movement joint '" + keepOut.name() + "': lay it in a sleeve",
                            at);
                } else {
                    findings.error(CheckFindings.KEEP_OUT, "a cold lead runs through '" + keepOut.name() + "'", at);
                }
            }
        }
        Optional<Coordinate> crossing = DrawnSeparation.crossing(lead);
        if (crossing.isPresent()) {
            findings.warning(CheckFindings.LEAD_PLACE, "a cold lead crosses itself", crossing.get());
        }
        DrawnBends.Sharpest sharpest = DrawnBends.sharpest(lead);
        if (sharpest.radiusMetres() < check.minBendRadiusMetres - DrawnBends.CHORD_METRES) {
            findings.warning(
                    CheckFindings.BEND,
                    "a cold lead is drawn with a sharp bend; round it when laying",
                    sharpest.at(),
                    sharpest.radiusMetres(),
                    check.minBendRadiusMetres);
        }
    }

    private void joint(DrawnLine lead, DrawnLine heating) {
        Coordinate end = lead.point(lead.segments());
        double off = end.distance(heating.point(0));
        if (!(off <= SAME_PLACE_METRES)) {
            findings.error(CheckFindings.JOINT, "a cold lead does not end at the heating part", end, off, 0);
            return;
        }
        double jointLength = check.jointLengthMetres;
        if (!(lead.length() >= jointLength - ROUNDING)) {
            findings.error(
                    CheckFindings.JOINT, "a cold lead is shorter than the joint", end, lead.length(), jointLength);
        }
        double straight = straightMetres(lead.reversed());
        if (!(straight >= Math.min(jointLength, lead.length()) - ROUNDING)) {
            findings.error(CheckFindings.JOINT, "the joint is not straight", end, straight, jointLength);
        }
        // The bends of the heating part are judged for themselves: here counts what the joint adds to them.
        double heatingRadius = DrawnBends.sharpest(heating).radiusMetres();
        DrawnBends.Sharpest through = DrawnBends.sharpest(lead.tail(jointLength).then(heating));
        if (through.radiusMetres() < check.minBendRadiusMetres - DrawnBends.CHORD_METRES
                && through.radiusMetres() < heatingRadius * (1 - 1e-9)
                && through.at().distance(end) <= jointLength) {
            findings.error(
                    CheckFindings.JOINT,
                    "the cable is kinked at the joint",
                    end,
                    through.radiusMetres(),
                    check.minBendRadiusMetres);
        }
    }

    /** How far from its first point a line stays within the chord tolerance of a straight one. */
    private double straightMetres(DrawnLine line) {
        double reach = Math.min(check.jointLengthMetres, line.length());
        int last = 1;
        while (last < line.segments() && line.along(last) < reach) {
            last++;
        }
        double share = (reach - line.along(last - 1)) / line.length(last - 1);
        double ex = line.x(last - 1) + share * (line.x(last) - line.x(last - 1));
        double ey = line.y(last - 1) + share * (line.y(last) - line.y(last - 1));
        double dx = ex - line.x(0);
        double dy = ey - line.y(0);
        double across = Math.hypot(dx, dy);
        if (!(across > reach / 2)) {
            return 0;
        }
        for (int i = 1; i < last; i++) {
            double off = Math.abs((line.x(i) - line.x(0)) * dy - (line.y(i) - line.y(0)) * dx) / across;
            if (off > DrawnBends.CHORD_METRES) {
                return line.along(i);
            }
        }
        return reach;
    }

    private void ownHeating(DrawnLine lead, DrawnLine heating) {
        DrawnLine through = lead.then(heating);
        Optional<Coordinate> crossing = DrawnSeparation.crossing(through, lead.segments());
        if (crossing.isPresent()) {
            findings.error(CheckFindings.LEAD_SPACING, "a cold lead crosses its own heating cable", crossing.get());
            return;
        }
        double half = check.minSpacingMetres / 2;
        DrawnSeparation.Nearest nearest =
                DrawnSeparation.between(through, lead.segments(), Math.PI / 2 * check.minSpacingMetres, half);
        if (nearest.metres() < half - CableInspection.SPACING_CHORDS_METRES) {
            findings.error(
                    CheckFindings.LEAD_SPACING,
                    "a cold lead lies too near to its own heating cable",
                    nearest.at(),
                    nearest.metres(),
                    half);
        }
    }

    private void otherHeating(LineString geometry) {
        double half = check.minSpacingMetres / 2;
        for (CheckedCable other : all) {
            if (other == cable) {
                continue;
            }
            double distance = other.facets.distance(geometry);
            if (distance < half - CableInspection.SPACING_CHORDS_METRES) {
                String what = distance == 0 ? "crosses" : "lies too near to";
                findings.error(
                        CheckFindings.LEAD_SPACING,
                        "a cold lead " + what + " the heating cable '" + other.cable.name() + "'",
                        other.facets.nearestPoints(geometry)[1],
                        distance,
                        half);
            }
        }
    }

    /** Two leads of one cable may leave the wall side by side, but not cross one on the other. */
    private void leadsCrossing(DrawnLine first, DrawnLine second) {
        LineIntersector intersector = new RobustLineIntersector();
        for (int i = 0; i < first.segments(); i++) {
            for (int j = 0; j < second.segments(); j++) {
                intersector.computeIntersection(
                        first.point(i), first.point(i + 1), second.point(j), second.point(j + 1));
                if (intersector.isProper()) {
                    findings.warning(
                            CheckFindings.LEAD_PLACE,
                            "the two cold leads cross, one on the other",
                            intersector.getIntersection(0));
                    return;
                }
            }
        }
    }
}
