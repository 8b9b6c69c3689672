package org.heatfloor.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;

class ElectricalProperties {

    private static final int TRIES = 300;

    @Provide
    Arbitrary<HeatingCable> cables() {
        return Combinators.combine(
                        Arbitraries.doubles().between(2, 200).ofScale(1),
                        Arbitraries.doubles().between(3, 25).ofScale(1),
                        Arbitraries.of(120.0, 208.0, 230.0, 240.0, 400.0),
                        Arbitraries.of(1, 2))
                .as((metres, perMetre, volts, conductors) -> conductors == 1
                        ? Cables.single("s" + metres, metres, metres * perMetre, volts)
                        : Cables.twin("t" + metres, metres, metres * perMetre, volts));
    }

    @Provide
    Arbitrary<Supply> supplies() {
        return Arbitraries.of(ElectricalCode.all()).flatMap(code -> Combinators.combine(
                        Arbitraries.of(code.conductorSizes()),
                        Arbitraries.of(code.installationMethods()),
                        Arbitraries.doubles().between(-5, 55).ofScale(1),
                        Arbitraries.integers().between(1, 6),
                        Arbitraries.doubles().between(0, 90).ofScale(1))
                .as((size, method, celsius, grouped, metres) -> new Supply(
                        Amounts.volts(code.isNec() ? 240 : 230),
                        code,
                        Amounts.metres(metres),
                        size,
                        Optional.of(method),
                        Optional.of(Amounts.celsius(celsius)),
                        grouped)));
    }

    private static double amperes(Quantity<ElectricCurrent> current) {
        return Given.in(current, Units.AMPERE);
    }

    @Property(tries = TRIES)
    void bandsContainTheirNominalAndWidenWithTheirTolerances(
            @ForAll("cables") HeatingCable cable,
            @ForAll @DoubleRange(min = 0, max = 20) double less,
            @ForAll @DoubleRange(min = 0, max = 20) double more,
            @ForAll @DoubleRange(min = 0, max = 15) double supply) {
        CableRating narrow = rating(cable, Math.min(less, more), 0);
        CableRating wide = rating(cable, Math.max(less, more), supply);
        assertInside(narrow.resistance(), wide.resistance(), Units.OHM);
        assertInside(narrow.power(), wide.power(), Units.WATT);
        assertInside(narrow.current(), wide.current(), Units.AMPERE);
        assertThat(wide.power().contains(cable.power())).isTrue();
    }

    private static CableRating rating(HeatingCable cable, double percent, double supplyPercent) {
        Source test = Source.derived("test");
        return CableRating.of(
                cable,
                cable.voltage(),
                new ResistanceTolerance(Amounts.of(percent, Units.PERCENT), Amounts.of(percent, Units.PERCENT), test),
                new SupplyTolerance(
                        "test",
                        Amounts.of(supplyPercent, Units.PERCENT),
                        Amounts.of(supplyPercent, Units.PERCENT),
                        test));
    }

    private static <Q extends Quantity<Q>> void assertInside(Band<Q> narrow, Band<Q> wide, javax.measure.Unit<Q> unit) {
        double slack = 1e-9 * Given.in(wide.high(), unit);
        assertThat(Given.in(wide.low(), unit)).isLessThanOrEqualTo(Given.in(narrow.low(), unit) + slack);
        assertThat(Given.in(narrow.low(), unit)).isLessThanOrEqualTo(Given.in(narrow.nominal(), unit) + slack);
        assertThat(Given.in(narrow.nominal(), unit)).isLessThanOrEqualTo(Given.in(narrow.high(), unit) + slack);
        assertThat(Given.in(narrow.high(), unit)).isLessThanOrEqualTo(Given.in(wide.high(), unit) + slack);
    }

    @Property(tries = TRIES)
    void powerGrowsWithTheSquareOfTheVoltage(
            @ForAll("cables") HeatingCable cable, @ForAll @DoubleRange(min = 0.1, max = 2) double factor) {
        double volts = Math.min(1000, Given.in(cable.voltage(), Units.VOLT) * factor);
        double ratio = volts / Given.in(cable.voltage(), Units.VOLT);
        assertThat(Given.in(CableRating.of(cable, Amounts.volts(volts)).power().nominal(), Units.WATT))
                .isCloseTo(ratio * ratio * Given.in(cable.power(), Units.WATT), within(1e-6));
    }

