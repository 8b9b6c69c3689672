package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
    void writesRoomFilesThatTheReaderTakes(@TempDir Path folder) throws IOException, BadRoomFile {
        for (int number = 0; number < 90; number++) {
            RandomRoom room = RandomRooms.room(RandomRooms.SEED, number);
            Path file = folder.resolve(number + ".json");
            new ObjectMapper().writeValue(file.toFile(), room.roomFile(1 + number % 2, 10));
            RouterCase read = PrototypeComparison.routerCase(RoomFileReader.read(file));
            assertThat(read.room().area().getValue().doubleValue())
                    .isCloseTo(room.floor().getArea() / 1e6, within(1e-9));
            assertThat(read.keepOuts()).hasSameSizeAs(room.obstacles());
            assertThat(read.start().distance(RouterCase.metres(room.start()))).isLessThan(1e-9);
        }
    }

    @Test
    void hasAPrototypeFigureForEveryRouterRoom() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("rooms", "router"))) {
            assertThat(files.map(file -> file.getFileName().toString().replace(".json", "")))
                    .containsExactlyInAnyOrderElementsOf(
                            PrototypeComparison.prototypeTurns().keySet());
        }
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
