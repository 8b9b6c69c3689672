package org.heatfloor.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The compass rule against worked examples of surveying classes, to the printed digit. */
class TraverseTest {

    private static final double[][] SIX = {
        {495.85, 5, 30}, {850.62, 46, 2}, {855.45, 112, 22}, {1020.87, 167, 35}, {1117.26, 263, 44}, {660.08, 304, 51}
    };
    private static final double[][] FOUR = {{80.40, 76, 0}, {46.30, 144, 0}, {72.80, 241, 0}, {68.00, 322, 0}};

    @ParameterizedTest(name = "{0} {1}")
    @CsvFileSource(resources = "/org/heatfloor/area/traverses.csv", numLinesToSkip = 1)
    void a_leg_is_balanced_as_printed(
            String name,
            int leg,
            double length,
            double degrees,
            double minutes,
            double seconds,
            double latitude,
            double departure,
            double adjustedLatitude,
            double adjustedDeparture,
            int digits,
            String provenance) {
        double[][] legs = name.equals("six-course") ? SIX : FOUR;
        Traverse traverse = traverse(legs);
        double digit = 0.51 * Math.pow(10, -digits);

        assertThat(provenance).isNotBlank();
        assertThat(legs[leg - 1]).containsExactly(length, degrees, minutes + seconds / 60);
        assertThat(traverse.y(leg - 1)).isCloseTo(latitude, within(digit));
        assertThat(traverse.x(leg - 1)).isCloseTo(departure, within(digit));
        assertThat(traverse.adjustedY(leg - 1)).isCloseTo(adjustedLatitude, within(digit));
        assertThat(traverse.adjustedX(leg - 1)).isCloseTo(adjustedDeparture, within(digit));
    }

    @Test
    void the_six_course_traverse_fails_to_close_as_printed() {
        Traverse traverse = traverse(SIX);

        assertThat(traverse.perimeter()).isCloseTo(5000.13, within(1e-9));
        assertThat(traverse.misclosureY()).isCloseTo(16.8171, within(5.1e-5));
        assertThat(traverse.misclosureX()).isCloseTo(18.0737, within(5.1e-5));
        assertThat(traverse.misclosure()).isCloseTo(24.6876, within(5.1e-5));
        // Printed as a relative error of 1/200.
        assertThat(traverse.perimeter() / traverse.misclosure()).isCloseTo(200, within(5.0));
    }

    /** The same traverse through the public door, read as centimetres with measured turns. */
    @Test
    void the_six_course_traverse_as_wall_runs_has_the_printed_area() {
        WallRuns runs = WallRuns.start();
        List<Double> azimuths = new ArrayList<>();
        for (double[] leg : SIX) {
            azimuths.add(leg[1] + leg[2] / 60);
        }
        for (int i = 0; i < SIX.length; i++) {
            runs.wall("course " + (i + 1), Amounts.of(SIX[i][0], Units.CENTIMETRE));
            double right = azimuths.get((i + 1) % SIX.length) - azimuths.get(i);
            runs.turn(Amounts.degrees(-(right < -180 ? right + 360 : right)));
        }

        SurveyedRoom surveyed = runs.close();

        assertThat(surveyed.room().area().to(Units.SQUARE_METRE).getValue().doubleValue())
                .isCloseTo(171.52500494, within(5.1e-9));
        assertThat(surveyed.misclosure().to(Units.CENTIMETRE).getValue().doubleValue())
                .isCloseTo(24.6876, within(5.1e-5));
        assertThat(surveyed.misclosureRatio()).hasValueCloseTo(202.54, within(0.01));
        assertThat(surveyed.angularMisclosure().getValue().doubleValue()).isCloseTo(0, within(1e-12));
    }

    /** Ghilani and Wolf, Elementary Surveying, traverse of five courses in feet; recalled, so compared to 0.002 ft only. */
    @Test
    void a_five_course_traverse_is_balanced_as_remembered() {
        Traverse traverse = traverse(new double[][] {
            {647.25, 126, 55 + 17 / 60.0},
            {203.03, 178, 18 + 58 / 60.0},
            {720.35, 15, 31 + 54 / 60.0},
            {610.24, 284, 35 + 20 / 60.0},
            {285.13, 206, 9 + 41 / 60.0}
        });
        double[][] remembered = {
            {517.444, -388.835}, {5.964, -202.948}, {192.881, 694.022}, {-590.571, 153.689}, {-125.718, -255.928}
        };

        assertThat(traverse.misclosure()).isCloseTo(0.08, within(0.005));
        for (int i = 0; i < 5; i++) {
            assertThat(traverse.adjustedX(i)).isCloseTo(remembered[i][0], within(0.002));
            assertThat(traverse.adjustedY(i)).isCloseTo(remembered[i][1], within(0.002));
        }
    }

    private static Traverse traverse(double[][] legs) {
        double[] x = new double[legs.length];
        double[] y = new double[legs.length];
        double[] lengths = new double[legs.length];
        for (int i = 0; i < legs.length; i++) {
            double azimuth = Math.toRadians(legs[i][1] + legs[i][2] / 60);
            x[i] = legs[i][0] * Math.sin(azimuth);
            y[i] = legs[i][0] * Math.cos(azimuth);
            lengths[i] = legs[i][0];
        }
        return new Traverse(x, y, lengths);
    }
}
