package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every bad room file ends with status 2 and one line a fault that names file, key, what was read and what is expected. */
class BadRoomFilesTest {

    @TempDir
    private Path folder;

    private Path file;
    private Path results;
    private String good = "";

    @BeforeEach
    void prepare() throws IOException {
        file = folder.resolve("room.json");
        results = folder.resolve("results");
        try (InputStream in = BadRoomFilesTest.class.getResourceAsStream("/bad-rooms/good.json")) {
            good = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void theRoomTheBadOnesAreMadeFromIsGood() throws Exception {
        assertThat(RoomFileReader.read(write(good)).name()).isEqualTo("Caretaker's lodge, bathroom");
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(
            resources = "/bad-rooms/faults.csv",
            delimiter = '|',
            quoteCharacter = '~',
            useHeadersInDisplayName = false,
            numLinesToSkip = 2,
            ignoreLeadingAndTrailingWhitespace = false)
    void oneFault(String name, String find, String replace, String key, String says) throws IOException {
        String now = replace == null ? "" : replace;
        int at = good.indexOf(find);
        assertThat(at).as("the edit of '%s' applies", name).isNotNegative();
        write(good.substring(0, at) + now + good.substring(at + find.length()));

        List<String> lines = faultsOf(file.toString(), results.toString());

        assertThat(lines).as(name).hasSize(1);
        assertThat(lines.get(0))
                .startsWith(file + ": " + key + ": ")
                .matches(line -> line.matches("(?s).* (was|were) (read|given)[;, ].*"), "says what was read")
                .contains(says);
    }

    @Test
    void severalFaultsAreToldAtOnce() throws IOException {
        write(good.replace("34 mm", "34,0 mm")
                .replace("\"conductors\": 2", "\"conductors\": 4")
                .replace("IEC 60364", "house rules")
                .replace("\"waste\"", "\"wast\""));

        assertThat(faultsOf(file.toString(), results.toString()))
                .extracting(line -> line.substring(file.toString().length() + 2).split(": ", 2)[0])
                .containsExactlyInAnyOrder(
                        "membrane.studPitch",
                        "cable.catalogue[0].conductors",
                        "supply.code",
                        "tile.waste",
                        "tile.wast");
    }

    @Test
    void aHugeFileIsRefusedUnread() throws IOException {
        write(good + " ".repeat(JsonText.MOST_BYTES));
        assertOneFault("file", "more than 2000000 bytes was read");
    }

    @Test
    void aHugeListIsRefused() throws IOException {
        String entry = "{\"name\": \"A18\", \"conductors\": 2},";
        write(good.replace("\"catalogue\": [", "\"catalogue\": [" + entry.repeat(501)));
        assertOneFault("cable.catalogue", "a list of 503 was read");
    }

    @Test
    void aHugeStringIsRefused() throws IOException {
        write(good.replace("\"A18\"", "\"" + "A".repeat(250_000) + "\""));
        assertOneFault("cable.catalogue[0].name", "something too large");
    }

    @Test
    void aHugeNumberIsRefused() throws IOException {
        write(good.replace("\"weight\": 3", "\"weight\": 3." + "1".repeat(100)));
        assertOneFault("priorityZones[0].weight", "something too large");
    }

    @Test
    void aHugeOutlineIsRefused() throws IOException {
        write(good.replace("2400 0,", "2400 0, ".repeat(2_500)));
        assertOneFault("outline", "1 to 2000 points");
    }

    @Test
    void aFloorOfMillionsOfStudsIsRefused() throws IOException {
        write(good.replace("2400 0, 2400 1900, 0 1900", "99000 0, 99000 99000, 0 99000")
                .replace("POINT (2400 1100)", "POINT (99000 1100)"));
        assertOneFault("outline", "at most 500000 studs");
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "{\"a\":"})
    void deepNestingIsRefused(String opening) throws IOException {
        write(good.replace("\"weight\": 3", "\"weight\": " + opening.repeat(20_000)));
        assertThat(faultsOf(file.toString(), results.toString()))
                .singleElement()
                .asString()
                .contains("priorityZones[0].weight", "nesting to at most 50");
    }

    @Test
    void hundredsOfFaultsStayReadable() throws IOException {
        StringBuilder keys = new StringBuilder();
        for (int i = 0; i < 1_000; i++) {
            keys.append("\"unknown").append(i).append("\": 1, ");
        }
        write(good.replaceFirst("\\{", "{" + keys));
        assertThat(faultsOf(file.toString(), results.toString())).hasSize(100);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  \n", "null", "[]", "\"room/1\"", "42", "POLYGON ((0 0))"})
    void whatIsNoObjectIsRefused(String text) throws IOException {
        write(text);
        assertThat(faultsOf(file.toString(), results.toString()))
                .singleElement()
                .asString()
                .startsWith(file + ": file: ");
    }

    @Test
    void aByteOrderMarkIsRefused() throws IOException {
        write("\uFEFF" + good);
        assertOneFault("file", "a byte order mark was read");
    }

    @Test
    void otherEncodingsAreRefused() throws IOException {
        Files.write(file, good.getBytes(StandardCharsets.ISO_8859_1));
        assertOneFault("file", "bytes that are not UTF-8 was read");
        Files.write(file, good.getBytes(StandardCharsets.UTF_16LE));
        assertThat(faultsOf(file.toString(), results.toString())).hasSize(1);
    }

    @Test
    void aMissingFileAndAFolderAreRefused() throws IOException {
        assertOneFault("file", "no such file");
        Files.createDirectory(file);
        assertOneFault("file", "a folder was read");
    }

    @Test
    void aFolderThatCannotBeWrittenIsRefused() throws IOException {
        write(good);
        Path occupied = Files.writeString(folder.resolve("occupied"), "here already");
        for (Path out : List.of(occupied, occupied.resolve("below"))) {
            assertThat(faultsOf(file.toString(), out.toString()))
                    .singleElement()
                    .asString()
                    .startsWith(file + ": OUTDIR: ")
                    .endsWith("a folder that can be written is expected");
        }
        assertThat(occupied).hasContent("here already");
    }

    @Test
    void theArgumentsAreTwo() throws IOException {
        write(good);
        assertThat(faultsOf(file.toString())).singleElement().asString().contains("ROOM.json OUTDIR is expected");
        assertThat(faultsOf()).hasSize(1);
        assertThat(faultsOf("", results.toString())).hasSize(1);
        assertThat(faultsOf("a\0b", results.toString())).hasSize(1);
    }

    private void assertOneFault(String key, String says) throws IOException {
        assertThat(faultsOf(file.toString(), results.toString()))
                .singleElement()
                .asString()
                .startsWith(file + ": " + key + ": ")
                .contains(says);
    }

    private Path write(String text) throws IOException {
        return Files.writeString(file, text, StandardCharsets.UTF_8);
    }

    /** Runs the program, which must end with status 2, and nothing printed or written; gives the lines of standard error. */
    private List<String> faultsOf(String... args) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = PlanRoom.run(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                args);
        assertThat(status).isEqualTo(PlanRoom.BAD_INPUT);
        assertThat(out.size()).isZero();
        assertThat(results).doesNotExist();
        List<String> lines = err.toString(StandardCharsets.UTF_8).lines().toList();
        assertThat(lines).isNotEmpty().allMatch(line -> line.matches("\\S*: .*(is|are) expected.*"), "no stack trace");
        return lines;
    }
}
