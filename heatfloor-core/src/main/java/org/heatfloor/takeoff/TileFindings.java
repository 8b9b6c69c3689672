package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.heatfloor.area.JointRule;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.TileStandard.Limit;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Limits of tile work: cuts, offset, joint width, lippage, flatness, bays. */
final class TileFindings {

    /** 3 mm passes for 1/8 in, as the standard's own metric figures do (from memory). */
    private static final double SOFT_CONVERSION_METRES = 0.0002;

    private static final String LAYOUT = "tile layout";
    private static final String FLATNESS = "flatness of the base";

    private TileFindings() {}

    static List<Finding> of(TileLayout layout, TakeOffBuilder brief) {
        List<Finding> findings = new ArrayList<>();
        cuts(findings, layout, brief.practice.units());
        offset(findings, layout.tile());
        joint(findings, layout.tile(), brief.standard());
        lippage(findings, layout.tile(), brief);
        flatness(findings, layout.tile(), brief);
        bays(findings, layout, brief.jointRule(), brief.practice.units());
        return findings;
    }

    private static void cuts(List<Finding> findings, TileLayout layout, PurchaseUnits units) {
        if (layout.tile().pattern() == TilePattern.DIAGONAL) {
            return;
        }
        int slivers = layout.piecesUnder(Amounts.of(100 * TileLayout.SLIVER_SHARE, Units.PERCENT));
        int half = layout.piecesUnder(Amounts.of(50, Units.PERCENT));
        String narrowest = units.thicknessText(layout.narrowestWidth());
        if (slivers > 0) {
            findings.add(Finding.of(
                    Severity.WARNING,
                    LAYOUT,
                    slivers + " cut pieces are slivers under a quarter of a tile, the narrowest " + narrowest
                            + "; shift the layout or take another size",
                    layout.narrowest(),
                    Amounts.of(100 * TileLayout.SLIVER_SHARE, Units.PERCENT),
                    Source.commonPractice("no sliver under a quarter of a tile")));
        } else if (half > 0) {
            findings.add(Finding.of(
                    Severity.NOTE,
                    LAYOUT,
                    half + " cut pieces are under half a tile, the narrowest " + narrowest,
                    layout.narrowest(),
                    Amounts.of(50, Units.PERCENT),
                    Source.document(
                            "ANSI A108.02" + TileStandard.UNDATED,
                            "4.3.1 and 4.3.2: usually no cut under half a tile")));
        }
    }

    private static void offset(List<Finding> findings, TileSpec tile) {
        boolean isLarge = TileStandard.longestInches(tile) > TileStandard.LARGE_SIDE_INCHES;
        if (tile.pattern() == TilePattern.HALF_OFFSET && isLarge) {
            findings.add(Finding.of(
                    Severity.WARNING,
                    "tile pattern",
                    "tiles this long are offset by at most a third, or their bowed middles meet the neighbours' ends",
                    Amounts.of(50, Units.PERCENT),
                    Amounts.of(33, Units.PERCENT),
                    Source.document(
                            "ANSI A108.02" + TileStandard.UNDATED,
                            "offset at most 33 % where the offset side is over 15 in nominal")));
        }
    }

    private static void joint(List<Finding> findings, TileSpec tile, TileStandard standard) {
        double joint = tile.jointMetres();
        Limit least = standard.leastJoint(tile);
        Limit widest = standard.widestJoint(tile);
        if (joint < Si.in("least joint", least.value(), Units.METRE) - SOFT_CONVERSION_METRES) {
            findings.add(Finding.of(
                    Severity.WARNING,
                    "grout joint",
                    "the joint is too narrow for this tile and pattern",
                    tile.joint(),
                    least.value(),
                    least.source()));
        } else if (joint > Si.in("widest joint", widest.value(), Units.METRE) + SOFT_CONVERSION_METRES) {
            findings.add(Finding.of(
                    Severity.WARNING,
                    "grout joint",
                    "the joint is wider than is usual for this tile",
                    tile.joint(),
                    widest.value(),
                    widest.source()));
        }
    }

