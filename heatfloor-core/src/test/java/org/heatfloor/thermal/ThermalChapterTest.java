package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;

/** The figures printed in the chapter on heat. */
class ThermalChapterTest {

    private static final BuildUp BUILD_UP = BuildUp.of(List.of(
            Layer.of("porcelain tile", Amounts.millimetres(9), Amounts.wattsPerMetreKelvin(1.3)),
            Layer.heated(
                    "membrane filled and covered with mortar",
                    Amounts.millimetres(12.6),
                    Amounts.wattsPerMetreKelvin(1.0)),
            Layer.of("mortar under membrane", Amounts.millimetres(2.7), Amounts.wattsPerMetreKelvin(1.0)),
            Layer.of("plywood", Amounts.millimetres(18), Amounts.wattsPerMetreKelvin(0.13)),
            Layer.of("mineral wool between joists", Amounts.millimetres(100), Amounts.wattsPerMetreKelvin(0.037))));
    private static final Climate CLIMATE = Climate.of(Amounts.celsius(22), Amounts.celsius(12));
    private static final EmbeddedCable CABLE = EmbeddedCable.flushWithStuds(
            Amounts.of(11, Units.WATT_PER_METRE), Amounts.millimetres(5), Amounts.millimetres(9));
    private static final SurfaceLaw CURVE = SurfaceLaws.floorCurve();

    private static SteadySection section() {
        return SteadySection.of(BUILD_UP, CLIMATE, CABLE, Amounts.millimetres(102));
    }

    private static FloorField field() {
        return builder().solve();
    }

    private static FloorFieldBuilder builder() {
        List<double[]> path = new ArrayList<>();
        boolean up = true;
        for (double x = 0.08; x < 2.35; x += 0.102) {
            path.add(new double[] {x, up ? 0.08 : 1.88});
            path.add(new double[] {x, up ? 1.88 : 0.08});
            up = !up;
        }
        return FloorField.builder(BUILD_UP, CLIMATE, Floors.rectangle(0, 0, 2.41, 1.96))
                .cable(Floors.run(CABLE, path.toArray(new double[0][])))
                .heatedWithin(Amounts.millimetres(51));
    }

    @Test
    void byHand() {
        double above = 0.009 / 1.3 + 0.0061 / 1.0;
        double below = 0.0092 / 1.0 + 0.018 / 0.13 + 0.1 / 0.037 + 0.17;
        assertThat(above).isCloseTo(0.0130, within(5e-5));
        assertThat(below).isCloseTo(3.020, within(5e-4));
        double film = 11.12;
        double up = 1 / (above + 1 / film);
        assertThat(up).isCloseTo(9.71, within(0.005));
        double plane = (107.8 + up * 22 + 12 / below) / (up + 1 / below);
        assertThat(plane).isCloseTo(32.40, within(0.01));
        assertThat(up * (plane - 22)).isCloseTo(101.0, within(0.1));
        assertThat(22 + 101.1 / film).isCloseTo(31.09, within(0.01));
        assertThat(8.92 * Math.pow(9.09, 0.1)).isCloseTo(11.12, within(0.005));
    }

    @Test
    void inCode() {
        SteadySection section = section();
        assertThat(Floors.value(section.film())).isCloseTo(11.12, within(0.005));
        assertThat(Floors.value(section.upward())).isCloseTo(101.1, within(0.05));
        assertThat(Floors.value(section.downward())).isCloseTo(6.8, within(0.05));
        assertThat(Floors.celsius(section.surfaceMean())).isCloseTo(31.09, within(0.005));
        assertThat(Floors.celsius(section.surfaceMax())).isCloseTo(32.81, within(0.005));
        assertThat(Floors.celsius(section.surfaceMin())).isCloseTo(29.89, within(0.005));
        assertThat(Floors.celsius(section.sheath())).isCloseTo(36.36, within(0.005));
    }

    @Test
    void lawsSideBySide() {
        double[] fluxes = {100.0, 85.4, 86.5, 82.5, 75.7, 78.1, 83.8};
        double[] means = {31.1, 32.3, 32.2, 32.6, 33.4, 33.1, 32.6};
        List<SurfaceLaw> laws = SurfaceLaws.sideBySide(Optional.empty(), Amounts.metres(3.4286));
        for (int i = 0; i < fluxes.length; i++) {
            assertThat(Floors.value(laws.get(i).flux(Amounts.celsius(29), Amounts.celsius(20))))
                    .isCloseTo(fluxes[i], within(0.051));
            SteadySection section = SteadySection.of(BUILD_UP, CLIMATE, laws.get(i), CABLE, Amounts.millimetres(102));
            assertThat(Floors.celsius(section.surfaceMean())).isCloseTo(means[i], within(0.05));
        }
    }

