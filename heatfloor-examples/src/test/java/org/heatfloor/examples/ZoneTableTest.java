package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.heatfloor.routing.Effort;
import org.junit.jupiter.api.Test;

/** How much closer runs lie in a zone, wanted against got, as the chapter on routing prints it. */
class ZoneTableTest {

    private static final String HEAD =
            "| file | zone | weight | wanted | without | got | turns without | turns |\n|---|---|---|---|---|---|---|---|\n";

    /** Run with {@code -Dheatfloor.rewrite=true} to write the table anew. */
    @Test
    void zonesGetWhatTheChapterSays() throws IOException {
        PrintStream nowhere = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
        List<ZoneTable.Row> rows = new ZoneTable(nowhere, Effort.NORMAL)
                .run(Path.of("rooms", "router"), "R.-k3-(one-ended-60|two-ended-75)");

        // Seven rooms, two lengths, two zones; a room in which the spacings allow nothing would be no row.
        assertThat(rows).hasSize(28).allMatch(ZoneTable.Row::clean);
        double[] shares =
                rows.stream().mapToDouble(r -> r.got() / r.wanted()).sorted().toArray();
        double without = rows.stream()
                .mapToDouble(r -> r.without() / r.wanted())
                .sorted()
                .toArray()[14];
        assertThat(shares[14]).isGreaterThan(0.92);
        assertThat(without).isLessThan(0.75);
        assertThat(rows).filteredOn(r -> r.got() > 1).hasSizeGreaterThanOrEqualTo(27);

        StringBuilder table = new StringBuilder(HEAD);
        rows.forEach(r -> table.append(String.format(
                Locale.ROOT,
                "| %s | %s | %.2f | %.2f | %.2f | %.2f | %d | %d |%n",
                r.room(),
                r.zone(),
                r.asked(),
                r.wanted(),
                r.without(),
                r.got(),
                r.plainTurns(),
                r.turns())));
        table.append(String.format(
                Locale.ROOT,
                "%nOf what is wanted %.0f %% is got in the median and %.0f %% at least; without zones it is %.0f %%. Turns rise"
                        + " from %d to %d.%n",
                100 * shares[14],
                100 * shares[0],
                100 * without,
                rows.stream().mapToInt(ZoneTable.Row::plainTurns).sum(),
                rows.stream().mapToInt(ZoneTable.Row::turns).sum()));
        Chapter.shows("routing.md", table.toString());
    }
}
