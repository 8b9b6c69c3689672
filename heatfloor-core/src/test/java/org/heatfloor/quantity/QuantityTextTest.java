package org.heatfloor.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTextTest {

    @ParameterizedTest(name = "{0} = {1} mm")
    @CsvSource({
        "34 mm, 34",
        "34.25 mm, 34.25",
        "0 mm, 0",
        "-3 mm, -3",
        "2.4 m, 2400",
        "12 cm, 120",
        "3/16 in, 4.7625",
        "10 1/2 in, 266.7",
        "-1 1/2 in, -38.1",
        "7.5 ft, 2286",
        "7 ft 10 1/2 in, 2400.3",
        "7 ft 0 in, 2133.6",
        "0 ft 11.5 in, 292.1",
        "6 ft 3/4 in, 1847.85"
    })
    void reads_lengths(String text, double millimetres) {
        assertThat(Si.in("length", QuantityText.read(text, Units.METRE), Units.MILLIMETRE))
                .isCloseTo(millimetres, within(1e-9));
    }

    @ParameterizedTest(name = "{0} beside {1}")
    @CsvSource({
        "33.6, 33, 1, 33.6, 33.0",
        "33.04, 33, 1, 33.04, 33.00",
        "2000.2, 2000.4, 0, 2000.2, 2000.4",
        "289.7, 290, 0, 289.7, 290.0",
        "2.8, 2.804, 2, 2.800, 2.804",
        "-0.4, 0, 0, -0.4, 0.0",
        "-0.4, 1, 0, 0, 1",
        "33, 33, 1, 33.000000000, 33.000000000"
    })
    void two_numbers_are_told_apart(double value, double other, int decimals, String text, String otherText) {
        assertThat(QuantityText.apart(value, other, decimals)).containsExactly(text, otherText);
    }

    @Test
    void keeps_the_unit_written() {
        assertThat(QuantityText.write(QuantityText.read("21.5 °C", Units.KELVIN), 2))
                .isEqualTo("21.5 °C");
        assertThat(QuantityText.write(QuantityText.read("1.3 W/(m·K)", Units.WATT_PER_METRE_KELVIN), 2))
                .isEqualTo("1.3 W/(m·K)");
        assertThat(QuantityText.write(QuantityText.read("0.4 m²·K/W", Units.SQUARE_METRE_KELVIN_PER_WATT), 2))
                .isEqualTo("0.4 m²·K/W");
        assertThat(Si.kelvin("air", QuantityText.read("86 °F", Units.CELSIUS))).isCloseTo(303.15, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "34",
                "mm",
                "34mm",
                "34  mm",
                " 34 mm",
                "34 mm ",
                "34 mm\n",
                "12,5 mm",
                "1,000 mm",
                "1e3 mm",
                "1E-3 m",
                ".5 m",
                "5. m",
                "+5 m",
                "--5 m",
                "NaN m",
                "Infinity m",
                "0x10 m",
                "5 furlongs",
                "5 MM",
                "1/0 in",
                "1 /2 in",
                "1/2/3 in",
                "7 ft 12 in",
                "7 ft -1 in",
                "-7 ft 1 in",
                "7 ft 10 in 3 in",
                "7 in 10 ft",
                "7.5 ft 2 in",
                "1 m 20 cm",
                "٣ m",
                "1234567890123 mm"
            })
    void refuses_everything_else_and_says_what_was_read(String text) {
        assertThatThrownBy(() -> QuantityText.read(text, Units.METRE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'" + text + "' was read")
                .hasMessageContaining("expected");
    }

    @Test
    void refuses_a_quantity_of_another_kind() {
        assertThatThrownBy(() -> QuantityText.read("5 kg", Units.METRE))
                .hasMessage("'5 kg' was read; a quantity in m or a unit like it is expected");
        assertThatThrownBy(() -> QuantityText.read("5 W", Units.WATT_PER_METRE))
                .hasMessage("'5 W' was read; a quantity in W/m or a unit like it is expected");
    }

    @Test
    void refuses_overlong_text_without_reading_it() {
        assertThatThrownBy(() -> QuantityText.read("1".repeat(100_000) + " m", Units.METRE))
                .hasMessage("a quantity of at most 64 characters is expected, 100002 were read");
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "fr-FR", "ru-RU", "ar-EG", "hi-IN-u-nu-deva", "tr-TR", "en-US"})
    void reads_and_writes_the_same_under_every_default_locale(String tag) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(Si.in("length", QuantityText.read("12.5 m", Units.METRE), Units.METRE))
                    .isEqualTo(12.5);
            assertThat(Si.in("air", QuantityText.read("0.5 °C", Units.CELSIUS), Units.CELSIUS))
                    .isEqualTo(0.5);
            assertThat(QuantityText.write(Amounts.metres(1234.5), 2)).isEqualTo("1234.5 m");
            assertThat(Amounts.millimetres(12.5)).hasToString("12.5 mm");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void numbers_lose_trailing_zeros_only() {
        assertThat(QuantityText.number(1.50, 3)).isEqualTo("1.5");
        assertThat(QuantityText.number(100, 0)).isEqualTo("100");
        assertThat(QuantityText.number(100, 2)).isEqualTo("100");
        assertThat(QuantityText.number(-0.0001, 2)).isEqualTo("0");
        assertThatThrownBy(() -> QuantityText.number(1, 10)).hasMessage("decimals: 10 was given; 0 to 9 is expected");
    }
}
