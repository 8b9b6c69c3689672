package org.heatfloor.electrical;

/**
 * Ohm's and Joule's laws on SI numbers (T. R. Kuphaldt, Lessons in Electric Circuits, vol. I, ch. 2, 5 and 12):
 * {@code P = V²/R}, {@code R = V²/P}, {@code 1/R = Σ 1/Rᵢ}, {@code R = R₂₀·[1 + α·(T − T₂₀)]}.
 */
final class Ohm {

    /** The textbook behind these laws. */
    static final String TEXTBOOK =
            "T. R. Kuphaldt, Lessons in Electric Circuits, vol. I, fifth edition (edition from memory)";

    private Ohm() {}

    static double resistance(double volts, double watts) {
        return volts * volts / watts;
    }

    static double power(double volts, double ohms) {
        return volts * volts / ohms;
    }

    static double parallel(double... ohms) {
        double siemens = 0;
        for (double each : ohms) {
            siemens += 1 / each;
        }
        return 1 / siemens;
    }

    static double atTemperature(double ohmsAtReference, double perKelvin, double kelvinsAbove) {
        return ohmsAtReference * (1 + perKelvin * kelvinsAbove);
    }

    /** {@code α = (R₂/R₁ − 1)/(T₂ − T₁)}, referred to the first temperature. */
    static double coefficient(double ohms1, double kelvin1, double ohms2, double kelvin2) {
        return (ohms2 / ohms1 - 1) / (kelvin2 - kelvin1);
    }

    /** Voltage lost there and back, {@code V = 2·L·r·I}. */
    static double twoWireDrop(double ohmsPerMetre, double oneWayMetres, double amperes) {
        return 2 * oneWayMetres * ohmsPerMetre * amperes;
    }
}
