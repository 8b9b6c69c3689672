package org.heatfloor.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.heatfloor.plan.PlanChecks.metres;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.finding.Finding;
import org.heatfloor.routing.Effort;
import org.junit.jupiter.api.Test;

/** The figures of the chapter on planning, read from its tables and recomputed. */
class PlanChapterTest {

    private static final Path CHAPTER = Path.of("..", "docs", "plan.md");

    private final SchoolPlans.Planned washroom = SchoolPlans.washroom();
    private final double area =
            PlanChecks.reachAreas(washroom.brief(), washroom.plan().lattice()).get(0);
    private final double longest =
            metres(washroom.plan().fittingLengths().get(0).longest());

    @Test
    void theTableOfFiguresIsRight() throws IOException {
        Map<String, Double> expected = new TreeMap<>();
        expected.put("least spacing", 102.0);
        expected.put("greatest spacing", 170.0);
        expected.put("shares of a stud square in A", area / (0.034 * 0.034));
        expected.put("A", area);
        expected.put("A/s − s", area / 0.102 - 0.102);
        expected.put("longest cable, corners taken off", longest);
        expected.put("shortest cable, at 1.02 × 170 mm", area / (0.170 * 1.02));
        Map<String, String> printed = new TreeMap<>();
        rows("figure").forEach(row -> printed.put(row.get(0), row.get(1)));
        assertThat(printed.keySet()).isEqualTo(expected.keySet());
        expected.forEach((name, value) -> assertPrinted(name, printed.get(name), value));
        assertThat(washroom.brief()
                        .rules
                        .minSpacing()
                        .with(washroom.brief().membrane.studPitch()))
                .satisfies(s -> assertThat(metres(s)).isEqualTo(3 * 0.034));
        assertThat(metres(washroom.plan().cables().get(0).route().capacity())).isEqualTo(longest);
    }

    @Test
    void theTableOfCablesIsRight() throws IOException {
        List<List<String>> rows = rows("cable");
        assertThat(rows).hasSize(7);
        String chosen = washroom.plan().cables().get(0).cable().name();
        for (List<String> row : rows) {
            HeatingCable cable = washroom.brief().catalogue.stream()
                    .filter(c -> c.name().equals(row.get(0)))
                    .findFirst()
                    .orElseThrow();
            assertPrinted(row.get(0) + " spacing", row.get(1), 1000 * area / metres(cable.length()));
            double output = PlanChecks.output(washroom.brief(), area, cable);
            if (!row.get(2).isEmpty()) {
                assertPrinted(row.get(0) + " heat", row.get(2), output);
            }
            assertThat(row.get(3)).as(row.get(0)).isEqualTo(verdict(cable, output, chosen));
        }
    }

    private String verdict(HeatingCable cable, double output, String chosen) {
        if (cable.name().equals(chosen)) {
            return "chosen";
        }
        if (metres(cable.length()) > longest) {
            return "too long";
        }
        if (!PlanChecks.isSpacingAllowed(washroom.brief(), area, cable)) {
            return "too far apart";
        }
        return output < 290 ? "too little heat" : "longer than needed";
    }

    @Test
    void theFiguresInTheTextAreRight() throws IOException {
        String text = Files.readString(CHAPTER).replaceAll("\\s+", " ");
        assertThat(text).contains("3271 × 0.034² = " + number(3271 * 0.034 * 0.034, 3) + " m²");
        assertThat(text).contains(number(area, 4) + "/0.102 − 0.102 = " + number(area / 0.102 - 0.102, 2) + " m");
        assertThat(text).contains("63 − " + number(longest, 2) + " = " + number(63 - longest, 2) + " m too long");
        String smaller = washroom.plan().findings().stream()
                .filter(f -> f.subject().equals("K28"))
                .map(Finding::message)
                .findFirst()
                .orElseThrow();
        assertThat(smaller).contains("it gives the room 283 W");
        assertThat(text).contains("it gives 283 W");
        Plan wrong = Planner.plan(
                Schoolrooms.wrongCable().rules(Schoolrooms.washroomRules()).build(), Effort.QUICK);
        assertThat(wrong.findings().get(0).message()).contains(number(63 - longest, 2) + " m");
    }

    private static void assertPrinted(String name, String printed, double value) {
        int point = printed.indexOf('.');
        assertThat(printed).as(name).isEqualTo(number(value, point < 0 ? 0 : printed.length() - point - 1));
    }

    private static String number(double value, int digits) {
        return String.format(Locale.ROOT, "%." + digits + "f", value);
    }

    /** Rows of the table whose first heading is given. */
    private static List<List<String>> rows(String heading) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        boolean inside = false;
        for (String line : Files.readAllLines(CHAPTER)) {
            if (line.startsWith("| " + heading + " |")) {
                inside = true;
            } else if (!line.startsWith("|")) {
                inside = false;
            } else if (inside && !line.startsWith("|---")) {
                List<String> cells = new ArrayList<>();
                for (String cell : line.substring(1, line.length() - 1).split("\\|", -1)) {
                    cells.add(cell.strip());
                }
                rows.add(cells);
            }
        }
        return rows;
    }
}
