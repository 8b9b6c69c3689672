package org.heatfloor.examples.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.heatfloor.area.Room;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.LaidCable;
import org.heatfloor.routing.RouteCheck;
import org.heatfloor.routing.RouteCheckReport;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
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

/** The independent check of a back-and-forth of about 100 m, corners of so many chords. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class RouteCheckBench {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final int ROWS = 60;

    /** Chords in each of the 118 corners. */
    @Param({"6", "17"})
    public int chords;

    private List<LaidCable> cables;
    private RouteCheck check;

    /** Draws the route. */
    @Setup
    public void draw() {
        List<Coordinate> points = new ArrayList<>();
        points.add(new Coordinate(0.136, 0.136));
        for (int row = 0; row < ROWS - 1; row++) {
            double y = 0.136 + 0.102 * row;
            boolean right = row % 2 == 0;
            arc(points, right, y + 0.020, -Math.PI / 2, 0);
            arc(points, right, y + 0.082, 0, Math.PI / 2);
        }
        points.add(new Coordinate(0.136, 0.136 + 0.102 * (ROWS - 1)));
        LineString line = FACTORY.createLineString(points.toArray(new Coordinate[0]));
        LineString lead =
                FACTORY.createLineString(new Coordinate[] {new Coordinate(0, 0.136), new Coordinate(0.136, 0.136)});
        cables = List.of(new LaidCable(
                "K",
                line,
                List.of(lead),
                Amounts.metres(line.getLength() + 0.020),
                Amounts.millimetres(5),
                2,
                Amounts.metres(3)));
        Membrane membrane = new Membrane(
                Amounts.millimetres(34), Amounts.millimetres(22), Amounts.millimetres(9), Optional.empty());
        check = RouteCheck.builder(
                        Room.ofWkt("POLYGON ((0 0, 2 0, 2 7, 0 7, 0 0))", Units.METRE),
                        StudLattice.of(
                                membrane,
                                FACTORY.createPoint(new Coordinate(17, 17)),
                                Units.MILLIMETRE,
                                Amounts.degrees(0)))
                .wallClearance(Amounts.millimetres(60))
                .minSpacing(Amounts.millimetres(102))
                .minBendRadius(Amounts.millimetres(20))
                .start(FACTORY.createPoint(new Coordinate(0, 0.136)), Units.METRE)
                .build();
        if (!check.check(cables).passes()) {
            throw new IllegalStateException(check.check(cables).findings().toString());
        }
    }

    private void arc(List<Coordinate> points, boolean right, double centreY, double from, double to) {
        for (int i = 0; i <= chords; i++) {
            double angle = from + (to - from) * i / chords;
            double x = 0.020 * Math.cos(angle);
            points.add(new Coordinate(right ? 1.816 + x : 0.156 - x, centreY + 0.020 * Math.sin(angle)));
        }
    }

    /**
     * Checks the route.
     *
     * @return the report
     */
    @Benchmark
    public RouteCheckReport check() {
        return check.check(cables);
    }
}
