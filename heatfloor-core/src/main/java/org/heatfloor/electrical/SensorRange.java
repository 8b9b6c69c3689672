package org.heatfloor.electrical;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Range checks the sensor curves share. */
final class SensorRange {

    static final double ZERO_CELSIUS = 273.15;

    private SensorRange() {}

    static double celsius(Quantity<Temperature> temperature, double leastCelsius, double mostCelsius) {
        return Si.within("sensor temperature", temperature, Units.CELSIUS, leastCelsius, mostCelsius);
    }

    static Quantity<Temperature> checked(
            Quantity<ElectricResistance> read, double celsius, double leastCelsius, double mostCelsius) {
        if (!(celsius >= leastCelsius - 1e-6 && celsius <= mostCelsius + 1e-6)) {
            throw new IllegalArgumentException("sensor resistance: " + read + " was given, which is " + celsius
                    + " °C; " + leastCelsius + " to " + mostCelsius + " °C is expected");
        }
        return Amounts.celsius(celsius);
    }
}
