package org.heatfloor.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.heatfloor.quantity.Amounts.amperes;
import static org.heatfloor.quantity.Amounts.metres;
import static org.heatfloor.quantity.Amounts.ohms;
import static org.heatfloor.quantity.Amounts.volts;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Cable groups, cold leads, controls, zones, leakage, and what bad input is told. */
class PartsTest {

    @Test
    void seriesIsRefusedWithThePowersThatWouldFollow() {
        // 600 W and 300 W at 230 V: 88.17 Ω and 176.33 Ω, 264.5 Ω together, 0.8696 A: 66.7 W and 133.3 W.
        CableGroup series = CableGroup.of(
                List.of(Cables.twin("a", 50, 600, 230), Cables.twin("b", 30, 300, 230)), volts(230), Connection.SERIES);
        assertThat(Given.in(series.powers().get(0), Units.WATT)).isCloseTo(66.667, within(0.001));
        assertThat(Given.in(series.powers().get(1), Units.WATT)).isCloseTo(133.333, within(0.001));
        assertThat(series.findings()).singleElement().satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.ERROR);
            assertThat(f.message()).contains("never joined in series", "66.7 W", "133.3 W");
        });
    }

    @Test
    void coldLeadsTakeTheirShare() {
        // 2 × 4 m of 1 mm² class 5 at 19.5 Ω/km: 0.156 Ω; on 52.9 Ω at 230 V 4.335 A, 0.676 V.
        ColdLeadDrop drop = ColdLeadDrop.of(Cables.single("s", 100, 1000, 230), ConductorSize.of("1 mm²"), volts(230));
        assertThat(Given.in(drop.loopResistance(), Units.OHM)).isCloseTo(0.156, within(1e-9));
        assertThat(Given.in(drop.voltageDrop(), Units.VOLT)).isCloseTo(0.6763, within(1e-3));
        assertThat(Given.in(drop.linearPower(), Units.WATT_PER_METRE)).isCloseTo(0.3664, within(1e-3));
        assertThat(drop.source().text()).contains("IEC 60228");
    }

    @Test
    void aThermostatLimitsItsCircuit() {
        ControlDevice thermostat = new ControlDevice("hall thermostat", amperes(16), volts(240), false);
        Supply supply = Cables.supply("NEC 2023", 240, 10, "10 AWG");
        CircuitDesign shared = CircuitDesign.of(
                supply, List.of(Cables.twin("a", 50, 2400, 240), Cables.twin("b", 50, 2400, 240)), thermostat);
        assertThat(shared.circuits()).hasSize(2);
        assertThat(shared.hasErrors()).isFalse();
        assertThat(shared.findings())
                .anySatisfy(f -> assertThat(f.source().text()).contains("424.20(A)"));
        assertThat(shared.findings())
                .anySatisfy(f -> assertThat(f.message()).contains("hall thermostat switches 16 A", "2 circuits"));
        CircuitDesign tooMuch = CircuitDesign.of(supply, List.of(Cables.twin("c", 100, 5000, 240)), thermostat);
        assertThat(tooMuch.findings()).filteredOn(Finding::isError).anySatisfy(f -> assertThat(f.message())
                .contains("contactor rated 21 A"));
    }

    /** 424.19: rated at 125 % of the load or more; 12.8 A for a thermostat of 16 A. */
    @ParameterizedTest
    @CsvSource({"NEC 2011, 12.9, true", "NEC 2020, 12.9, true", "NEC 2023, 12.9, true", "NEC 2023, 12.8, false"})
    void aThermostatThatDisconnectsHasItsRating(String code, double load, boolean warned) {
        CircuitDesign design = CircuitDesign.of(
                Cables.supply(code, 240, 10, "10 AWG"),
                List.of(Cables.twin("c", 100, load * 240, 240)),
                new ControlDevice("t", amperes(16), volts(240), true));
        assertThat(design.findings().stream()
                        .filter(f -> f.severity() == Severity.WARNING
                                && f.source().text().equals(code + ", 424.19"))
                        .count())
                .isEqualTo(warned ? 1 : 0);
    }

    /** 1.10/0.95 of 5.9 A is 6.83 A, above 1.13 × 6 A; of 5.8 A it is 6.72 A, below. The NEC keeps 25 % in hand. */
    @ParameterizedTest
    @CsvSource({"IEC 60364, 5.9, true", "IEC 60364, 5.8, false", "BS 7671:2018, 5.9, true", "NEC 2023, 12, false"})
    void stackedTolerancesMayOpenADevice(String code, double load, boolean said) {
        CircuitDesign design = CircuitDesign.of(
                Cables.supply(
                        code, code.startsWith("NEC") ? 240 : 230, 10, code.startsWith("NEC") ? "12 AWG" : "2.5 mm²"),
                List.of(Cables.twin(
                        "c", 200, load * (code.startsWith("NEC") ? 240 : 230), code.startsWith("NEC") ? 240 : 230)));
        assertThat(design.findings().stream().anyMatch(f -> f.message().contains("may open the")))
                .isEqualTo(said);
    }

    /** Thirty loads at random: no circuit above the capacity, and never more circuits than a first fit makes. */
    @Test
    void loadsAreSharedOverFewCircuits() {
        java.util.Random random = new java.util.Random(5);
        for (int run = 0; run < 20; run++) {
            double[] loads = random.doubles(30, 3, 7).toArray();
            List<List<Integer>> circuits = CircuitSplit.of(loads, 16);
            assertThat(circuits.stream().flatMap(List::stream).sorted().toList())
                    .isEqualTo(java.util.stream.IntStream.range(0, 30).boxed().toList());
            assertThat(circuits).allSatisfy(circuit -> assertThat(
                            circuit.stream().mapToDouble(i -> loads[i]).sum())
                    .isLessThanOrEqualTo(16 * (1 + 1e-9)));
            assertThat(circuits.size()).isLessThanOrEqualTo(firstFit(loads, 16));
        }
        // 9 + 7, 8 + 8, 6 + 5 + 5: three full circuits, where a first fit of falling loads also finds three.
        assertThat(CircuitSplit.of(new double[] {9, 5, 8, 6, 7, 5, 8}, 16)).hasSize(3);
        // Full circuits that a first fit misses: 7 + 5 + 4 twice; first fit decreasing takes 7 + 7 and needs a third.
        assertThat(CircuitSplit.of(new double[] {7, 7, 5, 5, 4, 4}, 16)).hasSize(2);
        assertThat(CircuitSplit.of(new double[] {20, 1}, 16)).hasSize(2);
        assertThat(CircuitSplit.of(new double[] {1, 1}, 0)).hasSize(2);
    }

    private static int firstFit(double[] loads, double capacity) {
        List<Double> sums = new java.util.ArrayList<>();
        for (double load : java.util.Arrays.stream(loads)
                .map(l -> -l)
                .sorted()
                .map(l -> -l)
                .toArray()) {
            int i = 0;
            while (i < sums.size() && sums.get(i) + load > capacity) {
                i++;
            }
            if (i == sums.size()) {
                sums.add(load);
            } else {
                sums.set(i, sums.get(i) + load);
            }
        }
        return sums.size();
    }

    @ParameterizedTest
    @CsvSource({
        "0, 1.0, ZONE_1, true, true",
        "0.6, 1.2, ZONE_2, true, false",
        "0.61, 1.2, OUTSIDE, false, false",
        "0.3, 2.3, OUTSIDE, false, false"
    })
    void zones(double fromBasin, double height, WetRoomZone zone, boolean iecForbids, boolean necForbids) {
        WetRoomZone found = WetRoomZone.atBasin(metres(fromBasin), metres(height));
        assertThat(found).isEqualTo(zone);
        assertThat(found.control(ElectricalCode.of("BS 7671:2018"), "t").isError())
                .isEqualTo(iecForbids);
        assertThat(found.control(ElectricalCode.of("NEC 2023"), "t").isError()).isEqualTo(necForbids);
    }

    @ParameterizedTest
    @CsvSource({
        "IEC_60038, 230, 207, 253",
        "EN_50160, 230, 207, 253",
        "EN_50160_EXTREME, 230, 195.5, 253",
        "ANSI_C84_1_RANGE_A, 120, 114, 126",
        "ANSI_C84_1_RANGE_A, 208, 197, 218",
        "ANSI_C84_1_RANGE_A, 240, 228, 252",
        "ANSI_C84_1_RANGE_B, 120, 110, 127",
        "ANSI_C84_1_RANGE_B, 208, 191, 220",
        "ANSI_C84_1_RANGE_A_LOAD, 120, 108, 126",
        "ANSI_C84_1_RANGE_B_LOAD, 120, 104, 127"
    })
    void supplyTolerances(String name, double volts, double low, double high) {
        SupplyTolerance tolerance =
                switch (name) {
                    case "IEC_60038" -> SupplyTolerance.IEC_60038;
                    case "EN_50160" -> SupplyTolerance.EN_50160;
                    case "EN_50160_EXTREME" -> SupplyTolerance.EN_50160_EXTREME;
                    case "ANSI_C84_1_RANGE_A" -> SupplyTolerance.ANSI_C84_1_RANGE_A;
                    case "ANSI_C84_1_RANGE_B" -> SupplyTolerance.ANSI_C84_1_RANGE_B;
                    case "ANSI_C84_1_RANGE_A_LOAD" -> SupplyTolerance.ANSI_C84_1_RANGE_A_LOAD;
                    default -> SupplyTolerance.ANSI_C84_1_RANGE_B_LOAD;
                };
        // The standards print whole volts.
        assertThat(volts * tolerance.lowFactor()).isCloseTo(low, within(0.7));
        assertThat(volts * tolerance.highFactor()).isCloseTo(high, within(0.7));
    }

    @Test
    void longCablesSpendTheLeakageBudget() {
        Supply nec = Cables.supply("NEC 2020", 240, 10, "12 AWG");
        HeatingCable cable = Cables.twin("long", 100, 1000, 240);
        LeakageBudget budget = LeakageBudget.of(nec, List.of(cable), LeakageBudget.USUAL_CAPACITANCE.nominal());
        assertThat(Given.in(budget.current(), Units.MILLIAMPERE)).isCloseTo(1.81, within(0.005));
        assertThat(Given.in(budget.limit(), Units.MILLIAMPERE)).isCloseTo(1.2, within(1e-9));
        assertThat(budget.findings()).singleElement().satisfies(f -> assertThat(f.severity())
                .isEqualTo(Severity.WARNING));
        assertThat(Given.in(budget.greatestLength(), Units.METRE)).isCloseTo(66.3, within(0.1));
    }

    @Test
    void groundingConductorsCountByEdition() {
        ConductorSize twelve = ConductorSize.ofGauge(12);
        for (String edition : List.of("NEC 2011", "NEC 2020")) {
            BoxFill fill = BoxFill.in(ElectricalCode.of(edition))
                    .groundingConductors(6, twelve)
                    .terminalBlock(twelve)
                    .inBox(BoxFill.boxVolume("4 x 1 1/2 square"));
            assertThat(Given.in(fill.required(), Units.CUBIC_INCH))
                    .isCloseTo(edition.equals("NEC 2011") ? 2.25 : 2.25 * 1.5, within(1e-9));
        }
        assertThatThrownBy(() -> BoxFill.in(ElectricalCode.of("IEC 60364"))).hasMessageContaining("IEC 60364");
    }

    @Test
    void bandsSayWhatTheMeterShouldShow() {
        TestLimits limits = TestLimits.of(ElectricalCode.of("IEC 60364"), Alloy.of("copper, annealed"))
                .withColdLeads(ohms(0.2));
        Band<?> band = limits.conductorBand(Cables.twin("x", 50, 500, 230), Amounts.celsius(30));
        assertThat(band.nominal().getValue().doubleValue()).isCloseTo(105.8 * 1.0393 + 0.2, within(1e-9));
        assertThat(band.low().getValue().doubleValue()).isCloseTo(105.8 * 1.0393 * 0.95 + 0.2, within(1e-9));
        assertThat(TestLimits.of(ElectricalCode.of("NEC 2023"), Alloy.of("CuNi44"))
                        .insulationSource()
                        .toString())
                .startsWith("common practice, no source");
    }

    @Test
    void everyFindingCarriesASourceAndTheSafetyWordsAreSaid() {
        for (ElectricalCode code : ElectricalCode.all()) {
            CircuitDesign design = CircuitDesign.of(
                    Cables.supply(code.name(), code.isNec() ? 120 : 230, 10, code.isNec() ? "12 AWG" : "2.5 mm²"),
                    List.of(Cables.twin("x", 50, 500, code.isNec() ? 120 : 230)));
            assertThat(design.hasErrors()).isFalse();
            assertThat(design.findings())
                    .allSatisfy(f -> assertThat(f.source().text()).isNotBlank());
            assertThat(design.findings()).anySatisfy(f -> assertThat(f.message())
                    .contains(
                            "licensed electrician",
                            "prove dead",
                            "reel",
                            "never cut, cross or overlap",
                            "never cover it untested"));
        }
    }

    @Test
    void badCablesAreNamed() {
        assertThatThrownBy(() -> Cables.twin("w", 10, 0, 230)).hasMessageContainingAll("cable w power", "0");
        assertThatThrownBy(() -> Cables.twin("w", 10, -5, 230)).hasMessageContainingAll("cable w power", "-5");
        assertThatThrownBy(() -> Cables.twin("w", -1, 5, 230)).hasMessageContaining("cable w length");
        assertThatThrownBy(() -> Cables.twin("w", 10, 5, 4000)).hasMessageContaining("cable w voltage");
        assertThatThrownBy(() -> Cables.twin(" ", 10, 5, 230)).hasMessageContaining("cable name");
        assertThatThrownBy(() -> new HeatingCable(
                        "w", 3, metres(1), Amounts.watts(1), volts(230), Amounts.millimetres(5), metres(1)))
                .hasMessageContainingAll("conductors", "3");
        assertThatThrownBy(() -> Cables.twin("w", 10, Double.NaN, 230)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    @SuppressWarnings({"unchecked", "rawtypes"})
    void voltageOfTheWrongDimensionIsNamed() {
        Quantity<ElectricPotential> notVolts = (Quantity) amperes(10);
        assertThatThrownBy(() -> CableRating.of(Cables.twin("x", 10, 100, 230), notVolts))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContainingAll("supply voltage", "10", "V");
    }

    @ParameterizedTest
    @ValueSource(strings = {"13 AWG", "2 AWG", "0 AWG", "12.5 AWG", "3 mm²", "2.5 mm", "2,5 mm²", "12", "", "AWG"})
    void sizesOutsideTheTablesAreNamed(String size) {
        assertThatThrownBy(() -> ConductorSize.of(size))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("conductor size");
    }

    @ParameterizedTest
    @CsvSource({"12 AWG, 3.31", "14 AWG, 2.08", "10 AWG, 5.26", "2.5 mm², 2.5"})
    void aSizeIsTheSameHoweverWritten(String name, double squareMillimetres) {
        assertThat(ConductorSize.of(Amounts.of(squareMillimetres, Units.SQUARE_MILLIMETRE)))
                .isEqualTo(ConductorSize.of(name))
                .hasToString(name);
    }

    @Test
    void otherBadInputIsNamed() {
        assertThatThrownBy(() -> Alloy.of("gold")).hasMessageContainingAll("gold", "CuNi44");
        assertThatThrownBy(() -> BoxFill.boxVolume("shoe box")).hasMessageContaining("shoe box");
        assertThatThrownBy(() -> Reading.of(ohms(-1))).hasMessageContaining("meter reading");
        assertThatThrownBy(() -> CircuitDesign.of(Cables.supply("IEC 60364", 230, 1, "2.5 mm²"), List.of()))
                .hasMessageContaining("0 were given");
        assertThatThrownBy(() -> Cables.supply("IEC 60364", 0, 1, "2.5 mm²")).hasMessageContaining("supply voltage");
        assertThatThrownBy(() -> Cables.supply("IEC 60364", 230, -1, "2.5 mm²")).hasMessageContaining("feeder length");
        assertThatThrownBy(() -> Cables.supply("IEC 60364", 230, 1, "2.5 mm²").withGroupedCircuits(0))
                .hasMessageContaining("grouped circuits");
        assertThatThrownBy(() -> new SimulatedFault.Shorted(TestStage.AFTER_COVERING, 1.5))
                .hasMessageContaining("1.5");
    }
}
