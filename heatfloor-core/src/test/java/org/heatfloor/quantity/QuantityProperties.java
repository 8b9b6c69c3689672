package org.heatfloor.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import javax.measure.Unit;
import javax.measure.quantity.Length;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.StringLength;

class QuantityProperties {

    @Property(tries = 500)
    void what_is_written_reads_back(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) @Scale(6) double value, @ForAll("lengths") Unit<Length> unit) {
        String text = QuantityText.write(Amounts.of(value, unit), 6);

        assertThat(QuantityText.read(text, Units.METRE)).isEqualTo(Amounts.of(value + 0.0, unit));
    }

    @Property(tries = 500)
    void a_unit_there_and_back_changes_nothing_visible(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) @Scale(6) double value,
            @ForAll("lengths") Unit<Length> from,
            @ForAll("lengths") Unit<Length> to) {
        double back = Amounts.of(value, from).to(to).to(from).getValue().doubleValue();

        assertThat(back).isCloseTo(value, within(1e-12 * Math.max(1, Math.abs(value))));
    }

    @Property(tries = 500)
    void sixteenths_of_an_inch_are_exact(
            @ForAll @IntRange(max = 300) int feet,
            @ForAll @IntRange(max = 11) int inches,
            @ForAll @IntRange(max = 15) int sixteenths) {
        String text = feet + " ft " + inches + " " + sixteenths + "/16 in";

        assertThat(Si.in("length", QuantityText.read(text, Units.METRE), Units.INCH))
                .isEqualTo(feet * 12 + inches + sixteenths / 16.0);
    }

    @Property(tries = 1_000)
    void no_text_does_more_than_read_or_refuse(@ForAll @StringLength(max = 70) String text) {
        try {
            assertThat(Double.isFinite(
                            QuantityText.read(text, Units.METRE).getValue().doubleValue()))
                    .isTrue();
        } catch (IllegalArgumentException refused) {
            assertThat(refused).hasMessageContaining("expected");
        }
    }

    @Property(tries = 200)
    void a_range_lets_in_what_lies_within_and_names_the_rest(
            @ForAll @DoubleRange(min = -10, max = 10) @Scale(3) double metres) {
        if (metres >= -2 && metres <= 3) {
            assertThat(Si.within("step", Amounts.metres(metres), Units.METRE, -2, 3))
                    .isEqualTo(metres);
        } else {
            assertThatThrownBy(() -> Si.within("step", Amounts.metres(metres), Units.METRE, -2, 3))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageStartingWith("step: ")
                    .hasMessageEndingWith("was given; -2.0 to 3.0 m is expected");
        }
    }

    @Provide
    static Arbitrary<Unit<Length>> lengths() {
        return Arbitraries.of(Units.METRE, Units.MILLIMETRE, Units.CENTIMETRE, Units.INCH, Units.FOOT);
    }
}
