package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.heatfloor.electrical.Circuit;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Cables that share a circuit share its thermostat, which limits the floor only where its one sensor lies. */
final class SharedThermostat {

    private SharedThermostat() {}

    static List<Finding> of(List<Circuit> circuits, List<PlannedCable> cables) {
        List<Finding> findings = new ArrayList<>();
        for (Circuit circuit : circuits) {
            if (circuit.cables().size() > 1) {
                PlannedCable warmest = cables.stream()
                        .filter(cable -> circuit.cables().contains(cable.name()))
                        .max(Comparator.comparingDouble(SharedThermostat::warmth))
                        .orElseThrow();
                findings.add(Finding.of(
                        Severity.NOTE,
                        circuit.name(),
                        String.join(", ", circuit.cables())
                                + " share one thermostat, which reads one floor sensor: connect that of "
                                + warmest.name() + ", where the floor gets warmest, or give each cable a thermostat",
                        Source.commonPractice("a thermostat limits the floor where its sensor lies")));
            }
        }
        return findings;
    }

    /** Warmest place of the surface in °C, or, without temperatures, the heat per area in W/m²: one or the other for all. */
    private static double warmth(PlannedCable cable) {
        return cable.heat()
                .map(heat -> Si.in("surface", heat.asLaid().max(), Units.CELSIUS))
                .orElseGet(() -> Si.in("power", cable.rating().power().nominal(), Units.WATT)
                        / (Si.in("length", cable.cable().length(), Units.METRE)
                                * Si.in("spacing", cable.route().evenSpacing(), Units.METRE)));
    }
}
