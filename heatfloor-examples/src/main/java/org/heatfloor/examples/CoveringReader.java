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

/** Reads what a room file says of layers, climate, tile and mortar. */
final class CoveringReader {

    private static final Map<String, RoomFile.Pattern> PATTERNS = RoomFileReader.words(RoomFile.Pattern.values());
    private static final Map<String, RoomFile.Notch> NOTCHES = RoomFileReader.words(RoomFile.Notch.values());
    private static final Bounds<Length> THICKNESS = Bounds.of(Units.MILLIMETRE, 0.1, 2_000);
    private static final Bounds<Length> NOTCH = Bounds.of(Units.MILLIMETRE, 1, 50);
    private static final Bounds<Temperature> WEATHER = Bounds.of(Units.CELSIUS, -50, 60);
    private static final Bounds<Dimensionless> SHARE = Bounds.of(Units.PERCENT, 0, 100);

    private CoveringReader() {}

    static Optional<RoomFile.Layer> layer(Section s) {
        Optional<String> name = s.name("name");
        Optional<Quantity<Length>> thickness = s.quantity("thickness", THICKNESS);
        Optional<Quantity<ThermalConductivity>> conductivity =
                s.quantity("conductivity", Bounds.of(Units.WATT_PER_METRE_KELVIN, 0.005, 500));
        Optional<Quantity<Density>> density =
                s.quantityIfGiven("density", Bounds.of(Units.KILOGRAM_PER_CUBIC_METRE, 1, 20_000));
        Optional<Quantity<SpecificHeatCapacity>> capacity =
                s.quantityIfGiven("heatCapacity", Bounds.of(Units.JOULE_PER_KILOGRAM_KELVIN, 100, 5_000));
        boolean heated = s.flag("heated", false);
        return s.build(() -> new RoomFile.Layer(
                name.orElseThrow(), thickness.orElseThrow(), conductivity.orElseThrow(), density, capacity, heated));
    }

    /** Exactly one layer holds the cable; judged when all layers could be read. */
    static void checkHeated(Section top, List<Optional<RoomFile.Layer>> layers) {
        if (!top.has("buildUp") || layers.stream().anyMatch(Optional::isEmpty)) {
            return;
        }
        long heated = layers.stream()
                .flatMap(Optional::stream)
                .filter(RoomFile.Layer::heated)
                .count();
        if (heated != 1 && !layers.isEmpty()) {
            top.fault("buildUp", heated + " heated layers", "exactly one layer with \"heated\": true");
        }
    }

    static Optional<RoomFile.Climate> climate(Section s) {
        Optional<Quantity<Temperature>> air = s.quantity("air", WEATHER);
        Optional<Quantity<Temperature>> below = s.quantity("below", WEATHER);
        Optional<Quantity<Power>> loss = s.quantityIfGiven("heatLoss", Bounds.of(Units.WATT, 0, 100_000));
        Optional<Quantity<Temperature>> limit = s.quantityIfGiven("surfaceLimit", Bounds.of(Units.CELSIUS, 10, 80));
        return s.build(() -> new RoomFile.Climate(air.orElseThrow(), below.orElseThrow(), loss, limit));
    }

    static Optional<RoomFile.Tile> tile(Section s) {
        Bounds<Length> side = Bounds.of(Units.MILLIMETRE, 10, 4_000);
        Optional<Quantity<Length>> length = s.quantity("length", side);
        Optional<Quantity<Length>> width = s.quantity("width", side);
        Optional<Quantity<Length>> thickness = s.quantity("thickness", Bounds.of(Units.MILLIMETRE, 1, 100));
        Optional<Quantity<Length>> joint = s.quantity("joint", Bounds.of(Units.MILLIMETRE, 0, 50));
        Optional<RoomFile.Pattern> pattern = s.choice("pattern", PATTERNS);
        Optional<Quantity<Dimensionless>> waste = s.quantity("waste", SHARE);
        if (joint.isPresent() && length.isPresent() && width.isPresent()) {
            double least = Math.min(RoomFileReader.millimetres(length.get()), RoomFileReader.millimetres(width.get()));
            if (!(RoomFileReader.millimetres(joint.get()) < least)) {
                s.fault("joint", Fault.quoted(joint.get().toString()), "a joint narrower than the tile");
            }
        }
        return s.build(() -> new RoomFile.Tile(
                length.orElseThrow(),
                width.orElseThrow(),
                thickness.orElseThrow(),
                joint.orElseThrow(),
                pattern.orElseThrow(),
                waste.orElseThrow()));
    }

    static Optional<RoomFile.Bedding> bedding(Section s) {
        Mortar mortar = mortar(s, Mortar.USUAL);
        Optional<RoomFile.Trowel> under = s.section("trowelUnder").flatMap(t -> trowel(t, mortar));
        Optional<RoomFile.Trowel> over = s.section("trowelOver").flatMap(t -> trowel(t, mortar));
        Optional<Quantity<Mass>> bag = s.quantity("bag", Bounds.of(Units.KILOGRAM, 0.5, 1_500));
        return s.build(() -> new RoomFile.Bedding(under.orElseThrow(), over.orElseThrow(), bag.orElseThrow()));
    }

    private static Optional<RoomFile.Trowel> trowel(Section s, Mortar shared) {
        Optional<RoomFile.Notch> notch = s.choice("notch", NOTCHES);
        Optional<Quantity<Length>> width = s.quantity("width", NOTCH);
        Optional<Quantity<Length>> depth = s.quantity("depth", NOTCH);
        Optional<Quantity<Length>> gap = s.quantity("gap", Bounds.of(Units.MILLIMETRE, 0, 50));
        Mortar own = mortar(s, shared);
        return s.build(() -> new RoomFile.Trowel(
                notch.orElseThrow(),
                width.orElseThrow(),
                depth.orElseThrow(),
                gap.orElseThrow(),
                own.angle(),
                own.contact(),
                own.density(),
                own.water()));
    }

    /** How mortar is spread and mixed. Stated for both trowels in the bedding, or for one in the trowel. */
    private record Mortar(
            Quantity<Angle> angle, Quantity<Dimensionless> contact, Quantity<Density> density, double water) {

        static final Mortar USUAL = new Mortar(
                Amounts.degrees(60), Amounts.of(95, Units.PERCENT), Amounts.of(1.6, Units.KILOGRAM_PER_LITRE), 0.25);
    }

    private static Mortar mortar(Section s, Mortar otherwise) {
        Optional<Quantity<Angle>> angle = s.quantityIfGiven("angle", Bounds.of(Units.DEGREE, 10, 90));
        Optional<Quantity<Dimensionless>> contact = s.quantityIfGiven("contact", Bounds.of(Units.PERCENT, 10, 100));
        Optional<Quantity<Density>> density = s.quantityIfGiven("density", Bounds.of(Units.KILOGRAM_PER_LITRE, 0.5, 3));
        return new Mortar(
                angle.orElse(otherwise.angle()),
                contact.orElse(otherwise.contact()),
                density.orElse(otherwise.density()),
                water(s, otherwise.water()));
    }

    /** Water by mass of powder, as a number or in percent. */
    private static double water(Section s, double otherwise) {
        Optional<JsonNode> given = s.peek("water");
        if (given.isPresent() && given.get().isTextual()) {
            return s.quantity("water", SHARE)
                    .map(w -> w.to(Units.ONE).getValue().doubleValue())
                    .orElse(otherwise);
        }
        OptionalDouble number = given.isPresent() ? s.number("water", 0, 1) : OptionalDouble.empty();
        return number.orElse(otherwise);
    }
}
