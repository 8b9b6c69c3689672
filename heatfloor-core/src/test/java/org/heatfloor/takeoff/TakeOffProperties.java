package org.heatfloor.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.heatfloor.area.Door;
import org.heatfloor.area.JointRule;
import org.heatfloor.area.Room;
import org.heatfloor.finding.Source;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;

class TakeOffProperties {

    @Provide
    Arbitrary<Polygon> floors() {
        return TakeOffRooms.floors();
    }

    private static Quantity<Length> length(double millimetres, Unit<Length> unit) {
        return unit.equals(Units.MILLIMETRE) ? Amounts.millimetres(millimetres) : Amounts.of(millimetres / 25.4, unit);
    }

    /** The same floor described in millimetres or in inches, pounds and square feet. */
    private static TakeOff described(int x, int y, Unit<Length> unit) {
        double perUnit = unit.equals(Units.MILLIMETRE) ? 1 : 25.4;
        Membrane membrane = new Membrane(
                length(38, unit),
                length(25, unit),
                length(10, unit),
                Optional.of(new MembraneStock(MembraneStock.Kind.ROLL, length(1140, unit), length(9500, unit))));
        Quantity<javax.measure.quantity.Mass> bag =
                unit.equals(Units.MILLIMETRE) ? Amounts.kilograms(22.6796185) : Amounts.of(50, Units.POUND);
        Trowel under = Trowel.of(Notch.SQUARE, length(6, unit), length(6, unit), length(6, unit));
        Trowel over = Trowel.of(Notch.U, length(10, unit), length(10, unit), length(10, unit));
        TileSpec tile = TileSpec.of(
                length(597, unit),
                length(297, unit),
                length(10, unit),
                length(3, unit),
                TilePattern.THIRD_OFFSET,
                Amounts.of(10, Units.PERCENT));
        return TakeOff.of(
                        Room.of(FloorRegions.rectangle(0, 0, x / perUnit, y / perUnit), unit),
                        membrane,
                        StudLattice.of(
                                membrane, Schoolhouse.point(19 / perUnit, 19 / perUnit), unit, Amounts.degrees(0)))
                .cable(length(x * 20.0, unit), length(6, unit))
                .tile(tile)
                .bedding(Bedding.of(under, over, bag).withWaste(Amounts.of(10, Units.PERCENT)))
                .grout(new GroutSpec(
                        Amounts.of(1600, Units.KILOGRAM_PER_CUBIC_METRE), Amounts.of(0.1, Units.ONE), Optional.of(bag)))
                .build();
    }

    @Property(tries = 25)
    void inchesAndMillimetresBuyTheSame(
            @ForAll @IntRange(min = 900, max = 4200) int x, @ForAll @IntRange(min = 800, max = 3200) int y) {
        ShoppingList metric = described(x, y, Units.MILLIMETRE).shoppingList(PurchaseUnits.METRIC, Optional.empty());
        ShoppingList inches = described(x, y, Units.INCH).shoppingList(PurchaseUnits.METRIC, Optional.empty());
        assertThat(inches.lines())
                .extracting(ShoppingLine::material)
                .containsExactlyElementsOf(
                        metric.lines().stream().map(ShoppingLine::material).toList());
        assertThat(inches.lines())
                .extracting(ShoppingLine::count)
                .containsExactlyElementsOf(
                        metric.lines().stream().map(ShoppingLine::count).toList());
    }

    @Property(tries = 200)
    void mortarScalesWithTheFloor(
            @ForAll @DoubleRange(min = 0.5, max = 60) double area, @ForAll @IntRange(min = 2, max = 9) int times) {
        double cable = area * 0.0001;
        List<MortarNeed> one = needs(area, cable);
        List<MortarNeed> many = needs(area * times, cable * times);
        for (int i = 0; i < 2; i++) {
            double single = Si.in("dry", one.get(i).dry(), Units.KILOGRAM);
            double several = Si.in("dry", many.get(i).dry(), Units.KILOGRAM);
            assertThat(several).isCloseTo(times * single, within(1e-9 * several));
            assertThat(many.get(i).bags())
                    .isLessThanOrEqualTo(times * one.get(i).bags());
            assertThat(many.get(i).bags() * 20.0).isGreaterThanOrEqualTo(several - 1e-6);
        }
    }

