package org.heatfloor.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

class WallRunsTest {

    @Test
    void an_ell_that_closes_is_its_polygon() throws ParseException {
        SurveyedRoom surveyed = WallRuns.start()
                .wall("hall wall", mm(2410))
                .left()
                .wall("window wall", mm(1640))
                .left()
                .wall("shaft front", mm(300))
                .right()
                .wall("shaft side", mm(320))
                .left()
                .wall("basin wall", mm(2110))
                .left()
                .wall("cabinet wall", mm(1960))
                .left()
                .close();

        Polygon expected =
                (Polygon) new WKTReader().read("POLYGON ((0 0, 2.41 0, 2.41 1.64, 2.11 1.64, 2.11 1.96, 0 1.96, 0 0))");
        assertThat(surveyed.room().polygon().symDifference(expected).getArea()).isLessThan(1e-12);
        assertThat(surveyed.misclosureRatio()).isEmpty();
        assertThat(surveyed.findings()).isEmpty();
    }

    @Test
    void a_misclosure_is_reported_and_shared_out() {
        SurveyedRoom surveyed = WallRuns.start()
                .wall("south", mm(4006))
                .left()
                .wall("east", mm(3000))
                .left()
                .wall("north", mm(4000))
                .left()
                .wall("west", mm(3000))
                .close();

        assertThat(metres(surveyed.misclosure())).isCloseTo(0.006, within(1e-12));
        assertThat(surveyed.misclosureRatio()).hasValueCloseTo(14.006 / 0.006, within(1e-6));
        assertThat(metres(surveyed.measurements().get(0).residual())).isCloseTo(-0.006 * 4.006 / 14.006, within(1e-12));
        assertThat(surveyed.findings())
                .singleElement()
                .satisfies(f -> assertThat(f.message()).contains("1 : 2334").contains("wall 'south' or wall 'north'"));
    }

    @Test
    void a_misclosure_beyond_the_ratio_names_the_walls_along_it() {
        WallRuns runs = WallRuns.start()
                .wall("south", mm(4000))
                .left()
                .wall("east", mm(3300))
                .left()
                .wall("north", mm(4000))
                .left()
                .wall("west", mm(3000));

        assertThatThrownBy(runs::close)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("wall runs: they fail to close by 300 mm in 14.3 m (1 : 48); 1 : 200 or better is expected;"
                        + " measure again wall 'east', wall 'west'");
    }

    @Test
    void diagonal_corners_and_measured_angles_close() {
        SurveyedRoom surveyed = WallRuns.start()
                .wall("long", mm(3000))
                .halfLeft()
                .wall("cut corner", mm(1000 * Math.sqrt(2)))
                .halfLeft()
                .wall("right", mm(1000))
                .left()
                .wall("back", mm(4000))
                .turn(Amounts.degrees(90.3))
                .wall("left", mm(2000))
                .turn(Amounts.degrees(90.1))
                .close();

        assertThat(surveyed.angularMisclosure().to(Units.DEGREE).getValue().doubleValue())
                .isCloseTo(0.4, within(1e-9));
        assertThat(surveyed.room().area().getValue().doubleValue()).isCloseTo(8 - 0.5, within(0.01));
    }

    /** A room with a half-round end: 2 m by 3 m and a half circle of radius 1 m. */
    @Test
    void a_round_wall_lies_within_a_tenth_of_a_millimetre_of_its_arc() {
        SurveyedRoom surveyed = WallRuns.start()
                .wall("one side", mm(3000))
                .arc("apse", mm(1000), Amounts.degrees(180))
                .wall("other side", mm(3000))
                .left()
                .wall("end", mm(2000))
                .left()
                .close();

        double exact = 6 + Math.PI / 2;
        double area = surveyed.room().area().getValue().doubleValue();
        assertThat(area).isLessThan(exact).isGreaterThan(exact - Math.PI * 0.0001);
    }

