package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import org.heatfloor.electrical.CableRating;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.LinearPower;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.ThermalConductivity;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableRoute;
import org.heatfloor.thermal.BuildUp;
import org.heatfloor.thermal.CableRun;
import org.heatfloor.thermal.Climate;
import org.heatfloor.thermal.EmbeddedCable;
import org.heatfloor.thermal.FloorCover;
import org.heatfloor.thermal.FloorField;
import org.heatfloor.thermal.FloorFieldBuilder;
import org.heatfloor.thermal.FloorShape;
import org.heatfloor.thermal.StuddedLayer;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** From a brief and routes to the temperature field of the floor. */
final class LaidField {

    private final Brief brief;
    private final BuildUp buildUp;
    private final Climate climate;
    private final List<CableRoute> routes;
    private final List<HeatingCable> chosen;

    LaidField(Brief brief, BuildUp buildUp, Climate climate, List<CableRoute> routes, List<HeatingCable> chosen) {
        this.brief = brief;
        this.buildUp = buildUp;
        this.climate = climate;
        this.routes = routes;
        this.chosen = chosen;
    }

    /** The cable in its layer, at its power on the supply's voltage. */
    static EmbeddedCable embedded(Brief brief, HeatingCable cable) {
        double watts = Si.in(
                "power", CableRating.of(cable, brief.supply.voltage()).power().nominal(), Units.WATT);
        Quantity<LinearPower> power =
                Amounts.of(watts / Si.in("length", cable.length(), Units.METRE), Units.WATT_PER_METRE);
        return brief.rules
                .cableHeight()
                .map(h -> new EmbeddedCable(power, cable.diameter(), h))
                .orElseGet(() -> EmbeddedCable.flushWithStuds(power, cable.diameter(), brief.membrane.height()));
    }

    /** The studs, where they can be reckoned with: they stand in the heated layer and every cable lies between them. */
    Optional<StuddedLayer> studs(Quantity<ThermalConductivity> conductivity) {
        StuddedLayer studs = new StuddedLayer(
                brief.membrane.studPitch(),
                brief.membrane.studDiameter(),
                brief.membrane.height(),
                buildUp.heatedLayer().conductivity(),
                conductivity);
        return Optional.of(studs)
                .filter(s -> chosen.stream().allMatch(cable -> s.fits(buildUp, embedded(brief, cable))));
    }

    /** The layers for whatever takes the heated one as uniform. */
    static BuildUp uniform(BuildUp buildUp, Optional<StuddedLayer> studs) {
        return studs.map(s -> s.homogenised(s.partedAtStudTops(buildUp))).orElse(buildUp);
    }

    /** Heat into the room; the same with the studs beside the cables or without, since they shift no heat up or down. */
    Quantity<Power> intoRoom(Optional<StuddedLayer> studs) {
        return builder(uniform(buildUp, studs)).solve().intoRoom();
    }

    /** The field with studs or without and with covers or without. */
    FloorField solve(Optional<StuddedLayer> studs, List<FloorCover> covers) {
        FloorFieldBuilder builder =
                builder(studs.map(s -> s.partedAtStudTops(buildUp)).orElse(buildUp));
        for (FloorCover cover : covers) {
            builder = builder.cover(cover);
        }
        return studs.map(builder::studs).orElse(builder).solve();
    }

    private FloorFieldBuilder builder(BuildUp layers) {
        FloorFieldBuilder builder = FloorField.builder(layers, climate, shape(brief.room.polygon()));
        double spacing = 0;
        for (int i = 0; i < routes.size(); i++) {
            builder = builder.cable(CableRun.of(
                    embedded(brief, chosen.get(i)), points(routes.get(i).line()), Units.METRE));
            spacing = Math.max(spacing, Si.in("spacing", routes.get(i).evenSpacing(), Units.METRE));
        }
        return builder.heatedWithin(Amounts.metres(spacing / 2));
    }

    /** A polygon as a shape of the field. */
    static FloorShape shape(Polygon polygon) {
        List<double[][]> holes = new ArrayList<>();
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            holes.add(points(polygon.getInteriorRingN(i)));
        }
        return FloorShape.of(points(polygon.getExteriorRing()), holes, Units.METRE);
    }

    /** The polygons of a geometry as shapes of the field. */
    static List<FloorShape> shapes(Geometry geometry) {
        List<FloorShape> shapes = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                shapes.add(shape(polygon));
            }
        }
        return shapes;
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
