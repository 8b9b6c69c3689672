package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A room file that states all there is to state of the heat, from file to summary and plan file. */
class CloakroomTest {

    private final Schoolhouse.Run run = Schoolhouse.of("cloakroom");

    @Test
    void theChapterPrintsWhatTheProgramPrints() throws IOException {
        Matcher block = Pattern.compile(
                        "cloakroom\\.json`\\) the program prints:\\n\\n```text\\n(.*?)\\n```", Pattern.DOTALL)
                .matcher(Files.readString(Path.of("..", "docs", "thermal.md")));
        assertThat(block.find()).isTrue();
        assertThat(heatLines()).isNotEmpty().isEqualTo(block.group(1).lines().toList());
    }

    /** From the line that begins with Heat to the one before the next head. */
    private List<String> heatLines() {
        List<String> lines = run.summary();
        int from = IntStream.range(0, lines.size())
                .filter(i -> lines.get(i).startsWith("Heat"))
                .findFirst()
                .orElseThrow();
        List<String> heat = new ArrayList<>(List.of(lines.get(from)));
        for (int i = from + 1; lines.get(i).startsWith(" "); i++) {
            heat.add(lines.get(i));
        }
        return heat;
    }

    @Test
    void slipsInTheHeatAreTold(@TempDir Path folder) throws IOException {
        String good = Files.readString(Path.of("rooms", "cloakroom.json"));
        assertThat(faults(folder, good.replace("\"07:00\"", "\"7 o'clock\"")))
                .containsExactly(
                        "heat.schedule.periods[0].from: '7 o'clock' was read; a time of day such as '06:30' is expected");
        assertThat(faults(folder, good.replace("EUR", "EURO")))
                .singleElement()
                .asString()
                .contains("heat.tariff.currency");
        assertThat(faults(folder, good.replace("600 0, 600 1300", "1600 0, 1600 1300")))
                .singleElement()
                .asString()
                .contains("heat.limitZones[0]")
                .contains("wider than 1.0 m");
        assertThat(faults(folder, good.replace("\"setback\": \"18 °C\"", "\"setback\": \"29 °C\"")))
                .singleElement()
                .asString()
                .contains("more than the setback");
    }

    private static List<String> faults(Path folder, String text) throws IOException {
        Path file = Files.writeString(folder.resolve("room.json"), text);
        BadRoomFile bad = catchThrowableOfType(BadRoomFile.class, () -> RoomFileReader.read(file));
        return bad.faults().stream().map(f -> f.line("x").substring(3)).toList();
    }

    @Test
    void everyQuestionHasItsAnswer() {
        assertThat(run.status()).isEqualTo(PlanRoom.COMPLETE);
        JsonNode heat = run.json().get("roomHeat");
        JsonNode use = heat.get("use");
        assertThat(use.get("warmings")).hasSize(7).allMatch(w -> w.get("reached")
                .booleanValue());
        double weekly = use.get("energyPerWeek").get("value").doubleValue() / 3.6e6;
        assertThat(use.get("costPerWeek").get("amount").doubleValue()).isCloseTo(0.3 * weekly, within(0.006));
        assertThat(use.get("costPerWeek").get("currency").textValue()).isEqualTo("EUR");
        assertThat(use.has("energyPerSeason")).isTrue();
        JsonNode floor = heat.get("floor");
        assertThat(floor.get("covers").get(0).get("name").textValue()).isEqualTo("mat");
        assertThat(floor.get("seals").get(0).get("keepOut").textValue()).isEqualTo("pan");
        assertThat(floor.has("ifStudsHollow")).isFalse();
        List<String> subjects = new ArrayList<>();
        run.json().get("findings").forEach(f -> subjects.add(f.get("subject").textValue()));
        assertThat(subjects)
                .contains(
                        "under the window",
                        "rest of the floor",
                        "mat",
                        "pan",
                        "comfort",
                        "bare feet",
                        "schedule",
                        "season");
        // What is printed is what the plan file has.
        double max = run.json()
                .get("cables")
                .get(0)
                .get("heat")
                .get("surfaceMax")
                .get("value")
                .doubleValue();
        assertThat(String.join("\n", heatLines())).contains(String.format(java.util.Locale.ROOT, "%.1f °C", max));
    }
}
