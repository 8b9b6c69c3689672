package org.heatfloor.examples;

import static org.heatfloor.examples.ShapeText.Kind.POINT;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.heatfloor.area.TradeLength;
import org.heatfloor.electrical.CableScreen;
import org.heatfloor.electrical.ConductorSize;
import org.heatfloor.electrical.ElectricalCode;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.electrical.Supply;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.LinearResistance;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;

/** Reads what a room file says of cable and supply. */
final class CableReader {

    private static final Map<String, ElectricalCode> CODES =
            ElectricalCode.all().stream().collect(Collectors.toMap(ElectricalCode::name, Function.identity()));
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
        Optional<Quantity<Dimensionless>> tolerance =
                s.quantityIfGiven("lengthTolerance", Bounds.of(Units.PERCENT, 0, 10));
        List<Section> entries = s.sections("catalogue", 1, 500);
        List<Optional<HeatingCable>> offers = RoomFileReader.each(entries, CableReader::offer);
        Set<String> names = new HashSet<>();
        for (int i = 0; i < offers.size(); i++) {
            Optional<HeatingCable> offer = offers.get(i);
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
                tolerance,
                RoomFileReader.present(offers)));
    }

    private static Optional<HeatingCable> offer(Section s) {
        Optional<String> name = s.name("name");
        Optional<Integer> conductors = s.integer("conductors", 1, 2, "1 or 2");
        Optional<Quantity<Length>> length = s.quantity("length", Bounds.of(Units.METRE, 0.5, 1_000));
        Optional<Quantity<Power>> power = s.quantity("power", Bounds.of(Units.WATT, 1, 20_000));
        Optional<Quantity<ElectricPotential>> voltage = s.quantity("voltage", Bounds.of(Units.VOLT, 1, 1_000));
        Optional<Quantity<Length>> diameter = s.quantity("diameter", Bounds.of(Units.MILLIMETRE, 0.5, 30));
        Optional<Quantity<Length>> coldLead = s.quantity("coldLead", Bounds.of(Units.METRE, 0.1, 100));
        Optional<CableScreen> screen = screen(s);
        return s.build(() -> {
            HeatingCable made = new HeatingCable(
                    name.orElseThrow(),
                    conductors.orElseThrow(),
                    length.orElseThrow(),
                    power.orElseThrow(),
                    voltage.orElseThrow(),
                    diameter.orElseThrow(),
                    coldLead.orElseThrow());
            return screen.map(made::withScreen).orElse(made);
        });
    }

    /** The screen, where the file says of one, or that there is none. */
    private static Optional<CableScreen> screen(Section s) {
        boolean screened = s.flag("screen", true);
        Optional<Quantity<LinearResistance>> resistance =
                s.quantityIfGiven("screenResistance", Bounds.of(Units.OHM_PER_METRE, 0.0001, 10));
        if (!screened && s.has("screenResistance")) {
            s.fault("screenResistance", "a resistance of the screen", "a resistance for a cable with a screen only");
        }
        return resistance
                .map(CableScreen::of)
                .or(() -> s.has("screen")
                        ? Optional.of(screened ? CableScreen.UNMEASURED : CableScreen.NONE)
                        : Optional.empty());
    }

    static Optional<Supply> supply(Section s) {
        Optional<Quantity<ElectricPotential>> voltage = s.quantity("voltage", Bounds.of(Units.VOLT, 1, 1_000));
        Optional<ElectricalCode> code = s.choice("code", CODES);
        Optional<Quantity<Length>> feeder = s.quantity("feederLength", Bounds.of(Units.METRE, 0, 500));
        Optional<ConductorSize> conductor = conductor(s, code);
        Map<String, String> methods = code.map(CableReader::methods).orElse(Map.of());
        Optional<String> installation =
                code.isPresent() ? s.choiceIfGiven("installation", methods) : s.absent("installation");
        Optional<Quantity<Temperature>> ambient = s.quantityIfGiven("ambient", Bounds.of(Units.CELSIUS, -30, 80));
        Optional<Integer> grouped = s.has("groupedCircuits")
                ? s.integer("groupedCircuits", 1, 20, "a whole number from 1 to 20")
                : s.absent("groupedCircuits");
        return s.build(() -> {
            Supply base =
                    Supply.of(voltage.orElseThrow(), code.orElseThrow(), feeder.orElseThrow(), conductor.orElseThrow());
            Supply placed = installation.map(base::withInstallation).orElse(base);
            Supply warm = ambient.map(placed::withAmbient).orElse(placed);
            return grouped.map(warm::withGroupedCircuits).orElse(warm);
        });
    }

    private static Map<String, String> methods(ElectricalCode code) {
        return code.installationMethods().stream().collect(Collectors.toMap(m -> m, m -> m));
    }

    /** A size the library knows and the code has figures for. */
    private static Optional<ConductorSize> conductor(Section s, Optional<ElectricalCode> code) {
        Optional<ConductorSize> size = size(s, "conductor", sizes(code));
        if (size.isPresent() && code.isPresent() && !code.get().conductorSizes().contains(size.get())) {
            s.fault(
                    "conductor",
                    Fault.quoted(size.get().toString()),
                    "one of the sizes of " + code.get().name() + sizes(code));
            return Optional.empty();
        }
        return size;
    }

    /** A size the library knows. */
    static Optional<ConductorSize> size(Section s, String key) {
        return size(s, key, "");
    }

    private static Optional<ConductorSize> size(Section s, String key, String further) {
        Optional<String> text = s.text(key, CONDUCTOR);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(ConductorSize.of(text.get()));
        } catch (IllegalArgumentException e) {
            s.fault(key, Fault.quoted(text.get()), CONDUCTOR + further);
            return Optional.empty();
        }
    }

    private static String sizes(Optional<ElectricalCode> code) {
        return code.map(c -> c.conductorSizes().stream()
                        .map(ConductorSize::toString)
                        .collect(Collectors.joining(", ", " (", ")")))
                .orElse("");
    }
}
