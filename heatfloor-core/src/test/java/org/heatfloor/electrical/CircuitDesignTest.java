package org.heatfloor.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;

class CircuitDesignTest {

    private static <Q extends Quantity<Q>> double in(Quantity<Q> quantity, Unit<Q> unit) {
        return quantity.to(unit).getValue().doubleValue();
    }

    private static double amperes(CircuitDesign design) {
        return in(design.circuits().get(0).protectiveDevice().orElseThrow(), Units.AMPERE);
    }

    private static List<Finding> of(CircuitDesign design, Severity severity) {
        return design.findings().stream().filter(f -> f.severity() == severity).toList();
    }

    @Test
    void washroomCableOnIec() {
        CircuitDesign design = CircuitDesign.of(
                Cables.supply("IEC 60364", 230, 14, "2.5 mm²")
                        .withInstallation("C")
                        .withAmbient(Amounts.celsius(30)),
                List.of(Cables.twin("K31.5", 31.5, 346.5, 230)));
        Circuit circuit = design.circuits().get(0);
        assertThat(in(circuit.current(), Units.AMPERE)).isCloseTo(346.5 / 230, within(1e-9));
        assertThat(in(circuit.designCurrent(), Units.AMPERE)).isCloseTo(346.5 / 230, within(1e-9));
        assertThat(amperes(design)).isEqualTo(6);
        assertThat(in(circuit.ampacity().usable(), Units.AMPERE)).isEqualTo(27);
        assertThat(in(circuit.voltageDrop(), Units.VOLT)).isCloseTo(2 * 0.0225 * 14 / 2.5 * 346.5 / 230, within(1e-9));
        assertThat(in(circuit.residualCurrentDevice(), Units.AMPERE)).isEqualTo(0.03);
        assertThat(design.hasErrors()).isFalse();
        assertThat(of(design, Severity.WARNING)).isEmpty();
    }

    @Test
    void bootRoomCableOnNec() {
        CircuitDesign design = CircuitDesign.of(
                new Supply(
                        Amounts.volts(120),
                        ElectricalCode.of("NEC 2023"),
                        Amounts.feet(45),
                        ConductorSize.of("12 AWG"),
                        java.util.Optional.empty(),
                        java.util.Optional.of(Amounts.of(86, Units.FAHRENHEIT)),
                        1),
                List.of(Cables.twin("F120", 36.576, 408, 120)));
        Circuit circuit = design.circuits().get(0);
        assertThat(in(circuit.current(), Units.AMPERE)).isCloseTo(3.4, within(1e-9));
        assertThat(in(circuit.designCurrent(), Units.AMPERE)).isCloseTo(4.25, within(1e-9));
        assertThat(amperes(design)).isEqualTo(15);
        assertThat(circuit.ampacity().ambientFactor()).isEqualTo(1);
        assertThat(in(circuit.residualCurrentDevice(), Units.MILLIAMPERE)).isCloseTo(6, within(1e-9));
        assertThat(design.hasErrors()).isFalse();
    }

    /** 12 AWG at 50 °C: 20 A × 0.58 = 11.6 A in place, which bears 9.28 A at 125 % by 424.4(B) and 11.6 A without. */
    @Test
    void allowanceIsOwedByTheConductorInPlaceFrom424Point4() {
        for (String edition : List.of("NEC 2011", "NEC 2020", "NEC 2023")) {
            Supply hot = Cables.supply(edition, 240, 5, "12 AWG").withAmbient(Amounts.celsius(50));
            for (double load : new double[] {9.2, 9.4, 11.5, 11.7}) {
                boolean carried = load < (edition.equals("NEC 2011") ? 11.6 : 9.28);
                assertThat(CircuitDesign.of(hot, List.of(Cables.twin("x", 100, load * 240, 240)))
                                .circuits()
                                .get(0)
                                .protectiveDevice()
                                .isPresent())
                        .as(edition + " " + load)
                        .isEqualTo(carried);
            }
        }
    }

