package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.PriorityZone;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.ThermalInsulance;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.SensorPlace;
import org.heatfloor.thermal.BlockedArea;
import org.heatfloor.thermal.Climate;
import org.heatfloor.thermal.ColdPlace;
import org.heatfloor.thermal.CoveredPart;
import org.heatfloor.thermal.FloorComfort;
import org.heatfloor.thermal.FloorCover;
import org.heatfloor.thermal.FloorField;
import org.heatfloor.thermal.HeatFindings;
import org.heatfloor.thermal.LimitZone;
import org.heatfloor.thermal.StuddedLayer;
import org.heatfloor.thermal.SurfaceSummary;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;

/** What the temperature field of the floor as laid gives to say. */
final class FloorJudgements {

    private static final Source FIELD = Source.derived("temperature field of the route as laid");
    /** A place smaller than a hand is no cold place. */
    private static final double LEAST_COLD_SQUARE_METRES = 0.01;

    /** More than so much of the floor where cable may lie is worth a warning. */
    private static final double COLD_SHARE = 0.03;

    private static final int QUADRANT_SEGMENTS = 6;
    /** Conductivity of a stud full of still air with its thin wall. */
    private static final double HOLLOW = 0.03;
    /** The rug of which every plan tells where none is given. */
    private static final Quantity<ThermalInsulance> USUAL_RUG = Amounts.of(0.1, Units.SQUARE_METRE_KELVIN_PER_WATT);

    private static final Quantity<Length> USUAL_WIDTH = Amounts.metres(0.8);

    private final Brief brief;
    private final Climate climate;
    private final LaidField laid;
    private final FloorField field;
    private final List<CableHeat> cables;
    private final List<HeatingCable> chosen;
    private final List<Finding> findings = new ArrayList<>();

    FloorJudgements(
            Brief brief,
            Climate climate,
            LaidField laid,
            FloorField field,
            List<CableHeat> cables,
            List<HeatingCable> chosen) {
        this.brief = brief;
        this.climate = climate;
        this.laid = laid;
        this.field = field;
        this.cables = cables;
        this.chosen = chosen;
    }

    List<Finding> findings() {
        return findings;
    }

    FloorHeat judge(Optional<StuddedLayer> studs, List<List<SensorPlace>> sensors, Geometry heatable) {
        SurfaceSummary heated = field.heated();
        limits();
        findings.add(HeatFindings.lawRange(field.law(), heated.mean(), climate.air()));
        comfort(heated);
        List<SensorHeat> read = new ArrayList<>();
        for (int i = 0; i < sensors.size(); i++) {
            String name = chosen.get(i).name();
            sensors.get(i).stream().findFirst().ifPresent(place -> {
                Point at = place.at();
                SensorHeat sensor =
                        new SensorHeat(name, field.sensorAt(Amounts.metres(at.getX()), Amounts.metres(at.getY())));
                read.add(sensor);
                findings.add(sensor.reading().judge(name, climate.surfaceLimit()));
            });
        }
        zones();
        List<SealHeat> seals = seals();
        double air = Si.kelvin("air", climate.air());
        Quantity<Temperature> coldBelow = Amounts.celsius(air + (Si.kelvin("mean", heated.mean()) - air) / 2 - 273.15);
        List<ColdPlace> cold = coldPlaces(heatable, coldBelow);
        return new FloorHeat(
                field.law().name(),
                field.film(),
                heated,
                field.floor(),
                read,
                seals,
                coldBelow,
                cold,
                covers(studs),
                studs.isPresent() ? Optional.empty() : hollowStuds(heated));
    }

    private void limits() {
        List<LimitZone> zones = brief.heat.limitZones;
        boolean sensor = brief.rules.floorSensor();
        zones.forEach(zone -> findings.add(zone.judge(field, sensor)));
        climate.surfaceLimit().ifPresent(limit -> {
            Source source = Source.brief("climate surface limit");
            if (zones.isEmpty()) {
                for (int i = 0; i < cables.size(); i++) {
                    findings.add(HeatFindings.surface(
                            chosen.get(i).name(), cables.get(i).asLaid().max(), limit, sensor, source));
                }
            } else {
                field.heatedWithout(zones.stream().map(LimitZone::shape).toList())
                        .ifPresent(rest -> findings.add(
                                HeatFindings.surface("rest of the floor", rest.max(), limit, sensor, source)));
            }
        });
    }

