package org.heatfloor.takeoff;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.quantity.Amounts;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Random floors, tiles and membranes. Sizes are whole millimetres. */
final class TakeOffRooms {

    private TakeOffRooms() {}

    /** A wing of a room: from the wall y = 0, between x0 and x1, as deep as y1. */
    record Wing(double x0, double x1, double y1) {
        Polygon shape() {
            return FloorRegions.rectangle(x0, 0, x1, y1);
        }
    }

    static Arbitrary<Integer> millimetres(int least, int most) {
        return Arbitraries.integers().between(least, most);
    }

    /** L-, T- and U-shaped floors: a main room and up to two wings, some with a column, some turned. */
    static Arbitrary<Polygon> floors() {
        Arbitrary<Integer> turn = Arbitraries.of(0, 0, 0, 17, 45);
        return Combinators.combine(
                        millimetres(900, 3600), millimetres(700, 2400), wings(), Arbitraries.of(true, false), turn)
                .as(TakeOffRooms::floor);
    }

    private static Arbitrary<List<Wing>> wings() {
        return Combinators.combine(millimetres(0, 2000), millimetres(300, 1200), millimetres(500, 3000))
                .as((x, w, y) -> new Wing(x / 1000.0, (x + w) / 1000.0, y / 1000.0))
                .list()
                .ofMaxSize(2);
    }

    private static Polygon floor(int length, int width, List<Wing> wings, boolean column, int degrees) {
        Geometry floor = FloorRegions.rectangle(0, 0, length / 1000.0, width / 1000.0);
        for (Wing wing : wings) {
            floor = floor.union(wing.shape());
        }
        if (column) {
            floor = floor.difference(FloorRegions.rectangle(0.31, 0.22, 0.46, 0.41));
        }
        Polygon widest = FloorRegions.polygons(floor).stream()
                .max(java.util.Comparator.comparingDouble(Geometry::getArea))
                .orElseThrow();
        return degrees == 0
                ? widest
                : (Polygon) AffineTransformation.rotationInstance(Math.toRadians(degrees))
                        .transform(widest);
    }

    static Arbitrary<TileSpec> tiles() {
        return Combinators.combine(
                        millimetres(150, 620),
                        millimetres(120, 420),
                        millimetres(2, 8),
                        Arbitraries.of(TilePattern.class))
                .as((l, w, j, p) -> WorkedChecks.tile(l, w, 9, j, p, 10));
    }

    static Arbitrary<Membrane> membranes() {
        return Combinators.combine(
                        millimetres(30, 60),
                        millimetres(10, 30),
                        millimetres(12, 60),
                        Arbitraries.of(MembraneStock.Kind.class))
                .as((pitch, across, along, kind) -> new Membrane(
                        Amounts.millimetres(pitch),
                        Amounts.millimetres(pitch * 0.6),
                        Amounts.millimetres(8),
                        Optional.of(new MembraneStock(
                                kind,
                                Amounts.millimetres((double) pitch * across + 3),
                                Amounts.millimetres((double) pitch * along)))));
    }
}