    private static void lippage(List<Finding> findings, TileSpec tile, TakeOffBuilder brief) {
        Limit limit = brief.standard().lippage(tile);
        brief.lippage.ifPresent(measured -> findings.add(Finding.of(
                isOver(measured, limit) ? Severity.ERROR : Severity.NOTE,
                "lippage",
                isOver(measured, limit)
                        ? "neighbouring edges differ by more than allowed; lift and relay those tiles"
                        : "neighbouring edges differ by no more than allowed",
                measured,
                limit.value(),
                limit.source())));
        double warpage = Si.in("warpage", tile.accuracy().warpage(), Units.METRE);
        if (brief.lippage.isEmpty() && warpage > 0) {
            findings.add(Finding.of(
                    warpage > Si.in("lippage", limit.value(), Units.METRE) ? Severity.WARNING : Severity.NOTE,
                    "lippage",
                    "the tiles' own warpage may come out as lippage between neighbours",
                    tile.accuracy().warpage(),
                    limit.value(),
                    limit.source()));
        }
    }

    private static void flatness(List<Finding> findings, TileSpec tile, TakeOffBuilder brief) {
        brief.survey.ifPresent(survey -> {
            for (TileStandard.Flatness rule : brief.standard().flatness(tile)) {
                flatness(findings, survey, rule, brief.practice.units());
            }
        });
    }

    private static void flatness(
            List<Finding> findings, SpotSurvey survey, TileStandard.Flatness rule, PurchaseUnits units) {
        Limit limit = rule.limit();
        String edge = "a straightedge of " + units.lengthText(rule.straightedge());
        Optional<Quantity<Length>> gap = survey.gapUnder(rule.straightedge());
        if (gap.isEmpty()) {
            findings.add(Finding.of(
                    Severity.NOTE,
                    FLATNESS,
                    "not judged under " + edge + ": no three spots of the survey lie in a row within it",
                    limit.source()));
            return;
        }
        boolean over = isOver(gap.get(), limit);
        findings.add(Finding.of(
                over ? Severity.WARNING : Severity.NOTE,
                FLATNESS,
                over
                        ? "the base is out of flat by " + units.thicknessText(gap.get()) + " under " + edge
                                + "; level it first, tile mortar is not for filling"
                        : "the base is flat enough for this tile under " + edge,
                gap.get(),
                limit.value(),
                limit.source()));
    }

    private static void bays(List<Finding> findings, TileLayout layout, JointRule rule, PurchaseUnits units) {
        double wall = LayoutBuilder.longestWall(layout.field());
        Geometry turned = AffineTransformation.rotationInstance(-wall).transform(layout.field());
        for (Polygon bay : FloorRegions.polygons(turned)) {
            Envelope e = bay.getEnvelopeInternal();
            Quantity<Length> longer = Amounts.metres(Math.max(e.getWidth(), e.getHeight()));
            Quantity<Area> area = Amounts.squareMetres(bay.getArea());
            double ratio = Math.max(e.getWidth(), e.getHeight()) / Math.min(e.getWidth(), e.getHeight());
            String which = "a bay of " + units.areaText(area) + " and " + units.lengthText(longer) + " ";
            int parts = rule.bays(longer);
            if (parts > 1) {
                String joints = "; " + (parts - 1) + (parts == 2 ? " joint makes " : " joints make ") + parts
                        + " bays of " + units.lengthText(longer.divide(parts));
                bay(findings, which + "is longer", joints, longer, rule.longestSide(), rule);
            }
            rule.largestArea().ifPresent(largest -> {
                if (bay.getArea() > Si.in("largest", largest, Units.SQUARE_METRE) + 1e-6) {
                    bay(findings, which + "is larger", "", area, largest, rule);
                }
            });
            if (ratio > rule.greatestRatio().orElse(Double.POSITIVE_INFINITY) + 1e-6) {
                Quantity<?> limit = Amounts.of(rule.greatestRatio().orElseThrow(), Units.ONE);
                bay(findings, which + "is longer for its width", "", Amounts.of(ratio, Units.ONE), limit, rule);
            }
        }
    }

    private static void bay(
            List<Finding> findings, String what, String joints, Quantity<?> figure, Quantity<?> limit, JointRule rule) {
        findings.add(Finding.of(
                Severity.WARNING,
                "movement joints",
                what + " than one bay of a " + rule.name() + " may be; part it with a movement joint" + joints,
                figure,
                limit,
                rule.source()));
    }

    private static boolean isOver(Quantity<Length> measured, Limit limit) {
        return Si.in("measured", measured, Units.METRE) > Si.in("limit", limit.value(), Units.METRE) + 1e-9;
    }
}
