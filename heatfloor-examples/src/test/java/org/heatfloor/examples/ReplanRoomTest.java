package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Re-planning from the command line, and {@code docs/replanning.md}, which shows it. */
class ReplanRoomTest {

    private static final Path PLAN = Path.of("plans", "washroom-plan.json");

    @TempDir
    private Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... args) {
        return ReplanRoom.run(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                args);
    }

    private static String chapter() throws IOException {
        return Files.readString(Path.of("..", "docs", "replanning.md"));
    }

    @ParameterizedTest
    @CsvSource({"washroom-basin-pipe,false", "washroom-floor-box,true"})
    void theChapterShowsWhatIsPrinted(String room, boolean lifts) throws IOException {
        String file = "rooms/changed/" + room + ".json";

        int status = run(file, PLAN.toString(), "15.75 m", folder.toString());

        assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
        assertThat(status).isEqualTo(PlanRoom.COMPLETE);
        String told = out.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
        assertThat(chapter()).contains("ReplanRoom " + file + " plans/washroom-plan.json \"15.75 m\" out\n" + told);
        String drawing = Files.readString(folder.resolve("rest.svg"));
        assertThat(drawing).contains("to lay").contains("laid").contains("cold lead");
        assertThat(drawing.contains("heating cable to lift")).isEqualTo(lifts);
    }

    @Test
    void theFiguresOfTheByHandPartFollowFromTheRoomFile() throws Exception {
        RoomFile room = RoomFileReader.read(Path.of("rooms", "changed", "washroom-floor-box.json"));
        PlannedRoom plan = PlannedRoom.read(PLAN, room);
        double[] box = {1.080, 1.280, 1.500};
        double stud = 0.034;
        assertThat(room.keepOuts()).anySatisfy(k -> {
            assertThat(k.shape().getEnvelopeInternal().getMinY()).isEqualTo(box[0]);
            assertThat(k.shape().getEnvelopeInternal().getMaxY()).isEqualTo(box[1]);
            assertThat(k.shape().getEnvelopeInternal().getMaxX()).isEqualTo(box[2]);
        });
        double head = new org.locationtech.jts.linearref.LengthIndexedLine(plan.line()).extractPoint(15.75 - 0.004).x;
        String by = String.format(
                java.util.Locale.ROOT, "no cable from %.0f to %.0f mm", 1000 * (box[0] - stud), 1000 * (box[1] + stud));
        assertThat(chapter())
                .contains(by)
                .contains("ends at x = 1534 mm")
                .contains("none below 1080 and above 1284 mm");
        assertThat(1000 * (box[2] + stud)).isCloseTo(1534, org.assertj.core.api.Assertions.within(1e-6));
        assertThat(1534 - 1000 * head).isBetween(1365.0, 1375.0);
        assertThat(978 + 102).isEqualTo(1080);
        assertThat(1386 - 102).isEqualTo(1284);
    }

    @Test
    void aCableTooLongIsSaidToBeImpossible() throws IOException {
        int status = run("rooms/washroom.json", PLAN.toString(), "row 3", folder.toString(), "60 m");

        assertThat(status).isEqualTo(PlanRoom.IMPOSSIBLE);
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("Impossible: even with everything lifted");
        assertThat(folder.resolve("rest.svg")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({
        "rooms/washroom.json,plans/washroom-plan.json,half,LAID",
        "rooms/washroom.json,plans/washroom-plan.json,row 0,row: 0",
        "rooms/washroom.json,rooms/washroom.json,3 m,format",
        "rooms/nothing.json,plans/washroom-plan.json,3 m,nothing",
        "rooms/boot-room.json,plans/washroom-plan.json,3 m,cables[0].name"
    })
    void badInputIsNamedAndNothingIsWritten(String room, String plan, String laid, String named) {
        int status = run(room, plan, laid, folder.toString());

        assertThat(status).isEqualTo(PlanRoom.BAD_INPUT);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains(named);
        assertThat(out.toString(StandardCharsets.UTF_8)).isEmpty();
        assertThat(folder.resolve("rest.svg")).doesNotExist();
    }
}
