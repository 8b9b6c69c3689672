package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;

/** Measures and judges the heating part of one cable. */
final class CableInspection {

    /** Allowed in spacings: each of two arcs may be 0.2 mm off. */
    static final double SPACING_CHORDS_METRES = 0.0004;

    private static final double ROUNDING = DrawnClearance.ROUNDING_METRES;

    /** The arcs' lengths are estimated from their chords to this share of the difference. */
    private static final double SHORTENING_SHARE = 0.1;

    /** Length that may lie in turns too fine to be read as bends. */
    private static final double RAGGED_METRES = 0.001;

    private final RouteCheck check;
    private final CheckedCable cable;
    private final List<CheckedCable> all;
    private final CheckFindings findings;

    CableInspection(RouteCheck check, CheckedCable cable, List<CheckedCable> all) {
        this.check = check;
        this.cable = cable;
        this.all = all;
        findings = new CheckFindings(cable.cable.name());
    }

    CableCheck result() {
        DrawnLine line = cable.heating;
        double shortening = DrawnBends.shorteningMetres(line);
        length(shortening);
        crossing();
        double separation = separation();
        double wall = walls();
        Map<String, Quantity<Length>> clearances = keepOuts();
        double radius = bends();
        double studGap = studs();
        List<Quantity<Length>> leadLengths = new ArrayList<>();
        List<Quantity<Length>> surplus = new ArrayList<>();
        new LeadInspection(check, cable, all, findings).inspect(leadLengths, surplus);
        return new CableCheck(
                cable.cable.name(),
                Amounts.metres(line.length()),
                Amounts.metres(shortening),
                Amounts.metres(cable.lengthMetres - line.length()),
                ifFinite(separation),
                Amounts.metres(wall),
                clearances,
                ifFinite(radius),
                Amounts.metres(studGap),
                DrawnBends.rightAngleTurns(line),
                leadLengths,
                surplus,
                findings.list());
    }

    private static Optional<Quantity<Length>> ifFinite(double metres) {
        return Double.isFinite(metres) ? Optional.of(Amounts.metres(metres)) : Optional.empty();
    }

    private void length(double shortening) {
        double left = cable.lengthMetres - cable.heating.length() - shortening;
        double play = ROUNDING + SHORTENING_SHARE * shortening;
        if (!(left >= -play)) {
            findings.error(CheckFindings.EXACT, "the cable would have to be stretched; left over", left, 0);
        }
        if (!(left <= check.pitchMetres + play)) {
            findings.error(CheckFindings.EXACT, "too much cable is left over", left, check.pitchMetres);
        }
    }

    private void crossing() {
        Optional<Coordinate> crossing = DrawnSeparation.crossing(cable.heating);
        if (crossing.isPresent()) {
            findings.error(CheckFindings.CROSSING, "the heating cable crosses itself", crossing.get());
            return;
        }
        double diameter = cable.diameterMetres;
        DrawnSeparation.Nearest contact = DrawnSeparation.within(cable.heating, Math.PI / 2 * diameter);
        if (contact.metres() < diameter - SPACING_CHORDS_METRES) {
            findings.error(
                    CheckFindings.CROSSING,
                    "the heating cable touches itself",
                    contact.at(),
                    contact.metres(),
                    diameter);
        }
    }

    private double separation() {
        double spacing = check.minSpacingMetres;
        DrawnLine line = cable.heating;
        DrawnSeparation.Nearest own = DrawnSeparation.within(line, Math.PI / 2 * spacing);
        double least = own.metres();
        if (least < spacing - SPACING_CHORDS_METRES) {
            findings.error(CheckFindings.SPACING, "the spacing to itself is short", own.at(), least, spacing);
        }
        if (cable.cable.conductors() == 1) {
            Coordinate end = line.point(line.segments());
            double ends = line.point(0).distance(end);
            if (ends < spacing - SPACING_CHORDS_METRES && least >= spacing - SPACING_CHORDS_METRES) {
                findings.error(CheckFindings.SPACING, "the two ends lie too near", end, ends, spacing);
            }
            least = Math.min(least, ends);
        }
        for (CheckedCable other : all) {
            if (other == cable) {
                continue;
            }
            double distance = other.facets.distance(cable.geometry);
            least = Math.min(least, distance);
            Coordinate at = other.facets.nearestPoints(cable.geometry)[1];
            if (distance == 0) {
                findings.error(CheckFindings.CROSSING, "crosses the cable '" + other.cable.name() + "'", at);
            } else if (distance < spacing - SPACING_CHORDS_METRES) {
                findings.error(
                        CheckFindings.SPACING,
                        "the spacing to the cable '" + other.cable.name() + "' is short",
                        at,
                        distance,
                        spacing);
            }
        }
        return least;
    }

