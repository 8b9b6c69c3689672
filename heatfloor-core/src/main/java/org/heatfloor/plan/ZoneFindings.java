package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.heatfloor.area.HeatableArea;
import org.heatfloor.area.PriorityZone;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableRoute;
import org.heatfloor.routing.Router;
import org.heatfloor.routing.ZoneDensity;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Where people stand: how much of each zone is heated, and how much closer runs lie there, wanted and got. */
final class ZoneFindings {

    /** Less than this share of the wanted ratio, both as logarithms, is a clear shortfall. */
    private static final double CLEAR_SHORTFALL = 0.5;
    /** A ratio nearer to 1 than this is not told from even runs. */
    private static final double TOLD_APART = 1.1;

    private ZoneFindings() {}

    private static double shared(Geometry a, Geometry b) {
        return OverlayNGRobust.overlay(a, b, OverlayNG.INTERSECTION).getArea();
    }

    static List<Finding> of(
            Brief brief, Router router, List<CableRoute> routes, HeatableArea heatable, Geometry heated) {
        List<Finding> out = new ArrayList<>();
        if (brief.priorityZones.isEmpty()) {
            return out;
        }
        for (PriorityZone zone : brief.priorityZones) {
            double area = shared(zone.shape(), brief.room.polygon());
            double share = area > 0 ? shared(zone.shape(), heated) / area : 0;
            out.add(Finding.withValue(
                    Severity.NOTE,
                    zone.name(),
                    "Cable lies within half its even spacing of " + QuantityText.number(100 * share, 0)
                            + " % of this zone.",
                    Amounts.of(100 * share, Units.PERCENT),
                    Source.derived("heated area inside the zone")));
        }
        for (int part = 0; part < router.parts(); part++) {
            router.densities(part, routes).forEach(density -> out.add(judged(density)));
        }
        Quantity<Dimensionless> weighted = heatable.weightedShare(heated, brief.priorityZones);
        out.add(Finding.withValue(
                Severity.NOTE,
                "priority zones",
                "With each zone counted by its weight, "
                        + QuantityText.number(Si.in("share", weighted, Units.PERCENT), 0)
                        + " % of the floor is heated; without weights "
                        + QuantityText.number(
                                Si.in("share", heatable.weightedShare(heated, List.of()), Units.PERCENT), 0)
                        + " %.",
                weighted,
                Source.derived("heated area by weight over the floor by weight")));
        return out;
    }

    static Finding judged(ZoneDensity density) {
        double asked = Si.in("asked", density.asked(), Units.ONE);
        double wanted = Si.in("wanted", density.wanted(), Units.ONE);
        double got = Si.in("got", density.got(), Units.ONE);
        boolean apart = Math.abs(Math.log(wanted)) > Math.log(TOLD_APART);
        boolean tooLittle = apart && Math.log(got) / Math.log(wanted) < CLEAR_SHORTFALL;
        String allowed = Math.abs(wanted - asked) < 0.005 * asked
                ? "As much as its weight asks for, " + times(wanted) + ", was wanted."
                : "Its weight asks for " + times(asked) + "; the spacings and the cable's length allow " + times(wanted)
                        + ".";
        return Finding.of(
                tooLittle ? Severity.WARNING : Severity.NOTE,
                density.zone(),
                Options.metres(Si.in("length", density.length(), Units.METRE)) + " of cable lie on the "
                        + QuantityText.number(Si.in("area", density.area(), Units.SQUARE_METRE), 2)
                        + " m² of this zone that cable can reach, per area " + times(got)
                        + " as much as outside the zones. " + allowed
                        + (tooLittle
                                ? " That is clearly less than wanted; if it is not enough, lay a cable of its own here."
                                : ""),
                density.got(),
                density.wanted(),
                Source.derived("cable per area of reach inside the zone over that outside every zone"));
    }

    private static String times(double ratio) {
        return String.format(Locale.ROOT, "%.2f times", ratio);
    }
}
