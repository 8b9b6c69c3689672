package org.heatfloor.examples;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Density;
import org.heatfloor.quantity.SpecificHeatCapacity;
import org.heatfloor.quantity.ThermalConductivity;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.Bedding;
import org.heatfloor.takeoff.Mortar;
import org.heatfloor.takeoff.MortarKind;
import org.heatfloor.takeoff.Notch;
import org.heatfloor.takeoff.TilePattern;
import org.heatfloor.takeoff.TileSpec;
import org.heatfloor.takeoff.Trowel;
import org.heatfloor.thermal.BuildUp;
import org.heatfloor.thermal.Climate;
import org.heatfloor.thermal.Layer;

/** Reads what a room file says of layers, climate, tile and mortar. */
final class CoveringReader {

    private static final Map<String, TilePattern> PATTERNS = RoomFileReader.words(TilePattern.values());
    private static final Map<String, Notch> NOTCHES = RoomFileReader.words(Notch.values());
    private static final Map<String, MortarKind> MORTARS = RoomFileReader.words(MortarKind.values());
    private static final Bounds<Mass> BAG = Bounds.of(Units.KILOGRAM, 0.5, 1_500);
    private static final Bounds<Length> THICKNESS = Bounds.of(Units.MILLIMETRE, 0.1, 2_000);
    private static final Bounds<Length> NOTCH = Bounds.of(Units.MILLIMETRE, 1, 50);
    private static final Bounds<Temperature> WEATHER = Bounds.of(Units.CELSIUS, -50, 60);
    private static final Bounds<Angle> ANGLE = Bounds.of(Units.DEGREE, 10, 90);
    private static final Bounds<Dimensionless> SHARE = Bounds.of(Units.PERCENT, 0, 100);

    private CoveringReader() {}

    /** The layers; exactly one holds the cable, which is judged when all of them could be read. */
    static Optional<BuildUp> buildUp(Section top) {
        List<Optional<Layer>> layers =
                RoomFileReader.each(top.sectionsIfGiven("buildUp", 1, 30), CoveringReader::layer);
        List<Layer> read = RoomFileReader.present(layers);
        if (read.isEmpty() || read.size() < layers.size()) {
            return Optional.empty();
        }
        long heated = read.stream().filter(Layer::heated).count();
        if (heated != 1) {
            top.fault("buildUp", heated + " heated layers", "exactly one layer with \"heated\": true");
            return Optional.empty();
        }
        return Optional.of(BuildUp.of(read));
    }

    private static Optional<Layer> layer(Section s) {
        Optional<String> name = s.name("name");
        Optional<Quantity<Length>> thickness = s.quantity("thickness", THICKNESS);
        Optional<Quantity<ThermalConductivity>> conductivity =
                s.quantity("conductivity", Bounds.of(Units.WATT_PER_METRE_KELVIN, 0.005, 500));
        Optional<Quantity<Density>> density =
                s.quantityIfGiven("density", Bounds.of(Units.KILOGRAM_PER_CUBIC_METRE, 1, 20_000));
        Optional<Quantity<SpecificHeatCapacity>> capacity =
                s.quantityIfGiven("heatCapacity", Bounds.of(Units.JOULE_PER_KILOGRAM_KELVIN, 100, 5_000));
        boolean heated = s.flag("heated", false);
        return s.build(() -> new Layer(
                name.orElseThrow(), thickness.orElseThrow(), conductivity.orElseThrow(), density, capacity, heated));
    }

    static Optional<Climate> climate(Section s) {
        Optional<Quantity<Temperature>> air = s.quantity("air", WEATHER);
        Optional<Quantity<Temperature>> below = s.quantity("below", WEATHER);
        Optional<Quantity<Power>> loss = s.quantityIfGiven("heatLoss", Bounds.of(Units.WATT, 0, 100_000));
        Optional<Quantity<Temperature>> limit = s.quantityIfGiven("surfaceLimit", Bounds.of(Units.CELSIUS, 10, 80));
        return s.build(() -> {
            Climate climate = Climate.of(air.orElseThrow(), below.orElseThrow());
            Climate losing = loss.map(climate::withHeatLoss).orElse(climate);
            return limit.map(losing::withSurfaceLimit).orElse(losing);
        });
    }

