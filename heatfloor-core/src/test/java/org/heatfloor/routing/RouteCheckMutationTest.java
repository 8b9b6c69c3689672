package org.heatfloor.routing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.heatfloor.routing.DrawnRoutes.cable;
import static org.heatfloor.routing.DrawnRoutes.check;
import static org.heatfloor.routing.DrawnRoutes.line;
import static org.heatfloor.routing.DrawnRoutes.rounded;
import static org.heatfloor.routing.DrawnRoutes.rows;
import static org.heatfloor.routing.DrawnRoutes.trueLength;
import static org.heatfloor.routing.DrawnRoutes.with;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/** Valid routes with one rule broken on purpose: the check names exactly that rule. */
class RouteCheckMutationTest {

    private static final LineString LEAD = line(0, 136, 136, 136);

    static Stream<Arguments> mutations() {
        double length = trueLength(20, rows()) + 0.010;
        LineString heating = rounded(20, 7, rows());
        List<Arguments> all = new ArrayList<>();
        // inside the room
        all.add(one("last row through the wall", CheckFindings.ROOM, cable(20, lastRowTo(2040))));
        all.add(one(
                "cold lead through the wall",
                CheckFindings.ROOM,
                cable("K", length, heating, line(0, 136, -30, 110, -30, 60, 30, 136, 136, 136))));
        // walls and columns
        all.add(one("last row to the wall", CheckFindings.WALL, cable(20, lastRowTo(1972))));
        all.add(both(
                "wall clearance one micrometre and a bit more",
                CheckFindings.WALL,
                check().wallClearance(Amounts.millimetres(136.0021)),
                cable(20, rows())));
        all.add(both(
                "past a column",
                CheckFindings.WALL,
                check().keepOuts(List.of()),
                cable(20, with(rows(), 1836, 1190, 136, 1190))));
        // keep-outs
        all.add(both(
                "clearance of a cabinet",
                CheckFindings.KEEP_OUT,
                check().keepOuts(List.of(DrawnRoutes.polygon(
                        "cabinet", 257, "POLYGON ((500 800, 1000 800, 1000 1100, 500 1100, 500 800))"))),
                cable(20, rows())));
        all.add(both(
                "through a cabinet without clearance",
                CheckFindings.KEEP_OUT,
                check().keepOuts(List.of(DrawnRoutes.polygon(
                        "cabinet", 0, "POLYGON ((500 400, 1000 400, 1000 1100, 500 1100, 500 400))"))),
                cable(20, rows())));
        all.add(both(
                "into a round flange",
                CheckFindings.KEEP_OUT,
                check().keepOuts(DrawnRoutes.keepOuts().subList(1, 2)),
                cable(20, with(rows(), 1836, 714, 1496, 714, 1496, 782))));
        all.add(both(
                "cold lead under furniture",
                CheckFindings.KEEP_OUT,
                check().keepOuts(List.of(
                        DrawnRoutes.polygon("box", 0, "POLYGON ((20 100, 60 100, 60 170, 20 170, 20 100))"))),
                cable(20, rows())));
        // movement joint
        all.add(both(
                "joint between rows",
                CheckFindings.JOINT_CROSSED,
                check().keepOuts(List.of(DrawnRoutes.joint("LINESTRING (0 390, 2000 390)"))),
                cable(20, rows())));
        all.add(both(
                "joint across all rows",
                CheckFindings.JOINT_CROSSED,
                check().keepOuts(List.of(DrawnRoutes.joint("LINESTRING (1000 0, 1000 1600)"))),
                cable(20, rows())));
        // spacing
        all.add(both(
                "spacing half a millimetre more",
                CheckFindings.SPACING,
                check().minSpacing(Amounts.millimetres(102.5)),
                cable(20, rows())));
        all.add(one("a hairpin of two studs", CheckFindings.SPACING, cable(20, with(rows(), 1836, 612, 1500, 612))));
        all.add(one(
                "the end comes back to its row",
                CheckFindings.SPACING,
                cable(20, with(rows(), 1836, 646, 1700, 646, 1700, 612))));
        // crossing
        all.add(both(
                "a curl",
                CheckFindings.CROSSING,
                check().minBendRadius(Amounts.millimetres(15)),
                cable(15, with(lastRowTo(1666), 1666, 578, 1632, 578, 1632, 500))));
        all.add(both(
                "a hairpin that touches itself",
                CheckFindings.CROSSING,
                check().minBendRadius(Amounts.metres(0)).keepOuts(List.of()),
                cable(1.7, with(rows(), 1836, 547.4, 1820, 547.4))));
        // bends
        all.add(both(
                "a limit a little above the radius",
                CheckFindings.BEND,
                check().minBendRadius(Amounts.millimetres(20.3)),
                cable(20, rows())));
        all.add(one("all corners sharper", CheckFindings.BEND, cable(19.5, rows())));
        all.add(one("length hidden in a fine zigzag", CheckFindings.BEND, zigzag()));
        all.add(one("one sharp corner", CheckFindings.BEND, oneSharpCorner()));
        // studs
        all.add(one("a radius that cuts the inner stud", CheckFindings.STUD, cable(26, rows())));
        all.add(one("a thick cable", CheckFindings.STUD, withDiameter(9.9, cable(20, rows()))));
        all.add(one("a wide half circle", CheckFindings.STUD, cable(51, rows())));
        // length
        all.add(one(
                "a cable to be stretched by a millimetre",
                CheckFindings.EXACT,
                cable("K", trueLength(20, rows()) - 0.001, heating, LEAD)));
        all.add(one(
                "a stud pitch and a millimetre over",
                CheckFindings.EXACT,
                cable("K", trueLength(20, rows()) + 0.035, heating, LEAD)));
        // joint
        all.add(both(
                "a joint longer than the lead",
                CheckFindings.JOINT,
                check().jointLength(Amounts.millimetres(137)),
                cable(20, rows())));
        all.add(one(
                "a bent joint",
                CheckFindings.JOINT,
                cable("K", length, heating, line(0, 136, 50, 150, 90, 136, 136, 136))));
        all.add(one(
                "a kink at the joint",
                CheckFindings.JOINT,
                cable("K", length, heating, line(0, 136, 136, 32, 136, 136))));
        all.add(one("a kink hidden behind a tenth of a millimetre", CheckFindings.JOINT, hiddenKink()));
        all.add(one("a gap at the joint", CheckFindings.JOINT, cable("K", length, heating, line(0, 136, 135, 136))));
        // cold lead's place
        all.add(one(
                "another start",
                CheckFindings.LEAD_PLACE,
                cable("K", length, heating, line(0, 137, 10, 136, 136, 136))));
        all.add(both(
                "another start by the brief",
                CheckFindings.LEAD_PLACE,
                check().start(DrawnRoutes.point(0, 140), Units.MILLIMETRE),
                cable(20, rows())));
        // cold lead and heating cable
        double[] later = rows();
        later[0] = 204;
        LineString rest = rounded(20, 7, later);
        double laterLength = trueLength(20, later);
        all.add(both(
                "a lead beside the bends",
                CheckFindings.LEAD_SPACING,
                check().start(DrawnRoutes.point(0, 600), Units.MILLIMETRE),
                cable("K", laterLength, rest, line(0, 600, 90, 600, 90, 136, 204, 136))));
        all.add(both(
                "a lead across its own rows",
                CheckFindings.LEAD_SPACING,
                check().start(DrawnRoutes.point(0, 680), Units.MILLIMETRE),
                cable("K", laterLength, rest, line(0, 680, 170, 680, 170, 166, 100, 136, 204, 136))));
        // cold lead's length
        all.add(both(
                "a riser that leaves too little",
                CheckFindings.LEAD_LENGTH,
                check().riser(Amounts.metres(2.865)),
                cable(20, rows())));
        all.add(one(
                "a lead that wanders",
                CheckFindings.LEAD_LENGTH,
                cable("K", length, heating, line(0, 136, 0, 1500, 34, 1500, 34, 136, 136, 136))));
        // cold leads, their number
        all.add(one(
                "one lead at a two-ended cable",
                CheckFindings.LEAD_COUNT,
                conductors(1, cable("K", length, heating, LEAD))));
        all.add(one(
                "two leads at a one-ended cable", CheckFindings.LEAD_COUNT, conductors(2, RouteCheckTest.twoEnded())));
        return all.stream();
    }

