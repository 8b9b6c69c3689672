package org.heatfloor.quantity;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;

/**
 * The door between quantities and SI numbers. Own quantity types are not dimension-checked by the unit library, so this
 * class checks the dimension itself; nothing else in the library converts.
 */
public final class Si {

    private Si() {}

    /**
     * The value of a quantity in a unit.
     *
     * @param <Q> the kind of quantity
     * @param what the argument's name, for the message
     * @param quantity the quantity
     * @param unit the unit wanted
     * @return the value, finite
     * @throws IllegalArgumentException if the dimension differs or the value is not finite
     */
    public static <Q extends Quantity<Q>> double in(String what, Quantity<Q> quantity, Unit<Q> unit) {
        // The dimension of a derived unit is worked out anew each time, which takes a tenth of a millisecond.
        if (quantity.getUnit() != unit && !quantity.getUnit().getDimension().equals(unit.getDimension())) {
            throw new IllegalArgumentException(
                    what + ": " + quantity + " was given; a quantity convertible to " + unit + " is expected");
        }
        double value = quantity.to(unit).getValue().doubleValue();
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + ": " + quantity + " was given; a finite number is expected");
        }
        return value;
    }

    /**
     * The value of a quantity that must be greater than zero.
     *
     * @param <Q> the kind of quantity
     * @param what the argument's name, for the message
     * @param quantity the quantity
     * @param unit the unit wanted
     * @return the value, greater than zero
     * @throws IllegalArgumentException if it is not
     */
    public static <Q extends Quantity<Q>> double positive(String what, Quantity<Q> quantity, Unit<Q> unit) {
        double value = in(what, quantity, unit);
        if (!(value > 0)) {
            throw new IllegalArgumentException(
                    what + ": " + quantity + " was given; more than 0 " + unit + " is expected");
        }
        return value;
    }

    /**
     * The value of a quantity that must not be negative.
     *
     * @param <Q> the kind of quantity
     * @param what the argument's name, for the message
     * @param quantity the quantity
     * @param unit the unit wanted
     * @return the value, zero or more
     * @throws IllegalArgumentException if it is negative
     */
    public static <Q extends Quantity<Q>> double notNegative(String what, Quantity<Q> quantity, Unit<Q> unit) {
        double value = in(what, quantity, unit);
        if (!(value >= 0)) {
            throw new IllegalArgumentException(
                    what + ": " + quantity + " was given; 0 " + unit + " or more is expected");
        }
        return value;
    }

    /**
     * The value of a quantity that must lie between two bounds.
     *
     * @param <Q> the kind of quantity
     * @param what the argument's name, for the message
     * @param quantity the quantity
     * @param unit the unit wanted
     * @param least the least value allowed, in that unit
     * @param most the greatest value allowed, in that unit
     * @return the value
     * @throws IllegalArgumentException if it lies outside
     */
    public static <Q extends Quantity<Q>> double within(
            String what, Quantity<Q> quantity, Unit<Q> unit, double least, double most) {
        double value = in(what, quantity, unit);
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    what + ": " + quantity + " was given; " + least + " to " + most + " " + unit + " is expected");
        }
        return value;
    }

    /**
     * An absolute temperature in kelvins.
     *
     * @param what the argument's name, for the message
     * @param temperature the temperature
     * @return kelvins, greater than zero
     * @throws IllegalArgumentException if it lies at or below absolute zero
     */
    public static double kelvin(String what, Quantity<Temperature> temperature) {
        return positive(what, temperature, Units.KELVIN);
    }
}
