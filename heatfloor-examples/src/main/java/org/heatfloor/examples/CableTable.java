package org.heatfloor.examples;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.heatfloor.plan.CableOption;
import org.heatfloor.routing.EndReserve;
import org.locationtech.jts.geom.GeometryFactory;

/** The table of the catalogue's lengths, and the end reserve of a cable, as a plan file has them. */
final class CableTable {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private CableTable() {}

    static ObjectNode row(CableOption option) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("part", option.part());
        node.put("cable", option.cable());
        node.set("length", SiValue.of(option.length()));
        node.set("evenSpacing", SiValue.of(option.evenSpacing()));
        node.set("powerDensity", SiValue.of(option.powerDensity()));
        node.set("coverage", SiValue.of(option.coverage()));
        node.set("margin", SiValue.of(option.margin()));
        node.put("keepsTolerance", option.keepsTolerance());
        option.longestFound().ifPresent(found -> node.set("longestFound", SiValue.of(found)));
        node.put("verdict", option.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        if (!option.reason().isEmpty()) {
            node.put("reason", option.reason());
        }
        return node;
    }

    static ObjectNode reserve(EndReserve reserve, WktText wkt) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.set("wanted", SiValue.of(reserve.wanted()));
        node.set("total", SiValue.of(reserve.total()));
        node.set("ahead", SiValue.of(reserve.ahead()));
        ArrayNode adjusters = node.putArray("adjusters");
        for (EndReserve.Adjuster adjuster : reserve.adjusters()) {
            ObjectNode each = adjusters.addObject();
            each.put("at", wkt.of(FACTORY.createPoint(adjuster.at())));
            each.set("alongCable", SiValue.of(adjuster.alongCable()));
            each.set("gain", SiValue.of(adjuster.gain()));
        }
        return node;
    }
}
