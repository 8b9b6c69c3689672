package org.heatfloor.routing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.Room;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Point;

/** The figures of the handbook's section on the independent check. */
class RouteCheckChapterTest {

    @Test
    void theWorkedExampleComesOutAsPrinted() {
        Room room = Room.ofWkt(DrawnRoutes.ROOM, Units.MILLIMETRE);
        StudLattice lattice = DrawnRoutes.lattice(17, 17, 0);
        Point start = DrawnRoutes.point(0, 136);
        LaidCable cable = DrawnRoutes.cable(20, DrawnRoutes.rows());

        RouteCheckReport report = RouteCheck.builder(room, lattice)
                .wallClearance(Amounts.millimetres(60))
                .minSpacing(Amounts.millimetres(102))
                .minBendRadius(Amounts.millimetres(20))
                .start(start, Units.MILLIMETRE)
                .build()
                .check(List.of(cable));

        assertThat(report.passes()).isTrue();
        CableCheck found = report.cables().get(0);
        assertThat(millimetres(found.leastSeparation().orElseThrow())).isCloseTo(102, within(1e-6));
        assertThat(found.rightAngleTurns()).isEqualTo(8);
        assertThat(8 * 20 * (2 - Math.PI / 2)).isCloseTo(68.7, within(0.05));
        assertThat(1000 * DrawnRoutes.trueLength(20, DrawnRoutes.rows())).isCloseTo(8839.3, within(0.05));
        assertThat(20 * (Math.PI / 2 - 14 * Math.sin(Math.PI / 28))).isCloseTo(0.066, within(0.0005));
        assertThat(millimetres(found.chordShortening())).isCloseTo(0.53, within(0.005));
        assertThat(millimetres(found.laidLength())).isCloseTo(8838.8, within(0.05));
        assertThat(20 - (20 - 17) * Math.sqrt(2) - 13.5).isCloseTo(2.26, within(0.005));
        assertThat(millimetres(found.leastStudGap())).isCloseTo(2.26, within(0.2));
    }

    private static double millimetres(Quantity<Length> length) {
        return length.to(Units.MILLIMETRE).getValue().doubleValue();
    }
}
