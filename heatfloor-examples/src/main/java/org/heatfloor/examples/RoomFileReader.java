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
import org.heatfloor.area.Door;
import org.heatfloor.area.JointRule;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.PriorityZone;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.electrical.InstallationDetails;
import org.heatfloor.electrical.Supply;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.plan.HeatDetails;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.Bedding;
import org.heatfloor.takeoff.TileSpec;
import org.heatfloor.thermal.BuildUp;
import org.heatfloor.thermal.Climate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** Reads a room file strictly: every key known, every figure plausible, every fault told at once. */
final class RoomFileReader {

    private static final Map<String, Boolean> FORMATS = Map.of("room/1", true);
    private static final Map<String, KeepOutKind> KINDS = words(KeepOutKind.values());
    static final Map<String, JointRule> JOINT_RULES = Map.of(
            "interior-north-america", JointRule.interiorNorthAmerica(),
            "sun-or-moisture-north-america", JointRule.sunOrMoistureNorthAmerica(),
            "heated-north-america", JointRule.heatedNorthAmerica(),
            "heated-screed-europe", JointRule.heatedScreedEurope(),
            "heated-united-kingdom", JointRule.heatedUnitedKingdom(),
            "intermediate-united-kingdom", JointRule.intermediateUnitedKingdom());
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
        List<Optional<KeepOut>> keepOuts = each(top.sectionsIfGiven("keepOuts", 0, 300), s -> keepOut(s, unit));
        List<Optional<Door>> doors = each(top.sectionsIfGiven("doors", 0, 50), s -> door(s, unit));
        List<Optional<PriorityZone>> zones = each(top.sectionsIfGiven("priorityZones", 0, 100), s -> zone(s, unit));
        Optional<JointRule> jointRule = top.choiceIfGiven("jointRule", JOINT_RULES);
        Optional<PlacedMembrane> membrane = top.section("membrane").flatMap(s -> membrane(s, unit));
        Optional<RoomFile.Cable> cable = top.section("cable").flatMap(s -> CableReader.cable(s, unit));
        Optional<Supply> supply = top.section("supply").flatMap(CableReader::supply);
        Optional<InstallationDetails> installation =
                top.sectionIfGiven("installation", InstallationReader::installation);
        Optional<BuildUp> buildUp = CoveringReader.buildUp(top);
        Optional<Climate> climate = top.sectionIfGiven("climate", CoveringReader::climate);
        Optional<HeatDetails> heat = top.sectionIfGiven("heat", s -> HeatReader.heat(s, unit));
        Optional<TileSpec> tile = top.sectionIfGiven("tile", CoveringReader::tile);
        Optional<Bedding> bedding = top.sectionIfGiven("bedding", CoveringReader::bedding);

        RoomFileChecks checks = new RoomFileChecks(unit.metres(), faults);
        Optional<Membrane> sizes = membrane.map(PlacedMembrane::membrane);
        Optional<Polygon> floor = known.isPresent() ? checks.floor(outline, sizes) : Optional.empty();
        checks.keepOuts(floor, keepOuts);
        checks.names("doors", doors, Door::name);
        checks.names("priorityZones", zones, PriorityZone::name);
        checks.zones(floor, zones);
        checks.doors(floor, doors);
        checks.start(floor, cable, keepOuts);
        checks.spacing(cable, sizes);