    private static double[] lastRowTo(double x) {
        double[] corners = rows();
        corners[18] = x;
        return corners;
    }

    private static Arguments one(String what, Source rule, LaidCable cable) {
        return both(what, rule, check(), cable);
    }

    private static Arguments both(String what, Source rule, RouteCheck.Builder check, LaidCable cable) {
        return Arguments.of(what, rule, check, cable);
    }

    private static LaidCable withDiameter(double millimetres, LaidCable c) {
        return new LaidCable(
                c.name(),
                c.heatingLine(),
                c.coldLeads(),
                c.cableLength(),
                Amounts.millimetres(millimetres),
                c.conductors(),
                c.coldLeadLength());
    }

    private static LaidCable conductors(int conductors, LaidCable c) {
        return new LaidCable(
                c.name(),
                c.heatingLine(),
                c.coldLeads(),
                c.cableLength(),
                c.diameter(),
                conductors,
                c.coldLeadLength());
    }

    /** The first corner drawn without an arc, the others as they should be. */
    private static LaidCable oneSharpCorner() {
        Coordinate[] arc = rounded(20, 7, rows()).getCoordinates();
        List<Coordinate> points = new ArrayList<>(List.of(arc));
        for (int i = 0; i < 8; i++) {
            points.remove(1);
        }
        points.add(1, new Coordinate(1.836, 0.136));
        double metres = trueLength(20, rows()) + 20 * (2 - Math.PI / 2) / 1000;
        return cable("K", metres, DrawnRoutes.FACTORY.createLineString(points.toArray(new Coordinate[0])), LEAD);
    }

