package org.heatfloor.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.heatfloor.electrical.Circuit;
import org.heatfloor.electrical.ConductorSize;
import org.heatfloor.electrical.ControlDevice;
import org.heatfloor.electrical.ElectricalCode;
import org.heatfloor.electrical.Embedding;
import org.heatfloor.electrical.InstallationDetails;
import org.heatfloor.electrical.Supply;
import org.heatfloor.finding.Finding;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.Effort;
import org.junit.jupiter.api.Test;

/** What is known of the installation is judged in the choice of the cable and in the plan. */
class PlanInstallationTest {

    private static ControlDevice thermostat(double amperes) {
        return new ControlDevice("thermostat", Amounts.amperes(amperes), Amounts.volts(250), true);
    }

    private static Plan hot(InstallationDetails details) {
        // 60 W/m on 120 V, more than NEC 2011 allows in concrete.
        return Planner.plan(
                SmallRooms.bare(1_200, 1_000)
                        .catalogue(List.of(Schoolrooms.cable("hot", 2, 7.1, 60, 120, 5, 3)))
                        .supply(Supply.of(
                                Amounts.volts(120),
                                ElectricalCode.of("NEC 2011"),
                                Amounts.metres(5),
                                ConductorSize.of("12 AWG")))
                        .installation(details)
                        .build(),
                Effort.QUICK);
    }

    @Test
    void aCableIsJudgedForTheFloorItLiesIn() {
        Plan concrete = hot(InstallationDetails.NONE);
        assertThat(concrete.status()).isEqualTo(Plan.Status.IMPOSSIBLE);
        assertThat(concrete.findings()).filteredOn(Finding::isError).anySatisfy(f -> assertThat(f.message())
                .contains("limit for cable in concrete"));
        Plan covering = hot(InstallationDetails.builder()
                .embedding(Embedding.FLOOR_COVERING)
                .build());
        assertThat(covering.status()).isEqualTo(Plan.Status.COMPLETE);
    }

    @Test
    void aCableTooLargeForTheThermostatIsNotTaken() {
        Brief.Builder room = SmallRooms.bare(1_200, 1_000).catalogue(SmallRooms.catalogue());
        Plan free = Planner.plan(room.build(), Effort.QUICK);
        assertThat(free.status()).isEqualTo(Plan.Status.COMPLETE);
        Plan limited = Planner.plan(
                room.installation(InstallationDetails.builder()
                                .control(thermostat(0.1))
                                .build())
                        .build(),
                Effort.QUICK);
        assertThat(limited.status()).isEqualTo(Plan.Status.IMPOSSIBLE);
        assertThat(limited.options())
                .filteredOn(o -> o.cable().equals(free.cables().get(0).name()))
                .singleElement()
                .satisfies(o -> {
                    assertThat(o.verdict()).isEqualTo(CableOption.Verdict.UNUSABLE);
                    assertThat(o.reason()).contains("thermostat is overloaded");
                });
    }

    @Test
    void cablesOfAFloorShareThermostatsWithinTheirRating() {
        Brief.Builder room = SmallRooms.bare(3000, 2400)
                .catalogue(List.of(Schoolrooms.k(11.2), Schoolrooms.k(12.5), Schoolrooms.k(14)));
        Plan one = Planner.plan(room.build(), Effort.QUICK);
        assertThat(one.status()).isEqualTo(Plan.Status.COMPLETE);
        assertThat(one.circuits()).hasSize(1);
        Circuit circuit = one.circuits().get(0);
        assertThat(circuit.cables()).hasSizeGreaterThan(2);
        PlannedCable densest = one.cables().stream()
                .max(java.util.Comparator.comparingDouble(
                        c -> -Si.in("s", c.route().evenSpacing(), Units.METRE)))
                .orElseThrow();
        assertThat(one.findings()).anySatisfy(f -> assertThat(f.message())
                .contains("share one thermostat", "connect that of " + densest.name() + ","));
        double total = Si.in("current", circuit.current(), Units.AMPERE);
        Plan two = Planner.plan(
                room.installation(InstallationDetails.builder()
                                .control(thermostat(0.7 * total))
                                .build())
                        .build(),
                Effort.QUICK);
        assertThat(two.status()).isEqualTo(Plan.Status.COMPLETE);
        assertThat(two.circuits()).hasSize(2).allSatisfy(c -> assertThat(Si.in("current", c.current(), Units.AMPERE))
                .isLessThanOrEqualTo(0.7 * total + 1e-9));
        assertThat(two.findings()).anySatisfy(f -> assertThat(f.message()).contains("thermostat switches"));
    }
}
