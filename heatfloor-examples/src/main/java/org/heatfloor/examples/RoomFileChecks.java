package org.heatfloor.examples;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.Door;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.PriorityZone;
import org.heatfloor.grid.Membrane;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** What must hold between the parts of a room file. Each check is made as far as its parts could be read. */
final class RoomFileChecks {

    /** A start this near a wall face counts as on it, as the library has it. */
    static final double ON_WALL_METRES = 0.025;

    /** A door's line may be drawn in the reveal, this far from the wall face. */
    static final double IN_REVEAL_METRES = 0.3;

    private static final double LEAST_SIDE_METRES = 0.2;
    private static final double MOST_SIDE_METRES = 100;
    private static final double MOST_STUDS = 500_000;

    private final double metres;
    private final Faults faults;

    /** @param metres the metres of one coordinate unit, to show places as they were written */
    RoomFileChecks(double metres, Faults faults) {
        this.metres = metres;
        this.faults = faults;
    }

    /** The outline where its size is believable, so that nothing is judged against one that is not. */
    Optional<Polygon> floor(Optional<Polygon> outline, Optional<Membrane> membrane) {
        if (outline.isEmpty()) {
            return outline;
        }
        Envelope box = outline.get().getEnvelopeInternal();
        double least = Math.min(box.getWidth(), box.getHeight());
        double most = Math.max(box.getWidth(), box.getHeight());
        if (!(least >= LEAST_SIDE_METRES && most <= MOST_SIDE_METRES)) {
            faults.add(
                    "outline",
                    "a room of " + ShapeText.number(box.getWidth()) + " m by " + ShapeText.number(box.getHeight())
                            + " m",
                    "sides of " + LEAST_SIDE_METRES + " m to " + MOST_SIDE_METRES + " m in the coordinateUnit");
            return Optional.empty();
        }
        if (membrane.isPresent()) {
            double pitch = RoomFileReader.millimetres(membrane.get().studPitch()) / 1_000;
            double studs = outline.get().getArea() / (pitch * pitch);
            if (!(studs <= MOST_STUDS)) {
                faults.add(
                        "outline",
                        "a floor of " + ShapeText.number(outline.get().getArea()) + " m² or " + Math.round(studs)
                                + " studs",
                        "at most " + Math.round(MOST_STUDS) + " studs");
            }
        }
        return outline;
    }

    <T> void names(String list, List<Optional<T>> entries, Function<T, String> naming) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < entries.size(); i++) {
            Optional<String> name = entries.get(i).map(naming);
            if (name.isPresent() && !seen.add(name.get())) {
                faults.add(list + "[" + i + "].name", Fault.quoted(name.get()) + " a second time", "each name once");
            }
        }
    }

    void keepOuts(Optional<Polygon> outline, List<Optional<KeepOut>> keepOuts) {
        names("keepOuts", keepOuts, KeepOut::name);
        for (int i = 0; i < keepOuts.size(); i++) {
            Optional<KeepOut> keepOut = keepOuts.get(i);
            String key = "keepOuts[" + i + "]";
            if (keepOut.isPresent() && keepOut.get().name().equals("wall")) {
                faults.add(key + ".name", "'wall'", "another name, since the plan calls the walls so,");
            }
            if (keepOut.isPresent() && outline.isPresent() && !meets(outline.get(), keepOut.get())) {
                faults.add(
                        key + ".shape",
                        "a shape outside the room ("
                                + Fault.quoted(keepOut.get().name()) + ")",
                        "a shape on the floor");
            }
        }
    }

    /** Whether a keep-out takes floor; a joint or a threshold may lie along the wall. */
    private static boolean meets(Polygon room, KeepOut keepOut) {
        double radius = radiusMetres(keepOut);
        if (radius > 0) {
            return room.distance(keepOut.shape()) < radius;
        }
        boolean along = keepOut.kind() == KeepOutKind.THRESHOLD || keepOut.kind() == KeepOutKind.COLUMN;
        return along
                ? room.isWithinDistance(keepOut.shape(), ON_WALL_METRES)
                : room.relate(keepOut.shape(), "T********");
    }

    private static double radiusMetres(KeepOut keepOut) {
        return keepOut.radius().to(Units.METRE).getValue().doubleValue();
    }

    void zones(Optional<Polygon> outline, List<Optional<PriorityZone>> zones) {
        for (int i = 0; i < zones.size(); i++) {
            Optional<PriorityZone> zone = zones.get(i);
            if (zone.isPresent()
                    && outline.isPresent()
                    && !outline.get().relate(zone.get().shape(), "T********")) {
                faults.add("priorityZones[" + i + "].shape", "a shape outside the room", "a shape on the floor");
            }
        }
    }

    void doors(Optional<Polygon> outline, List<Optional<Door>> doors) {
        for (int i = 0; i < doors.size(); i++) {
            Optional<Door> door = doors.get(i);
            if (door.isPresent()
                    && outline.isPresent()
                    && !outline.get()
                            .getExteriorRing()
                            .isWithinDistance(door.get().at(), IN_REVEAL_METRES)) {
                faults.add("doors[" + i + "].at", "a line away from every wall", "a line in a wall");
            }
        }
    }

    void start(Optional<Polygon> outline, Optional<RoomFile.Cable> cable, List<Optional<KeepOut>> keepOuts) {
        if (cable.isEmpty()) {
            return;
        }
        Point start = cable.get().start();
        String read =
                "the point " + ShapeText.number(start.getX() / metres) + " " + ShapeText.number(start.getY() / metres);
        if (outline.isPresent()) {
            double off = outline.get().getBoundary().distance(start);
            if (!(off <= ON_WALL_METRES)) {
                faults.add(
                        "cable.start",
                        read + ", " + ShapeText.number(off / metres) + " from the nearest wall,",
                        "a point on a wall (within 25 mm)");
            }
        }
        for (Optional<KeepOut> keepOut : keepOuts) {
            if (keepOut.isPresent() && holds(keepOut.get(), start)) {
                faults.add(
                        "cable.start",
                        read + " in the keep-out " + Fault.quoted(keepOut.get().name()),
                        "a point outside every keep-out");
            }
        }
    }

    private static boolean holds(KeepOut keepOut, Geometry start) {
        double radius = radiusMetres(keepOut);
        return radius > 0
                ? keepOut.shape().distance(start) <= radius
                : keepOut.shape() instanceof Polygon && keepOut.shape().intersects(start);
    }

    void spacing(Optional<RoomFile.Cable> cable, Optional<Membrane> membrane) {
        if (cable.isEmpty() || membrane.isEmpty()) {
            return;
        }
        Quantity<Length> pitch = membrane.get().studPitch();
        double least = RoomFileReader.millimetres(cable.get().minSpacing().with(pitch));
        double most = RoomFileReader.millimetres(cable.get().maxSpacing().with(pitch));
        if (!(least > 0)) {
            faults.add("cable.minSpacing", Fault.quoted(cable.get().minSpacing().toString()), "more than 0 mm");
        }
        if (!(most >= least)) {
            faults.add(
                    "cable.maxSpacing",
                    Fault.quoted(cable.get().maxSpacing().toString()),
                    "at least the minSpacing of " + ShapeText.number(least) + " mm");
        }
    }
}
