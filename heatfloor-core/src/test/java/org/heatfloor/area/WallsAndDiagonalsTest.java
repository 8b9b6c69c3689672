package org.heatfloor.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.heatfloor.finding.Finding;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;

class WallsAndDiagonalsTest {

    @Test
    void an_out_of_square_room_has_the_area_of_its_two_triangles() {
        SurveyedRoom surveyed = WallsAndDiagonals.from("A")
                .wallTo("B", Amounts.metres(4.00))
                .wallTo("C", Amounts.metres(3.10))
                .wallTo("D", Amounts.metres(3.90))
                .wallTo("A", Amounts.metres(3.00))
                .diagonal("A", "C", Amounts.metres(5.00))
                .place();

        // Heron's formula for both triangles, by hand.
        double expected = heron(4.00, 3.10, 5.00) + heron(3.90, 3.00, 5.00);
        assertThat(surveyed.room().area().getValue().doubleValue()).isCloseTo(expected, within(1e-9));
        assertThat(surveyed.findings()).singleElement().satisfies(f -> assertThat(f.message())
                .contains("Nothing checks"));
    }

    @Test
    void readings_that_fit_leave_no_residual() {
        SurveyedRoom surveyed = rectangle(5.0, 5.0);

        assertThat(surveyed.misclosure().getValue().doubleValue()).isCloseTo(0, within(1e-12));
        assertThat(surveyed.findings()).isEmpty();
        assertThat(surveyed.room().area().getValue().doubleValue()).isCloseTo(12, within(1e-9));
    }

    /**
     * One condition, by hand: with small residuals the rectangle 4 × 3 obeys {@code 5 d1 + 5 d2 = 4 a + 4 c + 3 b + 3 d}
     * to first order (both diagonals' squares sum to the four sides' squares, the parallelogram law), so a diagonal 10 mm
     * too long makes a misfit of 0.05 m², and each residual is its coefficient times 0.05 / (2·25 + 2·16 +
     * 2·9) = 0.0005 per unit of coefficient.
     */
    @Test
    void a_single_check_shares_out_the_misfit_and_tells_nothing_apart() {
        SurveyedRoom surveyed = rectangle(5.010, 5.0);

        double unit = 0.05 / (2 * 25 + 2 * 16 + 2 * 9);
        double[] expected = {4 * unit, 3 * unit, 4 * unit, 3 * unit, -5 * unit, -5 * unit};
        for (int i = 0; i < 6; i++) {
            assertThat(surveyed.measurements().get(i).residual().getValue().doubleValue())
                    .as(surveyed.measurements().get(i).name())
                    .isCloseTo(expected[i], within(1.5e-5));
        }
        double first = surveyed.measurements().get(0).standardised();
        assertThat(surveyed.measurements())
                .allSatisfy(m -> assertThat(m.standardised()).isCloseTo(first, within(1e-6)));
    }

    /**
     * Six readings of a braced quadrilateral from F. Zaki, M. El Kady and M. Ahmed, A new treatment for the adjustment of
     * trilateration networks, XVII ISPRS Congress 1992, part B3 (an example of a textbook that the paper names). The paper's
     * corrections were not to be had, so the answer is worked out here another way: by the paper's own single condition,
     * that four points lie in a plane (the Cayley–Menger determinant vanishes), instead of by coordinates.
     */
    @Test
    void published_readings_of_a_braced_quadrilateral_are_adjusted_as_by_their_condition() {
        double[] read = {1341.785, 1937.887, 1511.014, 2167.437, 2775.364, 2173.715};
        SurveyedRoom surveyed = WallsAndDiagonals.from("A")
                .wallTo("B", Amounts.millimetres(read[0]))
                .wallTo("C", Amounts.millimetres(read[1]))
                .wallTo("D", Amounts.millimetres(read[2]))
                .wallTo("A", Amounts.millimetres(read[3]))
                .diagonal("A", "C", Amounts.millimetres(read[4]))
                .diagonal("B", "D", Amounts.millimetres(read[5]))
                .place();

        double[] adjusted = read.clone();
        for (int step = 0; step < 20; step++) {
            double[] slope = new double[6];
            double misfit = flatness(adjusted);
            double squares = 0;
            for (int i = 0; i < 6; i++) {
                double[] up = adjusted.clone();
                double[] down = adjusted.clone();
                up[i] += 0.001;
                down[i] -= 0.001;
                slope[i] = (flatness(up) - flatness(down)) / 0.002;
                misfit += slope[i] * (read[i] - adjusted[i]);
                squares += slope[i] * slope[i];
            }
            for (int i = 0; i < 6; i++) {
                adjusted[i] = read[i] - slope[i] * misfit / squares;
            }
        }
        double[] millimetresPerKilometre = {-3.51, -4.93, -2.79, -4.13, 6.18, 4.72};
        for (int i = 0; i < 6; i++) {
            assertThat(adjusted[i] - read[i]).isCloseTo(millimetresPerKilometre[i] / 1000, within(5.1e-6));
            assertThat(surveyed.measurements()
                            .get(i)
                            .residual()
                            .to(Units.MILLIMETRE)
                            .getValue()
                            .doubleValue())
                    .as(surveyed.measurements().get(i).name())
                    .isCloseTo(adjusted[i] - read[i], within(1e-6));
        }
    }

