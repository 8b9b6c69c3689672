package org.heatfloor.examples;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import org.heatfloor.plan.FloorHeat;
import org.heatfloor.plan.FloorUse;
import org.heatfloor.plan.SealHeat;
import org.heatfloor.plan.SensorHeat;
import org.heatfloor.quantity.Units;
import org.heatfloor.thermal.ColdPlace;
import org.heatfloor.thermal.CoveredPart;
import org.heatfloor.thermal.HeatedWeek;
import org.heatfloor.thermal.SurfaceSummary;

/** Writes the heat of a floor into a plan file. */
final class HeatTable {

    private HeatTable() {}

    static ObjectNode floor(FloorHeat floor, WktText wkt) {
        ObjectNode node = object();
        node.put("law", floor.law());
        set(node, "film", floor.film());
        node.set("heated", summary(floor.heated(), wkt));
        node.set("whole", summary(floor.floor(), wkt));
        ArrayNode sensors = node.putArray("sensors");
        for (SensorHeat sensor : floor.sensors()) {
            ObjectNode row = sensors.addObject();
            row.put("cable", sensor.cable());
            set(row, "reading", sensor.reading().reading());
            set(row, "aboveMean", sensor.reading().aboveMean());
            set(row, "aboveMax", sensor.reading().aboveMax());
        }
        ArrayNode seals = node.putArray("seals");
        for (SealHeat seal : floor.seals()) {
            ObjectNode row = seals.addObject();
            row.put("keepOut", seal.keepOut());
            set(row, "warmest", seal.warmest());
        }
        set(node, "coldBelow", floor.coldBelow());
        ArrayNode cold = node.putArray("coldPlaces");
        for (ColdPlace place : floor.coldPlaces()) {
            ObjectNode row = cold.addObject();
            row.put("coldest", at(place.coldest(), wkt));
            set(row, "lowest", place.lowest());
            set(row, "area", place.area());
        }
        ArrayNode covers = node.putArray("covers");
        for (CoveredPart part : floor.covers()) {
            ObjectNode row = covers.addObject();
            row.put("name", part.cover().name());
            set(row, "tile", part.tile().max());
            set(row, "tileOpen", part.tileOpen());
        }
        floor.ifStudsHollow().ifPresent(warmest -> set(node, "ifStudsHollow", warmest));
        return node;
    }

    static ObjectNode use(FloorUse use) {
        ObjectNode node = object();
        set(node, "timeToWanted", use.timeToWanted());
        use.week().ifPresent(week -> week(node, week));
        set(node, "energyPerWeek", use.energyPerWeek());
        money(node, "costPerWeek", use, use.costPerWeek());
        set(node, "energyPerSeason", use.energyPerSeason());
        money(node, "costPerSeason", use, use.costPerSeason());
        return node;
    }

    private static void week(ObjectNode node, HeatedWeek week) {
        set(node, "longestLead", week.longestLead());
        set(node, "overshoot", week.overshoot());
        set(node, "surfaceMax", week.surfaceMax());
        ArrayNode warmings = node.putArray("warmings");
        for (HeatedWeek.Warming warming : week.warmings()) {
            ObjectNode row = warmings.addObject();
            row.put("day", warming.day().toString().toLowerCase(Locale.ROOT));
            row.put("from", warming.from().toString());
            set(row, "lead", warming.lead());
            set(row, "wanted", warming.wanted());
            set(row, "sensor", warming.sensor());
            row.put("reached", warming.reached());
        }
    }

    private static void money(ObjectNode node, String key, FloorUse use, Optional<BigDecimal> cost) {
        cost.ifPresent(c -> {
            ObjectNode money = node.putObject(key);
            money.put("amount", c);
            use.tariff().ifPresent(t -> money.put("currency", t.currency().getCurrencyCode()));
        });
    }

    private static ObjectNode summary(SurfaceSummary summary, WktText wkt) {
        ObjectNode node = object();
        set(node, "area", summary.area());
        set(node, "mean", summary.mean());
        set(node, "max", summary.max());
        set(node, "min", summary.min());
        node.put("hottest", at(summary.hottest(), wkt));
        node.put("coldest", at(summary.coldest(), wkt));
        return node;
    }

    private static String at(SurfaceSummary.Spot spot, WktText wkt) {
        return wkt.point(
                spot.x().to(Units.METRE).getValue().doubleValue(),
                spot.y().to(Units.METRE).getValue().doubleValue());
    }

    private static void set(ObjectNode node, String key, Quantity<?> quantity) {
        node.set(key, SiValue.of(quantity));
    }

    private static <Q extends Quantity<Q>> void set(ObjectNode node, String key, Optional<Quantity<Q>> quantity) {
        quantity.ifPresent(q -> node.set(key, SiValue.of(q)));
    }

    private static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }
}
