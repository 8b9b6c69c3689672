package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Discomfort from a warm or cool floor for people in light indoor shoes. */
public final class FloorComfort {

    private static final Source SOURCE = Source.document("ISO 7730:2005", "6.4, percentage dissatisfied by the floor");

    private FloorComfort() {}

    /**
     * Percentage dissatisfied, {@code PD = 100 − 94·exp(−1.387 + 0.118·t − 0.0025·t²)} with {@code t} in °C (ISO 7730:2005,
     * 6.4). Least near 23.6 °C.
     *
     * @param floor floor temperature, 5 °C to 40 °C
     * @return the share dissatisfied
     * @throws IllegalArgumentException if the temperature lies outside
     */
    public static Quantity<Dimensionless> dissatisfied(Quantity<Temperature> floor) {
        double t = Si.within("floor", floor, Units.CELSIUS, 5, 40);
        return Amounts.of(100 - 94 * Math.exp(-1.387 + 0.118 * t - 0.0025 * t * t), Units.PERCENT);
    }

    /**
     * Judges a floor temperature against category B, under 10 % dissatisfied. The standard's rounded table allows 19 °C to
     * 29 °C; its formula gives 12.1 % at 29 °C. This follows the formula.
     *
     * @param floor floor temperature, 5 °C to 40 °C
     * @return a note
     */
    public static Finding judge(Quantity<Temperature> floor) {
        Quantity<Dimensionless> share = dissatisfied(floor);
        double percent = Si.in("share", share, Units.PERCENT);
        return Finding.of(
                Severity.NOTE,
                "floor comfort",
                HeatFindings.text(
                        percent <= 10
                                ? "%.1f %% of people in indoor shoes would find the floor uncomfortable."
                                : "%.1f %% of people in indoor shoes would find the floor uncomfortable; under 10 %% is"
                                        + " the usual aim.",
                        percent),
                share,
                Amounts.of(10, Units.PERCENT),
                SOURCE);
    }
}
