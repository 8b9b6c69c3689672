package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import org.heatfloor.area.PriorityZone;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Measures how closely cables lie in the zones, on the drawn lines and with the exact shapes. */
final class ZoneDensities {

    /** A zone whose reach is less than a square of so many least spacings tells nothing. */
    private static final double LEAST_SPACINGS = 2;

    private ZoneDensities() {}

    static List<ZoneDensity> of(Router router, PriorityZones wish, int part, List<CableRoute> routes) {
        List<ZoneDensity> out = new ArrayList<>();
        if (wish.zones().isEmpty()) {
            return out;
        }
        Lattice lattice = router.parts.get(part);
        double side = router.site.minSpacing / router.site.pitch;
        double length = 0;
        List<Geometry> lines = new ArrayList<>();
        for (CableRoute route : routes) {
            if (!liesIn(lattice, router.frame, route)) {
                continue;
            }
            length += Si.in("cable length", route.cable().length(), Units.METRE) / router.site.pitch;
            lines.add(Wanted.onLattice(router.frame, route.line()));
        }
        if (lines.isEmpty()) {
            return out;
        }
        double least = LEAST_SPACINGS * LEAST_SPACINGS * side * side;
        Wanted wanted = Wanted.of(lattice, router.frame, wish, length, router.areas[part], side);
        Geometry reach = Wanted.reach(lattice, side);
        Geometry outside = without(reach, wanted.shapes);
        if (outside.getArea() < least) {
            return out;
        }
        // A run on the very edge of a zone belongs to the zone alone.
        List<Geometry> rest =
                lines.stream().map(line -> without(line, wanted.shapes)).toList();
        double around = outside.getArea() / laid(rest, outside);
        for (int n = 0; n < wanted.zones.size(); n++) {
            PriorityZone zone = wanted.zones.get(n);
            Geometry inside = common(reach, wanted.shapes.get(n));
            if (inside.getArea() < least) {
                continue;
            }
            double here = laid(lines, inside);
            double pitch = router.site.pitch;
            out.add(new ZoneDensity(
                    zone.name(),
                    Amounts.of(zone.weight(), Units.ONE),
                    Amounts.of(wanted.density(inside) * wanted.spacings[0], Units.ONE),
                    Amounts.of(around * here / inside.getArea(), Units.ONE),
                    Amounts.metres(here * pitch),
                    Amounts.squareMetres(inside.getArea() * pitch * pitch)));
        }
        return out;
    }

    private static boolean liesIn(Lattice lattice, Frame frame, CableRoute route) {
        Coordinate joint = route.line().getCoordinateN(0);
        return lattice.free((int) Math.rint(frame.columnOf(joint)), (int) Math.rint(frame.rowOf(joint)));
    }

    /** The area two areas have in common, without edges and corners that they merely share. */
    private static Geometry common(Geometry a, Geometry b) {
        Geometry common = OverlayNGRobust.overlay(a, b, OverlayNG.INTERSECTION);
        return common.getFactory().buildGeometry(PolygonExtracter.getPolygons(common));
    }

    private static Geometry without(Geometry whole, List<Geometry> shapes) {
        Geometry left = whole;
        for (Geometry shape : shapes) {
            left = OverlayNGRobust.overlay(left, shape, OverlayNG.DIFFERENCE);
        }
        return left;
    }

    /** Length of lines in a shape; never nothing, so that a ratio can be told. */
    private static double laid(List<Geometry> lines, Geometry shape) {
        double sum = 0;
        for (Geometry line : lines) {
            sum += OverlayNGRobust.overlay(line, shape, OverlayNG.INTERSECTION).getLength();
        }
        return Math.max(sum, 1e-3);
    }
}
