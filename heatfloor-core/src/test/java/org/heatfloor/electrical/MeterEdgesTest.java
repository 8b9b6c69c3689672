package org.heatfloor.electrical;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;

/** Readings at the edges: damp insulation, a core of less than its cold leads, a cold site. */
class MeterEdgesTest {

    /** Damp insulation is dried and measured again before the tile; under fresh mortar it may be low and pass. */
    @Test
    void fallenInsulationIsNotCovered() {
        MeterTest good = DiagnosisTest.good(TestStage.OUT_OF_THE_BOX)
                .withScreen(Reading.of(Amounts.ohms(0.5)))
                .withSensor(DiagnosisTest.sensorAt20());
        Reading damp = Reading.of(Amounts.of(1.2, Units.MEGAOHM));
        MeterTest fixed = at(TestStage.FIXED_ON_MEMBRANE, good);
        assertThat(DiagnosisTest.mayBeCovered(good, fixed.withInsulation(damp))).isFalse();
        assertThat(DiagnosisTest.mayBeCovered(good, fixed.withInsulation(damp), fixed))
                .isTrue();
        assertThat(DiagnosisTest.mayBeCovered(good, fixed, fixed.withInsulation(damp)))
                .isFalse();
        TestSeries wet = TestSeries.of(
                FaultCases.cable(),
                DiagnosisTest.plain(),
                List.of(
                        good,
                        fixed,
                        at(TestStage.AFTER_COVERING, good).withInsulation(damp),
                        at(TestStage.BEFORE_ENERGISING, good).withInsulation(damp)));
        assertThat(wet.diagnosis().fault()).isEqualTo(CableFault.INSULATION_FALLING);
        assertThat(wet.mayBeEnergised()).isTrue();
    }

    private static MeterTest at(TestStage stage, MeterTest like) {
        return new MeterTest(
                stage,
                like.ambient(),
                like.conductor(),
                like.insulation(),
                like.screen(),
                like.sensor(),
                like.insulationVoltage());
    }

    /** A reading below that of the cold leads leaves nothing of the core, not less than nothing. */
    @Test
    void aTouchWithinTheColdLeadIsNoNegativeLength() {
        Diagnosis touching = TestSeries.of(
                        FaultCases.cable(),
                        DiagnosisTest.plain().withColdLeads(Amounts.ohms(2)),
                        List.of(MeterTest.at(TestStage.OUT_OF_THE_BOX, Amounts.celsius(20))
                                .withConductor(Reading.of(Amounts.ohms(1)))))
                .diagnosis();
        assertThat(touching.fault()).isEqualTo(CableFault.WRONG_CABLE_OR_SHORT);
        assertThat(touching.message()).contains("about 0 m").doesNotContain("-");
    }

    @Test
    void aColdSiteIsJudgedToTheEndOfTheSensorsCurve() {
        TestLimits wide = new TestLimits(
                DiagnosisTest.plain().tolerance(),
                DiagnosisTest.plain().core(),
                DiagnosisTest.plain().coldLeads(),
                DiagnosisTest.plain().insulationLeast(),
                DiagnosisTest.plain().insulationSource(),
                DiagnosisTest.plain().insulationWatch(),
                DiagnosisTest.plain().screenMost(),
                DiagnosisTest.plain().sensorCurve(),
                Amounts.kelvins(20),
                DiagnosisTest.plain().meterAccuracy(),
                DiagnosisTest.plain().testVoltage(),
                DiagnosisTest.plain().factoryReading());
        assertThat(wide.sensorBand(Amounts.celsius(-40))).isPresent();
    }
}
