package org.heatfloor.examples;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.electrical.Circuit;
import org.heatfloor.finding.Finding;
import org.heatfloor.plan.CableHeat;
import org.heatfloor.plan.Plan;
import org.heatfloor.plan.PlannedCable;
import org.heatfloor.plan.RoomHeat;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableCheck;
import org.heatfloor.routing.SensorPlace;
import org.heatfloor.takeoff.DoorStep;
import org.heatfloor.takeoff.MortarNeed;
import org.heatfloor.takeoff.TakeOff;

/** Writes a plan as a plan file. */
final class PlanFile {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();

    private final WktText wkt;

    private PlanFile(LengthUnit unit) {
        this.wkt = new WktText(unit);
    }

    /**
     * The text of a plan file.
     *
     * @param plan the plan
     * @param findings every judgement to be told, errors first
     * @param unit the unit of the coordinates
     */
    static String text(Plan plan, List<Finding> findings, LengthUnit unit) {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(new DefaultIndenter(" ", "\n"));
        printer.indentArraysWith(new DefaultIndenter(" ", "\n"));
        try {
            return MAPPER.writer(printer).writeValueAsString(new PlanFile(unit).plan(plan, findings)) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a plan that cannot be written as JSON", e);
        }
    }

    private ObjectNode plan(Plan plan, List<Finding> findings) {
        ObjectNode node = object();
        node.put("format", "plan/1");
        node.put("room", plan.room());
        node.put("status", plan.status().name().toLowerCase(Locale.ROOT));
        ObjectNode lattice = node.putObject("lattice");
        lattice.put("origin", wkt.of(plan.lattice().origin()));
        set(lattice, "angle", plan.lattice().angle());
        ObjectNode area = node.putObject("area");
        set(area, "floor", plan.area().floor());
        set(area, "heatable", plan.area().heatable());
        set(area, "heated", plan.area().heated());
        ArrayNode cables = node.putArray("cables");
        plan.cables().forEach(cable -> cables.add(cable(cable)));
        ArrayNode circuits = node.putArray("circuits");
        plan.circuits().forEach(circuit -> circuits.add(circuit(circuit)));
        plan.roomHeat().ifPresent(heat -> node.set("roomHeat", roomHeat(heat)));
        plan.takeOff().ifPresent(takeOff -> node.set("takeoff", takeOff(takeOff)));
        ArrayNode fitting = node.putArray("fittingLengths");
        for (Plan.FittingLengths lengths : plan.fittingLengths()) {
            ObjectNode part = fitting.addObject();
            part.put("part", lengths.part());
            set(part, "shortest", lengths.shortest());
            set(part, "longest", lengths.longest());
        }
        ArrayNode options = node.putArray("options");
        plan.options().forEach(option -> options.add(CableTable.row(option)));
        ArrayNode told = node.putArray("findings");
        findings.forEach(finding -> told.add(finding(finding)));
        return node;
    }

    private ObjectNode cable(PlannedCable cable) {
        ObjectNode node = object();
        node.put("name", cable.name());
        set(node, "length", cable.cable().length());
        CableCheck check = cable.check();
        ObjectNode route = node.putObject("route");
        route.put("line", wkt.of(cable.route().line()));
        set(route, "laidLength", cable.route().laidLength());
        set(route, "leftOver", leftOver(cable));
        route.put("rightAngleTurns", cable.route().turns());
        set(route, "evenSpacing", cable.route().evenSpacing());
        set(route, "capacity", cable.route().capacity());
        check.leastSeparation().ifPresent(least -> set(route, "leastSeparation", least));
        ObjectNode clearance = route.putObject("leastClearance");
        check.leastClearance().forEach((name, least) -> set(clearance, name, least));
        set(clearance, "wall", check.leastWallClearance());
        ArrayNode leads = node.putArray("coldLeads");
        for (int i = 0; i < cable.route().coldLeads().size(); i++) {
            ObjectNode lead = leads.addObject();
            lead.put("line", wkt.of(cable.route().coldLeads().get(i)));
            set(lead, "length", check.coldLeadLengths().get(i));
            set(lead, "surplus", check.coldLeadSurplus().get(i));
        }
        cable.sensor().ifPresent(place -> node.set("sensor", sensor(place)));
        cable.spareSensor().ifPresent(place -> node.set("spareSensor", sensor(place)));
        ObjectNode resistance = node.putObject("resistance");
        set(resistance, "nominal", cable.rating().resistance().nominal());
        set(resistance, "low", cable.rating().resistance().low());
        set(resistance, "high", cable.rating().resistance().high());
        set(node, "power", cable.rating().power().nominal());
        set(node, "current", cable.rating().current().nominal());
        node.set("endReserve", CableTable.reserve(cable.reserve(), wkt));
        cable.heat().ifPresent(heat -> node.set("heat", heat(heat)));
        return node;
    }

