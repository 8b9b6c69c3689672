package org.heatfloor.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.heatfloor.quantity.Amounts.amperes;
import static org.heatfloor.quantity.Amounts.celsius;
import static org.heatfloor.quantity.Amounts.metres;
import static org.heatfloor.quantity.Amounts.millimetres;
import static org.heatfloor.quantity.Amounts.volts;
import static org.heatfloor.quantity.Amounts.watts;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;

/** Every figure the chapter prints is worked out here and looked for in its text. */
class ElectricalChapterTest {

    private static final int HEALTHY = 20_000;

    private final String chapter = read(Path.of("..", "docs", "electrical.md"));

    private static String read(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private void prints(String text, Object... figures) {
        assertThat(chapter).contains(String.format(Locale.ROOT, text, figures));
    }

    @Test
    void stackedTolerancesAndWrongSupplies() {
        double[] supply = {0, 5, 10};
        String[] name = {"none", "±5 %", "±10 %"};
        for (int i = 0; i < 3; i++) {
            SupplyTolerance tolerance = new SupplyTolerance(
                    "x",
                    org.heatfloor.quantity.Amounts.of(supply[i], Units.PERCENT),
                    org.heatfloor.quantity.Amounts.of(supply[i], Units.PERCENT),
                    TestLimits.PRACTICE);
            CableRating rating =
                    CableRating.of(Cables.twin("x", 10, 100, 230), volts(230), ResistanceTolerance.USUAL, tolerance);
            prints(
                    "| %s | %.2f %% | %.2f %% |",
                    name[i],
                    Given.in(rating.power().low(), Units.WATT),
                    Given.in(rating.power().high(), Units.WATT));
        }
        prints("120 V on 240 V gives %.0f %% (error)", share(120, 240));
        prints("208 V on 240 V %.1f %% (error)", share(208, 240));
        prints("230 V on 240 V %.1f %%", share(230, 240));
        prints("240 V on 208 V %.1f %% (warning)", share(240, 208));
        prints("240 V on 120 V %.0f %% (error, wrong cable)", share(240, 120));
    }

    private static double share(double rated, double applied) {
        return Given.in(
                CableRating.of(Cables.twin("x", 10, 100, rated), volts(applied))
                        .power()
                        .nominal(),
                Units.WATT);
    }

    @Test
    void workedExample() {
        HeatingCable cable =
                new HeatingCable("K31.5", 2, metres(31.5), watts(346.5), volts(230), millimetres(5), metres(3));
        Supply supply = Supply.of(volts(230), ElectricalCode.of("IEC 60364"), metres(14), ConductorSize.of("2.5 mm²"))
                .withInstallation("C")
                .withAmbient(celsius(30));
        CircuitDesign design = CircuitDesign.of(supply, List.of(cable));
        CableRating rating = CableRating.of(cable, volts(230), ResistanceTolerance.USUAL, SupplyTolerance.IEC_60038);

        prints(
                "230²/346.5 = %.2f Ω`, accepted %.2f Ω to %.2f Ω; per metre `%.3f Ω/m`",
                Given.in(rating.resistance().nominal(), Units.OHM),
                Given.in(rating.resistance().low(), Units.OHM),
                Given.in(rating.resistance().high(), Units.OHM),
                Given.in(cable.linearResistance(), Units.OHM_PER_METRE));
        Circuit circuit = design.circuits().get(0);
        prints(
                "= %.3f A`; design current the same; least standard rating %.0f A; the conductor carries %.0f A",
                Given.in(circuit.current(), Units.AMPERE),
                Given.in(circuit.protectiveDevice().orElseThrow(), Units.AMPERE),
                Given.in(circuit.ampacity().usable(), Units.AMPERE));
        prints(
                "= %.3f V`, %.3f %% of 230 V",
                Given.in(circuit.voltageDrop(), Units.VOLT), Given.in(circuit.voltageDropShare(), Units.PERCENT));
        prints(
                "%.1f W to %.1f W",
                Given.in(rating.power().low(), Units.WATT),
                Given.in(rating.power().high(), Units.WATT));
        LeakageBudget leakage = LeakageBudget.of(supply, List.of(cable), LeakageBudget.USUAL_CAPACITANCE.nominal());
        prints(
                "= %.3f mA` of %.0f mA",
                Given.in(leakage.current(), Units.MILLIAMPERE), Given.in(leakage.limit(), Units.MILLIAMPERE));
    }

    @Test
    void toldMoreItJudgesMore() {
        HeatingCable cable =
                new HeatingCable("K31.5", 2, metres(31.5), watts(346.5), volts(230), millimetres(5), metres(3));
        Supply supply = Supply.of(volts(230), ElectricalCode.of("IEC 60364"), metres(14), ConductorSize.of("2.5 mm²"));
        InstallationDetails details = InstallationDetails.builder()
                .control(new ControlDevice("thermostat", amperes(16), volts(250), true))
                .controlZone(WetRoomZone.atBasin(metres(0.8), metres(1.2)))
                .roomUse(RoomUse.BATH_OR_SHOWER)
                .places()
                .capacitance(LeakageBudget.USUAL_CAPACITANCE.nominal())
                .coldLeadConductor(ConductorSize.of("1 mm²"))
                .build();
        CircuitDesign told = CircuitDesign.of(supply, List.of(cable.withScreen(CableScreen.UNMEASURED)), details);
        assertThat(told.hasErrors()).isFalse();
        assertThat(told.findings()).noneMatch(f -> f.subject().equals("not checked"));
    }

    /** 32 A of cables on 1.5 mm², as printed. */
    @Test
    void circuitsTogetherAndApart() {
        Supply supply = Cables.supply("IEC 60364", 230, 10, "1.5 mm²");
        List<HeatingCable> cables = java.util.stream.Stream.of(8.0, 7.0, 5.0, 5.0, 4.0, 3.0)
                .map(a -> Cables.twin("c" + a, 50, a * 230, 230))
                .toList();
        CircuitDesign apart = CircuitDesign.of(
                supply, cables, InstallationDetails.builder().circuitsApart().build());
        CircuitDesign together = CircuitDesign.of(supply, cables);
        prints(
                "take %d circuits of %.0f A laid apart (`circuitsApart()`), and %d of %.0f A laid",
                apart.circuits().size(), greatest(apart), together.circuits().size(), greatest(together));
        prints("(factor %.1f)", together.circuits().get(0).ampacity().groupingFactor());
        prints("More than %d together", CircuitSharing.MOST_TOGETHER);
        prints(
                "mesh of %.0f mm or finer",
                Given.in(
                        ElectricalCode.of("IEC 60364")
                                .rule(RuleTopic.SCREEN)
                                .orElseThrow()
                                .limit(Units.MILLIMETRE),
                        Units.MILLIMETRE));
    }

    private static double greatest(CircuitDesign design) {
        return design.circuits().stream()
                .mapToDouble(c -> Given.in(c.protectiveDevice().orElseThrow(), Units.AMPERE))
                .max()
                .orElseThrow();
    }

    @Test
    void theCodeShownIsTheCodeRun() {
        String own = squeezed(
                read(Path.of("src", "test", "java", "org", "heatfloor", "electrical", "ElectricalChapterTest.java")));
        int blocks = 0;
        for (int start = chapter.indexOf("```java"); start >= 0; start = chapter.indexOf("```java", start + 1)) {
            int from = start + "```java".length();
            assertThat(own).contains(squeezed(chapter.substring(from, chapter.indexOf("```", from))));
            blocks++;
        }
        assertThat(blocks).isEqualTo(2);
    }

    private static String squeezed(String text) {
        return text.replaceAll("\\s+", "");
    }

    @Test
    void editionMapIsTheCodes() {
        assertThat(ElectricalCode.all()).allSatisfy(code -> assertThat(chapter).contains("`" + code.name() + "`"));
        for (String topic : List.of(
                "LINEAR_POWER",
                "RUN_SPACING",
                "COLD_LEAD_COLOUR",
                "PANEL_DENSITY_IN_CONCRETE",
                "PANEL_DENSITY_UNDER_COVERING")) {
            RuleTopic each = RuleTopic.valueOf(topic);
            assertThat(ElectricalCode.of("NEC 2023").rule(each)).isEmpty();
            String source = ElectricalCode.of("NEC 2011")
                    .rule(each)
                    .orElseThrow()
                    .source()
                    .text();
            assertThat(chapter).contains(source.substring("NEC 2011, ".length()) + " | – | – |");
        }
        everyClauseOfTheMapIsARule();
        assertThat(Alloy.all()).hasSize(11);
        assertThat(chapter).contains("`Alloy` has eleven");
    }

    /** Each cell of the chapter's table of editions stands in a rule of its edition. */
    private void everyClauseOfTheMapIsARule() {
        String[] editions = {"NEC 2011", "NEC 2020", "NEC 2023"};
        int cells = 0;
        for (String line : chapter.substring(chapter.indexOf("| topic | NEC 2011"))
                .lines()
                .skip(2)
                .toList()) {
            if (!line.startsWith("|")) {
                break;
            }
            String[] row = line.split(" *\\| *");
            for (int i = 0; i < 3; i++) {
                String cell = row[i + 2];
                if (cell.equals("–") || cell.equals("may leave")) {
                    continue;
                }
                assertThat(ElectricalCode.of(editions[i]).rules().values())
                        .as("%s: %s", editions[i], line)
                        .anySatisfy(rule -> assertThat(rule.source().text()).contains(cell));
                cells++;
            }
        }
        assertThat(cells).isGreaterThan(40);
    }

    @Test
    void falseAlarmsAreAsPrinted() {
        prints("False alarms among %d healthy cables", HEALTHY);
        int[] nickel = DiagnosisTest.falseAlarms("CuNi44", HEALTHY);
        int[] copper = DiagnosisTest.falseAlarms("copper, annealed", HEALTHY);
        prints("%d with a CuNi44 core, %d with a copper core", nickel[0], copper[0]);
        prints("until it is repeated: %d and %d of them", nickel[1], copper[1]);
        DiagnosisTest.Tally tally = DiagnosisTest.tally();
        prints(
                "%d faulty series, %d of them within the detectable range: %d in their class",
                tally.cases(), tally.detectable(), tally.named());
        prints("Beyond that range: %d in a wrong class", tally.wrong().size());
    }

    @Test
    void displaysAreAsPrinted() {
        prints("Of %d good cables", MeterDisplayTest.CABLES);
        for (double ohms : new double[] {4, 7.2, 14.4, 40}) {
            HeatingCable cable = MeterDisplayTest.ofOhms(ohms);
            SimulatedFault none = new SimulatedFault.None();
            TestLimits share = FaultCases.limits("CuNi44");
            TestLimits digits = MeterDisplayTest.withDisplay(cable);
            prints(
                    "| %.1f Ω | %d | %d |",
                    ohms,
                    MeterDisplayTest.not(CableFault.NONE, none, cable, share),
                    MeterDisplayTest.not(CableFault.NONE, none, cable, digits));
        }
    }

    @Test
    void resolutionIsAsPrinted() {
        for (String core : FaultCases.CORES) {
            Resolution seen = new FaultCases.Site(core, true, false).limits().resolution();
            prints(
                    "| %s | %.1f %% of the length | %.1f %% of the label's resistance | %.1f %% |",
                    core, 100 * seen.shortened(), 100 * seen.low(), 100 * seen.high());
        }
        Resolution bare =
                new FaultCases.Site("copper, annealed", false, false).limits().resolution();
        prints("copper core is seen up to %.1f %% of the length", 100 * bare.shortened());
        prints("seen up to %.3f MΩ", Given.in(bare.insulation(), Units.MEGAOHM));
        Resolution fine = FaultCases.limits("CuNi44")
                .withMeterAccuracy(org.heatfloor.quantity.Amounts.of(0.2, Units.PERCENT))
                .resolution();
        prints("at %.1f %% a touch in CuNi44 up to %.1f %%", 0.2, 100 * fine.shortened());
        prints("wrong by %.0f K would explain", Resolution.UNCHECKED_KELVINS);
    }

    private static double limit(String code, RuleTopic topic, javax.measure.Unit<?> unit) {
        return limitIn(ElectricalCode.of(code).rule(topic).orElseThrow(), unit);
    }

    private static <Q extends javax.measure.Quantity<Q>> double limitIn(CodeRule rule, javax.measure.Unit<Q> unit) {
        return Given.in(rule.limit(unit), unit);
    }

    @Test
    void limitsAreAsPrinted() {
        prints(
                "Limits %.0f %% (IEC, BS) and %.0f %% (NEC, advice)",
                limit("IEC 60364", RuleTopic.VOLTAGE_DROP, Units.PERCENT),
                limit("NEC 2023", RuleTopic.VOLTAGE_DROP, Units.PERCENT));
        prints("%.0f mA (BS 7671", limit("BS 7671:2018", RuleTopic.RESIDUAL_CURRENT, Units.MILLIAMPERE));
        prints("interrupter, %.0f mA (NEC", limit("NEC 2023", RuleTopic.RESIDUAL_CURRENT, Units.MILLIAMPERE));
        prints("against %.0f %% of the device's rating", limit("BS 7671:2018", RuleTopic.LEAKAGE_SHARE, Units.PERCENT));
        prints("Least insulation %.0f MΩ", limit("IEC 60364", RuleTopic.INSULATION_RESISTANCE, Units.MEGAOHM));
        prints("(core to screen, %.0f V)", limit("IEC 60364", RuleTopic.INSULATION_TEST_VOLTAGE, Units.VOLT));
        prints("%.2f·I` for conductor", limit("NEC 2023", RuleTopic.CONTINUOUS_LOAD_DEVICE, Units.ONE));
        prints("%.0f A for an\n   element", limit("NEC 2023", RuleTopic.ELEMENT_PROTECTION, Units.AMPERE));
        prints("%.0f A where several", limit("NEC 2023", RuleTopic.SEVERAL_OUTLETS, Units.AMPERE));
        prints("| %.0f A of one cable |", limit("NEC 2023", RuleTopic.SUBDIVISION, Units.AMPERE));
        prints("| %.0f W/m in concrete |", limit("NEC 2011", RuleTopic.LINEAR_POWER, Units.WATT_PER_METRE));
        prints("| %.0f mm between runs", limit("NEC 2011", RuleTopic.RUN_SPACING, Units.MILLIMETRE));
        prints(
                "| %.0f W/m² of panel sets in concrete |",
                limit("NEC 2011", RuleTopic.PANEL_DENSITY_IN_CONCRETE, Units.WATT_PER_SQUARE_METRE));
        prints(
                "| %.0f W/m² of panel sets under covering |",
                limit("NEC 2011", RuleTopic.PANEL_DENSITY_UNDER_COVERING, Units.WATT_PER_SQUARE_METRE));
        prints("%.0f K apart", Given.in(FaultCases.limits("CuNi44").sensorTolerance(), Units.KELVIN_DIFFERENCE));
        double[] band = ScreenKernel.band(1, 1, 20);
        prints("within %.0f %% and %.1f Ω", 100 * (1 - band[0]), band[2] - 1 - (1 - band[0]));
        double[] nick = simulated(SimulatedFault.Nick.class, n -> Given.in(n.contact(), Units.MEGAOHM));
        double[] touch = simulated(SimulatedFault.Shorted.class, f -> 100 * f.fraction());
        double[] other = simulated(SimulatedFault.WrongCable.class, f -> 100 * f.ratio());
        double[] thermometer = simulated(
                SimulatedFault.Thermometer.class, f -> Math.abs(Given.in(f.offset(), Units.KELVIN_DIFFERENCE)));
        prints("nick of %.0f Ω to %.0f MΩ", nick[0], nick[1]);
        prints("short at %.0f %% to %.0f %% of the length", touch[0], touch[1]);
        prints("another cable of %.0f %% to %.0f %% of the", other[0], other[1]);
        prints("thermometer off by %.0f K to %.0f K", thermometer[0], thermometer[1]);
    }

    private static <T extends SimulatedFault> double[] simulated(
            Class<T> kind, java.util.function.ToDoubleFunction<T> figure) {
        java.util.DoubleSummaryStatistics range = FaultCases.all(
                        FaultCases.sites().get(0))
                .stream()
                .map(FaultCases.Case::fault)
                .filter(kind::isInstance)
                .map(kind::cast)
                .mapToDouble(figure)
                .summaryStatistics();
        return new double[] {range.getMin(), range.getMax()};
    }

    @Test
    void betaLawOffItsPoints() {
        BetaThermistor beta = SensorCurveTest.beta(3435);
        prints(
                "%.1f %% low at 50 °C and %.1f %% high at 0 °C",
                100 * (1 - Given.in(beta.resistanceAt(celsius(50)), Units.OHM) / 4160),
                100 * (Given.in(beta.resistanceAt(celsius(0)), Units.OHM) / 27_280 - 1));
    }
}
