package org.heatfloor.thermal;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * What electricity costs.
 *
 * @param pricePerKilowattHour price of one kilowatt hour
 * @param currency the currency
 */
public record Tariff(BigDecimal pricePerKilowattHour, Currency currency) {

    /**
     * Checks the price.
     *
     * @param pricePerKilowattHour price of one kilowatt hour
     * @param currency the currency
     * @throws IllegalArgumentException if it is negative
     */
    public Tariff {
        if (pricePerKilowattHour.signum() < 0) {
            throw new IllegalArgumentException(
                    "pricePerKilowattHour: " + pricePerKilowattHour + " was given; 0 or more is expected");
        }
    }

    /**
     * Cost of an amount of energy.
     *
     * @param energy the energy
     * @return the cost, rounded half up to the currency's smallest coin
     */
    public BigDecimal cost(Quantity<Energy> energy) {
        double kilowattHours = Si.in("energy", energy, Units.KILOWATT_HOUR);
        return pricePerKilowattHour
                .multiply(BigDecimal.valueOf(kilowattHours))
                .setScale(Math.max(0, currency.getDefaultFractionDigits()), RoundingMode.HALF_UP);
    }
}
