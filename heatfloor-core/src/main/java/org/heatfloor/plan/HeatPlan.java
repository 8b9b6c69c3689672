package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.heatfloor.electrical.CableRating;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.LinearPower;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableRoute;
import org.heatfloor.thermal.Beneath;
import org.heatfloor.thermal.BuildUp;
import org.heatfloor.thermal.CableRun;
import org.heatfloor.thermal.Climate;
import org.heatfloor.thermal.EmbeddedCable;
import org.heatfloor.thermal.FloorField;
import org.heatfloor.thermal.FloorFieldBuilder;
import org.heatfloor.thermal.FloorShape;
import org.heatfloor.thermal.HeatFindings;
import org.heatfloor.thermal.HeatUp;
import org.heatfloor.thermal.SteadySection;
import org.heatfloor.thermal.SurfaceLaws;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** Heat of the cables as laid. */
final class HeatPlan {

    private static final int QUADRANT_SEGMENTS = 16;

    private final Brief brief;
    private final BuildUp buildUp;
    private final Climate climate;
    private final List<CableHeat> cables = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final RoomHeat room;

    private HeatPlan(
            Brief brief, BuildUp buildUp, Climate climate, List<CableRoute> routes, List<HeatingCable> chosen) {
        this.brief = brief;
        this.buildUp = buildUp;
        this.climate = climate;
        FloorField field = field(routes, chosen);
        double output = 0;
        double seconds = 0;
        boolean reaches = true;
        for (int i = 0; i < routes.size(); i++) {
            CableHeat heat = heat(routes.get(i), chosen.get(i), field, i);
            cables.add(heat);
            output += Si.in("output", heat.heatOutput(), Units.WATT);
            Optional<Double> time = heatUp(chosen.get(i), heat);
            reaches &= time.isPresent();
            seconds = Math.max(seconds, time.orElse(0.0));
            String name = chosen.get(i).name();
            climate.surfaceLimit()
                    .ifPresent(limit -> findings.add(HeatFindings.surface(
                            name,
                            warmer(heat),
                            limit,
                            brief.rules.floorSensor(),
                            Source.brief("climate surface limit"))));
        }
        climate.heatLoss().ifPresent(loss -> findings.add(HeatFindings.heatLoss(cablesOutput(), loss)));
        findings.add(HeatFindings.insulationBelow(buildUp, Beneath.guess(climate)));
        findings.addAll(buildUp.storageFindings());
        double total = output;
        room = new RoomHeat(
                Amounts.watts(output),
                climate.heatLoss(),
                climate.heatLoss()
                        .map(l -> total >= Si.in("loss", l, Units.WATT))
                        .orElse(true),
                reaches ? Optional.of(Amounts.seconds(seconds)) : Optional.empty());
    }

    /** The heat of a plan; empty where build-up or climate are not known. */
    static Optional<HeatPlan> of(Brief brief, List<CableRoute> routes, List<HeatingCable> chosen) {
        return brief.buildUp.flatMap(b -> brief.climate.map(c -> new HeatPlan(brief, b, c, routes, chosen)));
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
        double watts = Si.in(
                "power", CableRating.of(cable, brief.supply.voltage()).power().nominal(), Units.WATT);
        javax.measure.Quantity<LinearPower> power =
                Amounts.of(watts / Si.in("length", cable.length(), Units.METRE), Units.WATT_PER_METRE);
        return brief.rules
                .cableHeight()
                .map(h -> new EmbeddedCable(power, cable.diameter(), h))
                .orElseGet(() -> EmbeddedCable.flushWithStuds(power, cable.diameter(), brief.membrane.height()));
    }

    /** Floor within half the even spacing of a cable. */
    static Geometry heated(Polygon room, CableRoute route) {
        double half = Si.in("spacing", route.evenSpacing(), Units.METRE) / 2;
        return route.line().buffer(half, QUADRANT_SEGMENTS).intersection(room);
    }

