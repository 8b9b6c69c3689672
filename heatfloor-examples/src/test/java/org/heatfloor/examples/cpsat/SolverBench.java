package org.heatfloor.examples.cpsat;

import com.google.ortools.Loader;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.heatfloor.examples.BenchFloors;
import org.heatfloor.examples.LatticeRoute;
import org.heatfloor.examples.SmallRoom;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The fewest turns with no junction left cold, found and proved by the solver: the same small rooms as for the router. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(1)
public class SolverBench {

    private static final double SECONDS_EACH = 60;

    /** The room file. */
    @Param({"small/cloakroom-75", "small/privy-60", "small/corner-room-60"})
    public String room = "";

    /** Threads of the solver; the router has one. */
    @Param({"1"})
    public int workers = 1;

    private SmallRoom floor;

    /**
     * Reads the room file.
     *
     * @throws IOException if it cannot be read
     */
    @Setup
    public void read() throws IOException {
        Loader.loadNativeLibraries();
        floor = BenchFloors.floor(room);
    }

    /**
     * Finds the fewest turns.
     *
     * @return a route with the fewest turns found
     */
    @Benchmark
    public LatticeRoute smallRoom() {
        return new Question(floor, true, SECONDS_EACH, workers).answer(0).route();
    }
}
