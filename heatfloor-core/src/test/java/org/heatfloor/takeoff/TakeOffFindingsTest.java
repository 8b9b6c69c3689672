package org.heatfloor.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.heatfloor.area.Door;
import org.heatfloor.area.JointRule;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TakeOffFindingsTest {

    private static List<Finding> about(TakeOffBuilder brief, String subject) {
        return brief.build().findings().stream()
                .filter(f -> f.subject().startsWith(subject))
                .toList();
    }

    private static TakeOffBuilder withTile(TileSpec tile) {
        return Schoolhouse.washroomWithoutStock().tile(tile);
    }

    @ParameterizedTest
    @CsvSource({"24.4, FLUSH, NOTE", "16, BEVEL, WARNING", "5, RAMP, WARNING", "-30, TOO_HIGH, WARNING"})
    void doorsAreJudged(double beyond, StepVerdict verdict, Severity severity) {
        TakeOff takeOff = Schoolhouse.washroomWithoutStock()
                .doors(List.of(Door.of("hall", Schoolhouse.line(0, 0, 900, 0), Units.MILLIMETRE)
                        .withAdjacentFloorHeight(Amounts.millimetres(beyond))))
                .build();
        assertThat(takeOff.doorSteps().get(0).verdict()).isEqualTo(verdict);
        assertThat(takeOff.findings())
                .filteredOn(f -> f.subject().equals("door 'hall'"))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.severity()).isEqualTo(severity);
                    assertThat(f.source().toString()).contains("ADA Standards");
                    assertThat(f.limit()).isPresent();
                });
    }

    @Test
    void aStepNamesTheTrowelTileOrMembraneThatWouldMakeItFlush() {
        DoorStep step = Schoolhouse.washroomWithoutStock()
                .doors(List.of(Door.of("hall", Schoolhouse.line(0, 0, 900, 0), Units.MILLIMETRE)
                        .withAdjacentFloorHeight(Amounts.millimetres(17.4))))
                .build()
                .doorSteps()
                .get(0);
        assertThat(WorkedChecks.mm(step.step())).isCloseTo(6.98, within(0.005));
        assertThat(step.remedies())
                .extracting(Remedy::change)
                .anyMatch(c -> c.contains("over the membrane with a square 6 mm trowel"))
                .contains("use a tile 8.3 mm thick or less instead of 9 mm")
                .contains("use a membrane 8.3 mm thick or less instead of 9 mm");
    }

    /** The base falls 10 mm to the door's wall, so compound lies 10 mm thick there, and 3 mm more with its cover. */
    @Test
    void aLevelledFloorComesHigherAtTheDoor() {
        List<SpotSurvey.Spot> spots = new ArrayList<>();
        for (double x : new double[] {0, 2.41}) {
            spots.add(new SpotSurvey.Spot(x, 0, Amounts.metres(1.24)));
            spots.add(new SpotSurvey.Spot(x, 1.96, Amounts.metres(1.25)));
        }
        TakeOffBuilder brief = Schoolhouse.washroomWithoutStock()
                .doors(List.of(Door.of("hall", Schoolhouse.line(1000, 0, 1800, 0), Units.MILLIMETRE)
                        .withAdjacentFloorHeight(Amounts.millimetres(24.381))));
        DoorStep bare = brief.build().doorSteps().get(0);
        assertThat(WorkedChecks.mm(bare.step())).isCloseTo(0, within(5e-4));
        assertThat(WorkedChecks.mm(bare.leveller())).isZero();
        brief.survey(SpotSurvey.of(spots), LevellerSpec.USUAL.withCover(Amounts.millimetres(3)));
        DoorStep levelled = brief.build().doorSteps().get(0);
        assertThat(WorkedChecks.mm(levelled.leveller())).isCloseTo(13, within(1e-3));
        assertThat(WorkedChecks.mm(levelled.step())).isCloseTo(13, within(2e-3));
        assertThat(levelled.verdict()).isEqualTo(StepVerdict.RAMP);
        assertThat(about(brief, "door 'hall'")).singleElement().satisfies(f -> assertThat(f.message())
                .contains("13 mm of levelling compound counted"));
    }

    @Test
    void theEnglishThresholdHasNoRamp() {
        StepRule rule = StepRule.APPROVED_DOCUMENT_M;
        assertThat(rule.verdict(Amounts.millimetres(5))).isEqualTo(StepVerdict.FLUSH);
        assertThat(rule.verdict(Amounts.millimetres(15))).isEqualTo(StepVerdict.BEVEL);
        assertThat(rule.verdict(Amounts.millimetres(15.1))).isEqualTo(StepVerdict.TOO_HIGH);
    }

    @Test
    void aBuildUpThatDisagreesIsFound() {
        assertThat(about(
                        Schoolhouse.washroomWithoutStock()
                                .stated(HeightPart.LOWER_BED, "mortar bed", Amounts.millimetres(4)),
                        "layer 'mortar bed'"))
                .singleElement()
                .satisfies(f -> assertThat(f.message()).contains("4 mm").contains("2.7 mm"));
        assertThat(about(
                        Schoolhouse.washroomWithoutStock()
                                .stated(HeightPart.LOWER_BED, "mortar bed", Amounts.millimetres(3.7)),
                        "layer"))
                .isEmpty();
    }

    @Test
    void thinAndThickBedsAreFound() {
        Bedding thin = Bedding.of(Schoolhouse.square(4), Schoolhouse.square(8), Amounts.kilograms(20));
        assertThat(about(Schoolhouse.washroomWithoutStock().bedding(thin), "mortar under membrane"))
                .anyMatch(f -> f.severity() == Severity.WARNING
                        && f.source().toString().contains("A108.5"));
        Bedding thick = Bedding.of(Schoolhouse.square(6), Schoolhouse.square(30), Amounts.kilograms(20));
        assertThat(about(Schoolhouse.washroomWithoutStock().bedding(thick), "mortar over membrane"))
                .anyMatch(f -> f.severity() == Severity.WARNING
                        && f.source().toString().contains("A118"));
    }

    @Test
    void aCableTallerThanTheStudsIsFound() {
        assertThat(about(
                        Schoolhouse.washroomWithoutStock().cable(Amounts.metres(10), Amounts.millimetres(10)), "cable"))
                .hasSize(1);
        assertThat(about(Schoolhouse.washroomWithoutStock().cable(Amounts.metres(10), Amounts.millimetres(5)), "cable"))
                .isEmpty();
    }

    @Test
    void longTilesAreOffsetByAThird() {
        assertThat(about(withTile(WorkedChecks.tile(600, 300, 9, 4, TilePattern.HALF_OFFSET, 10)), "tile pattern"))
                .hasSize(1);
        assertThat(about(withTile(WorkedChecks.tile(300, 150, 9, 4, TilePattern.HALF_OFFSET, 10)), "tile pattern"))
                .isEmpty();
        assertThat(about(withTile(WorkedChecks.tile(600, 300, 9, 4, TilePattern.THIRD_OFFSET, 10)), "tile pattern"))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "ANSI_A108, STRAIGHT, 1.2, 1",
        "ANSI_A108, STRAIGHT, 1.6, 0",
        "ANSI_A108, THIRD_OFFSET, 2.5, 1",
        "ANSI_A108, THIRD_OFFSET, 3, 0",
        "NHBC_2025, STRAIGHT, 2, 1",
        "NHBC_2025, STRAIGHT, 3, 0",
        "NHBC_2025, STRAIGHT, 10, 1"
    })
    void jointsHaveLimits(TileStandard standard, TilePattern pattern, double joint, int found) {
        assertThat(about(
                        withTile(WorkedChecks.tile(600, 300, 9, joint, pattern, 10))
                                .standard(standard),
                        "grout joint"))
                .hasSize(found);
    }

    @ParameterizedTest
    @CsvSource({"3, 0, 0.794", "7, 0, 1.588", "3, 0.5, 1.294"})
    void lippageAllowsForWarpage(double joint, double warpage, double limit) {
        TileSpec tile = WorkedChecks.tile(600, 300, 9, joint, TilePattern.STRAIGHT, 10)
                .withAccuracy(new TileAccuracy(
                        TileAccuracy.Edge.RECTIFIED, Amounts.millimetres(0), Amounts.millimetres(warpage)));
        assertThat(WorkedChecks.mm(TileStandard.ANSI_A108.lippage(tile).value()))
                .isCloseTo(limit, within(5e-4));
        assertThat(about(withTile(tile).lippage(Amounts.millimetres(limit + 0.1)), "lippage"))
                .singleElement()
                .satisfies(f -> assertThat(f.isError()).isTrue());
        assertThat(about(withTile(tile).lippage(Amounts.millimetres(limit - 0.1)), "lippage"))
                .singleElement()
                .satisfies(f -> assertThat(f.isError()).isFalse());
    }

    @ParameterizedTest
    @CsvSource({"600, 3.0, NOTE", "600, 3.4, WARNING", "300, 3.4, NOTE", "300, 6.6, WARNING"})
    void flatnessDependsOnTheTile(double side, double hollow, Severity severity) {
        List<SpotSurvey.Spot> spots = new ArrayList<>();
        for (double x : new double[] {0.1, 1.2, 2.3}) {
            for (double y : new double[] {0.1, 0.9, 1.8}) {
                boolean middle = x == 1.2 && y == 0.9;
                spots.add(new SpotSurvey.Spot(x, y, Amounts.millimetres(middle ? -hollow : 0)));
            }
        }
        TakeOffBuilder brief = withTile(WorkedChecks.tile(side, 300, 9, 4, TilePattern.STRAIGHT, 10))
                .survey(SpotSurvey.of(spots), LevellerSpec.USUAL);
        assertThat(about(brief, "flatness")).first().satisfies(f -> assertThat(f.severity())
                .isEqualTo(severity));
        assertThat(about(brief, "flatness")).last().satisfies(f -> assertThat(f.message())
                .startsWith("not judged under a straightedge of "));
        assertThat(brief.build().leveller()).isPresent();
    }

    @Test
    void largeBaysWantAMovementJoint() {
        TakeOffBuilder hall = TakeOff.of(
                        WorkedChecks.room(9, 3, Units.METRE),
                        Schoolhouse.washroomMembrane(),
                        org.heatfloor.grid.StudLattice.of(
                                Schoolhouse.washroomMembrane(),
                                Schoolhouse.point(17, 17),
                                Units.MILLIMETRE,
                                Amounts.degrees(0)))
                .tile(WorkedChecks.tile(600, 300, 9, 4, TilePattern.STRAIGHT, 10));
        assertThat(about(hall, "movement joints")).hasSize(2);
        assertThat(about(hall.jointRule(JointRule.interiorNorthAmerica()), "movement joints"))
                .singleElement()
                .satisfies(f -> assertThat(f.message()).contains("1 joint makes 2 bays of 4.49 m"));
        assertThat(about(Schoolhouse.washroomWithoutStock(), "movement joints")).isEmpty();
    }

    @Test
    void aBayIsHeldToTheLimitItBreaks() {
        JointRule square = new JointRule(
                "test",
                Amounts.metres(8),
                Optional.of(Amounts.squareMetres(4)),
                OptionalDouble.of(1),
                Source.commonPractice("a rule for a test"));
        assertThat(about(Schoolhouse.washroomWithoutStock().jointRule(square), "movement joints"))
                .hasSize(2)
                .allSatisfy(f -> assertThat(f.value().orElseThrow().toString()).doesNotEndWith(" m"))
                .allSatisfy(f -> assertThat(siValue(f.value().orElseThrow()))
                        .isGreaterThan(siValue(f.limit().orElseThrow())));
    }

    private static double siValue(javax.measure.Quantity<?> quantity) {
        return quantity.toSystemUnit().getValue().doubleValue();
    }

    @Test
    void bagsThatLeaveNothingInHandAreFound() {
        Bedding tight = Bedding.of(Schoolhouse.square(6), Schoolhouse.square(8), Amounts.kilograms(15.5));
        assertThat(about(Schoolhouse.washroomWithoutStock().bedding(tight), "mortar under membrane"))
                .anyMatch(f -> f.message().contains("in hand"));
    }
}
