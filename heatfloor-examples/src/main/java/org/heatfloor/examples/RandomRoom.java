package org.heatfloor.examples;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** One invented room with its lattice and what a cable has to keep. Lengths and coordinates are millimetres. */
record RandomRoom(
        String kind,
        String name,
        Polygon floor,
        List<Obstacle> obstacles,
        double pitch,
        double stud,
        Point origin,
        int spacing,
        double bend,
        double diameter,
        Point start) {

    static final double COLD_LEAD_METRES = 3;

    private static final Map<String, KeepOutKind> KINDS = Map.of(
            "toilet-flange", KeepOutKind.TOILET_FLANGE,
            "fixed-furniture", KeepOutKind.FIXED_FURNITURE,
            "air-register", KeepOutKind.AIR_REGISTER);

    /** A place without cable; a point has a diameter. The clearance is written as in a room file. */
    record Obstacle(String name, String kind, Geometry shape, double diameter, String clearance) {

        double clearanceMillimetres(double pitch) {
            double number = Double.parseDouble(clearance.substring(0, clearance.indexOf(' ')));
            return clearance.endsWith("studs") ? number * pitch : number;
        }

        private KeepOut keepOut() {
            double number = Double.parseDouble(clearance.substring(0, clearance.indexOf(' ')));
            TradeLength kept = clearance.endsWith("studs")
                    ? TradeLength.studs(number)
                    : TradeLength.of(Amounts.millimetres(number));
            KeepOutKind what = KINDS.getOrDefault(kind, KeepOutKind.OTHER);
            return shape instanceof Point centre
                    ? KeepOut.round(name, what, centre, Units.MILLIMETRE, Amounts.millimetres(diameter), kept)
                    : KeepOut.of(name, what, shape, Units.MILLIMETRE, kept);
        }
    }

    /** What router and check are to be built from. */
    RouterCase routerCase() {
        List<KeepOut> keepOuts = new ArrayList<>();
        obstacles.forEach(obstacle -> keepOuts.add(obstacle.keepOut()));
        Membrane membrane = new Membrane(
                Amounts.millimetres(pitch), Amounts.millimetres(stud), Amounts.millimetres(9), Optional.empty());
        return new RouterCase(
                name,
                Room.of(floor, Units.MILLIMETRE),
                TradeLength.studs(2),
                keepOuts,
                StudLattice.of(membrane, origin, Units.MILLIMETRE, Amounts.degrees(0)),
                TradeLength.studs(spacing),
                Amounts.millimetres(bend),
                RouterCase.metres(start),
                Amounts.metres(1.2),
                Amounts.metres(0.1));
    }

    /** The room as a room file that forces one cable. */
    ObjectNode roomFile(int conductors, double lengthMetres) {
        ObjectNode file = new ObjectMapper().createObjectNode();
        file.put("format", "room/1").put("name", name).put("coordinateUnit", "mm");
        file.put("outline", floor.toText()).put("wallClearance", "2 studs");
        ArrayNode keepOuts = file.putArray("keepOuts");
        for (Obstacle obstacle : obstacles) {
            ObjectNode node = keepOuts.addObject();
            node.put("name", obstacle.name()).put("kind", obstacle.kind());
            node.put("shape", obstacle.shape().toText());
            if (obstacle.diameter() > 0) {
                node.put("diameter", text(obstacle.diameter(), "mm"));
            }
            node.put("clearance", obstacle.clearance());
        }
        file.putObject("membrane")
                .put("studPitch", text(pitch, "mm"))
                .put("studDiameter", text(stud, "mm"))
                .put("height", "9 mm")
                .put("origin", origin.toText())
                .put("angle", "0 °");
        ObjectNode cable = file.putObject("cable");
        cable.put("minSpacing", spacing + " studs").put("maxSpacing", "12 studs");
        cable.put("minBendRadius", text(bend, "mm")).put("start", start.toText());
        cable.putArray("catalogue")
                .addObject()
                .put("name", "X")
                .put("conductors", conductors)
                .put("length", String.format(Locale.ROOT, "%.4f m", lengthMetres))
                .put("power", String.format(Locale.ROOT, "%.1f W", 10 * lengthMetres))
                .put("voltage", "230 V")
                .put("diameter", text(diameter, "mm"))
                .put("coldLead", text(COLD_LEAD_METRES, "m"));
        file.putObject("supply")
                .put("voltage", "230 V")
                .put("code", "IEC 60364")
                .put("feederLength", "12 m")
                .put("conductor", "2.5 mm²");
        return file;
    }

    private static String text(double value, String unit) {
        String number = value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.1f", value);
        return number + " " + unit;
    }
}
