package org.heatfloor.examples;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Finding;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableRoute;
import org.heatfloor.routing.CableToLay;
import org.heatfloor.routing.Effort;
import org.heatfloor.routing.RouteOutcome;
import org.heatfloor.routing.Router;

/**
 * The router on invented rooms: both kinds of cable, lengths of 55, 60, 75 and 90 % of the bound on the floor that rows can
 * reach and 97 % of the longest route found. Rooms whose cold lead reaches no place to begin are listed and not counted.
 */
final class RandomRoomTable {

    private static final double[] SHARES = {0.55, 0.60, 0.75, 0.90};
    private static final String LONGEST = "97 % of longest";

    private final PrintStream out;
    private final Effort effort;
    private final Path misses;
    private final Map<String, Tally> byLength = new TreeMap<>();
    private final Map<String, Tally> byKind = new TreeMap<>();
    private final Tally all = new Tally();
    private final List<Double> shareOfBound = new ArrayList<>();
    private final List<Double> shareOfRows = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();

    /** Sums over the cables of one row of the table. */
    private static final class Tally {
        private int cables;
        private int exact;
        private int violations;
        private double coldShare;
        private long turns;
        private final List<Double> milliseconds = new ArrayList<>();
    }

    RandomRoomTable(PrintStream out, Effort effort, Path misses) {
        this.out = out;
        this.effort = effort;
        this.misses = misses;
    }

    void run(int rooms) throws IOException {
        for (int number = 0; number < rooms; number++) {
            RandomRoom room = RandomRooms.room(RandomRooms.SEED, number);
            RouterCase floor = room.routerCase();
            Router router = floor.router();
            for (int conductors = 2; conductors >= 1; conductors--) {
                measure(number, room, floor, router, conductors);
            }
        }
        print(rooms);
    }

