package org.heatfloor.examples;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.heatfloor.area.TradeLength;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.finding.Finding;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableToLay;
import org.heatfloor.routing.Effort;

/** Room files that force one cable each: turns beside those of the prototype of this project. */
final class PrototypeComparison {

    private static final String FIGURES = "router-prototype-turns.csv";

    private final PrintStream out;
    private final Effort effort;

    PrototypeComparison(PrintStream out, Effort effort) {
        this.out = out;
        this.effort = effort;
    }

    /** One file: our turns, 0 if there is no exact and clean route, and the prototype's. */
    record Row(String name, boolean clean, int turns, int prototype) {}

    List<Row> run(Path folder) throws IOException {
        Map<String, Integer> prototype = prototypeTurns();
        List<Row> rows = new ArrayList<>();
        out.println("| file | answer | turns | prototype | apart | ms |");
        out.println("|---|---|---|---|---|---|");
        int exact = 0;
        int ours = 0;
        int theirs = 0;
        List<String> above = new ArrayList<>();
        List<Double> times = new ArrayList<>();
        List<Path> files = files(folder);
        for (Path file : files) {
            String name = name(file);
            RouterCase.Outcome outcome = lay(file);
            int published = prototype.getOrDefault(name, 0);
            int turns = outcome.clean()
                    ? outcome.report().orElseThrow().cables().get(0).rightAngleTurns()
                    : 0;
            times.add(outcome.milliseconds());
            rows.add(new Row(name, outcome.clean(), turns, published));
            if (outcome.clean() && published > 0) {
                exact++;
                ours += turns;
                theirs += published;
                if (turns > 1.1 * published) {
                    above.add(name);
                }
            }
            out.printf(
                    Locale.ROOT,
                    "| %s | %s | %d | %d | %+.0f %% | %.0f |%n",
                    name,
                    answer(outcome),
                    turns,
                    published,
                    published > 0 && turns > 0 ? 100.0 * (turns - published) / published : 0,
                    outcome.milliseconds());
        }
        times.sort(null);
        out.printf(
                Locale.ROOT,
                "%n%d of %d exact and clean; turns in sum %d beside %d (%+.1f %%); more than 10 %% above in %d: %s%n",
                exact,
                files.size(),
                ours,
                theirs,
                100.0 * (ours - theirs) / Math.max(1, theirs),
                above.size(),
                above);
        if (!times.isEmpty()) {
            out.printf(
                    Locale.ROOT,
                    "time: median %.0f ms, worst %.0f ms (young JVM, first runs included)%n",
                    times.get(times.size() / 2),
                    times.get(times.size() - 1));
        }
        return rows;
    }

    private static String answer(RouterCase.Outcome outcome) {
        if (outcome.clean()) {
            return "exact, clean";
        }
        return outcome.report()
                .map(report -> report.findings().stream()
                        .filter(Finding::isError)
                        .map(Finding::message)
                        .findFirst()
                        .orElse(""))
                .orElse(outcome.answer().toString());
    }

    private RouterCase.Outcome lay(Path file) throws IOException {
        RoomFile room = read(file);
        RouterCase floor = routerCase(room);
        return floor.lay(floor.router(), cable(room), effort);
    }

    static RoomFile read(Path file) throws IOException {
        try {
            return RoomFileReader.read(file);
        } catch (BadRoomFile e) {
            throw new IOException(file + ": " + e.faults(), e);
        }
    }

    /** The first cable of a room file as the router takes it. */
    static CableToLay cable(RoomFile room) {
        HeatingCable offer = room.cable().catalogue().get(0);
        return new CableToLay(offer.name(), offer.conductors(), offer.length(), offer.diameter(), offer.coldLead());
    }

    /** A room file with a fixed lattice as router and check take it. */
    static RouterCase routerCase(RoomFile room) {
        return new RouterCase(
                room.name(),
                room.room(),
                room.wallClearance().orElse(TradeLength.studs(0)),
                room.keepOuts(),
                StudLattice.of(
                        room.membrane(),
                        room.origin().orElseThrow(),
                        Units.METRE,
                        room.angle().orElse(Amounts.degrees(0))),
                room.cable().minSpacing(),
                room.cable().minBendRadius(),
                room.cable().start(),
                room.cable().riser(),
                room.cable().jointLength());
    }

    static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> found = Files.list(folder)) {
            return found.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    static String name(Path file) {
        String name = file.getFileName().toString();
        return name.substring(0, name.length() - ".json".length());
    }

    /** Turns of the prototype by file name without its ending. */
    static Map<String, Integer> prototypeTurns() {
        Map<String, Integer> turns = new TreeMap<>();
        try (InputStream in = Objects.requireNonNull(PrototypeComparison.class.getResourceAsStream(FIGURES), FIGURES);
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (line.startsWith("R")) {
                    String[] cells = line.split(",", -1);
                    turns.put(cells[0], Integer.valueOf(cells[1]));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return turns;
    }
}
