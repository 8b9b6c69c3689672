package org.heatfloor.electrical;

/** Charging current of a capacitance and the trip time of a ground-fault circuit interrupter, on SI numbers. */
final class Leakage {

    private Leakage() {}

    /** {@code I = 2π·f·C·U}. */
    static double amperes(double hertz, double farads, double volts) {
        return 2 * Math.PI * hertz * farads * volts;
    }

    /** UL 943, {@code T = (20/I)^1.43} s, I in mA, 6 to 264 mA. */
    static double classASeconds(double milliamperes) {
        return Math.pow(20 / milliamperes, 1.43);
    }
}
