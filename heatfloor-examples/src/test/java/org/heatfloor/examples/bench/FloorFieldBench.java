package org.heatfloor.examples.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.heatfloor.thermal.CableRun;
import org.heatfloor.thermal.FloorField;
import org.heatfloor.thermal.FloorFieldBuilder;
import org.heatfloor.thermal.FloorShape;
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
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * The whole floor of the schoolhouse washroom and kitchen by the cosine transform, their routes as planned, beside a sparse
 * direct solve of a general library on the same grid. The direct solve is given the least there is to solve: one sheet of
 * cells with the heat of the same routes, the layers lumped into a sideways conductance and a loss to room and below, so that the ratio flatters it. The
 * squares show the cost against the number of cells.
 *
 * <p>{@link #main} runs everything and prints the ratio and the time over {@code n·log n}.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class FloorFieldBench {

    /** A schoolhouse room. */
    @State(Scope.Benchmark)
    public static class RoomState {
        /** The room's name. */
        @Param({"washroom", "kitchen"})
        public String room = "washroom";

        PlannedRoom planned = PlannedRoom.read("washroom");
        int stepsX;
        int stepsY;
        /** Heat of the planned route in each cell, row by row. */
        double[] watts = {};

        /** Reads the room and its planned routes. */
        @Setup
        public void read() {
            planned = PlannedRoom.read(room);
            stepsX = planned.stepsX();
            stepsY = planned.stepsY();
            watts = planned.cellWatts(stepsX, stepsY);
        }
    }

    /** A square floor with a serpentine. */
    @State(Scope.Benchmark)
    public static class SquareState {
        /** Cells along an edge. */
        @Param({"256", "512", "1024"})
        public int cells = 256;

        FloorFieldBuilder builder = square(256);

        /** Lays the serpentine. */
        @Setup
        public void lay() {
            builder = square(cells);
        }

        private static FloorFieldBuilder square(int cells) {
            double side = cells * 0.0099;
            List<double[]> path = new ArrayList<>();
            boolean up = true;
            for (double x = 0.08; x < side - 0.06; x += 0.102) {
                path.add(new double[] {x, up ? 0.08 : side - 0.08});
                path.add(new double[] {x, up ? side - 0.08 : 0.08});
                up = !up;
            }
            PlannedRoom like = PlannedRoom.read("washroom");
            FloorShape floor = FloorShape.rectangle(
                    Amounts.metres(0), Amounts.metres(0), Amounts.metres(side), Amounts.metres(side));
            return FloorField.builder(like.buildUp(), like.climate(), floor)
                    .cable(CableRun.of(like.cables().get(0).cable(), path.toArray(new double[0][]), Units.METRE));
        }
    }

    /**
     * The field by the cosine transform.
     *
     * @param state the room
     * @return the field
     */
    @Benchmark
    public FloorField cosineTransform(RoomState state) {
        return state.planned.builder().solve();
    }

    /**
     * The field of a square, to see the cost against the number of cells.
     *
     * @param state the square
     * @return the field
     */
    @Benchmark
    public FloorField cosineTransformOfSquare(SquareState state) {
        return state.builder.solve();
    }

    /**
     * One sheet of cells by sparse Cholesky, its cells numbered by nested dissection; row by row, the factor of the larger
     * room would not fit in memory.
     *
     * @param state the room
     * @return its temperatures
     */
    @Benchmark
    public DMatrixRMaj sparseDirect(RoomState state) {
        PlannedRoom room = state.planned;
        int nx = state.stepsX;
        int ny = state.stepsY;
        int n = nx * ny;
        double dx = room.width() / nx;
        double dy = room.height() / ny;
        double sheet = room.sheet();
        double loss = room.loss() * dx * dy;
        DMatrixSparseTriplet entries = new DMatrixSparseTriplet(n, n, 5 * n);
        DMatrixRMaj heat = new DMatrixRMaj(n, 1);
        int[] number = new int[n];
        dissect(number, nx, 0, nx, 0, ny, 0);
        for (int j = 0; j < ny; j++) {
            for (int i = 0; i < nx; i++) {
                int c = number[j * nx + i];
                double diagonal = loss;
                if (i > 0) {
                    entries.addItem(c, number[j * nx + i - 1], -sheet * dy / dx);
                    diagonal += sheet * dy / dx;
                }
                if (i + 1 < nx) {
                    entries.addItem(c, number[j * nx + i + 1], -sheet * dy / dx);
                    diagonal += sheet * dy / dx;
                }
                if (j > 0) {
                    entries.addItem(c, number[(j - 1) * nx + i], -sheet * dx / dy);
                    diagonal += sheet * dx / dy;
                }
                if (j + 1 < ny) {
                    entries.addItem(c, number[(j + 1) * nx + i], -sheet * dx / dy);
                    diagonal += sheet * dx / dy;
                }
                entries.addItem(c, c, diagonal);
                heat.set(c, 0, state.watts[j * nx + i]);
            }
        }
        DMatrixSparseCSC matrix = DConvertMatrixStruct.convert(entries, (DMatrixSparseCSC) null);
        LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver = LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
        DMatrixRMaj found = new DMatrixRMaj(n, 1);
        if (!solver.setA(matrix)) {
            throw new IllegalStateException("the matrix is singular");
        }
        solver.solve(heat, found);
        return found;
    }

    /** Numbers a block of cells: one half, the other half, then the line of cells that parts them. */
    private static int dissect(int[] number, int nx, int i0, int i1, int j0, int j1, int next) {
        int count = next;
        if (i1 - i0 > 2 && i1 - i0 >= j1 - j0) {
            int middle = (i0 + i1) / 2;
            count = dissect(number, nx, i0, middle, j0, j1, count);
            count = dissect(number, nx, middle + 1, i1, j0, j1, count);
            return dissect(number, nx, middle, middle + 1, j0, j1, count);
        }
        if (j1 - j0 > 2) {
            int middle = (j0 + j1) / 2;
            count = dissect(number, nx, i0, i1, j0, middle, count);
            count = dissect(number, nx, i0, i1, middle + 1, j1, count);
            return dissect(number, nx, i0, i1, middle, middle + 1, count);
        }
        for (int j = j0; j < j1; j++) {
            for (int i = i0; i < i1; i++) {
                number[j * nx + i] = count++;
            }
        }
        return count;
    }

    /**
     * Runs all of it and prints, beside the times, how many times longer the direct solve takes and the time over {@code
     * n·log2 n}.
     *
     * @param args nothing
     * @throws RunnerException if a benchmark fails
     */
    public static void main(String[] args) throws RunnerException {
        Map<String, Double> fast = new TreeMap<>();
        Map<String, Double> direct = new TreeMap<>();
        Map<Integer, Double> squares = new TreeMap<>();
        for (RunResult result : new Runner(new OptionsBuilder()
                        .include(FloorFieldBench.class.getName())
                        .build())
                .run()) {
            double milliseconds = result.getPrimaryResult().getScore();
            String name = result.getParams().getBenchmark();
            if (name.endsWith("Square")) {
                squares.put(Integer.valueOf(result.getParams().getParam("cells")), milliseconds);
            } else {
                (name.endsWith("sparseDirect") ? direct : fast)
                        .put(result.getParams().getParam("room"), milliseconds);
            }
        }
        fast.forEach((room, ms) -> System.out.printf(
                Locale.ROOT,
                "%s: cosine transform %.1f ms, sparse direct %.0f ms, ratio %.0f%n",
                room,
                ms,
                direct.get(room),
                direct.get(room) / ms));
        squares.forEach((cells, ms) -> {
            double n = (double) cells * cells;
            System.out.printf(
                    Locale.ROOT,
                    "%d x %d: %.1f ms, %.2f ns over n log2 n%n",
                    cells,
                    cells,
                    ms,
                    1e6 * ms / (n * Math.log(n) / Math.log(2)));
        });
    }
}
