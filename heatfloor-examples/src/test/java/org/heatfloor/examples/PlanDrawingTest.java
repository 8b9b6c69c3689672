package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

class PlanDrawingTest {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final String ACCENT = "rgb(179,38,30)";

    @Test
    void everythingOnTheSheetIsDrawnAndNamed() throws Exception {
        Document svg = parsed(PlanDrawing.svg(sheet("Porch", LengthUnit.MILLIMETRE, 1)));

        assertThat(texts(svg))
                .contains("Porch", "complete: one cable", "trap door", "by the window", "to the yard")
                .contains("heating cable H1", "cold lead", "spare sensor", "studs of the membrane")
                .contains("2000", "1500", "scale 1:20, dimensions in mm")
                .anyMatch(t -> t.startsWith("Mains voltage"));
        assertThat(svg.getDocumentElement().getAttribute("viewBox")).isEqualTo("0 0 29700 21000");
        assertThat(svg.getDocumentElement().getAttribute("width")).isEqualTo("297mm");
    }

    @Test
    void theCableIsDrawnToScaleWhereItLies() throws Exception {
        Document svg = parsed(PlanDrawing.svg(sheet("Porch", LengthUnit.MILLIMETRE, 1)));

        List<double[]> cable = paths(svg, ACCENT).get(0);
        // 1:20, hundredths of a millimetre on paper: 1.8 m become 9000.
        assertThat(Math.abs(cable.get(1)[0] - cable.get(0)[0])).isEqualTo(9_000);
        assertThat(Math.abs(cable.get(2)[1] - cable.get(1)[1])).isEqualTo(1_000);
        // The sheet's y runs down, the room's up.
        assertThat(cable.get(2)[1]).isLessThan(cable.get(1)[1]);
    }

    @Test
    void severalCablesAreToldApart() throws Exception {
        Document svg = parsed(PlanDrawing.svg(sheet("Porch", LengthUnit.METRE, 3)));

        assertThat(texts(svg)).contains("heating cable H1", "heating cable H2", "heating cable H3", "H1", "H2", "H3");
        assertThat(texts(svg)).contains("2", "1.5");
    }

    @Test
    void anImpossibleRoomIsDrawnWithoutCable() throws Exception {
        Document svg = parsed(PlanDrawing.svg(sheet("Porch", LengthUnit.FOOT, 0)));

        assertThat(texts(svg))
                .contains("6 ft 6 3/4 in", "4 ft 11 1/16 in")
                .noneMatch(t -> t.contains("heating cable H"));
    }

    @Test
    void theSameSheetGivesTheSameDrawing() throws Exception {
        assertThat(PlanDrawing.svg(sheet("Porch", LengthUnit.INCH, 2)))
                .isEqualTo(PlanDrawing.svg(sheet("Porch", LengthUnit.INCH, 2)))
                .doesNotContain("\r");
    }

    @Test
    void namesCannotBreakTheDrawing() throws Exception {
        String hostile = "</text><script>alert(1)</script> & \"co\" 'x' ]]>";
        Document svg = parsed(PlanDrawing.svg(sheet(hostile, LengthUnit.MILLIMETRE, 1)));

        assertThat(svg.getElementsByTagName("script").getLength()).isZero();
        assertThat(texts(svg)).contains(hostile);
    }

    @Test
    void roomsOfAnySizeFindAScale() throws Exception {
        for (double side : new double[] {0.3, 2, 6, 15, 40, 100}) {
            Polygon room = box(0, 0, side, side);
            PlanSheet sheet = new PlanSheet(
                    "Hall",
                    "impossible",
                    LengthUnit.METRE,
                    room,
                    Optional.empty(),
                    List.of(),
                    List.of(),
                    List.of(),
                    Optional.empty(),
                    point(0, side / 2),
                    List.of());
            Paper paper = Paper.fitting(room.getEnvelopeInternal());
            assertThat(paper.onPaper(side)).isLessThan(paper.height() - 2 * Paper.EDGE);
            assertThat(texts(parsed(PlanDrawing.svg(sheet)))).contains("Hall");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "2.41, MILLIMETRE, 2410",
        "2.41, CENTIMETRE, 241",
        "2.41, METRE, 2.41",
        "2.3876, INCH, 7 ft 10 in",
        "0.3048, FOOT, 1 ft",
        "0.0079375, INCH, 5/16 in",
        "0.073025, INCH, 2 7/8 in",
    })
    void lengthsReadAsTheTradeWritesThem(double metres, LengthUnit unit, String text) {
        assertThat(Dimensions.length(metres, unit)).isEqualTo(text);
    }

