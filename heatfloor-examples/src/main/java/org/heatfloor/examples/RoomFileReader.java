package org.heatfloor.examples;

import static org.heatfloor.examples.ShapeText.Kind.LINESTRING;
import static org.heatfloor.examples.ShapeText.Kind.POINT;
import static org.heatfloor.examples.ShapeText.Kind.POLYGON;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.TradeLength;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** Reads a room file strictly: every key known, every figure plausible, every fault told at once. */
final class RoomFileReader {

    static final int MOST_KEEP_OUTS = 300;
    private static final Map<String, Boolean> FORMATS = Map.of("room/1", true);
    private static final Map<String, KeepOutKind> KINDS = words(KeepOutKind.values());
    private static final Bounds<Length> SHEET = Bounds.of(Units.METRE, 0.1, 200);

    private final Faults faults = new Faults();

    private RoomFileReader() {}

    static RoomFile read(Path file) throws BadRoomFile {
        RoomFileReader reader = new RoomFileReader();
        Section top = new Section("", JsonText.read(file), reader.faults);
        Optional<RoomFile> room = reader.room(top);
        return room.orElseThrow(() -> new BadRoomFile(reader.faults.found()));
    }

    /** The words of a file for an enum: lower case with hyphens. */
    static <E extends Enum<E>> Map<String, E> words(E[] values) {
        Map<String, E> words = new TreeMap<>();
        for (E value : values) {
            words.put(value.name().toLowerCase(Locale.ROOT).replace('_', '-'), value);
        }
        return words;
    }

    private Optional<RoomFile> room(Section top) {
        top.choice("format", FORMATS);
        Optional<String> name = top.name("name");
        Optional<LengthUnit> known = top.choice("coordinateUnit", LengthUnit.words());
        LengthUnit unit = known.orElse(LengthUnit.MILLIMETRE);
        Optional<Polygon> outline = top.shape("outline", unit, Set.of(POLYGON)).map(Polygon.class::cast);
        Optional<TradeLength> wall =
                top.has("wallClearance") ? top.tradeLength("wallClearance", 2_000, 100) : top.absent("wallClearance");
        List<Optional<RoomFile.KeepOut>> keepOuts =
                each(top.sectionsIfGiven("keepOuts", 0, MOST_KEEP_OUTS), s -> keepOut(s, unit));
        List<Optional<RoomFile.Door>> doors = each(top.sectionsIfGiven("doors", 0, 50), s -> door(s, unit));
        List<Optional<RoomFile.Zone>> zones = each(top.sectionsIfGiven("priorityZones", 0, 100), s -> zone(s, unit));
        Optional<RoomFile.Membrane> membrane = top.section("membrane").flatMap(s -> membrane(s, unit));
        Optional<RoomFile.Cable> cable = top.section("cable").flatMap(s -> CableReader.cable(s, unit));
        Optional<RoomFile.Supply> supply = top.section("supply").flatMap(CableReader::supply);
        List<Optional<RoomFile.Layer>> layers = each(top.sectionsIfGiven("buildUp", 1, 30), CoveringReader::layer);
        CoveringReader.checkHeated(top, layers);
        Optional<RoomFile.Climate> climate = top.sectionIfGiven("climate", CoveringReader::climate);
        Optional<RoomFile.Tile> tile = top.sectionIfGiven("tile", CoveringReader::tile);
        Optional<RoomFile.Bedding> bedding = top.sectionIfGiven("bedding", CoveringReader::bedding);

        RoomFileChecks checks = new RoomFileChecks(unit.metres(), faults);
        Optional<Polygon> floor = known.isPresent() ? checks.floor(outline, membrane) : Optional.empty();
        checks.keepOuts(floor, keepOuts);
        checks.names("doors", doors, RoomFile.Door::name);
        checks.names("priorityZones", zones, RoomFile.Zone::name);
        checks.zones(floor, zones);
        checks.doors(floor, doors);
        checks.start(floor, cable, keepOuts);
        checks.spacing(cable, membrane);

        return top.build(() -> new RoomFile(
                name.orElseThrow(),
                unit,
                outline.orElseThrow(),
                wall,
                present(keepOuts),
                present(doors),
                present(zones),
                membrane.orElseThrow(),
                cable.orElseThrow(),
                supply.orElseThrow(),
                present(layers),
                climate,
                tile,
                bedding));
    }

    static <T> List<Optional<T>> each(List<Section> sections, Function<Section, Optional<T>> reader) {
        List<Optional<T>> read = new ArrayList<>();
        for (Section section : sections) {
            read.add(reader.apply(section));
        }
        return read;
    }

    static <T> List<T> present(List<Optional<T>> values) {
        return values.stream().flatMap(Optional::stream).toList();
    }

