package org.heatfloor.electrical;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;

/**
 * What the core's resistance says over a series. Every reading, brought to 20 °C, is compared with the maker's reading of
 * this cable, or with the first reading where that is not known: damage shows as a change that stays, because damage does
 * not heal; a reading that moves and comes back was a wrong temperature or a bad contact. Only a series without a change
 * is held against the label, by its mean. A temperature that no sensor confirmed may be 20 K wrong, and explains as much of
 * a change as the alloy's coefficient gives for that. What more than one cause explains is left undecided.
 */
final class CoreTrend {

    private static final double NOTHING = 1e-3;

    private final HeatingCable cable;
    private final TestFigures figures;
    private final List<MeterTest> tests;
    private final double[] byThermometer;
    private final double[] bySensor;
    private final boolean tagged;

    private CoreTrend(HeatingCable cable, TestFigures figures, List<MeterTest> read) {
        this.cable = cable;
        this.figures = figures;
        this.tests = read;
        this.tagged = !Double.isNaN(figures.factory());
        this.byThermometer = new double[read.size()];
        this.bySensor = new double[read.size()];
        for (int i = 0; i < read.size(); i++) {
            MeterTest test = read.get(i);
            double ohms = test.conductor().map(Reading::ohms).orElse(Double.NaN);
            byThermometer[i] = figures.ratio(ohms, test.celsius());
            bySensor[i] = figures.sensed(test).isPresent()
                    ? figures.ratio(ohms, figures.sensed(test).getAsDouble())
                    : Double.NaN;
        }
    }

    static Optional<Diagnosis> of(HeatingCable cable, TestFigures figures, List<MeterTest> tests) {
        List<MeterTest> read = tests.stream()
                .filter(test -> test.conductor().filter(r -> !r.overRange()).isPresent())
                .toList();
        if (read.isEmpty()) {
            return Optional.empty();
        }
        CoreTrend trend = new CoreTrend(cable, figures, read);
        Optional<Diagnosis> change = trend.change();
        boolean doubtful =
                change.filter(each -> each.fault() == CableFault.UNDECIDED).isPresent();
        // A doubtful movement of a core that is far from its label at every test does not hide that.
        return change.isPresent() && !(doubtful && trend.farAtEveryTest()) ? change : trend.label();
    }

    private boolean farAtEveryTest() {
        return !tagged && Arrays.stream(byThermometer).allMatch(figures::certainlyOut);
    }

    private boolean confirmed(int test) {
        return !Double.isNaN(bySensor[test]) && (tagged || !Double.isNaN(bySensor[0]));
    }

    /** Reading over reference; of the two temperatures the one by which less has changed, where there are two. */
    private double change(int test) {
        double thermometer = over(byThermometer[test], tagged ? figures.factoryRatio() : byThermometer[0]);
        if (!confirmed(test)) {
            return thermometer;
        }
        double sensor = over(bySensor[test], tagged ? figures.factoryRatio() : bySensor[0]);
        if ((thermometer - 1) * (sensor - 1) < 0) {
            return 1;
        }
        return Math.abs(thermometer - 1) < Math.abs(sensor - 1) ? thermometer : sensor;
    }

    /** A core without resistance from the first test on has not changed. */
    private static double over(double value, double reference) {
        return (value + NOTHING) / (reference + NOTHING);
    }

    private boolean still(int test) {
        return Math.abs(change(test) - 1) <= figures.drift();
    }

    private Optional<Diagnosis> change() {
        int count = byThermometer.length;
        return IntStream.range(tagged ? 0 : 1, count)
                .filter(i -> !still(i))
                .boxed()
                .findFirst()
                .map(i -> judged(i, count));
    }

