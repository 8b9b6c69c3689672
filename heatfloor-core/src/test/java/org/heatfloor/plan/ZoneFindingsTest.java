package org.heatfloor.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.ZoneDensity;
import org.junit.jupiter.api.Test;

/** A zone that gets clearly less than was wanted is a warning, one that comes near is told. */
class ZoneFindingsTest {

    private static Finding judged(double asked, double wanted, double got) {
        return ZoneFindings.judged(new ZoneDensity(
                "at the basin",
                Amounts.of(asked, Units.ONE),
                Amounts.of(wanted, Units.ONE),
                Amounts.of(got, Units.ONE),
                Amounts.metres(5.5),
                Amounts.squareMetres(0.5)));
    }

    /** √1.44 = 1.2 is half of 1.44 in logarithms. */
    @Test
    void bothSidesOfTheShortfall() {
        assertThat(judged(2, 1.44, 1.19).severity()).isEqualTo(Severity.WARNING);
        assertThat(judged(2, 1.44, 1.21).severity()).isEqualTo(Severity.NOTE);
        assertThat(judged(2, 1.44, 0.9).severity()).isEqualTo(Severity.WARNING);
    }

    @Test
    void aZoneWantedCoolerIsJudgedTheOtherWayRound() {
        assertThat(judged(0.5, 1 / 1.44, 1 / 1.19).severity()).isEqualTo(Severity.WARNING);
        assertThat(judged(0.5, 1 / 1.44, 1 / 1.21).severity()).isEqualTo(Severity.NOTE);
    }

    @Test
    void nothingToSpeakOfWantedIsNoShortfall() {
        assertThat(judged(3, 1.05, 0.95).severity()).isEqualTo(Severity.NOTE);
    }

    @Test
    void theFindingTellsWhatWasAskedWantedAndGot() {
        Finding finding = judged(3, 1.67, 1.5);

        assertThat(finding.message())
                .contains("5.5 m of cable", "0.5 m²", "1.50 times", "asks for 3.00 times", "allow 1.67 times");
        assertThat(finding.value()).contains(Amounts.of(1.5, Units.ONE));
        assertThat(finding.limit()).contains(Amounts.of(1.67, Units.ONE));
        assertThat(judged(1.5, 1.5, 1.5).message()).contains("As much as its weight asks for, 1.50 times");
    }
}
