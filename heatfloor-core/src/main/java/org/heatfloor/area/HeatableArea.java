package org.heatfloor.area;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * What of a room's floor may be heated. The floor falls into three: the places kept out (the strip along the walls, the
 * keep-outs with their clearances), dead space (free, but too narrow for a run or no place to stand), and the heatable
 * region, where the cable's centre line may lie. A keep-out more or a wider clearance never leaves more of it. Clearances
 * are never short; the region errs to the inside by at most 0.13 % of a clearance. Areas are computed on a grid of 1 µm, so that the three add up to the floor within that grid times
 * the length of their edges. Coordinates are metres.
 */
public final class HeatableArea {

    /** A line keeps at least this much from the cable, so that it parts the region. */
    private static final double LEAST_LINE_CLEARANCE_METRES = 5e-6;

    private static final String STRIP = "strip along the walls";
    private static final String STRIP_REASON = "the edge joint, later fixings and skirting";

    private final Polygon floor;
    private final Geometry region;
    private final Geometry heatable;
    private final double pitchMetres;
    private final List<TakenArea> taken;
    private final List<DeadSpace> deadSpaces;
    private final List<Finding> findings;

    private HeatableArea(
            Polygon floor,
            Geometry region,
            Geometry heatable,
            double pitchMetres,
            List<TakenArea> taken,
            List<DeadSpace> deadSpaces,
            List<Finding> findings) {
        this.floor = floor;
        this.region = region;
        this.heatable = heatable;
        this.pitchMetres = pitchMetres;
        this.taken = taken;
        this.deadSpaces = deadSpaces;
        this.findings = findings;
    }

    /**
     * The heatable area of a room, with the usual rules for dead space.
     *
     * @param room the room
     * @param wallClearance from every wall and inner ring to the cable's centre line
     * @param keepOuts places without cable; furniture on legs that stands high enough takes nothing
     * @param studPitch gives clearances stated in studs their length
     * @return the heatable area
     * @throws IllegalArgumentException if a keep-out lies wholly outside the room, or the pitch is not above zero
     */
    public static HeatableArea of(
            Room room, TradeLength wallClearance, List<KeepOut> keepOuts, Quantity<Length> studPitch) {
        return of(room, wallClearance, keepOuts, studPitch, AreaRules.usual());
    }

    /**
     * The heatable area of a room.
     *
     * @param room the room
     * @param wallClearance from every wall and inner ring to the cable's centre line
     * @param keepOuts places without cable; furniture on legs that stands high enough takes nothing
     * @param studPitch gives clearances stated in studs their length
     * @param rules what counts as dead space
     * @return the heatable area
     * @throws IllegalArgumentException if a keep-out lies wholly outside the room, or the pitch is not above zero
     */
    public static HeatableArea of(
            Room room, TradeLength wallClearance, List<KeepOut> keepOuts, Quantity<Length> studPitch, AreaRules rules) {
        room.requireInside(keepOuts);
        double pitch = Si.positive("stud pitch", studPitch, Units.METRE);
        double wall = Si.notNegative("wall clearance", wallClearance.with(studPitch), Units.METRE);
        Polygon floor = room.polygon();
        Geometry region = Offsets.shrunk(floor, wall);
        List<TakenArea> taken = new ArrayList<>();
        taken.add(new TakenArea(STRIP, lost(floor, region), STRIP_REASON));
        List<Finding> findings = new ArrayList<>();
        narrowStrip(wallClearance.with(studPitch)).ifPresent(findings::add);
        for (KeepOut keepOut : keepOuts) {
            String reason = UsualClearance.of(keepOut.kind()).reason();
            if (!keepOut.blocksCable()) {
                taken.add(new TakenArea(keepOut.name(), Amounts.squareMetres(0), "stands high enough on its legs"));
                continue;
            }
            Geometry left = Offsets.chained(region, taken(keepOut, pitch));
            taken.add(new TakenArea(keepOut.name(), lost(region, left), reason));
            region = left;
            clearance(keepOut, studPitch).ifPresent(findings::add);
        }
        region = Offsets.onGrid(region);
        DeadSpaces.Found found = new DeadSpaces(floor, wall, keepOuts, pitch)
                .find(
                        region,
                        Si.notNegative("least run width", rules.leastRunWidth().with(studPitch), Units.METRE),
                        Si.notNegative("standing width", rules.standingWidth(), Units.METRE));
        for (DeadSpace space : found.spaces()) {
            if (!space.name().equals(DeadSpace.SMALL_CORNERS)) {
                findings.add(finding(space));
            }
        }
        return new HeatableArea(
                floor, region, found.heatable(), pitch, List.copyOf(taken), found.spaces(), List.copyOf(findings));
    }

