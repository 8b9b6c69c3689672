package org.heatfloor.thermal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.heatfloor.quantity.Amounts;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Absolute temperatures and differences, swapped, are refused by the compiler; the same lines unswapped pass. */
class SwapDoesNotCompileTest {

    @TempDir
    Path folder;

    /** Each line once right, once swapped; {@code CELSIUS} and {@code KELVINS} stand for a temperature and a difference. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Climate.of(CELSIUS, Amounts.celsius(10));",
                "Climate.of(Amounts.celsius(10), CELSIUS);",
                "SurfaceLaws.floorCurve().flux(CELSIUS, Amounts.celsius(20));",
                "SurfaceLaws.radiationAndConvection(Optional.of(CELSIUS));",
                "FloorComfort.dissatisfied(CELSIUS);",
                "BarefootFloor.OAK.judge(\"floor\", CELSIUS);",
                "new WeeklySchedule(CELSIUS, List.of());",
                "Quantity<Temperature> t = CELSIUS;",
                "new Thermostat(KELVINS, true);",
                "SeasonEnergy.of(KELVINS, Amounts.of(1, Units.DAY));",
                "Quantity<TemperatureDifference> d = KELVINS;",
            })
    void swapIsRefused(String line) {
        boolean absolute = line.contains("CELSIUS");
        String right = line.replace("CELSIUS", "Amounts.celsius(25)").replace("KELVINS", "Amounts.kelvins(1)");
        String swapped = line.replace("CELSIUS", "Amounts.kelvins(25)").replace("KELVINS", "Amounts.celsius(1)");
        assertThat(faults(right)).isEmpty();
        assertThat(faults(swapped)).isNotEmpty().allSatisfy(fault -> assertThat(fault)
                .contains(absolute ? "TemperatureDifference" : "Temperature")
                .containsAnyOf("incompatible", "cannot be applied", "no suitable"));
    }

    @Test
    void differenceAndTemperatureDoNotAdd() {
        assertThat(faults("Amounts.celsius(20).add(Amounts.celsius(1));")).isEmpty();
        assertThat(faults("Amounts.celsius(20).add(Amounts.kelvins(1));")).isNotEmpty();
    }

    /** What the compiler of the running JDK has against a line; nothing when it passes. */
    private List<String> faults(String line) {
        ToolProvider compiler = ToolProvider.findFirst("javac").orElseThrow();
        String source = "import java.util.*; import javax.measure.Quantity; import javax.measure.quantity.Temperature;"
                + " import org.heatfloor.quantity.*; import org.heatfloor.thermal.*;"
                + " class Snippet { void run() { " + line + " } }";
        String classPath = Stream.of(
                        Climate.class,
                        Quantity.class,
                        NullMarked.class,
                        Amounts.metres(1).getUnit().getClass())
                .map(SwapDoesNotCompileTest::place)
                .collect(Collectors.joining(File.pathSeparator));
        StringWriter said = new StringWriter();
        PrintWriter out = new PrintWriter(said);
        try {
            Path file = Files.writeString(folder.resolve("Snippet.java"), source);
            int status = compiler.run(
                    out, out, "-proc:none", "-classpath", classPath, "-d", folder.toString(), file.toString());
            return status == 0 ? List.of() : List.of(said.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String place(Class<?> type) {
        try {
            return Path.of(type.getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .toString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
