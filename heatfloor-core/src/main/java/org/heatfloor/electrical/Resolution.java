package org.heatfloor.electrical;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricResistance;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * What a series of meter tests can tell from tolerance. Beyond these figures a fault is named for certain; nearer than they
 * are, its readings may be those of a sound cable. "Certain" is 4.5 standard deviations of the meter (half its accuracy)
 * and of the temperature (0.7 K) together; one fault at a time.
 *
 * @param shortenedShare a core that has shortened to this share of the reading it is compared with (the factory's, otherwise
 *     the first), or less, is named
 * @param lowRatio a core that from the first test is at most this share of the label's resistance is named
 * @param highRatio a core that from the first test is at least this share of the label's resistance is named
 * @param insulation a contact between core and screen of at most this resistance is named
 */
public record Resolution(
        Quantity<Dimensionless> shortenedShare,
        Quantity<Dimensionless> lowRatio,
        Quantity<Dimensionless> highRatio,
        Quantity<ElectricResistance> insulation) {

    /** A thermometer without a sensor beside it may be this wrong without anyone noticing; common practice, no source. */
    static final double UNCHECKED_KELVINS = 20;

    /** A change is certain from this many times what meter and thermometer may explain. */
    static final double CERTAIN_DRIFTS = 4.0 / 3;

    private static final double DEVIATIONS = 4.5;
    private static final double TEMPERATURE_KELVINS = 0.7;

    /**
     * Checks the figures.
     *
     * @param shortenedShare greatest share that is named as shortened
     * @param lowRatio greatest share of the label that is named as too low
     * @param highRatio least share of the label that is named as too high
     * @param insulation greatest contact that is named
     * @throws IllegalArgumentException if a figure is negative
     */
    public Resolution {
        Si.notNegative("shortened share", shortenedShare, Units.ONE);
        Si.notNegative("low ratio", lowRatio, Units.ONE);
        Si.notNegative("high ratio", highRatio, Units.ONE);
        Si.notNegative("insulation", insulation, Units.OHM);
    }

    static Resolution of(TestLimits limits) {
        double accuracy = limits.accuracy();
        double perKelvin = Math.abs(limits.core().perKelvin());
        double one = oneReading(accuracy, perKelvin);
        double unchecked = limits.sensorCurve().isPresent() ? 0 : UNCHECKED_KELVINS * perKelvin;
        double shortened = 1 - CERTAIN_DRIFTS * limits.driftShare() - Math.sqrt(2) * one - unchecked;
        double low = limits.tolerance().lowFactor() * (1 - one);
        double high = limits.tolerance().highFactor() * (1 + one);
        return new Resolution(
                share(shortened),
                share(low / (limits.tolerance().highFactor() * (1 + one))),
                share(high / (limits.tolerance().lowFactor() * (1 - one))),
                Amounts.ohms(limits.insulationLeastOhms() * (1 - DEVIATIONS * accuracy / 2)));
    }

    /** How far one corrected reading may lie from the truth, as a share. */
    static double oneReading(double accuracy, double perKelvin) {
        return DEVIATIONS * Math.hypot(accuracy / 2, TEMPERATURE_KELVINS * perKelvin);
    }

    private static Quantity<Dimensionless> share(double value) {
        return Amounts.of(Math.max(0, value), Units.ONE);
    }

    double shortened() {
        return Si.in("shortened share", shortenedShare, Units.ONE);
    }

    double low() {
        return Si.in("low ratio", lowRatio, Units.ONE);
    }

    double high() {
        return Si.in("high ratio", highRatio, Units.ONE);
    }
}
