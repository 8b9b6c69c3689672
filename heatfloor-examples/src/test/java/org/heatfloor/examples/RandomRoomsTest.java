package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class RandomRoomsTest {

    @Test
    void drawsTheSameRoomForTheSameNumber() {
        for (int number = 0; number < 30; number++) {
            assertThat(RandomRooms.room(RandomRooms.SEED, number).roomFile(2, 10))
                    .isEqualTo(RandomRooms.room(RandomRooms.SEED, number).roomFile(2, 10));
        }
        assertThat(RandomRooms.room(1, 5).roomFile(2, 10))
                .isNotEqualTo(RandomRooms.room(2, 5).roomFile(2, 10));
    }

    @Test
    void drawsFiveHundredValidRoomsOfEveryKindPitchAndSpacing() {
        Set<String> kinds = new TreeSet<>();
        Set<Double> pitches = new TreeSet<>();
        Set<Integer> spacings = new TreeSet<>();
        for (int number = 0; number < 540; number++) {
            RandomRoom room = RandomRooms.room(RandomRooms.SEED, number);
            assertThat(room.floor().isValid()).as(room.name()).isTrue();
            assertThat(room.floor().getBoundary().distance(room.start()))
                    .as(room.name())
                    .isZero();
            double largest = (room.pitch() / Math.sqrt(2) - (room.stud() + room.diameter()) / 2) / (Math.sqrt(2) - 1);
            assertThat(room.bend()).as(room.name()).isLessThanOrEqualTo(largest);
            kinds.add(room.kind());
            pitches.add(room.pitch());
            spacings.add(room.spacing());
        }
        assertThat(kinds).hasSize(9);
        assertThat(pitches).hasSize(16);
        assertThat(spacings).containsExactly(3, 4);
    }
}
