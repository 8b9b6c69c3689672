package org.heatfloor.examples;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.heatfloor.finding.Finding;
import org.heatfloor.plan.Plan;
import org.heatfloor.plan.Planner;

/**
 * Plans the heated floor of one room: {@code ROOM.json OUTDIR}. Writes {@code plan.json} and {@code plan.svg} and prints
 * a summary. Exit status 0: complete; 1: impossible, and the plan says what would make it possible; 2: bad input, one
 * line a fault, nothing written.
 */
public final class PlanRoom {

    static final int COMPLETE = 0;
    static final int IMPOSSIBLE = 1;
    static final int BAD_INPUT = 2;

    private PlanRoom() {}

    /**
     * Runs the program.
     *
     * @param args the room file and the folder for the results
     */
    public static void main(String[] args) {
        int status = run(utf8(System.out), utf8(System.err), args);
        if (status != COMPLETE) {
            System.exit(status);
        }
    }

    private static PrintStream utf8(PrintStream stream) {
        return new PrintStream(stream, true, StandardCharsets.UTF_8);
    }

    /**
     * Runs the program without ending the process.
     *
     * @param out where the summary goes
     * @param err where faults go, one a line
     * @param args the room file and the folder for the results
     * @return the exit status
     */
    public static int run(PrintStream out, PrintStream err, String... args) {
        if (args.length != 2) {
            err.println(Fault.of("arguments", args.length + " arguments", "ROOM.json OUTDIR")
                    .line("PlanRoom"));
            return BAD_INPUT;
        }
        try {
            RoomFile room = RoomFileReader.read(path("file", args[0]));
            Results results = new Results(path("OUTDIR", args[1]));
            return planned(room, results, out);
        } catch (BadRoomFile e) {
            e.faults().forEach(fault -> err.println(fault.line(args[0])));
            return BAD_INPUT;
        }
    }

    private static int planned(RoomFile room, Results results, PrintStream out) throws BadRoomFile {
        Plan plan;
        try {
            plan = Planner.plan(Briefs.of(room));
        } catch (IllegalArgumentException e) {
            // What the library refuses and the reader let pass.
            throw new BadRoomFile(List.of(new Fault("room", String.valueOf(e.getMessage()))));
        }
        List<Finding> findings = new ArrayList<>(plan.findings());
        findings.addAll(Briefs.assumptions(room));
        LengthUnit unit = room.coordinateUnit();
        results.write(Map.of(
                "plan.json", PlanFile.text(plan, findings, unit),
                "plan.svg", PlanDrawing.svg(PlanSheets.of(room, plan))));
        Summary.of(plan, findings, room).forEach(out::println);
        return plan.status() == Plan.Status.COMPLETE ? COMPLETE : IMPOSSIBLE;
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