    private static List<MortarNeed> needs(double squareMetres, double cableCubicMetres) {
        return MortarNeed.of(
                Amounts.squareMetres(squareMetres),
                Studs.of(Schoolhouse.washroomMembrane()),
                Schoolhouse.washroomBedding(),
                Amounts.of(cableCubicMetres, Units.CUBIC_METRE));
    }

    @Property(tries = 40)
    void batchesCoverTheFloorAndKeepTheirTimes(
            @ForAll("floors") Polygon floor,
            @ForAll @DoubleRange(min = 0.5, max = 6) double pace,
            @ForAll @IntRange(min = 10, max = 40) int open,
            @ForAll @IntRange(min = 45, max = 240) int pot) {
        Mortar mortar = Mortar.usual(MortarKind.MODIFIED, Amounts.kilograms(20))
                .withTimes(Amounts.of(open, Units.MINUTE), Amounts.of(pot, Units.MINUTE));
        Coordinate door = floor.getExteriorRing().getCoordinateN(0);
        MortarNeed need =
                MortarNeed.of(MortarUse.UNDER_MEMBRANE, mortar, floor.getArea() * 0.003, WorkedChecks.percent(0));
        List<MortarBatch> batches = Batches.of(floor, 0, Optional.of(door), need, Amounts.squareMetres(pace));
        Geometry all =
                UnaryUnionOp.union(batches.stream().map(MortarBatch::part).toList());
        assertThat(all.getArea()).isCloseTo(floor.getArea(), within(1e-4));
        double dry = 0;
        for (MortarBatch batch : batches) {
            double area = Si.in("area", batch.area(), Units.SQUARE_METRE);
            assertThat(area).isLessThanOrEqualTo(pace * pot / 60.0 + 1e-4);
            assertThat(area / batch.spreads()).isLessThanOrEqualTo(pace * open / 60.0 + 1e-4);
            dry += Si.in("dry", batch.dry(), Units.KILOGRAM);
        }
        assertThat(dry).isCloseTo(Si.in("dry", need.dry(), Units.KILOGRAM), within(1e-3));
    }

    @Property(tries = 60)
    void levellerUnderAPlaneIsItsMeanDepth(
            @ForAll @IntRange(min = 1000, max = 5000) int x,
            @ForAll @IntRange(min = 1000, max = 5000) int y,
            @ForAll @DoubleRange(min = -0.01, max = 0.01) double fallX,
            @ForAll @DoubleRange(min = -0.01, max = 0.01) double fallY,
            @ForAll @DoubleRange(min = -0.1, max = 0.1) double base) {
        double l = x / 1000.0;
        double w = y / 1000.0;
        List<SpotSurvey.Spot> spots = new java.util.ArrayList<>();
        for (int i = 0; i <= 2; i++) {
            for (int k = 0; k <= 2; k++) {
                double height = base + fallX * l * i / 2 + fallY * w * k / 2;
                spots.add(new SpotSurvey.Spot(l * i / 2, w * k / 2, Amounts.metres(height)));
            }
        }
        SpotSurvey survey = SpotSurvey.of(spots);
        LevellerNeed need = survey.leveller(
                WorkedChecks.room(l, w, Units.METRE), LevellerSpec.USUAL.withCover(Amounts.millimetres(3)));
        double mean = (Math.abs(fallX) * l + Math.abs(fallY) * w) / 2 + 0.003;
        assertThat(Si.in("volume", need.volume(), Units.CUBIC_METRE)).isCloseTo(l * w * mean, within(1e-5));
        assertThat(WorkedChecks.mm(need.deepest())).isCloseTo(1000 * (2 * (mean - 0.003) + 0.003), within(1e-3));
        assertThat(Si.in("dry", need.dry(), Units.KILOGRAM)).isCloseTo(l * w * mean * 1700, within(0.02));
        assertThat(WorkedChecks.mm(survey.gapUnder(Amounts.metres(8)).orElseThrow()))
                .isCloseTo(0, within(1e-6));
        assertThat(survey.gapUnder(Amounts.metres(Math.min(l, w) / 2.1))).isEmpty();
    }

