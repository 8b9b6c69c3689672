package org.heatfloor.electrical;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;

/**
 * A figure with the least and the greatest value its tolerances allow.
 *
 * @param <Q> the kind of quantity
 * @param low the least value
 * @param nominal the declared or calculated value
 * @param high the greatest value
 */
public record Band<Q extends Quantity<Q>>(Quantity<Q> low, Quantity<Q> nominal, Quantity<Q> high) {

    /**
     * Checks the order.
     *
     * @param low the least value
     * @param nominal the declared or calculated value
     * @param high the greatest value
     * @throws IllegalArgumentException if low, nominal and high do not rise in this order
     */
    public Band {
        Objects.requireNonNull(low, "low");
        Objects.requireNonNull(high, "high");
        Unit<Q> unit = nominal.getUnit();
        double middle = Si.in("nominal", nominal, unit);
        if (!(Si.in("low", low, unit) <= middle && middle <= Si.in("high", high, unit))) {
            throw new IllegalArgumentException("band: low " + low + ", nominal " + nominal + " and high " + high
                    + " were given; rising values are expected");
        }
    }

    static <Q extends Quantity<Q>> Band<Q> of(double low, double nominal, double high, Unit<Q> unit) {
        return new Band<>(Amounts.of(low, unit), Amounts.of(nominal, unit), Amounts.of(high, unit));
    }

    /**
     * Whether a value lies in the band, its ends included.
     *
     * @param value the value
     * @return true if it is not below low and not above high
     */
    public boolean contains(Quantity<Q> value) {
        Unit<Q> unit = nominal.getUnit();
        double v = Si.in("value", value, unit);
        double slack = 1e-9 * Math.abs(v);
        return v >= Si.in("low", low, unit) - slack && v <= Si.in("high", high, unit) + slack;
    }
}