    static Optional<TileSpec> tile(Section s) {
        Bounds<Length> side = Bounds.of(Units.MILLIMETRE, 10, 4_000);
        Optional<Quantity<Length>> length = s.quantity("length", side);
        Optional<Quantity<Length>> width = s.quantity("width", side);
        Optional<Quantity<Length>> thickness = s.quantity("thickness", Bounds.of(Units.MILLIMETRE, 1, 100));
        Optional<Quantity<Length>> joint = s.quantity("joint", Bounds.of(Units.MILLIMETRE, 0, 50));
        Optional<TilePattern> pattern = s.choice("pattern", PATTERNS);
        Optional<Quantity<Dimensionless>> waste = s.quantity("waste", SHARE);
        if (joint.isPresent() && length.isPresent() && width.isPresent()) {
            double least = Math.min(RoomFileReader.millimetres(length.get()), RoomFileReader.millimetres(width.get()));
            if (!(RoomFileReader.millimetres(joint.get()) < least)) {
                s.fault("joint", Fault.quoted(joint.get().toString()), "a joint narrower than the tile");
            }
        }
        return s.build(() -> TileSpec.of(
                length.orElseThrow(),
                width.orElseThrow(),
                thickness.orElseThrow(),
                joint.orElseThrow(),
                pattern.orElseThrow(),
                waste.orElseThrow()));
    }

    static Optional<Bedding> bedding(Section s) {
        Optional<Quantity<Angle>> angle = s.quantityIfGiven("angle", ANGLE);
        Optional<Trowel> under = s.section("trowelUnder").flatMap(t -> trowel(t, angle));
        Optional<Trowel> over = s.section("trowelOver").flatMap(t -> trowel(t, angle));
        Optional<Quantity<Mass>> bag = s.quantity("bag", BAG);
        Optional<Quantity<Dimensionless>> contact = s.quantityIfGiven("contact", Bounds.of(Units.PERCENT, 10, 100));
        Optional<Quantity<Dimensionless>> waste = s.quantityIfGiven("waste", SHARE);
        Mix shared = mix(s);
        Optional<Mix> mixUnder = s.sectionIfGiven("mortarUnder", CoveringReader::ownMix);
        Optional<Mix> mixOver = s.sectionIfGiven("mortarOver", CoveringReader::ownMix);
        return s.build(() -> {
            Bedding usual = Bedding.of(under.orElseThrow(), over.orElseThrow(), bag.orElseThrow());
            return usual.withContact(contact.orElse(usual.contact()))
                    .withWaste(waste.orElse(usual.waste()))
                    .withMortars(
                            mixed(usual.mortarUnder(), mixUnder, shared), mixed(usual.mortarOver(), mixOver, shared));
        });
    }

    /** What a file says of one mortar, or of both. */
    private record Mix(
            Optional<MortarKind> kind,
            Optional<Quantity<Mass>> bag,
            Optional<Quantity<Density>> density,
            Optional<Quantity<Dimensionless>> water) {}

    private static Mix mix(Section s) {
        return new Mix(
                Optional.empty(),
                Optional.empty(),
                s.quantityIfGiven("density", Bounds.of(Units.KILOGRAM_PER_LITRE, 0.5, 3)),
                water(s));
    }

    private static Optional<Mix> ownMix(Section s) {
        Optional<MortarKind> kind = s.choiceIfGiven("kind", MORTARS);
        Optional<Quantity<Mass>> bag = s.quantityIfGiven("bag", BAG);
        Mix mix = mix(s);
        return s.build(() -> new Mix(kind, bag, mix.density, mix.water));
    }

    /** The usual mortar, as far as the file says nothing of this one or of both. */
    private static Mortar mixed(Mortar usual, Optional<Mix> own, Mix shared) {
        return new Mortar(
                own.flatMap(Mix::kind).orElse(usual.kind()),
                own.flatMap(Mix::density).or(shared::density).orElse(usual.density()),
                own.flatMap(Mix::water).or(shared::water).orElse(usual.water()),
                own.flatMap(Mix::bag).orElse(usual.bag()),
                usual.openTime(),
                usual.potLife());
    }

    /** A trowel, held at its own angle, else at that of the bedding, else as usual. */
    private static Optional<Trowel> trowel(Section s, Optional<Quantity<Angle>> shared) {
        Optional<Notch> notch = s.choice("notch", NOTCHES);
        Optional<Quantity<Length>> width = s.quantity("width", NOTCH);
        Optional<Quantity<Length>> depth = s.quantity("depth", NOTCH);
        Optional<Quantity<Length>> gap = s.quantity("gap", Bounds.of(Units.MILLIMETRE, 0, 50));
        Optional<Quantity<Angle>> own = s.quantityIfGiven("angle", ANGLE);
        return s.build(() -> {
            Trowel usual = Trowel.of(notch.orElseThrow(), width.orElseThrow(), depth.orElseThrow(), gap.orElseThrow());
            return own.or(() -> shared).map(usual::withAngle).orElse(usual);
        });
    }

    /** Water by mass of powder, as a number or in percent. */
    private static Optional<Quantity<Dimensionless>> water(Section s) {
        Optional<JsonNode> given = s.peek("water");
        if (given.isEmpty() || given.get().isTextual()) {
            return s.quantityIfGiven("water", SHARE);
        }
        OptionalDouble number = s.number("water", 0, 1);
        return number.isPresent() ? Optional.of(Amounts.of(number.getAsDouble(), Units.ONE)) : Optional.empty();
    }
}
