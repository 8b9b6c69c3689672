package org.heatfloor.electrical;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
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
        Quantity<Dimensionless> meterAccuracy) {

    /** The trade's habit behind the defaults that no document states. */
    public static final Source PRACTICE = Source.commonPractice(
            "500 V test from core to screen at delivery, after laying and after covering; look into a falling trend below"
                    + " 10 MΩ; screen below 10 Ω; sensor within 5 K of the thermometer; meter within 1 %");

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
     * @throws IllegalArgumentException if a resistance is negative (the least insulation must be above 0), the sensor
     *     tolerance not above 0 and at most 20 K, or the meter's accuracy not 0 to 10 %
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
                Amounts.of(1, Units.PERCENT));
    }

    /**
     * The same limits with a floor sensor.
     *
     * @param curve the sensor
     * @return the limits
     */
    public TestLimits withSensor(SensorCurve curve) {
        return new TestLimits(
                tolerance,
                core,
                coldLeads,
                insulationLeast,
                insulationSource,
                insulationWatch,
                screenMost,
                Optional.of(curve),
                sensorTolerance,
                meterAccuracy);
    }

    /**
     * The same limits with the cold leads' share of the loop.
     *
     * @param loop resistance of the cold leads in the loop
     * @return the limits
     * @throws IllegalArgumentException if it is negative
     */
    public TestLimits withColdLeads(Quantity<ElectricResistance> loop) {
        return new TestLimits(
                tolerance,
                core,
                loop,
                insulationLeast,
                insulationSource,
                insulationWatch,
                screenMost,
                sensorCurve,
                sensorTolerance,
                meterAccuracy);
    }

    /**
     * The same limits with the tolerance the cable's instructions state.
     *
     * @param stated the tolerance
     * @return the limits
     */
    public TestLimits withTolerance(ResistanceTolerance stated) {
        return new TestLimits(
                stated,
                core,
                coldLeads,
                insulationLeast,
                insulationSource,
                insulationWatch,
                screenMost,
                sensorCurve,
                sensorTolerance,
                meterAccuracy);
    }

    /**
     * What the meter should show at the ends of the cold leads: the label's resistance with its tolerance at the cable's
     * temperature, and the cold leads. The meter's own accuracy comes on top.
     *
     * @param cable the cable
     * @param temperature temperature of the cable, −60 °C to 250 °C
     * @return the band
     * @throws IllegalArgumentException if the temperature is out of range
     */
    public Band<ElectricResistance> conductorBand(HeatingCable cable, Quantity<Temperature> temperature) {
        double nominal = Si.in("resistance", core.resistanceAt(cable.resistance(), temperature), Units.OHM);
        double leads = Si.in("cold leads", coldLeads, Units.OHM);
        return Band.of(
                nominal * tolerance.lowFactor() + leads,
                nominal + leads,
                nominal * tolerance.highFactor() + leads,
                Units.OHM);
    }

    /**
     * What the meter should show at the floor sensor.
     *
     * @param temperature temperature of the floor
     * @return the band, empty where there is no sensor
     * @throws IllegalArgumentException if the sensor's range ends within the tolerance around the temperature
     */
    public Optional<Band<ElectricResistance>> sensorBand(Quantity<Temperature> temperature) {
        double celsius = Si.in("temperature", temperature, Units.CELSIUS);
        double kelvins = Si.in("sensor tolerance", sensorTolerance, Units.KELVIN_DIFFERENCE);
        return sensorCurve.map(curve -> {
            Quantity<ElectricResistance> cold = curve.resistanceAt(Amounts.celsius(celsius - kelvins));
            Quantity<ElectricResistance> warm = curve.resistanceAt(Amounts.celsius(celsius + kelvins));
            boolean falls = Si.in("cold", cold, Units.OHM) > Si.in("warm", warm, Units.OHM);
            return new Band<>(falls ? warm : cold, curve.resistanceAt(temperature), falls ? cold : warm);
        });
    }

    double insulationLeastOhms() {
        return Si.in("least insulation resistance", insulationLeast, Units.OHM);
    }

    double accuracy() {
        return Si.in("meter accuracy", meterAccuracy, Units.ONE);
    }
}
