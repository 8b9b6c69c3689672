package org.heatfloor.quantity;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Reads and writes quantities as text, the same in every locale.
 *
 * <p>Grammar: {@code quantity = amount " " unit { " " amount " " unit }} with {@code amount = integer | decimal | integer
 * "/" integer | integer " " integer "/" integer}; the decimal sign is a point, there is no grouping and no exponent, and
 * more than one part is allowed for feet and inches only. Examples: {@code 34 mm}, {@code 7 ft 10 1/2 in}, {@code 3/16
 * in}, {@code 1.3 W/(m·K)}, {@code 21 °C}.
 */
public final class QuantityText {

    private static final int MAX_LENGTH = 64;
    private static final int MOST_DECIMALS = 9;
    private static final String AMOUNT =
            "(-?(?:\\d{1,12}\\.\\d{1,12}|\\d{1,12} \\d{1,6}/\\d{1,6}|\\d{1,6}/\\d{1,6}|\\d{1,12}))";
    private static final Pattern SINGLE = Pattern.compile(AMOUNT + " (\\S+)");
    private static final Pattern FEET_INCHES = Pattern.compile("(\\d{1,9}) ft " + AMOUNT + " in");
    private static final Map<String, Unit<?>> SYMBOLS = symbols();
    private static final Map<Unit<?>, String> NAMES = names();

    private QuantityText() {}

    /**
     * Reads a quantity.
     *
     * @param <Q> the kind of quantity
     * @param text the text
     * @param expected a unit of the dimension expected; the result keeps the unit written
     * @return the quantity, in the unit written (feet and inches together become inches)
     * @throws IllegalArgumentException if the text does not follow the grammar, the unit is unknown or its dimension is
     *     not the one expected; the message names what was read and what was expected
     */
    public static <Q extends Quantity<Q>> Quantity<Q> read(String text, Unit<Q> expected) {
        if (text.length() > MAX_LENGTH) {
            throw new IllegalArgumentException(
                    "a quantity of at most " + MAX_LENGTH + " characters is expected, " + text.length() + " were read");
        }
        Matcher both = FEET_INCHES.matcher(text);
        if (both.matches()) {
            double inches = amount(text, both.group(2));
            if (!(inches >= 0 && inches < 12)) {
                throw fault(text, "feet and inches with the inches from 0 to less than 12");
            }
            return typed(text, Double.parseDouble(both.group(1)) * 12 + inches, Units.INCH, expected);
        }
        Matcher single = SINGLE.matcher(text);
        if (!single.matches()) {
            throw fault(
                    text,
                    "number, space, unit (point as decimal sign, no exponent), such as '34 mm' or '7 ft 10 1/2 in',");
        }
        Unit<?> unit = SYMBOLS.get(single.group(2));
        if (unit == null) {
            throw fault(text, "a known unit in place of '" + single.group(2) + "', such as " + name(expected) + ",");
        }
        return typed(text, amount(text, single.group(1)), unit, expected);
    }

    /**
     * Writes a quantity with at most so many decimals, trailing zeros dropped.
     *
     * @param quantity the quantity
     * @param decimals the decimals, 0 to 9
     * @return number, space, unit
     * @throws IllegalArgumentException if decimals is out of range
     */
    public static String write(Quantity<?> quantity, int decimals) {
        return number(quantity.getValue().doubleValue(), decimals) + " " + name(quantity.getUnit());
    }

    /**
     * Writes two numbers with as many decimals as tell them apart: 33.04 and 33.00, and not twice 33.0.
     *
     * @param value a number
     * @param other another one
     * @param decimals how many decimals at least, 0 to 9
     * @return the two texts; with nine decimals where even these do not tell them apart
     * @throws IllegalArgumentException if decimals is out of range
     */
    public static List<String> apart(double value, double other, int decimals) {
        if (decimals < 0 || decimals > MOST_DECIMALS) {
            throw new IllegalArgumentException("decimals: " + decimals + " was given; 0 to 9 is expected");
        }
        List<String> texts = List.of(fixed(value, decimals), fixed(other, decimals));
        boolean same = texts.get(0).equals(texts.get(1));
        return same && decimals < MOST_DECIMALS ? apart(value, other, decimals + 1) : texts;
    }

