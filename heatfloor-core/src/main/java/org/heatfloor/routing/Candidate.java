package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;

/**
 * A route brought to the exact length: U-turns moved by single pitches, then the free end trimmed, or the joints moved
 * along their runs, by less than two pitches.
 */
final class Candidate {

    /** Price of a share of the floor that stays cold: three turns a percent. */
    static final double COLD_PRICE = 300;
    /** The same of the junctions farther than three quarters of the even spacing. */
    private static final double COOL_PRICE = 25;
    /** Price of a share of the cable that lies where less of it is wanted: six turns a percent. */
    static final double MISPLACED_PRICE = 600;

    private static final double CLOSE_METRES = 1e-9;

    final Part part;
    final LatticePath path;
    final Ends first;
    /** Null for an open route. */
    final @Nullable Ends last;

    final double movedFirst;
    final double movedLast;
    final double trimmedTail;
    final double laidMetres;
    final int turns;
    final double coldShare;
    final double farthestMetres;
    /** Share of the junctions farther than three quarters of the even spacing. */
    final double coolShare;
    /** Share of the cable that lies where less of it is wanted. */
    final double misplaced;

    private Candidate(
            Part part,
            LatticePath path,
            Ends first,
            @Nullable Ends last,
            double movedFirst,
            double movedLast,
            double trimmedTail,
            double laidMetres,
            int turns,
            double evenPitches) {
        this.part = part;
        this.path = path;
        this.first = first;
        this.last = last;
        this.movedFirst = movedFirst;
        this.movedLast = movedLast;
        this.trimmedTail = trimmedTail;
        this.laidMetres = laidMetres;
        this.turns = turns;
        boolean[] heated = heated();
        Wanted wanted = part.wanted;
        double[] cold = Coverage.measure(part.lattice, heated, v -> wanted == null ? evenPitches : wanted.at(v));
        coldShare = cold[0];
        farthestMetres = cold[1] * part.site.pitch;
        coolShare = cold[2];
        misplaced = wanted == null ? 0 : misplaced(wanted, heated);
    }

    private static double misplaced(Wanted wanted, boolean[] heated) {
        double[] lengths = new double[wanted.areas.length];
        for (int v = 0; v < heated.length; v++) {
            lengths[wanted.region[v]] += heated[v] ? 1 : 0;
        }
        return wanted.misplaced(lengths);
    }

    /** Turns with the price of what stays cold or cool and of what lies in the wrong place. */
    double cost() {
        return turns + COLD_PRICE * coldShare + COOL_PRICE * coolShare + MISPLACED_PRICE * misplaced;
    }

    /** The exact route of a path, or null if it cannot be made exact; the path is changed. */
    static @Nullable Candidate of(
            Part part, LatticePath path, boolean returns, double lengthMetres, SplittableRandom random) {
        Ends first = Ends.of(part, path, false);
        Ends last = returns ? Ends.of(part, path, true) : null;
        if (first == null || (returns && last == null)) {
            return null;
        }
        double pitch = part.site.pitch;
        int turns = path.turns() - first.run() - (last == null ? 0 : last.run());
        if (turns < 0) {
            return null;
        }
        double excess = available(part, path, first, last, turns) - lengthMetres;
        if (excess < -1e-6 * pitch) {
            path.stretch((int) Math.ceil(-excess / pitch - 1e-6), !returns, random);
        } else if (excess >= (2 - 1e-6) * pitch) {
            path.stretch(-(int) Math.floor(excess / pitch + 1e-6), false, random);
        }
        Ends firstNow = Ends.of(part, path, false);
        Ends lastNow = returns ? Ends.of(part, path, true) : null;
        if (firstNow == null || firstNow.run() != first.run() || runOf(lastNow) != runOf(last)) {
            return null;
        }
        excess = available(part, path, firstNow, lastNow, turns) - lengthMetres;
        double back = firstNow.back() + (lastNow == null ? 0 : lastNow.back());
        if (excess < -CLOSE_METRES - back || excess > 12 * pitch || !path.keepsRule()) {
            return null;
        }
        double backFirst = Math.min(firstNow.back(), Math.max(0, -excess));
        double backLast = lastNow == null ? 0 : Math.min(lastNow.back(), Math.max(0, -excess - backFirst));
        excess = Math.max(0, excess);
        double tail = 0;
        if (!returns) {
            double lastRun = path.runLength(path.runs() - 1) * pitch - part.site.bendRadius;
            tail = Math.min(excess, Math.max(0, lastRun));
        }
        double movedFirst = Math.min(returns ? excess / 2 : excess - tail, firstNow.slack());
        double movedLast = lastNow == null ? 0 : Math.min(excess - movedFirst, lastNow.slack());
        if (returns) {
            movedFirst = Math.min(excess - movedLast, firstNow.slack());
        }
        double rest = excess - tail - movedFirst - movedLast;
        if (rest > CLOSE_METRES) {
            return null;
        }
        double laid = lengthMetres + Math.max(0, rest);
        double even = part.area * pitch / lengthMetres;
        return new Candidate(
                part, path, firstNow, lastNow, movedFirst - backFirst, movedLast - backLast, tail, laid, turns, even);
    }

