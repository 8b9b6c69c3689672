package org.heatfloor.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class TablesTest {

    /** A changed table must be read again against its source; then this sum changes with it. */
    @ParameterizedTest
    @CsvSource({
        "ampacity.csv,5f508f7fa1fbde41",
        "ambient-factor.csv,187e28122d0ed4e6",
        "grouping-factor.csv,81b511b4648e05a5",
        "conductor-resistance.csv,92487220e96ce8e0",
        "voltage-drop.csv,bd296e8714226676",
        "box-volume.csv,ca40881d229ed57c",
        "box-allowance.csv,fd47116362a02785",
        "alloys.csv,15087da73ce97547",
        "code-rules.csv,fadbbbc4c1c6b976"
    })
    void checksum(String table, String expected) throws IOException, NoSuchAlgorithmException {
        try (InputStream in = ElectricalCode.class.getResourceAsStream(table)) {
            assertThat(in).isNotNull();
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(in.readAllBytes());
            assertThat(HexFormat.of().formatHex(digest).substring(0, 16))
                    .as(table)
                    .isEqualTo(expected);
        }
    }

    /** The tables above are all there are. */
    @Test
    void everyTableHasAChecksum() throws IOException {
        java.nio.file.Path folder = java.nio.file.Path.of("src", "main", "resources", "org", "heatfloor", "electrical");
        try (java.util.stream.Stream<java.nio.file.Path> files = java.nio.file.Files.list(folder)) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .containsExactlyInAnyOrder(
                            "ampacity.csv",
                            "ambient-factor.csv",
                            "grouping-factor.csv",
                            "conductor-resistance.csv",
                            "voltage-drop.csv",
                            "box-volume.csv",
                            "box-allowance.csv",
                            "alloys.csv",
                            "code-rules.csv");
        }
    }

    @ParameterizedTest(name = "{0} {1} is {2}")
    @CsvFileSource(resources = "table-spots.csv", delimiter = ';', numLinesToSkip = 1)
    void spot(String kind, String inputs, double expected, String source, String provenance) {
        Given in = new Given(inputs);
        double value =
                switch (kind) {
                    case "ampacity" -> {
                        Ampacity ampacity = in.code(0).ampacity(in.size(1), in.text(2), Amounts.celsius(30), 1);
                        assertThat(ampacity.sources().get(0).kind())
                                .isEqualTo(
                                        provenance.equals("from memory")
                                                ? Source.Kind.FROM_MEMORY
                                                : Source.Kind.DOCUMENT);
                        yield Given.in(ampacity.tabulated(), Units.AMPERE);
                    }
                    case "ambient" ->
                        in.code(0)
                                .ampacity(
                                        in.code(0).conductorSizes().get(1),
                                        in.text(1),
                                        Amounts.celsius(in.number(2)),
                                        1)
                                .ambientFactor();
                    case "grouping" ->
                        in.code(0)
                                .ampacity(in.code(0).conductorSizes().get(1), in.text(1), Amounts.celsius(30), (int)
                                        in.number(2))
                                .groupingFactor();
                    case "resistance" -> {
                        double perMetre = Given.in(ColdLeadDrop.conductorResistance(in.size(0)), Units.OHM_PER_METRE);
                        yield in.number(1) == 75 ? perMetre * 304.8 * (1 + 0.00393 * 55) : perMetre * 1000;
                    }
                    case "drop" ->
                        Given.in(
                                in.code(0).voltageDrop(in.size(1), Amounts.metres(1000), Amounts.amperes(1)),
                                Units.VOLT);
                    case "box" -> Given.in(BoxFill.boxVolume(in.text(0)), Units.CUBIC_INCH);
                    case "allowance" ->
                        Given.in(
                                BoxFill.in(in.code(0))
                                        .conductors(1, in.size(1))
                                        .inBox(Amounts.of(100, Units.CUBIC_INCH))
                                        .required(),
                                Units.CUBIC_INCH);
                    case "alloy" ->
                        Given.in(Alloy.of(in.text(0)).linearResistanceOfSquareMillimetre(), Units.OHM_PER_METRE);
                    default -> throw new IllegalStateException(kind);
                };
        assertThat(value).as(source).isCloseTo(expected, within(1e-9 * expected + 1e-12));
    }

    @Test
    void ambientFactorsFollowTheirEquation() {
        // NEC 310.15(B)(1): I' = I·√((Tc − Ta')/(Tc − 30)), printed to two decimals at the upper end of each band.
        for (Csv.Row row : Csv.read("ambient-factor.csv")) {
            if (row.text("table").equals("NEC")) {
                double rated = Double.parseDouble(row.text("column").replace(" °C", ""));
                double equation = Math.sqrt((rated - row.number("upToCelsius")) / (rated - 30));
                assertThat(row.number("factor")).as("%s", row).isCloseTo(equation, within(0.0051));
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "box-counts.csv", delimiter = ';', numLinesToSkip = 1)
    void boxCountsFollowTheirVolumes(
            String box, int awg14, int awg12, int awg10, int awg8, String source, String provenance) {
        int[] gauges = {14, 12, 10, 8};
        int[] counts = {awg14, awg12, awg10, awg8};
        for (int i = 0; i < 4; i++) {
            ConductorSize size = ConductorSize.ofGauge(gauges[i]);
            ElectricalCode code = ElectricalCode.of("NEC 2023");
            assertThat(BoxFill.in(code)
                            .conductors(counts[i], size)
                            .inBox(BoxFill.boxVolume(box))
                            .fits())
                    .as("%s, %s, %s", source, provenance, size)
                    .isTrue();
            assertThat(BoxFill.in(code)
                            .conductors(counts[i] + 1, size)
                            .inBox(BoxFill.boxVolume(box))
                            .fits())
                    .isFalse();
        }
    }

    @Test
    void bothColumnsOfTheBoxTablesAgree() {
        for (String table : List.of("box-volume.csv", "box-allowance.csv")) {
            for (Csv.Row row : Csv.read(table)) {
                assertThat(row.number("cubicInches") * 16.387064)
                        .as("%s", row)
                        .isCloseTo(row.number("cubicCentimetres"), within(table.contains("volume") ? 1.0 : 0.06));
            }
        }
    }

    @Test
    void gaugesHaveTheirCircularMils() {
        // T. R. Kuphaldt, Lessons in Electric Circuits, vol. I, ch. 12; one circular mil is π/4 square mils.
        int[][] published = {{14, 4107}, {12, 6530}, {10, 10380}, {8, 16510}, {6, 26250}};
        for (int[] row : published) {
            double squareMillimetres = Given.in(ConductorSize.ofGauge(row[0]).crossSection(), Units.SQUARE_MILLIMETRE);
            assertThat(squareMillimetres / (Math.PI / 4 * 0.0254 * 0.0254)).isCloseTo(row[1], within(row[1] * 5e-4));
        }
    }

    @Test
    void nonmetallicCableIsCorrectedFromItsHotterColumn() {
        // 334.80: 12 AWG at 40 °C, 30 A × 0.91 = 27.3 A, used at no more than the 60 °C column's 20 A.
        Ampacity ampacity =
                ElectricalCode.of("NEC 2023").ampacity(ConductorSize.ofGauge(12), "NM-B", Amounts.celsius(40), 1);
        assertThat(Given.in(ampacity.corrected(), Units.AMPERE)).isCloseTo(27.3, within(1e-9));
        assertThat(Given.in(ampacity.usable(), Units.AMPERE)).isEqualTo(20);
        assertThat(ampacity.sources()).anySatisfy(s -> assertThat(s.text()).contains("334.80"));
    }

    @ParameterizedTest(name = "{0} mA: {1} s")
    @CsvSource({"6,5.59", "10,2.69", "20,1.00", "100,0.100", "264,0.025"})
    void classATripTimes(double milliamperes, double seconds) {
        // UL 943; the figures are computed from its formula.
        assertThat(Given.in(LeakageBudget.classATripTime(Amounts.of(milliamperes, Units.MILLIAMPERE)), Units.SECOND))
                .isCloseTo(seconds, within(0.0051));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "edition-map.csv", delimiter = ';', numLinesToSkip = 1)
    void editions(RuleTopic topic, String nec2011, String nec2020, String nec2023, String note) {
        edition("NEC 2011", topic, nec2011);
        edition("NEC 2020", topic, nec2020);
        edition("NEC 2023", topic, nec2023);
        assertThat(note).isNotBlank();
    }

    private static void edition(String code, RuleTopic topic, String clause) {
        if (clause.equals("-")) {
            assertThat(ElectricalCode.of(code).rule(topic))
                    .as("%s %s", code, topic)
                    .isEmpty();
        } else {
            assertThat(ElectricalCode.of(code)
                            .rule(topic)
                            .orElseThrow()
                            .source()
                            .text())
                    .startsWith(code + ", ")
                    .contains(clause);
        }
    }

    /** What was read in one edition only is marked as recalled for the others. */
    @Test
    void clausesNotReadAreMarkedFromMemory() {
        for (String code : List.of("NEC 2011", "NEC 2020", "NEC 2023")) {
            Source.Kind expected = code.equals("NEC 2023") ? Source.Kind.DOCUMENT : Source.Kind.FROM_MEMORY;
            ElectricalCode edition = ElectricalCode.of(code);
            assertThat(edition.dropSource(ConductorSize.ofGauge(12)).kind()).isEqualTo(expected);
            assertThat(edition.ampacity(ConductorSize.ofGauge(12), "NM-B", Amounts.celsius(30), 1)
                            .sources())
                    .anySatisfy(s -> {
                        assertThat(s.text()).contains("334.80");
                        assertThat(s.kind()).isEqualTo(expected);
                    });
        }
        for (String code : List.of("IEC 60364", "BS 7671:2018")) {
            assertThat(ElectricalCode.of(code)
                            .rule(RuleTopic.SCREEN)
                            .orElseThrow()
                            .source()
                            .kind())
                    .isEqualTo(Source.Kind.FROM_MEMORY);
        }
    }

    /** NEC 2023 Table 240.6(A) without the fuse-only ratings, and IEC 60898-1:2002 preferred values. */
    @Test
    void standardRatings() {
        assertThat(ratings("NEC 2023"))
                .isEqualTo("10 15 20 25 30 35 40 45 50 60 70 80 90 100 110 125 150 175 200 225 250 300 350 400 450 500"
                        + " 600 700 800 1000 1200 1600 2000 2500 3000 4000 5000 6000");
        assertThat("10 " + ratings("NEC 2011")).isEqualTo(ratings("NEC 2023"));
        assertThat(ratings("IEC 60364")).isEqualTo("6 10 13 16 20 25 32 40 50 63 80 100 125");
    }

    private static String ratings(String code) {
        return ElectricalCode.of(code).protectiveRatings().stream()
                .map(r -> String.valueOf((int) Given.in(r, Units.AMPERE)))
                .collect(java.util.stream.Collectors.joining(" "));
    }

    @Test
    void tenAmperesIsStandardFrom2023() {
        assertThat(Given.in(ElectricalCode.of("NEC 2023").protectiveRatings().get(0), Units.AMPERE))
                .isEqualTo(10);
        assertThat(Given.in(ElectricalCode.of("NEC 2020").protectiveRatings().get(0), Units.AMPERE))
                .isEqualTo(15);
        assertThat(ElectricalCode.of("NEC 2023").protectiveRatings()).hasSize(38);
        assertThat(ElectricalCode.of("IEC 60364").protectiveRatings()).hasSize(13);
    }

    @Test
    void droppedLimitIsNotApplied() {
        HeatingCable hot = Cables.twin("hot", 10, 600, 120);
        for (String code : List.of("NEC 2011", "NEC 2020", "NEC 2023")) {
            CircuitDesign design = CircuitDesign.of(Cables.supply(code, 120, 5, "12 AWG"), List.of(hot));
            assertThat(design.hasErrors()).as(code).isEqualTo(code.equals("NEC 2011"));
        }
    }
}
