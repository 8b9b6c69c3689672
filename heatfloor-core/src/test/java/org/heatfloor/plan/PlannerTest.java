package org.heatfloor.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.heatfloor.plan.PlanChecks.metres;
import static org.heatfloor.plan.PlanChecks.watts;

import java.util.List;
import java.util.stream.Stream;
import org.heatfloor.area.TradeLength;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.plan.Plan.Status;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.Effort;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.LineString;

class PlannerTest {

    static Stream<SchoolPlans.Planned> rooms() {
        return Stream.of(SchoolPlans.washroom(), SchoolPlans.bootRoom(), SchoolPlans.kitchen());
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void realRoomsComeOutCompleteExactAndClean(SchoolPlans.Planned room) {
        Plan plan = room.plan();
        assertThat(plan.status()).isEqualTo(Status.COMPLETE);
        assertThat(plan.cables()).isNotEmpty();
        assertThat(plan.findings()).noneMatch(Finding::isError);
        assertThat(PlanChecks.checkedAfresh(room.brief(), plan).passes()).isTrue();
        double pitch = metres(room.brief().membrane.studPitch());
        for (PlannedCable c : plan.cables()) {
            double left = metres(c.cable().length()) - metres(c.route().laidLength());
            assertThat(left).as(c.name()).isBetween(-1e-9, pitch + 1e-9);
            // The line is drawn in chords, which are at most a few millimetres shorter than the arcs.
            assertThat(c.route().line().getLength()).isCloseTo(metres(c.route().laidLength()), within(0.02));
        }
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void evenSpacingIsAreaOfSquaresOverLength(SchoolPlans.Planned room) {
        List<Double> areas = PlanChecks.reachAreas(room.brief(), room.plan().lattice());
        for (int i = 0; i < room.plan().cables().size(); i++) {
            PlannedCable c = room.plan().cables().get(i);
            assertThat(metres(c.route().evenSpacing()))
                    .as(c.name())
                    .isCloseTo(areas.get(i) / metres(c.cable().length()), within(1e-9));
            assertThat(PlanChecks.isSpacingAllowed(room.brief(), areas.get(i), c.cable()))
                    .isTrue();
        }
    }

    @Test
    void noShorterCableOfTheWashroomMayWorkAndCovers() {
        SchoolPlans.Planned room = SchoolPlans.washroom();
        double area = PlanChecks.reachAreas(room.brief(), room.plan().lattice()).get(0);
        HeatingCable taken = room.plan().cables().get(0).cable();
        assertThat(watts(room.plan().roomHeat().orElseThrow().heatOutput())).isGreaterThan(290);
        assertThat(room.plan().roomHeat().orElseThrow().coversHeatLoss()).isTrue();
        int shorter = 0;
        for (HeatingCable c : room.brief().catalogue) {
            if (metres(c.length()) < metres(taken.length()) && PlanChecks.isSpacingAllowed(room.brief(), area, c)) {
                shorter++;
                assertThat(PlanChecks.output(room.brief(), area, c))
                        .as(c.name())
                        .isLessThan(290);
            }
        }
        assertThat(shorter).as("cables that the choice was made from").isGreaterThanOrEqualTo(3);
    }

    @Test
    void theNeighboursOfTheChosenCableAreExplained() {
        List<String> washroom = messages(SchoolPlans.washroom().plan());
        assertThat(washroom)
                .anyMatch(m -> m.matches(
                        "K31.5: Chosen: runs lie 120 mm apart on average; of the cables that work and cover the heat loss of 290"
                                + " W the shortest\\."));
        assertThat(washroom)
                .anyMatch(
                        m -> m.matches(
                                "K28: Not taken, the next smaller: laid, it gives the room 28\\d W, less than the heat loss of 290 W\\."));
        assertThat(washroom)
                .anyMatch(m -> m.matches(
                        "K35.5: Not taken, the next larger: its runs would lie 107 mm apart, which is allowed; it was not"
                                + " tried, since the shorter does the job\\."));
        List<String> bootRoom = messages(SchoolPlans.bootRoom().plan());
        assertThat(bootRoom).anyMatch(m -> m.startsWith("F90: Chosen") && m.contains("no heat loss"));
        assertThat(bootRoom)
                .anyMatch(m -> m.startsWith("F75: Not taken") && m.contains("more than the 140 mm allowed"));
        assertThat(bootRoom).anyMatch(m -> m.startsWith("F108: Not taken") && m.contains("too long by at least"));
    }

    @Test
    void heatingCableDoesNotCrossTheKitchensMovementJoint() {
        Plan plan = SchoolPlans.kitchen().plan();
        assertThat(plan.cables()).hasSizeGreaterThanOrEqualTo(2);
        LineString joint = Schoolrooms.KITCHEN_JOINT;
        for (PlannedCable c : plan.cables()) {
            assertThat(c.route().line().distance(joint)).isGreaterThanOrEqualTo(0.040 - 1e-9);
        }
        assertThat(watts(plan.roomHeat().orElseThrow().heatOutput())).isGreaterThanOrEqualTo(980);
        assertThat(plan.circuits().stream().mapToInt(c -> c.cables().size()).sum())
                .isEqualTo(plan.cables().size());
    }

    @Test
    void aCableTooLongIsRefusedWithTheProvedExcessAndTheLengthsThatFit() {
        Brief brief =
                Schoolrooms.wrongCable().rules(Schoolrooms.washroomRules()).build();
        Plan plan = Planner.plan(brief, Effort.QUICK);
        assertThat(plan.status()).isEqualTo(Status.IMPOSSIBLE);
        assertThat(plan.cables()).isEmpty();
        Plan.FittingLengths fits = plan.fittingLengths().get(0);
        Finding error = plan.findings().get(0);
        assertThat(error.severity()).isEqualTo(Severity.ERROR);
        double longest = metres(fits.longest());
        assertThat(metres(error.limit().orElseThrow().asType(javax.measure.quantity.Length.class)))
                .isEqualTo(longest);
        assertThat(error.message())
                .contains("too long by " + Options.atLeast(63 - longest))
                .contains("at most " + Options.metres(longest));
        // No longer than the area over the least spacing, by the squares about the junctions counted afresh.
        double area = PlanChecks.reachAreas(brief, plan.lattice()).get(0);
        assertThat(longest).isLessThan(area / 0.102).isGreaterThan(area / 0.102 - 0.7);
        assertThat(metres(fits.shortest())).isCloseTo(area / (0.170 * 1.02), within(1e-6));
        assertThat(messages(plan)).anyMatch(m -> m.startsWith("least spacing: No closer spacing was found"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-20, -0.5, 20})
    void aStartMeasuredOffTheWallIsOnIt(double offMillimetres) {
        CableRules rules = CableRules.of(
                TradeLength.studs(3),
                TradeLength.studs(5),
                Amounts.millimetres(20),
                2410 - offMillimetres,
                1120,
                Units.MILLIMETRE);
        Plan plan = Planner.plan(
                Schoolrooms.washroomCovered(Schoolrooms.fullClimate())
                        .rules(rules)
                        .catalogue(List.of(Schoolrooms.k(31.5)))
                        .build(),
                Effort.QUICK);
        assertThat(plan.status()).isEqualTo(Status.COMPLETE);
        assertThat(plan.cables()
                        .get(0)
                        .route()
                        .coldLeads()
                        .get(0)
                        .getStartPoint()
                        .getX())
                .isEqualTo(2.41, within(1e-9));
    }

    @Test
    void aSmallExcessIsNotToldAsNothing() {
        assertThat(Options.atLeast(1.239)).isEqualTo("at least 1.24 m");
        assertThat(Options.atLeast(0.0779)).isEqualTo("at least 77 mm");
        assertThat(Options.atLeast(0.0004)).isEqualTo("a fraction of a millimetre at least");
    }

    @Test
    void theSpacingSaidToDoDoes() {
        List<HeatingCable> only = List.of(Schoolrooms.k(40));
        Plan refused = Planner.plan(
                Schoolrooms.washroomFloor()
                        .rules(Schoolrooms.washroomRules())
                        .catalogue(only)
                        .build(),
                Effort.QUICK);
        assertThat(refused.status()).isEqualTo(Status.IMPOSSIBLE);
        Finding help = refused.findings().stream()
                .filter(f -> f.subject().equals("least spacing"))
                .findFirst()
                .orElseThrow();
        assertThat(help.message()).contains("it can be laid exactly");
        var spacing = help.value().orElseThrow().asType(javax.measure.quantity.Length.class);
        CableRules closer = CableRules.of(
                TradeLength.of(spacing), TradeLength.studs(5), Amounts.millimetres(20), 2410, 1120, Units.MILLIMETRE);
        Plan done = Planner.plan(
                Schoolrooms.washroomFloor().rules(closer).catalogue(only).build(), Effort.QUICK);
        assertThat(done.status()).isEqualTo(Status.COMPLETE);
    }

    @Test
    void withoutHeatLossTheShortestThatWorksIsTaken() {
        SchoolPlans.Planned room = SchoolPlans.bare();
        double area = PlanChecks.reachAreas(room.brief(), room.plan().lattice()).get(0);
        double shortest = room.brief().catalogue.stream()
                .filter(c -> PlanChecks.isSpacingAllowed(room.brief(), area, c))
                .mapToDouble(c -> metres(c.length()))
                .min()
                .orElseThrow();
        assertThat(metres(room.plan().cables().get(0).cable().length())).isEqualTo(shortest);
    }

    @Test
    void whatIsNotGivenIsLeftOutAndSaid() {
        Plan plan = SchoolPlans.bare().plan();
        assertThat(plan.roomHeat()).isEmpty();
        assertThat(plan.cables().get(0).heat()).isEmpty();
        assertThat(plan.takeOff().orElseThrow().layout()).isEmpty();
        assertThat(plan.takeOff().orElseThrow().height()).isEmpty();
        assertThat(plan.findings().stream()
                        .filter(f -> f.message().startsWith("Without "))
                        .map(Finding::subject))
                .contains("temperatures", "tile", "mortar");
    }

    @Test
    void whereNoneCoversTheLongestThatWorksIsTakenWithAFinding() {
        Plan plan = Planner.plan(
                SmallRooms.heated(1_200, 1_000, 900)
                        .catalogue(SmallRooms.catalogue())
                        .build(),
                Effort.QUICK);
        assertThat(plan.status()).isEqualTo(Status.COMPLETE);
        assertThat(plan.roomHeat().orElseThrow().coversHeatLoss()).isFalse();
        assertThat(plan.findings())
                .anyMatch(f -> f.severity() == Severity.WARNING && f.subject().equals("room heat"));
        double taken = metres(plan.cables().get(0).cable().length());
        double capacity = metres(plan.fittingLengths().get(0).longest());
        // Each longer cable is beyond the bound or was tried; the next larger says which.
        assertThat(SmallRooms.catalogue().stream()
                        .mapToDouble(c -> metres(c.length()))
                        .filter(l -> l > taken && l <= capacity))
                .hasSizeLessThanOrEqualTo(1);
        assertThat(messages(plan))
                .anyMatch(m -> m.contains("the next larger: no exact route was found")
                        || m.contains("the next larger: it is too long"));
        assertThat(messages(plan)).anyMatch(m -> m.contains("the longest, since none covers the heat loss of 900 W"));
    }

    @Test
    void withoutFloorSensorTheSurfaceLimitRulesCablesOut() {
        Brief.Builder limited = Schoolrooms.washroomCovered(
                        Schoolrooms.fullClimate().withSurfaceLimit(Amounts.celsius(32.6)))
                .catalogue(List.of(Schoolrooms.k(26), Schoolrooms.k(31.5)));
        assertThat(SchoolPlans.washroom().plan().findings())
                .as("with a floor sensor it is a warning")
                .anyMatch(f ->
                        f.severity() == Severity.WARNING && f.message().contains("set the thermostat's floor limit"));
        Plan plan = Planner.plan(
                limited.rules(Schoolrooms.washroomRules().withoutFloorSensor()).build(), Effort.QUICK);
        assertThat(plan.status()).isEqualTo(Status.COMPLETE);
        assertThat(plan.cables().get(0).name()).isEqualTo("K26");
        assertThat(plan.roomHeat().orElseThrow().coversHeatLoss()).isFalse();
        assertThat(messages(plan))
                .anyMatch(m -> m.startsWith("K31.5: Not taken") && m.contains("no floor sensor limits it"));
        // Closer runs in the zones would pass the limit even with the shorter cable: the zones give way, not the job.
        assertThat(messages(plan)).anyMatch(m -> m.contains("Runs do not lie closer in the zones"));
    }

    @Test
    void aSurfaceLimitThatNoCableKeepsMakesItImpossibleAndSaysSo() {
        Plan plan = Planner.plan(
                SmallRooms.heated(1_200, 1_000, 50, 24)
                        .rules(SmallRooms.rules().withoutFloorSensor())
                        .catalogue(List.of(Schoolrooms.k(7.1)))
                        .build(),
                Effort.QUICK);
        assertThat(plan.status()).isEqualTo(Status.IMPOSSIBLE);
        assertThat(plan.findings().get(0).message()).contains("fit a floor sensor or take less power");
        assertThat(messages(plan)).anyMatch(m -> m.contains("1 was tried and none works"));
    }

    @Test
    void aCableForHalfTheVoltageIsRefused() {
        Plan plan = Planner.plan(
                SmallRooms.bare(1_200, 1_000)
                        .catalogue(List.of(Schoolrooms.k(5, 120, 3)))
                        .build(),
                Effort.QUICK);
        assertThat(plan.status()).isEqualTo(Status.IMPOSSIBLE);
        assertThat(plan.findings().get(0).message()).contains("overheat").contains("take a cable rated for the supply");
    }

    @Test
    void aRoomWithoutAFreeChannelSaysWhatToCheck() {
        Plan plan = Planner.plan(
                SmallRooms.bare(100, 100).catalogue(SmallRooms.catalogue()).build(), Effort.QUICK);
        assertThat(plan.status()).isEqualTo(Status.IMPOSSIBLE);
        assertThat(plan.findings().get(0).message())
                .contains("Nowhere can a cable lie")
                .contains("Check the clearances");
        assertThat(plan.fittingLengths()).isEmpty();
    }

    @Test
    void aColdLeadThatDoesNotReachSaysWhatWouldHelp() {
        Plan plan = Planner.plan(
                SmallRooms.bare(1_200, 1_000)
                        .catalogue(List.of(Schoolrooms.k(7.1, 230, 1.25)))
                        .build(),
                Effort.QUICK);
        assertThat(plan.status()).isEqualTo(Status.IMPOSSIBLE);
        assertThat(plan.findings().get(0).message())
                .contains("its cold lead leaves 0.05 m for the floor after the riser and 0.19 m are needed")
                .contains("move the start, or take a longer cold lead");
    }

    @Test
    void theSameBriefGivesTheSamePlan() {
        Brief brief =
                SmallRooms.bare(1_300, 1_000).catalogue(SmallRooms.catalogue()).build();
        Plan first = Planner.plan(brief, Effort.QUICK);
        Plan second = Planner.plan(brief, Effort.QUICK);
        assertThat(first.status()).isEqualTo(Status.COMPLETE);
        assertThat(second.cables().get(0).route().line().getCoordinates())
                .isEqualTo(first.cables().get(0).route().line().getCoordinates());
        assertThat(messages(second)).isEqualTo(messages(first));
    }

    @Test
    void aPlanCannotBeChanged() {
        Plan plan = SchoolPlans.bare().plan();
        assertThatThrownBy(() -> plan.findings().clear()).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> plan.cables().clear()).isInstanceOf(UnsupportedOperationException.class);
        LineString line = plan.cables().get(0).route().line();
        double before = line.getCoordinateN(0).x;
        line.getCoordinateSequence().setOrdinate(0, 0, 99);
        line.geometryChanged();
        assertThat(plan.cables().get(0).route().line().getCoordinateN(0).x).isEqualTo(before);
    }

    @Test
    void aBriefNamesWhatIsMissingOrContradictory() {
        assertThatThrownBy(() -> Brief.builder("room").build()).hasMessage("room: nothing was given; it is required");
        assertThatThrownBy(() -> SmallRooms.bare(1_200, 1_000).build()).hasMessageContaining("catalogue: no cable");
        assertThatThrownBy(() -> SmallRooms.bare(1_200, 1_000)
                        .catalogue(List.of(Schoolrooms.k(5), Schoolrooms.k(5)))
                        .build())
                .hasMessageContaining("'K5' was given twice");
        assertThatThrownBy(() -> SmallRooms.bare(1_200, 1_000)
                        .rules(CableRules.of(
                                TradeLength.studs(3),
                                TradeLength.studs(2),
                                Amounts.millimetres(20),
                                0,
                                500,
                                Units.MILLIMETRE))
                        .catalogue(SmallRooms.catalogue())
                        .build())
                .hasMessageContaining("greatest spacing: 2 studs was given");
        assertThatThrownBy(() -> SmallRooms.bare(1_200, 1_000)
                        .rules(CableRules.of(
                                TradeLength.studs(3),
                                TradeLength.studs(5),
                                Amounts.millimetres(20),
                                600,
                                500,
                                Units.MILLIMETRE))
                        .catalogue(SmallRooms.catalogue())
                        .build())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("start");
    }

    @Test
    void equalSpacingsInLengthsAndStudsAreARange() {
        Brief brief = SmallRooms.bare(1_200, 1_000)
                .rules(CableRules.of(
                        TradeLength.studs(3),
                        Schoolrooms.millimetres(102),
                        Amounts.millimetres(20),
                        0,
                        500,
                        Units.MILLIMETRE))
                .catalogue(SmallRooms.catalogue())
                .build();
        assertThat(Si.in("spacing", brief.rules.maxSpacing().with(brief.membrane.studPitch()), Units.MILLIMETRE))
                .isCloseTo(102, within(1e-9));
    }

    private static List<String> messages(Plan plan) {
        return plan.findings().stream()
                .map(f -> f.subject() + ": " + f.message())
                .toList();
    }
}
