package org.heatfloor.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.heatfloor.plan.PlanChecks.metres;
import static org.heatfloor.plan.PlanChecks.watts;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.TradeLength;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.Effort;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** A floor too large for any cable of the catalogue; its figures are those of the chapter on several cables. */
class SharedFloorTest {

    private static final Brief BRIEF = SmallRooms.bare(3000, 2400)
            .catalogue(catalogue(8, 9, 10, 11.2, 12.5, 14))
            .build();
    private static final Plan PLAN = Planner.plan(BRIEF, Effort.QUICK);

    private static List<HeatingCable> catalogue(double... lengths) {
        return DoubleStream.of(lengths).mapToObj(Schoolrooms::k).toList();
    }

    private static double total(List<PlannedCable> cables) {
        return cables.stream().mapToDouble(c -> metres(c.cable().length())).sum();
    }

    @Test
    void theFewestCablesThenTheShortestShareTheFloor() {
        double area = PlanChecks.reachAreas(BRIEF, PLAN.lattice()).get(0);

        assertThat(PLAN.status()).isEqualTo(Plan.Status.COMPLETE);
        assertThat(PlanChecks.checkedAfresh(BRIEF, PLAN).passes()).isTrue();
        int count = PLAN.cables().size();
        assertThat(area / ((count - 1) * 14)).isGreaterThan(0.170);
        assertThat(area / (count * 14)).isLessThan(0.170);
        double sum = total(PLAN.cables());
        assertThat(area / sum).isLessThanOrEqualTo(0.170);
        // No set of as many cables of the catalogue has a smaller sum that keeps the greatest spacing.
        assertThat(sums(count).filter(s -> s >= area / 0.170).min().orElseThrow())
                .isEqualTo(sum, within(1e-9));
        for (PlannedCable cable : PLAN.cables()) {
            assertThat(metres(cable.route().evenSpacing())).isBetween(0.102 * 0.98, 0.170 * 1.02);
            assertThat(metres(cable.route().laidLength()))
                    .isEqualTo(metres(cable.cable().length()), within(1e-6));
        }
        double shared = PLAN.cables().stream()
                .mapToDouble(c -> Si.in("reach", c.route().reachArea(), Units.SQUARE_METRE))
                .sum();
        assertThat(shared).isEqualTo(area, within(1e-6));
    }

    /** Sums of a count of cables, of any lengths. */
    private static DoubleStream sums(int count) {
        double[] lengths = {8, 9, 10, 11.2, 12.5, 14};
        DoubleStream sums = DoubleStream.of(0);
        for (int i = 0; i < count; i++) {
            sums = sums.flatMap(s -> DoubleStream.of(lengths).map(l -> s + l));
        }
        return sums;
    }

    @Test
    void theTableHoldsEveryLengthWithWhatBecameOfIt() {
        SchoolPlans.Planned washroom = SchoolPlans.washroom();
        double area = PlanChecks.reachAreas(washroom.brief(), washroom.plan().lattice())
                .get(0);
        List<CableOption> options = washroom.plan().options();

        assertThat(options).hasSize(washroom.brief().catalogue.size());
        double bound = metres(washroom.plan().fittingLengths().get(0).longest());
        for (CableOption option : options) {
            double length = metres(option.length());
            assertThat(metres(option.evenSpacing())).isEqualTo(area / length, within(1e-6));
            assertThat(metres(option.margin())).isEqualTo(bound - length, within(1e-6));
            assertThat(option.keepsTolerance()).isEqualTo(1.01 * length <= bound);
            assertThat(Si.in("heat", option.powerDensity(), Units.WATT_PER_SQUARE_METRE))
                    .isEqualTo(11 * length / area, within(1e-6));
            assertThat(option.verdict() == CableOption.Verdict.TOO_LONG).isEqualTo(length > bound);
            assertThat(option.verdict() == CableOption.Verdict.TOO_SHORT).isEqualTo(area / length > 0.170 * 1.02);
        }
        assertThat(options.stream().filter(o -> o.verdict() == CableOption.Verdict.CHOSEN))
                .singleElement()
                .satisfies(o -> assertThat(o.cable()).isEqualTo("K31.5"));
        assertThat(options.stream().filter(o -> o.verdict() == CableOption.Verdict.LAID))
                .singleElement()
                .satisfies(o -> assertThat(o.cable()).isEqualTo("K28"));
    }

