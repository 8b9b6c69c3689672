package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

/** The hall, an invented floor of 60 m² that no cable of its catalogue can heat alone, through the whole program. */
class HallTest {

    @Test
    void sixCablesShareTheHall() {
        Schoolhouse.Run run = Schoolhouse.of("hall");
        assertThat(run.faults()).isEmpty();
        assertThat(run.status()).isZero();

        JsonNode plan = run.json();
        assertThat(plan.get("cables")).hasSize(6);
        double length = 0;
        for (JsonNode cable : plan.get("cables")) {
            double own = cable.get("length").get("value").doubleValue();
            length += own;
            assertThat(cable.get("route").get("laidLength").get("value").doubleValue())
                    .isBetween(own - 0.034, own);
            assertThat(cable.get("route").get("evenSpacing").get("value").doubleValue())
                    .isBetween(0.102, 0.170 * 1.02);
            assertThat(cable.get("endReserve").get("total").get("value").doubleValue())
                    .isGreaterThanOrEqualTo(0.01 * own - 1e-9);
        }
        assertThat(plan.get("roomHeat").get("coversHeatLoss").booleanValue()).isTrue();
        // Five of the longest would not do.
        assertThat(length).isGreaterThan(5 * 63.0);
    }
}
