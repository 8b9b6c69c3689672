package org.heatfloor.quantity;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import tech.units.indriya.quantity.Quantities;

/** Short factories for the quantities a brief is made of. Every factory rejects values that are not finite. */
public final class Amounts {

    private Amounts() {}

    /**
     * A quantity in any unit.
     *
     * @param <Q> the kind of quantity
     * @param value the value, finite
     * @param unit the unit
     * @return the quantity
     * @throws IllegalArgumentException if the value is not finite
     */
    public static <Q extends Quantity<Q>> Quantity<Q> of(double value, Unit<Q> unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    "value: " + value + " " + unit + " was given; a finite number is expected");
        }
        return Quantities.getQuantity(value, unit);
    }

    /**
     * A length in metres.
     *
     * @param value metres
     * @return the length
     */
    public static Quantity<Length> metres(double value) {
        return of(value, Units.METRE);
    }

    /**
     * A length in millimetres.
     *
     * @param value millimetres
     * @return the length
     */
    public static Quantity<Length> millimetres(double value) {
        return of(value, Units.MILLIMETRE);
    }

    /**
     * A length in inches.
     *
     * @param value inches
     * @return the length
     */
    public static Quantity<Length> inches(double value) {
        return of(value, Units.INCH);
    }

    /**
     * A length in feet.
     *
     * @param value feet
     * @return the length
     */
    public static Quantity<Length> feet(double value) {
        return of(value, Units.FOOT);
    }

    /**
     * An area in square metres.
     *
     * @param value square metres
     * @return the area
     */
    public static Quantity<Area> squareMetres(double value) {
        return of(value, Units.SQUARE_METRE);
    }

    /**
     * A mass in kilograms.
     *
     * @param value kilograms
     * @return the mass
     */
    public static Quantity<Mass> kilograms(double value) {
        return of(value, Units.KILOGRAM);
    }

    /**
     * A power in watts.
     *
     * @param value watts
     * @return the power
     */
    public static Quantity<Power> watts(double value) {
        return of(value, Units.WATT);
    }

    /**
     * A voltage in volts.
     *
     * @param value volts
     * @return the voltage
     */
    public static Quantity<ElectricPotential> volts(double value) {
        return of(value, Units.VOLT);
    }

    /**
     * A current in amperes.
     *
     * @param value amperes
     * @return the current
     */
    public static Quantity<ElectricCurrent> amperes(double value) {
        return of(value, Units.AMPERE);
    }

    /**
     * A resistance in ohms.
     *
     * @param value ohms
     * @return the resistance
     */
    public static Quantity<ElectricResistance> ohms(double value) {
        return of(value, Units.OHM);
    }

    /**
     * An absolute temperature in degrees Celsius.
     *
     * @param value degrees Celsius
     * @return the temperature
     */
    public static Quantity<Temperature> celsius(double value) {
        return of(value, Units.CELSIUS);
    }

    /**
     * A temperature difference in kelvins.
     *
     * @param value kelvins
     * @return the difference
     */
    public static Quantity<TemperatureDifference> kelvins(double value) {
        return of(value, Units.KELVIN_DIFFERENCE);
    }

    /**
     * A time in seconds.
     *
     * @param value seconds
     * @return the time
     */
    public static Quantity<Time> seconds(double value) {
        return of(value, Units.SECOND);
    }

    /**
     * An angle in degrees.
     *
     * @param value degrees
     * @return the angle
     */
    public static Quantity<Angle> degrees(double value) {
        return of(value, Units.DEGREE);
    }

    /**
     * A thermal conductivity in W/(m·K).
     *
     * @param value watts per metre and kelvin
     * @return the conductivity
     */
    public static Quantity<ThermalConductivity> wattsPerMetreKelvin(double value) {
        return of(value, Units.WATT_PER_METRE_KELVIN);
    }
}
