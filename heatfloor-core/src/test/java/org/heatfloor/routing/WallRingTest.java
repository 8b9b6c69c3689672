package org.heatfloor.routing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.WKTReader;

class WallRingTest {

    private static final Coordinate[] L_SHAPE = {
        new Coordinate(0, 0),
        new Coordinate(3, 0),
        new Coordinate(3, 1),
        new Coordinate(2, 1),
        new Coordinate(2, 2),
        new Coordinate(0, 2)
    };

    /** Whatever corner the outline begins with, every corner is moved off both its walls. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5})
    void everyCornerIsMovedOffBothItsWalls(int first) {
        Coordinate[] ring = new Coordinate[7];
        for (int i = 0; i < 7; i++) {
            ring[i] = L_SHAPE[(i + first) % 6].copy();
        }
        Polygon room = new GeometryFactory().createPolygon(ring);
        WallRing walls = WallRing.nearest(room, new Coordinate(0, 1));

        List<Coordinate> round = walls.corners(walls.nearest(new Coordinate(0, 1)), walls.length - 0.01, 0.05);

        assertThat(round).allSatisfy(c -> {
            assertThat(room.covers(room.getFactory().createPoint(c))).isTrue();
            assertThat(room.getBoundary().distance(room.getFactory().createPoint(c)))
                    .isEqualTo(0.05, within(1e-9));
        });
        // Five plain corners and one that juts in, rounded about in six chords.
        assertThat(round).hasSize(5 + 7);
        assertThat(round.stream().filter(c -> walls.roundsCorner(c, 0.05))).hasSize(7);
    }

    @Test
    void aStartOnAColumnGoesRoundTheColumn() throws Exception {
        Polygon room = (Polygon) new WKTReader()
                .read("POLYGON ((0 0, 3 0, 3 2.4, 0 2.4, 0 0), (1.2 1, 1.2 1.4, 1.6 1.4, 1.6 1, 1.2 1))");

        WallRing walls = WallRing.nearest(room, new Coordinate(1.2, 1.2));

        assertThat(walls.length).isEqualTo(1.6, within(1e-9));
        double[] inward = walls.inward(walls.nearest(new Coordinate(1.2, 1.2)));
        assertThat(inward[0]).isEqualTo(-1, within(1e-9));
    }
}
