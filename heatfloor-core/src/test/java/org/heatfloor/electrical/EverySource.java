package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.heatfloor.finding.Finding;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;

/** Designs and test series that between them make the package say everything it can say. */
final class EverySource {

    private EverySource() {}

    static List<Finding> findings() {
        List<Finding> all = new ArrayList<>();
        for (ElectricalCode code : ElectricalCode.all()) {
            circuits(code, all);
            parts(code, all);
            series(code, all);
        }
        return all;
    }

    private static Supply supply(ElectricalCode code, double volts, int size, double metres) {
        return Cables.supply(
                code.name(), volts, metres, code.conductorSizes().get(size).toString());
    }

    private static void circuits(ElectricalCode code, List<Finding> all) {
        double volts = code.isNec() ? 240 : 230;
        Supply usual = supply(code, volts, 1, 20);
        HeatingCable cable = Cables.twin("x", 50, 500, volts);
        all.addAll(CircuitDesign.of(usual, List.of(cable)).findings());
        all.addAll(CircuitDesign.of(supply(code, volts * 0.97, 1, 400), List.of(Cables.twin("far", 100, 1500, volts)))
                .findings());
        for (double rated : new double[] {0.5, 0.8, 1.15, 2}) {
            all.addAll(CircuitDesign.of(usual, List.of(Cables.twin("other", 50, 500, volts * rated)))
                    .findings());
        }
        all.addAll(CircuitDesign.of(usual, List.of(Cables.twin("huge", 500, 60 * volts, volts)))
                .findings());
        all.addAll(CircuitDesign.of(usual, List.of(Cables.twin("hot", 5, 500, volts)))
                .findings());
        all.addAll(CircuitDesign.of(
                        usual,
                        List.of(new HeatingCable(
                                "bare",
                                2,
                                Amounts.metres(50),
                                Amounts.watts(500),
                                Amounts.volts(volts),
                                Amounts.millimetres(5),
                                Amounts.metres(1))))
                .findings());
        List<HeatingCable> many = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            many.add(Cables.single("m" + i, 200, 9 * volts, volts).withScreen(CableScreen.NONE));
        }
        all.addAll(CircuitDesign.of(usual, many.subList(0, 4)).findings());
        all.addAll(CircuitDesign.of(usual, many).findings());
        ControlDevice small = new ControlDevice("small", Amounts.amperes(1), Amounts.volts(100), false);
        ControlDevice large = new ControlDevice("large", Amounts.amperes(40), Amounts.volts(400), true);
        ControlDevice barely = new ControlDevice("barely", Amounts.amperes(6), Amounts.volts(400), true);
        all.addAll(CircuitDesign.of(usual, List.of(Cables.twin("near", 200, 5.9 * volts, volts)), barely)
                .findings());
        all.addAll(CircuitDesign.of(usual, List.of(cable, cable), small).findings());
        ConductorSize lead = ConductorSize.of(code.isNec() ? "14 AWG" : "1 mm²");
        all.addAll(CircuitDesign.of(
                        usual,
                        List.of(cable),
                        InstallationDetails.builder()
                                .coldLeadConductor(ConductorSize.of("1 mm²"))
                                .box(Amounts.of(20, Units.CUBIC_INCH), false)
                                .build())
                .findings());
        for (RoomUse use : RoomUse.values()) {
            for (Embedding embedding : Embedding.values()) {
                for (boolean bad : new boolean[] {true, false}) {
                    InstallationDetails.Builder details = InstallationDetails.builder()
                            .control(bad ? small : large)
                            .controlZone(bad ? WetRoomZone.ZONE_1 : WetRoomZone.OUTSIDE)
                            .roomUse(use)
                            .embedding(embedding)
                            .runSpacing(Amounts.millimetres(bad ? 20 : 90))
                            .heatedArea(Amounts.squareMetres(bad ? 1 : 4))
                            .panelSet()
                            .leadColour(bad ? LeadColour.BROWN : LeadColour.RED)
                            .places(bad ? CablePlace.values() : new CablePlace[0])
                            .earthedMesh(Amounts.millimetres(bad ? 50 : 10))
                            .capacitance(Amounts.of(bad ? 900 : 100, Units.PICOFARAD_PER_METRE))
                            .coldLeadConductor(lead)
                            .box(Amounts.of(bad ? 5 : 50, Units.CUBIC_INCH), bad);
                    InstallationDetails known = details.build();
                    all.addAll(CircuitDesign.of(usual, List.of(cable), known).findings());
                    for (CableScreen screen : List.of(CableScreen.NONE, CableScreen.UNMEASURED)) {
                        all.addAll(CircuitDesign.of(usual, List.of(cable.withScreen(screen)), known)
                                .findings());
                    }
                }
            }
            all.addAll(CircuitDesign.of(
                            usual,
                            List.of(cable.withScreen(CableScreen.NONE)),
                            InstallationDetails.builder().roomUse(use).build())
                    .findings());
        }
    }

    private static void parts(ElectricalCode code, List<Finding> all) {
        List<HeatingCable> two = List.of(Cables.twin("a", 50, 500, 230), Cables.twin("b", 50, 500, 120));
        all.addAll(CableGroup.of(two, Amounts.volts(230), Connection.PARALLEL).findings());
        all.addAll(CableGroup.of(two, Amounts.volts(230), Connection.SERIES).findings());
        for (WetRoomZone zone : WetRoomZone.values()) {
            all.add(zone.control(code, "thermostat"));
        }
    }

    private static void series(ElectricalCode code, List<Finding> all) {
        HeatingCable cable = FaultCases.cable();
        HeatingCable single =
                Cables.single("s", 50, 500, 230).withScreen(CableScreen.of(Amounts.of(0.02, Units.OHM_PER_METRE)));
        TestLimits limits = TestLimits.of(code, Alloy.of("CuNi44"));
        TestLimits sensed = limits.withSensor(new BetaThermistor(Amounts.ohms(10_000), Amounts.kelvins(3950)));
        MeterTest bare = MeterTest.at(TestStage.OUT_OF_THE_BOX, Amounts.celsius(20));
        for (double ohms : new double[] {0, 0.5, 5, 150, 1e4, 5e5, 5e6}) {
            for (boolean above : new boolean[] {false, true}) {
                if (above && ohms == 0) {
                    continue;
                }
                Reading reading = new Reading(Amounts.ohms(ohms), above);
                MeterTest test = new MeterTest(
                        TestStage.OUT_OF_THE_BOX,
                        Amounts.celsius(20),
                        Optional.of(reading),
                        Optional.of(reading),
                        Optional.of(reading),
                        Optional.of(reading),
                        Optional.of(Amounts.volts(above ? 9 : 500)));
                all.addAll(TestSeries.of(cable, sensed, List.of(test)).findings());
                all.addAll(TestSeries.of(single, sensed, List.of(test)).findings());
                all.addAll(TestSeries.of(
                                cable,
                                limits.withFactoryReading(Amounts.ohms(ohms == 150 ? 150 : 75)),
                                List.of(test, MeterTest.at(TestStage.AFTER_COVERING, Amounts.celsius(20))))
                        .findings());
            }
        }
        all.addAll(TestSeries.of(cable, sensed, List.of(bare)).findings());
        all.addAll(
                TestSeries.of(cable, limits, List.of(bare.withInsulation(Reading.above(Amounts.of(2, Units.GIGAOHM)))))
                        .findings());
    }
}
