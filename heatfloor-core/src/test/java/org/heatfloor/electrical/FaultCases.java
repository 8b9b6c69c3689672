package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;

/** Simulated faults over their whole range, with the class each belongs to. */
final class FaultCases {

    static final List<String> CORES = List.of("CuNi44", "CuNi10", "CuNi2", "copper, annealed");

    private FaultCases() {}

    /**
     * One case.
     *
     * @param fault what is simulated
     * @param right the class it belongs to
     * @param others what may be said instead where the readings cannot tell; empty within the detectable range
     */
    record Case(SimulatedFault fault, CableFault right, Set<CableFault> others) {

        boolean detectable() {
            return others.isEmpty();
        }

        boolean allows(CableFault named) {
            return named == right || others.contains(named);
        }
    }

    /** What is known at a site besides the meter. */
    record Site(String core, boolean sensor, boolean tag) {

        TestLimits limits() {
            TestLimits limits = TestLimits.of(ElectricalCode.of("IEC 60364"), Alloy.of(core));
            return sensor ? limits.withSensor(new BetaThermistor(Amounts.ohms(10_000), Amounts.kelvins(3950))) : limits;
        }
    }

    static List<Site> sites() {
        List<Site> sites = new ArrayList<>();
        for (String core : CORES) {
            for (boolean sensor : new boolean[] {true, false}) {
                for (boolean tag : new boolean[] {true, false}) {
                    sites.add(new Site(core, sensor, tag));
                }
            }
        }
        return sites;
    }

    static TestLimits limits(String core) {
        return new Site(core, true, false).limits();
    }

    static HeatingCable cable() {
        return Cables.twin("K31.5", 31.5, 346.5, 230);
    }

    /** Every kind of fault over its whole range, undetectable ones included. */
    static List<Case> all(Site site) {
        List<Case> cases = new ArrayList<>();
        Resolution seen = site.limits().resolution();
        for (TestStage stage : TestStage.values()) {
            add(cases, new SimulatedFault.Cut(stage), CableFault.OPEN_CORE, true);
            add(cases, new SimulatedFault.BrokenScreen(stage), CableFault.SCREEN_OPEN, true);
            for (double ohms : new double[] {0, 100, 50_000, 900_000, 970_000, 1.03e6, 2e6, 4e6, 8e6, 3e7}) {
                add(
                        cases,
                        new SimulatedFault.Nick(stage, Amounts.ohms(ohms)),
                        CableFault.INSULATION,
                        ohms <= Given.in(seen.insulation(), Units.OHM),
                        CableFault.INSULATION_FALLING);
            }
            for (double kelvins : new double[] {-20, -15, -10, -8, -5, -3, 3, 5, 8, 10, 15, 20}) {
                add(
                        cases,
                        new SimulatedFault.Thermometer(stage, Amounts.of(kelvins, Units.KELVIN_DIFFERENCE)),
                        CableFault.WRONG_TEMPERATURE,
                        site.sensor() && Math.abs(kelvins) >= 10);
            }
            for (int i = 0; i <= 100; i += i < 78 ? 3 : 1) {
                shorted(cases, site, seen, stage, i / 100.0);
            }
        }
        for (int i = 5; i < 80; i += 5) {
            wrongCable(cases, site, seen, i / 100.0);
        }
        for (int i = 80; i <= 125; i++) {
            wrongCable(cases, site, seen, i / 100.0);
        }
        for (double ratio : new double[] {1.3, 1.5, 2, 3, 4, 6, 9, 12}) {
            wrongCable(cases, site, seen, ratio);
        }
        return cases;
    }

    /** At the first test, without a maker's reading, a short and another cable look the same. */
    private static void shorted(List<Case> cases, Site site, Resolution seen, TestStage stage, double fraction) {
        boolean first = stage == TestStage.OUT_OF_THE_BOX && !site.tag();
        add(
                cases,
                new SimulatedFault.Shorted(stage, fraction),
                first ? CableFault.WRONG_CABLE_OR_SHORT : CableFault.SHORTED_CORE,
                fraction <= (first ? seen.low() : seen.shortened()));
    }

    private static void wrongCable(List<Case> cases, Site site, Resolution seen, double ratio) {
        add(
                cases,
                new SimulatedFault.WrongCable(ratio),
                ratio > 1 || site.tag() ? CableFault.WRONG_CABLE : CableFault.WRONG_CABLE_OR_SHORT,
                ratio <= seen.low() || ratio >= seen.high());
    }

    private static void add(
            List<Case> cases, SimulatedFault fault, CableFault right, boolean detectable, CableFault... alike) {
        Set<CableFault> others = EnumSet.noneOf(CableFault.class);
        if (!detectable) {
            others.add(CableFault.NONE);
            others.add(CableFault.UNDECIDED);
            others.addAll(List.of(alike));
        }
        cases.add(new Case(fault, right, others));
    }
}
