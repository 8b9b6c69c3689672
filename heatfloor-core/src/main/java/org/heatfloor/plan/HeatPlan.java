package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.finding.Finding;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableRoute;
import org.heatfloor.routing.SensorPlace;
import org.heatfloor.thermal.Beneath;
import org.heatfloor.thermal.BuildUp;
import org.heatfloor.thermal.Climate;
import org.heatfloor.thermal.EmbeddedCable;
import org.heatfloor.thermal.FloorField;
import org.heatfloor.thermal.HeatFindings;
import org.heatfloor.thermal.SteadySection;
import org.heatfloor.thermal.StuddedLayer;
import org.heatfloor.thermal.SurfaceLaws;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Heat of the cables as laid. */
final class HeatPlan {

    private static final int QUADRANT_SEGMENTS = 16;

    private final Brief brief;
    private final BuildUp buildUp;
    private final Climate climate;
    private final Optional<StuddedLayer> studs;
    private final List<CableHeat> cables = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final RoomHeat room;

    private HeatPlan(
            Brief brief,
            BuildUp buildUp,
            Climate climate,
            List<CableRoute> routes,
            List<HeatingCable> chosen,
            List<List<SensorPlace>> sensors,
            Geometry heatable) {
        this.brief = brief;
        this.buildUp = buildUp;
        this.climate = climate;
        LaidField laid = new LaidField(brief, buildUp, climate, routes, chosen);
        studs = brief.heat.studConductivity.flatMap(laid::studs);
        FloorField field = laid.solve(studs, List.of());
        for (int i = 0; i < routes.size(); i++) {
            cables.add(heat(routes.get(i), chosen.get(i), field, i));
        }
        Quantity<Power> output = studs.isPresent() ? laid.intoRoom(studs) : field.intoRoom();
        FloorJudgements floor = new FloorJudgements(brief, climate, laid, field, cables, chosen);
        FloorHeat floorHeat = floor.judge(studs, sensors, heatable);
        findings.addAll(floor.findings());
        climate.heatLoss().ifPresent(loss -> findings.add(HeatFindings.heatLoss(output, loss)));
        findings.add(HeatFindings.insulationBelow(buildUp, Beneath.guess(climate)));
        findings.addAll(buildUp.storageFindings());
        findings.addAll(buildUp.conductivityFindings());
        FloorTimes times = new FloorTimes(
                brief,
                LaidField.uniform(buildUp, studs),
                climate,
                cables,
                chosen.stream().map(c -> embedded(brief, c)).toList());
        FloorUse use = times.use(field);
        findings.addAll(times.findings(use));
        room = new RoomHeat(
                output,
                climate.heatLoss(),
                climate.heatLoss()
                        .map(l -> watts(output) >= Si.in("loss", l, Units.WATT))
                        .orElse(true),
                times.toNineTenths(),
                floorHeat,
                use);
    }

    /** The heat of a plan; empty where build-up or climate are not known. */
    static Optional<HeatPlan> of(
            Brief brief,
            List<CableRoute> routes,
            List<HeatingCable> chosen,
            List<List<SensorPlace>> sensors,
            Geometry heatable) {
        return brief.buildUp.flatMap(
                b -> brief.climate.map(c -> new HeatPlan(brief, b, c, routes, chosen, sensors, heatable)));
    }

    List<CableHeat> cables() {
        return cables;
    }

    RoomHeat room() {
        return room;
    }

    List<Finding> findings() {
        return findings;
    }

    /** The cable in its layer, at its power on the supply's voltage. */
    static EmbeddedCable embedded(Brief brief, HeatingCable cable) {
        return LaidField.embedded(brief, cable);
    }

    /** Floor within half the even spacing of a cable. */
    static Geometry heated(Polygon room, CableRoute route) {
        double half = Si.in("spacing", route.evenSpacing(), Units.METRE) / 2;
        Geometry near =
                OverlayNGRobust.overlay(route.line().buffer(half, QUADRANT_SEGMENTS), room, OverlayNG.INTERSECTION);
        return room.getFactory().buildGeometry(PolygonExtracter.getPolygons(near));
    }

    /** Heat into the room of cables as laid; empty where build-up or climate are not known. */
    static OptionalDouble outputWatts(Brief brief, List<CableRoute> routes, List<HeatingCable> chosen) {
        if (brief.buildUp.isEmpty() || brief.climate.isEmpty()) {
            return OptionalDouble.empty();
        }
        LaidField laid = new LaidField(brief, brief.buildUp.orElseThrow(), brief.climate.orElseThrow(), routes, chosen);
        return OptionalDouble.of(watts(laid.intoRoom(brief.heat.studConductivity.flatMap(laid::studs))));
    }

    private static double watts(Quantity<Power> power) {
        return Si.in("output", power, Units.WATT);
    }

    private CableHeat heat(CableRoute route, HeatingCable cable, FloorField field, int number) {
        double area = heated(brief.room.polygon(), route).getArea();
        // The endless regular row whose spacing gives the cable's power over its heated area.
        Quantity<Length> spacing = Amounts.metres(area / Si.in("length", cable.length(), Units.METRE));
        EmbeddedCable embedded = embedded(brief, cable);
        SteadySection section = studs.map(s -> SteadySection.studded(
                        s.partedAtStudTops(buildUp), s, climate, SurfaceLaws.floorCurve(), embedded, spacing))
                .orElseGet(() -> SteadySection.of(buildUp, climate, embedded, spacing));
        return new CableHeat(
                Amounts.squareMetres(area),
                section.powerDensity(),
                field.heatedBy(number),
                section.upward(),
                section.downward(),
                section.surfaceMean(),
                section.surfaceMax(),
                section.surfaceMin(),
                section.sheath());
    }
}
