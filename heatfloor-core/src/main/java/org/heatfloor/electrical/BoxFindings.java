package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.LinearCapacitance;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Leakage, box and cold leads of one circuit, where their data are given. */
final class BoxFindings {

    private BoxFindings() {}

    static List<Finding> of(Supply supply, Circuit circuit, List<HeatingCable> cables, InstallationDetails details) {
        List<Finding> findings = new ArrayList<>();
        details.capacitance().ifPresent(c -> findings.addAll(leakage(supply, circuit, cables, c)));
        details.coldLeadConductor().ifPresent(size -> {
            findings.add(coldLead(supply, circuit, cables, size));
            details.boxVolume().ifPresent(box -> {
                if (supply.code().rule(RuleTopic.BOX_FILL).isPresent()) {
                    findings.add(box(supply, circuit, cables, size, box, details.internalClamps()));
                }
            });
        });
        return findings;
    }

    private static List<Finding> leakage(
            Supply supply, Circuit circuit, List<HeatingCable> cables, Quantity<LinearCapacitance> capacitance) {
        return LeakageBudget.of(supply, cables, capacitance).findings().stream()
                .map(f -> new Finding(f.severity(), circuit.name(), f.message(), f.value(), f.limit(), f.source()))
                .toList();
    }

    private static Finding coldLead(Supply supply, Circuit circuit, List<HeatingCable> cables, ConductorSize size) {
        ColdLeadDrop worst = null;
        double most = -1;
        for (HeatingCable cable : cables) {
            ColdLeadDrop drop = ColdLeadDrop.of(cable, size, supply.voltage());
            double volts = Si.in("cold lead drop", drop.voltageDrop(), Units.VOLT);
            if (volts > most) {
                most = volts;
                worst = drop;
            }
        }
        if (worst == null) {
            throw new IllegalStateException("circuit without cables");
        }
        double share = 100 * (most / supply.volts() + Si.in("share", circuit.voltageDropShare(), Units.ONE));
        return Finding.withValue(
                Severity.NOTE,
                circuit.name(),
                QuantityText.number(most, 2) + " V are lost in the cold lead; with the circuit's conductors "
                        + QuantityText.number(share, 2) + " % of the supply voltage",
                Amounts.volts(most),
                worst.source());
    }

    /**
     * Two conductors of the circuit and two of every cable's cold leads, the grounding conductor and the screens, and a
     * control of one gang. The floor sensor's lead is thinner than the table's least size and is not counted.
     */
    private static Finding box(
            Supply supply,
            Circuit circuit,
            List<HeatingCable> cables,
            ConductorSize lead,
            Quantity<Volume> volume,
            boolean clamps) {
        int screens = cables.stream()
                .filter(cable -> cable.screen().map(CableScreen::present).orElse(true))
                .mapToInt(HeatingCable::coldLeads)
                .sum();
        ConductorSize feeder = supply.conductor();
        if (!BoxContents.counts(feeder) || !BoxContents.counts(lead)) {
            return Finding.withValue(
                    Severity.NOTE,
                    circuit.name() + " box",
                    "the fill of the box is not judged: no allowance is known for " + feeder + " and " + lead
                            + " together",
                    volume,
                    supply.code().source(RuleTopic.BOX_FILL));
        }
        boolean feederLarger = feeder.squareMillimetres() >= lead.squareMillimetres();
        BoxContents contents = BoxFill.in(supply.code())
                .conductors(2, feeder)
                .conductors(2 * cables.size(), lead)
                .groundingConductors(1, feeder)
                .groundingConductors(screens, lead)
                .device(feederLarger ? feeder : lead, 1);
        Finding judged =
                (clamps ? contents.internalClamps() : contents).inBox(volume).finding();
        return new Finding(
                judged.severity(),
                circuit.name() + " box",
                judged.message() + " (circuit, cold leads, screens and a control of one gang; the sensor's lead is not"
                        + " counted)",
                judged.value(),
                judged.limit(),
                judged.source());
    }
}
