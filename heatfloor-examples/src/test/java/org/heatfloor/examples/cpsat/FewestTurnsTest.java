package org.heatfloor.examples.cpsat;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.heatfloor.examples.LatticeRoute;
import org.heatfloor.examples.SmallRoom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The solver's model against every route there is, in rooms small enough to try them all. */
class FewestTurnsTest {

    @TempDir
    private Path folder = Path.of(".");

    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    private SmallRoom room(int width, int depth, int spacing, double metres, String keepOut) throws IOException {
        Path file = folder.resolve("tiny.json");
        Files.writeString(
                file,
                String.format(
                        Locale.ROOT,
                        """
                        {"format": "room/1", "name": "Tiny (invented)", "coordinateUnit": "mm",
                         "outline": "POLYGON ((0 0, %1$d 0, %1$d %2$d, 0 %2$d, 0 0))", "wallClearance": "2 studs",
                         "keepOuts": [%3$s],
                         "membrane": {"studPitch": "40 mm", "studDiameter": "26 mm", "height": "9 mm",
                          "origin": "POINT (20 20)", "angle": "0 °"},
                         "cable": {"minSpacing": "%4$d studs", "maxSpacing": "9 studs", "minBendRadius": "20 mm",
                          "start": "POINT (0 200)", "catalogue": [{"name": "T", "conductors": 2, "length": "%5$.2f m",
                           "power": "9 W", "voltage": "230 V", "diameter": "5 mm", "coldLead": "1.5 m"}]},
                         "supply": {"voltage": "230 V", "code": "IEC 60364", "feederLength": "12 m",
                          "conductor": "2.5 mm²"}}
                        """,
                        width,
                        depth,
                        keepOut.isEmpty()
                                ? ""
                                : "{\"name\": \"k\", \"kind\": \"fixed-furniture\", \"shape\": \"" + keepOut
                                        + "\", \"clearance\": \"0 mm\"}",
                        spacing,
                        metres));
        return SmallRoom.read(file);
    }

    /** Widths and depths are of the room; four pitches less of it are free. */
    @ParameterizedTest
    @CsvSource({
        "400, 400, 2, 0.55, ''",
        "400, 400, 2, 0.80, ''",
        "400, 400, 2, 0.95, ''",
        "400, 400, 3, 0.55, ''",
        "480, 400, 3, 0.85, ''",
        "520, 440, 4, 0.75, ''",
        "440, 440, 2, 0.80, 'POLYGON ((190 190, 210 190, 210 210, 190 210, 190 190))'",
        "480, 440, 3, 0.80, 'POLYGON ((190 190, 210 190, 210 210, 190 210, 190 190))'",
        "520, 400, 2, 0.85, 'POLYGON ((310 230, 520 230, 520 400, 310 400, 310 230))'"
    })
    void theModelIsExact(int width, int depth, int spacing, double metres, String keepOut) throws IOException {
        SmallRoom room = room(width, depth, spacing, metres, keepOut);
        int fewest = new AllRoutes(room).fewestTurns(9);
        Question.Result result = new Question(room, false, 60, 1).answer(0);
        assertThat(result.bound()).isEqualTo(fewest);
        LatticeRoute route = result.route();
        assertThat(route.turns()).isEqualTo(fewest);
        assertThat(route.check().passes())
                .as(route.check().findings().toString())
                .isTrue();
    }
}
