package org.heatfloor.examples;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.TradeLength;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.finding.Finding;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableRoute;
import org.heatfloor.routing.CableToLay;
import org.heatfloor.routing.Effort;
import org.heatfloor.routing.LaidCable;
import org.heatfloor.routing.LaidPart;
import org.heatfloor.routing.Replanner;
import org.heatfloor.routing.RestRoute;
import org.heatfloor.routing.Resumption;
import org.heatfloor.routing.RouteOutcome;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * Measures re-planning half way: {@code files FOLDER [EFFORT [NAMES]]} on the room files of a folder, or on those whose name
 * begins with one of the names, {@code random ROOMS [EFFORT]} on invented rooms. Every cable is planned, laid to 30, 50 and 70 %, and a place of 200 × 200 mm without cable, with a
 * clearance of one stud, is put at a random place of the rest, where it keeps its clearance from what lies. The cable left
 * in hand is what the plan leaves.
 */
public final class ReplanTable {

    /** The seed of every published measurement. */
    static final long SEED = 20_261_126L;

    private static final double[] SHARES = {0.3, 0.5, 0.7};
    private static final double SIDE_METRES = 0.2;
    private static final int DRAWS = 200;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final PrintStream out;
    private final Effort effort;
    private final Map<String, Tally> rows = new TreeMap<>();
    private final Tally all = new Tally();
    private final List<String> cases = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();

    /** Sums over the cases of one row of the table. */
    private static final class Tally {
        private int cases;
        private int tooLong;
        private int onward;
        private int lifted;
        private int forced;
        private int missed;
        private int violations;
        private final List<Double> liftedMetres = new ArrayList<>();
        private final List<Double> beyondProof = new ArrayList<>();
        private final List<Double> milliseconds = new ArrayList<>();
    }

    private ReplanTable(PrintStream out, Effort effort) {
        this.out = out;
        this.effort = effort;
    }

    /**
     * Runs the measurement.
     *
     * @param args what to measure, as above
     * @throws IOException if a file cannot be read
     */
    public static void main(String... args) throws IOException {
        run(new PrintStream(System.out, true, StandardCharsets.UTF_8), args);
    }

    static void run(PrintStream out, String... args) throws IOException {
        if (args.length < 2) {
            out.println("usage: files FOLDER [EFFORT [NAMES]] | random ROOMS [EFFORT]");
            return;
        }
        Effort effort = args.length > 2 ? Effort.valueOf(args[2].toUpperCase(Locale.ROOT)) : Effort.NORMAL;
        ReplanTable table = new ReplanTable(out, effort);
        if (args[0].equals("files")) {
            table.files(Path.of(args[1]), args.length > 3 ? List.of(args[3].split(",")) : List.of(""));
        } else {
            table.random(Integer.parseInt(args[1]));
        }
        table.print();
    }

    private void files(Path folder, List<String> names) throws IOException {
        int number = 0;
        for (Path file : PrototypeComparison.files(folder)) {
            String name = PrototypeComparison.name(file);
            // The number is the file's place in the folder and decides what is drawn at random.
            int place = number++;
            if (names.stream().noneMatch(name::startsWith)) {
                continue;
            }
            RoomFile room;
            try {
                room = RoomFileReader.read(file);
            } catch (BadRoomFile e) {
                throw new IOException(file + ": " + e.faults(), e);
            }
            HeatingCable offer = room.cable().catalogue().get(0);
            CableToLay cable = new CableToLay(
                    offer.name(), offer.conductors(), offer.length(), offer.diameter(), offer.coldLead());
            String length = "cable of " + name.replaceAll(".*-", "") + " % of the longest";
            cases(PrototypeComparison.routerCase(room), cable, name, length, place);
        }
    }

