package org.heatfloor.examples;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The schoolhouse rooms, each run through the program once a test run and kept. */
final class Schoolhouse {

    private static final Map<String, Run> RUNS = new ConcurrentHashMap<>();

    private Schoolhouse() {}

    /** What the program made of a room. */
    record Run(int status, List<String> summary, List<String> faults, String plan, String drawing) {

        JsonNode json() {
            try {
                return new ObjectMapper().readTree(plan);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** A room of {@code rooms}, by its name without ending. */
    static Run of(String name) {
        return RUNS.computeIfAbsent(name, Schoolhouse::run);
    }

    private static Run run(String name) {
        try {
            Path folder = Files.createTempDirectory(Path.of("target"), "schoolhouse");
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            int status = PlanRoom.run(
                    new PrintStream(out, true, StandardCharsets.UTF_8),
                    new PrintStream(err, true, StandardCharsets.UTF_8),
                    "rooms/" + name + ".json",
                    folder.resolve("made").resolve("anew").toString());
            Path made = folder.resolve("made/anew");
            return new Run(
                    status,
                    out.toString(StandardCharsets.UTF_8).lines().toList(),
                    err.toString(StandardCharsets.UTF_8).lines().toList(),
                    Files.readString(made.resolve("plan.json")),
                    Files.readString(made.resolve("plan.svg")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
