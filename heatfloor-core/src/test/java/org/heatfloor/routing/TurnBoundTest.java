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
     * studs wide, so at most 2009/3 − 3 = 666.67 pitches. At most 13 runs meet a row of 41 cells and sweep 39 of it. So 14
     * runs along the rows and 13 across sweep 14·3·41 + 7·39 = 1995 cells, which makes 662 pitches with 26 turns; only 17
     * and 16 runs sweep all, with 32 turns, each of which takes 14 mm · (2 − π/2) = 6.01 mm off.
     */
    @Test
    void aPlainRoomByHand() {
        double capacity = new TestSite(1200, 1400, 28, 3, 0, 0).capacity();

        assertThat(capacity).isEqualTo((2009.0 / 3 - 3) * 0.028 - 32 * 0.014 * (2 - Math.PI / 2), within(1e-9));
        assertThat(capacity).isEqualTo(18.4744, within(0.00005));
    }

    @Test
    void theChapterPrintsTheseFigures() throws IOException {
        assertThat(Files.readString(Path.of("..", "docs", "routing.md")))
                .contains(
                        "39 × 47 junctions",
                        "2009/3 − 3 = 666.67 pitches",
                        "14·3·41 + 7·39 = 1995",
                        "18.6667 − 0.1923 = 18.4744 m",
                        "// 18.474 m");
        assertThat((2009.0 / 3 - 3) * 0.028).isEqualTo(18.6667, within(0.00005));
        assertThat(32 * 0.014 * (2 - Math.PI / 2)).isEqualTo(0.1923, within(0.00005));
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
