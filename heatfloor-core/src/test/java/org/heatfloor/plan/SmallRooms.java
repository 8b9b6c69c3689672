package org.heatfloor.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.grid.Membrane;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Polygon;

/** Small rectangular rooms without furniture, for quick tests; the cold lead leaves the middle of the left wall. */
final class SmallRooms {

    private SmallRooms() {}

    static Brief.Builder bare(double width, double depth) {
        return bare(width, depth, Units.MILLIMETRE);
    }

    /** The same room, every figure given in another unit. */
    static Brief.Builder bare(double widthMillimetres, double depthMillimetres, Unit<Length> unit) {
        double f = Si.in("unit", Amounts.millimetres(1), unit);
        Polygon outline = Schoolrooms.rectangle(0, 0, widthMillimetres * f, depthMillimetres * f);
        return Brief.builder("small room")
                .room(Room.of(outline, unit), TradeLength.of(Amounts.of(60 * f, unit)))
                .membrane(new Membrane(
                        Amounts.of(34 * f, unit), Amounts.of(22 * f, unit), Amounts.of(9 * f, unit), Optional.empty()))
                .rules(CableRules.of(
                        TradeLength.of(Amounts.of(102 * f, unit)),
                        TradeLength.studs(5),
                        Amounts.of(20 * f, unit),
                        0,
                        Math.rint(depthMillimetres / 2) * f,
                        unit))
                .supply(Schoolrooms.supply230());
    }

    static CableRules rules() {
        return CableRules.of(
                TradeLength.studs(3), TradeLength.studs(5), Amounts.millimetres(20), 0, 500, Units.MILLIMETRE);
    }

    static Brief.Builder heated(double width, double depth, double lossWatts) {
        return heated(width, depth, lossWatts, 33);
    }

    static Brief.Builder heated(double width, double depth, double lossWatts, double limitCelsius) {
        return bare(width, depth)
                .heat(
                        Schoolrooms.washroomLayers(),
                        Schoolrooms.washroomClimate()
                                .withHeatLoss(Amounts.watts(lossWatts))
                                .withSurfaceLimit(Amounts.celsius(limitCelsius)));
    }

    static List<HeatingCable> catalogue() {
        return DoubleStream.of(3, 3.5, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10, 11.2, 12.5, 14)
                .mapToObj(Schoolrooms::k)
                .toList();
    }
}