    private static PlanSheet sheet(String title, LengthUnit unit, int cables) throws ParseException {
        Membrane membrane = new Membrane(
                Amounts.millimetres(40), Amounts.millimetres(25), Amounts.millimetres(9), Optional.empty());
        StudLattice lattice = StudLattice.of(membrane, point(0.02, 0.02), Units.METRE, Amounts.degrees(0));
        Polygon trap = box(0.1, 1.0, 0.6, 1.4);
        List<PlanSheet.Run> runs =
                IntStream.rangeClosed(1, cables).mapToObj(PlanDrawingTest::run).toList();
        return new PlanSheet(
                title,
                "complete: one cable",
                unit,
                box(0, 0, 2, 1.5),
                Optional.of(box(0.06, 0.06, 1.94, 1.44).getBoundary()),
                List.of(new PlanSheet.Fixture("trap door", trap, trap.buffer(0.05))),
                List.of(new PlanSheet.Area("by the window", box(0.8, 0.9, 1.9, 1.4))),
                List.of(new PlanSheet.Opening("to the yard", line("LINESTRING (0.5 0, 1.3 0)"))),
                Optional.of(lattice),
                point(2, 0.1),
                runs);
    }

    private static PlanSheet.Run run(int number) {
        double up = 0.5 * (number - 1);
        return new PlanSheet.Run(
                "H" + number,
                "laid 3.8 m",
                FACTORY.createLineString(new Coordinate[] {
                    new Coordinate(1.9, 0.1 + up),
                    new Coordinate(0.1, 0.1 + up),
                    new Coordinate(0.1, 0.3 + up),
                    new Coordinate(1.9, 0.3 + up)
                }),
                List.of(FACTORY.createLineString(
                        new Coordinate[] {new Coordinate(2, 0.1), new Coordinate(1.9, 0.1 + up)})),
                List.of(point(1.9, 0.1 + up)),
                true,
                Optional.of(new PlanSheet.Sensor(point(1, 0.2 + up), FACTORY.createLineString(new Coordinate[] {
                    new Coordinate(2, 0.2 + up), new Coordinate(1, 0.2 + up)
                }))),
                Optional.of(new PlanSheet.Sensor(point(1.2, 0.2 + up), FACTORY.createLineString(new Coordinate[] {
                    new Coordinate(2, 0.2 + up), new Coordinate(1.2, 0.2 + up)
                }))));
    }

    private static Polygon box(double x1, double y1, double x2, double y2) {
        Geometry box = FACTORY.toGeometry(new Envelope(x1, x2, y1, y2));
        return (Polygon) box;
    }

    private static Point point(double x, double y) {
        return FACTORY.createPoint(new Coordinate(x, y));
    }

    private static LineString line(String wkt) throws ParseException {
        return (LineString) new WKTReader().read(wkt);
    }

    private static Document parsed(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<String> texts(Document svg) {
        List<String> texts = new ArrayList<>();
        NodeList nodes = svg.getElementsByTagName("text");
        for (int i = 0; i < nodes.getLength(); i++) {
            texts.add(nodes.item(i).getTextContent().strip());
        }
        return texts;
    }

    /** The paths of one colour that are lines of more than one piece. */
    private static List<List<double[]>> paths(Document svg, String colour) {
        List<List<double[]>> found = new ArrayList<>();
        NodeList nodes = svg.getElementsByTagName("path");
        for (int i = 0; i < nodes.getLength(); i++) {
            Element path = (Element) nodes.item(i);
            if (inherited(path, "stroke").equals(colour)) {
                List<double[]> points = new ArrayList<>();
                String[] numbers =
                        path.getAttribute("d").replaceAll("[A-Z]", " ").strip().split("\\s+");
                for (int k = 0; k + 1 < numbers.length; k += 2) {
                    points.add(new double[] {Double.parseDouble(numbers[k]), Double.parseDouble(numbers[k + 1])});
                }
                if (points.size() > 2) {
                    found.add(points);
                }
            }
        }
        return found;
    }

    private static String inherited(Element element, String attribute) {
        for (Node node = element; node instanceof Element each; node = node.getParentNode()) {
            if (each.hasAttribute(attribute)) {
                return each.getAttribute(attribute);
            }
        }
        return "";
    }
}
