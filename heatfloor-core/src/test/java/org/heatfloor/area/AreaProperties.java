package org.heatfloor.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.statistics.Statistics;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** What must hold for every room. */
class AreaProperties {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final Quantity<Length> PITCH = Amounts.millimetres(34);

    private static final AreaRules NO_DEAD_SPACE = new AreaRules(TradeLength.studs(0), Amounts.metres(0));

    /** A micrometre of grid along some 60 m of edges. */
    private static final double GRID_SQUARE_METRES = 60e-6;

    /** An outline with keep-outs, all in one frame, as plain geometry. */
    private record Plan(Polygon outline, List<Geometry> shapes, List<Double> clearances, double wallClearance) {

        static Plan random(RandomRooms.Shape shape, long seed) {
            Random random = new Random(seed);
            Polygon outline = RandomRooms.outline(shape, seed);
            List<Geometry> shapes = new ArrayList<>();
            List<Double> clearances = new ArrayList<>();
            Coordinate inside = outline.getInteriorPoint().getCoordinate();
            for (int i = 0; i < 3; i++) {
                Coordinate other = RandomRooms.place(outline, random);
                Geometry line = FACTORY.createLineString(new Coordinate[] {inside, other});
                shapes.add(
                        switch (random.nextInt(3)) {
                            case 0 -> FACTORY.createPoint(inside);
                            case 1 -> line.buffer(0.05 + 0.2 * random.nextDouble(), 1);
                            default -> line;
                        });
                clearances.add(random.nextInt(3) == 0 ? 0 : 0.25 * random.nextDouble());
            }
            return new Plan(outline, shapes, clearances, 0.001 + 0.3 * random.nextDouble() * random.nextDouble());
        }

        Plan moved(AffineTransformation move) {
            return new Plan(
                    (Polygon) move.transform(outline),
                    shapes.stream().map(move::transform).toList(),
                    clearances,
                    wallClearance);
        }

        List<KeepOut> keepOuts(Unit<Length> unit, double factor, double extraClearance) {
            List<KeepOut> out = new ArrayList<>();
            for (int i = 0; i < shapes.size(); i++) {
                TradeLength clearance = TradeLength.of(Amounts.metres(clearances.get(i) + extraClearance));
                Geometry shape =
                        AffineTransformation.scaleInstance(factor, factor).transform(shapes.get(i));
                if (shape instanceof org.locationtech.jts.geom.Point point) {
                    out.add(KeepOut.round(
                            "flange", KeepOutKind.TOILET_FLANGE, point, unit, Amounts.millimetres(110), clearance));
                } else {
                    out.add(KeepOut.of("thing " + i, KeepOutKind.OTHER, shape, unit, clearance));
                }
            }
            return out;
        }

        HeatableArea heatable(Unit<Length> unit, double factor, int keepOuts, double extraClearance, AreaRules rules) {
            Geometry scaled = AffineTransformation.scaleInstance(factor, factor).transform(outline);
            return HeatableArea.of(
                    Room.of((Polygon) scaled, unit),
                    TradeLength.of(Amounts.metres(wallClearance + extraClearance)),
                    keepOuts(unit, factor, extraClearance).subList(0, keepOuts),
                    PITCH,
                    rules);
        }

        HeatableArea heatable(int keepOuts, double extraClearance) {
            return heatable(Units.METRE, 1, keepOuts, extraClearance, AreaRules.usual());
        }