        return top.build(() -> new RoomFile(
                name.orElseThrow(),
                unit,
                Room.of(outline.orElseThrow(), Units.METRE),
                wall,
                present(keepOuts),
                present(doors),
                present(zones),
                sizes.orElseThrow(),
                membrane.orElseThrow().origin(),
                membrane.orElseThrow().angle(),
                membrane.orElseThrow().slip(),
                jointRule,
                cable.orElseThrow(),
                supply.orElseThrow(),
                installation.orElse(InstallationDetails.NONE),
                buildUp,
                climate,
                heat,
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

    private static Optional<KeepOut> keepOut(Section s, LengthUnit unit) {
        Optional<String> name = s.name("name");
        Optional<KeepOutKind> kind = s.choice("kind", KINDS);
        Set<ShapeText.Kind> shapes = kind.map(RoomFileReader::shapes).orElse(Set.of(POINT, LINESTRING, POLYGON));
        Optional<Geometry> shape = s.shape("shape", unit, shapes);
        boolean round = shape.isPresent() && shape.get() instanceof Point;
        Bounds<Length> sizes = Bounds.of(Units.METRE, 0.005, 10);
        Optional<Quantity<Length>> diameter =
                round ? s.quantity("diameter", sizes) : s.quantityIfGiven("diameter", sizes);
        if (shape.isPresent() && !round && s.has("diameter")) {
            s.fault("diameter", "a diameter for a " + shape.get().getGeometryType(), "a diameter for a Point only");
        }
        Optional<TradeLength> clearance =
                s.has("clearance") ? s.tradeLength("clearance", 2_000, 100) : s.absent("clearance");
        boolean onLegs = kind.equals(Optional.of(KeepOutKind.FURNITURE_ON_LEGS));
        Bounds<Length> gap = Bounds.of(Units.METRE, 0, 3);
        Optional<Quantity<Length>> freeHeight =
                onLegs ? s.quantity("freeHeight", gap) : s.quantityIfGiven("freeHeight", gap);
        if (!onLegs && kind.isPresent() && s.has("freeHeight")) {
            s.fault("freeHeight", "a free height", "a free height for furniture-on-legs only");
        }
        return s.build(() -> {
            KeepOut made = round
                    ? disc(name.orElseThrow(), kind.orElseThrow(), (Point) shape.orElseThrow(), diameter, clearance)
                    : flat(name.orElseThrow(), kind.orElseThrow(), shape.orElseThrow(), clearance);
            return freeHeight.map(made::withFreeHeight).orElse(made);
        });
    }

    private static KeepOut disc(
            String name,
            KeepOutKind kind,
            Point centre,
            Optional<Quantity<Length>> diameter,
            Optional<TradeLength> clearance) {
        return clearance
                .map(c -> KeepOut.round(name, kind, centre, Units.METRE, diameter.orElseThrow(), c))
                .orElseGet(() -> KeepOut.round(name, kind, centre, Units.METRE, diameter.orElseThrow()));
    }

    private static KeepOut flat(String name, KeepOutKind kind, Geometry shape, Optional<TradeLength> clearance) {
        return clearance
                .map(c -> KeepOut.of(name, kind, shape, Units.METRE, c))
                .orElseGet(() -> KeepOut.of(name, kind, shape, Units.METRE));
    }

    private static Set<ShapeText.Kind> shapes(KeepOutKind kind) {
        return switch (kind) {
            case MOVEMENT_JOINT -> Set.of(LINESTRING);
            case THRESHOLD, OTHER -> Set.of(POINT, LINESTRING, POLYGON);
            default -> Set.of(POINT, POLYGON);
        };
    }

    private static Optional<Door> door(Section s, LengthUnit unit) {
        Optional<String> name = s.name("name");
        Optional<Geometry> at = s.shape("at", unit, Set.of(LINESTRING));
        Optional<Quantity<Length>> height = s.quantityIfGiven("adjacentFloorHeight", Bounds.of(Units.METRE, -1, 1));
        return s.build(() -> {
            Door door = Door.of(name.orElseThrow(), (LineString) at.orElseThrow(), Units.METRE);
            return height.map(door::withAdjacentFloorHeight).orElse(door);
        });
    }

    private static Optional<PriorityZone> zone(Section s, LengthUnit unit) {
        Optional<String> name = s.name("name");
        Optional<Geometry> shape = s.shape("shape", unit, Set.of(POLYGON));
        OptionalDouble weight = s.number("weight", 0.01, 100);
        return s.build(() ->
                PriorityZone.of(name.orElseThrow(), (Polygon) shape.orElseThrow(), Units.METRE, weight.orElseThrow()));
    }

    private record PlacedMembrane(
            Membrane membrane,
            Optional<Point> origin,
            Optional<Quantity<Angle>> angle,
            Optional<Quantity<Length>> slip) {}

    private static Optional<PlacedMembrane> membrane(Section s, LengthUnit unit) {
        Optional<Quantity<Length>> pitch = s.quantity("studPitch", Bounds.of(Units.MILLIMETRE, 10, 200));
        Optional<Quantity<Length>> stud = s.quantity("studDiameter", Bounds.of(Units.MILLIMETRE, 1, 190));
        if (pitch.isPresent() && stud.isPresent() && !(millimetres(stud.get()) < millimetres(pitch.get()))) {
            s.fault("studDiameter", Fault.quoted(stud.get().toString()), "less than the stud pitch");
        }
        Optional<Quantity<Length>> height = s.quantity("height", Bounds.of(Units.MILLIMETRE, 1, 50));
        Optional<Point> origin =
                s.has("origin") ? s.shape("origin", unit, Set.of(POINT)).map(Point.class::cast) : s.absent("origin");
        Optional<Quantity<Angle>> angle = s.quantityIfGiven("angle", Bounds.of(Units.DEGREE, -360, 360));
        if (s.has("angle") && !s.has("origin")) {
            s.fault("angle", "an angle without an origin", "an origin beside the angle, or neither,");
        }
        Optional<MembraneStock> sheet = s.sectionIfGiven("sheet", x -> stock(x, MembraneStock.Kind.SHEET));
        Optional<MembraneStock> roll = s.sectionIfGiven("roll", x -> stock(x, MembraneStock.Kind.ROLL));
        if (s.has("sheet") && s.has("roll")) {
            s.fault("roll", "a roll beside a sheet", "either a sheet or a roll");
        }
        Optional<Quantity<Length>> slip = s.quantityIfGiven("slip", Bounds.of(Units.MILLIMETRE, 0, 1_000));
        if (s.has("slip") && !s.has("sheet") && !s.has("roll")) {
            s.fault("slip", "a slip without a sheet or roll", "a sheet or roll beside the slip");
        }
        return s.build(() -> new PlacedMembrane(
                new Membrane(pitch.orElseThrow(), stud.orElseThrow(), height.orElseThrow(), sheet.or(() -> roll)),
                origin,
                angle,
                slip));
    }

    private static Optional<MembraneStock> stock(Section s, MembraneStock.Kind kind) {
        Optional<Quantity<Length>> width = s.quantity("width", SHEET);
        Optional<Quantity<Length>> length = s.quantity("length", SHEET);
        return s.build(() -> new MembraneStock(kind, width.orElseThrow(), length.orElseThrow()));
    }

    static double millimetres(Quantity<Length> length) {
        return length.to(Units.MILLIMETRE).getValue().doubleValue();
    }
}
