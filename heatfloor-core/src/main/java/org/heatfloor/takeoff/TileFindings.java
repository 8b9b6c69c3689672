package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Limits of tile work: cuts, offset, joint width. Inches as the standards state them. */
final class TileFindings {

    /** A side above this counts as large: ANSI A108.02. */
    static final double LARGE_SIDE_INCHES = 15;

    /** 3 mm passes for 1/8 in, as the standard's own metric figures do (from memory). */
    private static final double SOFT_CONVERSION_INCHES = 0.2 / 25.4;

    private static final String A108_02 = "ANSI A108.02";

    private TileFindings() {}

    static List<Finding> of(TileLayout layout) {
        List<Finding> findings = new ArrayList<>();
        cuts(findings, layout);
        offset(findings, layout.tile());
        joint(findings, layout.tile());
        return findings;
    }

    private static void cuts(List<Finding> findings, TileLayout layout) {
        if (layout.tile().pattern() == TilePattern.DIAGONAL) {
            return;
        }
        int slivers = layout.piecesUnder(Amounts.of(100 * TileLayout.SLIVER_SHARE, Units.PERCENT));
        int half = layout.piecesUnder(Amounts.of(50, Units.PERCENT));
        String narrowest = QuantityText.write(layout.narrowestWidth().to(Units.MILLIMETRE), 0);
        if (slivers > 0) {
            findings.add(Finding.of(
                    Severity.WARNING,
                    "tile layout",
                    slivers + " cut pieces are slivers under a quarter of a tile, the narrowest " + narrowest
                            + "; shift the layout or take another size",
                    layout.narrowest(),
                    Amounts.of(100 * TileLayout.SLIVER_SHARE, Units.PERCENT),
                    Source.commonPractice("no sliver under a quarter of a tile")));
        } else if (half > 0) {
            findings.add(Finding.of(
                    Severity.NOTE,
                    "tile layout",
                    half + " cut pieces are under half a tile, the narrowest " + narrowest,
                    layout.narrowest(),
                    Amounts.of(50, Units.PERCENT),
                    Source.document(A108_02, "4.3.1 and 4.3.2: usually no cut under half a tile")));
        }
    }

    private static double longestInches(TileSpec tile) {
        return Si.in("side", tile.length().to(Units.INCH), Units.INCH) > Si.in("side", tile.width(), Units.INCH)
                ? Si.in("side", tile.length(), Units.INCH)
                : Si.in("side", tile.width(), Units.INCH);
    }

    private static void offset(List<Finding> findings, TileSpec tile) {
        if (tile.pattern() == TilePattern.HALF_OFFSET && longestInches(tile) > LARGE_SIDE_INCHES) {
            findings.add(Finding.of(
                    Severity.WARNING,
                    "tile pattern",
                    "tiles this long are offset by at most a third, or their bowed middles meet the neighbours' ends",
                    Amounts.of(50, Units.PERCENT),
                    Amounts.of(33, Units.PERCENT),
                    Source.document(A108_02, "offset at most 33 % where the offset side is over 15 in nominal")));
        }
    }

    private static void joint(List<Finding> findings, TileSpec tile) {
        double joint = Si.in("joint", tile.joint(), Units.INCH);
        double least = leastJointInches(tile);
        if (joint < least - SOFT_CONVERSION_INCHES) {
            findings.add(Finding.of(
                    Severity.WARNING,
                    "grout joint",
                    "the joint is too narrow for this tile and pattern",
                    tile.joint(),
                    Amounts.inches(least),
                    Source.document(
                            A108_02,
                            "4.3.8: three times the variation in size and never under 1/16 in; in offset rows over 15 in"
                                    + " 1/8 in rectified or 3/16 in calibrated, plus the edge warpage (4.3.8.1)")));
        }
    }

    /** Least joint, inches: ANSI A108.02 (2017), 4.3.8 and 4.3.8.1. */
    static double leastJointInches(TileSpec tile) {
        TileAccuracy accuracy = tile.accuracy();
        double byVariation = Math.max(1.0 / 16, 3 * Si.in("variation", accuracy.variation(), Units.INCH));
        if (!tile.pattern().isOffset() || !(longestInches(tile) > LARGE_SIDE_INCHES)) {
            return byVariation;
        }
        double byEdge = accuracy.edge() == TileAccuracy.Edge.RECTIFIED ? 1.0 / 8 : 3.0 / 16;
        return Math.max(byVariation, byEdge + Si.in("warpage", accuracy.warpage(), Units.INCH));
    }
}
