package org.heatfloor.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.heatfloor.finding.Finding;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;

class SchoolhouseTest {

    private static final TakeOff WASHROOM = Schoolhouse.washroom().build();
    private static final TakeOff KITCHEN = Schoolhouse.kitchen().build();
    private static final TakeOff BOOT_ROOM = Schoolhouse.bootRoom().build();

    private static double millimetres(javax.measure.Quantity<javax.measure.quantity.Length> length) {
        return Si.in("length", length, Units.MILLIMETRE);
    }

    @Test
    void washroomMembraneTakesTheLeastSheets() {
        MembraneCut cut = WASHROOM.membraneCut().orElseThrow();
        assertThat(cut.stockCount()).isEqualTo(7);
        assertThat(cut.isProvenLeast()).isTrue();
        assertThat(cut.pieces()).hasSize(8);
    }

    /** 1250 mm hold 36 studs of 34 mm; a floor of 1250 mm could be covered in one, so two are no proven least. */
    @Test
    void theBoundCountsWhatASheetMeasuresBeyondWholeStuds() {
        Membrane membrane = new Membrane(
                Amounts.millimetres(34),
                Amounts.millimetres(22),
                Amounts.millimetres(9),
                Optional.of(new MembraneStock(
                        MembraneStock.Kind.SHEET, Amounts.millimetres(1250), Amounts.millimetres(612))));
        MembraneCut cut = MembraneCut.of(
                WorkedChecks.room(1250, 612, Units.MILLIMETRE),
                membrane,
                StudLattice.of(membrane, Schoolhouse.point(17, 17), Units.MILLIMETRE, Amounts.degrees(0)));
        assertThat(cut.lowerBound()).isEqualTo(1);
        assertThat(cut.stockCount()).isEqualTo(2);
        assertThat(cut.isProvenLeast()).isFalse();
    }

    @Test
    void washroomMortarsAreBoughtSeparately() {
        assertThat(WASHROOM.mortars()).extracting(MortarNeed::bags).containsExactly(1, 3);
        assertThat(Si.in("dry", WASHROOM.mortars().get(0).dry(), Units.KILOGRAM))
                .isCloseTo(15.389, within(5e-4));
        assertThat(Si.in("dry", WASHROOM.mortars().get(1).dry(), Units.KILOGRAM))
                .isCloseTo(55.507, within(5e-4));
    }

    @Test
    void washroomHeightAgreesWithItsBuildUp() {
        FloorHeight height = WASHROOM.height().orElseThrow();
        assertThat(millimetres(height.lowerBed())).isCloseTo(2.735, within(5e-4));
        assertThat(millimetres(height.upperBed())).isCloseTo(3.646, within(5e-4));
        assertThat(millimetres(height.total())).isCloseTo(24.381, within(5e-4));
        assertThat(millimetres(WASHROOM.doorSteps().get(0).step())).isCloseTo(-1.619, within(5e-4));
        assertThat(WASHROOM.findings()).extracting(Finding::subject).noneMatch(s -> s.startsWith("layer"));
    }

    @Test
    void everySchoolhouseBuildUpAgrees() {
        for (TakeOff takeOff : new TakeOff[] {WASHROOM, KITCHEN, BOOT_ROOM}) {
            assertThat(takeOff.findings()).noneMatch(Finding::isError);
            assertThat(takeOff.findings()).extracting(Finding::subject).noneMatch(s -> s.startsWith("layer"));
        }
    }

    @Test
    void kitchenIsPartedAtItsMovementJoint() {
        assertThat(KITCHEN.layout().orElseThrow().pieces())
                .allMatch(p -> p.shape().getEnvelopeInternal().getMaxX() <= 3.397 + 1e-6
                        || p.shape().getEnvelopeInternal().getMinX() >= 3.403 - 1e-6);
        assertThat(KITCHEN.membraneCut().orElseThrow().pieces())
                .allMatch(p -> p.inRoom().getEnvelopeInternal().getMaxX() <= 3.4 + 1e-6
                        || p.inRoom().getEnvelopeInternal().getMinX() >= 3.4 - 1e-6);
        assertThat(KITCHEN.doorSteps()).extracting(DoorStep::verdict).containsOnly(StepVerdict.FLUSH);
    }

    @Test
    void bootRoomIsOneRoll() {
        assertThat(BOOT_ROOM.membraneCut().orElseThrow().stockCount()).isEqualTo(1);
        assertThat(BOOT_ROOM.layout().orElseThrow().tilesNeeded()).isEqualTo(48);
    }
}