    private Diagnosis judged(int moved, int count) {
        double change = change(moved);
        double size = Math.abs(change - 1);
        boolean last = moved == count - 1;
        boolean back = !last && IntStream.range(moved + 1, count).allMatch(this::still);
        boolean stays = IntStream.range(moved + 1, count)
                .allMatch(i -> (change(i) - 1) * (change - 1) > 0 && Math.abs(change(i) - 1) > figures.drift() / 2);
        double wrongTemperature = Resolution.UNCHECKED_KELVINS * Math.abs(figures.perKelvin());
        if (size <= Resolution.CERTAIN_DRIFTS * figures.drift()) {
            return undecided(moved, change, "little more than meter and temperature explain");
        }
        if (back && size > 2 * figures.drift()) {
            return !confirmed(moved) && size <= figures.drift() + 1.5 * wrongTemperature
                    ? Diagnosis.of(
                            CableFault.WRONG_TEMPERATURE,
                            tests.get(moved).stage(),
                            reads(moved, change)
                                    + " and is right again later: the temperature written down was not the cable's")
                    : undecided(
                            moved,
                            change,
                            "and is right again later: damage does not heal, so take a bad contact of"
                                    + " the meter's leads for likely");
        }
        if (stays && (confirmed(moved) || size > figures.drift() + wrongTemperature)) {
            return change < 1 ? shorter(moved, change) : risen(moved, change);
        }
        return undecided(
                moved,
                change,
                stays
                        ? "which a temperature 20 K wrong would explain as well as damage: no sensor confirms it"
                        : "and not at every later test: meter and temperature explain it as well as damage");
    }

    private String reads(int test, double change) {
        return "the core reads " + QuantityText.number(100 * change, 1) + " % of "
                + (tagged ? "the maker's reading " : "the first test ")
                + TestSeries.words(tests.get(test).stage());
    }

    private Diagnosis undecided(int moved, double change, String why) {
        return Diagnosis.of(
                CableFault.UNDECIDED,
                tests.get(moved).stage(),
                reads(moved, change) + ", " + why + "; measure again before going on");
    }

    private Diagnosis shorter(int moved, double change) {
        String where = cable.conductors() == 2
                ? "its conductors touch about " + QuantityText.number(change * cable.metres(), 1)
                        + " m from the cold lead"
                : "part of it is bridged";
        return new Diagnosis(
                CableFault.SHORTED_CORE,
                Optional.of(tests.get(moved).stage()),
                reads(moved, change) + ": " + where + ", or cable was cut off; it would overheat: do not energise",
                cable.conductors() == 2 ? Optional.of(Amounts.metres(change * cable.metres())) : Optional.empty());
    }

    private Diagnosis risen(int moved, double change) {
        return Diagnosis.of(
                CableFault.RESISTANCE_RISEN,
                tests.get(moved).stage(),
                reads(moved, change) + ": a bad joint or a partly broken core that would run hot");
    }

    /** The mean of a series that has not moved against the label. */
    private Optional<Diagnosis> label() {
        double mean = tagged
                ? figures.factoryRatio()
                : IntStream.range(0, byThermometer.length)
                        .mapToDouble(i -> byThermometer[i])
                        .average()
                        .orElse(1);
        if (figures.inBand(mean)) {
            return Optional.empty();
        }
        TestStage stage = tests.get(0).stage();
        double slack = 1 + Resolution.UNCHECKED_KELVINS * Math.abs(figures.perKelvin());
        if (!tagged
                && byThermometer.length == 1
                && !confirmed(0)
                && (figures.inBand(mean * slack) || figures.inBand(mean / slack))) {
            return Optional.of(Diagnosis.of(
                    CableFault.UNDECIDED,
                    stage,
                    "the core reads " + QuantityText.number(100 * mean, 1)
                            + " % of the label's resistance, which a temperature 20 K wrong would explain; measure the"
                            + " cable's temperature again"));
        }
        if (!figures.certainlyOut(mean)) {
            return Optional.of(Diagnosis.of(
                    CableFault.UNDECIDED,
                    stage,
                    "the core reads " + QuantityText.number(100 * mean, 1)
                            + " % of the label's resistance, at the edge of its tolerance: cannot be told from tolerance;"
                            + " compare the label with the cable and measure again"));
        }
        CableFault fault = tagged || mean > 1 ? CableFault.WRONG_CABLE : CableFault.WRONG_CABLE_OR_SHORT;
        return Optional.of(Diagnosis.of(fault, stage, RatioWords.atFirst(cable, mean, tagged)));
    }
}
