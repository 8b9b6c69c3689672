package org.heatfloor.examples;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableToLay;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/**
 * What a plan file says of one planned cable and of the studs, read together with its room file. Lines are in metres.
 *
 * @param cable the cable
 * @param line centre line of the heating part
 * @param coldLeads centre lines of the cold leads
 * @param lattice the studs
 * @param others how many more cables the plan has
 */
record PlannedRoom(CableToLay cable, LineString line, List<LineString> coldLeads, StudLattice lattice, int others) {

    private static final String LINE = "Well-Known Text of a LINESTRING";

    static PlannedRoom read(Path file, RoomFile room) throws BadRoomFile {
        JsonNode plan;
        try {
            plan = new ObjectMapper().readTree(file.toFile());
        } catch (IOException e) {
            throw new BadRoomFile("file", Fault.quoted(file.toString()), "a plan file in JSON that can be read");
        }
        if (!"plan/1".equals(plan.path("format").asText())) {
            throw new BadRoomFile("format", Fault.quoted(plan.path("format").asText()), "'plan/1'");
        }
        JsonNode planned = plan.path("cables").path(0);
        if (planned.isMissingNode()) {
            throw new BadRoomFile("cables", "none", "at least one planned cable");
        }
        String name = planned.path("name").asText();
        HeatingCable bought = room.cable().catalogue().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow(() ->
                        new BadRoomFile("cables[0].name", Fault.quoted(name), "a cable of the room file's catalogue"));
        List<LineString> leads = new ArrayList<>();
        for (JsonNode lead : planned.path("coldLeads")) {
            leads.add((LineString) shape("cables[0].coldLeads", lead.path("line"), LineString.class, room));
        }
        if (leads.isEmpty()) {
            throw new BadRoomFile("cables[0].coldLeads", "none", "a cold lead for each end at the wall");
        }
        return new PlannedRoom(
                new CableToLay(
                        bought.name(), bought.conductors(), bought.length(), bought.diameter(), bought.coldLead()),
                (LineString) shape("cables[0].route.line", planned.path("route").path("line"), LineString.class, room),
                leads,
                lattice(plan.path("lattice"), room),
                plan.path("cables").size() - 1);
    }

    private static StudLattice lattice(JsonNode node, RoomFile room) throws BadRoomFile {
        Optional<Point> origin = room.origin();
        Quantity<Angle> angle = room.angle().orElse(Amounts.degrees(0));
        if (node.has("origin")) {
            origin = Optional.of((Point) shape("lattice.origin", node.path("origin"), Point.class, room));
            angle = Amounts.of(node.path("angle").path("value").asDouble(0), Units.RADIAN);
        }
        return StudLattice.of(
                room.membrane(),
                origin.orElseThrow(() -> new BadRoomFile("lattice.origin", "nothing", "the centre of one stud")),
                Units.METRE,
                angle);
    }

    private static Geometry shape(String key, JsonNode node, Class<? extends Geometry> kind, RoomFile room)
            throws BadRoomFile {
        try {
            Geometry read = new WKTReader().read(node.asText());
            if (kind.isInstance(read) && !read.isEmpty()) {
                double unit = room.coordinateUnit().metres();
                return AffineTransformation.scaleInstance(unit, unit).transform(read);
            }
        } catch (ParseException | IllegalArgumentException e) {
            throw new BadRoomFile(key, Fault.quoted(node.asText()), LINE);
        }
        throw new BadRoomFile(key, Fault.quoted(node.asText()), LINE);
    }
}
