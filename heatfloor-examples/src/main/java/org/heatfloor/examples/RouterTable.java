package org.heatfloor.examples;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import org.heatfloor.routing.Effort;

/**
 * Measures the router with the independent check: {@code random ROOMS [EFFORT [MISSES]]} on invented rooms, writing every
 * miss into a folder as a room file; {@code files FOLDER [EFFORT]} on the room files of a folder, beside the turns of the
 * prototype; {@code zones FOLDER [EFFORT [NAMES]]} on those whose name fits an expression, with a zone wanted warmer.
 */
public final class RouterTable {

    private static final Path MISSES = Path.of("target", "router-misses");

    private RouterTable() {}

    /**
     * Runs a measurement.
     *
     * @param args what to measure, as above
     * @throws IOException if a file cannot be read or written
     */
    public static void main(String... args) throws IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        if (args.length < 2) {
            out.println(
                    "usage: random ROOMS [EFFORT [MISSES]] | files FOLDER [EFFORT] | zones FOLDER [EFFORT [NAMES]]");
            return;
        }
        Effort effort = args.length > 2 ? Effort.valueOf(args[2].toUpperCase(Locale.ROOT)) : Effort.NORMAL;
        out.printf(
                Locale.ROOT,
                "%s, Java %s, %d processors, effort %s%n",
                System.getProperty("os.arch"),
                System.getProperty("java.version"),
                Runtime.getRuntime().availableProcessors(),
                effort);
        if (args[0].equals("files")) {
            new PrototypeComparison(out, effort).run(Path.of(args[1]));
        } else if (args[0].equals("zones")) {
            new ZoneTable(out, effort).run(Path.of(args[1]), args.length > 3 ? args[3] : ".*-(60|75)");
        } else {
            Path misses = args.length > 3 ? Path.of(args[3]) : MISSES;
            new RandomRoomTable(out, effort, misses).run(Integer.parseInt(args[1]));
        }
    }
}
