package org.heatfloor.examples;

import static org.heatfloor.examples.ShapeText.Kind.POINT;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.heatfloor.area.TradeLength;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;

/** Reads what a room file says of cable and supply. */
final class CableReader {

    private static final Map<String, RoomFile.Code> CODES = codes();
    private static final Map<String, String> INSTALLATIONS = same("A1", "A2", "B1", "B2", "C", "D1", "D2", "E");
    private static final Pattern GAUGE = Pattern.compile("(?:(\\d{1,2})|([1-4])/0) AWG");
    private static final String CONDUCTOR = "a conductor size such as '2.5 mm²' or '12 AWG'";

    private CableReader() {}

    static Optional<RoomFile.Cable> cable(Section s, LengthUnit unit) {
        Optional<TradeLength> least = s.tradeLength("minSpacing", 1_000, 50);
        Optional<TradeLength> most = s.tradeLength("maxSpacing", 1_000, 50);
        Optional<Quantity<Length>> bend = s.quantity("minBendRadius", Bounds.of(Units.MILLIMETRE, 1, 500));
        Optional<Geometry> start = s.shape("start", unit, Set.of(POINT));
        Optional<Quantity<Length>> riser = s.quantityIfGiven("riser", Bounds.of(Units.METRE, 0, 20));
        Optional<Quantity<Length>> joint = s.quantityIfGiven("jointLength", Bounds.of(Units.MILLIMETRE, 0, 1_000));
        Optional<Quantity<Length>> height = s.quantityIfGiven("cableHeight", Bounds.of(Units.MILLIMETRE, 0, 100));
        boolean sensor = s.flag("floorSensor", true);
        List<Section> entries = s.sections("catalogue", 1, 500);
        List<Optional<RoomFile.Offer>> offers = RoomFileReader.each(entries, CableReader::offer);
        Set<String> names = new HashSet<>();
        for (int i = 0; i < offers.size(); i++) {
            Optional<RoomFile.Offer> offer = offers.get(i);
            if (offer.isPresent() && !names.add(offer.get().name())) {
                entries.get(i).fault("name", Fault.quoted(offer.get().name()) + " a second time", "each name once");
            }
        }
        return s.build(() -> new RoomFile.Cable(
                least.orElseThrow(),
                most.orElseThrow(),
                bend.orElseThrow(),
                (Point) start.orElseThrow(),
                riser.orElse(Amounts.metres(1.2)),
                joint.orElse(Amounts.millimetres(100)),
                height,
                sensor,
                RoomFileReader.present(offers)));
    }

    private static Optional<RoomFile.Offer> offer(Section s) {
        Optional<String> name = s.name("name");
        Optional<Integer> conductors = s.integer("conductors", 1, 2, "1 or 2");
        Optional<Quantity<Length>> length = s.quantity("length", Bounds.of(Units.METRE, 0.5, 1_000));
        Optional<Quantity<Power>> power = s.quantity("power", Bounds.of(Units.WATT, 1, 20_000));
        Optional<Quantity<ElectricPotential>> voltage = s.quantity("voltage", Bounds.of(Units.VOLT, 1, 1_000));
        Optional<Quantity<Length>> diameter = s.quantity("diameter", Bounds.of(Units.MILLIMETRE, 0.5, 30));
        Optional<Quantity<Length>> coldLead = s.quantity("coldLead", Bounds.of(Units.METRE, 0.1, 100));
        return s.build(() -> new RoomFile.Offer(
                name.orElseThrow(),
                conductors.orElseThrow(),
                length.orElseThrow(),
                power.orElseThrow(),
                voltage.orElseThrow(),
                diameter.orElseThrow(),
                coldLead.orElseThrow()));
    }

    static Optional<RoomFile.Supply> supply(Section s) {
        Optional<Quantity<ElectricPotential>> voltage = s.quantity("voltage", Bounds.of(Units.VOLT, 1, 1_000));
        Optional<RoomFile.Code> code = s.choice("code", CODES);
        Optional<Quantity<Length>> feeder = s.quantity("feederLength", Bounds.of(Units.METRE, 0, 500));
        Optional<RoomFile.ConductorSize> conductor = conductor(s);
        Optional<String> installation = s.choiceIfGiven("installation", INSTALLATIONS);
        Optional<Quantity<Temperature>> ambient = s.quantityIfGiven("ambient", Bounds.of(Units.CELSIUS, -30, 80));
        return s.build(() -> new RoomFile.Supply(
                voltage.orElseThrow(),
                code.orElseThrow(),
                feeder.orElseThrow(),
                conductor.orElseThrow(),
                installation,
                ambient));
    }

    private static Optional<RoomFile.ConductorSize> conductor(Section s) {
        Optional<String> text = s.text("conductor", CONDUCTOR);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Matcher gauge = GAUGE.matcher(text.get());
        if (gauge.matches()) {
            int number =
                    gauge.group(1) == null ? 1 - Integer.parseInt(gauge.group(2)) : Integer.parseInt(gauge.group(1));
            if (number > 0 && number <= 18 || gauge.group(1) == null) {
                return Optional.of(new RoomFile.ConductorSize.Gauge(number));
            }
        } else {
            try {
                Bounds<Area> sizes = Bounds.of(Units.SQUARE_MILLIMETRE, 0.5, 120);
                Quantity<Area> area = QuantityText.read(text.get(), sizes.unit());
                if (sizes.allow(area)) {
                    return Optional.of(new RoomFile.ConductorSize.CrossSection(area));
                }
            } catch (IllegalArgumentException e) {
                // Told below, with both ways to write a size.
            }
        }
        s.fault("conductor", Fault.quoted(text.get()), CONDUCTOR + ", 0.5 mm² to 120 mm² or 18 AWG to 4/0 AWG,");
        return Optional.empty();
    }

    private static Map<String, RoomFile.Code> codes() {
        Map<String, RoomFile.Code> codes = new HashMap<>();
        for (RoomFile.Code code : RoomFile.Code.values()) {
            codes.put(code.toString(), code);
        }
        return Map.copyOf(codes);
    }

    private static Map<String, String> same(String... words) {
        Map<String, String> map = new HashMap<>();
        for (String word : words) {
            map.put(word, word);
        }
        return Map.copyOf(map);
    }
}
