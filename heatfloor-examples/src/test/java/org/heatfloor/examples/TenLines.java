package org.heatfloor.examples;

import static org.heatfloor.quantity.Amounts.metres;
import static org.heatfloor.quantity.Amounts.millimetres;
import static org.heatfloor.quantity.Amounts.volts;
import static org.heatfloor.quantity.Amounts.watts;
import static org.heatfloor.quantity.Units.MILLIMETRE;

import java.util.List;
import java.util.Optional;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.electrical.ConductorSize;
import org.heatfloor.electrical.ElectricalCode;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.electrical.Supply;
import org.heatfloor.grid.Membrane;
import org.heatfloor.plan.Brief;
import org.heatfloor.plan.CableRules;
import org.heatfloor.plan.Plan;
import org.heatfloor.plan.Planner;

/** The ten lines of the README, which a test holds equal to these. */
final class TenLines {

    private TenLines() {}

    static Plan run() {
        Brief brief = Brief.builder("Porch")
                .room(Room.ofWkt("POLYGON ((0 0, 2400 0, 2400 1500, 0 1500, 0 0))", MILLIMETRE), TradeLength.studs(2))
                .membrane(new Membrane(millimetres(34), millimetres(22), millimetres(9), Optional.empty()))
                .rules(CableRules.of(
                        TradeLength.studs(3), TradeLength.studs(5), millimetres(20), 2400, 700, MILLIMETRE))
                .catalogue(List.of(
                        new HeatingCable("P20", 2, metres(20), watts(220), volts(230), millimetres(5), metres(3))))
                .supply(Supply.of(volts(230), ElectricalCode.of("IEC 60364"), metres(14), ConductorSize.of("2.5 mm²")))
                .build();
        Plan plan = Planner.plan(brief);
        plan.cables()
                .forEach(cable ->
                        System.out.println(cable.name() + ": " + cable.route().line()));
        plan.findings().forEach(finding -> System.out.println(finding.severity() + " " + finding.message()));
        return plan;
    }
}