    @Property(tries = TRIES)
    void parallelIsBelowTheLeastAndSeriesIsRefused(
            @ForAll("cables") HeatingCable one,
            @ForAll @Size(min = 2, max = 6) List<@From("cables") HeatingCable> more) {
        CableGroup group = CableGroup.of(more, one.voltage(), Connection.PARALLEL);
        double least = more.stream()
                .mapToDouble(c -> Given.in(c.resistance(), Units.OHM))
                .min()
                .orElseThrow();
        assertThat(Given.in(group.resistance(), Units.OHM)).isLessThan(least);
        double sum = group.powers().stream()
                .mapToDouble(p -> Given.in(p, Units.WATT))
                .sum();
        assertThat(Given.in(group.power(), Units.WATT)).isCloseTo(sum, within(1e-9 * sum));
        assertThat(CableGroup.of(more, one.voltage(), Connection.SERIES).findings())
                .anyMatch(Finding::isError);
    }

    @Property(tries = TRIES)
    void voltageDropIsLinear(
            @ForAll("supplies") Supply supply,
            @ForAll @DoubleRange(min = 0, max = 50) double current,
            @ForAll @DoubleRange(min = 0, max = 10) double factor) {
        double once = drop(supply, 20, current);
        assertThat(drop(supply, 20 * factor, current)).isCloseTo(factor * once, within(1e-9 + 1e-9 * once));
        assertThat(drop(supply, 20, current * factor)).isCloseTo(factor * once, within(1e-9 + 1e-9 * once));
    }

    private static double drop(Supply supply, double metres, double current) {
        return Given.in(
                supply.code().voltageDrop(supply.conductor(), Amounts.metres(metres), Amounts.amperes(current)),
                Units.VOLT);
    }

    @Property(tries = TRIES)
    void deviceIsNeverBelowDesignNorAboveConductor(
            @ForAll("supplies") Supply supply, @ForAll @DoubleRange(min = 0.1, max = 70) double load) {
        double volts = Given.in(supply.voltage(), Units.VOLT);
        // Long enough that no edition's limit of power per length is met.
        CircuitDesign design = CircuitDesign.of(supply, List.of(Cables.twin("x", 400, load * volts, volts)));
        Circuit circuit = design.circuits().get(0);
        assertThat(design.hasErrors()).isEqualTo(circuit.protectiveDevice().isEmpty());
        if (circuit.protectiveDevice().isEmpty()) {
            return;
        }
        double device = amperes(circuit.protectiveDevice().get());
        List<Double> ratings = supply.code().protectiveRatings().stream()
                .map(ElectricalProperties::amperes)
                .toList();
        double usable = amperes(circuit.ampacity().usable());
        assertThat(ratings).contains(device);
        assertThat(device).isGreaterThanOrEqualTo(amperes(circuit.designCurrent()) * (1 - 1e-9));
        assertThat(load).isLessThanOrEqualTo(usable * (1 + 1e-9));
        if (supply.code().isNec()) {
            // 240.4(B): the conductor's ampacity or the next standard rating above it.
            double next = ratings.stream()
                    .filter(r -> r >= usable * (1 - 1e-9))
                    .findFirst()
                    .orElseThrow();
            assertThat(device).isLessThanOrEqualTo(next);
        } else {
            assertThat(device).isLessThanOrEqualTo(usable * (1 + 1e-9));
        }
    }

    @Property(tries = TRIES)
    void everyCableStandsOnOneCircuitAndNoCircuitIsOverloaded(
            @ForAll("supplies") Supply supply,
            @ForAll @Size(min = 1, max = 8) List<@IntRange(min = 100, max = 3000) Integer> watts) {
        double volts = Given.in(supply.voltage(), Units.VOLT);
        List<HeatingCable> cables =
                watts.stream().map(w -> Cables.twin("c" + w, 200, w, volts)).toList();
        CircuitDesign design = CircuitDesign.of(supply, cables);
        assertThat(design.circuits().stream().flatMap(c -> c.cables().stream()))
                .containsExactlyInAnyOrderElementsOf(
                        cables.stream().map(HeatingCable::name).toList());
        assertThat(design.circuits())
                .filteredOn(c -> c.cables().size() > 1)
                .allSatisfy(c -> assertThat(c.protectiveDevice()).isPresent());
        double total = design.circuits().stream()
                .mapToDouble(c -> amperes(c.current()))
                .sum();
        assertThat(total * volts).isCloseTo(watts.stream().mapToInt(i -> i).sum(), within(1e-6));
    }

