package org.heatfloor.area;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** The distance law: no offset curve is nearer than asked. Distances are measured without the offset code. */
class OffsetProperties {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    @Property(tries = 2_000, edgeCases = EdgeCasesMode.NONE)
    void a_shrunk_room_keeps_the_clearance_from_every_wall(@ForAll RandomRooms.Shape shape, @ForAll long seed) {
        Polygon outline = RandomRooms.outline(shape, seed);
        double distance = 0.01 + 0.3 * new Random(seed).nextDouble();

        Geometry inner = Offsets.shrunk(outline, distance);

        if (!inner.isEmpty()) {
            assertThat(inner.distance(outline.getBoundary())).isGreaterThanOrEqualTo(distance);
            assertThat(outline.contains(inner)).isTrue();
        }
    }

    @Property(tries = 2_000, edgeCases = EdgeCasesMode.NONE)
    void a_grown_shape_keeps_the_clearance_outside(@ForAll RandomRooms.Shape shape, @ForAll long seed) {
        Polygon outline = RandomRooms.outline(shape, seed);
        double distance = 0.01 + 0.3 * new Random(seed).nextDouble();

        Geometry outer = Offsets.grown(outline, distance);

        assertThat(outer.getBoundary().distance(outline)).isGreaterThanOrEqualTo(distance);
    }

    /** Sixteen walls in a ring leave a false island when offset by a little more than the circle they enclose. */
    @Property(tries = 1_000, edgeCases = EdgeCasesMode.NONE)
    void a_round_room_that_closes_leaves_nothing_false(
            @ForAll @IntRange(min = 3, max = 60) int walls,
            @ForAll @DoubleRange(min = 0.5, max = 1.1) @Scale(4) double share) {
        Coordinate[] ring = new Coordinate[walls + 1];
        for (int i = 0; i < walls; i++) {
            double angle = 2 * Math.PI * i / walls;
            ring[i] = new Coordinate(Math.cos(angle), Math.sin(angle));
        }
        ring[walls] = ring[0].copy();
        Polygon outline = FACTORY.createPolygon(ring);

        Geometry inner = Offsets.shrunk(outline, share);

        assertThat(inner.isEmpty() || inner.distance(outline.getBoundary()) >= share)
                .isTrue();
        if (share > Math.cos(Math.PI / walls)) {
            assertThat(inner.isEmpty()).isTrue();
        } else if (share < 0.998 * Math.cos(Math.PI / walls)) {
            assertThat(inner.isEmpty()).isFalse();
        }
    }

    @Property(tries = 2_000, edgeCases = EdgeCasesMode.NONE)
    void a_grown_line_or_centre_keeps_the_clearance(@ForAll long seed) {
        Random random = new Random(seed);
        Polygon outline = RandomRooms.outline(RandomRooms.Shape.STAR, seed);
        double distance = 0.01 + 0.3 * random.nextDouble();
        Coordinate[] places = new Coordinate[2 + random.nextInt(3)];
        for (int i = 0; i < places.length; i++) {
            places[i] = RandomRooms.place(outline, random);
        }
        Geometry line = FACTORY.createLineString(places);
        Geometry centre = FACTORY.createPoint(places[0]);

        assertThat(Offsets.grown(line, distance).getBoundary().distance(line)).isGreaterThanOrEqualTo(distance);
        assertThat(Offsets.grown(centre, distance).getBoundary().distance(centre))
                .isGreaterThanOrEqualTo(distance);
    }
}
