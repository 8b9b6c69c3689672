package org.heatfloor.takeoff;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.heatfloor.area.JointRule;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.TradeLength;
import org.heatfloor.finding.Source;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Faults are refused with the argument's name, what was given and what is expected. */
class BadInputTest {

    private static Arguments fault(String name, ThrowingCallable call) {
        return Arguments.of(name, call);
    }

    private static Trowel trowel(double width, double depth, double gap, Notch notch) {
        return Trowel.of(notch, Amounts.millimetres(width), Amounts.millimetres(depth), Amounts.millimetres(gap));
    }

    private static Studs studs(double foot, double head) {
        return Studs.straight(
                        StudGrid.SQUARE,
                        Amounts.millimetres(36),
                        StudPlan.ROUND,
                        Amounts.millimetres(foot),
                        Amounts.millimetres(6))
                .withHead(Amounts.millimetres(head));
    }

    private static TileSpec tile(double side, double joint, double waste) {
        return WorkedChecks.tile(side, side, 9, joint, TilePattern.STRAIGHT, waste);
    }

    private static MembraneCut cutFrom(double width, double length) {
        Membrane membrane = new Membrane(
                Amounts.millimetres(34),
                Amounts.millimetres(22),
                Amounts.millimetres(9),
                Optional.of(new MembraneStock(
                        MembraneStock.Kind.ROLL, Amounts.millimetres(width), Amounts.millimetres(length))));
        return MembraneCut.of(
                Schoolhouse.washroomRoom(),
                membrane,
                StudLattice.of(membrane, Schoolhouse.point(17, 17), Units.MILLIMETRE, Amounts.degrees(0)));
    }

