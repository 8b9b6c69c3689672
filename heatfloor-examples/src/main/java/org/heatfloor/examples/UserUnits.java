package org.heatfloor.examples;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.heatfloor.quantity.HeatFlux;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;

/** Quantities as a person who works in the room file's unit reads them. */
final class UserUnits {

    private final boolean imperial;

    UserUnits(LengthUnit unit) {
        this.imperial = unit.isImperial();
    }

    /** A length of cable or a distance. */
    String longLength(Quantity<Length> length) {
        return imperial ? written(length, Units.FOOT, 1) : written(length, Units.METRE, 2);
    }

    /** A length of cable to a millimetre or a hundredth of a foot. */
    String cableLength(Quantity<Length> length) {
        return imperial ? written(length, Units.FOOT, 2) : written(length, Units.METRE, 3);
    }

    /** A spacing, a thickness, a step. */
    String shortLength(Quantity<Length> length) {
        return imperial ? written(length, Units.INCH, 2) : written(length, Units.MILLIMETRE, 0);
    }

    /** A thickness to a tenth of a millimetre. */
    String thickness(Quantity<Length> length) {
        return imperial ? written(length, Units.INCH, 2) : written(length, Units.MILLIMETRE, 1);
    }

    String area(Quantity<Area> area) {
        return imperial ? written(area, Units.SQUARE_FOOT, 1) : written(area, Units.SQUARE_METRE, 2);
    }

    String mass(Quantity<Mass> mass) {
        return imperial ? written(mass, Units.POUND, 1) : written(mass, Units.KILOGRAM, 1);
    }

    String temperature(Quantity<Temperature> temperature) {
        return imperial ? written(temperature, Units.FAHRENHEIT, 0) : written(temperature, Units.CELSIUS, 1);
    }

    String flux(Quantity<HeatFlux> flux) {
        return imperial ? written(flux, Units.WATT_PER_SQUARE_FOOT, 1) : written(flux, Units.WATT_PER_SQUARE_METRE, 0);
    }

    static String time(Quantity<Time> time) {
        long minutes = Math.round(time.to(Units.MINUTE).getValue().doubleValue());
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
    }

    static <Q extends Quantity<Q>> String written(Quantity<Q> quantity, Unit<Q> unit, int decimals) {
        return QuantityText.write(quantity.to(unit), decimals);
    }
}
