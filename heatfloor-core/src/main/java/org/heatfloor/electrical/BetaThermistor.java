package org.heatfloor.electrical;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.TemperatureDifference;
import org.heatfloor.quantity.Units;

/**
 * A thermistor (NTC) by its Beta: {@code R(T) = R₀·exp[B·(1/T − 1/T₀)]}, temperatures in kelvins, {@code T₀ = 25 °C}. Beta
 * holds between the two temperatures it was taken from; elsewhere it is several per cent off, so {@link SteinhartHart} is
 * the better law for ±0.5 K. Range −55 °C to 150 °C.
 *
 * @param at25 resistance at 25 °C, 10 Ω to 10 MΩ
 * @param beta {@code B}, 500 K to 10 000 K
 */
public record BetaThermistor(Quantity<ElectricResistance> at25, Quantity<TemperatureDifference> beta)
        implements SensorCurve {

    private static final double REFERENCE_KELVIN = 298.15;
    private static final double LEAST = -55;
    private static final double MOST = 150;

    /**
     * Checks the figures.
     *
     * @param at25 resistance at 25 °C, 10 Ω to 10 MΩ
     * @param beta {@code B}, 500 K to 10 000 K
     * @throws IllegalArgumentException if a figure is out of range
     */
    public BetaThermistor {
        Si.within("thermistor resistance at 25 °C", at25, Units.OHM, 10, 1e7);
        Si.within("thermistor beta", beta, Units.KELVIN_DIFFERENCE, 500, 10_000);
    }

    /**
     * A thermistor from two points, {@code B = ln(R₁/R₂)/(1/T₁ − 1/T₂)}.
     *
     * @param r1 resistance at the first temperature
     * @param t1 first temperature
     * @param r2 resistance at the second temperature
     * @param t2 second temperature, another
     * @return the thermistor through both points
     * @throws IllegalArgumentException if the points coincide or do not fall with temperature
     */
    public static BetaThermistor through(
            Quantity<ElectricResistance> r1,
            Quantity<Temperature> t1,
            Quantity<ElectricResistance> r2,
            Quantity<Temperature> t2) {
        double first = 1 / (SensorRange.celsius(t1, LEAST, MOST) + SensorRange.ZERO_CELSIUS);
        double second = 1 / (SensorRange.celsius(t2, LEAST, MOST) + SensorRange.ZERO_CELSIUS);
        if (!(Math.abs(first - second) > 0)) {
            throw new IllegalArgumentException("thermistor points: both at " + t1 + "; two temperatures are expected");
        }
        double ohms = Si.positive("first resistance", r1, Units.OHM);
        double beta = Math.log(ohms / Si.positive("second resistance", r2, Units.OHM)) / (first - second);
        double at25 = ohms * Math.exp(beta * (1 / REFERENCE_KELVIN - first));
        return new BetaThermistor(Amounts.ohms(at25), Amounts.kelvins(beta));
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

    @Override
    public String describe() {
        return "NTC " + QuantityText.write(at25, 0) + " at 25 °C, beta " + QuantityText.write(beta, 0);
    }

    SensorKernel kernel() {
        double ohms25 = ohms25();
        double kelvins = kelvins();
        return new SensorKernel(
                celsius ->
                        ohms25 * Math.exp(kelvins * (1 / (celsius + SensorRange.ZERO_CELSIUS) - 1 / REFERENCE_KELVIN)),
                ohms -> 1 / (1 / REFERENCE_KELVIN + Math.log(ohms / ohms25) / kelvins) - SensorRange.ZERO_CELSIUS);
    }

    private double ohms25() {
        return Si.in("at25", at25, Units.OHM);
    }

    private double kelvins() {
        return Si.in("beta", beta, Units.KELVIN_DIFFERENCE);
    }
}