    @Property(tries = TRIES)
    void unitsLeaveEveryVerdictUnchanged(
            @ForAll("supplies") Supply supply,
            @ForAll @Size(min = 1, max = 4) List<@From("cables") HeatingCable> cables) {
        Supply same = new Supply(
                supply.voltage(),
                supply.code(),
                Amounts.feet(Given.in(supply.feederLength(), Units.FOOT)),
                ConductorSize.of(supply.conductor().crossSection()),
                supply.installation(),
                supply.ambient().map(t -> Amounts.of(Given.in(t, Units.FAHRENHEIT), Units.FAHRENHEIT)),
                supply.groupedCircuits());
        List<HeatingCable> customary =
                cables.stream().map(ElectricalProperties::inFeet).toList();
        CircuitDesign one = CircuitDesign.of(supply, cables);
        CircuitDesign other = CircuitDesign.of(same, customary);
        assertThat(verdicts(other)).isEqualTo(verdicts(one));
        assertThat(other.circuits().stream().map(c -> c.protectiveDevice().map(ElectricalProperties::amperes)))
                .containsExactlyElementsOf(one.circuits().stream()
                        .map(c -> c.protectiveDevice().map(ElectricalProperties::amperes))
                        .toList());
    }

    /** On the very limit, where the last digit of a conversion would turn the verdict. */
    @Property(tries = TRIES)
    void unitsLeaveVerdictsOnTheLimitUnchanged(
            @ForAll @DoubleRange(min = 1, max = 30) double metres,
            @ForAll @DoubleRange(min = 1, max = 15) double load) {
        // 54 W/m in concrete (NEC 2011) and 5 % of the voltage (IEC 60364).
        HeatingCable hot = Cables.twin("hot", metres, 54 * metres, 240);
        Supply nec = Cables.supply("NEC 2011", 240, 5, "4 AWG");
        assertThat(verdicts(CircuitDesign.of(nec, List.of(inFeet(hot)))))
                .isEqualTo(verdicts(CircuitDesign.of(nec, List.of(hot))));
        Supply iec = Cables.supply("IEC 60364", 230, 11.5 * 2.5 / (2 * 0.0225 * load), "2.5 mm²");
        Supply feet = Supply.of(
                iec.voltage(),
                iec.code(),
                Amounts.feet(Given.in(iec.feederLength(), Units.FOOT)),
                ConductorSize.of(iec.conductor().crossSection()));
        HeatingCable far = Cables.twin("far", 400, load * 230, 230);
        assertThat(verdicts(CircuitDesign.of(feet, List.of(inFeet(far)))))
                .isEqualTo(verdicts(CircuitDesign.of(iec, List.of(far))));
        double capacitance = 9e-3 / (2 * Math.PI * 50 * 400 * 230);
        assertThat(LeakageBudget.of(
                                iec, List.of(inFeet(far)), Amounts.of(capacitance * 1e12, Units.PICOFARAD_PER_METRE))
                        .findings()
                        .get(0)
                        .severity())
                .isEqualTo(LeakageBudget.of(iec, List.of(far), Amounts.of(capacitance, Units.FARAD_PER_METRE))
                        .findings()
                        .get(0)
                        .severity());
    }

    private static HeatingCable inFeet(HeatingCable c) {
        return new HeatingCable(
                c.name(),
                c.conductors(),
                Amounts.feet(Given.in(c.length(), Units.FOOT)),
                Amounts.of(Given.in(c.power(), Units.KILOWATT), Units.KILOWATT),
                c.voltage(),
                Amounts.inches(Given.in(c.diameter(), Units.INCH)),
                Amounts.feet(Given.in(c.coldLead(), Units.FOOT)));
    }

    private static List<String> verdicts(CircuitDesign design) {
        return design.findings().stream()
                .map(f -> f.severity() + " " + f.subject() + " " + f.source())
                .toList();
    }