    /** A wall that bulges into the room is drawn on the room's side as well, so the room comes out smaller, not larger. */
    @Test
    void a_wall_bulging_into_the_room_is_drawn_on_the_rooms_side() {
        SurveyedRoom surveyed = WallRuns.start()
                .wall("south", mm(4000))
                .left()
                .wall("east", mm(3000))
                .left()
                .wall("north, right", mm(1000))
                .left()
                .arc("drum", mm(1000), Amounts.degrees(-180))
                .left()
                .wall("north, left", mm(1000))
                .left()
                .wall("west", mm(3000))
                .left()
                .close();

        double exact = 12 - Math.PI / 2;
        double area = surveyed.room().area().getValue().doubleValue();
        assertThat(area).isLessThan(exact).isGreaterThan(exact - Math.PI * 0.0002);
    }

    @Test
    void niches_piers_columns_and_doors_take_their_places() {
        SurveyedRoom surveyed = WallRuns.start()
                .wall("south", mm(4000))
                .niche("cupboard", mm(500), mm(800), mm(300))
                .door("to the hall", mm(2000), mm(900))
                .left()
                .wall("east", mm(3000))
                .pier("chimney breast", mm(1000), mm(600), mm(200))
                .left()
                .wall("north", mm(4000))
                .left()
                .wall("west", mm(3000))
                .column("post", mm(1500), mm(1500), mm(200), mm(200))
                .close();

        assertThat(surveyed.room().area().getValue().doubleValue())
                .isCloseTo(12 + 0.8 * 0.3 - 0.6 * 0.2 - 0.04, within(1e-9));
        assertThat(surveyed.room().polygon().getNumInteriorRing()).isEqualTo(1);
        assertThat(surveyed.doors()).singleElement().satisfies(door -> {
            assertThat(door.name()).isEqualTo("to the hall");
            assertThat(door.at().getLength()).isCloseTo(0.9, within(1e-12));
            assertThat(door.at().getStartPoint().getX()).isCloseTo(2, within(1e-12));
            assertThat(door.at().getStartPoint().getY()).isCloseTo(0, within(1e-12));
        });
    }

    @Test
    void walking_with_the_room_at_the_right_hand_gives_the_same_area() {
        SurveyedRoom surveyed = WallRuns.start()
                .wall("north", mm(4000))
                .niche("cupboard", mm(500), mm(800), mm(300))
                .right()
                .wall("east", mm(3000))
                .right()
                .wall("south", mm(4000))
                .right()
                .wall("west", mm(3000))
                .right()
                .close();

        assertThat(surveyed.room().area().getValue().doubleValue()).isCloseTo(12.24, within(1e-9));
    }

    @Test
    void bad_input_names_the_wall() {
        assertThatThrownBy(() -> WallRuns.start().wall("south", mm(0)))
                .hasMessage("wall 'south' length: 0 mm was given; 0.001 to 1000.0 m is expected");
        assertThatThrownBy(() -> WallRuns.start().wall("south", mm(5)).wall("south", mm(5)))
                .hasMessageContaining("wall 'south': the name was given twice");
        assertThatThrownBy(() -> WallRuns.start().left()).hasMessageContaining("a turn follows no wall");
        assertThatThrownBy(() -> WallRuns.start().wall("south", mm(500)).niche("box", mm(400), mm(200), mm(100)))
                .hasMessageContaining("niche 'box'")
                .hasMessageContaining("wall 'south'");
        assertThatThrownBy(() -> WallRuns.start()
                        .wall("a", mm(1000))
                        .left()
                        .wall("b", mm(1000))
                        .close())
                .hasMessage("wall runs: 2 walls were given; at least three are expected");
        assertThatThrownBy(() -> WallRuns.start()
                        .wall("a", mm(1000))
                        .left()
                        .wall("b", mm(1000))
                        .left()
                        .wall("c", mm(1000))
                        .left()
                        .wall("d", mm(1000))
                        .right()
                        .close())
                .hasMessageContaining("turns: they add up to 180°; 360° to one side is expected");
    }

