package org.heatfloor.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Worked examples of codes, textbooks and trade lessons; each row carries where it comes from. */
class WorkedExamplesTest {

    @ParameterizedTest(name = "{0} {1} {2}")
    @CsvFileSource(resources = "worked-examples.csv", delimiter = ';', numLinesToSkip = 1)
    void agrees(
            String id,
            String kind,
            String inputs,
            double expected,
            double tolerance,
            String source,
            String provenance) {
        assertThat(source).isNotBlank();
        assertThat(provenance).isIn("published", "computed by us");
        assertThat(value(kind, new Given(inputs))).as("%s (%s)", id, source).isCloseTo(expected, within(tolerance));
    }

    private static double value(String kind, Given in) {
        return switch (kind) {
            case "circuitCurrent" -> Given.in(in.design().circuits().get(0).current(), Units.AMPERE);
            case "designCurrent" -> Given.in(in.design().circuits().get(0).designCurrent(), Units.AMPERE);
            case "device" ->
                Given.in(in.design().circuits().get(0).protectiveDevice().orElseThrow(), Units.AMPERE);
            case "leastConductor" -> leastConductor(in);
            case "resistance" ->
                Given.in(Cables.twin("x", 10, in.number(0), in.number(1)).resistance(), Units.OHM);
            case "currentAt" -> Given.in(rating(in).current().nominal(), Units.AMPERE);
            case "powerAt" -> Given.in(rating(in).power().nominal(), Units.WATT);
            case "percentAt" -> {
                CableRating rating =
                        CableRating.of(Cables.twin("x", 10, 1000, in.number(0)), Amounts.volts(in.number(1)));
                yield Given.in(rating.power().nominal(), Units.WATT) / 10;
            }
            case "ohmPower" -> Ohm.power(in.number(0), in.number(1));
            case "ohmCurrent" -> Ohm.power(in.number(0), in.number(1)) / in.number(0);
            case "ohmMilliamperes" -> 1000 * in.number(0) / in.number(1);
            case "parallelOhms" -> Ohm.parallel(in.numbersFrom(0));
            case "parallelMilliamperes" -> 1000 * in.number(0) / Ohm.parallel(in.numbersFrom(1));
            case "wireLength" -> in.number(2) / wire(in.number(0), 1, in.number(1));
            case "wireOhmsCircularMil" -> circularMil(in);
            case "wireVoltsCircularMil" -> circularMil(in) * in.number(3);
            case "atTemperature" -> Ohm.atTemperature(in.number(0), in.number(1), in.number(2));
            case "copperAt" -> copper(in.number(0), in.number(1));
            case "dividedVoltage" ->
                in.number(0) * in.number(1) / (in.number(1) + 2 * copper(in.number(2), in.number(3)));
            case "wireVoltage" -> {
                double wire = copper(in.number(2), in.number(3));
                yield in.number(0) * wire / (in.number(1) + 2 * wire);
            }
            case "coefficient" ->
                Given.in(
                        Alloy.coefficientFrom(
                                Amounts.ohms(in.number(0)),
                                Amounts.celsius(in.number(1)),
                                Amounts.ohms(in.number(2)),
                                Amounts.celsius(in.number(3))),
                        Units.ONE_PER_KELVIN);
            case "dropKilofoot" -> kilofoot(in);
            case "dropKilofootPercent" -> 100 * kilofoot(in) / in.number(3);
            case "dropSquareMillimetre" -> squareMillimetre(in);
            case "dropSquareMillimetrePercent" -> 100 * squareMillimetre(in) / in.number(4);
            case "codeDrop" ->
                Given.in(
                        in.code(0).voltageDrop(in.size(1), Amounts.metres(in.number(2)), Amounts.amperes(in.number(3))),
                        Units.VOLT);
            case "codeDropLimit" ->
                in.number(1)
                        * Given.in(
                                in.code(0)
                                        .rule(RuleTopic.VOLTAGE_DROP)
                                        .orElseThrow()
                                        .limit(Units.ONE),
                                Units.ONE);
            case "correctedAmpacity" -> Given.in(ampacity(in).corrected(), Units.AMPERE);
            case "greatestDevice" -> Given.in(ampacity(in).greatestDevice().orElseThrow(), Units.AMPERE);
            case "boxFill" -> Given.in(in.box(100).required(), Units.CUBIC_INCH);
            case "boxFits" -> in.box(in.number(5)).fits() ? 1 : 0;
            case "leakageMicroamperes" -> 1e6 * Leakage.amperes(in.number(0), in.number(1) * 1e-9, in.number(2));
            case "leakageLimitMilliamperes" ->
                Given.in(
                        LeakageBudget.of(
                                        Cables.supply(in.text(0), 230, 10, "2.5 mm²"),
                                        List.of(Cables.twin("x", 50, 500, 230)),
                                        LeakageBudget.USUAL_CAPACITANCE.nominal())
                                .limit(),
                        Units.MILLIAMPERE);
            default -> throw new IllegalStateException("kind " + kind);
        };
    }

