package org.heatfloor.electrical;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Power;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * What a cable does on a supply, with the bands its tolerances allow. With {@code R = V²/P} from the label (rated voltage
 * and power), {@code P = U²/R} and {@code I = U/R} at the supply voltage {@code U}: power goes with the square of the
 * voltage. Source: T. R. Kuphaldt, Lessons in Electric Circuits, vol. I, ch. 2.
 *
 * @param resistance resistance at 20 °C
 * @param power power at the supply voltage
 * @param current current at the supply voltage
 */
public record CableRating(Band<ElectricResistance> resistance, Band<Power> power, Band<ElectricCurrent> current) {

    /**
     * The rating at a supply voltage that keeps exactly to its nominal value, with the usual resistance tolerance.
     *
     * @param cable the cable
     * @param supplyVoltage the voltage applied, above 0 and at most 1000 V
     * @return resistance, power and current
     * @throws IllegalArgumentException if the voltage is out of range
     */
    public static CableRating of(HeatingCable cable, Quantity<ElectricPotential> supplyVoltage) {
        return of(cable, supplyVoltage, ResistanceTolerance.USUAL);
    }

    /**
     * The rating at a supply voltage that keeps exactly to its nominal value.
     *
     * @param cable the cable
     * @param supplyVoltage the voltage applied, above 0 and at most 1000 V
     * @param tolerance the resistance tolerance
     * @return resistance, power and current
     * @throws IllegalArgumentException if the voltage is out of range
     */
    public static CableRating of(
            HeatingCable cable, Quantity<ElectricPotential> supplyVoltage, ResistanceTolerance tolerance) {
        double volts = volts(supplyVoltage);
        return of(cable, volts, volts, volts, tolerance);
    }

    /**
     * The rating with the tolerances of cable and supply stacked: least power at the least voltage and the greatest
     * resistance, greatest power at the greatest voltage and the least resistance.
     *
     * @param cable the cable
     * @param supplyVoltage the supply's nominal voltage, above 0 and at most 1000 V
     * @param tolerance the resistance tolerance
     * @param supplyTolerance the supply's voltage tolerance
     * @return resistance, power and current
     * @throws IllegalArgumentException if the voltage is out of range
     */
    public static CableRating of(
            HeatingCable cable,
            Quantity<ElectricPotential> supplyVoltage,
            ResistanceTolerance tolerance,
            SupplyTolerance supplyTolerance) {
        double volts = volts(supplyVoltage);
        return of(cable, volts * supplyTolerance.lowFactor(), volts, volts * supplyTolerance.highFactor(), tolerance);
    }

    private static CableRating of(
            HeatingCable cable, double lowVolts, double volts, double highVolts, ResistanceTolerance tolerance) {
        double ohms = Ohm.resistance(cable.volts(), cable.watts());
        double low = ohms * tolerance.lowFactor();
        double high = ohms * tolerance.highFactor();
        return new CableRating(
                Band.of(low, ohms, high, Units.OHM),
                Band.of(Ohm.power(lowVolts, high), Ohm.power(volts, ohms), Ohm.power(highVolts, low), Units.WATT),
                Band.of(lowVolts / high, volts / ohms, highVolts / low, Units.AMPERE));
    }

    static double volts(Quantity<ElectricPotential> supplyVoltage) {
        Si.positive("supply voltage", supplyVoltage, Units.VOLT);
        return Si.within("supply voltage", supplyVoltage, Units.VOLT, 0, 1000);
    }
}
