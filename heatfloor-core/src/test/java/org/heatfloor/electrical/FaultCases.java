package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.List;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;

/** Simulated faults with the class each belongs to. */
final class FaultCases {

    static final List<String> CORES = List.of("CuNi44", "CuNi10", "CuNi2", "copper, annealed");

    private FaultCases() {}

    /**
     * One case.
     *
     * @param fault what is simulated
     * @param expected the class it belongs to
     */
    record Case(SimulatedFault fault, CableFault expected) {}

    static TestLimits limits(String core) {
        return TestLimits.of(ElectricalCode.of("IEC 60364"), Alloy.of(core))
                .withSensor(new BetaThermistor(Amounts.ohms(10_000), Amounts.kelvins(3950)));
    }

    static HeatingCable cable() {
        return Cables.twin("K31.5", 31.5, 346.5, 230);
    }

    static List<Case> all() {
        List<Case> cases = new ArrayList<>();
        for (TestStage stage : TestStage.values()) {
            cases.add(new Case(new SimulatedFault.Cut(stage), CableFault.OPEN_CORE));
            for (double ohms : new double[] {0, 100, 50_000, 900_000}) {
                cases.add(new Case(new SimulatedFault.Nick(stage, Amounts.ohms(ohms)), CableFault.INSULATION));
            }
            for (double kelvins : new double[] {-20, 20}) {
                cases.add(new Case(
                        new SimulatedFault.Thermometer(stage, Amounts.of(kelvins, Units.KELVIN_DIFFERENCE)),
                        CableFault.WRONG_TEMPERATURE));
            }
            if (stage != TestStage.OUT_OF_THE_BOX) {
                for (double x : new double[] {0.02, 0.1, 0.25, 0.5, 0.75, 0.9, 0.93}) {
                    cases.add(new Case(new SimulatedFault.Shorted(stage, x), CableFault.SHORTED_CORE));
                }
            }
        }
        for (double ratio : new double[] {0.25, 0.5, 0.7, 0.8, 1.25, 1.5, 2, 4}) {
            cases.add(new Case(new SimulatedFault.WrongCable(ratio), CableFault.WRONG_CABLE));
        }
        return cases;
    }
}