    private static Optional<RoomFile.KeepOut> keepOut(Section s, LengthUnit unit) {
        Optional<String> name = s.name("name");
        Optional<KeepOutKind> kind = s.choice("kind", KINDS);
        Set<ShapeText.Kind> shapes = kind.map(RoomFileReader::shapes).orElse(Set.of(POINT, LINESTRING, POLYGON));
        Optional<Geometry> shape = s.shape("shape", unit, shapes);
        boolean round = shape.isPresent() && shape.get() instanceof Point;
        Optional<Quantity<Length>> diameter = round
                ? s.quantity("diameter", Bounds.of(Units.METRE, 0.005, 10))
                : s.quantityIfGiven("diameter", Bounds.of(Units.METRE, 0.005, 10));
        if (shape.isPresent() && !round && s.has("diameter")) {
            s.fault("diameter", "a diameter for a " + shape.get().getGeometryType(), "a diameter for a Point only");
        }
        Optional<TradeLength> clearance = s.tradeLength("clearance", 2_000, 100);
        boolean onLegs = kind.equals(Optional.of(KeepOutKind.FURNITURE_ON_LEGS));
        Bounds<Length> gap = Bounds.of(Units.METRE, 0, 3);
        Optional<Quantity<Length>> freeHeight =
                onLegs ? s.quantity("freeHeight", gap) : s.quantityIfGiven("freeHeight", gap);
        if (!onLegs && kind.isPresent() && s.has("freeHeight")) {
            s.fault("freeHeight", "a free height", "a free height for furniture-on-legs only");
        }
        return s.build(() -> new RoomFile.KeepOut(
                name.orElseThrow(),
                kind.orElseThrow(),
                shape.orElseThrow(),
                diameter,
                clearance.orElseThrow(),
                freeHeight));
    }

    private static Set<ShapeText.Kind> shapes(KeepOutKind kind) {
        return switch (kind) {
            case MOVEMENT_JOINT -> Set.of(LINESTRING);
            case THRESHOLD, OTHER -> Set.of(POINT, LINESTRING, POLYGON);
            default -> Set.of(POINT, POLYGON);
        };
    }

    private static Optional<RoomFile.Door> door(Section s, LengthUnit unit) {
        Optional<String> name = s.name("name");
        Optional<Geometry> at = s.shape("at", unit, Set.of(LINESTRING));
        Optional<Quantity<Length>> height = s.quantityIfGiven("adjacentFloorHeight", Bounds.of(Units.METRE, -1, 1));
        return s.build(() -> new RoomFile.Door(name.orElseThrow(), (LineString) at.orElseThrow(), height));
    }

    private static Optional<RoomFile.Zone> zone(Section s, LengthUnit unit) {
        Optional<String> name = s.name("name");
        Optional<Geometry> shape = s.shape("shape", unit, Set.of(POLYGON));
        OptionalDouble weight = s.number("weight", 0.01, 100);
        return s.build(
                () -> new RoomFile.Zone(name.orElseThrow(), (Polygon) shape.orElseThrow(), weight.orElseThrow()));
    }

    private static Optional<RoomFile.Membrane> membrane(Section s, LengthUnit unit) {
        Optional<Quantity<Length>> pitch = s.quantity("studPitch", Bounds.of(Units.MILLIMETRE, 10, 200));
        Optional<Quantity<Length>> stud = s.quantity("studDiameter", Bounds.of(Units.MILLIMETRE, 1, 190));
        if (pitch.isPresent() && stud.isPresent() && !(millimetres(stud.get()) < millimetres(pitch.get()))) {
            s.fault("studDiameter", Fault.quoted(stud.get().toString()), "less than the stud pitch");
        }
        Optional<Quantity<Length>> height = s.quantity("height", Bounds.of(Units.MILLIMETRE, 1, 50));
        Optional<Point> origin =
                s.has("origin") ? s.shape("origin", unit, Set.of(POINT)).map(Point.class::cast) : s.absent("origin");
        Optional<Quantity<Angle>> angle = s.quantityIfGiven("angle", Bounds.of(Units.DEGREE, -360, 360));
        Optional<RoomFile.Stock> sheet = s.sectionIfGiven("sheet", x -> stock(x, false));
        Optional<RoomFile.Stock> roll = s.sectionIfGiven("roll", x -> stock(x, true));
        if (s.has("sheet") && s.has("roll")) {
            s.fault("roll", "a roll beside a sheet", "either a sheet or a roll");
        }
        return s.build(() -> new RoomFile.Membrane(
                pitch.orElseThrow(), stud.orElseThrow(), height.orElseThrow(), origin, angle, sheet.or(() -> roll)));
    }

    private static Optional<RoomFile.Stock> stock(Section s, boolean roll) {
        Optional<Quantity<Length>> width = s.quantity("width", SHEET);
        Optional<Quantity<Length>> length = s.quantity("length", SHEET);
        return s.build(() -> new RoomFile.Stock(roll, width.orElseThrow(), length.orElseThrow()));
    }

    static double millimetres(Quantity<Length> length) {
        return length.to(Units.MILLIMETRE).getValue().doubleValue();
    }
}
