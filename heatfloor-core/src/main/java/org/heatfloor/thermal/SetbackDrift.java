package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * A room left without heat, taken as one lump: {@code θ(t) = θe + (θi − θe)·exp(−t/τ)}, {@code τ = C/H} (derived).
 *
 * @param end temperature at the end
 * @param mean mean temperature over the time
 * @param mostSavedShare the most a day's heat is cut by, {@code t·(θi − θmean)/(24 h·(θi − θe))}
 */
public record SetbackDrift(
        Quantity<Temperature> end, Quantity<Temperature> mean, Quantity<Dimensionless> mostSavedShare) {

    /**
     * Lets a room cool.
     *
     * @param indoor temperature at the start
     * @param outdoor outdoor temperature, below the indoor one
     * @param timeConstant heat capacity over loss a kelvin, above 0
     * @param duration how long, above 0
     * @return the drift
     * @throws IllegalArgumentException if it is not colder outdoors or a time is not above 0
     */
    public static SetbackDrift of(
            Quantity<Temperature> indoor,
            Quantity<Temperature> outdoor,
            Quantity<Time> timeConstant,
            Quantity<Time> duration) {
        double start = Si.kelvin("indoor", indoor);
        double outside = Si.kelvin("outdoor", outdoor);
        if (!(start > outside)) {
            throw new IllegalArgumentException(
                    "outdoor: " + outdoor + " was given; less than the indoor " + indoor + " is expected");
        }
        double tau = Si.positive("timeConstant", timeConstant, Units.SECOND);
        double t = Si.positive("duration", duration, Units.SECOND);
        double end = outside + (start - outside) * Math.exp(-t / tau);
        double mean = outside + (start - outside) * tau / t * -Math.expm1(-t / tau);
        return new SetbackDrift(
                SteadySection.celsius(end),
                SteadySection.celsius(mean),
                Amounts.of(t / 86_400 * (start - mean) / (start - outside), Units.ONE));
    }
}
