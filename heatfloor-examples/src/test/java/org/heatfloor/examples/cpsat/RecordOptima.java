package org.heatfloor.examples.cpsat;

import com.google.ortools.Loader;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.heatfloor.examples.SmallRoom;
import org.heatfloor.routing.RouteOutcome;

/**
 * Derives the record of fewest turns anew: {@code FOLDER RECORD.csv SECONDS [NAME...]}, with the seconds after which one
 * number of turns is given up. Without names all room files of the folder are asked.
 */
public final class RecordOptima {

    private static final int WORKERS = 2;

    private RecordOptima() {}

    /**
     * Asks the solver and writes the record.
     *
     * @param args folder, record, seconds, names
     * @throws IOException if a file cannot be read or written
     */
    public static void main(String... args) throws IOException {
        Loader.loadNativeLibraries();
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        StringBuilder record = new StringBuilder(
                "# Fewest turns of one-ended routes in small invented rooms; computed by us"
                        + " with OR-Tools CP-SAT 9.8.3296.\n"
                        + "# asked: any = wherever the floor stays cold; even = no junction farther than the even spacing from the"
                        + " cable.\n"
                        + "instance;asked;turns;bound;cold share;seconds;seconds a question;machine;date;lead runs;route\n");
        List<String> names = List.of(args).subList(3, args.length);
        for (Path file : files(Path.of(args[0]))) {
            SmallRoom room = SmallRoom.read(file);
            if (!names.isEmpty() && !names.contains(room.name())) {
                continue;
            }
            double limit = Double.parseDouble(args[2]);
            Question.Result any = new Question(room, false, limit, WORKERS).answer(0);
            String row = row(room, "any", any, limit);
            Question.Result even = new Question(room, true, limit, WORKERS).answer(any.bound());
            row += row(room, "even", even, limit);
            out.print(row);
            RouteOutcome ours = room.router().route(0, room.cable(), org.heatfloor.routing.Effort.NORMAL, 1);
            out.println(
                    ours instanceof RouteOutcome.Laid laid
                            ? "  router: " + laid.route().turns() + " turns, cold "
                                    + laid.route().coldShare().getValue()
                            : "  router: " + ours);
            record.append(row);
            Files.writeString(Path.of(args[1]), record);
        }
    }

    private static String row(SmallRoom room, String asked, Question.Result result, double limit) {
        return String.format(
                Locale.ROOT,
                "%s;%s;%d;%d;%.4f;%.1f;%.0f;%s;%s;%d;%s%n",
                room.name(),
                asked,
                result.route().turns(),
                result.bound(),
                result.route().coldShare(),
                result.seconds(),
                limit,
                machine(),
                LocalDate.now(java.time.ZoneOffset.UTC),
                result.route().leadRuns(),
                result.route().text());
    }

    private static String machine() {
        String model = System.getProperty("os.arch");
        try (Stream<String> lines = Files.lines(Path.of("/proc/cpuinfo"))) {
            model = lines.filter(line -> line.startsWith("model name"))
                    .map(line -> line.substring(line.indexOf(':') + 1).strip())
                    .findFirst()
                    .orElse(model);
        } catch (IOException e) {
            // Not this kind of system: its architecture has to do.
        }
        return model + ", " + WORKERS + " workers";
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> found = Files.list(folder)) {
            return found.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }
}