    private static Geometry taken(KeepOut keepOut, double pitchMetres) {
        Geometry shape = keepOut.shape();
        double clearance = keepOut.clearanceMetres(pitchMetres);
        return Offsets.grown(
                shape,
                shape instanceof LineString
                        ? Math.max(clearance, LEAST_LINE_CLEARANCE_METRES)
                        : keepOut.radiusMetres() + clearance);
    }

    private static Quantity<Area> lost(Geometry before, Geometry after) {
        return Amounts.squareMetres(Math.max(0, before.getArea() - after.getArea()));
    }

    /** The usual clearance where none was given, and a clearance below it. */
    private static Optional<Finding> clearance(KeepOut keepOut, Quantity<Length> studPitch) {
        UsualClearance usual = UsualClearance.of(keepOut.kind());
        Quantity<Length> given = keepOut.clearance().with(studPitch);
        if (keepOut.clearanceAssumed()) {
            return Optional.of(Finding.withValue(
                    Severity.NOTE,
                    keepOut.name(),
                    "No clearance was given, so the usual " + usual.clearance() + " is kept: " + usual.reason() + ".",
                    given,
                    usual.source()));
        }
        Quantity<Length> expected = usual.clearance().with(studPitch);
        if (Si.in("clearance", given, Units.METRE) >= Si.in("usual clearance", expected, Units.METRE) - 1e-9) {
            return Optional.empty();
        }
        boolean harm = keepOut.kind() == KeepOutKind.TOILET_FLANGE || keepOut.kind() == KeepOutKind.AIR_REGISTER;
        return Optional.of(Finding.of(
                harm ? Severity.WARNING : Severity.NOTE,
                keepOut.name(),
                "The clearance is less than usual: " + usual.reason() + ".",
                given,
                expected,
                usual.source()));
    }

