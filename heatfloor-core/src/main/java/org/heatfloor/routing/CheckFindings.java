package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.locationtech.jts.geom.Coordinate;

/** Collects the judgements on one cable and words them. */
final class CheckFindings {

    static final Source ROOM = Source.brief("outline: the cable lies inside the room");
    static final Source WALL = Source.brief("wallClearance: centre line to walls and columns");
    static final Source KEEP_OUT = Source.brief("keepOuts: each with its own clearance to the centre line");
    static final Source JOINT_CROSSED =
            Source.commonPractice("heating cable does not bridge a movement joint; a cold lead passes it in a sleeve");
    static final Source SPACING = Source.brief(
            "minSpacing: points farther apart along the cable than π/2 times it lie at least that far apart");
    static final Source CROSSING = Source.commonPractice("a heating cable neither crosses nor touches a heating cable");
    static final Source BEND = Source.brief("minBendRadius: of the centre line");
    static final Source STUD = Source.derived("distance to the stud's centre less half the stud and half the cable");
    static final Source EXACT =
            Source.brief("cable length: never stretched, and at most one stud pitch of it left over");
    static final Source JOINT = Source.brief("jointLength: the joint of cold lead and heating part lies straight");
    static final Source LEAD_PLACE = Source.brief("start: where the cold lead comes out");
    static final Source LEAD_SPACING =
            Source.brief("a cold lead keeps half of minSpacing from heating cable and never crosses it");
    static final Source LEAD_LENGTH = Source.brief("coldLead less riser: what of a cold lead can lie in the floor");
    static final Source LEAD_COUNT = Source.derived("a cold lead at each end of a single-conductor cable, else one");

    private final String cable;
    private final List<Finding> findings = new ArrayList<>();

    CheckFindings(String cable) {
        this.cable = cable;
    }

    List<Finding> list() {
        return findings;
    }

    void error(Source source, String message, Coordinate at) {
        findings.add(Finding.of(Severity.ERROR, cable, message + at(at), source));
    }

    void error(Source source, String message) {
        findings.add(Finding.of(Severity.ERROR, cable, message, source));
    }

    void warning(Source source, String message, Coordinate at) {
        findings.add(Finding.of(Severity.WARNING, cable, message + at(at), source));
    }

    void error(Source source, String message, Coordinate at, double foundMetres, double limitMetres) {
        error(source, message + at(at), foundMetres, limitMetres);
    }

    void error(Source source, String message, double foundMetres, double limitMetres) {
        findings.add(figure(Severity.ERROR, source, message, foundMetres, limitMetres));
    }

    void warning(Source source, String message, Coordinate at, double foundMetres, double limitMetres) {
        findings.add(figure(Severity.WARNING, source, message + at(at), foundMetres, limitMetres));
    }

    private Finding figure(Severity severity, Source source, String message, double found, double limit) {
        String text = message + ": " + millimetres(found) + " mm where " + millimetres(limit) + " mm is the limit";
        return Finding.of(severity, cable, text, Amounts.metres(found), Amounts.metres(limit), source);
    }

    private static String at(Coordinate at) {
        return " at (" + millimetres(at.x) + ", " + millimetres(at.y) + ") mm";
    }

    private static String millimetres(double metres) {
        return String.format(Locale.ROOT, "%.1f", metres * 1000 + 0.0);
    }
}
