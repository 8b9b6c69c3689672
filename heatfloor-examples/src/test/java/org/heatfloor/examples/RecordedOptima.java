package org.heatfloor.examples;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Fewest turns of rooms in {@code rooms/small} and {@code rooms/router} as a general solver found and proved them. */
final class RecordedOptima {

    private static final String RECORD = "small-rooms-optima.csv";

    private RecordedOptima() {}

    /**
     * One question and its answer.
     *
     * @param instance the room file's name without its ending
     * @param even whether no junction may stay farther than the even spacing from the cable
     * @param turns the fewest found
     * @param bound no route has fewer; proved
     * @param coldShare of the recorded route
     * @param seconds the solver took
     * @param machine it ran on
     * @param leadRuns of the recorded route
     * @param route its corners
     */
    record Row(
            String instance,
            boolean even,
            int turns,
            int bound,
            double coldShare,
            double seconds,
            String machine,
            int leadRuns,
            String route) {

        boolean proved() {
            return turns == bound;
        }

        SmallRoom room() throws IOException {
            Path small = Path.of("rooms", "small", instance + ".json");
            return SmallRoom.read(Files.exists(small) ? small : Path.of("rooms", "router", instance + ".json"));
        }

        LatticeRoute laid() throws IOException {
            String[] points = route.split(", ", -1);
            int[] xs = new int[points.length];
            int[] ys = new int[points.length];
            for (int p = 0; p < points.length; p++) {
                int space = points[p].indexOf(' ');
                xs[p] = Integer.parseInt(points[p].substring(0, space));
                ys[p] = Integer.parseInt(points[p].substring(space + 1));
            }
            return new LatticeRoute(room(), leadRuns, xs, ys);
        }

        @Override
        public String toString() {
            return instance + (even ? ", even" : ", any");
        }
    }

    static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        try (InputStream in = Objects.requireNonNull(RecordedOptima.class.getResourceAsStream(RECORD), RECORD);
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                String[] cells = line.split(";", -1);
                if (cells.length == 11 && !cells[0].equals("instance")) {
                    rows.add(new Row(
                            cells[0],
                            cells[1].equals("even"),
                            Integer.parseInt(cells[2]),
                            Integer.parseInt(cells[3]),
                            Double.parseDouble(cells[4]),
                            Double.parseDouble(cells[5]),
                            cells[7],
                            Integer.parseInt(cells[9]),
                            cells[10]));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }
}
