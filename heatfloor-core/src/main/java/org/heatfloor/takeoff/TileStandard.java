package org.heatfloor.takeoff;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Whose limits for joint width, lippage and flatness are held to. */
public enum TileStandard {
    /** ANSI A108.02, as quoted for its 2013 and 2017 editions. */
    ANSI_A108("ANSI A108.02"),
    /** NHBC Standards 9.1.7, edition of 2025, for dwellings in the United Kingdom. */
    NHBC_2025("NHBC Standards 2025, 9.1.7");

    private final String text;

    TileStandard(String text) {
        this.text = text;
    }

    /**
     * A limit and where it stands.
     *
     * @param value the limit
     * @param source where it stands
     */
    public record Limit(Quantity<Length> value, Source source) {}

    /**
     * How far a base may be out of flat under a straightedge.
     *
     * @param straightedge its length
     * @param limit the largest gap under it and where that stands
     */
    public record Flatness(Quantity<Length> straightedge, Limit limit) {}

    /** A side above this counts as large in ANSI A108.02. */
    static final double LARGE_SIDE_INCHES = 15;

    private static final String A108_02 = "ANSI A108.02";

    /** Where a rule was read without the edition it stands in. */
    static final String UNDATED = " (edition not stated where read)";

    private static final Source NHBC = Source.document("NHBC Standards 2025", "9.1.7");

    /**
     * The narrowest grout joint for a tile as laid.
     *
     * @param tile the tile, its pattern and accuracy
     * @return the limit
     */
    public Limit leastJoint(TileSpec tile) {
        if (this == NHBC_2025) {
            return new Limit(Amounts.millimetres(3), NHBC);
        }
        TileAccuracy accuracy = tile.accuracy();
        double byVariation = Math.max(1.0 / 16, 3 * Si.in("variation", accuracy.variation(), Units.INCH));
        Source source = Source.document(
                A108_02 + " (2017)",
                "4.3.8: three times the variation in size and never under 1/16 in; in offset rows over 15 in 1/8 in"
                        + " rectified or 3/16 in calibrated, plus the edge warpage (4.3.8.1)");
        if (!tile.pattern().isOffset() || !(longestInches(tile) > LARGE_SIDE_INCHES)) {
            return new Limit(Amounts.inches(byVariation), source);
        }
        double byEdge = accuracy.edge() == TileAccuracy.Edge.RECTIFIED ? 1.0 / 8 : 3.0 / 16;
        double least = Math.max(byVariation, byEdge + Si.in("warpage", accuracy.warpage(), Units.INCH));
        return new Limit(Amounts.inches(least), source);
    }

    /**
     * The widest grout joint: in the United Kingdom the tile's thickness in general, ANSI A108.02 gives none, so the
     * tile's shorter side stands in.
     *
     * @param tile the tile
     * @return the limit
     */
    public Limit widestJoint(TileSpec tile) {
        if (this == NHBC_2025) {
            return new Limit(tile.thickness(), NHBC);
        }
        return new Limit(
                Amounts.metres(Math.min(tile.lengthMetres(), tile.widthMetres())),
                Source.derived("a joint is narrower than its tile"));
    }

    /**
     * How far neighbouring tile edges may differ in height.
     *
     * @param tile the tile, its joint and its measured warpage
     * @return the limit
     */
    public Limit lippage(TileSpec tile) {
        if (this == NHBC_2025) {
            double joint = Si.in("joint", tile.joint(), Units.MILLIMETRE);
            return new Limit(Amounts.millimetres(joint <= 6 ? 1 : 2), NHBC);
        }
        double warpage = Si.in("warpage", tile.accuracy().warpage(), Units.INCH);
        double allowed = Si.in("joint", tile.joint(), Units.INCH) < 0.25 - 1e-9 ? 1.0 / 32 : 1.0 / 16;
        return new Limit(
                Amounts.inches(allowed + warpage),
                Source.document(
                        A108_02 + " (2013)", "4.3.7: 1/32 in, or 1/16 in from 1/4 in joints, plus the warpage"));
    }

    /**
     * How far the base may be out of flat: over the long straightedge and, where the standard has one, over the short.
     *
     * @param tile its longest side decides
     * @return the limits, the long straightedge first
     */
    public List<Flatness> flatness(TileSpec tile) {
        if (this == NHBC_2025) {
            Source finish = Source.document("NHBC Standards 2025", "9.1.7: 3 mm under 2 m, finish");
            return List.of(new Flatness(Amounts.metres(2), new Limit(Amounts.millimetres(3), finish)));
        }
        if (longestInches(tile) >= LARGE_SIDE_INCHES) {
            Source large = Source.document(
                    A108_02 + UNDATED, "4.2.2: for edges of 15 in and more 1/8 in in 10 ft and 1/16 in in 24 in");
            return List.of(
                    new Flatness(Amounts.feet(10), new Limit(Amounts.inches(1.0 / 8), large)),
                    new Flatness(Amounts.feet(2), new Limit(Amounts.inches(1.0 / 16), large)));
        }
        return List.of(
                new Flatness(
                        Amounts.feet(10),
                        new Limit(
                                Amounts.inches(1.0 / 4),
                                Source.document(
                                        "ANSI A108" + UNDATED,
                                        "for edges under 15 in 1/4 in in 10 ft; a weak source"))),
                new Flatness(
                        Amounts.feet(1),
                        new Limit(
                                Amounts.inches(1.0 / 16),
                                Source.fromMemory("ANSI A108.02, for edges under 15 in 1/16 in in 12 in"))));
    }

    /**
     * How far a floor may bend under its load: the span over 360 under ceramic tile (NTCA Reference Manual 2024/25), over
     * 720 under natural stone (Marble Institute of America).
     *
     * @param span between supports
     * @param isStone whether natural stone lies on it
     * @return the deflection allowed
     * @throws IllegalArgumentException if the span is not above zero
     */
    public static Quantity<Length> deflection(Quantity<Length> span, boolean isStone) {
        return Amounts.metres(Si.positive("span", span, Units.METRE) / (isStone ? 720 : 360));
    }

    static double longestInches(TileSpec tile) {
        return Math.max(tile.lengthMetres(), tile.widthMetres()) / 0.0254;
    }

    /** The standard's name. */
    @Override
    public String toString() {
        return text;
    }
}