    static Stream<Arguments> faults() {
        return Stream.of(
                fault(
                        "trowel notch width",
                        () -> Trowel.atSpacing(
                                Notch.SQUARE, Amounts.millimetres(8), Amounts.millimetres(8), Amounts.millimetres(7))),
                fault("trowel notch width", () -> trowel(0, 6, 6, Notch.SQUARE)),
                fault("trowel notch depth", () -> trowel(6, -1, 6, Notch.SQUARE)),
                fault("trowel notch depth", () -> trowel(10, 4, 6, Notch.U)),
                fault("trowel gap between notches", () -> trowel(6, 6, -1, Notch.V)),
                fault("trowel angle", () -> Schoolhouse.square(6).withAngle(Amounts.degrees(91))),
                fault("tile joint", () -> tile(50, 50, 10)),
                fault("tile joint", () -> tile(50, -1, 10)),
                fault("tile waste", () -> tile(300, 3, -1)),
                fault("tile length", () -> tile(0, 0, 0)),
                fault("membrane stock width", () -> cutFrom(33, 5000)),
                fault("membrane stock length", () -> cutFrom(1000, 20)),
                fault("membrane stock", () -> cutFrom(34, 34)),
                fault(
                        "membrane stock",
                        () -> MembraneCut.of(
                                Schoolhouse.washroomRoom(),
                                new Membrane(
                                        Amounts.millimetres(34),
                                        Amounts.millimetres(22),
                                        Amounts.millimetres(9),
                                        Optional.empty()),
                                StudLattice.of(
                                        Schoolhouse.washroomMembrane(),
                                        Schoolhouse.point(0, 0),
                                        Units.MILLIMETRE,
                                        Amounts.degrees(0)))),
                fault("mortar waste", () -> Schoolhouse.washroomBedding().withWaste(Amounts.of(-5, Units.PERCENT))),
                fault("contact share", () -> Schoolhouse.washroomBedding().withContact(Amounts.of(0, Units.PERCENT))),
                fault("contact share", () -> Schoolhouse.washroomBedding().withContact(Amounts.of(101, Units.PERCENT))),
                fault("bag", () -> Bedding.of(Schoolhouse.square(6), Schoolhouse.square(8), Amounts.kilograms(0))),
                fault("mortar density", () -> Mortar.usual(MortarKind.MODIFIED, Amounts.kilograms(20))
                        .withMix(Amounts.of(1600, Units.KILOGRAM_PER_LITRE), Amounts.of(25, Units.PERCENT))),
                fault("mortar water", () -> Mortar.usual(MortarKind.MODIFIED, Amounts.kilograms(20))
                        .withMix(Amounts.of(1.6, Units.KILOGRAM_PER_LITRE), Amounts.of(-25, Units.PERCENT))),
                fault("stud hollow width", () -> studs(20, 20)
                        .withHollow(Amounts.millimetres(20), Amounts.millimetres(3))),
                fault("stud hollow depth", () -> studs(20, 20)
                        .withHollow(Amounts.millimetres(10), Amounts.millimetres(7))),
                fault("stud head", () -> studs(20, 36)),
                fault("stud foot", () -> studs(0, 20)),
                fault("fill depth", () -> studs(20, 20).openVolumeTo(Amounts.millimetres(6.1))),
                fault("studs", () -> Schoolhouse.washroom().studs(studs(20, 20))),
                fault(
                        "mortars",
                        () -> MortarNeed.bagsTogether(
                                Schoolhouse.washroomWithoutStock().build().mortars())),
                fault("laying pace", () -> {
                    TakeOff takeOff = Schoolhouse.washroomWithoutStock().build();
                    takeOff.batches(takeOff.mortars().get(0), Amounts.squareMetres(0));
                }),
                fault(
                        "leveller waste",
                        () -> new LevellerSpec(
                                Amounts.of(1.7, Units.KILOGRAM_PER_LITRE),
                                Amounts.millimetres(0),
                                Amounts.of(-1, Units.PERCENT),
                                Optional.empty())),
                fault("leveller cover", () -> LevellerSpec.USUAL.withCover(Amounts.millimetres(-1))),
                fault(
                        "grout waste",
                        () -> new GroutSpec(
                                Amounts.of(1.6, Units.KILOGRAM_PER_LITRE),
                                Amounts.of(-1, Units.PERCENT),
                                Optional.empty())),
                fault("tiles per box", () -> new TileSupply(0, WorkedChecks.percent(0), Amounts.millimetres(3), true)),
                fault(
                        "perimeter gap",
                        () -> LayoutRule.USUAL.withGaps(Amounts.millimetres(-1), Amounts.millimetres(6))),
                fault(
                        "perimeter gap",
                        () -> TileLayout.of(
                                WorkedChecks.room(60, 60, Units.MILLIMETRE),
                                tile(50, 3, 0),
                                LayoutRule.USUAL.withGaps(Amounts.millimetres(40), Amounts.millimetres(6)))),
                fault(
                        "tile",
                        () -> TileLayout.of(WorkedChecks.room(100, 100, Units.METRE), tile(5, 1, 0), LayoutRule.USUAL)),
                fault("layout line", () -> TileStart.centredOn("axis", Schoolhouse.line(1, 1, 1, 1))),
                fault("layout corner", () -> TileStart.corner(Double.NaN, 0)),
                fault("pot life", () -> Mortar.usual(MortarKind.MODIFIED, Amounts.kilograms(20))
                        .withTimes(Amounts.of(30, Units.MINUTE), Amounts.of(20, Units.MINUTE))),
                fault("spots", () -> SpotSurvey.of(List.of())),
                fault("spot height", () -> new SpotSurvey.Spot(0, 0, Amounts.metres(11))),
                fault("price of grout", () -> Prices.in(Currency.getInstance("EUR"))
                        .with(Material.GROUT, new BigDecimal("-1"))),
                fault("mortar mix", () -> new SiteMortar(0, 4, 1.33)),
                fault("bulking", () -> new SiteMortar(1, 4, 0.9)),
                fault("exterior joint spacing", () -> SoftJoints.exteriorWidth(Amounts.feet(16), Amounts.kelvins(50))),
                fault("bay grid", () -> new JointRule(
                                "test",
                                Amounts.metres(8),
                                Optional.empty(),
                                OptionalDouble.of(1),
                                Source.commonPractice("a test"))
                        .grid(Amounts.metres(Math.sqrt(2)), Amounts.metres(1))),
                fault("cable diameter", () -> Schoolhouse.washroom().cable(Amounts.metres(10), Amounts.millimetres(0))),
                fault("cable length", () -> Schoolhouse.washroom().cable(Amounts.metres(-10), Amounts.millimetres(5))),
                fault("keep-outs", () -> Schoolhouse.washroomWithoutStock()
                        .keepOuts(List.of(KeepOut.of(
                                "tray",
                                KeepOutKind.SHOWER_TRAY,
                                FloorRegions.rectangle(-1, -1, 9, 9),
                                Units.METRE,
                                TradeLength.of(Amounts.millimetres(0)))))
                        .build()));
    }

    @ParameterizedTest(name = "{0} #{index}")
    @MethodSource("faults")
    void isRefusedByName(String name, ThrowingCallable call) {
        assertThatIllegalArgumentException()
                .isThrownBy(call)
                .withMessageStartingWith(name)
                .withMessageMatching("(?s).*(given|leave no floor).*");
    }
}
