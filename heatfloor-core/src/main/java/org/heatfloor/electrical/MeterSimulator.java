package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * Draws the meter readings of a cable over the four stages, with or without a fault. The core lies uniformly within its
 * tolerance; the meter's and the thermometer's errors are normal with half the accuracy (thermometer: 0.5 K) as standard
 * deviation; the floor sensor errs by 0.5 % (one standard deviation) and lags the cable by up to 1 K; ambient is 8 °C to 28
 * °C; sound insulation is 50 MΩ to 5 GΩ on a logarithmic scale. The same seed gives the same readings.
 */
public final class MeterSimulator {

    private static final double OPEN_RANGE_OHMS = 1e6;

    private final TestFigures figures;
    private final SplittableRandom random;

    private MeterSimulator(TestFigures figures, long seed) {
        this.figures = figures;
        this.random = new SplittableRandom(seed);
    }

    /**
     * The four tests of one cable.
     *
     * @param cable the cable
     * @param limits tolerance, core, sensor and meter accuracy to draw from
     * @param fault what is wrong with it
     * @param seed the seed
     * @return the tests, one a stage
     */
    public static List<MeterTest> tests(HeatingCable cable, TestLimits limits, SimulatedFault fault, long seed) {
        return tests(TestFigures.of(cable, limits), fault, seed);
    }

    static List<MeterTest> tests(TestFigures figures, SimulatedFault fault, long seed) {
        return new MeterSimulator(figures, seed).draw(fault);
    }

    /**
     * What the maker would have written on the tag of the cable that {@link #tests} draws from the same seed: its resistance
     * at 20 °C before any damage, read with a meter of the same accuracy.
     *
     * @param cable the cable
     * @param limits tolerance and meter accuracy to draw from
     * @param fault what is wrong with it; another cable carries its own tag
     * @param seed the seed
     * @return the reading
     */
    public static Quantity<ElectricResistance> factoryReading(
            HeatingCable cable, TestLimits limits, SimulatedFault fault, long seed) {
        return Amounts.ohms(factoryOhms(TestFigures.of(cable, limits), fault, seed));
    }

    static double factoryOhms(TestFigures figures, SimulatedFault fault, long seed) {
        double at20 = new MeterSimulator(figures, seed).at20(fault);
        return at20 * new MeterSimulator(figures, ~seed).metered();
    }

    private double at20(SimulatedFault fault) {
        double low = figures.low();
        double high = figures.high();
        double at20 = figures.label() * (low + (high - low) * random.nextDouble());
        return fault instanceof SimulatedFault.WrongCable wrong ? at20 * wrong.ratio() : at20;
    }

    private List<MeterTest> draw(SimulatedFault fault) {
        double at20 = at20(fault);
        double insulation = 50e6 * Math.pow(100, random.nextDouble());
        List<MeterTest> tests = new ArrayList<>();
        for (TestStage stage : TestStage.values()) {
            tests.add(test(fault, stage, at20, insulation));
        }
        return List.copyOf(tests);
    }

    private MeterTest test(SimulatedFault fault, TestStage stage, double at20, double insulation) {
        double celsius = 8 + 20 * random.nextDouble();
        double core = Ohm.atTemperature(at20, figures.perKelvin(), celsius - 20);
        double leak = insulation * (0.8 + 0.4 * random.nextDouble());
        boolean open = false;
        double shown = celsius + 0.5 * normal();
        if (fault instanceof SimulatedFault.Cut cut) {
            open = stage.compareTo(cut.from()) >= 0;
        } else if (fault instanceof SimulatedFault.Nick nick && stage.compareTo(nick.from()) >= 0) {
            leak = Ohm.parallel(leak, Math.max(1e-3, Si.in("contact", nick.contact(), Units.OHM)));
        } else if (fault instanceof SimulatedFault.Shorted bridge && stage.compareTo(bridge.from()) >= 0) {
            core *= bridge.fraction();
        } else if (fault instanceof SimulatedFault.Thermometer thermometer && stage == thermometer.at()) {
            shown += Si.in("offset", thermometer.offset(), Units.KELVIN_DIFFERENCE);
        }
        boolean screenOpen = fault instanceof SimulatedFault.BrokenScreen broken && stage.compareTo(broken.from()) >= 0;
        double loop = core + figures.leads();
        MeterTest test = MeterTest.at(stage, Amounts.celsius(shown))
                .withConductor(
                        open
                                ? Reading.above(Amounts.ohms(OPEN_RANGE_OHMS))
                                : Reading.of(Amounts.ohms(loop * metered())))
                .withInsulation(Reading.of(Amounts.ohms(leak * metered())))
                .withScreen(screen(screenOpen, celsius));
        if (figures.sensor().isEmpty()) {
            return test;
        }
        double floor = celsius - 1 + 2 * random.nextDouble();
        double sensor = figures.sensor().get().ohms(floor);
        return test.withSensor(Reading.of(Amounts.ohms(sensor * (1 + 0.005 * normal()))));
    }

    private Reading screen(boolean open, double celsius) {
        double contact = random.nextDouble();
        if (open) {
            return Reading.above(Amounts.ohms(OPEN_RANGE_OHMS));
        }
        return Reading.of(Amounts.ohms(
                figures.screenAt20().isPresent()
                        ? ScreenKernel.band(figures.screenAt20().getAsDouble(), 1, celsius)[1] + 0.3 * contact
                        : 0.2 + contact));
    }

    private double metered() {
        return 1 + figures.accuracy() / 2 * normal();
    }

    /** Sum of twelve uniforms less six: mean 0, standard deviation 1, never beyond 6. */
    private double normal() {
        double sum = -6;
        for (int i = 0; i < 12; i++) {
            sum += random.nextDouble();
        }
        return sum;
    }
}
