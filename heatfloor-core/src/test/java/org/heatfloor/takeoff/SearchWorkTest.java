package org.heatfloor.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.precision.GeometryPrecisionReducer;

/** The membrane search ends within its counted steps on the floors that are hard for it. */
class SearchWorkTest {

    private static Geometry floor(String kind, double degrees) {
        Geometry floor = FloorRegions.rectangle(0, 0, 20, 10);
        if (kind.equals("hall with 50 columns")) {
            for (int i = 0; i < 10; i++) {
                for (int k = 0; k < 5; k++) {
                    double x = 1 + 1.9 * i;
                    double y = 1 + 1.87 * k;
                    floor = floor.difference(FloorRegions.rectangle(x, y, x + 0.33, y + 0.41));
                }
            }
        } else if (kind.equals("washroom")) {
            floor = FloorRegions.rectangle(0, 0, 2.41, 1.96).difference(FloorRegions.rectangle(2.11, 1.64, 2.42, 1.97));
        } else if (kind.equals("corridor")) {
            floor = FloorRegions.rectangle(0, 0, 60, 0.3);
        }
        return GeometryPrecisionReducer.reduce(
                AffineTransformation.rotationInstance(Math.toRadians(degrees)).transform(floor), FloorRegions.GRID);
    }

    private static MembraneCut cut(Geometry floor, double pitch, double width, double length, Work work) {
        MembraneStock stock =
                new MembraneStock(MembraneStock.Kind.SHEET, Amounts.millimetres(width), Amounts.millimetres(length));
        Membrane membrane = new Membrane(
                Amounts.millimetres(pitch),
                Amounts.millimetres(pitch * 0.6),
                Amounts.millimetres(8),
                Optional.of(stock));
        StudLattice lattice = StudLattice.of(membrane, Schoolhouse.point(13, 7), Units.MILLIMETRE, Amounts.degrees(0));
        return CutSearch.best(FloorRegions.polygons(floor), stock, lattice, CutRule.FEWEST, work);
    }

    /** A step more than the budget is one clip or one node; a tenth is far above both. */
    @ParameterizedTest
    @CsvSource({
        "hall with 50 columns, 0, 34, 1224, 612",
        "hall with 50 columns, 17, 25, 1000, 500",
        "corridor, 17, 34, 400, 300",
        "washroom, 45, 25, 150, 100"
    })
    void endsWithinItsSteps(String kind, double degrees, double pitch, double width, double length) {
        Work work = new Work(CutSearch.STEPS);
        MembraneCut cut = cut(floor(kind, degrees), pitch, width, length, work);
        assertThat(work.left()).isGreaterThan(-CutSearch.STEPS / 10);
        assertThat(cut.stockCount()).isGreaterThanOrEqualTo(cut.stripBound());
    }

    /** With hardly any work the floor is still covered, and what is not known is not claimed. */
    @Test
    void hardlyAnyWorkStillCoversTheFloor() {
        Geometry floor = floor("washroom", 17);
        MembraneCut hasty = cut(floor, 34, 408, 306, new Work(1));
        MembraneCut patient = cut(floor, 34, 408, 306, new Work(CutSearch.STEPS));
        assertThat(hasty.pieces().stream()
                        .mapToDouble(p -> p.inRoom().getArea())
                        .sum())
                .isCloseTo(floor.getArea(), org.assertj.core.api.Assertions.within(1e-4));
        assertThat(hasty.stockCount()).isGreaterThanOrEqualTo(patient.stockCount());
        assertThat(hasty.stripBound()).isLessThanOrEqualTo(patient.stockCount());
    }

    @Test
    void aPartTakesFromTheWhole() {
        Work whole = new Work(100);
        Work part = whole.part(4);
        part.take(10);
        assertThat(part.left()).isEqualTo(15);
        assertThat(whole.left()).isEqualTo(90);
        part.take(15);
        assertThat(part.isSpent()).isTrue();
        assertThat(whole.part(0).left()).isEqualTo(75);
    }
}
