package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.List;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableRoute;
import org.heatfloor.routing.EndReserve;
import org.heatfloor.routing.Router;

/** Room for cables that are longer than stated. */
final class Reserves {

    private Reserves() {}

    static List<EndReserve> of(Router router, List<CableRoute> routes, double tolerance) {
        List<EndReserve> out = new ArrayList<>();
        for (int i = 0; i < routes.size(); i++) {
            List<CableRoute> others = new ArrayList<>(routes);
            CableRoute route = others.remove(i);
            Router here = router.avoiding(
                    others.stream().map(CableRoute::line).toList(),
                    others.stream().flatMap(r -> r.coldLeads().stream()).toList());
            out.add(here.reserve(route, route.cable().length().multiply(tolerance)));
        }
        return out;
    }

    static List<Finding> findings(List<String> names, List<EndReserve> reserves, double tolerance) {
        List<Finding> out = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            EndReserve reserve = reserves.get(i);
            double wanted = Si.in("wanted", reserve.wanted(), Units.METRE);
            double total = Si.in("total", reserve.total(), Units.METRE);
            double ahead = Si.in("ahead", reserve.ahead(), Units.METRE);
            String could = "The cable may be " + QuantityText.number(100 * tolerance, 1) + " % longer than stated, "
                    + Options.metres(wanted) + ": ";
            String room = (ahead > 0 ? "the channel ahead of its end is free for " + Options.metres(ahead) : "")
                    + (ahead > 0 && !reserve.adjusters().isEmpty() ? ", and " : "")
                    + (reserve.adjusters().isEmpty()
                            ? ""
                            : uTurns(reserve.adjusters().size()) + " can be moved outwards by whole studs for "
                                    + Options.metres(total - ahead));
            out.add(Finding.of(
                    reserve.isKept() ? Severity.NOTE : Severity.WARNING,
                    names.get(i),
                    could
                            + (room.isEmpty() ? "there is no room for that" : room)
                            + (reserve.isKept() ? "." : "; measure the cable before it is laid."),
                    Amounts.metres(total),
                    reserve.wanted(),
                    Source.commonPractice("a cable's length varies by about one percent; room is kept for it")));
        }
        return out;
    }

    private static String uTurns(int count) {
        return count == 1 ? "1 U-turn" : count + " U-turns";
    }
}
