package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.MembranePiece;
import org.heatfloor.takeoff.TakeOff;
import org.heatfloor.takeoff.TilePattern;
import org.heatfloor.takeoff.TilePiece;
import org.heatfloor.takeoff.TileSpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
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

    private static List<String> texts(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        NodeList nodes = factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
                .getElementsByTagName("text");
        List<String> texts = new ArrayList<>();
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
        List<String> membrane = texts(drawings.get("membrane.svg"));
        for (MembranePiece piece : takeOff.membraneCut().orElseThrow().pieces()) {
            assertThat(membrane).contains(String.valueOf(piece.number()));
            double trim = piece.onStock().getEnvelopeInternal().getMinX()
                    - piece.cutRectangle().getEnvelopeInternal().getMinX();
            String line = entry(membrane, piece.number() + ": from " + piece.stockNumber() + " at ");
            assertThat(line.contains("off its left end")).isEqualTo(trim > 0.0005);
        }
        List<String> tiles = texts(drawings.get("tiles.svg"));
        for (TilePiece piece : takeOff.layout().orElseThrow().pieces()) {
            if (!piece.isWhole()) {
                assertThat(tiles).contains(String.valueOf(piece.tileNumber()));
            }
        }
    }

    /** A list entry with the lines it runs on to. */
    private static String entry(List<String> texts, String start) {
        int at = 0;
        while (!texts.get(at).startsWith(start)) {
            at++;
        }
        StringBuilder entry = new StringBuilder(texts.get(at));
        for (int i = at + 1; i < texts.size() && !texts.get(i).matches("[0-9]+: .*|[0-9]+"); i++) {
            entry.append(' ').append(texts.get(i));
        }
        return entry.toString();
    }

    @Test
    void theWashroomIsDimensionedFromItsWalls() throws Exception {
        RoomFile file = RoomFileReader.read(Path.of("rooms", "washroom.json"));
        TakeOff takeOff = takeOff(file);
        Map<String, String> drawings = TakeoffSheets.drawings(file, takeOff);
        List<String> tiles = texts(drawings.get("tiles.svg"));
        Envelope room = file.room().polygon().getEnvelopeInternal();
        SettingOut lines = SettingOut.of(takeOff.layout().orElseThrow(), room).orElseThrow();
        for (List<Double> stops : List.of(lines.stopsAcross(), lines.stopsUp())) {
            assertThat(stops.size()).isBetween(4, 5);
            long sum = 0;
            for (int i = 1; i < stops.size(); i++) {
                long part = Math.round((stops.get(i) - stops.get(0)) * 1_000)
                        - Math.round((stops.get(i - 1) - stops.get(0)) * 1_000);
                assertThat(tiles).contains(String.valueOf(part));
                sum += part;
            }
            assertThat(tiles).contains(String.valueOf(sum));
        }
        double joint = lines.lineAcross();
        assertThat(takeOff.layout().orElseThrow().pieces())
                .as("the setting-out line runs in the middle of a 3 mm joint")
                .anyMatch(p -> Math.abs(p.shape().getEnvelopeInternal().getMinX() - joint - 0.0015) < 1e-6);
        assertThat(tiles).contains("whole tile", "door, with its name", "to the hall");
        assertThat(texts(drawings.get("membrane.svg"))).contains("left over", "to the hall", "2410", "1960");
    }

    /** Diagonal tiles and membrane laid at 17°: lines run in joints, and every wall's chain adds up to the wall. */
    @Test
    void slantedLayoutsAreDimensionedAlongTheWalls() throws Exception {
        RoomFile file = RoomFileReader.read(Path.of("rooms", "washroom.json"));
        TileSpec tile = TileSpec.of(
                Amounts.millimetres(300),
                Amounts.millimetres(300),
                Amounts.millimetres(9),
                Amounts.millimetres(3),
                TilePattern.DIAGONAL,
                Amounts.of(10, Units.PERCENT));
        StudLattice lattice = StudLattice.of(
                file.membrane(),
                new GeometryFactory().createPoint(new Coordinate(0, 0)),
                Units.METRE,
                Amounts.degrees(17));
        TakeOff takeOff =
                TakeOff.of(file.room(), file.membrane(), lattice).tile(tile).build();
        Polygon room = file.room().polygon();
        List<LineString> lines = SlantedSettingOut.lines(takeOff.layout().orElseThrow(), room);
        assertThat(lines).hasSize(2);
        for (LineString line : lines) {
            assertThat(takeOff.layout().orElseThrow().pieces())
                    .noneMatch(p -> p.shape().buffer(-1e-4).intersects(line));
        }
        Map<String, String> drawings = TakeoffSheets.drawings(file, takeOff);
        chainsAddUp(room, lines, texts(drawings.get("tiles.svg")));
        chainsAddUp(room, takeOff.membraneCut().orElseThrow().joints(), texts(drawings.get("membrane.svg")));
    }

    private static void chainsAddUp(Polygon room, List<LineString> lines, List<String> texts) {
        List<Coordinate> met = new ArrayList<>();
        lines.forEach(l -> met.addAll(List.of(l.getCoordinates())));
        Coordinate[] ring = room.getExteriorRing().getCoordinates();
        int inner = 0;
        for (int i = 1; i < ring.length; i++) {
            LineSegment wall = Orientation.isCCW(ring)
                    ? new LineSegment(ring[i - 1], ring[i])
                    : new LineSegment(ring[i], ring[i - 1]);
            List<Double> stops = WallChains.stops(wall, met);
            inner += stops.size() - 2;
            long sum = 0;
            for (int k = 1; k < stops.size(); k++) {
                String part = Dimensions.part(stops, k, LengthUnit.MILLIMETRE);
                assertThat(texts).contains(part);
                sum += Long.parseLong(part);
            }
            assertThat(sum).isEqualTo(Math.round(1_000 * wall.getLength()));
        }
        assertThat(inner).isGreaterThanOrEqualTo(4);
    }

    @Test
    void aMovementJointIsDrawnAndExplained() throws Exception {
        RoomFile file = RoomFileReader.read(Path.of("rooms", "kitchen.json"));
        Map<String, String> drawings = TakeoffSheets.drawings(file, takeOff(file));
        for (String sheet : drawings.values()) {
            assertThat(texts(sheet)).contains("movement joint, to be kept open to the base", "to the yard");
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