        HeatableArea heatable() {
            return heatable(shapes.size(), 0);
        }
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void moving_turning_and_mirroring_change_no_area(@ForAll RandomRooms.Shape shape, @ForAll long seed) {
        Plan plan = Plan.random(shape, seed);
        HeatableArea here = plan.heatable();
        Random random = new Random(seed);

        for (AffineTransformation move : List.of(
                AffineTransformation.translationInstance(10 * random.nextDouble(), -10 * random.nextDouble()),
                new AffineTransformation(0, -1, 0, 1, 0, 0),
                AffineTransformation.reflectionInstance(1, 0))) {
            HeatableArea there = plan.moved(move).heatable();
            assertThat(region(there)).isCloseTo(region(here), within(GRID_SQUARE_METRES));
            assertThat(heatable(there)).isCloseTo(heatable(here), within(GRID_SQUARE_METRES));
            assertThat(squareMetres(there.floorArea())).isCloseTo(squareMetres(here.floorArea()), within(1e-9));
        }
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void the_unit_of_the_coordinates_changes_no_area(@ForAll RandomRooms.Shape shape, @ForAll long seed) {
        Plan plan = Plan.random(shape, seed);
        HeatableArea metres = plan.heatable();

        for (HeatableArea other : List.of(
                plan.heatable(Units.MILLIMETRE, 1000, 3, 0, AreaRules.usual()),
                plan.heatable(Units.INCH, 1 / 0.0254, 3, 0, AreaRules.usual()))) {
            assertThat(region(other)).isCloseTo(region(metres), within(GRID_SQUARE_METRES));
            assertThat(heatable(other)).isCloseTo(heatable(metres), within(GRID_SQUARE_METRES));
            assertThat(squareMetres(other.floorArea())).isCloseTo(squareMetres(metres.floorArea()), within(1e-9));
        }
    }

    /** With dead space taken off, as the user sees it; the region before dead space and the places themselves obey as well. */
    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void one_keep_out_more_never_leaves_more_and_a_wider_clearance_neither(
            @ForAll RandomRooms.Shape shape, @ForAll long seed) {
        Plan plan = Plan.random(shape, seed);
        Random random = new Random(seed);
        int keepOuts = random.nextInt(4);
        HeatableArea after =
                keepOuts < 3 ? plan.heatable(keepOuts + 1, 0) : plan.heatable(keepOuts, 0.2 * random.nextDouble());
        HeatableArea before = plan.heatable(keepOuts, 0);
        leavesNoMore(before, after);
        keepsEveryClearance(plan, keepOuts, before.heatableRegion());
    }

    private static void leavesNoMore(HeatableArea before, HeatableArea after) {
        assertThat(region(after)).isLessThanOrEqualTo(region(before) + GRID_SQUARE_METRES);
        assertThat(heatable(after)).isLessThanOrEqualTo(heatable(before) + GRID_SQUARE_METRES);
        Geometry gained = Offsets.difference(after.heatableRegion(), before.heatableRegion());
        assertThat(gained.getArea()).isLessThan(GRID_SQUARE_METRES);
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void heatable_kept_out_and_dead_are_the_floor(@ForAll RandomRooms.Shape shape, @ForAll long seed) {
        Plan plan = Plan.random(shape, seed);
        HeatableArea area = HeatableArea.of(
                Room.of(plan.outline(), Units.METRE),
                TradeLength.of(Amounts.metres(plan.wallClearance())),
                plan.keepOuts(Units.METRE, 1, 0),
                PITCH);

        double dead = area.deadSpaces().stream()
                .mapToDouble(d -> squareMetres(d.area()))
                .sum();
        double taken =
                area.taken().stream().mapToDouble(t -> squareMetres(t.area())).sum();
        double parts = area.parts().stream().mapToDouble(Geometry::getArea).sum();
        assertThat(taken + parts + dead).isCloseTo(squareMetres(area.floorArea()), within(GRID_SQUARE_METRES));
        assertThat(taken).isCloseTo(squareMetres(area.keptOutArea()), within(GRID_SQUARE_METRES));
        assertThat(dead).isCloseTo(squareMetres(area.deadArea()), within(GRID_SQUARE_METRES));
    }

    /**
     * The distance law through the public door, with distances of the geometry library that have no part in the offsets. Most
     * of the rooms must have something left to measure, and every family of outlines must take its part.
     */
    @Property(tries = 10_000, edgeCases = EdgeCasesMode.NONE)
    void the_region_keeps_every_clearance(@ForAll RandomRooms.Shape shape, @ForAll long seed) {
        Plan plan = Plan.random(shape, seed);
        Geometry region = plan.heatable(Units.METRE, 1, 3, 0, NO_DEAD_SPACE).region();
        Statistics.label("left").collect(!region.isEmpty()).coverage(c -> c.check(true)
                .percentage(p -> p > 80));
        Statistics.label("shape").collect(shape).coverage(c -> {
            for (RandomRooms.Shape each : RandomRooms.Shape.values()) {
                c.check(each).percentage(p -> p > 5);
            }
        });
        keepsEveryClearance(plan, 3, region);
    }

    private static void keepsEveryClearance(Plan plan, int keepOuts, Geometry region) {
        if (region.isEmpty()) {
            return;
        }
        // A part that has one place inside and keeps off the walls lies inside altogether.
        assertThat(region.distance(plan.outline().getBoundary())).isGreaterThanOrEqualTo(plan.wallClearance());
        for (Polygon part : Offsets.polygons(region)) {
            assertThat(plan.outline().contains(part.getInteriorPoint())).isTrue();
        }
        for (KeepOut keepOut : plan.keepOuts(Units.METRE, 1, 0).subList(0, keepOuts)) {
            double needed = keepOut.clearanceMetres(0.034);
            if (needed > 0) {
                assertThat(region.distance(keepOut.shape()) - keepOut.radiusMetres())
                        .isGreaterThanOrEqualTo(needed);
            }
        }
    }

    @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
    void a_polygon_walked_as_wall_runs_comes_back(@ForAll RandomRooms.Shape shape, @ForAll long seed) {
        Polygon outline = FACTORY.createPolygon(
                RandomRooms.outline(shape, seed).getExteriorRing().getCoordinates());
        Coordinate[] ring = outline.getCoordinates();
        int count = ring.length - 1;
        if (outline.getArea() < 1e-3 || shortestSide(ring) < 0.001) {
            return;
        }
        WallRuns runs = WallRuns.start();
        for (int i = 0; i < count; i++) {
            Coordinate a = ring[i];
            Coordinate b = ring[i + 1];
            Coordinate c = ring[(i + 2) % count];
            double turn = Math.atan2(c.y - b.y, c.x - b.x) - Math.atan2(b.y - a.y, b.x - a.x);
            turn = Math.IEEEremainder(turn, 2 * Math.PI);
            if (Math.abs(turn) > Math.PI - 2e-6) {
                return;
            }
            runs.wall("wall " + i, Amounts.metres(a.distance(b))).turn(Amounts.of(turn, Units.RADIAN));
        }

        SurveyedRoom surveyed = runs.close();

        AffineTransformation home = AffineTransformation.translationInstance(-ring[0].x, -ring[0].y);
        home.rotate(-Math.atan2(ring[1].y - ring[0].y, ring[1].x - ring[0].x));
        Coordinate[] expected = home.transform(outline).getCoordinates();
        Coordinate[] found = surveyed.room().polygon().getCoordinates();
        assertThat(found).hasSameSizeAs(expected);
        for (int i = 0; i < expected.length; i++) {
            assertThat(found[i].distance(expected[i])).isLessThan(1e-9);
        }
        assertThat(Si.in("misclosure", surveyed.misclosure(), Units.METRE)).isLessThan(1e-9);
    }

    /**
     * A round wall at the end of two straight ones, hollow or bulging into the room: no place of the true arc lies inside the
     * drawn room, so a clearance kept from the drawing is kept from the wall, and none is farther than 0.1 mm from it.
     */
    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void a_round_wall_is_drawn_on_the_rooms_side(
            @ForAll @DoubleRange(min = 0.3, max = 20) @Scale(4) double radius,
            @ForAll @DoubleRange(min = 5, max = 175) @Scale(3) double sweepDegrees,
            @ForAll boolean hollow) {
        double sweep = Math.toRadians(hollow ? sweepDegrees : -sweepDegrees);
        double chord = 2 * radius * Math.sin(Math.abs(sweep) / 2);
        double deep = 3 * radius;
        SurveyedRoom surveyed = WallRuns.start()
                .wall("south", Amounts.metres(chord))
                .left()
                .wall("east", Amounts.metres(deep))
                .turn(Amounts.of(Math.PI / 2 - sweep / 2, Units.RADIAN))
                .arc("round", Amounts.metres(radius), Amounts.of(sweep, Units.RADIAN))
                .turn(Amounts.of(Math.PI / 2 - sweep / 2, Units.RADIAN))
                .wall("west", Amounts.metres(deep))
                .left()
                .close();

        Polygon room = surveyed.room().polygon();
        double centreY = deep - Math.signum(sweep) * radius * Math.cos(sweep / 2);
        for (int i = 0; i <= 200; i++) {
            double angle = Math.PI / 2 + Math.abs(sweep) * (i / 200.0 - 0.5);
            Geometry place = FACTORY.createPoint(new Coordinate(
                    chord / 2 + radius * Math.cos(angle), centreY + Math.signum(sweep) * radius * Math.sin(angle)));
            double away = room.getBoundary().distance(place);
            assertThat(away).isLessThanOrEqualTo(0.0001 + 1e-9);
            assertThat(!room.contains(place) || away < 1e-9).isTrue();
        }
    }

    private static double shortestSide(Coordinate[] ring) {
        double shortest = Double.POSITIVE_INFINITY;
        for (int i = 0; i + 1 < ring.length; i++) {
            shortest = Math.min(shortest, ring[i].distance(ring[i + 1]));
        }
        return shortest;
    }

    private static double region(HeatableArea area) {
        return area.region().getArea();
    }

    private static double heatable(HeatableArea area) {
        return squareMetres(area.heatableArea());
    }

    private static double squareMetres(Quantity<javax.measure.quantity.Area> area) {
        return Si.in("area", area, Units.SQUARE_METRE);
    }
}