    /** None of these was read itself: formulas from a secondary text, titles and volumes recalled. */
    @Test
    void lawsNotReadAreMarkedFromMemory() {
        assertThat(SurfaceLaws.sideBySide(Optional.empty(), Amounts.metres(3)))
                .allSatisfy(law -> assertThat(law.source().toString()).startsWith("from memory: "));
        for (Material material : Material.all()) {
            if (material.name().contains("wool") || material.name().contains("taken")) {
                assertThat(material.source().toString()).as(material.name()).startsWith("from memory: ");
            }
        }
    }

    @Test
    void wholeFloor() {
        FloorField field = field();
        assertThat(Floors.value(field.supplied())).isCloseTo(480.1, within(0.05));
        assertThat(Floors.value(field.upward())).isCloseTo(449.1, within(0.05));
        assertThat(Floors.value(field.downward())).isCloseTo(31.0, within(0.05));
        assertThat(Floors.celsius(field.heated().mean())).isCloseTo(30.86, within(0.005));
        assertThat(Floors.celsius(field.heated().max())).isCloseTo(32.92, within(0.005));
        assertThat(Floors.celsius(field.floor().min())).isCloseTo(23.24, within(0.005));
        SensorReading sensor = Floors.sensorAt(field, 1.253, 0.98);
        assertThat(Floors.celsius(sensor.reading())).isCloseTo(30.7, within(0.05));
        assertThat(Floors.value(sensor.aboveMean())).isCloseTo(-0.2, within(0.05));
        assertThat(Floors.value(sensor.aboveMax())).isCloseTo(-2.3, within(0.05));
    }

    @Test
    void inTime() {
        HeatUp heatUp = HeatUp.fromCold(BUILD_UP, CLIMATE, CURVE, CABLE, Amounts.millimetres(102));
        assertThat(Floors.value(heatUp.timeToShare(Amounts.of(90, Units.PERCENT))
                                .orElseThrow())
                        / 60)
                .isCloseTo(207, within(0.5));
        assertThat(Floors.value(heatUp.timeTo(Amounts.celsius(28)).orElseThrow()) / 60)
                .isCloseTo(95, within(0.5));
        assertThat(Floors.value(heatUp.fromSetback(Amounts.celsius(24))
                                .timeTo(Amounts.celsius(28))
                                .orElseThrow())
                        / 60)
                .isCloseTo(73, within(0.5));
    }

    @Test
    void underARug() {
        BlockedArea rug = BlockedArea.of(
                BUILD_UP,
                CLIMATE,
                CURVE,
                CABLE,
                Amounts.millimetres(102),
                Amounts.of(0.1, Units.SQUARE_METRE_KELVIN_PER_WATT),
                Amounts.metres(0.8));
        assertThat(Floors.celsius(rug.tileCovered())).isCloseTo(40.6, within(0.05));
        assertThat(Floors.celsius(rug.sheathCovered())).isCloseTo(45.9, within(0.05));
        assertThat(rug.judge("rug", Amounts.celsius(90)).severity()).isEqualTo(Severity.NOTE);
        assertThat(rug.judge("rug", Amounts.celsius(40)).isError()).isTrue();
    }

    @Test
    void rugOnTheFloorAsLaid() {
        FloorField field = builder()
                .cover(new FloorCover(
                        "rug",
                        Floors.rectangle(0.8, 0.4, 1.6, 1.6),
                        Amounts.of(0.1, Units.SQUARE_METRE_KELVIN_PER_WATT)))
                .solve();
        CoveredPart rug = field.covered().get(0);
        assertThat(Floors.celsius(rug.tile().max())).isCloseTo(42.4, within(0.05));
        assertThat(Floors.celsius(rug.tileOpen())).isCloseTo(32.8, within(0.05));
        assertThat(Floors.celsius(rug.sheath(section().sheath()))).isCloseTo(45.8, within(0.05));
    }

    @Test
    void studsInCode() {
        StuddedLayer studs = new StuddedLayer(
                Amounts.millimetres(34),
                Amounts.millimetres(22),
                Amounts.millimetres(9),
                Amounts.wattsPerMetreKelvin(1.0),
                Amounts.wattsPerMetreKelvin(0.2));
        List<Layer> layers = new ArrayList<>();
        layers.add(BUILD_UP.layers().get(0));
        layers.addAll(studs.layers(Amounts.millimetres(3.6)));
        layers.addAll(BUILD_UP.layers().subList(2, 5));
        SteadySection section =
                SteadySection.studded(BuildUp.of(layers), studs, CLIMATE, CURVE, CABLE, Amounts.millimetres(102));
        assertThat(Floors.celsius(section.surfaceMax())).isCloseTo(33.05, within(0.005));
        assertThat(Floors.celsius(section.surfaceMin())).isCloseTo(29.74, within(0.005));
        assertThat(Floors.celsius(section.sheath())).isCloseTo(36.88, within(0.005));
    }

