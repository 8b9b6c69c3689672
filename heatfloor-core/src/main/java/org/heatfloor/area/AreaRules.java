package org.heatfloor.area;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * What counts as dead space. Both widths are defaults that can be replaced; zero switches a rule off. A place is narrower
 * than a width when it lies farther than three quarters of the width from the centre of every circle of that width that is
 * free; so square corners, and corners down to 84°, count in full.
 *
 * @param leastRunWidth a free strip narrower than this takes no run; one stud pitch, because only a strip of that width
 *     holds a channel wherever the studs happen to lie
 * @param standingWidth a gap between fixtures narrower than this is no place to stand
 */
public record AreaRules(TradeLength leastRunWidth, Quantity<Length> standingWidth) {

    /** What the standing width rests on. */
    public static final Source STANDING_WIDTH_SOURCE =
            Source.commonPractice("no one stands in a gap between fixtures narrower than 300 mm");

    /** What the least run width rests on. */
    public static final Source LEAST_RUN_WIDTH_SOURCE =
            Source.derived("a strip one stud pitch wide holds a channel wherever the studs lie");

    /**
     * Checks the widths.
     *
     * @param leastRunWidth a free strip narrower than this takes no run
     * @param standingWidth a gap between fixtures narrower than this is no place to stand
     * @throws IllegalArgumentException if the standing width is not between 0 m and 2 m
     */
    public AreaRules {
        Si.within("standing width", standingWidth, Units.METRE, 0, 2);
    }

    /**
     * The usual rules: one stud pitch and 300 mm.
     *
     * @return the rules
     */
    public static AreaRules usual() {
        return new AreaRules(TradeLength.studs(1), Amounts.millimetres(300));
    }
}
