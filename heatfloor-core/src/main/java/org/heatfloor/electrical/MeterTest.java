package org.heatfloor.electrical;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * The readings taken at one stage, on the dead cable: isolated, proved dead, its ends free.
 *
 * @param stage when
 * @param ambient temperature of the cable as the thermometer beside it showed, −40 °C to 80 °C
 * @param conductor resistance of the core from end to end, cold leads included
 * @param insulation resistance between core and screen at the test voltage
 * @param screen resistance of the screen from end to end, or to the protective conductor; of the earthed mesh where the
 *     cable has no screen
 * @param sensor resistance of the floor sensor
 * @param insulationVoltage direct voltage of the insulation test, where it was written down
 */
public record MeterTest(
        TestStage stage,
        Quantity<Temperature> ambient,
        Optional<Reading> conductor,
        Optional<Reading> insulation,
        Optional<Reading> screen,
        Optional<Reading> sensor,
        Optional<Quantity<ElectricPotential>> insulationVoltage) {

    /**
     * Checks the parts.
     *
     * @param stage when
     * @param ambient temperature of the cable as the thermometer beside it showed, −40 °C to 80 °C
     * @param conductor resistance of the core from end to end, cold leads included
     * @param insulation resistance between core and screen at the test voltage
     * @param screen resistance of the screen from end to end, or to the protective conductor; of the earthed mesh where the
     *     cable has no screen
     * @param sensor resistance of the floor sensor
     * @param insulationVoltage direct voltage of the insulation test, where it was written down
     * @throws IllegalArgumentException if the temperature is out of range or the voltage not above 0
     */
    public MeterTest {
        Objects.requireNonNull(stage, "stage");
        Objects.requireNonNull(conductor, "conductor");
        Objects.requireNonNull(insulation, "insulation");
        Objects.requireNonNull(screen, "screen");
        Objects.requireNonNull(sensor, "sensor");
        Si.within("ambient temperature of the test", ambient, Units.CELSIUS, -40, 80);
        insulationVoltage.ifPresent(volts -> Si.positive("insulation test voltage", volts, Units.VOLT));
    }

    /**
     * A test without readings yet.
     *
     * @param stage when
     * @param ambient temperature of the cable as the thermometer showed
     * @return the test
     * @throws IllegalArgumentException if the temperature is out of range
     */
    public static MeterTest at(TestStage stage, Quantity<Temperature> ambient) {
        return new MeterTest(
                stage,
                ambient,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /**
     * The same test with the core's reading.
     *
     * @param reading from end to end of the core
     * @return the test
     */
    public MeterTest withConductor(Reading reading) {
        return new MeterTest(stage, ambient, Optional.of(reading), insulation, screen, sensor, insulationVoltage);
    }

    /**
     * The same test with the insulation's reading.
     *
     * @param reading between core and screen
     * @return the test
     */
    public MeterTest withInsulation(Reading reading) {
        return new MeterTest(stage, ambient, conductor, Optional.of(reading), screen, sensor, insulationVoltage);
    }

    /**
     * The same test with the insulation's reading and the voltage it was taken at.
     *
     * @param reading between core and screen
     * @param voltage direct voltage of the test, above 0
     * @return the test
     * @throws IllegalArgumentException if the voltage is not above 0
     */
    public MeterTest withInsulation(Reading reading, Quantity<ElectricPotential> voltage) {
        return new MeterTest(stage, ambient, conductor, Optional.of(reading), screen, sensor, Optional.of(voltage));
    }

    /**
     * The same test with the screen's reading.
     *
     * @param reading along the screen
     * @return the test
     */
    public MeterTest withScreen(Reading reading) {
        return new MeterTest(stage, ambient, conductor, insulation, Optional.of(reading), sensor, insulationVoltage);
    }

    /**
     * The same test with the sensor's reading.
     *
     * @param reading of the floor sensor
     * @return the test
     */
    public MeterTest withSensor(Reading reading) {
        return new MeterTest(stage, ambient, conductor, insulation, screen, Optional.of(reading), insulationVoltage);
    }

    double celsius() {
        return Si.in("ambient", ambient, Units.CELSIUS);
    }
}
