package org.heatfloor.examples;

import java.util.List;
import java.util.Optional;
import org.heatfloor.area.TradeLength;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.plan.Brief;
import org.heatfloor.plan.CableRules;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;

/** From a room file to a brief; what the library requires and the file leaves out is filled in and told. */
final class Briefs {

    private static final Source HALF_SPACING =
            Source.commonPractice("half the least spacing from a wall where nothing else is stated");

    private Briefs() {}

    static Brief of(RoomFile file) {
        RoomFile.Cable cable = file.cable();
        Brief.Builder brief = Brief.builder(file.name())
                .room(file.room(), wallClearance(file))
                .membrane(file.membrane())
                .rules(new CableRules(
                        cable.minSpacing(),
                        cable.maxSpacing(),
                        cable.minBendRadius(),
                        cable.start(),
                        cable.riser(),
                        cable.jointLength(),
                        cable.cableHeight(),
                        cable.floorSensor()))
                .catalogue(cable.catalogue())
                .supply(file.supply())
                .installation(file.installation());
        cable.lengthTolerance().ifPresent(brief::lengthTolerance);
        file.jointRule().ifPresent(brief::jointRule);
        file.sheetSlip().ifPresent(brief::sheetSlip);
        file.keepOuts().forEach(brief::keepOut);
        file.doors().forEach(brief::door);
        file.priorityZones().forEach(brief::priorityZone);
        file.origin()
                .ifPresent(origin -> brief.lattice(StudLattice.of(
                        file.membrane(), origin, Units.METRE, file.angle().orElse(Amounts.degrees(0)))));
        if (file.buildUp().isPresent() && file.climate().isPresent()) {
            brief.heat(file.buildUp().get(), file.climate().get());
        }
        file.heat().ifPresent(brief::heatDetails);
        file.tile().ifPresent(brief::tile);
        file.bedding().ifPresent(brief::bedding);
        return brief.build();
    }

    static TradeLength wallClearance(RoomFile file) {
        return file.wallClearance().orElseGet(() -> {
            double least = RoomFileReader.millimetres(
                    file.cable().minSpacing().with(file.membrane().studPitch()));
            return TradeLength.of(Amounts.millimetres(least / 2));
        });
    }

    /** What was filled in or could not be used, told as findings. */
    static List<Finding> assumptions(RoomFile file) {
        Optional<Finding> wall = file.wallClearance().isPresent()
                ? Optional.empty()
                : Optional.of(Finding.of(
                        Severity.NOTE,
                        "wall",
                        "No wallClearance is stated; "
                                + QuantityText.write(
                                        wallClearance(file)
                                                .with(file.membrane().studPitch())
                                                .to(Units.MILLIMETRE),
                                        1)
                                + " is kept.",
                        HALF_SPACING));
        boolean half = file.buildUp().isPresent() != file.climate().isPresent();
        Optional<Finding> heat = half
                ? Optional.of(Finding.of(
                        Severity.NOTE,
                        file.climate().isPresent() ? "climate" : "buildUp",
                        "Temperatures need both buildUp and climate; only one is stated, so it is not used.",
                        Source.brief("buildUp and climate")))
                : Optional.empty();
        return List.of(wall, heat).stream().flatMap(Optional::stream).toList();
    }
}
