package org.heatfloor.routing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;

/**
 * A mirrored or turned room is laid equally well. The search draws lots along the lattice, so that a single room may come out
 * with other rows; no room may come out much worse, and over all of them nothing may be lost.
 */
class RouteSymmetryTest {

    private static final double SHARE = 0.75;
    private static final double PRICE_OF_COLD = 300;

    private static List<TestSite> sites() {
        List<TestSite> sites = new ArrayList<>();
        for (int n = 0; n < 16; n++) {
            sites.add(new TestSite(
                    1500 + 67 * n, 2400 - 53 * ((7 * n) % 16), 26 + (5 * n) % 14, 3 + n % 2, n % 4, 61 * n));
        }
        return sites;
    }

    /** Turns, with the cold share priced as the search prices it. */
    private static double price(TestSite site, boolean returns) {
        CableRoute route = ((RouteOutcome.Laid) site.route(SHARE * site.capacity(), returns)).route();
        assertThat(site.check(List.of(route)).passes()).isTrue();
        return route.turns() + PRICE_OF_COLD * Si.in("cold share", route.coldShare(), Units.ONE);
    }

    private static void equallyGood(UnaryOperator<TestSite> moved) {
        double plain = 0;
        double other = 0;
        for (TestSite site : sites()) {
            for (boolean returns : new boolean[] {false, true}) {
                double before = price(site, returns);
                double after = price(moved.apply(site), returns);
                assertThat(after).as("%s", site).isBetween(before / 1.35 - 2, 1.35 * before + 2);
                plain += before;
                other += after;
            }
        }
        assertThat(other).isBetween(plain / 1.05, 1.05 * plain);
    }

    @Test
    void aMirroredRoomIsLaidEquallyWell() {
        equallyGood(TestSite::mirrored);
    }

    @Test
    void aTurnedRoomIsLaidEquallyWell() {
        equallyGood(TestSite::turned);
    }
}