    /** At the temperature wanted where one is known; full power says only whether the thermostat must hold the floor back. */
    private void comfort(SurfaceSummary heated) {
        FloorComfort.Category category = brief.heat.comfort;
        Optional<Quantity<Temperature>> wanted =
                brief.heat.floorTemperature.or(() -> brief.heat.schedule.flatMap(s -> s.periods().stream()
                        .map(p -> p.floor())
                        .max((a, b) -> Double.compare(Si.kelvin("floor", a), Si.kelvin("floor", b)))));
        if (wanted.isPresent()) {
            findings.add(FloorComfort.judge("comfort", wanted.orElseThrow(), category));
            brief.heat.barefoot.ifPresent(b -> findings.add(b.judge("bare feet", wanted.orElseThrow())));
            return;
        }
        double mean = celsius(heated.mean());
        double warmest = celsius(category.warmest());
        findings.add(Finding.of(
                Severity.NOTE,
                "comfort",
                "At steady full power the heated floor is at " + degrees(heated.mean()) + " on average; "
                        + (mean > warmest ? "held at or below " : "up to ") + degrees(category.warmest())
                        + " it displeases at most " + QuantityText.write(category.mostDissatisfied(), 0)
                        + " of people in indoor shoes.",
                heated.mean(),
                category.warmest(),
                category.source()));
        brief.heat.barefoot.ifPresent(b -> findings.add(b.judge("bare feet", heated.mean())));
    }

    /** How warm the tile is where people stand. */
    private void zones() {
        for (PriorityZone zone : brief.priorityZones) {
            field.within(LaidField.shape(zone.shape()))
                    .ifPresent(part -> findings.add(Finding.withValue(
                            Severity.NOTE,
                            zone.name(),
                            "At steady full power the tile here is at " + degrees(part.mean()) + " on average, from "
                                    + degrees(part.min()) + " to " + degrees(part.max()) + ".",
                            part.mean(),
                            FIELD)));
        }
    }

    private List<SealHeat> seals() {
        List<SealHeat> seals = new ArrayList<>();
        Envelope box = brief.room.polygon().getEnvelopeInternal();
        for (KeepOut keepOut : brief.keepOuts) {
            if (keepOut.kind() != KeepOutKind.TOILET_FLANGE) {
                continue;
            }
            double radius = Si.in("radius", keepOut.radius(), Units.METRE);
            Geometry shape = radius > 0 ? keepOut.shape().buffer(radius, QUADRANT_SEGMENTS) : keepOut.shape();
            Coordinate[] edge = shape.getCoordinates();
            double[][] places = new double[edge.length][];
            for (int i = 0; i < edge.length; i++) {
                places[i] = new double[] {
                    Math.max(box.getMinX(), Math.min(box.getMaxX(), edge[i].x)),
                    Math.max(box.getMinY(), Math.min(box.getMaxY(), edge[i].y))
                };
            }
            SealHeat seal = new SealHeat(keepOut.name(), field.warmestOf(places, Units.METRE));
            seals.add(seal);
            findings.add(brief.heat.seal.judge(seal.keepOut(), seal.warmest()));
        }
        return seals;
    }

    private List<ColdPlace> coldPlaces(Geometry heatable, Quantity<Temperature> below) {
        List<ColdPlace> cold = field.coldPlaces(LaidField.shapes(heatable), below).stream()
                .filter(p -> Si.in("area", p.area(), Units.SQUARE_METRE) >= LEAST_COLD_SQUARE_METRES)
                .toList();
        if (cold.isEmpty()) {
            findings.add(Finding.withValue(
                    Severity.NOTE,
                    "cold places",
                    "No place where cable may lie stays below " + degrees(below)
                            + ", half the heated floor's rise over the room.",
                    below,
                    FIELD));
            return cold;
        }
        ColdPlace first = cold.get(0);
        double area = cold.stream()
                .mapToDouble(p -> Si.in("area", p.area(), Units.SQUARE_METRE))
                .sum();
        findings.add(Finding.of(
                area > COLD_SHARE * heatable.getArea() ? Severity.WARNING : Severity.NOTE,
                "cold places",
                "Of the floor where cable may lie " + QuantityText.number(area, 2) + " m² in " + cold.size()
                        + (cold.size() == 1 ? " place stays" : " places stays") + " below " + degrees(below)
                        + ", half the heated floor's rise over the room; the coldest of the largest place, "
                        + degrees(first.lowest()) + ", is at "
                        + QuantityText.number(Si.in("x", first.coldest().x(), Units.METRE), 2) + " m, "
                        + QuantityText.number(Si.in("y", first.coldest().y(), Units.METRE), 2) + " m.",
                first.lowest(),
                below,
                FIELD));
        return cold;
    }

