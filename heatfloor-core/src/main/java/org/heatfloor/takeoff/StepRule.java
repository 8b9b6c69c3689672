package org.heatfloor.takeoff;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * Limits for a difference of height at a door. A difference up to {@code upright} may stand, one up to {@code bevelled} is
 * bevelled, one up to {@code ramped} is ramped, more is too high.
 *
 * @param name what it is called
 * @param upright highest upright edge
 * @param uprightSource where that limit stands
 * @param bevelled highest bevelled edge
 * @param bevelRun run of the bevel for a rise of one
 * @param bevelledSource where those limits stand
 * @param ramped highest difference at a door with a ramp; equal to {@code bevelled} where the rule has no ramp
 * @param rampRun run of the ramp for a rise of one
 * @param rampedSource where those limits stand
 */
public record StepRule(
        String name,
        Quantity<Length> upright,
        Source uprightSource,
        Quantity<Length> bevelled,
        double bevelRun,
        Source bevelledSource,
        Quantity<Length> ramped,
        double rampRun,
        Source rampedSource) {

    /** ADA Standards 2010 with the highest step at an egress door of the International Residential Code. */
    public static final StepRule ADA_2010 = new StepRule(
            "the ADA Standards 2010",
            Amounts.inches(0.25),
            Source.document("ADA Standards for Accessible Design, 2010", "303.2: up to 1/4 in may be vertical"),
            Amounts.inches(0.5),
            2,
            Source.document("ADA Standards for Accessible Design, 2010", "303.3: 1/4 to 1/2 in bevelled at most 1:2"),
            Amounts.inches(1.5),
            12,
            Source.document(
                    "ADA Standards for Accessible Design, 2010",
                    "303.4 and 405: above 1/2 in a ramp, 1:12; International Residential Code" + TileStandard.UNDATED
                            + ", R311.3.1: at most 1-1/2 in at a door"));

    /** The accessible threshold of Approved Document M for England. */
    public static final StepRule APPROVED_DOCUMENT_M = new StepRule(
            "Approved Document M",
            Amounts.millimetres(5),
            Source.document(
                    "Approved Document M, England" + TileStandard.UNDATED,
                    "accessible threshold: upstands above 5 mm chamfered"),
            Amounts.millimetres(15),
            2,
            Source.document(
                    "Approved Document M, England" + TileStandard.UNDATED,
                    "accessible threshold: at most 15 mm in all; the chamfer's 1:2 is common practice, no source"),
            Amounts.millimetres(15),
            12,
            Source.document(
                    "Approved Document M, England" + TileStandard.UNDATED,
                    "accessible threshold: at most 15 mm in all"));

    /**
     * Checks the limits.
     *
     * @param name what it is called
     * @param upright highest upright edge
     * @param uprightSource where that limit stands
     * @param bevelled highest bevelled edge
     * @param bevelRun run of the bevel for a rise of one
     * @param bevelledSource where those limits stand
     * @param ramped highest difference at a door with a ramp; equal to {@code bevelled} where the rule has no ramp
     * @param rampRun run of the ramp for a rise of one
     * @param rampedSource where those limits stand
     * @throws IllegalArgumentException if they do not rise, or a run is not 1 to 100
     */
    public StepRule {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(uprightSource, "uprightSource");
        Objects.requireNonNull(bevelledSource, "bevelledSource");
        Objects.requireNonNull(rampedSource, "rampedSource");
        double first = Si.notNegative("upright limit", upright, Units.METRE);
        double second = Si.within("bevelled limit", bevelled, Units.METRE, first, 10);
        Si.within("ramped limit", ramped, Units.METRE, second, 10);
        if (!(bevelRun >= 1 && bevelRun <= 100 && rampRun >= 1 && rampRun <= 100)) {
            throw new IllegalArgumentException("bevel and ramp run: " + bevelRun + " and " + rampRun
                    + " were given; 1 to 100 for a rise of one is expected");
        }
    }

    /**
     * The verdict on a difference of height.
     *
     * @param step the difference, either way
     * @return the verdict
     */
    public StepVerdict verdict(Quantity<Length> step) {
        double rise = Math.abs(Si.in("step", step, Units.MILLIMETRE));
        if (rise <= Si.in("upright", upright, Units.MILLIMETRE) + 1e-9) {
            return StepVerdict.FLUSH;
        }
        if (rise <= Si.in("bevelled", bevelled, Units.MILLIMETRE) + 1e-9) {
            return StepVerdict.BEVEL;
        }
        return rise <= Si.in("ramped", ramped, Units.MILLIMETRE) + 1e-9 ? StepVerdict.RAMP : StepVerdict.TOO_HIGH;
    }

    /**
     * Run of the bevel, or of the ramp, that takes up the whole difference; zero where it may stand upright.
     *
     * @param step the difference, either way
     * @return the run
     */
    public Quantity<Length> run(Quantity<Length> step) {
        double rise = Math.abs(Si.in("step", step, Units.MILLIMETRE));
        return switch (verdict(step)) {
            case FLUSH -> Amounts.millimetres(0);
            case BEVEL -> Amounts.millimetres(rise * bevelRun);
            case RAMP, TOO_HIGH -> Amounts.millimetres(rise * rampRun);
        };
    }

    /**
     * Run of the bevel when the lower part, as high as may stand upright, is left upright.
     *
     * @param step the difference, either way
     * @return the run; zero where the whole may stand upright
     */
    public Quantity<Length> shortestBevelRun(Quantity<Length> step) {
        double rise = Math.abs(Si.in("step", step, Units.MILLIMETRE));
        double above = Math.max(0, rise - Si.in("upright", upright, Units.MILLIMETRE));
        return Amounts.millimetres(above * bevelRun);
    }

    /** The source of the limit a verdict rests on. */
    Source source(StepVerdict verdict) {
        return switch (verdict) {
            case FLUSH -> uprightSource;
            case BEVEL -> bevelledSource;
            case RAMP, TOO_HIGH -> rampedSource;
        };
    }
}
