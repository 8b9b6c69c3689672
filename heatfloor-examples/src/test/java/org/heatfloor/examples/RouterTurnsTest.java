package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.heatfloor.routing.Effort;
import org.junit.jupiter.api.Test;

/** Turns of the router on the 112 files that force one cable each, beside those of the prototype of this project. */
class RouterTurnsTest {

    private static final String HEAD = "| room | 60 % | 75 % | 90 % | 97 % |\n|---|---|---|---|---|\n";

    /**
     * All exact and clean, in sum at least 5 % fewer turns, nowhere more than 10 % more. Run with
     * {@code -Dheatfloor.rewrite=true} to write the table anew.
     */
    @Test
    void allFilesAreExactWithFewTurns() throws IOException {
        PrintStream nowhere = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
        List<PrototypeComparison.Row> rows =
                new PrototypeComparison(nowhere, Effort.NORMAL).run(Path.of("rooms", "router"));

        assertThat(rows).hasSize(112).allMatch(PrototypeComparison.Row::clean);
        assertThat(rows).allMatch(r -> r.turns() <= 1.1 * r.prototype());
        int ours = rows.stream().mapToInt(PrototypeComparison.Row::turns).sum();
        int theirs = rows.stream().mapToInt(PrototypeComparison.Row::prototype).sum();
        assertThat((double) ours).isLessThanOrEqualTo(0.95 * theirs);
        Chapter.shows(
                "routing.md",
                table(rows)
                        + String.format(
                                Locale.ROOT,
                                "%nIn sum %d turns beside %d, %.1f %% fewer.%n",
                                ours,
                                theirs,
                                100 - 100.0 * ours / theirs));
    }

    private static String table(List<PrototypeComparison.Row> rows) {
        Map<String, StringBuilder> lines = new LinkedHashMap<>();
        for (PrototypeComparison.Row row : rows) {
            String room = row.name().replaceAll("-[0-9]+$", "");
            lines.computeIfAbsent(room, r -> new StringBuilder("| " + r + " |"))
                    .append(String.format(Locale.ROOT, " %d / %d |", row.turns(), row.prototype()));
        }
        return HEAD + String.join("\n", lines.values()) + "\n";
    }
}
