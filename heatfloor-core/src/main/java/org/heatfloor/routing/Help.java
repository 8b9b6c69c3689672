package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.TradeLength;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.GeometryFactory;

/** What would make room for a cable: clearances and spacing one stud less, the bound worked out anew for each. */
final class Help {

    private static final double WORTH_METRES = 0.01;

    private final RouteSite site;
    private final CableToLay cable;

    Help(RouteSite site, CableToLay cable) {
        this.site = site;
        this.cable = cable;
    }

    List<Finding> list(double capacityMetres) {
        List<Finding> out = new ArrayList<>();
        for (int i = 0; i < site.keepOuts.size(); i++) {
            KeepOut keepOut = site.keepOuts.get(i);
            double clearance = Si.in("clearance", keepOut.clearance().with(Amounts.metres(site.pitch)), Units.METRE);
            if (clearance >= site.pitch - 1e-9) {
                List<KeepOut> others = new ArrayList<>(site.keepOuts);
                others.set(i, nearer(keepOut, clearance - site.pitch));
                add(
                        out,
                        keepOut.name(),
                        "the clearance one stud less",
                        capacity(others, site.minSpacing),
                        capacityMetres);
            }
        }
        if (site.minSpacing - site.pitch >= site.pitch - 1e-9) {
            add(
                    out,
                    cable.name(),
                    "the least spacing one stud less",
                    capacity(site.keepOuts, site.minSpacing - site.pitch),
                    capacityMetres);
        }
        return out;
    }

    private void add(List<Finding> out, String subject, String what, double now, double before) {
        if (now - before < WORTH_METRES) {
            return;
        }
        double length = Si.in("cable length", cable.length(), Units.METRE);
        out.add(Finding.of(
                Severity.NOTE,
                subject,
                "With " + what + ", where that is allowed, up to " + QuantityText.write(Amounts.metres(now), 2)
                        + " could lie here" + (now >= length ? ", which is enough." : ", which is not yet enough."),
                Amounts.metres(now),
                cable.length(),
                Source.derived("capacity bound worked out anew")));
    }

    private double capacity(List<KeepOut> keepOuts, double spacing) {
        Router router = Router.of(RouteSite.of(
                site.room,
                site.wallClearance,
                keepOuts,
                site.grid.lattice(),
                Amounts.metres(spacing),
                Amounts.metres(site.bendRadius),
                new GeometryFactory().createPoint(site.start),
                Amounts.metres(site.riser),
                Amounts.metres(site.jointLength)));
        double best = 0;
        for (int p = 0; p < router.parts(); p++) {
            best = Math.max(best, Si.in("capacity", router.capacity(p), Units.METRE));
        }
        return best;
    }

    /** A keep-out with a clearance in metres, not negative, and otherwise the same. */
    static KeepOut nearer(KeepOut keepOut, double clearance) {
        return keepOut.withClearance(TradeLength.of(Amounts.metres(Math.max(0, clearance))));
    }
}