    @Test
    void judgements() {
        SteadySection section = section();
        Finding held = HeatFindings.surface(
                "K31.5", section.surfaceMax(), Amounts.celsius(30), true, SurfaceLimit.OCCUPIED.source());
        assertThat(held.severity()).isEqualTo(Severity.WARNING);
        assertThat(HeatFindings.surface(
                                "K31.5",
                                section.surfaceMax(),
                                SurfaceLimit.OCCUPIED.temperature(),
                                false,
                                SurfaceLimit.OCCUPIED.source())
                        .isError())
                .isTrue();
        assertThat(HeatFindings.surface(
                                "K31.5",
                                section.surfaceMax(),
                                SurfaceLimit.BATH.temperature(),
                                false,
                                SurfaceLimit.BATH.source())
                        .severity())
                .isEqualTo(Severity.NOTE);
        assertThat(HeatFindings.insulationBelow(BUILD_UP, Beneath.guess(CLIMATE))
                        .severity())
                .isEqualTo(Severity.NOTE);
        assertThat(HeatFindings.insulationBelow(
                                BuildUp.of(List.of(Floors.layer(10, 1, true), Floors.layer(100, 2, false))),
                                Beneath.HEATED_ROOM)
                        .severity())
                .isEqualTo(Severity.WARNING);
        Finding short1 = HeatFindings.heatLoss(Amounts.watts(260), Amounts.watts(290));
        assertThat(short1.severity()).isEqualTo(Severity.WARNING);
        assertThat(short1.message()).contains("90 %");
        assertThat(HeatFindings.heatLoss(Amounts.watts(-5), Amounts.watts(0)).message())
                .isEqualTo("The floor takes 5 W from the room and does not heat it.");
        assertThat(HeatFindings.heatLoss(Amounts.watts(449), Amounts.watts(290)).severity())
                .isEqualTo(Severity.NOTE);
        assertThat(HeatFindings.lawRange(CURVE, section.surfaceMean(), CLIMATE.air())
                        .severity())
                .isEqualTo(Severity.NOTE);
        assertThat(HeatFindings.lawRange(CURVE, Amounts.celsius(50), CLIMATE.air())
                        .severity())
                .isEqualTo(Severity.WARNING);
        assertThat(SealMaterial.PETROLATUM
                        .judge("pan", field(), Amounts.metres(1.253), Amounts.metres(0.98))
                        .severity())
                .isEqualTo(Severity.NOTE);
        assertThat(FloorComfort.judge("floor", Amounts.celsius(24), FloorComfort.Category.B)
                        .message())
                .contains("5.5 %");
        assertThat(BarefootFloor.STONE_AND_TILE.highest()).isEqualTo(Amounts.celsius(29.5));
    }

    /** The chapter prints what the code gives, to the digit. */
    @Test
    void theChapterPrintsTheseFigures() throws IOException {
        String chapter = Files.readString(Path.of("..", "docs", "thermal.md")).replaceAll("\\s+", " ");
        SteadySection section = section();
        FloorField field = field();
        SensorReading sensor = Floors.sensorAt(field, 1.253, 0.98);
        HeatUp heatUp = HeatUp.fromCold(BUILD_UP, CLIMATE, CURVE, CABLE, Amounts.millimetres(102));
        List<String> printed = new ArrayList<>(List.of(
                HeatFindings.text(
                        "a film of %.2f W/(m²·K), %.1f W/m² up, %.1f W/m² down, surface mean %.2f °C, above a cable %.2f °C,"
                                + " midway %.2f °C, sheath %.2f °C",
                        Floors.value(section.film()),
                        Floors.value(section.upward()),
                        Floors.value(section.downward()),
                        Floors.celsius(section.surfaceMean()),
                        Floors.celsius(section.surfaceMax()),
                        Floors.celsius(section.surfaceMin()),
                        Floors.celsius(section.sheath())),
                HeatFindings.text(
                        "takes %.1f W, gives %.1f W up and %.1f W down; the heated part is %.2f °C on average and %.2f °C at"
                                + " its hottest, and the coldest corner of the floor %.2f °C",
                        Floors.value(field.supplied()),
                        Floors.value(field.upward()),
                        Floors.value(field.downward()),
                        Floors.celsius(field.heated().mean()),
                        Floors.celsius(field.heated().max()),
                        Floors.celsius(field.floor().min())),
                HeatFindings.text(
                        "reads %.1f °C, %.1f K below the mean and %.1f K below the hottest",
                        Floors.celsius(sensor.reading()),
                        -Floors.value(sensor.aboveMean()),
                        -Floors.value(sensor.aboveMax())),
                HeatFindings.text(
                        "90 %% of its rise after %.0f min; it is at 28 °C after %.0f min, from a setback at 24 °C after %.0f"
                                + " min",
                        Floors.value(heatUp.timeToShare(Amounts.of(90, Units.PERCENT))
                                        .orElseThrow())
                                / 60,
                        Floors.value(heatUp.timeTo(Amounts.celsius(28)).orElseThrow()) / 60,
                        Floors.value(heatUp.fromSetback(Amounts.celsius(24))
                                        .timeTo(Amounts.celsius(28))
                                        .orElseThrow())
                                / 60)));
        for (SurfaceLaw law : SurfaceLaws.sideBySide(Optional.empty(), Amounts.metres(3.4286))) {
            printed.add(HeatFindings.text(
                    "| %.1f | %.1f |",
                    Floors.value(law.flux(Amounts.celsius(29), Amounts.celsius(20))),
                    Floors.celsius(SteadySection.of(BUILD_UP, CLIMATE, law, CABLE, Amounts.millimetres(102))
                            .surfaceMean())));
        }
        for (SurfaceLimit limit : SurfaceLimit.values()) {
            printed.add(HeatFindings.text("%.0f °C", Floors.celsius(limit.temperature())));
        }
        assertThat(printed).allSatisfy(text -> assertThat(chapter).contains(text));
    }

