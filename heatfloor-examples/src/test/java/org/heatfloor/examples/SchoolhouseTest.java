package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** The main job on the schoolhouse rooms, judged from the plan file as another program would read it. */
class SchoolhouseTest {

    private static final Set<String> UNITS = Set.of(
            "m",
            "m²",
            "m³",
            "kg",
            "W",
            "W/m",
            "W/m²",
            "m²·K/W",
            "W/(m²·K)",
            "°C",
            "K",
            "A",
            "V",
            "Ω",
            "Ω/m",
            "s",
            "rad",
            "1",
            "Hz");

    @ParameterizedTest
    @ValueSource(strings = {"washroom", "boot-room", "kitchen"})
    void theRoomComesOutComplete(String name) throws ParseException {
        Schoolhouse.Run run = Schoolhouse.of(name);
        JsonNode plan = run.json();

        assertThat(run.summary()).as("summary").first().asString().endsWith(": complete");
        assertThat(run.status()).isEqualTo(PlanRoom.COMPLETE);
        assertThat(run.faults()).isEmpty();
        assertThat(plan.get("status").textValue()).isEqualTo("complete");
        assertThat(severities(plan)).isNotEmpty().doesNotContain("error");
        assertThat(plan.get("cables")).isNotEmpty();
        RoomFile file = file(name);
        double unit = file.coordinateUnit().metres();
        double pitch = RoomFileReader.millimetres(file.membrane().studPitch()) / 1_000;
        Polygon floor = file.room().polygon();
        for (JsonNode cable : plan.get("cables")) {
            double length = value(cable.get("length"));
            double laid = value(cable.get("route").get("laidLength"));
            assertThat(length - laid).as("left over of %s", cable.get("name")).isBetween(-1e-6, pitch);
            assertThat(value(cable.get("route").get("leftOver"))).isCloseTo(length - laid, within(1e-6));
            Geometry line = AffineTransformation.scaleInstance(unit, unit)
                    .transform(line(cable.get("route").get("line")));
            assertThat(line.getLength()).isCloseTo(laid, within(0.002 * laid));
            assertThat(line.isSimple()).isTrue();
            assertThat(floor.covers(line)).isTrue();
            assertThat(value(cable.get("route").get("leastClearance").get("wall")))
                    .isCloseTo(floor.getBoundary().distance(line), within(1e-4));
        }
    }

    @Test
    void theMovementJointOfTheKitchenIsNotCrossed() throws ParseException {
        JsonNode plan = Schoolhouse.of("kitchen").json();
        Geometry joint = new WKTReader().read("LINESTRING (3.4 0, 3.4 2.3)");

        assertThat(plan.get("cables").size()).isGreaterThanOrEqualTo(2);
        for (JsonNode cable : plan.get("cables")) {
            assertThat(line(cable.get("route").get("line")).distance(joint)).isGreaterThanOrEqualTo(0.04 - 1e-6);
        }
    }

    @Test
    void theWrongCableIsProvedTooLongAndTheRightLengthsAreTold() {
        Schoolhouse.Run run = Schoolhouse.of("washroom-wrong-cable");
        JsonNode plan = run.json();

        assertThat(run.status()).isEqualTo(PlanRoom.IMPOSSIBLE);
        assertThat(plan.get("status").textValue()).isEqualTo("impossible");
        assertThat(plan.get("cables")).isEmpty();
        assertThat(severities(plan)).contains("error");
        JsonNode fits = plan.get("fittingLengths").get(0);
        double longest = value(fits.get("longest"));
        // About 26.6 m; the bound depends a little on how the planner lets the lattice lie.
        assertThat(63 - longest).isCloseTo(26.6, within(0.4));
        assertThat(value(fits.get("shortest"))).isBetween(15.0, longest);
        assertThat(String.join("\n", run.summary())).contains("impossible", "K63", "too long", "would fit");
    }

    @ParameterizedTest
    @ValueSource(strings = {"washroom", "boot-room", "kitchen", "washroom-wrong-cable"})
    void theSummaryFitsOneScreen(String name) {
        List<String> summary = Schoolhouse.of(name).summary();
        assertThat(summary).hasSizeLessThanOrEqualTo(Summary.LINES);
        assertThat(summary).allMatch(line -> line.length() <= Summary.COLUMNS);
    }

    /** The installer's screen has the meter's figure and the safety words; 31.5 m of 11 W/m on 230 V: 152.7 Ω −5 %/+10 %. */
    @Test
    void theSummaryTellsWhatTheMeterShowsAndWhoConnects() {
        String summary = String.join("\n", Schoolhouse.of("washroom").summary());
        assertThat(summary)
                .contains("reads 145 Ω to 167.9 Ω at 20 °C")
                .contains("licensed electrician", "prove dead", "no mains on the reel", "never cover untested");
        assertThat(String.join("\n", Schoolhouse.of("boot-room").summary())).contains("at 68 °F");
        assertThat(String.join("\n", Schoolhouse.of("washroom-wrong-cable").summary()))
                .doesNotContain("Safety");
    }

    @Test
    void aRoomInFeetIsDrawnInFeetAndInches() {
        assertThat(Schoolhouse.of("boot-room").drawing())
                .contains("laid 90 ft of 90 ft")
                .contains("spacing 4.68 in")
                .doesNotContain("119 mm");
    }