    @Property(tries = 100)
    void unitsLeaveEveryMeterVerdictUnchanged(
            @ForAll @IntRange(min = 0, max = 1_000_000) int seed,
            @ForAll @IntRange(min = 0, max = 3) int core,
            @ForAll @DoubleRange(min = 0.05, max = 1) double fraction) {
        TestLimits limits = FaultCases.limits(FaultCases.CORES.get(core));
        HeatingCable cable = FaultCases.cable();
        HeatingCable customary = inFeet(cable);
        List<MeterTest> tests = MeterSimulator.tests(
                cable, limits, new SimulatedFault.Shorted(TestStage.FIXED_ON_MEMBRANE, fraction), seed);
        List<MeterTest> other = tests.stream()
                .map(t -> new MeterTest(
                        t.stage(),
                        Amounts.of(Given.in(t.ambient(), Units.FAHRENHEIT), Units.FAHRENHEIT),
                        t.conductor().map(r -> inKiloohms(r)),
                        t.insulation().map(r -> inKiloohms(r)),
                        t.screen(),
                        t.sensor().map(r -> inKiloohms(r)),
                        t.insulationVoltage()))
                .toList();
        TestSeries one = TestSeries.of(cable, limits, tests);
        TestSeries two = TestSeries.of(customary, limits, other);
        assertThat(two.diagnosis().fault()).isEqualTo(one.diagnosis().fault());
        assertThat(two.mayBeCovered()).isEqualTo(one.mayBeCovered());
        assertThat(two.findings().stream().map(f -> f.severity() + " " + f.subject() + " " + f.source()))
                .containsExactlyElementsOf(one.findings().stream()
                        .map(f -> f.severity() + " " + f.subject() + " " + f.source())
                        .toList());
    }

    private static Reading inKiloohms(Reading reading) {
        return new Reading(
                Amounts.of(Given.in(reading.resistance(), Units.KILOOHM), Units.KILOOHM), reading.overRange());
    }

    @Property(tries = TRIES)
    void sensorsReadBackTheTemperature(
            @ForAll @DoubleRange(min = -40, max = 100) double celsius,
            @ForAll @DoubleRange(min = 3000, max = 4500) double beta) {
        for (SensorCurve curve : List.of(
                new BetaThermistor(Amounts.ohms(10_000), Amounts.kelvins(beta)),
                SensorCurveTest.COPIED,
                SensorCurveTest.fitted(),
                new PlatinumSensor(Amounts.ohms(1000)))) {
            double back = Given.in(curve.temperatureOf(curve.resistanceAt(Amounts.celsius(celsius))), Units.CELSIUS);
            assertThat(back).as(curve.describe()).isCloseTo(celsius, within(1e-6));
        }
    }

    @Property(tries = TRIES)
    void correctionTo20DegreesUndoesTheTemperature(
            @ForAll @DoubleRange(min = 1, max = 1000) double ohms,
            @ForAll @DoubleRange(min = -20, max = 90) double celsius,
            @ForAll @IntRange(min = 0, max = 10) int alloy) {
        Alloy core = Alloy.all().get(alloy);
        double back = Given.in(
                core.resistanceAt20(
                        core.resistanceAt(Amounts.ohms(ohms), Amounts.celsius(celsius)), Amounts.celsius(celsius)),
                Units.OHM);
        assertThat(back).isCloseTo(ohms, within(1e-9 * ohms));
    }

    @Property(tries = TRIES)
    void leakageGrowsWithLengthAndHalvesForOneConductor(
            @ForAll @DoubleRange(min = 2, max = 200) double metres,
            @ForAll @DoubleRange(min = 50, max = 400) double picofarads) {
        Supply supply = Cables.supply("IEC 60364", 230, 10, "2.5 mm²");
        double twin = leakage(supply, Cables.twin("t", metres, 500, 230), picofarads);
        assertThat(leakage(supply, Cables.single("s", metres, 500, 230), picofarads))
                .isCloseTo(twin / 2, within(1e-9));
        assertThat(leakage(supply, Cables.twin("t", 2 * metres, 500, 230), picofarads))
                .isCloseTo(2 * twin, within(1e-9));
    }

    private static double leakage(Supply supply, HeatingCable cable, double picofarads) {
        return Given.in(
                LeakageBudget.of(supply, List.of(cable), Amounts.of(picofarads, Units.PICOFARAD_PER_METRE))
                        .current(),
                Units.MILLIAMPERE);
    }
}
