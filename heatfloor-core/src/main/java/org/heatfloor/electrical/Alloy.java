package org.heatfloor.electrical;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.LinearResistance;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.TemperatureCoefficient;
import org.heatfloor.quantity.Units;

/**
 * What a conductor's core is made of, as far as its resistance asks: {@code R = R₂₀·[1 + α·(T − 20 °C)]}. Two sets of
 * figures for copper are kept apart, {@code copper, annealed} (the electrical grade) and {@code copper, pure}; the name
 * says which a calculation uses.
 *
 * @param name the name
 * @param linearResistanceOfSquareMillimetre resistance of a metre of 1 mm² at 20 °C
 * @param temperatureCoefficient {@code α}, referred to 20 °C, −0.01 to 0.01 per kelvin
 * @param source what the figures rest on
 */
public record Alloy(
        String name,
        Quantity<LinearResistance> linearResistanceOfSquareMillimetre,
        Quantity<TemperatureCoefficient> temperatureCoefficient,
        Source source) {

    private static final List<Alloy> KNOWN =
            Csv.read("alloys.csv").stream().map(Alloy::read).toList();

    /**
     * Checks the figures.
     *
     * @param name the name
     * @param linearResistanceOfSquareMillimetre resistance of a metre of 1 mm² at 20 °C
     * @param temperatureCoefficient {@code α}, referred to 20 °C, −0.01 to 0.01 per kelvin
     * @param source what the figures rest on
     * @throws IllegalArgumentException if the name is blank, the resistance is not above 0 or the coefficient is out of
     *     range
     */
    public Alloy {
        Objects.requireNonNull(source, "source");
        if (name.isBlank()) {
            throw new IllegalArgumentException("alloy name: blank; a name is expected");
        }
        Si.positive("alloy resistance", linearResistanceOfSquareMillimetre, Units.OHM_PER_METRE);
        Si.within("temperature coefficient", temperatureCoefficient, Units.ONE_PER_KELVIN, -0.01, 0.01);
    }

    /**
     * An alloy from the table.
     *
     * @param name {@code copper, annealed}, {@code CuNi44}, {@code nichrome 80/20} …
     * @return the alloy
     * @throws IllegalArgumentException if it is not in the table; the message lists the names
     */
    public static Alloy of(String name) {
        return KNOWN.stream()
                .filter(alloy -> alloy.name.equals(name))
                .findFirst()
                .orElseThrow(() -> {
                    List<String> names = KNOWN.stream().map(Alloy::name).toList();
                    return new IllegalArgumentException(
                            "alloy: '" + name + "' was given; one of " + names + " is expected");
                });
    }

    /**
     * Every alloy of the table.
     *
     * @return the alloys
     */
    public static List<Alloy> all() {
        return KNOWN;
    }

    /**
     * Resistance at a temperature.
     *
     * @param at20 resistance at 20 °C, above 0
     * @param temperature temperature of the core, −60 °C to 250 °C
     * @return the resistance
     * @throws IllegalArgumentException if a figure is out of range
     */
    public Quantity<ElectricResistance> resistanceAt(
            Quantity<ElectricResistance> at20, Quantity<Temperature> temperature) {
        double ohms = Si.positive("resistance at 20 °C", at20, Units.OHM);
        return Amounts.ohms(Ohm.atTemperature(ohms, perKelvin(), above20(temperature)));
    }

    /**
     * Resistance at 20 °C from a reading: {@code R₂₀ = R/[1 + α·(T − 20 °C)]}.
     *
     * @param reading resistance read, above 0
     * @param temperature temperature of the core when read, −60 °C to 250 °C
     * @return the resistance at 20 °C
     * @throws IllegalArgumentException if a figure is out of range
     */
    public Quantity<ElectricResistance> resistanceAt20(
            Quantity<ElectricResistance> reading, Quantity<Temperature> temperature) {
        double ohms = Si.positive("resistance reading", reading, Units.OHM);
        return Amounts.ohms(ohms / Ohm.atTemperature(1, perKelvin(), above20(temperature)));
    }

    /**
     * Resistance of a wire at 20 °C, {@code R = ρ·L/A}.
     *
     * @param length its length, above 0
     * @param diameter its diameter, above 0
     * @return the resistance
     * @throws IllegalArgumentException if a figure is not above 0
     */
    public Quantity<ElectricResistance> resistanceOfWire(Quantity<Length> length, Quantity<Length> diameter) {
        double millimetres = Si.positive("diameter", diameter, Units.MILLIMETRE);
        double squareMillimetres = Math.PI / 4 * millimetres * millimetres;
        return Amounts.ohms(ohmsPerMetre() * Si.positive("length", length, Units.METRE) / squareMillimetres);
    }

    /**
     * The temperature coefficient from two readings of one conductor, {@code α = (R₂/R₁ − 1)/(T₂ − T₁)}, referred to the
     * first temperature.
     *
     * @param r1 resistance at the first temperature, above 0
     * @param t1 first temperature
     * @param r2 resistance at the second temperature, above 0
     * @param t2 second temperature, at least 0.1 K away
     * @return the coefficient
     * @throws IllegalArgumentException if a resistance is not above 0 or the temperatures coincide
     */
    public static Quantity<TemperatureCoefficient> coefficientFrom(
            Quantity<ElectricResistance> r1,
            Quantity<Temperature> t1,
            Quantity<ElectricResistance> r2,
            Quantity<Temperature> t2) {
        double kelvin1 = Si.kelvin("first temperature", t1);
        double kelvin2 = Si.kelvin("second temperature", t2);
        if (!(Math.abs(kelvin2 - kelvin1) >= 0.1)) {
            throw new IllegalArgumentException(
                    "temperatures: " + t1 + " and " + t2 + " were given; 0.1 K or more between them is expected");
        }
        return Amounts.of(
                Ohm.coefficient(
                        Si.positive("first resistance", r1, Units.OHM),
                        kelvin1,
                        Si.positive("second resistance", r2, Units.OHM),
                        kelvin2),
                Units.ONE_PER_KELVIN);
    }

    double perKelvin() {
        return Si.in("temperature coefficient", temperatureCoefficient, Units.ONE_PER_KELVIN);
    }

    private double ohmsPerMetre() {
        return Si.in("alloy resistance", linearResistanceOfSquareMillimetre, Units.OHM_PER_METRE);
    }

    private static double above20(Quantity<Temperature> temperature) {
        return Si.within("temperature", temperature, Units.CELSIUS, -60, 250) - 20;
    }

    private static Alloy read(Csv.Row row) {
        // 1e-8 Ω·m is 0.01 Ω·mm²/m.
        return new Alloy(
                row.text("name"),
                Amounts.of(row.number("resistivity") / 100, Units.OHM_PER_METRE),
                Amounts.of(row.number("perKelvin"), Units.ONE_PER_KELVIN),
                Provenance.source(
                        row.text("provenance"), row.text("source"), "resistivity and coefficient at 20 °C", "alloy"));
    }
}