    /** The longest cable that can lie on a path, in metres; zero where no joint can or the path does not keep the rule. */
    static double reachMetres(Part part, LatticePath path, boolean returns) {
        Ends first = Ends.of(part, path, false);
        Ends last = returns ? Ends.of(part, path, true) : null;
        if (first == null || (returns && last == null) || !path.keepsRule()) {
            return 0;
        }
        int turns = path.turns() - first.run() - (last == null ? 0 : last.run());
        return turns < 0
                ? 0
                : available(part, path, first, last, turns) + first.back() + (last == null ? 0 : last.back());
    }

    private static double available(Part part, LatticePath path, Ends first, @Nullable Ends last, int turns) {
        double pitch = part.site.pitch;
        double metres = path.length() * pitch - Part.CORNER * part.site.bendRadius * turns;
        for (int r = 0; r < first.run(); r++) {
            metres -= path.runLength(r) * pitch;
        }
        metres -= first.fromRunStart();
        if (last != null) {
            for (int r = 0; r < last.run(); r++) {
                metres -= path.runLength(path.runs() - 1 - r) * pitch;
            }
            metres -= last.fromRunStart();
        }
        return metres;
    }

    private static int runOf(@Nullable Ends end) {
        return end == null ? -1 : end.run();
    }

    /** The heating part's corner points in metres. */
    List<Coordinate> corners() {
        List<Coordinate> out = new ArrayList<>();
        out.add(first.heatingStart(part, path, false, movedFirst));
        int end = path.points() - 1 - (last == null ? 0 : last.run());
        for (int p = first.run() + 1; p < end; p++) {
            out.add(part.frame.metres(path.x(p), path.y(p)));
        }
        if (last != null) {
            if (end > first.run()) {
                out.add(part.frame.metres(path.x(end), path.y(end)));
                out.remove(out.size() - 1);
            }
            out.add(last.heatingStart(part, path, true, movedLast));
        } else {
            double shorter = trimmedTail / part.site.pitch;
            int run = path.runs() - 1;
            out.add(part.frame.metres(
                    path.x(run + 1) - Integer.signum(path.x(run + 1) - path.x(run)) * shorter,
                    path.y(run + 1) - Integer.signum(path.y(run + 1) - path.y(run)) * shorter));
        }
        return out;
    }

    /** Lattice nodes on the heating part. */
    private boolean[] heated() {
        boolean[] mask = path.mask();
        clear(mask, first, false, movedFirst);
        if (last != null) {
            clear(mask, last, true, movedLast);
        } else {
            clearStretch(mask, path.points() - 1, path.points() - 2, trimmedTail);
        }
        return mask;
    }

    private void clear(boolean[] mask, Ends end, boolean reversed, double moved) {
        for (int r = 0; r <= end.run(); r++) {
            int a = reversed ? path.points() - 1 - r : r;
            int b = reversed ? a - 1 : a + 1;
            double metres =
                    r == end.run() ? end.fromRunStart() + moved : path.runLength(Math.min(a, b)) * part.site.pitch;
            clearStretch(mask, a, b, metres);
        }
    }

    private void clearStretch(boolean[] mask, int a, int b, double metres) {
        int dx = Integer.signum(path.x(b) - path.x(a));
        int dy = Integer.signum(path.y(b) - path.y(a));
        for (int t = 0; t * part.site.pitch < metres - CLOSE_METRES; t++) {
            mask[(path.y(a) + t * dy) * part.lattice.width + path.x(a) + t * dx] = false;
        }
    }

    List<Coordinate> lead(Ends end, boolean reversed, double moved, double offsetMetres) {
        List<Coordinate> out = new ArrayList<>(part.leads.line(end.way(), offsetMetres));
        List<Coordinate> rest = end.leadPoints(part, path, reversed, moved);
        out.addAll(rest.subList(1, rest.size()));
        return dropStraight(out);
    }

    private static List<Coordinate> dropStraight(List<Coordinate> points) {
        List<Coordinate> out = new ArrayList<>(points);
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
        return Collections.unmodifiableList(out);
    }
}
