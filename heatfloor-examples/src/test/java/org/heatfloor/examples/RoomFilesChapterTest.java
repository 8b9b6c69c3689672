package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.electrical.ElectricalCode;
import org.heatfloor.takeoff.Notch;
import org.heatfloor.takeoff.TilePattern;
import org.heatfloor.thermal.BarefootFloor;
import org.heatfloor.thermal.SealMaterial;
import org.heatfloor.thermal.SurfaceLimit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code docs/room-files.md} says what is so. */
class RoomFilesChapterTest {

    @TempDir
    private Path folder;

    @Test
    void theSampleIsAGoodRoomFile() throws Exception {
        RoomFile room = RoomFileReader.read(write(sample()));
        assertThat(room.name()).isEqualTo("Porch");
    }

    @Test
    void theFaultShownIsToldSo() throws IOException {
        Path file = write(sample().replace(
                        "\"name\": \"P18\"",
                        "\"name\": \"P10\", \"conductors\": 2, \"length\": \"10 m\","
                                + "\"power\": \"110 W\", \"voltage\": \"230 V\", \"diameter\": \"5 mm\", \"coldLead\": \"3 m\"},"
                                + "{\"name\": \"P18\"")
                .replace("198 W", "275 V"));
        BadRoomFile bad = catchThrowableOfType(BadRoomFile.class, () -> RoomFileReader.read(file));
        assertThat(bad.faults()).hasSize(1);
        assertThat(chapter()).contains("\n" + bad.faults().get(0).line("room.json") + "\n");
    }

    @Test
    void everyWordOfAListStandsInTheChapter() throws IOException {
        Set<String> words = new TreeSet<>();
        words.addAll(RoomFileReader.words(KeepOutKind.values()).keySet());
        words.addAll(RoomFileReader.words(TilePattern.values()).keySet());
        words.addAll(RoomFileReader.words(Notch.values()).keySet());
        words.addAll(RoomFileReader.words(SealMaterial.values()).keySet());
        words.addAll(RoomFileReader.words(SurfaceLimit.values()).keySet());
        words.addAll(RoomFileReader.words(BarefootFloor.values()).keySet());
        words.addAll(HeatReader.DAYS.keySet());
        ElectricalCode.all().forEach(code -> words.add(code.name()));
        for (String word : words) {
            assertThat(chapter()).contains("`" + word + "`");
        }
    }

    @Test
    void theLimitsNamedAreTheOnesInForce() throws IOException {
        assertThat(chapter())
                .contains("more than " + Math.round(RoomFileChecks.ON_WALL_METRES * 1_000) + " mm from")
                .contains(String.format(java.util.Locale.ROOT, "%,d bytes", JsonText.MOST_BYTES))
                .contains("nest " + JsonText.DEEPEST + " deep");
    }

    private Path write(String text) throws IOException {
        return Files.writeString(folder.resolve("room.json"), text);
    }

    private static String sample() throws IOException {
        Matcher block = Pattern.compile("```json\\n(.*?)```", Pattern.DOTALL).matcher(chapter());
        assertThat(block.find()).isTrue();
        return block.group(1);
    }

    private static String chapter() throws IOException {
        return Files.readString(Path.of("../docs/room-files.md"));
    }
}
