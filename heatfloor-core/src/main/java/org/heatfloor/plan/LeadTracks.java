package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableRoute;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Whether cold leads have room beside each other on their way along the wall. */
final class LeadTracks {

    /** Where leads leave the wall together they lie close; that much does not count. */
    private static final double AT_THE_START_METRES = 0.1;

    private LeadTracks() {}

    static Optional<Finding> crowded(List<CableRoute> routes) {
        List<LineString> leads = new ArrayList<>();
        List<Double> diameters = new ArrayList<>();
        for (CableRoute route : routes) {
            for (LineString lead : route.coldLeads()) {
                leads.add(lead);
                diameters.add(Si.in("diameter", route.cable().diameter(), Units.METRE));
            }
        }
        double worst = 0;
        for (int i = 0; i < leads.size(); i++) {
            for (int j = 0; j < i; j++) {
                double apart = (diameters.get(i) + diameters.get(j)) / 2;
                worst = Math.max(
                        worst,
                        OverlayNGRobust.overlay(leads.get(i), leads.get(j).buffer(apart), OverlayNG.INTERSECTION)
                                .getLength());
            }
        }
        if (worst <= AT_THE_START_METRES) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                Severity.WARNING,
                "cold leads",
                "Along the wall two cold leads have no room beside each other on " + Options.metres(worst)
                        + ": lay one of them in a tube in the wall or the edge strip, never one over the other.",
                Amounts.metres(worst),
                Amounts.metres(AT_THE_START_METRES),
                Source.derived("the strip along the wall less half the least spacing")));
    }
}
