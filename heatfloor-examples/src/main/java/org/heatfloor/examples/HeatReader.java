package org.heatfloor.examples;

import static org.heatfloor.examples.ShapeText.Kind.POLYGON;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Currency;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.heatfloor.plan.HeatDetails;
import org.heatfloor.plan.HeatingSeason;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.HeatLossCoefficient;
import org.heatfloor.quantity.TemperatureDifference;
import org.heatfloor.quantity.ThermalConductivity;
import org.heatfloor.quantity.ThermalInsulance;
import org.heatfloor.quantity.Units;
import org.heatfloor.thermal.BarefootFloor;
import org.heatfloor.thermal.FloorComfort;
import org.heatfloor.thermal.FloorCover;
import org.heatfloor.thermal.FloorShape;
import org.heatfloor.thermal.LimitZone;
import org.heatfloor.thermal.SealMaterial;
import org.heatfloor.thermal.SeasonEnergy;
import org.heatfloor.thermal.SurfaceLimit;
import org.heatfloor.thermal.Tariff;
import org.heatfloor.thermal.Thermostat;
import org.heatfloor.thermal.WeeklySchedule;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Reads what a room file says of a floor's heat beyond layers and climate: studs, limits, covers, use and cost. */
final class HeatReader {

    private static final Bounds<Temperature> FLOOR = Bounds.of(Units.CELSIUS, 5, 60);
    static final Map<String, Set<DayOfWeek>> DAYS = Map.of(
            "every-day", EnumSet.allOf(DayOfWeek.class),
            "weekdays", EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
            "weekend", EnumSet.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY));

    private HeatReader() {}

    static Optional<HeatDetails> heat(Section s, LengthUnit unit) {
        Optional<Quantity<ThermalConductivity>> studs =
                s.quantityIfGiven("studConductivity", Bounds.of(Units.WATT_PER_METRE_KELVIN, 0.005, 500));
        Optional<Quantity<Temperature>> sheath = s.quantityIfGiven("sheathLimit", Bounds.of(Units.CELSIUS, 30, 300));
        Optional<SealMaterial> seal = s.choiceIfGiven("seal", RoomFileReader.words(SealMaterial.values()));
        Optional<FloorComfort.Category> comfort =
                s.choiceIfGiven("comfort", RoomFileReader.words(FloorComfort.Category.values()));
        Optional<BarefootFloor> barefoot = s.choiceIfGiven("barefoot", RoomFileReader.words(BarefootFloor.values()));
        List<LimitZone> zones =
                RoomFileReader.present(RoomFileReader.each(s.sectionsIfGiven("limitZones", 0, 50), z -> zone(z, unit)));
        List<FloorCover> covers =
                RoomFileReader.present(RoomFileReader.each(s.sectionsIfGiven("covers", 0, 50), c -> cover(c, unit)));
        Optional<Quantity<Temperature>> wanted = s.quantityIfGiven("floorTemperature", FLOOR);
        Optional<WeeklySchedule> schedule = s.sectionIfGiven("schedule", HeatReader::schedule);
        Optional<Quantity<TemperatureDifference>> hysteresis =
                s.quantityIfGiven("hysteresis", Bounds.of(Units.KELVIN_DIFFERENCE, 0.1, 10));
        boolean ahead = s.flag("startsAhead", true);
        Optional<Tariff> tariff = s.sectionIfGiven("tariff", HeatReader::tariff);
        Optional<HeatingSeason> season = s.sectionIfGiven("season", HeatReader::season);
        return s.build(() -> {
            HeatDetails.Builder heat = HeatDetails.builder();
            studs.ifPresent(heat::studConductivity);
            sheath.ifPresent(heat::sheathLimit);
            seal.ifPresent(heat::seal);
            comfort.ifPresent(heat::comfort);
            barefoot.ifPresent(heat::barefoot);
            zones.forEach(heat::limitZone);
            covers.forEach(heat::cover);
            wanted.ifPresent(heat::floorTemperature);
            schedule.ifPresent(heat::schedule);
            heat.thermostat(new Thermostat(hysteresis.orElse(Amounts.kelvins(1)), ahead));
            tariff.ifPresent(heat::tariff);
            season.ifPresent(heat::season);
            return heat.build();
        });
    }

    private static Optional<LimitZone> zone(Section s, LengthUnit unit) {
        Optional<String> name = s.name("name");
        Optional<Geometry> shape = s.shape("shape", unit, Set.of(POLYGON));
        Optional<SurfaceLimit> limit = s.choice("limit", RoomFileReader.words(SurfaceLimit.values()));
        return s.build(() -> new LimitZone(name.orElseThrow(), shape(shape.orElseThrow()), limit.orElseThrow()));
    }

    private static Optional<FloorCover> cover(Section s, LengthUnit unit) {
        Optional<String> name = s.name("name");
        Optional<Geometry> shape = s.shape("shape", unit, Set.of(POLYGON));
        Optional<Quantity<ThermalInsulance>> resistance =
                s.quantity("resistance", Bounds.of(Units.SQUARE_METRE_KELVIN_PER_WATT, 0.001, 10));
        return s.build(() -> new FloorCover(name.orElseThrow(), shape(shape.orElseThrow()), resistance.orElseThrow()));
    }

    private static Optional<WeeklySchedule> schedule(Section s) {
        Optional<Quantity<Temperature>> setback = s.quantity("setback", FLOOR);
        List<Optional<WeeklySchedule.Period>> periods =
                RoomFileReader.each(s.sections("periods", 1, 50), HeatReader::period);
        return s.build(() -> new WeeklySchedule(setback.orElseThrow(), RoomFileReader.present(periods)));
    }

    private static Optional<WeeklySchedule.Period> period(Section s) {
        Optional<Set<DayOfWeek>> days = s.choice("days", DAYS);
        Optional<LocalTime> from = time(s, "from");
        Optional<LocalTime> to = time(s, "to");
        Optional<Quantity<Temperature>> floor = s.quantity("floor", FLOOR);
        return s.build(() -> new WeeklySchedule.Period(
                days.orElseThrow(), from.orElseThrow(), to.orElseThrow(), floor.orElseThrow()));
    }

    /** A time of day, 24:00 being the end of the day. */
    private static Optional<LocalTime> time(Section s, String name) {
        String expected = "a time of day such as '06:30'";
        Optional<String> text = s.text(name, expected);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(text.get().equals("24:00") ? LocalTime.MIDNIGHT : LocalTime.parse(text.get()));
        } catch (DateTimeParseException e) {
            s.fault(name, Fault.quoted(text.get()), expected);
            return Optional.empty();
        }
    }

    private static Optional<Tariff> tariff(Section s) {
        OptionalDouble price = s.number("pricePerKilowattHour", 0, 1_000_000);
        String expected = "a currency code such as 'EUR'";
        Optional<String> code = s.text("currency", expected);
        Optional<Currency> currency = Currency.getAvailableCurrencies().stream()
                .filter(c -> code.equals(Optional.of(c.getCurrencyCode())))
                .findFirst();
        if (code.isPresent() && currency.isEmpty()) {
            s.fault("currency", Fault.quoted(code.get()), expected);
        }
        return s.build(() -> new Tariff(BigDecimal.valueOf(price.orElseThrow()), currency.orElseThrow()));
    }

    private static Optional<HeatingSeason> season(Section s) {
        OptionalDouble degreeDays = s.number("degreeDays", 0, 20_000);
        Optional<Quantity<HeatLossCoefficient>> loss = s.quantity("loss", Bounds.of(Units.WATT_PER_KELVIN, 0, 10_000));
        return s.build(() -> new HeatingSeason(
                SeasonEnergy.of(Amounts.kelvins(degreeDays.orElseThrow()), Amounts.of(1, Units.DAY)),
                loss.orElseThrow()));
    }

    private static FloorShape shape(Geometry geometry) {
        Polygon polygon = (Polygon) geometry;
        List<double[][]> holes = new ArrayList<>();
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            holes.add(corners(polygon.getInteriorRingN(i)));
        }
        return FloorShape.of(corners(polygon.getExteriorRing()), holes, Units.METRE);
    }

    private static double[][] corners(LinearRing ring) {
        Coordinate[] c = ring.getCoordinates();
        double[][] out = new double[c.length][];
        for (int i = 0; i < c.length; i++) {
            out[i] = new double[] {c[i].x, c[i].y};
        }
        return out;
    }
}