    @Test
    void angles_out_of_range_are_told_in_degrees() {
        assertThatThrownBy(() -> WallRuns.start().wall("south", mm(500)).turn(Amounts.degrees(180)))
                .hasMessage("turn after wall 'south': 180 ° was given; less than 180 ° either way is expected");
        assertThatThrownBy(() -> WallRuns.start().arc("apse", mm(500), Amounts.degrees(0.2)))
                .hasMessage("wall 'apse' sweep: 0.2 ° was given; 0.5 ° to 350 ° either way is expected");
    }

    @Test
    void crossing_walls_are_both_named() {
        WallRuns runs = WallRuns.start()
                .wall("a", mm(4000))
                .left()
                .wall("b", mm(2000))
                .left()
                .wall("c", mm(2000))
                .left()
                .wall("d", mm(3000))
                .right()
                .wall("e", mm(2000))
                .right()
                .wall("f", mm(1000));

        assertThatThrownBy(runs::close)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("wall 'a' and wall 'd': they cross near 2 m 0 m");
    }

    @Test
    void a_niche_or_pier_that_meets_another_wall_is_named_with_it() {
        WallRuns chimney = WallRuns.start()
                .wall("south", mm(4000))
                .pier("chimney breast", mm(1000), mm(600), mm(3100))
                .left()
                .wall("east", mm(3000))
                .left()
                .wall("north", mm(4000))
                .left()
                .wall("west", mm(3000));
        WallRuns niches = WallRuns.start()
                .wall("south", mm(4000))
                .niche("shelf", mm(1000), mm(600), mm(200))
                .niche("safe", mm(1500), mm(600), mm(300))
                .left()
                .wall("east", mm(3000))
                .left()
                .wall("north", mm(4000))
                .left()
                .wall("west", mm(3000));

        assertThatThrownBy(chimney::close)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("pier 'chimney breast' and wall 'north': they cross near 1 m 3 m");
        assertThatThrownBy(niches::close)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("niche 'shelf'")
                .hasMessageContaining("niche 'safe'");
    }

    @Test
    void columns_that_meet_each_other_or_a_wall_are_named() {
        WallRuns apart = square().column("post", mm(200), mm(200), mm(100), mm(100))
                .column("pipe", mm(250), mm(250), mm(100), mm(100));
        WallRuns atWall = square().column("post", mm(0), mm(200), mm(100), mm(100));

        assertThatThrownBy(apart::close).hasMessageContaining("column 'post' and column 'pipe': they meet");
        assertThatThrownBy(atWall::close)
                .hasMessageContaining("column 'post': it does not stand inside the walls, clear");
    }

    private static WallRuns square() {
        return WallRuns.start()
                .wall("a", mm(1000))
                .left()
                .wall("b", mm(1000))
                .left()
                .wall("c", mm(1000))
                .left()
                .wall("d", mm(1000));
    }

    @Test
    void a_column_outside_is_named() {
        WallRuns runs = WallRuns.start()
                .wall("a", mm(1000))
                .left()
                .wall("b", mm(1000))
                .left()
                .wall("c", mm(1000))
                .left()
                .wall("d", mm(1000))
                .column("post", mm(1500), mm(200), mm(100), mm(100));

        assertThatThrownBy(runs::close).hasMessageContaining("column 'post': it does not stand inside the walls");
    }

    @Test
    void a_unit_that_is_missing_is_refused_where_it_is_read() {
        assertThatThrownBy(() -> QuantityText.read("2410", Units.METRE)).hasMessageContaining("number, space, unit");
    }

    private static Quantity<Length> mm(double value) {
        return Amounts.millimetres(value);
    }

    private static double metres(Quantity<Length> length) {
        return length.to(Units.METRE).getValue().doubleValue();
    }
}
