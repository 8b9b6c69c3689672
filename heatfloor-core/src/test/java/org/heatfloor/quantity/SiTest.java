package org.heatfloor.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SiTest {

    @Test
    void converts_to_the_unit_asked_for() {
        assertThat(Si.in("pitch", Amounts.millimetres(34), Units.METRE)).isEqualTo(0.034);
        assertThat(Si.kelvin("air", Amounts.of(0, Units.CELSIUS))).isEqualTo(273.15);
    }

    @Test
    void a_wrong_dimension_behind_an_unchecked_type_is_caught() {
        @SuppressWarnings({"unchecked", "rawtypes"})
        Quantity<Length> smuggled = (Quantity) Amounts.kilograms(3);

        assertThatThrownBy(() -> Si.in("wall length", smuggled, Units.METRE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("wall length: 3 kg was given; a quantity convertible to m is expected");
    }

    @Test
    void own_kinds_are_dimension_checked_too() {
        @SuppressWarnings({"unchecked", "rawtypes"})
        Quantity<LinearPower> smuggled = (Quantity) Amounts.watts(3);

        assertThatThrownBy(() -> Si.in("linear power", smuggled, Units.WATT_PER_METRE))
                .hasMessageContaining("linear power: 3 W was given; a quantity convertible to W/m is expected");
    }

    @Test
    void guards_name_argument_value_and_limit() {
        assertThatThrownBy(() -> Si.positive("pitch", Amounts.millimetres(0), Units.METRE))
                .hasMessage("pitch: 0 mm was given; more than 0 m is expected");
        assertThatThrownBy(() -> Si.notNegative("clearance", Amounts.millimetres(-1), Units.METRE))
                .hasMessage("clearance: -1 mm was given; 0 m or more is expected");
        assertThatThrownBy(() -> Si.kelvin("air", Amounts.of(-300, Units.CELSIUS)))
                .hasMessageContaining("air: -300 ℃ was given; more than 0 K is expected");
        assertThat(Si.notNegative("clearance", Amounts.millimetres(0), Units.METRE))
                .isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void nothing_that_is_not_finite_becomes_a_quantity(double value) {
        assertThatThrownBy(() -> Amounts.metres(value))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a finite number is expected");
    }
}
