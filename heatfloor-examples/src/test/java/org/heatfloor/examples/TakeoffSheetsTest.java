package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.MembranePiece;
import org.heatfloor.takeoff.TakeOff;
import org.heatfloor.takeoff.TilePiece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.w3c.dom.NodeList;

class TakeoffSheetsTest {

    private static TakeOff takeOff(RoomFile file) {
        StudLattice lattice = StudLattice.of(
                file.membrane(),
                new GeometryFactory().createPoint(new Coordinate(0, 0)),
                Units.METRE,
                Amounts.degrees(0));
        return TakeOff.of(file.room(), file.membrane(), lattice)
                .keepOuts(file.keepOuts())
                .tile(file.tile().orElseThrow())
                .bedding(file.bedding().orElseThrow())
                .build();
    }

    private static Set<String> texts(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        NodeList nodes = factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
                .getElementsByTagName("text");
        Set<String> texts = new HashSet<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            texts.add(nodes.item(i).getTextContent().strip());
        }
        return texts;
    }

    @ParameterizedTest
    @ValueSource(strings = {"washroom", "boot-room", "kitchen"})
    void everyPieceIsNumberedAndListed(String room) throws Exception {
        RoomFile file = RoomFileReader.read(Path.of("rooms", room + ".json"));
        TakeOff takeOff = takeOff(file);
        Map<String, String> drawings = TakeoffSheets.drawings(file, takeOff);
        Set<String> membrane = texts(drawings.get("membrane.svg"));
        for (MembranePiece piece : takeOff.membraneCut().orElseThrow().pieces()) {
            assertThat(membrane).contains(String.valueOf(piece.number()));
            assertThat(membrane).anyMatch(t -> t.startsWith(piece.number() + ": from " + piece.stockNumber() + " at "));
        }
        Set<String> tiles = texts(drawings.get("tiles.svg"));
        for (TilePiece piece : takeOff.layout().orElseThrow().pieces()) {
            if (!piece.isWhole()) {
                assertThat(tiles).contains(String.valueOf(piece.tileNumber()));
            }
        }
    }

    @Test
    void wantsTwoArguments() {
        PrintStream none = new PrintStream(java.io.OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
        assertThat(TakeoffSheets.run(none, none, "one")).isEqualTo(PlanRoom.BAD_INPUT);
        assertThat(TakeoffSheets.run(none, none, "no-such-room.json", "target/none"))
                .isEqualTo(PlanRoom.BAD_INPUT);
    }
}
