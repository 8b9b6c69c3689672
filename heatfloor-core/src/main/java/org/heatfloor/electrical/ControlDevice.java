package org.heatfloor.electrical;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * A thermostat or contactor that switches the heating.
 *
 * @param name the name its owner gives it
 * @param ratedCurrent rated current for resistive load, above 0 and at most 1000 A
 * @param ratedVoltage rated voltage, above 0 and at most 1000 V
 * @param disconnects whether it has a marked off position that opens all live conductors and never closes by itself
 */
public record ControlDevice(
        String name,
        Quantity<ElectricCurrent> ratedCurrent,
        Quantity<ElectricPotential> ratedVoltage,
        boolean disconnects) {

    /**
     * Checks the figures.
     *
     * @param name the name its owner gives it
     * @param ratedCurrent rated current for resistive load, above 0 and at most 1000 A
     * @param ratedVoltage rated voltage, above 0 and at most 1000 V
     * @param disconnects whether it has a marked off position that opens all live conductors and never closes by itself
     * @throws IllegalArgumentException if the name is blank or a figure is out of range
     */
    public ControlDevice {
        if (name.isBlank()) {
            throw new IllegalArgumentException("control device name: blank; a name is expected");
        }
        Si.positive("control device " + name + " rated current", ratedCurrent, Units.AMPERE);
        Si.within("control device " + name + " rated current", ratedCurrent, Units.AMPERE, 0, 1000);
        Si.positive("control device " + name + " rated voltage", ratedVoltage, Units.VOLT);
        Si.within("control device " + name + " rated voltage", ratedVoltage, Units.VOLT, 0, 1000);
    }

    double amperes() {
        return Si.in("rated current", ratedCurrent, Units.AMPERE);
    }
}
