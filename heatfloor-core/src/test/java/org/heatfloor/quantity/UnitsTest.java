package org.heatfloor.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.URL;
import java.net.URLClassLoader;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class UnitsTest {

    @ParameterizedTest(name = "1 {0} = {1} {2}")
    @CsvFileSource(resources = "/org/heatfloor/quantity/unit-definitions.csv", numLinesToSkip = 1)
    void a_unit_is_what_its_definition_says(String symbol, double value, String si, String source) throws Exception {
        assertThat(source).isNotBlank();
        assertThat(converted(1, symbol, si)).isCloseTo(value, within(1e-15 * Math.abs(value)));
    }

    @Test
    void inches_and_feet_are_exact_to_the_last_digit() {
        assertThat(Si.in("a", Amounts.inches(1), Units.MILLIMETRE)).isEqualTo(25.4);
        assertThat(Si.in("a", Amounts.feet(1), Units.METRE)).isEqualTo(0.3048);
        assertThat(Si.in("a", Amounts.feet(5280), Units.METRE)).isEqualTo(1609.344);
        assertThat(Si.in("a", Amounts.of(1, Units.POUND), Units.KILOGRAM)).isEqualTo(0.45359237);
    }

    @ParameterizedTest(name = "{0} °F = {1} °C")
    @CsvSource({"32, 0", "212, 100", "77, 25", "-40, -40", "86, 30", "98.6, 37"})
    void fahrenheit_and_celsius_meet_at_the_fixed_points(double fahrenheit, double celsius) {
        assertThat(Amounts.of(fahrenheit, Units.FAHRENHEIT)
                        .to(Units.CELSIUS)
                        .getValue()
                        .doubleValue())
                .isCloseTo(celsius, within(1e-9));
        assertThat(Amounts.of(celsius, Units.CELSIUS)
                        .to(Units.FAHRENHEIT)
                        .getValue()
                        .doubleValue())
                .isCloseTo(fahrenheit, within(1e-9));
    }

    @Test
    void a_difference_of_nine_degrees_fahrenheit_is_five_kelvins_without_any_zero_point() {
        assertThat(Si.in("rise", Amounts.of(9, Units.FAHRENHEIT_DIFFERENCE), Units.KELVIN_DIFFERENCE))
                .isCloseTo(5, within(1e-12));
        assertThat(Si.in("rise", Amounts.kelvins(9), Units.KELVIN_DIFFERENCE)).isEqualTo(9);
    }

    @Test
    void an_r_value_of_one_in_us_units_follows_from_the_units() {
        // 1 h·ft²·°F/Btu with the International Table Btu of 1055.05585262 J: 0.3048² · 3600 · 5/9 / 1055.05585262.
        double byHand = 0.3048 * 0.3048 * 3600 * 5 / 9 / 1055.05585262;
        assertThat(byHand).isCloseTo(0.1761, within(5e-5));
        assertThat(Si.in(
                        "insulance",
                        Amounts.of(byHand, Units.SQUARE_METRE_KELVIN_PER_WATT),
                        Units.SQUARE_METRE_KELVIN_PER_WATT))
                .isEqualTo(byHand);
    }

    /** A host whose context loader cannot see the unit library: a fresh copy of our classes under such a loader. */
    @Test
    void loads_under_a_context_class_loader_that_sees_nothing() throws Exception {
        List<URL> urls = new ArrayList<>();
        for (String name : List.of(
                "org.heatfloor.quantity.Units",
                "tech.units.indriya.AbstractUnit",
                "javax.measure.Unit",
                "tech.uom.lib.common.function.IntPrioritySupplier",
                "jakarta.inject.Inject")) {
            urls.add(Class.forName(name).getProtectionDomain().getCodeSource().getLocation());
        }
        Thread thread = Thread.currentThread();
        ClassLoader before = thread.getContextClassLoader();
        try (URLClassLoader blind = new URLClassLoader(new URL[0], null);
                URLClassLoader host = new URLClassLoader(urls.toArray(URL[]::new), null)) {
            thread.setContextClassLoader(blind);
            Class<?> text = Class.forName("org.heatfloor.quantity.QuantityText", true, host);
            Class<?> unit = Class.forName("javax.measure.Unit", true, host);
            Class<?> units = Class.forName("org.heatfloor.quantity.Units", true, host);
            Object read = text.getMethod("read", String.class, unit)
                    .invoke(null, "7 ft 10 1/2 in", units.getField("METRE").get(null));
            Object metres = read.getClass()
                    .getMethod("to", unit)
                    .invoke(read, units.getField("METRE").get(null));

            assertThat(units).isNotEqualTo(Units.class);
            assertThat(metres.toString()).startsWith("2.4003").endsWith(" m");
            assertThat(thread.getContextClassLoader()).isSameAs(blind);
        } finally {
            thread.setContextClassLoader(before);
        }
    }

    private static <Q extends Quantity<Q>> double converted(double value, String from, String to) throws Exception {
        @SuppressWarnings("unchecked")
        Unit<Q> source = (Unit<Q>) Units.class.getField(from).get(null);
        @SuppressWarnings("unchecked")
        Unit<Q> target = (Unit<Q>) Units.class.getField(to).get(null);
        return Si.in(from, Amounts.of(value, source), target);
    }
}
