package org.heatfloor.electrical;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import org.heatfloor.finding.Source;

/**
 * The current-carrying capacity (American: ampacity) of a conductor in place.
 *
 * @param tabulated the table's value for the method of installation
 * @param ambientFactor correction for the ambient temperature
 * @param groupingFactor adjustment for circuits laid together
 * @param corrected tabulated value times both factors
 * @param terminalLimit the value of the terminals' temperature column where the code limits by terminals, otherwise the
 *     corrected value
 * @param usable the lesser of corrected value and terminal limit
 * @param greatestDevice the greatest standard rating of a protective device that may protect the conductor; empty if even
 *     the least standard rating is too great
 * @param sources tables and clauses used
 */
public record Ampacity(
        Quantity<ElectricCurrent> tabulated,
        double ambientFactor,
        double groupingFactor,
        Quantity<ElectricCurrent> corrected,
        Quantity<ElectricCurrent> terminalLimit,
        Quantity<ElectricCurrent> usable,
        Optional<Quantity<ElectricCurrent>> greatestDevice,
        List<Source> sources) {

    /**
     * Copies the list.
     *
     * @param tabulated the table's value for the method of installation
     * @param ambientFactor correction for the ambient temperature
     * @param groupingFactor adjustment for circuits laid together
     * @param corrected tabulated value times both factors
     * @param terminalLimit the value of the terminals' temperature column where the code limits by terminals, otherwise the corrected value
     * @param usable the lesser of corrected value and terminal limit
     * @param greatestDevice the greatest standard rating of a protective device that may protect the conductor; empty if even the least standard rating is too great
     * @param sources tables and clauses used
     * @throws IllegalArgumentException if a factor is not above 0 and at most 2
     */
    public Ampacity {
        sources = List.copyOf(sources);
        Objects.requireNonNull(greatestDevice, "greatestDevice");
        factor("ambient factor", ambientFactor);
        factor("grouping factor", groupingFactor);
    }

    private static void factor(String what, double value) {
        if (!(value > 0 && value <= 2)) {
            throw new IllegalArgumentException(what + ": " + value + " was given; above 0 to 2 is expected");
        }
    }
}