    @Property(tries = 200)
    void aStepIsTheSameFromBothSides(@ForAll @DoubleRange(min = 0, max = 80) double rise) {
        StepRule rule = StepRule.ADA_2010;
        assertThat(rule.verdict(Amounts.millimetres(-rise))).isEqualTo(rule.verdict(Amounts.millimetres(rise)));
        assertThat(rule.verdict(Amounts.millimetres(rise + 1)))
                .isGreaterThanOrEqualTo(rule.verdict(Amounts.millimetres(rise)));
    }

    /** Each remedy is built anew and the door measured again. */
    @Property(tries = 60)
    void everyRemedyMakesTheDoorFlush(@ForAll @DoubleRange(min = -40, max = 60) double beyond) {
        Door door = Door.of("beyond", Schoolhouse.line(0, 0, 900, 0), Units.MILLIMETRE)
                .withAdjacentFloorHeight(Amounts.millimetres(beyond));
        DoorStep step = doorStep(door, 9, 9, 6, 8);
        if (step.verdict() == StepVerdict.FLUSH) {
            return;
        }
        assertThat(step.remedies()).isNotEmpty();
        for (Remedy remedy : step.remedies()) {
            double[] number = Pattern.compile("[0-9]+(?:\\.[0-9]+)?")
                    .matcher(remedy.change())
                    .results()
                    .mapToDouble(r -> Double.parseDouble(r.group()))
                    .toArray();
            DoorStep after;
            if (remedy.change().startsWith("use a tile")) {
                after = doorStep(door, number[0], 9, 6, 8);
            } else if (remedy.change().startsWith("use a membrane")) {
                after = doorStep(door, 9, number[0], 6, 8);
            } else if (remedy.change().contains("under the membrane")) {
                after = doorStep(door, 9, 9, number[0], 8);
            } else if (remedy.change().contains("over the membrane")) {
                after = doorStep(door, 9, 9, 6, number[0]);
            } else {
                assertThat(number[0]).isCloseTo(Math.abs(WorkedChecks.mm(step.step())), within(0.051));
                continue;
            }
            assertThat(after.verdict()).as(remedy.change()).isEqualTo(StepVerdict.FLUSH);
            assertThat(WorkedChecks.mm(after.step())).isCloseTo(WorkedChecks.mm(remedy.step()), within(1e-6));
        }
    }

    private static DoorStep doorStep(Door door, double tile, double membrane, double under, double over) {
        FloorHeight height = FloorHeight.of(
                new Membrane(
                        Amounts.millimetres(34),
                        Amounts.millimetres(22),
                        Amounts.millimetres(membrane),
                        Optional.empty()),
                beds(under, over),
                WorkedChecks.tile(600, 300, tile, 3, TilePattern.STRAIGHT, 0));
        return new DoorSteps(height, beds(under, over), StepRule.ADA_2010, PurchaseUnits.METRIC)
                .of(List.of(door), d -> 0)
                .get(0);
    }

    private static Bedding beds(double under, double over) {
        return Bedding.of(Schoolhouse.square(under), Schoolhouse.square(over), Amounts.kilograms(20));
    }

    @Property(tries = 100)
    void aGridOfBaysKeepsItsLimitsOrIsRefused(
            @ForAll @DoubleRange(min = 1, max = 60) double length,
            @ForAll @DoubleRange(min = 1, max = 60) double width,
            @ForAll @DoubleRange(min = 1, max = 3) double ratio) {
        JointRule rule = new JointRule(
                "test",
                Amounts.metres(8),
                Optional.of(Amounts.squareMetres(40)),
                OptionalDouble.of(ratio),
                Source.commonPractice("a rule for a test"));
        try {
            JointRule.BayGrid bays = rule.grid(Amounts.metres(length), Amounts.metres(width));
            assertThat(rule.allows(Amounts.metres(length / bays.along()), Amounts.metres(width / bays.across())))
                    .isTrue();
            assertThat(bays.count()).isGreaterThanOrEqualTo(bays.lowerBound());
        } catch (IllegalArgumentException e) {
            assertThat(ratio).as("only a ratio near 1 may be missed").isLessThan(1.05);
            assertThat(e).hasMessageStartingWith("bay grid: ").hasMessageContaining("given");
        }
    }
}
