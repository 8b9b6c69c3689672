package org.heatfloor.quantity;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.GIGA;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static javax.measure.MetricPrefix.NANO;
import static javax.measure.MetricPrefix.PICO;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.ProductUnit;

/**
 * The units the library reads and writes. US customary units are defined exactly (1 in = 25.4 mm, 1 lb = 0.45359237 kg;
 * international yard and pound agreement of 1959), so no other unit library is needed.
 */
public final class Units {

    /** Metre. */
    public static final Unit<Length> METRE;
    /** Centimetre. */
    public static final Unit<Length> CENTIMETRE;
    /** Millimetre. */
    public static final Unit<Length> MILLIMETRE;
    /** Inch, exactly 25.4 mm. */
    public static final Unit<Length> INCH;
    /** Foot, exactly 0.3048 m. */
    public static final Unit<Length> FOOT;
    /** Square metre. */
    public static final Unit<Area> SQUARE_METRE;
    /** Square millimetre, also the size of a conductor. */
    public static final Unit<Area> SQUARE_MILLIMETRE;
    /** Square foot. */
    public static final Unit<Area> SQUARE_FOOT;
    /** Cubic metre. */
    public static final Unit<Volume> CUBIC_METRE;
    /** Litre. */
    public static final Unit<Volume> LITRE;
    /** Cubic centimetre. */
    public static final Unit<Volume> CUBIC_CENTIMETRE;
    /** Cubic inch. */
    public static final Unit<Volume> CUBIC_INCH;

    /** Cubic foot. */
    public static final Unit<Volume> CUBIC_FOOT;
    /** Kilogram. */
    public static final Unit<Mass> KILOGRAM;
    /** Pound, exactly 0.45359237 kg. */
    public static final Unit<Mass> POUND;
    /** Second. */
    public static final Unit<Time> SECOND;
    /** Minute. */
    public static final Unit<Time> MINUTE;
    /** Hour. */
    public static final Unit<Time> HOUR;
    /** Day. */
    public static final Unit<Time> DAY;
    /** Watt. */
    public static final Unit<Power> WATT;
    /** Kilowatt. */
    public static final Unit<Power> KILOWATT;
    /** Joule. */
    public static final Unit<Energy> JOULE;
    /** Kilowatt hour. */
    public static final Unit<Energy> KILOWATT_HOUR;
    /** Volt. */
    public static final Unit<ElectricPotential> VOLT;
    /** Ampere. */
    public static final Unit<ElectricCurrent> AMPERE;
    /** Milliampere. */
    public static final Unit<ElectricCurrent> MILLIAMPERE;
    /** Ohm. */
    public static final Unit<ElectricResistance> OHM;
    /** Kiloohm. */
    public static final Unit<ElectricResistance> KILOOHM;
    /** Megaohm. */
    public static final Unit<ElectricResistance> MEGAOHM;
    /** Gigaohm. */
    public static final Unit<ElectricResistance> GIGAOHM;
    /** Farad. */
    public static final Unit<ElectricCapacitance> FARAD;
    /** Nanofarad. */
    public static final Unit<ElectricCapacitance> NANOFARAD;
    /** Hertz. */
    public static final Unit<Frequency> HERTZ;
    /** Kelvin, for absolute temperatures. */
    public static final Unit<Temperature> KELVIN;
    /** Degree Celsius, for absolute temperatures. */
    public static final Unit<Temperature> CELSIUS;
    /** Degree Fahrenheit, for absolute temperatures. */
    public static final Unit<Temperature> FAHRENHEIT;
    /** Kelvin of difference. */
    public static final Unit<TemperatureDifference> KELVIN_DIFFERENCE;
    /** Degree Fahrenheit of difference, 5/9 K. */
    public static final Unit<TemperatureDifference> FAHRENHEIT_DIFFERENCE;
    /** Radian. */
    public static final Unit<Angle> RADIAN;
    /** Degree of arc. */
    public static final Unit<Angle> DEGREE;
    /** The number one. */
    public static final Unit<Dimensionless> ONE;
    /** Percent. */
    public static final Unit<Dimensionless> PERCENT;
    /** Watt per metre. */
    public static final Unit<LinearPower> WATT_PER_METRE;
    /** Watt per foot. */
    public static final Unit<LinearPower> WATT_PER_FOOT;
    /** Watt per square metre. */
    public static final Unit<HeatFlux> WATT_PER_SQUARE_METRE;
    /** Watt per square foot. */
    public static final Unit<HeatFlux> WATT_PER_SQUARE_FOOT;
    /** Watt per metre and kelvin. */
    public static final Unit<ThermalConductivity> WATT_PER_METRE_KELVIN;
    /** Square metre kelvin per watt. */
    public static final Unit<ThermalInsulance> SQUARE_METRE_KELVIN_PER_WATT;
    /** Watt per square metre and kelvin. */
    public static final Unit<HeatTransferCoefficient> WATT_PER_SQUARE_METRE_KELVIN;
    /** Watt per kelvin. */
    public static final Unit<HeatLossCoefficient> WATT_PER_KELVIN;
    /** Ohm per metre. */
    public static final Unit<LinearResistance> OHM_PER_METRE;
    /** Farad per metre. */
    public static final Unit<LinearCapacitance> FARAD_PER_METRE;
    /** Picofarad per metre. */
    public static final Unit<LinearCapacitance> PICOFARAD_PER_METRE;
    /** One per kelvin. */
    public static final Unit<TemperatureCoefficient> ONE_PER_KELVIN;
    /** Kilogram per cubic metre. */
    public static final Unit<Density> KILOGRAM_PER_CUBIC_METRE;
    /** Kilogram per litre. */
    public static final Unit<Density> KILOGRAM_PER_LITRE;
    /** Kilogram per square metre. */
    public static final Unit<ArealDensity> KILOGRAM_PER_SQUARE_METRE;
    /** Cubic metre per square metre. */
    public static final Unit<VolumePerArea> CUBIC_METRE_PER_SQUARE_METRE;
    /** Litre per square metre. */
    public static final Unit<VolumePerArea> LITRE_PER_SQUARE_METRE;
    /** Joule per kilogram and kelvin. */
    public static final Unit<SpecificHeatCapacity> JOULE_PER_KILOGRAM_KELVIN;

