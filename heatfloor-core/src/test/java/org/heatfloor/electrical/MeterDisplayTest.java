package org.heatfloor.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Readings as a display shows them: rounded to its last digit and wrong by one digit either way. */
class MeterDisplayTest {

    static final double DIGIT = 0.1;
    static final int CABLES = 2000;

    private static TestLimits limits() {
        return FaultCases.limits("CuNi44");
    }

    static HeatingCable ofOhms(double ohms) {
        return Cables.twin("low", 100, 120 * 120 / ohms, 120);
    }

    static TestLimits withDisplay(HeatingCable cable) {
        return limits().withMeter(Amounts.of(1, Units.PERCENT), Amounts.ohms(DIGIT), cable);
    }

    /** How many of so many cables with this fault are not put in the class. */
    static int not(CableFault right, SimulatedFault fault, HeatingCable cable, TestLimits judged) {
        Random random = new Random(3);
        int wrong = 0;
        for (int seed = 0; seed < CABLES; seed++) {
            List<MeterTest> shown = new ArrayList<>();
            for (MeterTest test : MeterSimulator.tests(cable, limits(), fault, seed)) {
                double ohms = test.conductor().orElseThrow().ohms();
                double digits = Math.rint(ohms / DIGIT) + random.nextInt(3) - 1;
                shown.add(test.withConductor(Reading.of(Amounts.ohms(Math.max(0, DIGIT * digits)))));
            }
            wrong += TestSeries.of(cable, judged, shown).diagnosis().fault() == right ? 0 : 1;
        }
        return wrong;
    }

    @ParameterizedTest
    @ValueSource(doubles = {4, 7.2, 14.4, 40})
    void theDigitIsReckonedWith(double ohms) {
        HeatingCable cable = ofOhms(ohms);
        assertThat(not(CableFault.NONE, new SimulatedFault.None(), cable, withDisplay(cable)))
                .isZero();
        SimulatedFault half = new SimulatedFault.Shorted(TestStage.AFTER_COVERING, 0.5);
        assertThat(not(CableFault.SHORTED_CORE, half, cable, withDisplay(cable)))
                .isZero();
    }

    @Test
    void aDisplayTooCoarseIsRefused() {
        assertThatThrownBy(() -> limits().withMeter(Amounts.of(1, Units.PERCENT), Amounts.ohms(1), ofOhms(10)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContainingAll("low", "21 %", "at most 10 %", "finer range");
        assertThat(Given.in(withDisplay(ofOhms(10)).meterAccuracy(), Units.PERCENT))
                .isEqualTo(3);
    }
}
