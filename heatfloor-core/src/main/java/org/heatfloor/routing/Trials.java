package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What came of the strands tried for a rest: exact routes, and those that were too short. */
final class Trials {

    private static final int ENOUGH = 4;
    /** Widest gap of fingers, in pitches. */
    private static final int WIDEST = 12;

    private final Rest rest;
    private final Growing growing;
    /** Half pitches of the least gap, and of the mean gap to begin with. */
    private final int narrowest;

    private final int widest;
    private final List<Resting> found = new ArrayList<>();
    private final List<Strand> tooShort = new ArrayList<>();
    private double longest;

    Trials(Rest rest, Growing growing) {
        this.rest = rest;
        this.growing = growing;
        narrowest = 2 * rest.spacing();
        widest = Math.max(narrowest, (int) Math.floor(2 * Math.min(rest.evenGap() + 0.1, WIDEST)));
    }

    /** Whether to stop looking. */
    boolean enough() {
        return found.size() >= ENOUGH || Thread.currentThread().isInterrupted();
    }

    /** Whether no exact route was found yet. */
    boolean none() {
        return found.isEmpty();
    }

    /** Exact routes, the best first. */
    List<Resting> found() {
        return found.stream().sorted(Comparator.comparingDouble(Resting::cost)).toList();
    }

    /** Strands that nothing more fits to, the longest first. */
    List<Strand> tooShort() {
        return tooShort.stream()
                .sorted(Comparator.comparingDouble(rest::missing))
                .toList();
    }

    /** Longest heating part that was found, in metres, whether or not it could be made exact. */
    double longestMetres() {
        return longest;
    }

    /** Grows one strand with fingers as wide apart as will do. */
    void lengthen(Strand strand) {
        if (!strand.sound()) {
            return;
        }
        for (int halves = widest; halves >= narrowest; halves--) {
            Strand copy = strand.copy();
            growing.grow(copy, halves, 0);
            judge(copy);
            if (rest.missing(copy) <= 0) {
                return;
            }
        }
    }

    /** Grows strands with fingers as wide apart as will do for any of them. */
    void lengthenAny(List<Strand> strands) {
        for (int halves = widest; halves >= narrowest; halves--) {
            for (Strand strand : strands) {
                if (enough()) {
                    return;
                }
                Strand copy = strand.copy();
                growing.grow(copy, halves, 0);
                judge(copy);
            }
        }
    }

    private void judge(Strand strand) {
        longest = Math.max(longest, rest.metres(strand));
        if (!exact(strand) && rest.missing(strand) > 0) {
            tooShort.add(strand);
        }
    }

    /** Whether a strand could be brought to the exact length; if so, the route is kept. */
    boolean exact(Strand strand) {
        @Nullable Resting exact = rest.mayDo(strand) ? rest.exact(strand.copy()) : null;
        if (exact != null) {
            found.add(exact);
        }
        return exact != null;
    }

    /** The same, and the length counts as found. */
    boolean passes(Strand strand) {
        longest = Math.max(longest, rest.metres(strand));
        return exact(strand);
    }
}
