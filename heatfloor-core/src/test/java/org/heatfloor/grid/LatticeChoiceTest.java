package org.heatfloor.grid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

class LatticeChoiceTest {

    private static final Membrane MEMBRANE =
            new Membrane(Amounts.millimetres(34), Amounts.millimetres(22), Amounts.millimetres(9), Optional.empty());
    private static final TradeLength WALL = TradeLength.of(Amounts.millimetres(60));
    private static final String ELL = "POLYGON ((0 0, 2410 0, 2410 1640, 2110 1640, 2110 1960, 0 1960, 0 0))";

    @Test
    void no_phase_of_a_fine_sweep_does_better_in_a_rectangle() {
        Room room = Room.ofWkt("POLYGON ((0 0, 1000 0, 1000 700, 0 700, 0 0))", Units.MILLIMETRE);

        StudLattice chosen = LatticeChoice.choose(MEMBRANE, room, WALL, List.of());

        int channels = ChannelGrid.of(chosen, room, WALL, List.of()).freeChannels();
        int best = swept(room, chosen);
        // By hand: floor(880 / 34) + 1 = 26 columns, floor(580 / 34) + 1 = 18 rows; 25 * 18 + 26 * 17 channels.
        assertThat(best).isEqualTo(25 * 18 + 26 * 17);
        assertThat(channels).isEqualTo(best);
    }

    /** Sweeping may find a channel or two more off the walls; that is not worth leaving them. */
    @Test
    void an_ell_keeps_to_its_walls_and_lacks_at_most_a_thousandth() {
        Room room = Room.ofWkt(ELL, Units.MILLIMETRE);

        StudLattice chosen = LatticeChoice.choose(MEMBRANE, room, WALL, List.of());

        double first = (chosen.junction(0, 0).x - 0.060) / 0.034;
        assertThat(first).isCloseTo(Math.rint(first), within(1e-6));
        assertThat(ChannelGrid.of(chosen, room, WALL, List.of()).freeChannels())
                .isGreaterThanOrEqualTo((int) (swept(room, chosen) * (1 - LatticeChoice.WORTH_LEAVING_THE_WALLS)));
    }

    /** No wall of this room runs with another, so only the sweep helps. */
    @Test
    void an_oblique_room_gains_by_the_sweep() {
        Room room = Room.ofWkt("POLYGON ((0 0, 2000 120, 2300 1500, 900 1900, -200 1300, 0 0))", Units.MILLIMETRE);

        StudLattice chosen = LatticeChoice.choose(MEMBRANE, room, WALL, List.of());

        assertThat(ChannelGrid.of(chosen, room, WALL, List.of()).freeChannels())
                .isGreaterThanOrEqualTo((int) (swept(room, chosen) * 0.998));
    }

    /** Most channels of all phases in steps of a millimetre at the chosen angle. */
    private static int swept(Room room, StudLattice chosen) {
        double radians = chosen.angle().to(Units.RADIAN).getValue().doubleValue();
        int best = 0;
        for (int u = 0; u < 34; u++) {
            for (int v = 0; v < 34; v++) {
                Coordinate stud = new Coordinate(
                        u * Math.cos(radians) - v * Math.sin(radians), u * Math.sin(radians) + v * Math.cos(radians));
                StudLattice lattice = StudLattice.of(
                        MEMBRANE, new GeometryFactory().createPoint(stud), Units.MILLIMETRE, chosen.angle());
                best = Math.max(
                        best, ChannelGrid.of(lattice, room, WALL, List.of()).freeChannels());
            }
        }
        return best;
    }

    @Test
    void turns_with_the_room() throws ParseException {
        Polygon straight = (Polygon) wkt(ELL);
        Geometry pan = wkt("POLYGON ((300 1500, 600 1500, 600 1960, 300 1960, 300 1500))");
        StudLattice plain =
                LatticeChoice.choose(MEMBRANE, Room.of(straight, Units.MILLIMETRE), WALL, List.of(cupboard(pan)));
        AffineTransformation turn = AffineTransformation.rotationInstance(Math.toRadians(20));
        Room turnedRoom = Room.of((Polygon) turn.transform(straight), Units.MILLIMETRE);
        List<KeepOut> turnedPan = List.of(cupboard(turn.transform(pan)));

        StudLattice turned = LatticeChoice.choose(MEMBRANE, turnedRoom, WALL, turnedPan);

        assertThat(turned.angle().to(Units.DEGREE).getValue().doubleValue()).isCloseTo(20, within(1e-9));
        assertThat(ChannelGrid.of(turned, turnedRoom, WALL, turnedPan).freeChannels())
                .isEqualTo(ChannelGrid.of(plain, Room.of(straight, Units.MILLIMETRE), WALL, List.of(cupboard(pan)))
                        .freeChannels());
    }

    @Test
    void the_same_input_gives_the_same_lattice() {
        StudLattice first = LatticeChoice.choose(MEMBRANE, Room.ofWkt(ELL, Units.MILLIMETRE), WALL, List.of());
        StudLattice again = LatticeChoice.choose(MEMBRANE, Room.ofWkt(ELL, Units.MILLIMETRE), WALL, List.of());

        assertThat(again.origin().getCoordinate()).isEqualTo(first.origin().getCoordinate());
        assertThat(again.angle()).isEqualTo(first.angle());
    }

    private static KeepOut cupboard(Geometry shape) {
        return KeepOut.of(
                "cupboard",
                KeepOutKind.FIXED_FURNITURE,
                shape,
                Units.MILLIMETRE,
                TradeLength.of(Amounts.millimetres(30)));
    }

    private static Geometry wkt(String text) throws ParseException {
        return new WKTReader().read(text);
    }
}
