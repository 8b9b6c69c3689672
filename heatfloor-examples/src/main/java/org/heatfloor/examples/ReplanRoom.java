package org.heatfloor.examples;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.Effort;
import org.heatfloor.routing.LaidPart;
import org.heatfloor.routing.Replanner;
import org.heatfloor.routing.Resumption;
import org.heatfloor.routing.RouteSite;

/**
 * Plans the rest of a cable that lies in part: {@code ROOM.json PLAN.json LAID OUTDIR [IN_HAND]}. The room file tells the
 * room as it is now, with what was added or changed since the plan file was written. {@code LAID} is a length from the
 * joint, {@code "12.5 m"}, or a row, {@code "row 9"}; {@code IN_HAND} the length of heating cable really left, else what
 * the plan leaves. Writes {@code rest.svg} and prints what to do. Exit status 0: the rest can be laid, with the lifting
 * told; 1: it cannot; 2: bad input, nothing written.
 */
public final class ReplanRoom {

    private static final Pattern ROW = Pattern.compile("row (\\d{1,4})");
    private static final long SEED = 1;

    private ReplanRoom() {}

    /**
     * Runs the program.
     *
     * @param args room file, plan file, how much is laid, the folder for the results, length in hand
     */
    public static void main(String[] args) {
        int status = run(utf8(System.out), utf8(System.err), args);
        if (status != PlanRoom.COMPLETE) {
            System.exit(status);
        }
    }

    private static PrintStream utf8(PrintStream stream) {
        return new PrintStream(stream, true, StandardCharsets.UTF_8);
    }

    /**
     * Runs the program without ending the process.
     *
     * @param out where the answer goes
     * @param err where faults go, one a line
     * @param args room file, plan file, how much is laid, the folder for the results, length in hand
     * @return the exit status
     */
    public static int run(PrintStream out, PrintStream err, String... args) {
        if (args.length != 4 && args.length != 5) {
            err.println(Fault.of("arguments", args.length + " arguments", "ROOM.json PLAN.json LAID OUTDIR [IN_HAND]")
                    .line("ReplanRoom"));
            return PlanRoom.BAD_INPUT;
        }
        try {
            RoomFile room = RoomFileReader.read(path("file", args[0]));
            PlannedRoom plan = PlannedRoom.read(path("PLAN", args[1]), room);
            Results results = new Results(path("OUTDIR", args[3]));
            return resumed(room, plan, results, out, args);
        } catch (BadRoomFile e) {
            e.faults().forEach(fault -> err.println(fault.line("ReplanRoom")));
            return PlanRoom.BAD_INPUT;
        }
    }

    private static int resumed(RoomFile room, PlannedRoom plan, Results results, PrintStream out, String... args)
            throws BadRoomFile {
        Resumption answer;
        LaidPart laid;
        RouteSite site;
        try {
            site = site(room, plan);
            laid = laid(plan, args[2]);
            Quantity<Length> inHand = args.length == 5 ? length("IN_HAND", args[4]) : laid.leftAsStated(site);
            answer = Replanner.of(site).resume(laid, inHand, Effort.NORMAL, SEED);
        } catch (IllegalArgumentException e) {
            throw new BadRoomFile(List.of(new Fault("room or plan", String.valueOf(e.getMessage()))));
        }
        ReplanAnswer told = new ReplanAnswer(room, plan, laid.length(site), answer);
        Optional<String> drawing = told.drawing();
        if (drawing.isPresent()) {
            results.write(Map.of("rest.svg", drawing.get()));
        }
        told.lines().forEach(out::println);
        return drawing.isPresent() ? PlanRoom.COMPLETE : PlanRoom.IMPOSSIBLE;
    }

    static RouteSite site(RoomFile room, PlannedRoom plan) {
        RoomFile.Cable rules = room.cable();
        return RouteSite.of(
                room.room(),
                Briefs.wallClearance(room),
                room.keepOuts(),
                plan.lattice(),
                rules.minSpacing().with(room.membrane().studPitch()),
                rules.minBendRadius(),
                rules.start(),
                rules.riser(),
                rules.jointLength());
    }

    private static LaidPart laid(PlannedRoom plan, String text) throws BadRoomFile {
        Matcher row = ROW.matcher(text);
        if (row.matches()) {
            return LaidPart.upToRow(plan.cable(), plan.line(), plan.coldLeads(), Integer.parseInt(row.group(1)));
        }
        return LaidPart.upTo(plan.cable(), plan.line(), plan.coldLeads(), length("LAID", text));
    }

    private static Quantity<Length> length(String key, String text) throws BadRoomFile {
        try {
            return QuantityText.read(text, Units.METRE);
        } catch (IllegalArgumentException e) {
            throw new BadRoomFile(
                    key,
                    Fault.quoted(text),
                    "a length such as '12.5 m'" + (key.equals("LAID") ? " or a row such as 'row 9'" : ""));
        }
    }

    private static Path path(String key, String text) throws BadRoomFile {
        try {
            if (text.isBlank()) {
                throw new InvalidPathException(text, "blank");
            }
            return Path.of(text);
        } catch (InvalidPathException e) {
            throw new BadRoomFile(key, Fault.quoted(text), "a path");
        }
    }
}
