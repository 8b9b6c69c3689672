package org.heatfloor.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.heatfloor.plan.PlanChecks.metres;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import org.heatfloor.plan.Plan.Status;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.Effort;

class PlanProperties {

    @Provide
    Arbitrary<Integer> sides() {
        return Arbitraries.integers().between(900, 1_500);
    }

    @Property(tries = 4, shrinking = ShrinkingMode.OFF)
    void inchesAndMillimetresGiveTheSamePlan(@ForAll("sides") int width, @ForAll("sides") int depth) {
        Plan inMillimetres = Planner.plan(
                SmallRooms.bare(width, depth, Units.MILLIMETRE)
                        .catalogue(SmallRooms.catalogue())
                        .build(),
                Effort.QUICK);
        Plan inInches = Planner.plan(
                SmallRooms.bare(width, depth, Units.INCH)
                        .catalogue(SmallRooms.catalogue())
                        .build(),
                Effort.QUICK);
        assertThat(inInches.status()).isEqualTo(inMillimetres.status());
        assertThat(inInches.cables()).hasSameSizeAs(inMillimetres.cables());
        for (int i = 0; i < inInches.cables().size(); i++) {
            PlannedCable one = inMillimetres.cables().get(i);
            PlannedCable other = inInches.cables().get(i);
            assertThat(other.name()).isEqualTo(one.name());
            assertThat(metres(other.route().evenSpacing()))
                    .isCloseTo(metres(one.route().evenSpacing()), within(1e-9));
            assertThat(metres(other.route().capacity()))
                    .isCloseTo(metres(one.route().capacity()), within(1e-9));
            assertThat(metres(other.route().laidLength()))
                    .isCloseTo(metres(one.route().laidLength()), within(1e-9));
            assertThat(other.route().turns()).isEqualTo(one.route().turns());
        }
    }

    @Property(tries = 4, shrinking = ShrinkingMode.OFF)
    void moreHeatLossNeverTakesAShorterCable(
            @ForAll("sides") int width,
            @ForAll @IntRange(min = 20, max = 80) int loss,
            @ForAll @IntRange(min = 5, max = 80) int more) {
        assertThat(total(width, loss + more)).isGreaterThanOrEqualTo(total(width, loss));
    }

    private static double total(int width, int loss) {
        Plan plan = Planner.plan(
                SmallRooms.heated(width, 950, loss)
                        .catalogue(SmallRooms.catalogue())
                        .build(),
                Effort.QUICK);
        assertThat(plan.status()).isEqualTo(Status.COMPLETE);
        return plan.cables().stream()
                .mapToDouble(c -> metres(c.cable().length()))
                .sum();
    }

    @Property(tries = 8, shrinking = ShrinkingMode.OFF)
    void everyCompletePlanPassesACheckBuiltAfresh(@ForAll("sides") int width, @ForAll("sides") int depth) {
        Brief brief =
                SmallRooms.bare(width, depth).catalogue(SmallRooms.catalogue()).build();
        Plan plan = Planner.plan(brief, Effort.QUICK);
        assertThat(plan.status()).isEqualTo(Status.COMPLETE);
        assertThat(PlanChecks.checkedAfresh(brief, plan).passes()).isTrue();
    }
}
