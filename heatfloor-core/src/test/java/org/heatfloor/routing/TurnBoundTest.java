package org.heatfloor.routing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;

/** The capacity of a plain room worked by hand, as docs/routing.md prints it. */
class TurnBoundTest {

    /**
     * 1200 × 1400 mm, pitch 28 mm, two studs from the walls: 39 × 47 free junctions, 41 × 49 pitches² of squares three
     * studs wide, so at most 2009/3 − 3 = 666.67 pitches. With z runs each way z(41 + 49) − 3z² − 3 pitches: 660 with 13,
     * 669 with 14; so all of it needs 26 turns, each of which takes 14 mm · (2 − π/2) = 6.01 mm off.
     */
    @Test
    void aPlainRoomByHand() {
        double capacity = new TestSite(1200, 1400, 28, 3, 0, 0).capacity();

        assertThat(capacity).isEqualTo((2009.0 / 3 - 3) * 0.028 - 26 * 0.014 * (2 - Math.PI / 2), within(1e-9));
        assertThat(capacity).isEqualTo(18.510, within(0.0005));
    }

    @Test
    void theChapterPrintsTheseFigures() throws IOException {
        assertThat(Files.readString(Path.of("..", "docs", "routing.md")))
                .contains("39 × 47 junctions", "2009/3 − 3 = 666.67 pitches", "18.667 − 0.156 = 18.510 m");
        assertThat((2009.0 / 3 - 3) * 0.028).isEqualTo(18.667, within(0.0005));
        assertThat(26 * 0.014 * (2 - Math.PI / 2)).isEqualTo(0.156, within(0.0005));
    }

    @Test
    void aRouteNeverTurnsLessThanItsBound() {
        TestSite room = new TestSite(1500, 1700, 30, 3, 2, 100);
        double metres = 0.7 * room.capacity();

        CableRoute route = ((RouteOutcome.Laid) room.route(metres, false)).route();

        int strips = 1;
        // z·(a + b) − k·z² for the free rectangle, which is more than the floor with keep-outs has.
        double pitches = Si.in("laid", route.laidLength(), Units.METRE) / 0.030;
        while (strips * (48.0 + 55) - 3 * strips * strips < pitches + 3) {
            strips++;
        }
        assertThat(route.turns()).isGreaterThanOrEqualTo(2 * strips - 2);
    }
}