    private static double leastConductor(Given in) {
        assertThat(in.design().circuits().get(0).protectiveDevice()).isEmpty();
        String message = in.design().findings().stream()
                .filter(finding -> finding.isError())
                .findFirst()
                .orElseThrow()
                .message();
        int end = message.indexOf(" AWG would carry it");
        return Double.parseDouble(message.substring(message.lastIndexOf(' ', end - 1) + 1, end));
    }

    private static CableRating rating(Given in) {
        return CableRating.of(Cables.twin("x", 10, in.number(0), in.number(1)), Amounts.volts(in.number(2)));
    }

    private static Ampacity ampacity(Given in) {
        return in.code(0).ampacity(in.size(1), in.text(2), Amounts.celsius(in.number(3)), 1);
    }

    private static double wire(double resistivity, double metres, double millimetres) {
        Alloy alloy = new Alloy(
                "example",
                Amounts.of(resistivity / 100, Units.OHM_PER_METRE),
                Amounts.of(0, Units.ONE_PER_KELVIN),
                Source.derived("example"));
        return Given.in(alloy.resistanceOfWire(Amounts.metres(metres), Amounts.millimetres(millimetres)), Units.OHM);
    }

    /** Resistivity in Ω·cmil/ft (1.66243e-9 Ω·m), length in feet, area in circular mils. */
    private static double circularMil(Given in) {
        return wire(in.number(0) * 0.166243, in.number(1) * 0.3048, Math.sqrt(in.number(2)) * 0.0254);
    }

    private static double copper(double ohms, double celsius) {
        return Given.in(Alloy.of("copper, pure").resistanceAt(Amounts.ohms(ohms), Amounts.celsius(celsius)), Units.OHM);
    }

    private static double kilofoot(Given in) {
        return Ohm.twoWireDrop(in.number(0) / 304.8, in.number(1) * 0.3048, in.number(2));
    }

    private static double squareMillimetre(Given in) {
        return Ohm.twoWireDrop(in.number(0) / in.number(1), in.number(2) * 0.3048, in.number(3));
    }

    @ParameterizedTest(name = "{0} W at {1} V is {2} Ω")
    @CsvFileSource(resources = "rated-resistance.csv", delimiter = ';', numLinesToSkip = 1)
    void ratedResistance(double watts, double volts, double ohms, String source, String provenance) {
        assertThat(source).isNotBlank();
        assertThat(provenance).isIn("published", "computed by us");
        assertThat(Given.in(Cables.twin("x", 50, watts, volts).resistance(), Units.OHM))
                .isCloseTo(ohms, within(0.0051));
    }

    @ParameterizedTest(name = "{0} V on a cable for {1} V: {2}")
    @CsvFileSource(resources = "voltage-factors.csv", delimiter = ';', numLinesToSkip = 1)
    void powerOnAnotherSupply(double applied, double rated, double factor, String source, String provenance) {
        assertThat(source).isNotBlank();
        assertThat(provenance).isIn("published", "computed by us");
        CableRating rating = CableRating.of(Cables.twin("x", 50, 1000, rated), Amounts.volts(applied));
        assertThat(Given.in(rating.power().nominal(), Units.WATT) / 1000).isCloseTo(factor, within(5.1e-5));
    }

    /** Stacked tolerances, from −5 % / +10 % on the resistance (from memory): own arithmetic against the library's. */
    @ParameterizedTest(name = "±{0} %: {1} to {2}")
    @org.junit.jupiter.params.provider.CsvSource({"0,0.9091,1.0526", "5,0.8205,1.1605", "10,0.7364,1.2737"})
    void stackedTolerances(double percent, double low, double high) {
        SupplyTolerance tolerance = new SupplyTolerance(
                "test", Amounts.of(percent, Units.PERCENT), Amounts.of(percent, Units.PERCENT), Source.derived("test"));
        CableRating rating = CableRating.of(
                Cables.twin("x", 50, 1000, 230), Amounts.volts(230), ResistanceTolerance.USUAL, tolerance);
        assertThat(Given.in(rating.power().low(), Units.WATT) / 1000).isCloseTo(low, within(5.1e-5));
        assertThat(Given.in(rating.power().high(), Units.WATT) / 1000).isCloseTo(high, within(5.1e-5));
    }
}
