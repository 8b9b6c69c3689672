package org.heatfloor.grid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.RandomRooms;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** The grid's verdicts against the geometry library's own distances, channel by channel. */
class ChannelGridProperties {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Verdicts this near to the limit may fall either way. */
    private static final double DOUBTFUL = 3e-9;

    @Property(tries = 60)
    void every_verdict_agrees_with_the_exact_distance(
            @ForAll RandomRooms.Shape shape, @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Random random = new Random(seed);
        Polygon outline = RandomRooms.outline(shape, seed);
        Room room = Room.of(outline, Units.METRE);
        double clearance = random.nextInt(4) == 0 ? 0 : 0.15 * random.nextDouble();
        double pitch = 0.08 + 0.12 * random.nextDouble();
        List<KeepOut> keepOuts = keepOuts(outline, random);
        Membrane membrane = new Membrane(
                Amounts.metres(pitch), Amounts.metres(pitch * 0.6), Amounts.millimetres(9), java.util.Optional.empty());
        StudLattice lattice = StudLattice.of(
                membrane,
                FACTORY.createPoint(RandomRooms.place(outline, random)),
                Units.METRE,
                Amounts.degrees(random.nextInt(3) == 0 ? 0 : 360 * random.nextDouble()));
        ChannelGrid grid = ChannelGrid.of(lattice, room, TradeLength.of(Amounts.metres(clearance)), keepOuts);
        for (int row = 0; row < grid.rows(); row++) {
            for (int column = 0; column < grid.columns(); column++) {
                Coordinate at = grid.junction(column, row);
                check(grid.isFree(column, row), FACTORY.createPoint(at), outline, clearance, keepOuts);
                if (column + 1 < grid.columns()) {
                    check(
                            grid.isFreeEast(column, row),
                            line(at, grid.junction(column + 1, row)),
                            outline,
                            clearance,
                            keepOuts);
                }
                if (row + 1 < grid.rows()) {
                    check(
                            grid.isFreeNorth(column, row),
                            line(at, grid.junction(column, row + 1)),
                            outline,
                            clearance,
                            keepOuts);
                }
            }
        }
    }

    private static void check(
            boolean free, Geometry channel, Polygon outline, double clearance, List<KeepOut> keepOuts) {
        double spare = outline.covers(channel) ? outline.getBoundary().distance(channel) - clearance : -1;
        for (KeepOut keepOut : keepOuts) {
            double radius = keepOut.radius().to(Units.METRE).getValue().doubleValue();
            double needed = keepOut.clearance()
                    .with(Amounts.metres(1))
                    .to(Units.METRE)
                    .getValue()
                    .doubleValue();
            Geometry keptOut = keepOut.shape();
            double distance = keptOut.distance(channel) - radius;
            if (keptOut instanceof Polygon polygon && needed == 0 && polygon.relate(channel, "T********")) {
                distance = -1;
            }
            if (keepOut.kind() == KeepOutKind.MOVEMENT_JOINT && needed == 0) {
                distance -= 1e-9;
            }
            spare = Math.min(spare, distance - needed);
        }
        if (spare > -0.5 && Math.abs(spare) < DOUBTFUL) {
            return;
        }
        if (spare == -1 && outline.buffer(1e-7).covers(channel) && !free) {
            return;
        }
        assertThat(free).as("channel %s with %s m to spare", channel, spare).isEqualTo(spare > 0);
    }

    private static List<KeepOut> keepOuts(Polygon outline, Random random) {
        List<KeepOut> out = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            Coordinate at = outline.getInteriorPoint().getCoordinate();
            double clearance = random.nextInt(3) == 0 ? 0 : 0.2 * random.nextDouble();
            TradeLength length = TradeLength.of(Amounts.metres(clearance));
            Coordinate other = RandomRooms.place(outline, random);
            switch (random.nextInt(3)) {
                case 0 -> {
                    Point centre = FACTORY.createPoint(at);
                    out.add(KeepOut.round(
                            "flange",
                            KeepOutKind.TOILET_FLANGE,
                            centre,
                            Units.METRE,
                            Amounts.metres(0.05 + 0.2 * random.nextDouble()),
                            length));
                }
                case 1 -> {
                    Polygon box = (Polygon) FACTORY.createLineString(new Coordinate[] {at, other})
                            .buffer(0.02 + 0.1 * random.nextDouble(), 2);
                    out.add(KeepOut.of("cupboard", KeepOutKind.FIXED_FURNITURE, box, Units.METRE, length));
                }
                default ->
                    out.add(KeepOut.of("joint", KeepOutKind.MOVEMENT_JOINT, line(at, other), Units.METRE, length));
            }
        }
        return out;
    }

    private static Geometry line(Coordinate a, Coordinate b) {
        return FACTORY.createLineString(new Coordinate[] {a, b});
    }
}
