package org.heatfloor.takeoff;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;

/** The units a shopping list is written in. */
// Units are immutable by contract of the units API, which carries no annotation that says so.
@SuppressWarnings("ImmutableEnumChecker")
public enum PurchaseUnits {
    /** Square metres, metres, millimetres for tiles, kilograms, litres. */
    METRIC(Units.SQUARE_METRE, Units.METRE, Units.MILLIMETRE, Units.KILOGRAM, Units.LITRE),
    /** Square feet, feet, inches for tiles, pounds, cubic inches. */
    US_CUSTOMARY(Units.SQUARE_FOOT, Units.FOOT, Units.INCH, Units.POUND, Units.CUBIC_INCH);

    private final Unit<Area> area;
    private final Unit<Length> length;
    private final Unit<Length> face;
    private final Unit<Mass> mass;
    private final Unit<Volume> volume;

    PurchaseUnits(Unit<Area> area, Unit<Length> length, Unit<Length> face, Unit<Mass> mass, Unit<Volume> volume) {
        this.area = area;
        this.length = length;
        this.face = face;
        this.mass = mass;
        this.volume = volume;
    }

    Quantity<Area> area(Quantity<Area> given) {
        return given.to(area);
    }

    Quantity<Length> length(Quantity<Length> given) {
        return given.to(length);
    }

    /** A side of a tile. */
    Quantity<Length> face(Quantity<Length> given) {
        return given.to(face);
    }

    Quantity<Mass> mass(Quantity<Mass> given) {
        return given.to(mass);
    }

    Quantity<Volume> volume(Quantity<Volume> given) {
        return given.to(volume);
    }

    static String text(Quantity<?> quantity) {
        return QuantityText.write(quantity, 2);
    }
}
