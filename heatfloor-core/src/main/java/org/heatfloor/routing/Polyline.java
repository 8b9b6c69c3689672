package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Coordinate;

/** Rounds the corners of a polyline with arcs drawn as chords. */
final class Polyline {

    /** Greatest distance between an arc and its chord, in metres; a plan file allows 0.2 mm. */
    private static final double SAGITTA_METRES = 0.00004;

    /** Points nearer than this are one point. */
    private static final double NEAR_METRES = 1e-6;

    private Polyline() {}

    /**
     * The polyline with every corner rounded to the radius, or to the largest radius that its two legs allow.
     *
     * @param points corner points, in metres
     * @param radiusMetres radius of the bends
     * @param sharp corners to leave as they are
     * @return the drawn line
     */
    static List<Coordinate> rounded(List<Coordinate> points, double radiusMetres, Predicate<Coordinate> sharp) {
        List<Coordinate> out = new ArrayList<>();
        List<Coordinate> clean = distinct(points);
        int last = clean.size() - 1;
        for (int i = 0; i <= last; i++) {
            Coordinate here = clean.get(i);
            if (i == 0 || i == last || sharp.test(here)) {
                out.add(here);
                continue;
            }
            Coordinate before = clean.get(i - 1);
            Coordinate after = clean.get(i + 1);
            double legIn = here.distance(before) / (i == 1 ? 1 : 2);
            double legOut = here.distance(after) / (i == last - 1 ? 1 : 2);
            corner(out, before, here, after, radiusMetres, Math.min(legIn, legOut));
        }
        return distinct(out);
    }

    private static List<Coordinate> distinct(List<Coordinate> points) {
        List<Coordinate> out = new ArrayList<>();
        for (Coordinate c : points) {
            if (out.isEmpty() || out.get(out.size() - 1).distance(c) > NEAR_METRES) {
                out.add(c);
            }
        }
        return out;
    }

    private static void corner(
            List<Coordinate> out, Coordinate before, Coordinate here, Coordinate after, double radius, double leg) {
        double inX = (here.x - before.x) / here.distance(before);
        double inY = (here.y - before.y) / here.distance(before);
        double outX = (after.x - here.x) / here.distance(after);
        double outY = (after.y - here.y) / here.distance(after);
        double turn = Math.atan2(inX * outY - inY * outX, inX * outX + inY * outY);
        if (Math.abs(turn) < 1e-6) {
            return;
        }
        double tangent = Math.tan(Math.abs(turn) / 2);
        double r = Math.min(radius, leg / tangent);
        double cut = r * tangent;
        double side = Math.signum(turn);
        double centreX = here.x - inX * cut - side * inY * r;
        double centreY = here.y - inY * cut + side * inX * r;
        double step = 2 * Math.acos(Math.max(0, 1 - SAGITTA_METRES / Math.max(r, SAGITTA_METRES)));
        int chords = Math.max(1, (int) Math.ceil(Math.abs(turn) / step));
        double startAngle = Math.atan2(here.y - inY * cut - centreY, here.x - inX * cut - centreX);
        for (int t = 0; t <= chords; t++) {
            double angle = startAngle + turn * t / chords;
            out.add(new Coordinate(centreX + r * Math.cos(angle), centreY + r * Math.sin(angle)));
        }
    }
}