    /** The lead comes from below and goes on for a tenth of a millimetre before the cable turns into its row. */
    private static LaidCable hiddenKink() {
        double[] later = rows();
        later[0] = 204;
        List<Coordinate> points = new ArrayList<>(List.of(rounded(20, 7, later).getCoordinates()));
        points.set(0, new Coordinate(0.204, 0.1359));
        points.add(1, new Coordinate(0.204, 0.136));
        return cable(
                "K",
                trueLength(20, later) + 0.010,
                DrawnRoutes.FACTORY.createLineString(points.toArray(new Coordinate[0])),
                line(0, 136, 70, 100, 140, 20, 204, 20, 204, 135.9));
    }

    /** The last row drawn as a saw of teeth too fine for spacing, studs and bends to see. */
    private static LaidCable zigzag() {
        List<Coordinate> points = new ArrayList<>(List.of(rounded(20, 7, rows()).getCoordinates()));
        points.remove(points.size() - 1);
        for (int i = 0; i < 4000; i++) {
            points.add(new Coordinate(0.2 + 0.0003 * i, 0.544 + (i % 2) * 0.0003));
        }
        LineString saw = DrawnRoutes.FACTORY.createLineString(points.toArray(new Coordinate[0]));
        double metres = saw.getLength() + DrawnBends.shorteningMetres(DrawnLine.of(saw)) + 0.010;
        return cable("K", metres, saw, LEAD);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mutations")
    void namesTheRuleThatIsBrokenAndNoOther(String what, Source rule, RouteCheck.Builder check, LaidCable cable) {
        List<Finding> errors = check.build().check(List.of(cable)).findings().stream()
                .filter(Finding::isError)
                .toList();
        // Two places where a long cable crosses itself always have places beside them that break the spacing too.
        Set<Source> rules = errors.stream()
                .map(Finding::source)
                .filter(found -> rule != CheckFindings.CROSSING || found != CheckFindings.SPACING)
                .collect(Collectors.toSet());
        assertThat(rules).as(what + " " + errors).containsExactly(rule);
    }
}
