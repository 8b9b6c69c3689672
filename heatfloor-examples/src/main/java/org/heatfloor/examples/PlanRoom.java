package org.heatfloor.examples;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

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
            results.write(java.util.Map.of());
            out.println(room.name());
            return COMPLETE;
        } catch (BadRoomFile e) {
            e.faults().forEach(fault -> err.println(fault.line(args[0])));
            return BAD_INPUT;
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