    private void random(int rooms) {
        for (int number = 0; number < rooms; number++) {
            RandomRoom room = RandomRooms.room(RandomRooms.SEED, number);
            RouterCase floor = room.routerCase();
            int conductors = 1 + number % 2;
            double share = 0.6 + 0.05 * (number % 7);
            double capacity = metres(floor.router().capacity(0));
            if (capacity > 3) {
                CableToLay cable = new CableToLay(
                        "X",
                        conductors,
                        Amounts.metres(share * capacity),
                        Amounts.millimetres(room.diameter()),
                        Amounts.metres(RandomRoom.COLD_LEAD_METRES));
                cases(floor, cable, room.name(), room.kind(), number);
            }
        }
    }

    private void cases(RouterCase floor, CableToLay cable, String name, String kind, int number) {
        if (!(floor.lay(floor.router(), cable, effort).answer() instanceof RouteOutcome.Laid laid)) {
            remarks.add(name + ": not planned, so not re-planned");
            return;
        }
        for (int i = 0; i < SHARES.length; i++) {
            SplittableRandom random = new SplittableRandom(SEED * 1_000_003L + number * 10L + i);
            Optional<KeepOut> added = keepOut(laid.route(), SHARES[i], floor, random);
            if (added.isEmpty()) {
                remarks.add(name + ": no place for a keep-out on the rest at " + SHARES[i]);
                continue;
            }
            resume(floor.with(added.get()), laid.route(), SHARES[i], name, kind);
        }
    }

    /** A keep-out about a random place of the rest that keeps its clearance from the laid part and the lead. */
    private static Optional<KeepOut> keepOut(
            CableRoute route, double share, RouterCase floor, SplittableRandom random) {
        LengthIndexedLine line = new LengthIndexedLine(route.line());
        double length = route.line().getLength();
        LineString laid = (LineString) line.extractLine(0, share * length);
        double pitch = metres(floor.lattice().pitch());
        for (int draw = 0; draw < DRAWS; draw++) {
            Coordinate at = line.extractPoint(length * (share + (1 - share) * random.nextDouble()));
            Envelope box = new Envelope(at);
            box.expandBy(SIDE_METRES / 2);
            Polygon shape = (Polygon) FACTORY.toGeometry(box);
            boolean clear = shape.distance(laid) >= pitch
                    && shape.distance(route.coldLeads().get(0)) >= pitch;
            if (clear) {
                return Optional.of(
                        KeepOut.of("new place", KeepOutKind.OTHER, shape, Units.METRE, TradeLength.studs(1)));
            }
        }
        return Optional.empty();
    }

    private void resume(RouterCase floor, CableRoute plan, double share, String name, String kind) {
        LaidPart laid = LaidPart.upTo(plan, plan.laidLength().multiply(share));
        Quantity<Length> inHand = plan.laidLength().multiply(1 - share);
        long begun = System.nanoTime();
        Resumption answer = Replanner.of(floor.site()).resume(laid, inHand, effort, 1);
        double milliseconds = (System.nanoTime() - begun) / 1e6;
        String row = String.format(
                Locale.ROOT,
                "%s, %.0f %% laid",
                plan.cable().conductors() == 2 ? "one-ended" : "two-ended",
                100 * share);
        String what = String.format(Locale.ROOT, "%s at %.0f %%", name, 100 * share);
        for (Tally tally : List.of(all, tally(row), tally(kind))) {
            add(tally, floor, answer, milliseconds);
        }
        cases.add(row(answer, what));
        System.err.printf(
                Locale.ROOT, "%s: %s, %.0f ms%n", what, answer.getClass().getSimpleName(), milliseconds);
    }

    private Tally tally(String row) {
        return rows.computeIfAbsent(row, key -> new Tally());
    }

