package org.heatfloor.examples.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.heatfloor.area.AreaRules;
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
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
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

/**
 * A room of 12 m² with 20 fixtures on a lattice of 4,800 junctions: the free junctions and channels against the junctions
 * alone asked of the geometry library.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class LatticeBench {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final TradeLength WALL = TradeLength.of(Amounts.millimetres(60));

    private static final AreaRules NO_DEAD_SPACE = new AreaRules(TradeLength.studs(0), Amounts.metres(0));

    private final Membrane membrane =
            new Membrane(Amounts.millimetres(50), Amounts.millimetres(32), Amounts.millimetres(9), Optional.empty());
    private final Room room = Room.ofWkt("POLYGON ((0 0, 4 0, 4 3, 0 3, 0 0))", Units.METRE);
    private final List<KeepOut> fixtures = new ArrayList<>();
    private final List<Point> junctions = new ArrayList<>();
    private StudLattice lattice;
    private Geometry region;
    private Geometry plainRegion;
    private PreparedGeometry prepared;

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
        prepared = PreparedGeometryFactory.prepare(region);
        plainRegion = room.polygon().buffer(-0.06);
        for (KeepOut fixture : fixtures) {
            double clearance = fixture.clearance()
                    .with(membrane.studPitch())
                    .to(Units.METRE)
                    .getValue()
                    .doubleValue();
            double radius = fixture.radius().to(Units.METRE).getValue().doubleValue();
            plainRegion = plainRegion.difference(fixture.shape().buffer(radius + clearance));
        }
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
     * The junctions only, asked one by one of the library's own region with its fine arcs (24 chords a quarter circle).
     *
     * @return how many are free
     */
    @Benchmark
    public int plainCoversOfTheFineRegion() {
        int free = 0;
        for (Point junction : junctions) {
            free += region.covers(junction) ? 1 : 0;
        }
        return free;
    }

    /**
     * The junctions only, asked one by one of the region as one would plainly make it: buffers of 8 chords a quarter
     * circle, which keep too little clearance.
     *
     * @return how many are free
     */
    @Benchmark
    public int plainCovers() {
        int free = 0;
        for (Point junction : junctions) {
            free += plainRegion.covers(junction) ? 1 : 0;
        }
        return free;
    }

    /**
     * The junctions only, asked one by one of the fine region prepared beforehand; making and preparing it is not counted.
     *
     * @return how many are free
     */
    @Benchmark
    public int preparedCovers() {
        int free = 0;
        for (Point junction : junctions) {
            free += prepared.covers(junction) ? 1 : 0;
        }
        return free;
    }

    /**
     * The same with the making: region, preparation and junctions, which is what the grid does from the same input.
     *
     * @return how many are free
     */
    @Benchmark
    public int preparedCoversFromTheRoom() {
        PreparedGeometry made = PreparedGeometryFactory.prepare(
                HeatableArea.of(room, WALL, fixtures, membrane.studPitch(), NO_DEAD_SPACE)
                        .region());
        int free = 0;
        for (Point junction : junctions) {
            free += made.covers(junction) ? 1 : 0;
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

    /**
     * Prints the processor time of a call, which other work on the machine hardly changes.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        LatticeBench bench = new LatticeBench();
        bench.place();
        time("grid", 3000, bench::grid);
        time("plainCovers", 4, bench::plainCovers);
        time("plainCoversOfTheFineRegion", 4, bench::plainCoversOfTheFineRegion);
        time("preparedCovers", 1000, bench::preparedCovers);
        time("preparedCoversFromTheRoom", 60, bench::preparedCoversFromTheRoom);
        time("heatable", 30, bench::heatable);
    }

    private static void time(String what, int calls, Supplier<?> call) {
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        long used = 0;
        Object last = "";
        for (int i = -calls / 2; i < calls; i++) {
            long before = clock.getCurrentThreadCpuTime();
            last = call.get();
            used += i < 0 ? 0 : clock.getCurrentThreadCpuTime() - before;
        }
        System.out.printf(
                Locale.ROOT,
                "%-28s %9.3f ms (%s)%n",
                what,
                used / 1e6 / calls,
                last.getClass().getSimpleName());
    }
}
