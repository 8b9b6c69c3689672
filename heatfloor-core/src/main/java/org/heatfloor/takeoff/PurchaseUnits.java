package org.heatfloor.takeoff;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** The units a shopping list is written in, and the packs its goods are sold in where none is given. */
// Units are immutable by contract of the units API, which carries no annotation that says so.
@SuppressWarnings("ImmutableEnumChecker")
public enum PurchaseUnits {
    /**
     * Square metres, metres, millimetres for tiles, kilograms, litres; grout in bags of 5 kg, leveller in bags of 25 kg,
     * sealant in cartridges of 310 ml (common practice, no source).
     */
    METRIC(Units.SQUARE_METRE, Units.METRE, Units.MILLIMETRE, Units.KILOGRAM, Units.LITRE),
    /**
     * Square feet, feet, inches for tiles, pounds, cubic feet; grout in bags of 10 lb, leveller in bags of 50 lb, sealant in
     * cartridges of 10.1 fl oz (common practice, no source).
     */
    US_CUSTOMARY(Units.SQUARE_FOOT, Units.FOOT, Units.INCH, Units.POUND, Units.CUBIC_FOOT);

    private static final double FLUID_OUNCE_LITRES = 231 * 0.016387064 / 128;

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

    private boolean isMetric() {
        return this == METRIC;
    }

    /** A bag of grout where none was given. */
    Quantity<Mass> groutBag() {
        return Amounts.of(isMetric() ? 5 : 10, mass);
    }

    /** A bag of levelling compound where none was given. */
    Quantity<Mass> levellerBag() {
        return Amounts.of(isMetric() ? 25 : 50, mass);
    }

    double cartridgeLitres() {
        return isMetric() ? 0.310 : 10.1 * FLUID_OUNCE_LITRES;
    }

    String cartridge() {
        return isMetric() ? "cartridge of 310 ml" : "cartridge of 10.1 fl oz (300 ml)";
    }

    /** What edge strip is sold by. */
    String strip() {
        return isMetric() ? "metre" : "foot";
    }

    String areaText(Quantity<Area> given) {
        return text(area(given));
    }

    String lengthText(Quantity<Length> given) {
        return text(length(given));
    }

    /** The size of a sheet or roll, to a millimetre. */
    String stockText(Quantity<Length> given) {
        return QuantityText.write(length(given), 3);
    }

    /** A thickness or a step: millimetres to a tenth, inches to a hundredth. */
    String thicknessText(Quantity<Length> given) {
        return QuantityText.write(face(given), isMetric() ? 1 : 2);
    }

    String faceText(Quantity<Length> given) {
        return text(face(given));
    }

    String massText(Quantity<Mass> given) {
        return text(mass(given));
    }

    String volumeText(Quantity<Volume> given) {
        return text(volume(given));
    }

    /** A volume of sealant, which comes in small packs. */
    String sealantText(Quantity<Volume> given) {
        double litres = Si.in("sealant", given, Units.LITRE);
        return isMetric()
                ? QuantityText.number(1000 * litres, 0) + " ml"
                : QuantityText.number(litres / FLUID_OUNCE_LITRES, 1) + " fl oz";
    }

    private static String text(Quantity<?> quantity) {
        return QuantityText.write(quantity, 2);
    }
}