    /** Times measured by a command, kept in a file; the chapter prints them and the ratios between them. */
    @Test
    void theSpeed() throws IOException {
        String chapter = Files.readString(Path.of("..", "docs", "thermal.md")).replaceAll("\\s+", " ");
        Map<String, Double> milliseconds = new HashMap<>();
        try (InputStream in = ThermalChapterTest.class.getResourceAsStream("/org/heatfloor/thermal/field-bench.csv")) {
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .toList()) {
                String[] field = line.split(",", 3);
                assertThat(chapter).contains("| " + field[0] + " | " + field[1] + " |");
                milliseconds.put(field[0], Double.parseDouble(field[1]));
            }
        }
        for (String room : List.of("washroom", "kitchen")) {
            double ratio = milliseconds.get(room + " by the sparse solver")
                    / milliseconds.get(room + " by the cosine transform");
            assertThat(chapter).contains("1/" + Math.round(ratio));
        }
        for (int side : new int[] {256, 512}) {
            double once = milliseconds.get("square of " + side + " × " + side + " cells");
            double more = milliseconds.get("square of " + 2 * side + " × " + 2 * side + " cells");
            assertThat(chapter)
                    .contains(HeatFindings.text("%.2f", more / once))
                    .contains(HeatFindings.text("%.2f", 4 * Math.log(2.0 * side) / Math.log(side)));
        }
    }

    @Test
    void materialsAreFoundByWords() {
        assertThat(Material.named("porcelain tile").orElseThrow().name()).isEqualTo("porcelain tile");
        assertThat(Material.named("membrane filled and covered with mortar")
                        .orElseThrow()
                        .name())
                .isEqualTo("cement mortar");
        assertThat(Material.named("mineral wool between joists").orElseThrow().name())
                .isEqualTo("mineral wool");
        assertThat(Material.named("extruded polystyrene").orElseThrow().name()).isEqualTo("extruded polystyrene");
        assertThat(Material.named("steps")).isEmpty();
        assertThat(BUILD_UP.storageFindings()).hasSize(5).allMatch(f -> f.severity() == Severity.NOTE);
        BuildUp odd = BuildUp.of(
                List.of(Layer.heated("unobtainium", Amounts.millimetres(10), Amounts.wattsPerMetreKelvin(1))));
        assertThat(odd.storageFindings()).singleElement().matches(f -> f.severity() == Severity.WARNING);
    }

    @Test
    void contactResistanceActsLikeALayer() {
        BuildUp contact = BUILD_UP.withContactUnder(0, Amounts.of(0.02, Units.SQUARE_METRE_KELVIN_PER_WATT));
        SteadySection section = SteadySection.of(contact, CLIMATE, CABLE, Amounts.millimetres(102));
        double extra = 0.02 * Floors.value(section.upward());
        assertThat(Floors.celsius(section.plane()) - Floors.celsius(section.surfaceMean()))
                .isCloseTo(extra + 0.013023 * Floors.value(section.upward()), within(1e-3));
        assertThat(Floors.value(section.ripple()))
                .isLessThan(Floors.value(section().ripple()));
    }
}