    /** The usual clearance from a column is that from a wall. */
    private static Optional<Finding> narrowStrip(Quantity<Length> clearance) {
        UsualClearance usual = UsualClearance.of(KeepOutKind.COLUMN);
        Quantity<Length> expected = usual.clearance().with(Amounts.metres(1));
        if (Si.in("wall clearance", clearance, Units.METRE) >= Si.in("usual", expected, Units.METRE) - 1e-9) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                Severity.NOTE,
                STRIP,
                "It is narrower than usual; it is kept for " + STRIP_REASON + ".",
                clearance,
                expected,
                Source.commonPractice(usual.clearance() + " from walls")));
    }

    private static Finding finding(DeadSpace space) {
        boolean narrow = space.reason() == DeadSpace.Reason.TOO_NARROW;
        return Finding.withValue(
                Severity.NOTE,
                space.name(),
                "Dead space, not counted as heatable: " + space.reason().words()
                        + (space.joinedParts() < 2 ? "." : "; it parts the heatable floor, though one run may pass."),
                space.area(),
                narrow ? AreaRules.LEAST_RUN_WIDTH_SOURCE : AreaRules.STANDING_WIDTH_SOURCE);
    }

    /**
     * Area of the floor inside the walls.
     *
     * @return the area
     */
    public Quantity<Area> floorArea() {
        return Amounts.squareMetres(floor.getArea());
    }

    /**
     * Area of the heatable region: where the cable's centre line may lie, dead space left out.
     *
     * @return the area
     */
    public Quantity<Area> heatableArea() {
        return Amounts.squareMetres(heatable.getArea());
    }

    /**
     * Area taken by the strip along the walls, the keep-outs and their clearances.
     *
     * @return the area
     */
    public Quantity<Area> keptOutArea() {
        return Amounts.squareMetres(floor.getArea() - region.getArea());
    }

    /**
     * Area of all dead space.
     *
     * @return the area
     */
    public Quantity<Area> deadArea() {
        return Amounts.squareMetres(region.getArea() - heatable.getArea());
    }

    /**
     * The heatable part of the floor.
     *
     * @return 0 to 1
     */
    public Quantity<Dimensionless> heatableShare() {
        return Amounts.of(heatable.getArea() / floor.getArea(), Units.ONE);
    }

    /**
     * Every place that keeps all clearances, dead space included.
     *
     * @return a copy, in metres; empty when nothing is left
     */
    public Geometry region() {
        return region.copy();
    }

    /**
     * The heatable region: {@link #region()} without dead space.
     *
     * @return a copy, in metres; empty when nothing is left
     */
    public Geometry heatableRegion() {
        return heatable.copy();
    }

    /**
     * The connected parts of the heatable region, the largest first. A movement joint parts it even with a clearance of
     * zero, and so does a neck too narrow for a run.
     *
     * @return copies, in metres
     */
    public List<Polygon> parts() {
        return Offsets.polygons(heatable.copy());
    }

    /**
     * What each wall strip and keep-out takes, in the order given; the sum is {@link #keptOutArea()}.
     *
     * @return the list
     */
    public List<TakenArea> taken() {
        return taken;
    }

    /**
     * The dead spaces, those too narrow first.
     *
     * @return the list
     */
    public List<DeadSpace> deadSpaces() {
        return deadSpaces;
    }

    /**
     * Narrow places of {@link #region()} that join wider parts. A single run passes a neck where a channel lies in it; a run
     * there and back needs the spacing. A neck narrower than {@link AreaRules#leastRunWidth()} is dead space as well.
     *
     * @param width places narrower than this count
     * @return the necks, the largest first
     * @throws IllegalArgumentException if the width is not above zero
     */
    public List<Neck> necks(Quantity<Length> width) {
        return DeadSpaces.necks(region, Si.positive("neck width", width, Units.METRE), pitchMetres * pitchMetres / 100);
    }

    /**
     * The heatable part of a priority zone.
     *
     * @param zone the zone
     * @return its area inside the heatable region
     */
    public Quantity<Area> heatableArea(PriorityZone zone) {
        return Amounts.squareMetres(Offsets.intersection(heatable, zone.shape()).getArea());
    }

    /**
     * The mean weight of the heatable region: the area-weighted mean of the zones' weights, with 1 outside every zone and
     * the greatest weight where zones overlap.
     *
     * @param zones the zones
     * @return the mean, above 0; 1 when nothing is heatable
     */
    public double meanWeight(List<PriorityZone> zones) {
        return heatable.isEmpty() ? 1 : weighted(heatable, zones) / heatable.getArea();
    }

    /**
     * The share of the floor that is heated, each place counted by the weight of its zone: 1 outside every zone and the
     * greatest weight where zones overlap. Without zones it is the plain share.
     *
     * @param heated what cables heat, in metres
     * @param zones the zones
     * @return 0 to 1
     */
    public Quantity<Dimensionless> weightedShare(Geometry heated, List<PriorityZone> zones) {
        return Amounts.of(weighted(Offsets.intersection(heated, floor), zones) / weighted(floor, zones), Units.ONE);
    }

    private static double weighted(Geometry area, List<PriorityZone> zones) {
        List<PriorityZone> heaviestFirst = zones.stream()
                .sorted((a, b) -> Double.compare(b.weight(), a.weight()))
                .toList();
        Geometry left = area;
        double sum = 0;
        for (PriorityZone zone : heaviestFirst) {
            Geometry rest = Offsets.difference(left, zone.shape());
            sum += zone.weight() * (left.getArea() - rest.getArea());
            left = rest;
        }
        return sum + left.getArea();
    }

    /**
     * The part of the floor that laid cables heat: everything within a reach of their centre lines, inside the walls.
     *
     * @param centreLines the cables as drawn, in metres
     * @param reach half the even spacing
     * @return the area
     * @throws IllegalArgumentException if the reach is not above zero
     */
    public Quantity<Area> heatedArea(List<LineString> centreLines, Quantity<Length> reach) {
        double metres = Si.positive("reach", reach, Units.METRE);
        Geometry heated = floor.getFactory().createPolygon();
        for (LineString line : centreLines) {
            heated = Offsets.union(heated, line.buffer(metres));
        }
        return Amounts.squareMetres(Offsets.intersection(heated, floor).getArea());
    }

    /**
     * What is worth saying: clearances below the usual, dead spaces.
     *
     * @return the findings
     */
    public List<Finding> findings() {
        return findings;
    }

    /**
     * One line for a person.
     *
     * @return for example {@code heatable 2.95 m² of 4.63 m²}
     */
    @Override
    public String toString() {
        return "heatable " + QuantityText.write(heatableArea(), 2) + " of " + QuantityText.write(floorArea(), 2);
    }
}
