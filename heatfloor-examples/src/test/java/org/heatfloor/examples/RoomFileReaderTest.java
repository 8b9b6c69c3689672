package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.TradeLength;
import org.heatfloor.electrical.ConductorSize;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.Bedding;
import org.heatfloor.thermal.Climate;
import org.heatfloor.thermal.Layer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a good room file becomes. */
class RoomFileReaderTest {

    static Stream<Path> schoolhouse() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("rooms"))) {
            List<Path> rooms =
                    files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
            return rooms.stream();
        }
    }

    @ParameterizedTest
    @MethodSource("schoolhouse")
    void everyRoomOfTheSchoolhouseCanBeRead(Path file) throws BadRoomFile {
        RoomFile room = RoomFileReader.read(file);
        assertThat(room.room().polygon().getArea()).isBetween(1.0, 100.0);
        assertThat(room.cable().catalogue()).isNotEmpty();
    }

    @Test
    void valuesArriveInMetresAndInTheUnitWritten() throws Exception {
        RoomFile room = RoomFileReader.read(resource("/bad-rooms/good.json"));

        assertThat(room.coordinateUnit()).isEqualTo(LengthUnit.MILLIMETRE);
        assertThat(room.room().polygon().getArea()).isCloseTo(2.4 * 1.9 - 0.04, within(1e-12));
        assertThat(room.wallClearance()).contains(TradeLength.of(Amounts.millimetres(60)));
        assertThat(room.keepOuts())
                .extracting(KeepOut::kind)
                .containsExactly(KeepOutKind.TOILET_FLANGE, KeepOutKind.FURNITURE_ON_LEGS);
        assertThat(room.keepOuts().get(0).clearance()).isEqualTo(TradeLength.studs(7));
        assertThat(room.keepOuts().get(1).freeHeight().map(RoomFileReader::millimetres))
                .contains(60.0);
        assertThat(room.membrane().stock().map(MembraneStock::kind)).contains(MembraneStock.Kind.SHEET);
        HeatingCable second = room.cable().catalogue().get(1);
        assertThat(second.length().to(Units.METRE).getValue().doubleValue()).isCloseTo(24.9936, within(1e-9));
        assertThat(RoomFileReader.millimetres(second.diameter())).isCloseTo(4.7625, within(1e-9));
        assertThat(second.conductors()).isEqualTo(1);
        assertThat(room.cable().start().getX()).isCloseTo(2.4, within(1e-12));
        assertThat(RoomFileReader.millimetres(room.cable().riser())).isEqualTo(1500);
        assertThat(room.climate()
                        .orElseThrow()
                        .below()
                        .to(Units.CELSIUS)
                        .getValue()
                        .doubleValue())
                .isCloseTo(12.2222, within(1e-4));
        assertThat(room.buildUp().orElseThrow().layers())
                .extracting(Layer::heated)
                .containsExactly(false, true, false);
    }

    @Test
    void whatIsLeftOutHasTheDefaultOfTheFormat() throws Exception {
        RoomFile washroom = RoomFileReader.read(Path.of("rooms/washroom.json"));

        assertThat(RoomFileReader.millimetres(washroom.cable().riser())).isEqualTo(1200);
        assertThat(RoomFileReader.millimetres(washroom.cable().jointLength())).isEqualTo(100);
        assertThat(washroom.cable().floorSensor()).isTrue();
        assertThat(washroom.cable().cableHeight()).isEmpty();
        assertThat(washroom.origin()).isEmpty();
        Bedding bedding = washroom.bedding().orElseThrow();
        assertThat(bedding.trowelOver().angle().to(Units.DEGREE).getValue().doubleValue())
                .isEqualTo(60);
        assertThat(bedding.contact().to(Units.PERCENT).getValue().doubleValue()).isEqualTo(95);
        assertThat(bedding.mortarUnder()
                        .density()
                        .to(Units.KILOGRAM_PER_LITRE)
                        .getValue()
                        .doubleValue())
                .isCloseTo(1.6, within(1e-12));
        assertThat(bedding.mortarOver().water().to(Units.ONE).getValue().doubleValue())
                .isEqualTo(0.25);
    }

    @Test
    void mortarIsAsTheFileSays() throws Exception {
        Bedding bedding =
                RoomFileReader.read(resource("/bad-rooms/good.json")).bedding().orElseThrow();

        assertThat(bedding.mortarOver().water().to(Units.ONE).getValue().doubleValue())
                .isEqualTo(0.22);
        assertThat(bedding.trowelUnder().angle().to(Units.DEGREE).getValue().doubleValue())
                .isEqualTo(45);
        assertThat(bedding.trowelOver().angle().to(Units.DEGREE).getValue().doubleValue())
                .isEqualTo(60);
    }

    @Test
    void conductorsAreSizesOrGauges() throws Exception {
        ConductorSize washroom =
                RoomFileReader.read(Path.of("rooms/washroom.json")).supply().conductor();
        ConductorSize bootRoom =
                RoomFileReader.read(Path.of("rooms/boot-room.json")).supply().conductor();

        assertThat(washroom).isEqualTo(ConductorSize.of("2.5 mm²"));
        assertThat(bootRoom).isEqualTo(ConductorSize.ofGauge(12));
        assertThat(RoomFileReader.read(Path.of("rooms/boot-room.json"))
                        .climate()
                        .flatMap(Climate::heatLoss))
                .isEqualTo(Optional.empty());
    }

    private static Path resource(String name) throws URISyntaxException {
        return Path.of(Objects.requireNonNull(RoomFileReaderTest.class.getResource(name))
                .toURI());
    }
}
