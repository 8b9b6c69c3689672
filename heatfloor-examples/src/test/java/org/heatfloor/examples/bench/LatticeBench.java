package org.heatfloor.examples.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.heatfloor.area.HeatableArea;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.grid.ChannelGrid;
import org.heatfloor.grid.LatticeChoice;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A room of 12 m² with 20 fixtures on a lattice of some 4,800 junctions: our grid against plain geometry questions. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class LatticeBench {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final TradeLength WALL = TradeLength.of(Amounts.millimetres(60));

    private final Membrane membrane =
            new Membrane(Amounts.millimetres(50), Amounts.millimetres(32), Amounts.millimetres(9), Optional.empty());
    private final Room room = Room.ofWkt("POLYGON ((0 0, 4 0, 4 3, 0 3, 0 0))", Units.METRE);
    private final List<KeepOut> fixtures = new ArrayList<>();
    private final List<Point> junctions = new ArrayList<>();
    private StudLattice lattice;
    private Geometry region;

    /** Places the fixtures, the same in every run. */
    @Setup
    public void place() {
        Random random = new Random(12);
        for (int i = 0; i < 20; i++) {
            Point at = FACTORY.createPoint(
                    new Coordinate(0.2 + 3.6 * random.nextDouble(), 0.2 + 2.6 * random.nextDouble()));
            if (i % 2 == 0) {
                fixtures.add(KeepOut.round(
                        "flange " + i,
                        KeepOutKind.DRAIN,
                        at,
                        Units.METRE,
                        Amounts.millimetres(110),
                        TradeLength.of(Amounts.millimetres(80))));
            } else {
                Point other =
                        FACTORY.createPoint(new Coordinate(at.getX() + 0.1, at.getY() + 0.15 * random.nextDouble()));
                Geometry box = at.union(other).convexHull().buffer(0.06);
                fixtures.add(KeepOut.of(
                        "box " + i, KeepOutKind.OTHER, box, Units.METRE, TradeLength.of(Amounts.millimetres(50))));
            }
        }
        lattice = StudLattice.of(membrane, FACTORY.createPoint(new Coordinate(0, 0)), Units.METRE, Amounts.degrees(0));
        region = HeatableArea.of(room, WALL, fixtures, membrane.studPitch()).region();
        ChannelGrid grid = grid();
        for (int row = 0; row < grid.rows(); row++) {
            for (int column = 0; column < grid.columns(); column++) {
                junctions.add(FACTORY.createPoint(grid.junction(column, row)));
            }
        }
    }

    /**
     * Every junction and both channels from it, exact.
     *
     * @return the grid
     */
    @Benchmark
    public ChannelGrid grid() {
        return ChannelGrid.of(lattice, room, WALL, fixtures);
    }

    /**
     * The junctions only, asked one by one of the buffered region.
     *
     * @return how many are free
     */
    @Benchmark
    public int plainCovers() {
        int free = 0;
        for (Point junction : junctions) {
            free += region.covers(junction) ? 1 : 0;
        }
        return free;
    }

    /**
     * The choice of a lattice, all candidates.
     *
     * @return the lattice
     */
    @Benchmark
    public StudLattice choice() {
        return LatticeChoice.choose(membrane, room, WALL, fixtures);
    }

    /**
     * The heatable area with dead space.
     *
     * @return the area
     */
    @Benchmark
    public HeatableArea heatable() {
        return HeatableArea.of(room, WALL, fixtures, membrane.studPitch());
    }
}
