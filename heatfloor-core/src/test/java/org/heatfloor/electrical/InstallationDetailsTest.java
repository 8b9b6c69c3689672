package org.heatfloor.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.heatfloor.quantity.Amounts.amperes;
import static org.heatfloor.quantity.Amounts.millimetres;
import static org.heatfloor.quantity.Amounts.volts;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a circuit design judges when it is told more than supply and cables, and what it says when it is not. */
class InstallationDetailsTest {

    private static final HeatingCable CABLE = Cables.twin("x", 50, 480, 240);

    private static InstallationDetails.Builder details() {
        return InstallationDetails.builder();
    }

    private static CircuitDesign design(String code, HeatingCable cable, InstallationDetails.Builder details) {
        double volts = Given.in(cable.voltage(), Units.VOLT);
        String size = code.startsWith("NEC") ? "12 AWG" : "2.5 mm²";
        return CircuitDesign.of(Cables.supply(code, volts, 10, size), List.of(cable), details.build());
    }

    private static Optional<Finding> about(CircuitDesign design, String words) {
        return design.findings().stream()
                .filter(f -> f.message().contains(words) && !f.subject().equals("not checked"))
                .findFirst();
    }

    private static String unchecked(CircuitDesign design) {
        return design.findings().stream()
                .filter(f -> f.subject().equals("not checked"))
                .map(f -> f.source() + ": " + f.message())
                .findFirst()
                .orElse("");
    }

    @Test
    void whatWasNotGivenIsNamed() {
        assertThat(unchecked(design("NEC 2023", CABLE, details())))
                .startsWith("common practice, no source: follow the listing and local code")
                .contains("leakage budget", "box fill", "zones of a wet room", "screen", "use of the room", "closets")
                .doesNotContain("spacing of the runs", "colour");
        assertThat(unchecked(design("NEC 2011", CABLE, details()))).contains("spacing of the runs", "colour");
        assertThat(unchecked(design("IEC 60364", Cables.twin("y", 50, 500, 230), details())))
                .doesNotContain("box fill", "spacing of the runs");
    }

    @Test
    void nothingIsLeftUncheckedWhenAllIsGiven() {
        CircuitDesign design = design("NEC 2023", CABLE.withScreen(CableScreen.UNMEASURED), everything());
        assertThat(unchecked(design)).isEmpty();
        assertThat(design.hasErrors()).isFalse();
        // 50 m at 200 pF/m on 240 V, 60 Hz: 10 nF, 0.905 mA of 1.2 mA.
        Finding leakage = about(design, "standing leakage").orElseThrow();
        assertThat(leakage.subject()).isEqualTo("circuit 1");
        assertThat(leakage.value().orElseThrow().getValue().doubleValue()).isCloseTo(0.905, within(5e-4));
        // Two 12 AWG and two 14 AWG conductors, the groundings as one of 12 AWG, clamps and a control on 12 AWG:
        // 2·2.25 + 2·2.00 + 2.25 + 2.25 + 4.50 = 17.5 in³.
        Finding box = about(design, "the contents fit the box").orElseThrow();
        assertThat(box.subject()).isEqualTo("circuit 1 box");
        assertThat(box.value().orElseThrow().getValue().doubleValue()).isCloseTo(17.5, within(1e-9));
        assertThat(about(design, "lost in the cold lead")).isPresent();
        assertThat(about(design, "mains control may stand here")).isPresent();
    }

    private static InstallationDetails.Builder everything() {
        return details()
                .control(new ControlDevice("t", amperes(16), volts(240), true))
                .controlZone(WetRoomZone.OUTSIDE)
                .roomUse(RoomUse.BATH_OR_SHOWER)
                .embedding(Embedding.FLOOR_COVERING)
                .runSpacing(millimetres(90))
                .heatedArea(Amounts.squareMetres(4))
                .leadColour(LeadColour.RED)
                .places()
                .capacitance(LeakageBudget.USUAL_CAPACITANCE.nominal())
                .coldLeadConductor(ConductorSize.ofGauge(14))
                .box(BoxFill.boxVolume("4 x 1 1/2 square"), true);
    }