    // Indriya looks its number system up through the context class loader the first time it converts; plugin hosts and
    // application servers set one that cannot see it, so the first use happens here, under our own loader.
    static {
        Thread thread = Thread.currentThread();
        ClassLoader before = thread.getContextClassLoader();
        thread.setContextClassLoader(Units.class.getClassLoader());
        try {
            METRE = tech.units.indriya.unit.Units.METRE;
            CENTIMETRE = CENTI(METRE);
            MILLIMETRE = MILLI(METRE);
            INCH = METRE.multiply(254).divide(10_000);
            FOOT = METRE.multiply(3048).divide(10_000);
            SQUARE_METRE = tech.units.indriya.unit.Units.SQUARE_METRE;
            SQUARE_MILLIMETRE = SQUARE_METRE.divide(1_000_000);
            SQUARE_FOOT = SQUARE_METRE.multiply(9_290_304).divide(100_000_000);
            CUBIC_METRE = tech.units.indriya.unit.Units.CUBIC_METRE;
            LITRE = CUBIC_METRE.divide(1_000);
            CUBIC_CENTIMETRE = CUBIC_METRE.divide(1_000_000);
            CUBIC_INCH = CUBIC_METRE.multiply(16_387_064).divide(1_000_000_000_000L);
            CUBIC_FOOT = CUBIC_INCH.multiply(1_728);
            KILOGRAM = tech.units.indriya.unit.Units.KILOGRAM;
            POUND = KILOGRAM.multiply(45_359_237).divide(100_000_000);
            SECOND = tech.units.indriya.unit.Units.SECOND;
            MINUTE = SECOND.multiply(60);
            HOUR = SECOND.multiply(3_600);
            DAY = SECOND.multiply(86_400);
            WATT = tech.units.indriya.unit.Units.WATT;
            KILOWATT = KILO(WATT);
            JOULE = tech.units.indriya.unit.Units.JOULE;
            KILOWATT_HOUR = JOULE.multiply(3_600_000);
            VOLT = tech.units.indriya.unit.Units.VOLT;
            AMPERE = tech.units.indriya.unit.Units.AMPERE;
            MILLIAMPERE = MILLI(AMPERE);
            OHM = tech.units.indriya.unit.Units.OHM;
            KILOOHM = KILO(OHM);
            MEGAOHM = MEGA(OHM);
            GIGAOHM = GIGA(OHM);
            FARAD = tech.units.indriya.unit.Units.FARAD;
            NANOFARAD = NANO(FARAD);
            HERTZ = tech.units.indriya.unit.Units.HERTZ;
            KELVIN = tech.units.indriya.unit.Units.KELVIN;
            CELSIUS = tech.units.indriya.unit.Units.CELSIUS;
            FAHRENHEIT = KELVIN.multiply(5).divide(9).shift(459.67);
            RADIAN = tech.units.indriya.unit.Units.RADIAN;
            DEGREE = RADIAN.multiply(Math.PI / 180);
            ONE = AbstractUnit.ONE;
            PERCENT = tech.units.indriya.unit.Units.PERCENT;
            KELVIN_DIFFERENCE = own(KELVIN);
            FAHRENHEIT_DIFFERENCE = KELVIN_DIFFERENCE.multiply(5).divide(9);
            WATT_PER_METRE = own(WATT.divide(METRE));
            WATT_PER_FOOT = WATT_PER_METRE.multiply(10_000).divide(3_048);
            WATT_PER_SQUARE_METRE = own(WATT.divide(SQUARE_METRE));
            WATT_PER_SQUARE_FOOT = WATT_PER_SQUARE_METRE.multiply(100_000_000).divide(9_290_304);
            WATT_PER_METRE_KELVIN = own(WATT.divide(METRE.multiply(KELVIN)));
            SQUARE_METRE_KELVIN_PER_WATT = own(SQUARE_METRE.multiply(KELVIN).divide(WATT));
            WATT_PER_SQUARE_METRE_KELVIN = own(WATT.divide(SQUARE_METRE.multiply(KELVIN)));
            WATT_PER_KELVIN = own(WATT.divide(KELVIN));
            OHM_PER_METRE = own(OHM.divide(METRE));
            FARAD_PER_METRE = own(FARAD.divide(METRE));
            PICOFARAD_PER_METRE = own(PICO(FARAD).divide(METRE));
            ONE_PER_KELVIN = own(AbstractUnit.ONE.divide(KELVIN));
            KILOGRAM_PER_CUBIC_METRE = own(KILOGRAM.divide(CUBIC_METRE));
            KILOGRAM_PER_LITRE = KILOGRAM_PER_CUBIC_METRE.multiply(1_000);
            KILOGRAM_PER_SQUARE_METRE = own(KILOGRAM.divide(SQUARE_METRE));
            CUBIC_METRE_PER_SQUARE_METRE = own(CUBIC_METRE.divide(SQUARE_METRE));
            LITRE_PER_SQUARE_METRE = CUBIC_METRE_PER_SQUARE_METRE.divide(1_000);
            JOULE_PER_KILOGRAM_KELVIN = own(JOULE.divide(KILOGRAM.multiply(KELVIN)));
            Amounts.of(1.0, MICRO(METRE)).to(INCH);
        } finally {
            thread.setContextClassLoader(before);
        }
    }

    private Units() {}

    private static <Q extends Quantity<Q>> Unit<Q> own(Unit<?> unit) {
        if (unit instanceof ProductUnit<?>) {
            return new ProductUnit<Q>(unit);
        }
        // A base unit serves two kinds of quantity; the unit library does not tell them apart at run time.
        @SuppressWarnings("unchecked")
        Unit<Q> typed = (Unit<Q>) unit;
        return typed;
    }
}
