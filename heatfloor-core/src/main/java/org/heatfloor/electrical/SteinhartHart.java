package org.heatfloor.electrical;

import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * A thermistor (NTC) by {@code 1/T = A + B·ln R + C·(ln R)³}, T in kelvins, R in ohms (J. S. Steinhart and S. R. Hart,
 * Deep-Sea Research 15, 1968; citation from memory). The inverse is closed: with {@code x = (A − 1/T)/(2C)} and {@code y =
 * √[(B/3C)³ + x²]}, {@code ln R = ∛(y − x) − ∛(y + x)}. Range −55 °C to 150 °C.
 *
 * @param a A in 1/K
 * @param b B in 1/K, above 0
 * @param c C in 1/K, above 0
 */
public record SteinhartHart(double a, double b, double c) implements SensorCurve {

    private static final double LEAST = -55;
    private static final double MOST = 150;
    private static final double LEAST_OHMS = 10;
    private static final double MOST_OHMS = 1e7;

    /**
     * Checks the coefficients.
     *
     * @param a A in 1/K
     * @param b B in 1/K, above 0
     * @param c C in 1/K, above 0
     * @throws IllegalArgumentException if a is not −0.1 to 0.1, b not above 0 to 0.1, or c not above 0 to 0.1, or if they make
     *     no thermistor of 10 Ω to 10 MΩ at 25 °C
     */
    public SteinhartHart {
        if (!(a >= -0.1 && a <= 0.1) || !(b > 0 && b <= 0.1) || !(c > 0 && c <= 0.1)) {
            throw new IllegalArgumentException("Steinhart-Hart coefficients: " + a + ", " + b + ", " + c
                    + " were given; A within 0.1 1/K, B and C above 0 to 0.1 1/K are expected");
        }
        double at25 = ohms(a, b, c, 25);
        if (!(at25 >= LEAST_OHMS && at25 <= MOST_OHMS)) {
            throw new IllegalArgumentException("Steinhart-Hart coefficients: " + a + ", " + b + ", " + c
                    + " were given, which makes " + at25 + " Ω at 25 °C; a thermistor of " + LEAST_OHMS + " Ω to "
                    + MOST_OHMS + " Ω is expected");
        }
    }

    /**
     * The law through three points of a table.
     *
     * @param ohms three resistances
     * @param celsius their temperatures in rising order
     * @return the law
     * @throws IllegalArgumentException if there are not three, or they do not fall with temperature as a thermistor's do
     */
    static SteinhartHart fit(double[] ohms, double[] celsius) {
        double[] l = new double[3];
        double[] y = new double[3];
        for (int i = 0; i < 3; i++) {
            l[i] = Math.log(ohms[i]);
            y[i] = 1 / (celsius[i] + SensorRange.ZERO_CELSIUS);
        }
        double g2 = (y[1] - y[0]) / (l[1] - l[0]);
        double g3 = (y[2] - y[0]) / (l[2] - l[0]);
        double c = (g3 - g2) / (l[2] - l[1]) / (l[0] + l[1] + l[2]);
        double b = g2 - c * (l[0] * l[0] + l[0] * l[1] + l[1] * l[1]);
        return new SteinhartHart(y[0] - (b + l[0] * l[0] * c) * l[0], b, c);
    }

    /**
     * The law through three points of a sensor's table.
     *
     * @param r1 resistance at the first temperature
     * @param t1 first temperature
     * @param r2 resistance at the second temperature
     * @param t2 second temperature
     * @param r3 resistance at the third temperature
     * @param t3 third temperature
     * @return the law
     * @throws IllegalArgumentException if points coincide or are not those of a thermistor
     */
    public static SteinhartHart through(
            Quantity<ElectricResistance> r1,
            Quantity<Temperature> t1,
            Quantity<ElectricResistance> r2,
            Quantity<Temperature> t2,
            Quantity<ElectricResistance> r3,
            Quantity<Temperature> t3) {
        return fit(
                new double[] {
                    Si.positive("first resistance", r1, Units.OHM),
                    Si.positive("second resistance", r2, Units.OHM),
                    Si.positive("third resistance", r3, Units.OHM)
                },
                new double[] {
                    SensorRange.celsius(t1, LEAST, MOST),
                    SensorRange.celsius(t2, LEAST, MOST),
                    SensorRange.celsius(t3, LEAST, MOST)
                });
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

    private static double ohms(double a, double b, double c, double celsius) {
        double x = (a - 1 / (celsius + SensorRange.ZERO_CELSIUS)) / (2 * c);
        double y = Math.sqrt(Math.pow(b / (3 * c), 3) + x * x);
        return Math.exp(Math.cbrt(y - x) - Math.cbrt(y + x));
    }

    SensorKernel kernel() {
        return new SensorKernel(celsius -> ohms(a, b, c, celsius), ohms -> {
            double ln = Math.log(ohms);
            return 1 / (a + b * ln + c * ln * ln * ln) - SensorRange.ZERO_CELSIUS;
        });
    }

    @Override
    public String describe() {
        return String.format(Locale.ROOT, "NTC by Steinhart-Hart, A %.6e, B %.6e, C %.6e 1/K", a, b, c);
    }
}
