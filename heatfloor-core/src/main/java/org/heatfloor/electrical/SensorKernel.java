package org.heatfloor.electrical;

import java.util.function.DoubleUnaryOperator;

/** A sensor's law on numbers, without range checks: °C to Ω and Ω to °C. */
record SensorKernel(DoubleUnaryOperator toOhms, DoubleUnaryOperator toCelsius) {

    static SensorKernel of(SensorCurve curve) {
        if (curve instanceof BetaThermistor beta) {
            return beta.kernel();
        }
        if (curve instanceof SteinhartHart law) {
            return law.kernel();
        }
        return ((PlatinumSensor) curve).kernel();
    }

    double ohms(double celsius) {
        return toOhms.applyAsDouble(celsius);
    }

    double celsius(double ohms) {
        return toCelsius.applyAsDouble(ohms);
    }
}
