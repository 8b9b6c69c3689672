package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** The judgements of a take-off. */
final class TakeOffFindings {

    private static final double MOST_DIFFERENCE_MM = 1;

    private TakeOffFindings() {}

    static List<Finding> of(TakeOff takeOff, TakeOffBuilder brief) {
        List<Finding> findings = new ArrayList<>();
        takeOff.membraneCut().ifPresent(cut -> membrane(findings, cut));
        brief.bedding.ifPresent(bedding -> beds(findings, bedding, takeOff.mortars()));
        cable(findings, brief);
        takeOff.layout().ifPresent(layout -> findings.addAll(TileFindings.of(layout, brief)));
        takeOff.height().ifPresent(height -> stated(findings, height, brief));
        practice(findings, brief);
        findings.addAll(DoorSteps.findings(takeOff.doorSteps(), brief.stepRule(), brief.practice.units()));
        return findings;
    }

    private static void membrane(List<Finding> findings, MembraneCut cut) {
        String kind = cut.stock().kind() == MembraneStock.Kind.SHEET ? "sheet" : "roll";
        findings.add(Finding.of(
                Severity.NOTE,
                "membrane",
                cut.pieces().size() + " pieces in phase from " + cut.stockCount() + " " + kind
                        + (cut.stockCount() == 1 ? "" : "s") + "; " + cut.proof(),
                Amounts.of(cut.stockCount(), Units.ONE),
                Amounts.of(cut.stripBound(), Units.ONE),
                Source.derived("least of all cuts in strips; by area covered area over the area of one, rounded up")));
    }

    private static void beds(List<Finding> findings, Bedding bedding, List<MortarNeed> mortars) {
        bed(findings, "mortar under membrane", bedding.lowerBed());
        bed(findings, "mortar over membrane", bedding.upperBed());
        for (MortarNeed need : mortars) {
            double inHand = Si.in("in hand", need.inHand(), Units.PERCENT);
            if (Si.in("waste", bedding.waste(), Units.ONE) == 0 && inHand < 5) {
                findings.add(Finding.of(
                        Severity.WARNING,
                        "mortar " + need.use(),
                        "nothing is added for waste and the bags leave only " + QuantityText.number(inHand, 1)
                                + " % in hand; state a waste share or buy a bag more",
                        need.inHand(),
                        Amounts.of(5, Units.PERCENT),
                        Source.commonPractice("5 to 15 % stays in buckets and joints")));
            }
        }
    }

    private static void bed(List<Finding> findings, String subject, Quantity<Length> bed) {
        double metres = Si.in("bed", bed, Units.METRE);
        if (metres < DoorSteps.LEAST_BED_METRES) {
            findings.add(Finding.of(
                    Severity.WARNING,
                    subject,
                    "the bed is too thin after beating-in; take a deeper notch or hold the trowel steeper",
                    bed,
                    Amounts.inches(3.0 / 32),
                    Source.document("ANSI A108.5" + TileStandard.UNDATED, "2.2.2: at least 3/32 in embedded")));
        } else if (metres > DoorSteps.THICKEST_BED_METRES) {
            findings.add(Finding.of(
                    Severity.WARNING,
                    subject,
                    "the bed is too thick for any tile mortar; take a shallower notch",
                    bed,
                    Amounts.inches(0.5),
                    Source.document(
                            "Mortar makers' association bulletin 18, 2020",
                            "ANSI A118.1, A118.4 and A118.15 with suffix H: 3/32 to 1/2 in embedded")));
        } else if (metres > 0.25 * 0.0254) {
            findings.add(Finding.of(
                    Severity.NOTE,
                    subject,
                    "the bed is thicker than ordinary thin bed; buy a mortar for large and heavy tile",
                    bed,
                    Amounts.inches(0.25),
                    Source.document("Mortar makers' association bulletin 18, 2020", "thin bed up to 1/4 in embedded")));
        }
    }

    private static void cable(List<Finding> findings, TakeOffBuilder brief) {
        double height = Si.in("height", brief.membrane.height(), Units.METRE);
        if (brief.cableDiameterMetres > height) {
            findings.add(Finding.of(
                    Severity.WARNING,
                    "cable",
                    "the cable stands above the studs and into the bed over them",
                    Amounts.millimetres(brief.cableDiameterMetres * 1000),
                    brief.membrane.height(),
                    Source.commonPractice("the top of the cable lies flush with the stud tops")));
        }
    }

    private static void stated(List<Finding> findings, FloorHeight height, TakeOffBuilder brief) {
        PurchaseUnits units = brief.practice.units();
        brief.stated.forEach((part, layer) -> {
            double nominal = height.millimetres(part);
            double given = Si.in("thickness", layer.thickness(), Units.MILLIMETRE);
            if (!(Math.abs(nominal - given) <= MOST_DIFFERENCE_MM)) {
                findings.add(Finding.of(
                        Severity.WARNING,
                        "layer '" + layer.layer() + "'",
                        "the build-up states " + units.thicknessText(layer.thickness())
                                + ", membrane, bedding and tile give "
                                + units.thicknessText(Amounts.millimetres(nominal)) + "; correct one of them",
                        Amounts.millimetres(Math.abs(nominal - given)),
                        Amounts.millimetres(MOST_DIFFERENCE_MM),
                        Source.brief("build-up against membrane, bedding and tile")));
            }
        });
    }

    private static void practice(List<Finding> findings, TakeOffBuilder brief) {
        findings.add(Finding.of(
                Severity.NOTE,
                "building practice",
                "limits are those of " + brief.practice + " practice: tiles by " + brief.standard() + ", bays of a "
                        + brief.jointRule().name() + ", steps by "
                        + brief.stepRule().name(),
                brief.jointRule().source()));
    }
}
