package org.heatfloor.electrical;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * The supply of the floor heating: voltage, rule set and the copper conductors from the board to the thermostat.
 *
 * @param voltage nominal voltage at the load
 * @param code the electrical code
 * @param feederLength length of the circuit's conductors from the board, one way
 * @param conductor their size
 * @param installation method of installation, by the code's name for it; the code's base method where empty
 * @param ambient ambient temperature along the conductors; that of the code's table where empty
 * @param groupedCircuits circuits laid together along the way, this one included, 1 to 20
 */
public record Supply(
        Quantity<ElectricPotential> voltage,
        ElectricalCode code,
        Quantity<Length> feederLength,
        ConductorSize conductor,
        Optional<String> installation,
        Optional<Quantity<Temperature>> ambient,
        int groupedCircuits) {

    /**
     * Checks the parts against the code's tables.
     *
     * @param voltage nominal voltage at the load
     * @param code the electrical code
     * @param feederLength length of the circuit's conductors from the board, one way
     * @param conductor their size
     * @param installation method of installation, by the code's name for it; the code's base method where empty
     * @param ambient ambient temperature along the conductors; that of the code's table where empty
     * @param groupedCircuits circuits laid together along the way, this one included, 1 to 20
     * @throws IllegalArgumentException if the voltage is not above 0 and at most 1000 V, the feeder negative or above 10
     *     km, or the code has no figures for the conductor, the installation method, the ambient temperature or the
     *     grouping
     */
    public Supply {
        Objects.requireNonNull(installation, "installation");
        Objects.requireNonNull(ambient, "ambient");
        CableRating.volts(voltage);
        Si.within("feeder length", feederLength, Units.METRE, 0, 10_000);
        code.ampacity(
                conductor,
                installation.orElse(code.baseInstallationMethod()),
                ambient.orElse(code.baseAmbient()),
                groupedCircuits);
    }

    /**
     * A supply with the code's base method of installation and base ambient temperature, its circuit laid alone.
     *
     * @param voltage nominal voltage at the load
     * @param code the electrical code
     * @param feederLength length of the circuit's conductors from the board, one way
     * @param conductor their size
     * @return the supply
     * @throws IllegalArgumentException as the constructor
     */
    public static Supply of(
            Quantity<ElectricPotential> voltage,
            ElectricalCode code,
            Quantity<Length> feederLength,
            ConductorSize conductor) {
        return new Supply(voltage, code, feederLength, conductor, Optional.empty(), Optional.empty(), 1);
    }

    /**
     * The same supply with a method of installation.
     *
     * @param method one of the code's methods, such as {@code "C"}
     * @return the supply
     * @throws IllegalArgumentException if the code has no such method
     */
    public Supply withInstallation(String method) {
        return new Supply(voltage, code, feederLength, conductor, Optional.of(method), ambient, groupedCircuits);
    }

    /**
     * The same supply with an ambient temperature.
     *
     * @param temperature along the conductors
     * @return the supply
     * @throws IllegalArgumentException if it lies outside the code's correction table
     */
    public Supply withAmbient(Quantity<Temperature> temperature) {
        return new Supply(
                voltage, code, feederLength, conductor, installation, Optional.of(temperature), groupedCircuits);
    }

    /**
     * The same supply with circuits laid together.
     *
     * @param count circuits laid together, this one included, 1 to 20
     * @return the supply
     * @throws IllegalArgumentException if the count is out of range
     */
    public Supply withGroupedCircuits(int count) {
        return new Supply(voltage, code, feederLength, conductor, installation, ambient, count);
    }

    /**
     * Current-carrying capacity of the conductors in place.
     *
     * @return the capacity
     */
    public Ampacity ampacity() {
        return code.ampacity(
                conductor,
                installation.orElse(code.baseInstallationMethod()),
                ambient.orElse(code.baseAmbient()),
                groupedCircuits);
    }

    double volts() {
        return Si.in("supply voltage", voltage, Units.VOLT);
    }
}