    private static String fixed(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0+)?") ? text.substring(1) : text;
    }

    /**
     * Writes a number with at most so many decimals, trailing zeros dropped, with a point in every locale.
     *
     * @param value the number
     * @param decimals the decimals, 0 to 9
     * @return the text
     * @throws IllegalArgumentException if decimals is out of range
     */
    public static String number(double value, int decimals) {
        if (decimals < 0 || decimals > MOST_DECIMALS) {
            throw new IllegalArgumentException("decimals: " + decimals + " was given; 0 to 9 is expected");
        }
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        if (decimals > 0) {
            int end = text.length();
            while (text.charAt(end - 1) == '0') {
                end--;
            }
            text = text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
        }
        return text.equals("-0") ? "0" : text;
    }

    /**
     * The symbol of a unit as this class reads and writes it.
     *
     * @param unit the unit
     * @return the symbol
     */
    public static String name(Unit<?> unit) {
        String name = NAMES.get(unit);
        return name == null ? unit.toString() : name;
    }

    private static <Q extends Quantity<Q>> Quantity<Q> typed(
            String text, double value, Unit<?> unit, Unit<Q> expected) {
        if (!unit.getDimension().equals(expected.getDimension())) {
            throw fault(text, "a quantity in " + name(expected) + " or a unit like it");
        }
        // The dimension was compared, and every unit of one dimension in the table is of one quantity type.
        @SuppressWarnings("unchecked")
        Unit<Q> typed = (Unit<Q>) unit;
        return Amounts.of(value, typed);
    }

    private static double amount(String text, String amount) {
        int slash = amount.indexOf('/');
        if (slash < 0) {
            return Double.parseDouble(amount);
        }
        boolean negative = amount.startsWith("-");
        int space = amount.indexOf(' ');
        double whole = space < 0 ? 0 : Double.parseDouble(amount.substring(negative ? 1 : 0, space));
        int from = space < 0 ? (negative ? 1 : 0) : space + 1;
        double above = Double.parseDouble(amount.substring(from, slash));
        double below = Double.parseDouble(amount.substring(slash + 1));
        if (below == 0) {
            throw fault(text, "a fraction with a denominator other than 0");
        }
        double value = whole + above / below;
        return negative ? -value : value;
    }

    private static IllegalArgumentException fault(String text, String expectation) {
        return new IllegalArgumentException("'" + text + "' was read; " + expectation + " is expected");
    }

    private static Map<String, Unit<?>> symbols() {
        Map<String, Unit<?>> m = new LinkedHashMap<>();
        m.put("mm", Units.MILLIMETRE);
        m.put("cm", Units.CENTIMETRE);
        m.put("m", Units.METRE);
        m.put("in", Units.INCH);
        m.put("ft", Units.FOOT);
        m.put("m²", Units.SQUARE_METRE);
        m.put("mm²", Units.SQUARE_MILLIMETRE);
        m.put("ft²", Units.SQUARE_FOOT);
        m.put("m³", Units.CUBIC_METRE);
        m.put("L", Units.LITRE);
        m.put("cm³", Units.CUBIC_CENTIMETRE);
        m.put("in³", Units.CUBIC_INCH);
        m.put("ft³", Units.CUBIC_FOOT);
        m.put("kg", Units.KILOGRAM);
        m.put("lb", Units.POUND);
        m.put("s", Units.SECOND);
        m.put("min", Units.MINUTE);
        m.put("h", Units.HOUR);
        m.put("d", Units.DAY);
        m.put("W", Units.WATT);
        m.put("kW", Units.KILOWATT);
        m.put("J", Units.JOULE);
        m.put("kWh", Units.KILOWATT_HOUR);
        m.put("V", Units.VOLT);
        m.put("A", Units.AMPERE);
        m.put("mA", Units.MILLIAMPERE);
        m.put("Ω", Units.OHM);
        m.put("kΩ", Units.KILOOHM);
        m.put("MΩ", Units.MEGAOHM);
        m.put("GΩ", Units.GIGAOHM);
        m.put("nF", Units.NANOFARAD);
        m.put("Hz", Units.HERTZ);
        m.put("K", Units.KELVIN_DIFFERENCE);
        m.put("°C", Units.CELSIUS);
        m.put("°F", Units.FAHRENHEIT);
        m.put("°", Units.DEGREE);
        m.put("rad", Units.RADIAN);
        m.put("%", Units.PERCENT);
        m.put("W/m", Units.WATT_PER_METRE);
        m.put("W/ft", Units.WATT_PER_FOOT);
        m.put("W/m²", Units.WATT_PER_SQUARE_METRE);
        m.put("W/ft²", Units.WATT_PER_SQUARE_FOOT);
        m.put("W/(m·K)", Units.WATT_PER_METRE_KELVIN);
        m.put("m²·K/W", Units.SQUARE_METRE_KELVIN_PER_WATT);
        m.put("W/(m²·K)", Units.WATT_PER_SQUARE_METRE_KELVIN);
        m.put("W/K", Units.WATT_PER_KELVIN);
        m.put("Ω/m", Units.OHM_PER_METRE);
        m.put("pF/m", Units.PICOFARAD_PER_METRE);
        m.put("1/K", Units.ONE_PER_KELVIN);
        m.put("kg/m³", Units.KILOGRAM_PER_CUBIC_METRE);
        m.put("kg/L", Units.KILOGRAM_PER_LITRE);
        m.put("kg/m²", Units.KILOGRAM_PER_SQUARE_METRE);
        m.put("L/m²", Units.LITRE_PER_SQUARE_METRE);
        m.put("J/(kg·K)", Units.JOULE_PER_KILOGRAM_KELVIN);
        return Map.copyOf(m);
    }

    private static Map<Unit<?>, String> names() {
        Map<Unit<?>, String> m = new HashMap<>();
        symbols().forEach((symbol, unit) -> m.put(unit, symbol));
        m.put(Units.KELVIN, "K");
        m.put(Units.ONE, "1");
        return m;
    }
}
