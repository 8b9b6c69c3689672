package org.heatfloor.routing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** The check against sampling every millimetre, and against the same drawing moved, turned, mirrored or in inches. */
class RouteCheckProperties {

    private static final double STEP = 0.001;

    /** A random walk in the channels, rounded; it may cross itself and lie anywhere. */
    private static LineString walk(int seed) {
        Random random = new Random(seed);
        int runs = 2 + random.nextInt(18);
        double[] corners = new double[2 * (runs + 1)];
        double x = 34 * (6 + random.nextInt(40));
        double y = 34 * (6 + random.nextInt(30));
        int heading = random.nextInt(4);
        corners[0] = x;
        corners[1] = y;
        for (int i = 1; i <= runs; i++) {
            double run = 34 * (2 + random.nextInt(9));
            x += run * (heading == 0 ? 1 : heading == 2 ? -1 : 0);
            y += run * (heading == 1 ? 1 : heading == 3 ? -1 : 0);
            corners[2 * i] = x;
            corners[2 * i + 1] = y;
            heading = (heading + (random.nextBoolean() ? 1 : 3)) % 4;
        }
        return DrawnRoutes.rounded(15 + random.nextInt(18), 9, corners);
    }

    @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
    void agreesWithSamplingEveryMillimetre(@ForAll @IntRange(min = 0, max = 1_000_000) int seed) {
        LineString line = walk(seed);
        List<double[]> samples = samples(line);
        RouteCheck check = DrawnRoutes.check().build();
        CableCheck found = check.check(List.of(DrawnRoutes.cable("K", line.getLength(), line)))
                .cables()
                .get(0);

        double gap = Math.PI / 2 * 0.102;
        double sampled = separation(samples, gap);
        Statistics.label("pairs beyond the gap").collect(Double.isFinite(sampled));
        if (Double.isFinite(sampled)) {
            double exact = metres(found.leastSeparation().orElseThrow());
            Statistics.label("spacing broken").collect(exact < 0.102 - 0.0004);
            // The window's edge moves by up to a step, each place by up to half a step.
            assertThat(exact).isBetween(sampled - 2 * STEP, sampled + 1e-9);
        }
        assertThat(metres(found.leastWallClearance()))
                .isCloseTo(distance(samples, check.room.polygon().getBoundary()), within(STEP / 2 + 1e-9));
        assertThat(metres(found.leastStudGap())).isCloseTo(studs(samples) - 0.0135, within(STEP / 2 + 0.0002));
        Geometry drain = DrawnRoutes.FACTORY.createPoint(new Coordinate(1.5, 0.9));
        assertThat(metres(found.leastClearance().get("drain")))
                .isCloseTo(distance(samples, drain) - 0.055, within(STEP / 2 + 1e-9));
        double cabinet = distance(samples, DrawnRoutes.keepOuts().get(0).shape());
        assertThat(metres(found.leastClearance().get("cabinet"))).isCloseTo(cabinet, within(STEP / 2 + 1e-9));
    }

    private static List<double[]> samples(LineString line) {
        List<double[]> samples = new ArrayList<>();
        Coordinate[] points = line.getCoordinates();
        double along = 0;
        for (int i = 0; i + 1 < points.length; i++) {
            double length = points[i].distance(points[i + 1]);
            int steps = (int) Math.ceil(length / STEP);
            for (int k = 0; k <= steps; k++) {
                double t = (double) k / steps;
                samples.add(new double[] {
                    points[i].x + t * (points[i + 1].x - points[i].x),
                    points[i].y + t * (points[i + 1].y - points[i].y),
                    along + t * length
                });
            }
            along += length;
        }
        return samples;
    }

    private static double separation(List<double[]> samples, double gap) {
        double least = Double.POSITIVE_INFINITY;
        int first = 0;
        for (double[] b : samples) {
            while (first < samples.size() && samples.get(first)[2] <= b[2] - gap) {
                first++;
            }
            for (int i = 0; i < first; i++) {
                double[] a = samples.get(i);
                double dx = a[0] - b[0];
                double dy = a[1] - b[1];
                least = Math.min(least, dx * dx + dy * dy);
            }
        }
        return Math.sqrt(least);
    }

    private static double distance(List<double[]> samples, Geometry geometry) {
        double least = Double.POSITIVE_INFINITY;
        for (double[] sample : samples) {
            Point place = DrawnRoutes.FACTORY.createPoint(new Coordinate(sample[0], sample[1]));
            least = Math.min(least, geometry.distance(place));
        }
        return least;
    }

