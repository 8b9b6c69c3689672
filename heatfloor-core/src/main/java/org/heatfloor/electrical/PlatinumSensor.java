package org.heatfloor.electrical;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * A platinum resistance sensor by IEC 60751: {@code R = R₀·(1 + A·t + B·t²)} from 0 °C up, with {@code + R₀·C·(t − 100)·t³}
 * below; {@code A = 3.9083e-3}, {@code B = −5.775e-7}, {@code C = −4.183e-12} (C from memory). Range −200 °C to 850 °C.
 *
 * @param at0 resistance at 0 °C, 100 Ω or 1000 Ω as a rule, 10 Ω to 10 kΩ
 */
public record PlatinumSensor(Quantity<ElectricResistance> at0) implements SensorCurve {

    private static final double A = 3.9083e-3;
    private static final double B = -5.775e-7;
    private static final double C = -4.183e-12;
    private static final double LEAST = -200;
    private static final double MOST = 850;
    private static final int NEWTON_STEPS = 20;

    /**
     * Checks the figure.
     *
     * @param at0 resistance at 0 °C, 100 Ω or 1000 Ω as a rule, 10 Ω to 10 kΩ
     * @throws IllegalArgumentException if it is out of range
     */
    public PlatinumSensor {
        Si.within("platinum sensor resistance at 0 °C", at0, Units.OHM, 10, 10_000);
    }

    @Override
    public Quantity<ElectricResistance> resistanceAt(Quantity<Temperature> temperature) {
        return Amounts.ohms(kernel().ohms(SensorRange.celsius(temperature, LEAST, MOST)));
    }

    @Override
    public Quantity<Temperature> temperatureOf(Quantity<ElectricResistance> resistance) {
        double ohms = Si.positive("sensor resistance", resistance, Units.OHM);
        return SensorRange.checked(resistance, kernel().celsius(ohms), LEAST, MOST);
    }

    SensorKernel kernel() {
        double ohms0 = Si.in("at0", at0, Units.OHM);
        return new SensorKernel(celsius -> ohms0 * ratio(celsius), ohms -> celsius(ohms / ohms0));
    }

    private static double celsius(double ratio) {
        double t = (-A + Math.sqrt(Math.max(0, A * A - 4 * B * (1 - ratio)))) / (2 * B);
        for (int i = 0; t < 0 && i < NEWTON_STEPS; i++) {
            t -= (ratio(t) - ratio) / (A + 2 * B * t + C * (4 * t - 300) * t * t);
        }
        return t;
    }

    private static double ratio(double t) {
        double above = 1 + A * t + B * t * t;
        return t >= 0 ? above : above + C * (t - 100) * t * t * t;
    }

    @Override
    public String describe() {
        return "platinum " + QuantityText.write(at0, 0) + " at 0 °C, IEC 60751";
    }
}
