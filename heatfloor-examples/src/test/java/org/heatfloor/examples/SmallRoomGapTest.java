package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableRoute;
import org.heatfloor.routing.Effort;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The router beside a general solver: small rooms with recorded and proved fewest turns. The solver itself is not asked. */
class SmallRoomGapTest {

    private static final String TABLE_HEAD =
            "| room | cable | fewest turns anywhere | fewest turns, none cold | router | gap | solver |";

    static List<RecordedOptima.Row> rows() {
        return RecordedOptima.rows();
    }

    private static RecordedOptima.Row row(String instance, boolean even) {
        return rows().stream()
                .filter(r -> r.instance().equals(instance) && r.even() == even)
                .findFirst()
                .orElseThrow();
    }

    static List<String> instances() {
        return rows().stream().map(RecordedOptima.Row::instance).distinct().toList();
    }

    /** What the solver found is a route: the independent check takes it for exact and clean. */
    @ParameterizedTest
    @MethodSource("rows")
    void recordedRouteIsSound(RecordedOptima.Row row) throws IOException {
        LatticeRoute route = row.laid();
        assertThat(route.turns()).isEqualTo(row.turns()).isGreaterThanOrEqualTo(row.bound());
        assertThat(route.coldShare()).isEqualTo(row.coldShare(), within(1e-4));
        assertThat(route.laidMetres()).isEqualTo(row.room().cableLength(), within(1e-5));
        var report = route.check();
        assertThat(report.passes()).as(report.findings().toString()).isTrue();
        assertThat(report.cables().get(0).rightAngleTurns()).isEqualTo(row.turns());
        if (row.even()) {
            assertThat(row.bound())
                    .isGreaterThanOrEqualTo(row(row.instance(), false).bound());
            // Junctions beside the joint and the very end may be left.
            assertThat(row.coldShare()).isLessThan(0.005);
        }
    }

    /** The router lays the same cable exactly, and never with fewer turns than are proved to be needed. */
    @ParameterizedTest
    @MethodSource("instances")
    void routerKeepsToTheBounds(String instance) throws IOException {
        SmallRoom room = row(instance, false).room();
        // The solver knows of no separate parts.
        assertThat(room.router().parts()).isEqualTo(1);
        RouterCase.Outcome outcome = room.floor().lay(room.router(), room.cable(), Effort.NORMAL);
        assertThat(outcome.clean()).as(outcome.toString()).isTrue();
        CableRoute route = outcome.route().orElseThrow();
        assertThat(Si.in("laid", route.laidLength(), Units.METRE)).isEqualTo(room.cableLength(), within(1e-6));
        int turns = outcome.report().orElseThrow().cables().get(0).rightAngleTurns();
        assertThat(turns).isEqualTo(route.turns());
        assertThat(turns).isGreaterThanOrEqualTo(row(instance, false).bound());
        if (Si.in("cold", route.coldShare(), Units.ONE) == 0) {
            assertThat(turns).isGreaterThanOrEqualTo(row(instance, true).bound());
        }
    }

    /** Run with {@code -Dheatfloor.rewrite=true} to write the table anew. */
    @Test
    void theChapterListsTheGaps() throws IOException {
        Chapter.shows("routing.md", table());
        List<RecordedOptima.Row> rows = rows();
        double[] areas = instances().stream()
                .mapToDouble(SmallRoomGapTest::floorArea)
                .sorted()
                .toArray();
        String squeezed = Files.readString(Path.of("..", "docs", "routing.md")).replaceAll("\\s+", " ");
        assertThat(squeezed)
                .contains(String.format(Locale.ROOT, "(%.1f to %.1f m²,", areas[0], areas[areas.length - 1]))
                .contains("of the " + rows.size() + " questions "
                        + rows.stream().filter(RecordedOptima.Row::proved).count() + " are proved")
                .contains("on " + rows.get(0).machine().replace(", ", " with "));
    }

    private static double floorArea(String instance) {
        try {
            return Si.in("floor", row(instance, false).room().floor().room().area(), Units.SQUARE_METRE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String table() throws IOException {
        StringBuilder out = new StringBuilder(TABLE_HEAD + "\n|---|---|---|---|---|---|---|\n");
        int least = 0;
        int ours = 0;
        for (String instance : instances()) {
            RecordedOptima.Row any = row(instance, false);
            RecordedOptima.Row even = row(instance, true);
            SmallRoom room = any.room();
            CableRoute route = room.floor()
                    .lay(room.router(), room.cable(), Effort.NORMAL)
                    .route()
                    .orElseThrow();
            double cold = Si.in("cold", route.coldShare(), Units.PERCENT);
            least += even.proved() ? even.turns() : 0;
            ours += even.proved() ? route.turns() : 0;
            out.append(String.format(
                    Locale.ROOT,
                    "| %s | %.1f m | %s | %s | %d%s | %+d | %.0f s |%n",
                    instance,
                    room.cableLength(),
                    turns(any),
                    turns(even),
                    route.turns(),
                    cold > 0 ? String.format(Locale.ROOT, ", %.1f %% cold", cold) : "",
                    route.turns() - even.turns(),
                    Math.ceil(even.seconds())));
        }
        out.append(String.format(Locale.ROOT, "| all proved | | | %d | %d | %+d | |%n", least, ours, ours - least));
        return out.toString();
    }

    private static String turns(RecordedOptima.Row row) {
        return row.turns() + (row.proved() ? "" : " (at least " + row.bound() + ")");
    }
}