    private static double studs(List<double[]> samples) {
        double least = Double.POSITIVE_INFINITY;
        for (double[] sample : samples) {
            double u = (sample[0] - 0.017) / 0.034;
            double v = (sample[1] - 0.017) / 0.034;
            least = Math.min(least, 0.034 * Math.hypot(u - Math.rint(u), v - Math.rint(v)));
        }
        return least;
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void doesNotDependOnWhereAndHowTheDrawingLies(
            @ForAll @IntRange(min = 0, max = 1_000_000) int seed,
            @ForAll @IntRange(min = 0, max = 3) int quarterTurns,
            @ForAll boolean mirrored,
            @ForAll @IntRange(min = -200, max = 200) int shift,
            @ForAll boolean inches) {
        AffineTransformation moved = new AffineTransformation();
        if (mirrored) {
            moved.scale(-1, 1);
        }
        moved.rotate(quarterTurns * Math.PI / 2);
        moved.translate(shift / 7.0, -shift / 3.0);
        AffineTransformation same = new AffineTransformation();

        CableCheck here = checked(seed, same, 0, Units.METRE);
        CableCheck there = checked(seed, moved, quarterTurns * 90.0, inches ? Units.INCH : Units.METRE);

        assertThat(there.rightAngleTurns()).isEqualTo(here.rightAngleTurns());
        assertThat(metres(there.laidLength())).isCloseTo(metres(here.laidLength()), within(1e-9));
        assertThat(metres(there.leftOver())).isCloseTo(metres(here.leftOver()), within(1e-9));
        assertThat(there.leastSeparation().isPresent())
                .isEqualTo(here.leastSeparation().isPresent());
        if (here.leastSeparation().isPresent()) {
            assertThat(metres(there.leastSeparation().orElseThrow()))
                    .isCloseTo(metres(here.leastSeparation().orElseThrow()), within(1e-9));
        }
        assertThat(metres(there.leastWallClearance())).isCloseTo(metres(here.leastWallClearance()), within(1e-9));
        assertThat(metres(there.leastStudGap())).isCloseTo(metres(here.leastStudGap()), within(1e-9));
        assertThat(metres(there.leastBendRadius().orElseThrow()))
                .isCloseTo(metres(here.leastBendRadius().orElseThrow()), within(1e-7));
        here.leastClearance().forEach((name, clearance) -> assertThat(
                        metres(there.leastClearance().get(name)))
                .isCloseTo(metres(clearance), within(1e-9)));
        assertThat(rules(there)).isEqualTo(rules(here));
    }

    private static List<String> rules(CableCheck found) {
        return found.findings().stream()
                .map(finding -> finding.severity() + " " + finding.source())
                .toList();
    }

    private static CableCheck checked(int seed, AffineTransformation move, double degrees, Unit<Length> unit) {
        double scale = Amounts.metres(1).to(unit).getValue().doubleValue();
        AffineTransformation scaled = new AffineTransformation(move).scale(scale, scale);
        AffineTransformation metres = AffineTransformation.scaleInstance(0.001, 0.001);
        Room room = Room.of((Polygon) scaled.transform(metres.transform(DrawnRoutes.read(DrawnRoutes.ROOM))), unit);
        List<KeepOut> keepOuts = new ArrayList<>();
        for (KeepOut k : DrawnRoutes.keepOuts()) {
            Geometry shape = scaled.transform(k.shape());
            keepOuts.add(
                    shape instanceof Point centre
                            ? KeepOut.round(
                                    k.name(),
                                    KeepOutKind.DRAIN,
                                    centre,
                                    unit,
                                    k.radius().multiply(2),
                                    k.clearance())
                            : KeepOut.of(k.name(), k.kind(), shape, unit, k.clearance()));
        }
        Membrane membrane = new Membrane(
                Amounts.millimetres(34), Amounts.millimetres(22), Amounts.millimetres(9), Optional.empty());
        Point stud = (Point) scaled.transform(DrawnRoutes.point(0.017, 0.017));
        Point start = (Point) scaled.transform(DrawnRoutes.point(0, 0.136));
        RouteCheck check = RouteCheck.builder(room, StudLattice.of(membrane, stud, unit, Amounts.degrees(degrees)))
                .wallClearance(Amounts.millimetres(60).to(unit))
                .keepOuts(keepOuts)
                .minSpacing(TradeLength.studs(3).with(membrane.studPitch()).to(unit))
                .minBendRadius(Amounts.millimetres(20).to(unit))
                .start(start, unit)
                .build();
        LineString line = walk(seed);
        LaidCable cable = DrawnRoutes.cable("K", line.getLength(), (LineString) move.transform(line), (LineString)
                move.transform(DrawnRoutes.line(0, 136, 136, 136)));
        return check.check(List.of(cable)).cables().get(0);
    }

    private static double metres(Quantity<Length> length) {
        return length.to(Units.METRE).getValue().doubleValue();
    }
}