    /** Covers as given, on a field of their own; where none is given, what a usual rug put down later would do. */
    private List<CoveredPart> covers(Optional<StuddedLayer> studs) {
        Quantity<Temperature> sheath = cables.stream()
                .map(CableHeat::sheath)
                .max((a, b) -> Double.compare(Si.kelvin("sheath", a), Si.kelvin("sheath", b)))
                .orElseThrow();
        List<FloorCover> onFloor = new ArrayList<>();
        for (FloorCover cover : brief.heat.covers) {
            if (field.within(cover.shape()).isPresent()) {
                onFloor.add(cover);
            } else {
                findings.add(Finding.of(
                        Severity.WARNING,
                        cover.name(),
                        "No place of the floor lies under it, so it was not judged.",
                        Source.brief("cover")));
            }
        }
        if (onFloor.isEmpty()) {
            usualRug(studs);
            return List.of();
        }
        List<CoveredPart> parts = laid.solve(studs, onFloor).covered();
        for (CoveredPart part : parts) {
            findings.add(brief.heat
                    .sheathLimit
                    .map(limit -> part.judge(sheath, limit))
                    .orElseGet(() -> part.judge(sheath)));
        }
        return parts;
    }

    private void usualRug(Optional<StuddedLayer> studs) {
        double hottest = Double.NEGATIVE_INFINITY;
        Optional<BlockedArea> worst = Optional.empty();
        for (int i = 0; i < cables.size(); i++) {
            var cable = LaidField.embedded(brief, chosen.get(i));
            double spacing = Si.in("power", cable.power(), Units.WATT_PER_METRE)
                    / Si.in("density", cables.get(i).powerDensity(), Units.WATT_PER_SQUARE_METRE);
            BlockedArea blocked = BlockedArea.of(
                    LaidField.uniform(brief.buildUp.orElseThrow(), studs),
                    climate,
                    field.law(),
                    cable,
                    Amounts.metres(spacing),
                    USUAL_RUG,
                    USUAL_WIDTH);
            if (celsius(blocked.sheathCovered()) > hottest) {
                hottest = celsius(blocked.sheathCovered());
                worst = Optional.of(blocked);
            }
        }
        worst.ifPresent(w -> findings.add(Finding.withValue(
                Severity.NOTE,
                "rugs",
                "Under a rug of 0.1 m²·K/W, 0.8 m wide, put down later, steady full power would bring the tile to "
                        + degrees(w.tileCovered()) + " and the cable to " + degrees(w.sheathCovered())
                        + "; furniture without feet insulates far more.",
                w.sheathCovered(),
                Source.derived("covered strip as a fin"))));
    }

    /** How much warmer the floor would be with studs full of air, where nothing is known of them. */
    private Optional<Quantity<Temperature>> hollowStuds(SurfaceSummary heated) {
        Optional<StuddedLayer> hollow = laid.studs(Amounts.wattsPerMetreKelvin(HOLLOW));
        Source source = Source.derived("studs hinder heat sideways and gather it above the cable");
        if (hollow.isEmpty()) {
            findings.add(Finding.of(
                    Severity.WARNING,
                    "studs",
                    "The heated layer is taken as uniform, since the cable does not lie between the studs within it: the"
                            + " warmest places may be up to 0.6 K warmer than told.",
                    source));
            return Optional.empty();
        }
        Quantity<Temperature> warmest = laid.solve(hollow, List.of()).heated().max();
        String limit = climate.surfaceLimit()
                .filter(l -> celsius(l) >= celsius(heated.max()) && celsius(l) < celsius(warmest))
                .map(l -> "; that is above the limit of " + degrees(l))
                .orElse("");
        findings.add(Finding.of(
                Severity.WARNING,
                "studs",
                "The conductivity of the membrane's studs is not given, so the heated layer is taken as uniform. With studs"
                        + " full of air the warmest place would be at " + degrees(warmest) + " and not "
                        + degrees(heated.max()) + limit + ".",
                warmest,
                heated.max(),
                source));
        return Optional.of(warmest);
    }

    private static double celsius(Quantity<Temperature> temperature) {
        return Si.in("temperature", temperature, Units.CELSIUS);
    }

    private static String degrees(Quantity<Temperature> temperature) {
        return QuantityText.write(temperature.to(Units.CELSIUS), 1);
    }
}