    @Test
    void aBoxTooSmallACableTooLongAndAControlInAZoneAreErrorsOrWarnings() {
        CircuitDesign design = design(
                "NEC 2023",
                Cables.twin("long", 100, 960, 240),
                everything().controlZone(WetRoomZone.ZONE_1).box(BoxFill.boxVolume("3 x 2 x 2 device"), false));
        assertThat(about(design, "the contents need").orElseThrow().isError()).isTrue();
        assertThat(about(design, "may trip the residual").orElseThrow().severity())
                .isEqualTo(Severity.WARNING);
        assertThat(about(design, "does not belong in zone 1").orElseThrow().isError())
                .isTrue();
    }

    @Test
    void builtDetailsStayAsTheyWere() {
        InstallationDetails.Builder builder = details().roomUse(RoomUse.KITCHEN);
        InstallationDetails built = builder.build();
        builder.roomUse(RoomUse.OTHER).places(CablePlace.CLOSET);
        assertThat(built.roomUse()).contains(RoomUse.KITCHEN);
        assertThat(built.places()).isEmpty();
        assertThat(built.toBuilder().build().roomUse()).contains(RoomUse.KITCHEN);
    }

    @ParameterizedTest
    @CsvSource({
        // code, screen, room, mesh in mm (0: none), severity, clause
        "NEC 2023, NONE, OTHER, 0, ERROR, 'NEC 2023, 424.45(F)'",
        "NEC 2023, NONE, BATH_OR_SHOWER, 0, ERROR, 'NEC 2023, 424.45(F)'",
        "NEC 2020, NONE, OTHER, 0, ERROR, 'NEC 2020, 424.45(F)'",
        "NEC 2011, NONE, BATH_OR_SHOWER, 0, WARNING, follow the listing and local code",
        "IEC 60364, NONE, OTHER, 0, ERROR, 'IEC 60364-7-753:2014, 753.411.3.2'",
        "IEC 60364, NONE, OTHER, 30, NOTE, 'IEC 60364-7-753:2014, 753.411.3.2'",
        "IEC 60364, NONE, OTHER, 31, ERROR, 'IEC 60364-7-753:2014, 753.411.3.2'",
        "IEC 60364, NONE, BATH_OR_SHOWER, 0, ERROR, 'IEC 60364-7-701:2006, 701.753'",
        "BS 7671:2018, NONE, BATH_OR_SHOWER, 0, ERROR, 'BS 7671:2018, 701.753'",
        "BS 7671:2018, NONE, OTHER, 20, NOTE, 'BS 7671:2018, 753.411.3.2'",
        "BS 7671:2018, SCREENED, BATH_OR_SHOWER, 0, NOTE, 'BS 7671:2018, 701.753'",
        "BS 7671:2018, UNKNOWN, BATH_OR_SHOWER, 0, WARNING, 'BS 7671:2018, 701.753'",
    })
    void screens(String code, String screen, RoomUse use, double mesh, Severity severity, String clause) {
        HeatingCable cable = Cables.twin("the cable", 50, 500, code.startsWith("NEC") ? 240 : 230);
        HeatingCable stated =
                switch (screen) {
                    case "NONE" -> cable.withScreen(CableScreen.NONE);
                    case "SCREENED" -> cable.withScreen(CableScreen.UNMEASURED);
                    default -> cable;
                };
        InstallationDetails.Builder details = details().roomUse(use);
        if (mesh > 0) {
            details.earthedMesh(millimetres(mesh));
        }
        assertThat(design(code, stated, details).findings())
                .filteredOn(f -> f.subject().equals("the cable") && f.message().contains("screen")
                        || f.message().contains("braid") && f.subject().equals("the cable"))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.severity()).isEqualTo(severity);
                    assertThat(f.source().text()).contains(clause);
                });
    }

    @Test
    void aScreenKeepsItsNameAndFigures() {
        HeatingCable cable = CABLE.withScreen(CableScreen.of(Amounts.of(0.02, Units.OHM_PER_METRE)));
        assertThat(cable.named("other").screen()).isEqualTo(cable.screen());
        assertThat(cable.named("other").name()).isEqualTo("other");
        assertThatThrownBy(() -> CableScreen.of(Amounts.of(0, Units.OHM_PER_METRE)))
                .hasMessageContaining("screen resistance per length");
        assertThatThrownBy(() -> new CableScreen(false, Optional.of(Amounts.of(1, Units.OHM_PER_METRE))))
                .hasMessageContaining("without a screen");
        assertThatThrownBy(() -> details().coldLeadConductor(ConductorSize.of("16 mm²")))
                .hasMessageContaining("cold lead conductor: 16 mm² was given");
        assertThatThrownBy(() -> details().runSpacing(millimetres(0))).hasMessageContaining("run spacing");
        assertThatThrownBy(() -> details().heatedArea(Amounts.squareMetres(-1))).hasMessageContaining("heated area");
        assertThatThrownBy(() -> details().box(Amounts.of(0, Units.CUBIC_INCH), true))
                .hasMessageContaining("box volume");
    }

    private static CircuitDesign ofLoads(InstallationDetails details, double... loads) {
        return CircuitDesign.of(
                Cables.supply("IEC 60364", 230, 10, "1.5 mm²"),
                IntStream.range(0, loads.length)
                        .mapToObj(i -> Cables.twin("c" + i, 50, loads[i] * 230, 230))
                        .toList(),
                details);
    }

    /**
     * 1.5 mm² carries 19.5 A alone (16 A device: two circuits for 32 A), 15.6 A as one of two (13 A device: three), 13.65 A
     * as one of three (13 A device: three).
     */
    @Test
    void circuitsAreRatedForTheirOwnNumber() {
        double[] loads = {8, 7, 5, 5, 4, 3};
        CircuitDesign together = ofLoads(InstallationDetails.NONE, loads);
        assertThat(together.circuits()).hasSize(3).allSatisfy(c -> {
            assertThat(c.ampacity().groupingFactor()).isEqualTo(0.7);
            assertThat(Given.in(c.protectiveDevice().orElseThrow(), Units.AMPERE))
                    .isLessThanOrEqualTo(13);
            assertThat(Given.in(c.current(), Units.AMPERE)).isLessThanOrEqualTo(13);
        });
        assertThat(about(together, "rated for 3 laid together (factor 0.7)")).isPresent();
        CircuitDesign apart = ofLoads(details().circuitsApart().build(), loads);
        assertThat(apart.circuits())
                .hasSize(2)
                .allSatisfy(c -> assertThat(c.ampacity().groupingFactor()).isEqualTo(1));
    }

    /** However many cables: no circuit is rated for fewer laid together than there are. */
    @Test
    void theGroupingIsAlwaysThatOfTheCircuits() {
        for (int count = 1; count <= 20; count++) {
            double[] loads = new double[count];
            java.util.Arrays.fill(loads, 5.5);
            CircuitDesign design = ofLoads(InstallationDetails.NONE, loads);
            int circuits = design.circuits().size();
            double factor = ElectricalCode.of("IEC 60364")
                    .ampacity(ConductorSize.of("1.5 mm²"), "C", Amounts.celsius(30), circuits)
                    .groupingFactor();
            assertThat(design.circuits())
                    .as("%d cables", count)
                    .allSatisfy(c -> assertThat(c.ampacity().groupingFactor()).isLessThanOrEqualTo(factor));
        }
        double[] many = new double[25];
        java.util.Arrays.fill(many, 6);
        CircuitDesign beyond = ofLoads(InstallationDetails.NONE, many);
        assertThat(about(beyond, "are more than the 20").orElseThrow().isError())
                .isTrue();
    }

    @Test
    void groundFaultByRoomAndEmbedding() {
        assertThat(groundFault("NEC 2011", RoomUse.KITCHEN, Embedding.CONCRETE)).contains("known here demands");
        assertThat(groundFault("NEC 2020", RoomUse.KITCHEN, Embedding.CONCRETE)).contains("NEC 2020, 424.44(E)");
        assertThat(groundFault("NEC 2011", RoomUse.BATH_OR_SHOWER, Embedding.CONCRETE))
                .contains("NEC 2011, 424.44(G)");
        assertThat(groundFault("NEC 2023", RoomUse.OTHER, Embedding.CONCRETE)).contains("known here demands");
        assertThat(groundFault("NEC 2023", RoomUse.OTHER, Embedding.FLOOR_COVERING))
                .contains("NEC 2023, 424.45(E)");
        assertThat(groundFault("NEC 2011", RoomUse.OTHER, Embedding.FLOOR_COVERING))
                .contains("known here demands");
    }

    private static String groundFault(String code, RoomUse use, Embedding embedding) {
        return design(code, CABLE, details().roomUse(use).embedding(embedding)).findings().stream()
                .filter(f -> f.subject().equals("ground fault"))
                .map(f -> f.message() + " " + f.source())
                .findFirst()
                .orElseThrow();
    }
}