    @Test
    void noDeviceFitsSaysWhichConductorWould() {
        CircuitDesign design = CircuitDesign.of(
                Cables.supply("NEC 2020", 240, 10, "12 AWG"), List.of(Cables.twin("hall", 100, 4000, 240)));
        assertThat(design.circuits().get(0).protectiveDevice()).isEmpty();
        assertThat(of(design, Severity.ERROR)).singleElement().satisfies(f -> assertThat(f.message())
                .contains("10 AWG would carry it"));
    }

    @Test
    void severalCablesAreSplitOverTheFewestCircuits() {
        CircuitDesign design = CircuitDesign.of(
                Cables.supply("IEC 60364", 230, 10, "1.5 mm²"),
                Stream.of(8.0, 7.0, 5.0, 5.0, 4.0, 3.0)
                        .map(a -> Cables.twin("c" + a, 50, a * 230, 230))
                        .toList());
        // 19.5 A × 0.7 for three laid together: 13 A each, where 16 A would have done for two laid apart.
        assertThat(design.circuits()).hasSize(3);
        assertThat(design.circuits())
                .allSatisfy(c -> assertThat(in(c.current(), Units.AMPERE)).isLessThanOrEqualTo(13.0 + 1e-9));
        assertThat(of(design, Severity.WARNING)).isEmpty();
    }

    @Test
    void wrongVoltages() {
        assertThat(severityAt(120, 240, "NEC 2023")).isEqualTo(Severity.ERROR);
        assertThat(severityAt(240, 120, "NEC 2023")).isEqualTo(Severity.ERROR);
        assertThat(severityAt(208, 240, "NEC 2023")).isEqualTo(Severity.ERROR);
        assertThat(severityAt(240, 208, "NEC 2023")).isEqualTo(Severity.WARNING);
        assertThat(severityAt(230, 240, "NEC 2023")).isEqualTo(Severity.WARNING);
        assertThat(severityAt(230, 400, "IEC 60364")).isEqualTo(Severity.ERROR);
        assertThat(severityAt(230, 230, "IEC 60364")).isEqualTo(Severity.NOTE);
    }

    private static Severity severityAt(double cableVolts, double supplyVolts, String code) {
        CircuitDesign design = CircuitDesign.of(
                Cables.supply(code, supplyVolts, 10, code.startsWith("NEC") ? "12 AWG" : "2.5 mm²"),
                List.of(Cables.twin("x", 50, 500, cableVolts)));
        return design.findings().stream()
                .filter(f -> f.subject().equals("x"))
                .map(Finding::severity)
                .findFirst()
                .orElse(Severity.NOTE);
    }

    @Test
    void longFeederIsWarnedOf() {
        CircuitDesign design = CircuitDesign.of(
                Cables.supply("NEC 2020", 120, 80, "14 AWG"), List.of(Cables.twin("far", 50, 1200, 120)));
        assertThat(of(design, Severity.WARNING)).singleElement().satisfies(f -> {
            assertThat(f.source().text()).contains("210.19");
            assertThat(f.limit().orElseThrow().getValue().doubleValue()).isCloseTo(3, within(1e-9));
        });
    }

    @Test
    void unknownsAreNamed() {
        assertThatThrownBy(() -> ElectricalCode.of("NEC 1999"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContainingAll("NEC 1999", "IEC 60364", "BS 7671:2018", "NEC 2011", "NEC 2020", "NEC 2023");
        assertThatThrownBy(() -> Cables.supply("NEC 2020", 120, 1, "2.5 mm²"))
                .hasMessageContainingAll("2.5 mm²", "12 AWG");
        assertThatThrownBy(() -> Cables.supply("NEC 2020", 120, 1, "12 AWG").withInstallation("C"))
                .hasMessageContainingAll("'C'", "NM-B");
        assertThatThrownBy(() -> Cables.supply("IEC 60364", 230, 1, "2.5 mm²").withAmbient(Amounts.celsius(61)))
                .hasMessageContainingAll("ambient", "61", "60");
    }
}
