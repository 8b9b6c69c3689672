package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * The size of a copper conductor: a nominal cross-section such as {@code 2.5 mm²} (IEC 60228) or a gauge such as
 * {@code 12 AWG}. A gauge is a size, not a length. Two sizes are equal when they are the same standard size, however
 * written: {@code 3.31 mm²} is {@code 12 AWG}.
 */
public final class ConductorSize {

    private static final List<ConductorSize> KNOWN = known();
    private static final Pattern GAUGE = Pattern.compile("(\\d{1,3}) AWG");

    private final String name;
    private final double squareMillimetres;
    private final boolean gauge;

    private ConductorSize(String name, double squareMillimetres, boolean gauge) {
        this.name = name;
        this.squareMillimetres = squareMillimetres;
        this.gauge = gauge;
    }

    /**
     * A size from text.
     *
     * @param text {@code "2.5 mm²"} or {@code "12 AWG"}; metric 0.5 to 16 mm², gauges 18 to 4 (even numbers)
     * @return the size
     * @throws IllegalArgumentException if the text is neither, or the size or gauge is not a known one; the message lists
     *     those that are
     */
    public static ConductorSize of(String text) {
        Matcher matcher = GAUGE.matcher(text);
        if (matcher.matches()) {
            return ofGauge(Integer.parseInt(matcher.group(1)));
        }
        if (text.endsWith("AWG")) {
            throw new IllegalArgumentException("conductor size: '" + text + "' was read; one of " + names(true)
                    + " is expected (a gauge is a whole number, space, AWG)");
        }
        Quantity<Area> area;
        try {
            area = QuantityText.read(text, Units.SQUARE_MILLIMETRE);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "conductor size: '" + text + "' was read; a size such as '2.5 mm²' or '12 AWG' is expected", e);
        }
        return of(area);
    }

    /**
     * A size from a cross-section.
     *
     * @param crossSection a standard metric size, or the cross-section of a gauge to within 0.5 %
     * @return the size
     * @throws IllegalArgumentException if it is neither; the message lists the sizes
     */
    public static ConductorSize of(Quantity<Area> crossSection) {
        double mm2 = Si.positive("conductor size", crossSection, Units.SQUARE_MILLIMETRE);
        for (ConductorSize each : KNOWN) {
            double tolerance = each.gauge ? 5e-3 : 1e-9;
            if (Math.abs(mm2 / each.squareMillimetres - 1) <= tolerance) {
                return each;
            }
        }
        throw new IllegalArgumentException("conductor size: " + QuantityText.write(crossSection, 4)
                + " was given; one of " + names(false) + ", " + names(true) + " is expected");
    }

    /**
     * A size from an American wire gauge number.
     *
     * @param number 18, 16, 14, 12, 10, 8, 6 or 4
     * @return the size
     * @throws IllegalArgumentException if the gauge is not one of these
     */
    public static ConductorSize ofGauge(int number) {
        for (ConductorSize each : KNOWN) {
            if (each.name.equals(number + " AWG")) {
                return each;
            }
        }
        throw new IllegalArgumentException(
                "conductor size: " + number + " AWG was given; one of " + names(true) + " is expected");
    }

    /**
     * Nominal cross-section. For a gauge {@code π/4·d²} with {@code d = 0.127 mm · 92^((36 − n)/39)} (definition of the
     * gauge, ASTM B258, from memory; agrees with the circular-mil figures of T. R. Kuphaldt, Lessons in Electric
     * Circuits, vol. I, ch. 12).
     *
     * @return the cross-section
     */
    public Quantity<Area> crossSection() {
        return Amounts.of(squareMillimetres, Units.SQUARE_MILLIMETRE);
    }

    /**
     * Whether the size is a gauge number.
     *
     * @return true for AWG sizes, false for metric sizes
     */
    public boolean isGauge() {
        return gauge;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ConductorSize size && size.name.equals(name);
    }

    @Override
    public int hashCode() {
        return name.hashCode();
    }

    /** The size as the trade writes it, {@code 2.5 mm²} or {@code 12 AWG}. */
    @Override
    public String toString() {
        return name;
    }

    double squareMillimetres() {
        return squareMillimetres;
    }

    private static List<ConductorSize> known() {
        List<ConductorSize> sizes = new ArrayList<>();
        for (double mm2 : new double[] {0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16}) {
            sizes.add(new ConductorSize(QuantityText.number(mm2, 2) + " mm²", mm2, false));
        }
        for (int n = 18; n >= 4; n -= 2) {
            double millimetres = 0.127 * Math.pow(92, (36 - n) / 39.0);
            sizes.add(new ConductorSize(n + " AWG", Math.PI / 4 * millimetres * millimetres, true));
        }
        return List.copyOf(sizes);
    }

    private static List<String> names(boolean gauges) {
        return KNOWN.stream()
                .filter(size -> size.gauge == gauges)
                .map(ConductorSize::toString)
                .toList();
    }
}