    private javax.measure.Quantity<javax.measure.quantity.Power> cablesOutput() {
        return Amounts.watts(cables.stream()
                .mapToDouble(c -> Si.in("output", c.heatOutput(), Units.WATT))
                .sum());
    }

    private static javax.measure.Quantity<javax.measure.quantity.Temperature> warmer(CableHeat heat) {
        double section = Si.kelvin("surface", heat.surfaceMax());
        double field = Si.kelvin("surface", heat.warmestAsLaid());
        return section >= field ? heat.surfaceMax() : heat.warmestAsLaid();
    }

    /** Heat into the room of cables as laid; empty where build-up or climate are not known. */
    static OptionalDouble outputWatts(Brief brief, List<CableRoute> routes, List<HeatingCable> chosen) {
        if (brief.buildUp.isEmpty() || brief.climate.isEmpty()) {
            return OptionalDouble.empty();
        }
        double output = 0;
        for (int i = 0; i < routes.size(); i++) {
            double area = heated(brief.room.polygon(), routes.get(i)).getArea();
            output += area
                    * upward(section(
                            brief, brief.buildUp.orElseThrow(), brief.climate.orElseThrow(), chosen.get(i), area));
        }
        return OptionalDouble.of(output);
    }

    /** The endless regular row whose spacing gives the cable's power over its heated area. */
    private static SteadySection section(
            Brief brief, BuildUp buildUp, Climate climate, HeatingCable cable, double areaSquareMetres) {
        double length = Si.in("length", cable.length(), Units.METRE);
        return SteadySection.of(buildUp, climate, embedded(brief, cable), Amounts.metres(areaSquareMetres / length));
    }

    private static double upward(SteadySection section) {
        return Si.in("upward", section.upward(), Units.WATT_PER_SQUARE_METRE);
    }

    private CableHeat heat(CableRoute route, HeatingCable cable, FloorField field, int number) {
        double area = heated(brief.room.polygon(), route).getArea();
        SteadySection section = section(brief, buildUp, climate, cable, area);
        return new CableHeat(
                Amounts.squareMetres(area),
                section.powerDensity(),
                section.upward(),
                section.downward(),
                section.surfaceMean(),
                section.surfaceMax(),
                section.surfaceMin(),
                section.sheath(),
                Amounts.watts(upward(section) * area),
                field.heatedBy(number).max());
    }

    private Optional<Double> heatUp(HeatingCable cable, CableHeat heat) {
        double area = Si.in("area", heat.heatedArea(), Units.SQUARE_METRE);
        double length = Si.in("length", cable.length(), Units.METRE);
        return HeatUp.fromCold(
                        buildUp,
                        climate,
                        SurfaceLaws.floorCurve(),
                        embedded(brief, cable),
                        Amounts.metres(area / length))
                .timeToShare(Amounts.of(0.9, Units.ONE))
                .map(t -> Si.in("time", t, Units.SECOND));
    }

    private FloorField field(List<CableRoute> routes, List<HeatingCable> chosen) {
        Polygon room = brief.room.polygon();
        List<double[][]> holes = new ArrayList<>();
        for (int i = 0; i < room.getNumInteriorRing(); i++) {
            holes.add(points(room.getInteriorRingN(i)));
        }
        FloorFieldBuilder builder =
                FloorField.builder(buildUp, climate, FloorShape.of(points(room.getExteriorRing()), holes, Units.METRE));
        double spacing = 0;
        for (int i = 0; i < routes.size(); i++) {
            builder = builder.cable(CableRun.of(
                    embedded(brief, chosen.get(i)), points(routes.get(i).line()), Units.METRE));
            spacing = Math.max(spacing, Si.in("spacing", routes.get(i).evenSpacing(), Units.METRE));
        }
        return builder.heatedWithin(Amounts.metres(spacing / 2)).solve();
    }

    private static double[][] points(LineString line) {
        Coordinate[] c = line.getCoordinates();
        double[][] out = new double[c.length][];
        for (int i = 0; i < c.length; i++) {
            out[i] = new double[] {c[i].x, c[i].y};
        }
        return out;
    }
}