    private double walls() {
        DrawnClearance clearance = new DrawnClearance(check.room.polygon().getBoundary(), 0);
        DrawnClearance.Least least = clearance.toEdge(cable.heating);
        if (!RoomCover.covers(check.room, cable.geometry)) {
            findings.error(CheckFindings.ROOM, "the heating cable leaves the room", least.at());
        } else if (!(least.allowedMetres() >= check.wallClearanceMetres - ROUNDING)) {
            findings.error(
                    CheckFindings.WALL,
                    "the clearance to walls and columns is short",
                    least.at(),
                    least.metres(),
                    check.wallClearanceMetres);
        }
        return least.metres();
    }

    private Map<String, Quantity<Length>> keepOuts() {
        Map<String, Quantity<Length>> clearances = new LinkedHashMap<>();
        for (KeepOut keepOut : check.keepOuts) {
            double radius = Si.in("keep-out radius", keepOut.radius(), Units.METRE);
            DrawnClearance clearance = new DrawnClearance(keepOut.shape(), radius);
            double needed = Si.in("clearance", keepOut.clearance().with(check.lattice.pitch()), Units.METRE);
            DrawnClearance.Least least = clearance.toEdge(cable.heating);
            // A line has no inside: a cable that ends on a joint, within the rounding, bridges it.
            boolean bridged = keepOut.kind() == KeepOutKind.MOVEMENT_JOINT && least.metres() <= ROUNDING;
            boolean entered = bridged || clearance.isEnteredBy(cable.heating, cable.geometry);
            double metres = entered ? Math.min(0, least.metres()) : least.metres();
            clearances.merge(
                    keepOut.name(),
                    Amounts.metres(metres),
                    (a, b) -> Si.in("clearance", a, Units.METRE) <= metres ? a : b);
            if (entered && keepOut.kind() == KeepOutKind.MOVEMENT_JOINT) {
                findings.error(
                        CheckFindings.JOINT_CROSSED,
                        "the heating cable crosses the movement joint '" + keepOut.name() + "'",
                        least.at());
            } else if (entered) {
                findings.error(
                        CheckFindings.KEEP_OUT,
                        "the heating cable runs through '" + keepOut.name() + "'",
                        least.at(),
                        metres,
                        needed);
            } else if (!(least.allowedMetres() >= needed - ROUNDING)) {
                findings.error(
                        CheckFindings.KEEP_OUT,
                        "the clearance to '" + keepOut.name() + "' is short",
                        least.at(),
                        metres,
                        needed);
            }
        }
        return clearances;
    }

    private double bends() {
        DrawnBends.Sharpest sharpest = DrawnBends.sharpest(cable.heating);
        if (sharpest.radiusMetres() < check.minBendRadiusMetres - DrawnBends.CHORD_METRES) {
            findings.error(
                    CheckFindings.BEND,
                    "a bend is too sharp",
                    sharpest.at(),
                    sharpest.radiusMetres(),
                    check.minBendRadiusMetres);
        }
        double ragged = DrawnBends.raggedMetres(cable.heating);
        if (ragged > RAGGED_METRES) {
            findings.error(
                    CheckFindings.BEND, "the line is ragged, with turns finer than can be laid", ragged, RAGGED_METRES);
        }
        return sharpest.radiusMetres();
    }

    private double studs() {
        DrawnStuds.Nearest nearest = new DrawnStuds(check.lattice).nearest(cable.heating);
        double bodies = (cable.diameterMetres + check.studDiameterMetres) / 2;
        if (!(nearest.metres() + nearest.bulgeMetres() >= bodies - ROUNDING)) {
            findings.error(
                    CheckFindings.STUD,
                    "the cable lies on a stud, centre to centre",
                    nearest.stud(),
                    nearest.metres(),
                    bodies);
        }
        return nearest.metres() - bodies;
    }
}
