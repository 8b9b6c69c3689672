package org.heatfloor.examples;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.heatfloor.area.PriorityZone;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableRoute;
import org.heatfloor.routing.CableToLay;
import org.heatfloor.routing.Effort;
import org.heatfloor.routing.PriorityZones;
import org.heatfloor.routing.Router;
import org.heatfloor.routing.ZoneDensity;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * How much closer runs lie in a zone, wanted and got, on room files that force one cable each: in each room the middle
 * third across its longer side, and a spot of 0.35 by 0.35 of its sides away from the middle.
 */
final class ZoneTable {

    private static final double[] WEIGHTS = {1.4, 1.67, 2};
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final PrintStream out;
    private final Effort effort;

    ZoneTable(PrintStream out, Effort effort) {
        this.out = out;
        this.effort = effort;
    }

    /**
     * One room with one zone.
     *
     * @param without cable per area in the zone over that of the rest where no zone is wanted
     * @param plainTurns turns where no zone is wanted
     */
    record Row(
            String room,
            String zone,
            double asked,
            double wanted,
            double without,
            double got,
            int plainTurns,
            int turns,
            double cold,
            boolean clean,
            double milliseconds) {}

    /** Lays every room of a folder whose name fits an expression. */
    List<Row> run(Path folder, String holding) throws IOException {
        out.println(
                "| file | zone | asked | wanted | without | got | turns without | turns | cold % | clean | CPU ms |");
        out.println("|---|---|---|---|---|---|---|---|---|---|---|");
        List<Row> rows = new ArrayList<>();
        int n = 0;
        for (Path file : PrototypeComparison.files(folder)) {
            String name = Objects.toString(file.getFileName(), "").replace(".json", "");
            if (!name.matches(holding)) {
                continue;
            }
            for (boolean spot : new boolean[] {false, true}) {
                Optional<Row> row = row(file, name, spot, WEIGHTS[n++ % WEIGHTS.length]);
                row.ifPresent(rows::add);
                row.ifPresent(r -> out.printf(
                        Locale.ROOT,
                        "| %s | %s | %.2f | %.2f | %.2f | %.2f | %d | %d | %.1f | %s | %.0f |%n",
                        r.room(),
                        r.zone(),
                        r.asked(),
                        r.wanted(),
                        r.without(),
                        r.got(),
                        r.plainTurns(),
                        r.turns(),
                        100 * r.cold(),
                        r.clean() ? "yes" : "NO",
                        r.milliseconds()));
                if (row.isEmpty()) {
                    out.println("| " + name + " | " + (spot ? "spot" : "third") + " | not found |");
                }
            }
        }
        for (String zone : List.of("third", "spot")) {
            List<Row> own = rows.stream().filter(r -> r.zone().equals(zone)).toList();
            out.printf(
                    Locale.ROOT,
                    "%s: %d rows, median wanted %.2f, without %.2f, got %.2f; got/wanted median %.2f, least %.2f;"
                            + " turns %d for %d%n",
                    zone,
                    own.size(),
                    median(own.stream().map(Row::wanted).toList()),
                    median(own.stream().map(Row::without).toList()),
                    median(own.stream().map(Row::got).toList()),
                    median(own.stream().map(r -> r.got() / r.wanted()).toList()),
                    own.stream().mapToDouble(r -> r.got() / r.wanted()).min().orElse(0),
                    own.stream().mapToInt(Row::turns).sum(),
                    own.stream().mapToInt(Row::plainTurns).sum());
        }
        return rows;
    }

    private static double median(List<Double> figures) {
        List<Double> sorted = figures.stream().sorted().toList();
        return sorted.isEmpty() ? Double.NaN : sorted.get(sorted.size() / 2);
    }

    /** One room; empty if the zone changes nothing or one of the two routes is not found. */
    Optional<Row> row(Path file, String name, boolean spot, double weight) throws IOException {
        RoomFile room = PrototypeComparison.read(file);
        RouterCase floor = PrototypeComparison.routerCase(room);
        PriorityZone zone = PriorityZone.of("zone", zone(room, spot), Units.METRE, weight);
        Router plain = floor.router();
        Router wanting = plain.wanting(new PriorityZones(
                List.of(zone), room.cable().maxSpacing().with(room.membrane().studPitch())));
        CableToLay cable = PrototypeComparison.cable(room);
        Optional<CableRoute> without = floor.lay(plain, cable, effort).route();
        long begun = THREADS.getCurrentThreadCpuTime();
        RouterCase.Outcome outcome = floor.lay(wanting, cable, effort);
        double milliseconds = (THREADS.getCurrentThreadCpuTime() - begun) / 1e6;
        if (without.isEmpty() || outcome.route().isEmpty()) {
            return Optional.empty();
        }
        CableRoute with = outcome.route().orElseThrow();
        ZoneDensity before =
                wanting.densities(0, List.of(without.orElseThrow())).get(0);
        ZoneDensity now = wanting.densities(0, List.of(with)).get(0);
        return Optional.of(new Row(
                name,
                spot ? "spot" : "third",
                weight,
                Si.in("wanted", now.wanted(), Units.ONE),
                Si.in("without", before.got(), Units.ONE),
                Si.in("got", now.got(), Units.ONE),
                without.orElseThrow().turns(),
                with.turns(),
                Si.in("cold", with.coldShare(), Units.ONE),
                outcome.clean(),
                milliseconds));
    }

    private static Polygon zone(RoomFile room, boolean spot) {
        Envelope box = room.room().polygon().getEnvelopeInternal();
        boolean wide = box.getWidth() > box.getHeight();
        double[] x = spot ? new double[] {0.2, 0.55} : wide ? new double[] {1 / 3.0, 2 / 3.0} : new double[] {0, 1};
        double[] y = spot ? new double[] {0.3, 0.65} : wide ? new double[] {0, 1} : new double[] {1 / 3.0, 2 / 3.0};
        return (Polygon) new GeometryFactory()
                .toGeometry(new Envelope(
                        box.getMinX() + x[0] * box.getWidth(),
                        box.getMinX() + x[1] * box.getWidth(),
                        box.getMinY() + y[0] * box.getHeight(),
                        box.getMinY() + y[1] * box.getHeight()));
    }
}
