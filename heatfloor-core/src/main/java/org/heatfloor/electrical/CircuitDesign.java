package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.heatfloor.finding.Finding;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;

/**
 * The circuits that feed a floor's heating cables, with every judgement on them. Cables are put in parallel, never in
 * series. A design aid for a licensed electrician, not a permission: the code in force at the site, the cable's
 * instructions and the listing go before it.
 *
 * @param supply the supply
 * @param circuits the circuits, one or more
 * @param findings every judgement, each with its source
 */
public record CircuitDesign(Supply supply, List<Circuit> circuits, List<Finding> findings) {

    /**
     * Copies the lists.
     *
     * @param supply the supply
     * @param circuits the circuits, one or more
     * @param findings every judgement, each with its source
     * @throws IllegalArgumentException if there is no circuit
     */
    public CircuitDesign {
        Objects.requireNonNull(supply, "supply");
        circuits = List.copyOf(circuits);
        findings = List.copyOf(findings);
        if (circuits.isEmpty()) {
            throw new IllegalArgumentException("circuits: none was given; one or more is expected");
        }
    }

    /**
     * Puts cables on the fewest circuits the supply's conductor and code allow and sizes each. The protective device is the
     * least standard rating that is not below the design current; it is not above what the conductor allows by the code's
     * rounding rule. Circuits count as laid together unless {@link InstallationDetails#circuitsApart} says otherwise: the
     * grouping factor is that of their own number, or of the supply's where that is greater. Where a single cable is too
     * much for the conductor, its circuit has no protective device and an error says which conductor would do.
     *
     * @param supply the supply
     * @param cables the cables, 1 to 100; the same name may occur more than once
     * @return circuits and findings
     * @throws IllegalArgumentException if there are no cables or more than 100
     */
    public static CircuitDesign of(Supply supply, List<HeatingCable> cables) {
        return of(supply, cables, InstallationDetails.NONE);
    }

    /**
     * As {@link #of(Supply, List)}, every circuit switched by a thermostat or contactor of its own, which limits the circuit
     * to its rated current.
     *
     * @param supply the supply
     * @param cables the cables, 1 to 100; the same name may occur more than once
     * @param control the thermostat or contactor
     * @return circuits and findings; an error where one cable alone is too much for it
     * @throws IllegalArgumentException if there are no cables or more than 100
     */
    public static CircuitDesign of(Supply supply, List<HeatingCable> cables, ControlDevice control) {
        return of(supply, cables, InstallationDetails.builder().control(control).build());
    }

    /**
     * As {@link #of(Supply, List)}, with what else is known of the installation. Leakage budget, box fill, cold leads, the
     * place of the control, the cable's screen and way, and the limits of the edition in force are judged where their data
     * are given; a finding names what was not.
     *
     * @param supply the supply
     * @param cables the cables, 1 to 100; the same name may occur more than once
     * @param details what else is known
     * @return circuits and findings
     * @throws IllegalArgumentException if there are no cables or more than 100
     */
    public static CircuitDesign of(Supply supply, List<HeatingCable> cables, InstallationDetails details) {
        if (cables.isEmpty() || cables.size() > 100) {
            throw new IllegalArgumentException("cables: " + cables.size() + " were given; 1 to 100 are expected");
        }
        ElectricalCode code = supply.code();
        double[] amperes = cables.stream()
                .mapToDouble(cable -> supply.volts() / Ohm.resistance(cable.volts(), cable.watts()))
                .toArray();
        CircuitSharing sharing = CircuitSharing.of(supply, amperes, details);
        Supply placed = sharing.supply();

        List<Finding> findings = new ArrayList<>(SupplyFindings.of(supply, sharing));
        cables.stream().distinct().forEach(cable -> findings.addAll(CableFindings.of(supply, cable, details)));
        findings.addAll(EditionFindings.of(supply, cables, details));
        details.places().ifPresent(places -> findings.addAll(PlaceFindings.of(code, places)));
        findings.addAll(RoomFindings.of(code, details));
        if (sharing.shares().size() > 1) {
            findings.add(SupplyFindings.split(supply, sharing, amperes));
        }
        List<Circuit> circuits = new ArrayList<>();
        for (List<Integer> share : sharing.shares()) {
            String name = "circuit " + (circuits.size() + 1);
            List<HeatingCable> onCircuit = share.stream().map(cables::get).toList();
            double load = share.stream().mapToDouble(i -> amperes[i]).sum();
            Circuit circuit = circuit(supply, sharing.ampacity(), name, onCircuit, load);
            circuits.add(circuit);
            findings.addAll(CircuitFindings.of(placed, circuit, onCircuit));
            details.control().ifPresent(device -> findings.addAll(ControlFindings.of(supply, circuit, device)));
            findings.addAll(BoxFindings.of(supply, circuit, onCircuit, details));
        }
        Unchecked.of(code, cables, details).ifPresent(findings::add);
        return new CircuitDesign(supply, circuits, findings);
    }

    private static Circuit circuit(
            Supply supply, Ampacity ampacity, String name, List<HeatingCable> cables, double amperes) {
        ElectricalCode code = supply.code();
        double design = amperes * code.limit(RuleTopic.CONTINUOUS_LOAD_DEVICE, Units.ONE);
        OptionalDouble device = CircuitSizing.device(code, ampacity, amperes, cables.size() > 1);
        double drop = code.dropVolts(supply, amperes);
        return new Circuit(
                name,
                cables.stream().map(HeatingCable::name).toList(),
                Amounts.amperes(amperes),
                Amounts.amperes(design),
                device.isPresent() ? Optional.of(Amounts.amperes(device.getAsDouble())) : Optional.empty(),
                supply.conductor(),
                ampacity,
                Amounts.volts(drop),
                Amounts.of(drop / supply.volts(), Units.ONE),
                code.required(RuleTopic.VOLTAGE_DROP).limit(Units.ONE),
                code.required(RuleTopic.RESIDUAL_CURRENT).limit(Units.AMPERE));
    }

    /**
     * Whether any finding is an error.
     *
     * @return true if the design must not be built as it stands
     */
    public boolean hasErrors() {
        return findings.stream().anyMatch(Finding::isError);
    }
}
