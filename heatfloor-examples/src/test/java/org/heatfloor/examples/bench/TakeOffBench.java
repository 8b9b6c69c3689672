package org.heatfloor.examples.bench;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.heatfloor.area.Room;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.LayoutRule;
import org.heatfloor.takeoff.MembraneCut;
import org.heatfloor.takeoff.TileLayout;
import org.heatfloor.takeoff.TilePattern;
import org.heatfloor.takeoff.TileSpec;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
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

/** Cutting the membrane and laying the tiles of an invented washroom and kitchen. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class TakeOffBench {

    /** The room. */
    @Param({"washroom", "kitchen"})
    public String name = "washroom";

    private Room room;
    private Membrane membrane;
    private StudLattice lattice;
    private TileSpec tile;

    /** Makes room, membrane and tile. */
    @Setup
    public void make() {
        boolean small = name.equals("washroom");
        room = small
                ? Room.ofWkt("POLYGON ((0 0, 2.41 0, 2.41 1.64, 2.11 1.64, 2.11 1.96, 0 1.96, 0 0))", Units.METRE)
                : Room.ofWkt("POLYGON ((0 0, 5.2 0, 5.2 2.3, 3.4 2.3, 3.4 4.1, 0 4.1, 0 0))", Units.METRE);
        double pitch = small ? 34 : 38;
        membrane = new Membrane(
                Amounts.millimetres(pitch),
                Amounts.millimetres(22),
                Amounts.millimetres(9),
                Optional.of(
                        small
                                ? new MembraneStock(
                                        MembraneStock.Kind.SHEET, Amounts.millimetres(1224), Amounts.millimetres(612))
                                : new MembraneStock(
                                        MembraneStock.Kind.ROLL, Amounts.metres(1.14), Amounts.metres(19))));
        lattice = StudLattice.of(
                membrane,
                new GeometryFactory().createPoint(new Coordinate(pitch / 2, pitch / 2)),
                Units.MILLIMETRE,
                Amounts.degrees(0));
        tile = TileSpec.of(
                Amounts.millimetres(600),
                Amounts.millimetres(small ? 300 : 600),
                Amounts.millimetres(9),
                Amounts.millimetres(3),
                small ? TilePattern.THIRD_OFFSET : TilePattern.STRAIGHT,
                Amounts.of(10, Units.PERCENT));
    }

    /**
     * The membrane's cut with its bounds.
     *
     * @return the cut
     */
    @Benchmark
    public MembraneCut cut() {
        return MembraneCut.of(room, membrane, lattice);
    }

    /**
     * The balanced tile layout with offcuts reused.
     *
     * @return the layout
     */
    @Benchmark
    public TileLayout tiles() {
        return TileLayout.of(room, tile, LayoutRule.USUAL);
    }
}
