package org.heatfloor.examples.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.heatfloor.examples.BenchFloors;
import org.heatfloor.examples.SmallRoom;
import org.heatfloor.plan.Brief;
import org.heatfloor.plan.CableOption;
import org.heatfloor.plan.Planner;
import org.heatfloor.routing.CableToLay;
import org.heatfloor.routing.Effort;
import org.heatfloor.routing.RouteOutcome;
import org.heatfloor.routing.RouteSite;
import org.heatfloor.routing.Router;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.runner.IterationType;

/**
 * Routes at the effort a plan uses, free channels and bounds included: the bathrooms one after the other, the hall of 60 m²,
 * the washroom's whole plan with its choice of cable, and small rooms that a general solver is asked too.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
public class RouterBench {

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    /** All bathrooms by turns; every call takes the next one. */
    @State(Scope.Benchmark)
    public static class Bathrooms {

        private List<SmallRoom> rooms = List.of();
        private double[][] milliseconds = {};
        private double[][] ownMilliseconds = {};
        private int[] calls = {};
        private int next;
        private boolean counts;

        /**
         * Reads the room files.
         *
         * @throws IOException if one cannot be read
         */
        @Setup
        public void read() throws IOException {
            rooms = BenchFloors.bathrooms();
            milliseconds = new double[rooms.size()][1000];
            ownMilliseconds = new double[rooms.size()][1000];
            calls = new int[rooms.size()];
        }

        /**
         * Notes whether the iteration is measured.
         *
         * @param iteration what runs next
         */
        @Setup(Level.Iteration)
        public void begin(IterationParams iteration) {
            counts = iteration.getType() == IterationType.MEASUREMENT;
        }

        RouteOutcome lay() {
            SmallRoom room = rooms.get(next);
            long begun = System.nanoTime();
            long ownBegun = THREADS.getCurrentThreadCpuTime();
            RouteOutcome outcome = RouterBench.lay(room);
            if (counts && calls[next] < 1000) {
                ownMilliseconds[next][calls[next]] = (THREADS.getCurrentThreadCpuTime() - ownBegun) / 1e6;
                milliseconds[next][calls[next]++] = (System.nanoTime() - begun) / 1e6;
            }
            next = (next + 1) % rooms.size();
            return outcome;
        }

        /** Prints the medians of each file, by the clock and of the thread's own work, and what they come to. */
        @TearDown
        public void print() {
            double[] medians = medians(milliseconds);
            double[] own = medians(ownMilliseconds);
            Integer[] order = IntStream.range(0, rooms.size()).boxed().toArray(Integer[]::new);
            Arrays.sort(order, Comparator.comparingDouble(n -> -own[n]));
            StringBuilder out =
                    new StringBuilder("\nmedian of each room file in ms, slowest first: clock, processor\n");
            for (int n : order) {
                out.append(String.format(
                        Locale.ROOT,
                        "  %-22s %6.1f %6.1f (%d calls)%n",
                        rooms.get(n).name(),
                        medians[n],
                        own[n],
                        calls[n]));
            }
            System.out.printf(
                    Locale.ROOT,
                    "%s%d files: clock, median %.1f ms, worst %.1f ms; processor, median %.1f ms, worst %.1f ms (%s)%n",
                    out,
                    rooms.size(),
                    median(medians),
                    Arrays.stream(medians).max().orElse(Double.NaN),
                    median(own),
                    own[order[0]],
                    rooms.get(order[0]).name());
        }

        private double[] medians(double[][] figures) {
            return IntStream.range(0, rooms.size())
                    .mapToDouble(n -> median(Arrays.copyOf(figures[n], calls[n])))
                    .toArray();
        }

        private static double median(double[] figures) {
            double[] sorted = figures.clone();
            Arrays.sort(sorted);
            return sorted.length == 0 ? Double.NaN : sorted[sorted.length / 2];
        }
    }

    /** The hall with one cable that takes three quarters of what it can hold. */
    @State(Scope.Benchmark)
    public static class Hall {

        private RouteSite site;
        private CableToLay cable;

        /**
         * Reads the room file.
         *
         * @throws IOException if it cannot be read
         */
        @Setup
        public void read() throws IOException {
            site = BenchFloors.hall();
            cable = BenchFloors.cable(Router.of(site).capacity(0).multiply(0.75));
        }
    }

    /** The washroom with the nine cables of its catalogue. */
    @State(Scope.Benchmark)
    public static class Washroom {

        private Brief brief;

        /**
         * Reads the room file.
         *
         * @throws IOException if it cannot be read
         */
        @Setup
        public void read() throws IOException {
            brief = BenchFloors.brief("washroom");
        }
    }

    /** A small room, which the solver is asked as well. */
    @State(Scope.Benchmark)
    public static class Small {

        /** The room file. */
        @Param({"small/cloakroom-75", "small/privy-60", "small/corner-room-60"})
        public String room = "";

        private SmallRoom floor;

        /**
         * Reads the room file.
         *
         * @throws IOException if it cannot be read
         */
        @Setup
        public void read() throws IOException {
            floor = BenchFloors.floor(room);
        }
    }

    private static RouteOutcome lay(SmallRoom room) {
        return room.router().route(0, room.cable(), Effort.NORMAL, 1);
    }

    private static RouteOutcome laid(RouteOutcome outcome) {
        if (outcome instanceof RouteOutcome.Laid) {
            return outcome;
        }
        throw new IllegalStateException("not laid: " + outcome);
    }

    /**
     * The next bathroom: the median and the slowest of all calls stand in the percentiles, those of each file are printed.
     *
     * @param bathrooms the files
     * @return the route
     */
    @Benchmark
    @BenchmarkMode(Mode.SampleTime)
    @Warmup(iterations = 2, time = 12)
    @Measurement(iterations = 4, time = 15)
    public RouteOutcome bathroom(Bathrooms bathrooms) {
        return laid(bathrooms.lay());
    }

    /**
     * One route over the hall.
     *
     * @param hall the hall
     * @return the route
     */
    @Benchmark
    public RouteOutcome hall(Hall hall) {
        return laid(Router.of(hall.site).route(0, hall.cable, Effort.NORMAL, 1));
    }

    /**
     * The washroom's cables, each with what became of it; the whole plan is made on the way.
     *
     * @param washroom the washroom
     * @return the options
     */
    @Benchmark
    public List<CableOption> washroomOptions(Washroom washroom) {
        return Planner.plan(washroom.brief).options();
    }

    /**
     * One small room.
     *
     * @param small the room
     * @return the route
     */
    @Benchmark
    @Warmup(iterations = 3, time = 2)
    @Measurement(iterations = 3, time = 2)
    public RouteOutcome smallRoom(Small small) {
        return laid(lay(small.floor));
    }
}
