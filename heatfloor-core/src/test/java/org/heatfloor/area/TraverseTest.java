package org.heatfloor.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The compass rule against worked examples of surveying texts and classes, to the printed digit. */
class TraverseTest {

    private static final double[][] SIX = {
        {495.85, 5, 30}, {850.62, 46, 2}, {855.45, 112, 22}, {1020.87, 167, 35}, {1117.26, 263, 44}, {660.08, 304, 51}
    };

    /** A printed figure keeps its digits, so that it is compared digit by digit. */
    private record Leg(
            String traverse,
            double length,
            OptionalDouble azimuthDegrees,
            BigDecimal latitude,
            BigDecimal departure,
            BigDecimal adjustedLatitude,
            Optional<BigDecimal> adjustedDeparture,
            boolean fromReadings,
            String notRounded,
            String provenance) {

        /** Commas stand in the last field only. */
        static Leg of(String line) {
            String[] f = line.split(",", 13);
            OptionalDouble azimuth = f[3].isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(
                            Double.parseDouble(f[3]) + Double.parseDouble(f[4]) / 60 + Double.parseDouble(f[5]) / 3600);
            return new Leg(
                    f[0],
                    Double.parseDouble(f[2]),
                    azimuth,
                    new BigDecimal(f[6]),
                    new BigDecimal(f[7]),
                    new BigDecimal(f[8]),
                    f[9].isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(f[9])),
                    f[10].equals("readings"),
                    f[11],
                    f[12]);
        }

        double y() {
            return fromReadings ? latitudeRead() : latitude.doubleValue();
        }

        double x() {
            return fromReadings ? departureRead() : departure.doubleValue();
        }

        double latitudeRead() {
            return length * Math.cos(Math.toRadians(azimuthDegrees.orElseThrow()));
        }

        double departureRead() {
            return length * Math.sin(Math.toRadians(azimuthDegrees.orElseThrow()));
        }
    }

    static Map<String, List<Leg>> published() throws IOException {
        try (InputStream in = TraverseTest.class.getResourceAsStream("/org/heatfloor/area/traverses.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(Leg::of)
                    .collect(Collectors.groupingBy(Leg::traverse, LinkedHashMap::new, Collectors.toList()));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"six-course", "four-course", "bearing traverse", "consecutive coordinates"})
    void a_published_traverse_is_balanced_to_the_printed_digit(String name) throws IOException {
        List<Leg> legs = published().get(name);
        Traverse traverse = new Traverse(
                legs.stream().mapToDouble(Leg::x).toArray(),
                legs.stream().mapToDouble(Leg::y).toArray(),
                legs.stream().mapToDouble(Leg::length).toArray());

        for (int i = 0; i < legs.size(); i++) {
            Leg leg = legs.get(i);
            assertThat(leg.provenance()).isNotBlank();
            if (leg.azimuthDegrees().isPresent()) {
                printed(leg, "latitude", leg.latitudeRead(), leg.latitude());
                printed(leg, "departure", leg.departureRead(), leg.departure());
            }
            printed(leg, "adjusted latitude", traverse.adjustedY(i), leg.adjustedLatitude());
            if (leg.adjustedDeparture().isPresent()) {
                printed(
                        leg,
                        "adjusted departure",
                        traverse.adjustedX(i),
                        leg.adjustedDeparture().orElseThrow());
            }
        }
    }

    /** Rounded to as many decimals as are printed it is the printed figure; where the text did not round, the cut one. */
    private static void printed(Leg leg, String what, double found, BigDecimal printed) {
        RoundingMode mode = leg.notRounded().equals(what) ? RoundingMode.DOWN : RoundingMode.HALF_UP;
        assertThat(new BigDecimal(found).setScale(printed.scale(), mode))
                .as("%s of %s", what, leg)
                .isEqualTo(printed);
    }

    @Test
    void every_published_traverse_is_checked_and_two_figures_were_not_rounded() throws IOException {
        assertThat(published().keySet())
                .containsExactly("six-course", "four-course", "bearing traverse", "consecutive coordinates");
        assertThat(published().values().stream().flatMap(List::stream).filter(leg -> !leg.notRounded()
                        .isEmpty()))
                .hasSize(2);
    }

    /** The same text prints the adjusted lengths; that of its third course, 276.479, swaps two digits of 276.497. */
    @Test
    void the_bearing_traverse_as_wall_runs_has_the_printed_lengths() {
        WallRuns runs = WallRuns.start();
        double[][] legs = {
            {472.68, 248 + 5 / 60.0 + 35 / 3600.0},
            {216.13, 340 + 14 / 60.0},
            {276.52, 45 + 55 / 60.0 + 20 / 3600.0},
            {382.24, 125 + 45 / 3600.0}
        };
        for (int i = 0; i < 4; i++) {
            double right = legs[(i + 1) % 4][1] - legs[i][1];
            runs.wall("course " + (i + 1), Amounts.feet(legs[i][0]))
                    .turn(Amounts.degrees(-Math.IEEEremainder(right, 360)));
        }

        SurveyedRoom surveyed = runs.close();

        double[] printed = {472.715, 216.122, 276.497, 382.237};
        for (int i = 0; i < 4; i++) {
            assertThat(surveyed.measurements()
                            .get(i)
                            .adjusted()
                            .to(Units.FOOT)
                            .getValue()
                            .doubleValue())
                    .isCloseTo(printed[i], within(i == 3 ? 0.001 : 0.00051));
        }
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