    /** The Cayley–Menger determinant of A, B, C, D from AB, BC, CD, DA, AC, BD: zero when they lie in a plane. */
    private static double flatness(double[] d) {
        double ab = d[0] * d[0] / 1e6;
        double bc = d[1] * d[1] / 1e6;
        double cd = d[2] * d[2] / 1e6;
        double da = d[3] * d[3] / 1e6;
        double ac = d[4] * d[4] / 1e6;
        double bd = d[5] * d[5] / 1e6;
        return ac * bd * (ab + bc + cd + da - ac - bd)
                + ab * cd * (ac + bd + bc + da - ab - cd)
                + bc * da * (ac + bd + ab + cd - bc - da)
                - ab * bc * ac
                - ab * da * bd
                - bc * cd * bd
                - cd * da * ac;
    }

    @Test
    void a_wrong_tape_reading_is_named_with_its_error() {
        // A regular hexagon of 2 m: long diagonals 4 m, short ones 2 √3 m; one wall is misread by 100 mm.
        double shortDiagonal = 2 * Math.sqrt(3);
        WallsAndDiagonals survey = WallsAndDiagonals.from("A")
                .wallTo("B", Amounts.metres(2))
                .wallTo("C", Amounts.metres(2))
                .wallTo("D", Amounts.metres(2.1))
                .wallTo("E", Amounts.metres(2))
                .wallTo("F", Amounts.metres(2))
                .wallTo("A", Amounts.metres(2));
        for (String pair : new String[] {"AC", "BD", "CE", "DF", "EA", "FB"}) {
            survey.diagonal(pair.substring(0, 1), pair.substring(1), Amounts.metres(shortDiagonal));
        }
        for (String pair : new String[] {"AD", "BE", "CF"}) {
            survey.diagonal(pair.substring(0, 1), pair.substring(1), Amounts.metres(4));
        }

        SurveyedRoom surveyed = survey.place();

        Finding finding = surveyed.findings().get(0);
        assertThat(finding.subject()).isEqualTo("C–D");
        assertThat(finding.message()).contains("100 mm too long");
    }

    /** Corner B lies in the middle of a straight wall and 2 mm are read too much, so A, B and C make no triangle. */
    @Test
    void a_corner_in_a_straight_wall_is_placed_from_a_better_one() {
        SurveyedRoom surveyed = WallsAndDiagonals.from("A")
                .wallTo("B", Amounts.metres(2))
                .wallTo("C", Amounts.metres(2))
                .wallTo("D", Amounts.metres(3))
                .wallTo("E", Amounts.metres(4))
                .wallTo("A", Amounts.metres(3))
                .diagonal("A", "C", Amounts.metres(4.002))
                .diagonal("A", "D", Amounts.metres(5))
                .diagonal("C", "E", Amounts.metres(5))
                .diagonal("B", "D", Amounts.metres(Math.sqrt(13)))
                .diagonal("B", "E", Amounts.metres(Math.sqrt(13)))
                .place();

        assertThat(surveyed.room().area().getValue().doubleValue()).isCloseTo(12, within(0.01));
        assertThat(surveyed.misclosure().getValue().doubleValue()).isLessThan(0.002);
    }

