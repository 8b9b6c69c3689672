package org.heatfloor.grid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

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
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

class ChannelGridTest {

    private static final Membrane MEMBRANE =
            new Membrane(Amounts.millimetres(100), Amounts.millimetres(60), Amounts.millimetres(9), Optional.empty());

    @Test
    void counts_the_junctions_of_a_square_metre_by_hand() throws ParseException {
        Room room = Room.ofWkt("POLYGON ((0 0, 1000 0, 1000 1000, 0 1000, 0 0))", Units.MILLIMETRE);

        ChannelGrid grid = ChannelGrid.of(lattice(-50, -50, 0), room, millimetres(100), List.of());

        assertThat(grid.columns()).isEqualTo(11);
        assertThat(grid.rows()).isEqualTo(11);
        assertThat(grid.junction(0, 0)).isEqualTo(new Coordinate(0, 0));
        assertThat(grid.freeJunctions()).isEqualTo(9 * 9);
        assertThat(grid.freeChannels()).isEqualTo(2 * 9 * 8);
        assertThat(grid.isFree(1, 1)).isTrue();
        assertThat(grid.isFree(0, 1)).isFalse();
        assertThat(grid.isFreeEast(9, 1)).isFalse();
        assertThat(grid.isFree(-1, 40)).isFalse();
    }

    @Test
    void a_room_without_clearance_lets_the_cable_lie_at_the_wall() {
        Room room = Room.ofWkt("POLYGON ((0 0, 1000 0, 1000 1000, 0 1000, 0 0))", Units.MILLIMETRE);

        ChannelGrid grid = ChannelGrid.of(lattice(-50, -50, 0), room, millimetres(0), List.of());

        assertThat(grid.freeJunctions()).isEqualTo(11 * 11);
        assertThat(grid.freeChannels()).isEqualTo(2 * 11 * 10);
    }

    @Test
    void a_quarter_turn_counts_the_same() {
        Room room = Room.ofWkt("POLYGON ((0 0, 1000 0, 1000 1000, 0 1000, 0 0))", Units.MILLIMETRE);

        ChannelGrid turned = ChannelGrid.of(lattice(-50, -50, 90), room, millimetres(100), List.of());

        assertThat(turned.freeChannels()).isEqualTo(2 * 9 * 8);
    }

    @Test
    void a_movement_joint_without_clearance_is_not_crossed() throws ParseException {
        Room room = Room.ofWkt("POLYGON ((0 0, 1000 0, 1000 1000, 0 1000, 0 0))", Units.MILLIMETRE);
        KeepOut joint = KeepOut.of(
                "joint",
                KeepOutKind.MOVEMENT_JOINT,
                wkt("LINESTRING (450 0, 450 1000)"),
                Units.MILLIMETRE,
                millimetres(0));

        ChannelGrid grid = ChannelGrid.of(lattice(-50, -50, 0), room, millimetres(100), List.of(joint));

        assertThat(grid.freeJunctions()).isEqualTo(9 * 9);
        for (int row = 0; row < grid.rows(); row++) {
            assertThat(grid.isFreeEast(4, row)).isFalse();
        }
        assertThat(grid.isFreeNorth(4, 5)).isTrue();
    }

    @Test
    void a_cupboard_without_clearance_lets_the_cable_lie_at_its_edge_only() throws ParseException {
        Room room = Room.ofWkt("POLYGON ((0 0, 1000 0, 1000 1000, 0 1000, 0 0))", Units.MILLIMETRE);
        KeepOut cupboard = KeepOut.of(
                "cupboard",
                KeepOutKind.FIXED_FURNITURE,
                wkt("POLYGON ((300 300, 600 300, 600 600, 300 600, 300 300))"),
                Units.MILLIMETRE,
                millimetres(0));

        ChannelGrid grid = ChannelGrid.of(lattice(-50, -50, 0), room, millimetres(0), List.of(cupboard));

        assertThat(grid.isFree(4, 4)).isFalse();
        assertThat(grid.isFree(3, 3)).isTrue();
        assertThat(grid.isFreeEast(3, 3)).isTrue();
        assertThat(grid.isFreeEast(3, 4)).isFalse();
        assertThat(grid.freeJunctions()).isEqualTo(121 - 4);
    }

    @Test
    void furniture_on_high_legs_takes_nothing_and_on_low_legs_does() throws ParseException {
        Room room = Room.ofWkt("POLYGON ((0 0, 1000 0, 1000 1000, 0 1000, 0 0))", Units.MILLIMETRE);
        KeepOut bench = KeepOut.of(
                "bench",
                KeepOutKind.FURNITURE_ON_LEGS,
                wkt("POLYGON ((250 250, 650 250, 650 650, 250 650, 250 250))"),
                Units.MILLIMETRE,
                millimetres(0));
        StudLattice lattice = lattice(-50, -50, 0);

        assertThat(ChannelGrid.of(lattice, room, millimetres(0), List.of(bench)).freeJunctions())
                .isEqualTo(121 - 16);
        assertThat(ChannelGrid.of(lattice, room, millimetres(0), List.of(bench.withFreeHeight(Amounts.millimetres(60))))
                        .freeJunctions())
                .isEqualTo(121);
        assertThat(ChannelGrid.of(lattice, room, millimetres(0), List.of(bench.withFreeHeight(Amounts.millimetres(59))))
                        .freeJunctions())
                .isEqualTo(121 - 16);
    }

    @Test
    void a_keep_out_outside_is_named() {
        Room room = Room.ofWkt("POLYGON ((0 0, 1000 0, 1000 1000, 0 1000, 0 0))", Units.MILLIMETRE);
        Point far = new GeometryFactory().createPoint(new Coordinate(1200, 500));
        KeepOut pan = KeepOut.round(
                "pan",
                KeepOutKind.TOILET_FLANGE,
                far,
                Units.MILLIMETRE,
                Amounts.millimetres(110),
                TradeLength.studs(7));

        assertThatThrownBy(() -> ChannelGrid.of(lattice(0, 0, 0), room, millimetres(60), List.of(pan)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("keep-out 'pan': a place 145 mm outside the room was given; a place in the room or touching"
                        + " it is expected");
    }

    @Test
    void an_angle_of_more_than_a_turn_is_refused() {
        assertThatThrownBy(() -> lattice(0, 0, 361))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("lattice angle: 361 ° was given; at most 360 ° either way is expected");
    }

    @Test
    void a_pitch_far_too_small_for_the_room_is_refused() {
        Room room = Room.ofWkt("POLYGON ((0 0, 900 0, 900 900, 0 900, 0 0))", Units.METRE);

        assertThatThrownBy(() -> ChannelGrid.of(lattice(0, 0, 0), room, millimetres(60), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("stud pitch: 0.1 m");
    }

    private static StudLattice lattice(double x, double y, double degrees) {
        Point origin = new GeometryFactory().createPoint(new Coordinate(x, y));
        return StudLattice.of(MEMBRANE, origin, Units.MILLIMETRE, Amounts.degrees(degrees));
    }

    private static TradeLength millimetres(double value) {
        return TradeLength.of(Amounts.millimetres(value));
    }

    private static Geometry wkt(String text) throws ParseException {
        return new WKTReader().read(text);
    }
}
