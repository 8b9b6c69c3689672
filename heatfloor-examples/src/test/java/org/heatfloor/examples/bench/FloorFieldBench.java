package org.heatfloor.examples.bench;

import java.util.ArrayList;
import java.util.List;
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
import org.heatfloor.thermal.BuildUp;
import org.heatfloor.thermal.CableRun;
import org.heatfloor.thermal.Climate;
import org.heatfloor.thermal.EmbeddedCable;
import org.heatfloor.thermal.FloorField;
import org.heatfloor.thermal.FloorShape;
import org.heatfloor.thermal.Layer;
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

/**
 * The whole floor by the cosine transform, beside a sparse direct solve of a general library on the same grid. The direct
 * solve is given the least there is to solve: one sheet of cells, the layers lumped into a sideways conductance and a loss
 * to room and below, so that the ratio flatters it. The grids of {@code cells} show the cost against their number.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class FloorFieldBench {

    /** A room: width and height in metres and the longest step in millimetres. */
    @Param({"2.41x1.96/10", "5.2x4.1/10", "2.4x2.4/9.9", "2.4x2.4/4.9", "2.4x2.4/2.4"})
    public String room = "2.41x1.96/10";

    private double width;
    private double height;
    private double step;
    private BuildUp buildUp;
    private Climate climate;
    private CableRun cable;

    /** Lays a serpentine over the room. */
    @Setup
    public void lay() {
        String[] parts = room.split("[x/]", -1);
        width = Double.parseDouble(parts[0]);
        height = Double.parseDouble(parts[1]);
        step = Double.parseDouble(parts[2]);
        buildUp = BuildUp.of(List.of(
                layer("porcelain tile", 9, 1.3),
                Layer.heated(
                        "membrane filled with mortar", Amounts.millimetres(12.6), Amounts.wattsPerMetreKelvin(1.0)),
                layer("mortar", 2.7, 1.0),
                layer("plywood", 18, 0.13),
                layer("mineral wool", 100, 0.037)));
        climate = Climate.of(Amounts.celsius(22), Amounts.celsius(12));
        List<double[]> path = new ArrayList<>();
        boolean up = true;
        for (double x = 0.08; x < width - 0.06; x += 0.102) {
            path.add(new double[] {x, up ? 0.08 : height - 0.08});
            path.add(new double[] {x, up ? height - 0.08 : 0.08});
            up = !up;
        }
        cable = CableRun.of(
                EmbeddedCable.flushWithStuds(
                        Amounts.of(11, Units.WATT_PER_METRE), Amounts.millimetres(5), Amounts.millimetres(9)),
                path.toArray(new double[0][]));
    }

    private static Layer layer(String name, double millimetres, double conductivity) {
        return Layer.of(name, Amounts.millimetres(millimetres), Amounts.wattsPerMetreKelvin(conductivity));
    }

    /**
     * The field by the cosine transform.
     *
     * @return the field
     */
    @Benchmark
    public FloorField cosineTransform() {
        return FloorField.builder(buildUp, climate, FloorShape.rectangle(0, 0, width, height))
                .cable(cable)
                .resolution(Amounts.millimetres(step))
                .solve();
    }

    /**
     * One sheet of cells by sparse Cholesky, its cells numbered by nested dissection; row by row, the factor of the larger
     * room would not fit in memory.
     *
     * @return its temperatures
     */
    @Benchmark
    public DMatrixRMaj sparseDirect() {
        int nx = steps(width);
        int ny = steps(height);
        int n = nx * ny;
        double dx = width / nx;
        double dy = height / ny;
        double sheet = 9e-3 * 1.3 + 15.3e-3 * 1.0 + 18e-3 * 0.13;
        double loss = (11 + 0.34) * dx * dy;
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
                heat.set(c, 0, i % 10 == 0 ? 11 * dy : 0);
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

    private int steps(double length) {
        int n = 4;
        while (1000 * length / n > step) {
            n *= 2;
        }
        return n;
    }
}
