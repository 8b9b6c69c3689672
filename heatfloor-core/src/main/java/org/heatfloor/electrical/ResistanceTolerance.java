package org.heatfloor.electrical;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * How far a cable's measured resistance at 20 °C may lie from the declared one.
 *
 * @param below how far below, as a share of the declared resistance, 0 to less than 100 %
 * @param above how far above, as a share of the declared resistance, 0 to 100 %
 * @param source what the tolerance rests on
 */
public record ResistanceTolerance(Quantity<Dimensionless> below, Quantity<Dimensionless> above, Source source) {

    /** −5 % and +10 %, recalled from IEC 60800 and not verified; the cable's instructions go before it. */
    public static final ResistanceTolerance USUAL = new ResistanceTolerance(
            Amounts.of(5, Units.PERCENT),
            Amounts.of(10, Units.PERCENT),
            Source.fromMemory(
                    "IEC 60800 (edition and clause not given), conductor resistance −5 % / +10 % of the declared value at 20 °C"));

    /**
     * Checks the shares.
     *
     * @param below how far below, as a share of the declared resistance, 0 to less than 100 %
     * @param above how far above, as a share of the declared resistance, 0 to 100 %
     * @param source what the tolerance rests on
     * @throws IllegalArgumentException if below is not 0 to 99 %, or above not 0 to 100 %
     */
    public ResistanceTolerance {
        Objects.requireNonNull(source, "source");
        Si.within("resistance tolerance below", below, Units.PERCENT, 0, 99);
        Si.within("resistance tolerance above", above, Units.PERCENT, 0, 100);
    }

    double lowFactor() {
        return 1 - Si.in("below", below, Units.ONE);
    }

    double highFactor() {
        return 1 + Si.in("above", above, Units.ONE);
    }
}
