package org.heatfloor.electrical;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.TemperatureDifference;
import org.heatfloor.quantity.Units;

/**
 * What readings are accepted. The cable's instructions go before every default here.
 *
 * @param tolerance of the core's resistance at 20 °C
 * @param core what the core is made of, for the correction to 20 °C
 * @param coldLeads resistance of the cold leads in the loop, taken off the core's reading; 0 Ω where it does not matter
 * @param insulationLeast least insulation resistance
 * @param insulationSource what that rests on
 * @param insulationWatch a reading below this that has fallen to a tenth of the first is worth looking into
 * @param screenMost greatest resistance of the screen
 * @param sensorCurve the floor sensor, where there is one
 * @param sensorTolerance how far the sensor's temperature may lie from the thermometer's
 * @param meterAccuracy share by which the resistance meter may be wrong, up to 10 %
 * @param testVoltage direct voltage of the insulation test
 * @param factoryReading the core's resistance at 20 °C that the maker measured, from the tag on the cable itself (not from the
 *     box or a catalogue); readings are then compared with it instead of the label's tolerance band
 */
public record TestLimits(
        ResistanceTolerance tolerance,
        Alloy core,
        Quantity<ElectricResistance> coldLeads,
        Quantity<ElectricResistance> insulationLeast,
        Source insulationSource,
        Quantity<ElectricResistance> insulationWatch,
        Quantity<ElectricResistance> screenMost,
        Optional<SensorCurve> sensorCurve,
        Quantity<TemperatureDifference> sensorTolerance,
        Quantity<Dimensionless> meterAccuracy,
        Quantity<ElectricPotential> testVoltage,
        Optional<Quantity<ElectricResistance>> factoryReading) {

    /** The trade's habit behind the defaults that no document states. */
    public static final Source PRACTICE = Source.commonPractice(
            "500 V test from core to screen at delivery, after laying and after covering; look into a falling trend below"
                    + " 10 MΩ; screen below 10 Ω, or within 20 % and 0.5 Ω of what its"
                    + " length gives; sensor within 5 K of the thermometer; meter within 1 %");

    /**
     * Checks the figures.
     *
     * @param tolerance of the core's resistance at 20 °C
     * @param core what the core is made of, for the correction to 20 °C
     * @param coldLeads resistance of the cold leads in the loop, taken off the core's reading; 0 Ω where it does not matter
     * @param insulationLeast least insulation resistance
     * @param insulationSource what that rests on
     * @param insulationWatch a reading below this that has fallen to a tenth of the first is worth looking into
     * @param screenMost greatest resistance of the screen
     * @param sensorCurve the floor sensor, where there is one
     * @param sensorTolerance how far the sensor's temperature may lie from the thermometer's
     * @param meterAccuracy share by which the resistance meter may be wrong, up to 10 %
     * @param testVoltage direct voltage of the insulation test
     * @param factoryReading the core's resistance at 20 °C that the maker measured, from the tag on the cable itself
     * @throws IllegalArgumentException if a resistance is negative (the least insulation and the factory's reading must be
     *     above 0), the sensor tolerance not above 0 and at most 20 K, the meter's accuracy not 0 to 10 %, or the test
     *     voltage not above 0 and at most 5000 V
     */
    public TestLimits {
        Objects.requireNonNull(tolerance, "tolerance");
        Objects.requireNonNull(core, "core");
        Objects.requireNonNull(insulationSource, "insulationSource");
        Objects.requireNonNull(sensorCurve, "sensorCurve");
        Si.notNegative("cold lead resistance", coldLeads, Units.OHM);
        Si.positive("least insulation resistance", insulationLeast, Units.OHM);
        Si.notNegative("insulation resistance to watch", insulationWatch, Units.OHM);
        Si.positive("greatest screen resistance", screenMost, Units.OHM);
        Si.positive("sensor tolerance", sensorTolerance, Units.KELVIN_DIFFERENCE);
        Si.within("sensor tolerance", sensorTolerance, Units.KELVIN_DIFFERENCE, 0, 20);
        Si.within("meter accuracy", meterAccuracy, Units.PERCENT, 0, 10);
        Si.positive("insulation test voltage", testVoltage, Units.VOLT);
        Si.within("insulation test voltage", testVoltage, Units.VOLT, 0, 5000);
        factoryReading.ifPresent(read -> Si.positive("factory reading", read, Units.OHM));
    }

    /**
     * The usual limits under a code: its least insulation resistance where it states one, the usual tolerance, and the
     * trade's habits for the rest.
     *
     * @param code the code
     * @param core what the core is made of
     * @return the limits, with no sensor
     */
    public static TestLimits of(ElectricalCode code, Alloy core) {
        Optional<CodeRule> rule = code.rule(RuleTopic.INSULATION_RESISTANCE);
        return new TestLimits(
                ResistanceTolerance.USUAL,
                core,
                Amounts.ohms(0),
                rule.isPresent() ? rule.get().limit(Units.MEGAOHM) : Amounts.of(1, Units.MEGAOHM),
                rule.isPresent()
                        ? rule.get().source()
                        : Source.commonPractice(
                                code + " states no least value; about 1 MΩ per kilovolt, not below 1 MΩ, is usual"),
                Amounts.of(10, Units.MEGAOHM),
                Amounts.ohms(10),
                Optional.empty(),
                Amounts.kelvins(5),
                Amounts.of(1, Units.PERCENT),
                code.rule(RuleTopic.INSULATION_TEST_VOLTAGE)
                        .map(voltage -> voltage.limit(Units.VOLT))
                        .orElse(Amounts.volts(500)),
                Optional.empty());
    }

    /**
     * The same limits with a floor sensor. A stated sensor belongs to the circuit: it is proved before covering and before
     * energising.
     *
     * @param curve the sensor
     * @return the limits
     */
    public TestLimits withSensor(SensorCurve curve) {
        return with(tolerance, coldLeads, Optional.of(curve), meterAccuracy, factoryReading);
    }

    /**
     * The same limits with the cold leads' share of the loop.
     *
     * @param loop resistance of the cold leads in the loop
     * @return the limits
     * @throws IllegalArgumentException if it is negative
     */
    public TestLimits withColdLeads(Quantity<ElectricResistance> loop) {
        return with(tolerance, loop, sensorCurve, meterAccuracy, factoryReading);
    }

    /**
     * The same limits with the tolerance the cable's instructions state.
     *
     * @param stated the tolerance
     * @return the limits
     */
    public TestLimits withTolerance(ResistanceTolerance stated) {
        return with(stated, coldLeads, sensorCurve, meterAccuracy, factoryReading);
    }

    /**
     * The same limits with the accuracy of the meter at hand; the better it is, the smaller the fault that shows.
     *
     * @param share share by which the meter may be wrong, 0 to 10 %
     * @return the limits
     * @throws IllegalArgumentException if it is out of range
     */
    public TestLimits withMeterAccuracy(Quantity<Dimensionless> share) {
        return with(tolerance, coldLeads, sensorCurve, share, factoryReading);
    }

    /**
     * The same limits with a meter whose display ends at a digit, such as 1 % and 0.1 Ω: the accuracy taken is the share and
     * two digits over the label's resistance. On a cable of few ohms the digit counts for more than the share, and a good
     * cable would be called faulty without it.
     *
     * @param share share by which the meter may be wrong
     * @param digit last digit of its display, not negative
     * @param cable the cable to be measured
     * @return the limits
     * @throws IllegalArgumentException if share and digits together are more than 10 %: the display is too coarse for the
     *     cable
     */
    public TestLimits withMeter(Quantity<Dimensionless> share, Quantity<ElectricResistance> digit, HeatingCable cable) {
        double label = Ohm.resistance(cable.volts(), cable.watts());
        double together = Si.notNegative("meter accuracy", share, Units.ONE)
                + 2 * Si.notNegative("digit", digit, Units.OHM) / label;
        if (!(together <= 0.1)) {
            throw new IllegalArgumentException("meter: " + share + " and two digits of " + digit + " were given for "
                    + cable.name() + ", together " + QuantityText.number(100 * together, 1) + " % of its "
                    + QuantityText.number(label, 2) + " Ω; at most 10 % is expected: take a finer range");
        }
        return withMeterAccuracy(Amounts.of(100 * together, Units.PERCENT));
    }

    /**
     * The same limits with the resistance the maker measured on this very cable.
     *
     * @param at20 heating part at 20 °C, from the tag on the cable itself, above 0
     * @return the limits
     * @throws IllegalArgumentException if it is not above 0
     */
    public TestLimits withFactoryReading(Quantity<ElectricResistance> at20) {
        return with(tolerance, coldLeads, sensorCurve, meterAccuracy, Optional.of(at20));
    }

    private TestLimits with(
            ResistanceTolerance newTolerance,
            Quantity<ElectricResistance> newLeads,
            Optional<SensorCurve> newSensor,
            Quantity<Dimensionless> newAccuracy,
            Optional<Quantity<ElectricResistance>> newFactory) {
        return new TestLimits(
                newTolerance,
                core,
                newLeads,
                insulationLeast,
                insulationSource,
                insulationWatch,
                screenMost,
                newSensor,
                sensorTolerance,
                newAccuracy,
                testVoltage,
                newFactory);
    }

    /**
     * What a series of readings under these limits can tell from tolerance, and what it cannot.
     *
     * @return the resolution
     */
    public Resolution resolution() {
        return Resolution.of(this);
    }

    /**
     * What the meter should show at the ends of the cold leads: the label's resistance with its tolerance at the cable's
     * temperature, and the cold leads; the meter's own accuracy comes on top. Where the factory's reading is known: that
     * reading with what meter and thermometer may explain, three times the sum of the meter's accuracy and 1 K.
     *
     * @param cable the cable
     * @param temperature temperature of the cable, −60 °C to 250 °C
     * @return the band
     * @throws IllegalArgumentException if the temperature is out of range
     */
    public Band<ElectricResistance> conductorBand(HeatingCable cable, Quantity<Temperature> temperature) {
        Quantity<ElectricResistance> at20 = factoryReading.orElse(cable.resistance());
        double nominal = Si.in("resistance", core.resistanceAt(at20, temperature), Units.OHM);
        double leads = Si.in("cold leads", coldLeads, Units.OHM);
        boolean known = factoryReading.isPresent();
        double low = known ? 1 - driftShare() : tolerance.lowFactor();
        double high = known ? 1 + driftShare() : tolerance.highFactor();
        return Band.of(nominal * low + leads, nominal + leads, nominal * high + leads, Units.OHM);
    }

    /**
     * What the meter should show along the screen, where its resistance per length is stated: {@code r·(L + cold leads)} of
     * copper at the temperature. From end to end of a single-conductor cable 20 % less to 20 % and 0.5 Ω more. The far end of
     * a twin-conductor cable is closed in, so that a reading at its lead proves the connection there and not the far part:
     * anything up to the same value is accepted, and the far part is proved by the maker's test alone.
     *
     * @param cable the cable
     * @param temperature temperature of the cable, −60 °C to 250 °C
     * @return the band; empty where the screen's resistance is not stated
     * @throws IllegalArgumentException if the temperature is out of range
     */
    public Optional<Band<ElectricResistance>> screenBand(HeatingCable cable, Quantity<Temperature> temperature) {
        return ScreenKernel.at20(cable).stream()
                .mapToObj(ohms -> {
                    double celsius = Si.within("temperature", temperature, Units.CELSIUS, -60, 250);
                    double[] band = ScreenKernel.band(ohms, cable.conductors(), celsius);
                    return Band.of(band[0], band[1], band[2], Units.OHM);
                })
                .findFirst();
    }

    /**
     * What the meter should show at the floor sensor.
     *
     * @param temperature temperature of the floor
     * @return the band, empty where there is no sensor
     * @throws IllegalArgumentException if the temperature lies outside the sensor's range
     */
    public Optional<Band<ElectricResistance>> sensorBand(Quantity<Temperature> temperature) {
        double celsius = Si.in("temperature", temperature, Units.CELSIUS);
        double kelvins = Si.in("sensor tolerance", sensorTolerance, Units.KELVIN_DIFFERENCE);
        return sensorCurve.map(curve -> {
            SensorKernel kernel = SensorKernel.of(curve);
            double cold = kernel.ohms(celsius - kelvins);
            double warm = kernel.ohms(celsius + kelvins);
            double nominal = Si.in("sensor", curve.resistanceAt(temperature), Units.OHM);
            return Band.of(Math.min(cold, warm), nominal, Math.max(cold, warm), Units.OHM);
        });
    }

    /** Relative change that meter and thermometer (1 K) may explain. */
    double driftShare() {
        return 3 * (accuracy() + Math.abs(core.perKelvin()));
    }

    double insulationLeastOhms() {
        return Si.in("least insulation resistance", insulationLeast, Units.OHM);
    }

    double accuracy() {
        return Si.in("meter accuracy", meterAccuracy, Units.ONE);
    }
}
