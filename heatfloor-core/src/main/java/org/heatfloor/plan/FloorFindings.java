package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.AreaRules;
import org.heatfloor.area.DeadSpace;
import org.heatfloor.area.FloorReadiness;
import org.heatfloor.area.HeatableArea;
import org.heatfloor.area.JointRule;
import org.heatfloor.electrical.ElectricalCode;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.grid.ChannelGrid;
import org.heatfloor.grid.Seam;
import org.heatfloor.grid.SheetSeams;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.MembraneCut;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** What the floor itself gives to say: clearances, dead space, bays between joints, seams of the membrane. */
final class FloorFindings {

    /** Less cable than this in a dead space is not told. */
    private static final double LEAST_METRES = 0.1;

    private FloorFindings() {}

    /** Clearances below the usual, dead space, bays, and the strip along the walls. */
    static List<Finding> of(Brief brief, HeatableArea heatable) {
        List<Finding> out = new ArrayList<>(heatable.findings());
        JointRule rule = brief.jointRule.orElseGet(() -> usual(brief.supply.code()));
        out.addAll(FloorReadiness.of(brief.room, brief.keepOuts, heatable, rule).findings());
        return out;
    }

    /** Cable that lies where no one can stand: the router takes every free channel. */
    static List<Finding> heatedForNothing(HeatableArea heatable, List<LineString> lines) {
        List<Finding> out = new ArrayList<>();
        for (DeadSpace space : heatable.deadSpaces()) {
            double metres = lines.stream()
                    .mapToDouble(line -> OverlayNGRobust.overlay(line, space.shape(), OverlayNG.INTERSECTION)
                            .getLength())
                    .sum();
            if (space.reason() == DeadSpace.Reason.NO_STANDING_ROOM && metres > LEAST_METRES) {
                out.add(Finding.withValue(
                        Severity.NOTE,
                        space.name(),
                        "Cable lies here though no one can stand there; draw a keep-out over the place to leave it cold.",
                        Amounts.metres(metres),
                        AreaRules.STANDING_WIDTH_SOURCE));
            }
        }
        return out;
    }

    /** The rule of the country whose electrical code is in force, for heated floors. */
    static JointRule usual(ElectricalCode code) {
        if (code.name().startsWith("NEC")) {
            return JointRule.heatedNorthAmerica();
        }
        return code.name().startsWith("BS") ? JointRule.heatedUnitedKingdom() : JointRule.heatedScreedEurope();
    }

    /** What a sheet out of phase costs the cables as laid: as measured where a slip was given, else at its worst. */
    static List<Finding> seams(
            Brief brief, StudLattice lattice, MembraneCut cut, List<HeatingCable> cables, List<LineString> lines) {
        ChannelGrid grid = ChannelGrid.of(lattice, brief.room, brief.wallClearance, brief.keepOuts);
        SheetSeams seams = SheetSeams.of(grid, cut.stock(), cut.joints());
        Quantity<Length> thickest = cables.stream()
                .map(HeatingCable::diameter)
                .max((a, b) -> Double.compare(Si.in("diameter", a, Units.METRE), Si.in("diameter", b, Units.METRE)))
                .orElseThrow();
        List<Finding> out = new ArrayList<>(seams.findings());
        if (brief.sheetSlip.isPresent()) {
            for (Seam seam : seams.seams()) {
                out.add(seams.slipped(seam, brief.sheetSlip.get(), thickest, lines));
            }
        } else {
            seams.slippedAtWorst(thickest, lines).ifPresent(out::add);
        }
        return out;
    }
}