    @Test
    void a_concave_room_is_placed_by_its_inside_diagonals() {
        SurveyedRoom surveyed = WallsAndDiagonals.from("A")
                .wallTo("B", Amounts.metres(4))
                .wallTo("C", Amounts.metres(1))
                .wallTo("D", Amounts.metres(2))
                .wallTo("E", Amounts.metres(2))
                .wallTo("F", Amounts.metres(2))
                .wallTo("A", Amounts.metres(3))
                .diagonal("A", "D", Amounts.metres(Math.sqrt(5)))
                .diagonal("B", "D", Amounts.metres(Math.sqrt(5)))
                .diagonal("D", "F", Amounts.metres(Math.sqrt(8)))
                .place();

        assertThat(surveyed.room().area().getValue().doubleValue()).isCloseTo(8, within(1e-9));
    }

    @Test
    void niches_piers_columns_and_doors_take_their_places() {
        SurveyedRoom surveyed = WallsAndDiagonals.from("A")
                .wallTo("B", Amounts.metres(4))
                .niche("cupboard", Amounts.metres(0.5), Amounts.metres(0.8), Amounts.metres(0.3))
                .door("to the hall", Amounts.metres(2), Amounts.metres(0.9))
                .wallTo("C", Amounts.metres(3))
                .pier("chimney breast", Amounts.metres(1), Amounts.metres(0.6), Amounts.metres(0.2))
                .wallTo("D", Amounts.metres(4))
                .wallTo("A", Amounts.metres(3))
                .column("post", Amounts.metres(1.5), Amounts.metres(1.5), Amounts.metres(0.2), Amounts.metres(0.2))
                .diagonal("A", "C", Amounts.metres(5))
                .place();

        assertThat(surveyed.room().area().getValue().doubleValue())
                .isCloseTo(12 + 0.8 * 0.3 - 0.6 * 0.2 - 0.04, within(1e-9));
        assertThat(surveyed.room().polygon().getNumInteriorRing()).isEqualTo(1);
        assertThat(surveyed.doors()).singleElement().satisfies(door -> {
            assertThat(door.at().getStartPoint().getX()).isCloseTo(2, within(1e-9));
            assertThat(door.at().getLength()).isCloseTo(0.9, within(1e-9));
        });
        assertThatThrownBy(
                        () -> WallsAndDiagonals.from("A").door("to the hall", Amounts.metres(2), Amounts.metres(0.9)))
                .hasMessageContaining("door 'to the hall': no wall before it");
        assertThatThrownBy(() -> WallsAndDiagonals.from("A")
                        .wallTo("B", Amounts.metres(4))
                        .niche("cupboard", Amounts.metres(3.5), Amounts.metres(0.8), Amounts.metres(0.3)))
                .hasMessageContaining("niche 'cupboard'")
                .hasMessageContaining("on wall 'A–B'");
    }

    @Test
    void bad_input_names_corners_and_lengths() {
        assertThatThrownBy(() -> WallsAndDiagonals.from("A")
                        .wallTo("B", Amounts.metres(4))
                        .wallTo("C", Amounts.metres(3))
                        .wallTo("D", Amounts.metres(4))
                        .wallTo("A", Amounts.metres(3))
                        .place())
                .hasMessageContaining("corner 'C', 'D': no two measured lengths")
                .hasMessageContaining("at least 1 diagonals");
        assertThatThrownBy(() -> WallsAndDiagonals.from("A")
                        .wallTo("B", Amounts.metres(4))
                        .wallTo("C", Amounts.metres(3))
                        .wallTo("D", Amounts.metres(4))
                        .wallTo("A", Amounts.metres(3))
                        .diagonal("A", "C", Amounts.metres(8))
                        .place())
                .hasMessageContaining("make no triangle; measure these three lengths again");
        assertThatThrownBy(() -> WallsAndDiagonals.from("A")
                        .wallTo("B", Amounts.metres(4))
                        .place())
                .hasMessageContaining("a wall back to 'A' is expected");
        assertThatThrownBy(() -> WallsAndDiagonals.from("A").wallTo("B", Amounts.metres(0)))
                .hasMessageContaining("wall A–B length: 0 m was given");
    }

    private static SurveyedRoom rectangle(double first, double second) {
        return WallsAndDiagonals.from("A")
                .wallTo("B", Amounts.metres(4))
                .wallTo("C", Amounts.metres(3))
                .wallTo("D", Amounts.metres(4))
                .wallTo("A", Amounts.metres(3))
                .diagonal("A", "C", Amounts.metres(first))
                .diagonal("B", "D", Amounts.metres(second))
                .place();
    }

    private static double heron(double a, double b, double c) {
        double s = (a + b + c) / 2;
        return Math.sqrt(s * (s - a) * (s - b) * (s - c));
    }
}