    private static void add(Tally tally, RouterCase floor, Resumption answer, double milliseconds) {
        tally.cases++;
        tally.milliseconds.add(milliseconds);
        if (answer instanceof Resumption.Onward onward) {
            tally.onward++;
            tally.violations += clean(floor, onward.route()) ? 0 : 1;
        } else if (answer instanceof Resumption.AfterLifting after) {
            tally.lifted++;
            double proved = metres(after.proved());
            tally.forced += proved > 1e-6 ? 1 : 0;
            tally.liftedMetres.add(metres(after.lifted()));
            tally.beyondProof.add(metres(after.lifted()) - proved);
            tally.violations += clean(floor, after.route()) ? 0 : 1;
        } else if (answer instanceof Resumption.TooLong) {
            tally.tooLong++;
        } else {
            tally.missed++;
        }
    }

    /** The independent check, built afresh, of the whole cable. */
    private static boolean clean(RouterCase floor, RestRoute route) {
        CableRoute whole = route.whole();
        return floor
                .check()
                .check(List.of(new LaidCable(
                        whole.cable().name(),
                        whole.line(),
                        whole.coldLeads(),
                        whole.cable().length(),
                        whole.cable().diameter(),
                        whole.cable().conductors(),
                        whole.cable().coldLead())))
                .findings()
                .stream()
                .noneMatch(Finding::isError);
    }

    /** One case a row: the answer with what was lifted and what is proved, or the longest found and the bound. */
    private static String row(Resumption answer, String what) {
        if (answer instanceof Resumption.AfterLifting after) {
            return String.format(
                    Locale.ROOT,
                    "%s,%s,%.2f,%.2f",
                    what,
                    after.leadToo() ? "anew" : "lifted",
                    metres(after.lifted()),
                    metres(after.proved()));
        } else if (answer instanceof Resumption.NotFound missed) {
            return String.format(
                    Locale.ROOT, "%s,missed,%.2f,%.2f", what, metres(missed.longestFound()), metres(missed.capacity()));
        }
        return what + (answer instanceof Resumption.Onward ? ",onward,," : ",too long,,");
    }

    private void print() {
        out.printf(
                Locale.ROOT,
                "%s, Java %s, effort %s, seed %d%n%n",
                System.getProperty("os.arch"),
                System.getProperty("java.version"),
                effort,
                SEED);
        out.println(
                "| cases | drawn | too long by bound | feasible by bound | exact, nothing lifted | exact after lifting "
                        + "| missed | violations | allowed by bound without lifting: exact so | lifted, mean m | median m "
                        + "| beyond proof, mean m | ms, median | ms, worst |");
        out.println("|---|---|---|---|---|---|---|---|---|---|---|---|---|---|");
        rows.forEach(this::row);
        row("all", all);
        out.println();
        out.println("case,answer,lifted m or longest found m,proved m or bound m");
        cases.forEach(out::println);
        out.println();
        remarks.forEach(out::println);
    }

    private void row(String name, Tally tally) {
        int feasible = tally.cases - tally.tooLong;
        int free = feasible - tally.forced;
        out.printf(
                Locale.ROOT,
                "| %s | %d | %d | %d | %d (%.1f %%) | %d (%.1f %%) | %d | %d | %.1f %% of %d | %.2f | %.2f | %.2f | %.0f | %.0f |%n",
                name,
                tally.cases,
                tally.tooLong,
                feasible,
                tally.onward,
                100.0 * tally.onward / Math.max(1, feasible),
                tally.lifted,
                100.0 * (tally.onward + tally.lifted) / Math.max(1, feasible),
                tally.missed,
                tally.violations,
                100.0 * tally.onward / Math.max(1, free),
                free,
                mean(tally.liftedMetres),
                quantile(tally.liftedMetres, 0.5),
                mean(tally.beyondProof),
                quantile(tally.milliseconds, 0.5),
                quantile(tally.milliseconds, 1));
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(v -> v).average().orElse(0);
    }

    private static double quantile(List<Double> values, double share) {
        if (values.isEmpty()) {
            return 0;
        }
        List<Double> sorted = values.stream().sorted().toList();
        return sorted.get((int) Math.min(sorted.size() - 1, Math.floor(share * sorted.size())));
    }

    private static double metres(Quantity<Length> length) {
        return length.to(Units.METRE).getValue().doubleValue();
    }
}