    @Test
    void thePlanFileHasTheKeysOfTheFormat() {
        JsonNode plan = Schoolhouse.of("washroom").json();

        assertThat(keys(plan))
                .containsExactlyInAnyOrder(
                        "format",
                        "room",
                        "status",
                        "lattice",
                        "area",
                        "cables",
                        "circuits",
                        "roomHeat",
                        "takeoff",
                        "fittingLengths",
                        "options",
                        "findings");
        assertThat(plan.get("format").textValue()).isEqualTo("plan/1");
        assertThat(keys(plan.get("lattice"))).containsExactlyInAnyOrder("origin", "angle");
        assertThat(keys(plan.get("area"))).containsExactlyInAnyOrder("floor", "heatable", "heated");
        JsonNode cable = plan.get("cables").get(0);
        assertThat(keys(cable))
                .containsExactlyInAnyOrder(
                        "name",
                        "length",
                        "route",
                        "coldLeads",
                        "sensor",
                        "spareSensor",
                        "resistance",
                        "power",
                        "current",
                        "endReserve",
                        "heat");
        assertThat(keys(cable.get("route")))
                .containsExactlyInAnyOrder(
                        "line",
                        "laidLength",
                        "leftOver",
                        "rightAngleTurns",
                        "evenSpacing",
                        "capacity",
                        "leastSeparation",
                        "leastClearance");
        assertThat(keys(cable.get("route").get("leastClearance")))
                .containsExactlyInAnyOrder("pan", "register", "linen cabinet", "wall");
        assertThat(keys(cable.get("coldLeads").get(0))).containsExactlyInAnyOrder("line", "length", "surplus");
        assertThat(keys(cable.get("sensor"))).containsExactlyInAnyOrder("at", "lead");
        assertThat(keys(cable.get("resistance"))).containsExactlyInAnyOrder("nominal", "low", "high");
        assertThat(keys(cable.get("heat")))
                .containsExactlyInAnyOrder(
                        "powerDensity",
                        "upward",
                        "downward",
                        "surfaceMean",
                        "surfaceMax",
                        "surfaceMin",
                        "sheath",
                        "regularRow");
        assertThat(keys(plan.get("circuits").get(0)))
                .containsExactlyInAnyOrder(
                        "cables",
                        "current",
                        "designCurrent",
                        "protectiveDevice",
                        "conductor",
                        "voltageDrop",
                        "voltageDropShare",
                        "residualCurrentDevice");
        assertThat(keys(plan.get("roomHeat")))
                .containsExactlyInAnyOrder("heatOutput", "heatLoss", "coversHeatLoss", "heatUpTime", "floor");
        assertThat(keys(plan.get("takeoff")))
                .containsExactlyInAnyOrder(
                        "membrane", "pieces", "stock", "stockKind", "mortars", "tiles", "grout", "height", "doors");
        assertThat(keys(plan.get("takeoff").get("mortars").get(0))).containsExactlyInAnyOrder("use", "dry", "bags");
        assertThat(keys(plan.get("takeoff").get("doors").get(0))).containsExactlyInAnyOrder("name", "step");
    }

    @ParameterizedTest
    @ValueSource(strings = {"washroom", "boot-room", "kitchen", "washroom-wrong-cable"})
    void everyQuantityIsInAnSiUnit(String name) {
        List<JsonNode> units = Schoolhouse.of(name).json().findValues("unit");
        assertThat(units).isNotEmpty().extracting(JsonNode::textValue).isSubsetOf(UNITS);
        assertThat(Schoolhouse.of(name).json().findValues("value")).allMatch(v -> v.isNumber() || v.isObject());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "router/R1-k3-one-ended-75",
                "router/R2-k4-one-ended-90",
                "router/R4-k3-two-ended-75",
                "router/R6-k4-two-ended-60"
            })
    void roomsThatForceOneLengthAreLaidExactly(String name) {
        Schoolhouse.Run run = Schoolhouse.of(name);
        assertThat(run.status()).as(String.join("\n", run.summary())).isEqualTo(PlanRoom.COMPLETE);
        JsonNode cable = run.json().get("cables").get(0);
        assertThat(value(cable.get("route").get("leftOver"))).isBetween(-1e-6, 0.028);
        assertThat(cable.get("coldLeads")).hasSize(name.contains("two-ended") ? 2 : 1);
        assertThat(cable.has("heat")).isFalse();
        assertThat(run.json().has("roomHeat")).isFalse();
    }

    @Test
    void theSameRoomGivesTheSameFiles() {
        Schoolhouse.Run once = Schoolhouse.of("router/R1-k3-one-ended-60");
        Schoolhouse.Run again = Schoolhouse.of("./router/R1-k3-one-ended-60");
        assertThat(again.plan()).isEqualTo(once.plan());
        assertThat(again.drawing()).isEqualTo(once.drawing());
    }

    private static RoomFile file(String name) {
        try {
            return RoomFileReader.read(Path.of("rooms", name + ".json"));
        } catch (BadRoomFile e) {
            throw new IllegalStateException(e);
        }
    }

    private static double value(JsonNode quantity) {
        return quantity.get("value").doubleValue();
    }

    private static LineString line(JsonNode wkt) throws ParseException {
        return (LineString) new WKTReader().read(wkt.textValue());
    }

    private static List<String> severities(JsonNode plan) {
        List<String> severities = new ArrayList<>();
        plan.get("findings").forEach(f -> severities.add(f.get("severity").textValue()));
        return severities;
    }

    private static Set<String> keys(JsonNode node) {
        Set<String> keys = new TreeSet<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }
}