    @Test
    void anotherToleranceAsksForAnotherReserve() {
        for (double percent : new double[] {0, 1, 3}) {
            Plan plan = Planner.plan(
                    SmallRooms.bare(1200, 1000)
                            .catalogue(catalogue(7.1))
                            .lengthTolerance(Amounts.of(percent, Units.PERCENT))
                            .build(),
                    Effort.QUICK);
            assertThat(metres(plan.cables().get(0).reserve().wanted())).isEqualTo(percent / 100 * 7.1, within(1e-9));
            assertThat(plan.cables().get(0).reserve().isKept()).isTrue();
        }
    }

    /** A joint cuts off the larger part of the floor, which the only cold lead cannot reach past the post. */
    private static Brief.Builder cut(double lossWatts) {
        var joint = new GeometryFactory()
                .createLineString(new Coordinate[] {new Coordinate(1100, 0), new Coordinate(1100, 1000)});
        return SmallRooms.heated(3000, 1000, lossWatts)
                .keepOut(KeepOut.of(
                        "joint",
                        KeepOutKind.MOVEMENT_JOINT,
                        joint,
                        Units.MILLIMETRE,
                        TradeLength.of(Amounts.millimetres(40))))
                .catalogue(List.of(new HeatingCable(
                        "short lead",
                        2,
                        Amounts.metres(6),
                        Amounts.watts(66),
                        Amounts.volts(230),
                        Amounts.millimetres(5),
                        Amounts.metres(1.8))));
    }

    @Test
    void aPartThatCannotBeHeatedIsSaidAndTheOthersArePlanned() {
        Plan plan = Planner.plan(cut(30).build(), Effort.QUICK);

        assertThat(plan.status()).isEqualTo(Plan.Status.COMPLETE);
        assertThat(plan.cables()).hasSize(1);
        assertThat(plan.findings())
                .filteredOn(f -> f.severity() == Severity.WARNING)
                .extracting(Finding::message)
                .anyMatch(m -> m.contains("stays unheated"));
        assertThat(watts(plan.roomHeat().orElseThrow().heatOutput())).isGreaterThan(30);
    }

    @Test
    void itIsImpossibleWhereTheWantedHeatIsNotReachedThatWay() {
        Plan plan = Planner.plan(cut(500).build(), Effort.QUICK);

        assertThat(plan.status()).isEqualTo(Plan.Status.IMPOSSIBLE);
        assertThat(plan.findings()).anyMatch(f -> f.isError() && f.message().contains("cold lead"));
    }

    @Test
    void aCatalogueOfOneEntryForcesThatCable() {
        Plan plan = Planner.plan(
                SmallRooms.bare(3000, 2400).catalogue(catalogue(14)).build(), Effort.QUICK);

        assertThat(plan.status()).isEqualTo(Plan.Status.IMPOSSIBLE);
        assertThat(plan.findings().get(0).message()).contains("Too short");
        assertThat(plan.findings()).anyMatch(f -> f.message().contains("or lay more than one cable"));
    }

    @Test
    void theChapterPrintsWhatComesOut() throws IOException {
        String text =
                Files.readString(Path.of("..", "docs", "several-cables.md")).replaceAll("\\s+", " ");
        double area = PlanChecks.reachAreas(BRIEF, PLAN.lattice()).get(0);
        int count = PLAN.cables().size();

        assertThat(text).contains("A = " + number(area, 3) + " m²");
        assertThat(text).contains(number(area, 3) + "/0.170 = " + number(area / 0.170, 2) + " m");
        assertThat(text)
                .contains((count - 1) + " cables of 14 m would lie " + number(1000 * area / ((count - 1) * 14), 0)
                        + " mm apart");
        assertThat(text).contains("together " + number(total(PLAN.cables()), 1) + " m");
        for (PlannedCable cable : PLAN.cables()) {
            assertThat(text)
                    .contains("| " + cable.name() + " | "
                            + number(metres(cable.cable().length()), 1) + " | "
                            + number(1000 * metres(cable.route().evenSpacing()), 1) + " | "
                            + number(Si.in("reach", cable.route().reachArea(), Units.SQUARE_METRE), 3) + " |");
        }
    }

    private static String number(double value, int digits) {
        return String.format(Locale.ROOT, "%." + digits + "f", value);
    }
}