    private static Quantity<Length> leftOver(PlannedCable cable) {
        return cable.cable()
                .length()
                .to(Units.METRE)
                .subtract(cable.route().laidLength().to(Units.METRE));
    }

    private ObjectNode sensor(SensorPlace place) {
        ObjectNode node = object();
        node.put("at", wkt.of(place.at()));
        node.put("lead", wkt.of(place.lead()));
        return node;
    }

    private static ObjectNode heat(CableHeat heat) {
        ObjectNode node = object();
        set(node, "powerDensity", heat.powerDensity());
        set(node, "upward", heat.upward());
        set(node, "downward", heat.downward());
        set(node, "surfaceMean", heat.asLaid().mean());
        set(node, "surfaceMax", heat.asLaid().max());
        set(node, "surfaceMin", heat.asLaid().min());
        set(node, "sheath", heat.sheath());
        ObjectNode regular = node.putObject("regularRow");
        set(regular, "surfaceMean", heat.regularMean());
        set(regular, "surfaceMax", heat.regularMax());
        set(regular, "surfaceMin", heat.regularMin());
        return node;
    }

    private static ObjectNode circuit(Circuit circuit) {
        ObjectNode node = object();
        ArrayNode cables = node.putArray("cables");
        circuit.cables().forEach(cables::add);
        set(node, "current", circuit.current());
        set(node, "designCurrent", circuit.designCurrent());
        set(node, "protectiveDevice", circuit.protectiveDevice());
        node.put("conductor", circuit.conductor().toString());
        set(node, "voltageDrop", circuit.voltageDrop());
        set(node, "voltageDropShare", circuit.voltageDropShare());
        set(node, "residualCurrentDevice", circuit.residualCurrentDevice());
        return node;
    }

    private ObjectNode roomHeat(RoomHeat heat) {
        ObjectNode node = object();
        set(node, "heatOutput", heat.heatOutput());
        set(node, "heatLoss", heat.heatLoss());
        if (heat.heatLoss().isPresent()) {
            node.put("coversHeatLoss", heat.coversHeatLoss());
        }
        set(node, "heatUpTime", heat.heatUpTime());
        node.set("floor", HeatTable.floor(heat.floor(), wkt));
        ObjectNode use = HeatTable.use(heat.use());
        if (!use.isEmpty()) {
            node.set("use", use);
        }
        return node;
    }

    private static ObjectNode takeOff(TakeOff takeOff) {
        ObjectNode node = object();
        set(node, "membrane", takeOff.membraneArea());
        takeOff.membraneCut().ifPresent(cut -> {
            node.put("pieces", cut.pieces().size());
            node.put("stock", cut.stockCount());
            node.put("stockKind", cut.stock().kind().name().toLowerCase(Locale.ROOT));
        });
        ArrayNode mortars = node.putArray("mortars");
        for (MortarNeed need : takeOff.mortars()) {
            ObjectNode mortar = mortars.addObject();
            mortar.put("use", need.use().toString());
            set(mortar, "dry", need.dry());
            mortar.put("bags", need.bags());
        }
        takeOff.layout().ifPresent(layout -> node.put("tiles", layout.tilesToBuy()));
        takeOff.grout().ifPresent(grout -> set(node, "grout", grout.mass()));
        takeOff.height().ifPresent(height -> set(node, "height", height.total()));
        ArrayNode doors = node.putArray("doors");
        for (DoorStep step : takeOff.doorSteps()) {
            ObjectNode door = doors.addObject();
            door.put("name", step.door());
            set(door, "step", step.step());
        }
        return node;
    }

    private static ObjectNode finding(Finding finding) {
        ObjectNode node = object();
        node.put("severity", finding.severity().name().toLowerCase(Locale.ROOT));
        node.put("subject", finding.subject());
        node.put("message", finding.message());
        finding.value().ifPresent(value -> set(node, "value", value));
        finding.limit().ifPresent(limit -> set(node, "limit", limit));
        node.put("source", finding.source().toString());
        return node;
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