    private void measure(int number, RandomRoom room, RouterCase floor, Router router, int conductors)
            throws IOException {
        double capacity = metres(router.capacity(0));
        String variant = conductors == 2 ? "one-ended" : "two-ended";
        if (!(capacity > 0.2)) {
            remarks.add(variant + " " + room.name() + ": capacity " + capacity + " m");
            return;
        }
        double rows = Math.min(capacity, metres(router.rowCapacity(0)));
        if (floor.lay(router, cable(room, conductors, rows / 2), Effort.QUICK).answer()
                instanceof RouteOutcome.NotReached notReached) {
            remarks.add(variant + " " + room.name() + ": " + notReached);
            return;
        }
        for (double share : SHARES) {
            String column = String.format(Locale.ROOT, "%2.0f %% of bound", 100 * share);
            lay(number, room, floor, router, conductors, share * rows, variant + ", " + column);
        }
        double longest = longest(room, floor, router, conductors, capacity);
        shareOfBound.add(longest / capacity);
        shareOfRows.add(longest / rows);
        if (longest < 0.94 * rows) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "%s %s: longest %.2f m; rows can reach %.2f m, %.1f %%; bound %.2f m",
                    variant,
                    room.name(),
                    longest,
                    rows,
                    100 * longest / rows,
                    capacity));
        }
        if (longest > 0.2) {
            lay(number, room, floor, router, conductors, 0.97 * longest, variant + ", " + LONGEST);
        }
    }

    private double longest(RandomRoom room, RouterCase floor, Router router, int conductors, double capacity) {
        RouterCase.Outcome outcome = floor.lay(router, cable(room, conductors, capacity * (1 - 1e-6)), effort);
        if (outcome.answer() instanceof RouteOutcome.NotFound notFound) {
            return metres(notFound.longestFound());
        }
        return outcome.route().map(route -> metres(route.laidLength())).orElse(0.0);
    }

    private void lay(
            int number, RandomRoom room, RouterCase floor, Router router, int conductors, double length, String column)
            throws IOException {
        double rounded = Math.floor(length * 1000) / 1000;
        RouterCase.Outcome outcome = floor.lay(router, cable(room, conductors, rounded), effort);
        add(byLength.computeIfAbsent(column, key -> new Tally()), outcome);
        add(byKind.computeIfAbsent(room.kind(), key -> new Tally()), outcome);
        add(all, outcome);
        if (!outcome.clean()) {
            String file = String.format(Locale.ROOT, "room-%03d-%s.json", number, column.replaceAll("[^0-9a-z]+", "-"));
            Files.createDirectories(misses);
            new ObjectMapper()
                    .writerWithDefaultPrettyPrinter()
                    .writeValue(misses.resolve(file).toFile(), room.roomFile(conductors, rounded));
            remarks.add(file + ": " + room.name() + ": " + why(outcome));
        }
    }

    private static String why(RouterCase.Outcome outcome) {
        return outcome.report()
                .map(report -> report.findings().stream()
                        .filter(Finding::isError)
                        .map(Finding::message)
                        .distinct()
                        .reduce("", (a, b) -> a + "; " + b))
                .orElse(outcome.answer().toString());
    }

    private static CableToLay cable(RandomRoom room, int conductors, double length) {
        return new CableToLay(
                "X",
                conductors,
                Amounts.metres(length),
                Amounts.millimetres(room.diameter()),
                Amounts.metres(RandomRoom.COLD_LEAD_METRES));
    }

    private static void add(Tally tally, RouterCase.Outcome outcome) {
        tally.cables++;
        tally.milliseconds.add(outcome.milliseconds());
        if (outcome.laid() && !outcome.clean()) {
            tally.violations++;
        }
        if (outcome.clean()) {
            CableRoute route = outcome.route().orElseThrow();
            tally.exact++;
            tally.turns += route.turns();
            tally.coldShare += route.coldShare().to(Units.ONE).getValue().doubleValue();
        }
    }

    private void print(int rooms) {
        out.printf(Locale.ROOT, "%d rooms, seed %d%n%n", rooms, RandomRooms.SEED);
        out.println("| cables | number | exact and clean | violations | cold share, mean | turns, mean "
                + "| ms, median | ms, worst |");
        out.println("|---|---|---|---|---|---|---|---|");
        byLength.forEach(this::row);
        byKind.forEach(this::row);
        row("all", all);
        out.println();
        longest("capacity bound", shareOfBound);
        longest("bound on the floor that rows can reach", shareOfRows);
        out.printf(Locale.ROOT, "%d remarks%n", remarks.size());
        remarks.forEach(out::println);
    }

    private void longest(String bound, List<Double> shares) {
        out.printf(
                Locale.ROOT,
                "longest route found / %s: median %.1f %%, 5th percentile %.1f %%, at least 94 %% in %.1f %%%n",
                bound,
                100 * quantile(shares, 0.5),
                100 * quantile(shares, 0.05),
                100.0 * shares.stream().filter(s -> s >= 0.94).count() / Math.max(1, shares.size()));
    }

    private void row(String name, Tally tally) {
        out.printf(
                Locale.ROOT,
                "| %s | %d | %.2f %% | %d | %.2f %% | %.1f | %.0f | %.0f |%n",
                name,
                tally.cables,
                100.0 * tally.exact / tally.cables,
                tally.violations,
                100 * tally.coldShare / Math.max(1, tally.exact),
                (double) tally.turns / Math.max(1, tally.exact),
                quantile(tally.milliseconds, 0.5),
                quantile(tally.milliseconds, 1));
    }

    private static double quantile(List<Double> values, double share) {
        if (values.isEmpty()) {
            return Double.NaN;
        }
        List<Double> sorted = values.stream().sorted().toList();
        return sorted.get((int) Math.min(sorted.size() - 1, Math.floor(share * sorted.size())));
    }

    private static double metres(Quantity<Length> length) {
        return length.to(Units.METRE).getValue().doubleValue();
    }
}
