package org.heatfloor.electrical;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;

/**
 * One branch circuit (final circuit): heating cables in parallel behind one protective device.
 *
 * @param name {@code circuit 1}, {@code circuit 2} …
 * @param cables names of the cables on it, all in parallel
 * @param current current at nominal supply voltage and nominal resistance
 * @param designCurrent current the protective device must be rated for: the current times the code's factor for continuous
 *     load
 * @param protectiveDevice least standard rating that carries the design current and protects the conductor; empty if none
 *     does
 * @param conductor size of the circuit's conductors
 * @param ampacity their current-carrying capacity in place
 * @param voltageDrop voltage lost in them, there and back
 * @param voltageDropShare the same as a share of the supply voltage
 * @param voltageDropLimit the code's limit or advice for that share
 * @param residualCurrentDevice rated residual current of the residual current device (American: trip level of the Class A
 *     ground-fault circuit interrupter)
 */
public record Circuit(
        String name,
        List<String> cables,
        Quantity<ElectricCurrent> current,
        Quantity<ElectricCurrent> designCurrent,
        Optional<Quantity<ElectricCurrent>> protectiveDevice,
        ConductorSize conductor,
        Ampacity ampacity,
        Quantity<ElectricPotential> voltageDrop,
        Quantity<Dimensionless> voltageDropShare,
        Quantity<Dimensionless> voltageDropLimit,
        Quantity<ElectricCurrent> residualCurrentDevice) {

    /**
     * Copies the list.
     *
     * @param name {@code circuit 1}, {@code circuit 2} …
     * @param cables names of the cables on it, all in parallel
     * @param current current at nominal supply voltage and nominal resistance
     * @param designCurrent current the protective device must be rated for: the current times the code's factor for continuous load
     * @param protectiveDevice least standard rating that carries the design current and protects the conductor; empty if none does
     * @param conductor size of the circuit's conductors
     * @param ampacity their current-carrying capacity in place
     * @param voltageDrop voltage lost in them, there and back
     * @param voltageDropShare the same as a share of the supply voltage
     * @param voltageDropLimit the code's limit or advice for that share
     * @param residualCurrentDevice rated residual current of the residual current device (American: trip level of the Class A ground-fault circuit interrupter)
     * @throws IllegalArgumentException if there is no cable
     */
    public Circuit {
        Objects.requireNonNull(protectiveDevice, "protectiveDevice");
        cables = List.copyOf(cables);
        if (cables.isEmpty()) {
            throw new IllegalArgumentException("circuit cables: none was given; one or more is expected");
        }
    }
}
