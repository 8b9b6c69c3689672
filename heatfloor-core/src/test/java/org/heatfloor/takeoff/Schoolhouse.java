package org.heatfloor.takeoff;

import java.util.List;
import java.util.Optional;
import org.heatfloor.area.Door;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;

/** The invented rooms of the old schoolhouse, in Java. */
final class Schoolhouse {

    static final GeometryFactory FACTORY = new GeometryFactory();

    private Schoolhouse() {}

    static LineString line(double x0, double y0, double x1, double y1) {
        return FACTORY.createLineString(new Coordinate[] {new Coordinate(x0, y0), new Coordinate(x1, y1)});
    }

    static Point point(double x, double y) {
        return FACTORY.createPoint(new Coordinate(x, y));
    }

    static Room washroomRoom() {
        return Room.ofWkt("POLYGON ((0 0, 2410 0, 2410 1640, 2110 1640, 2110 1960, 0 1960, 0 0))", Units.MILLIMETRE);
    }

    static Bedding washroomBedding() {
        return Bedding.of(square(6), square(8), Amounts.kilograms(20));
    }

    static Trowel square(double millimetres) {
        return Trowel.of(
                Notch.SQUARE,
                Amounts.millimetres(millimetres),
                Amounts.millimetres(millimetres),
                Amounts.millimetres(millimetres));
    }

    static TileSpec washroomTile() {
        return TileSpec.of(
                Amounts.millimetres(600),
                Amounts.millimetres(300),
                Amounts.millimetres(9),
                Amounts.millimetres(3),
                TilePattern.THIRD_OFFSET,
                Amounts.of(10, Units.PERCENT));
    }

    static Membrane washroomMembrane() {
        return new Membrane(
                Amounts.millimetres(34),
                Amounts.millimetres(22),
                Amounts.millimetres(9),
                Optional.of(new MembraneStock(
                        MembraneStock.Kind.SHEET, Amounts.millimetres(1224), Amounts.millimetres(612))));
    }

    /** The washroom with a small tile count and no membrane cut, for quick tests of the rest. */
    static TakeOffBuilder washroomWithoutStock() {
        Membrane membrane = new Membrane(
                Amounts.millimetres(34), Amounts.millimetres(22), Amounts.millimetres(9), Optional.empty());
        return TakeOff.of(
                        washroomRoom(),
                        membrane,
                        StudLattice.of(membrane, point(17, 17), Units.MILLIMETRE, Amounts.degrees(0)))
                .tile(washroomTile())
                .layoutRule(LayoutRule.USUAL.from(TileStart.corner(0, 0)))
                .bedding(washroomBedding());
    }

    static TakeOffBuilder washroom() {
        Membrane membrane = washroomMembrane();
        return TakeOff.of(
                        washroomRoom(),
                        membrane,
                        StudLattice.of(membrane, point(17, 17), Units.MILLIMETRE, Amounts.degrees(0)))
                .cable(Amounts.metres(31.5), Amounts.millimetres(5))
                .tile(washroomTile())
                .bedding(washroomBedding())
                .doors(List.of(Door.of("to the hall", line(1000, 0, 1800, 0), Units.MILLIMETRE)
                        .withAdjacentFloorHeight(Amounts.millimetres(26))))
                .stated(HeightPart.TILE, "porcelain tile", Amounts.millimetres(9))
                .stated(
                        HeightPart.MEMBRANE_AND_UPPER_BED,
                        "membrane filled and covered with mortar",
                        Amounts.millimetres(12.6))
                .stated(HeightPart.LOWER_BED, "mortar under membrane", Amounts.millimetres(2.7));
    }

    static TakeOffBuilder bootRoom() {
        Membrane membrane = new Membrane(
                Amounts.inches(1.375),
                Amounts.inches(0.875),
                Amounts.inches(11.0 / 32),
                Optional.of(new MembraneStock(MembraneStock.Kind.ROLL, Amounts.inches(33), Amounts.inches(330))));
        return TakeOff.of(
                        Room.ofWkt("POLYGON ((0 0, 94 0, 94 66, 0 66, 0 0))", Units.INCH),
                        membrane,
                        StudLattice.of(membrane, point(0.6875, 0.6875), Units.INCH, Amounts.degrees(0)))
                .cable(Amounts.feet(90), Amounts.inches(3.0 / 16))
                .tile(TileSpec.of(
                        Amounts.inches(12),
                        Amounts.inches(12),
                        Amounts.inches(5.0 / 16),
                        Amounts.inches(0.125),
                        TilePattern.STRAIGHT,
                        Amounts.of(10, Units.PERCENT)))
                .bedding(Bedding.of(
                        Trowel.of(Notch.SQUARE, Amounts.inches(0.25), Amounts.inches(0.25), Amounts.inches(0.25)),
                        Trowel.of(Notch.SQUARE, Amounts.inches(0.25), Amounts.inches(0.375), Amounts.inches(0.25)),
                        Amounts.of(50, Units.POUND)))
                .stated(HeightPart.TILE, "ceramic tile", Amounts.inches(5.0 / 16))
                .stated(
                        HeightPart.MEMBRANE_AND_UPPER_BED,
                        "membrane filled and covered with mortar",
                        Amounts.inches(33.0 / 64))
                .stated(HeightPart.LOWER_BED, "mortar under membrane", Amounts.inches(0.125));
    }

    static TakeOffBuilder kitchen() {
        Membrane membrane = new Membrane(
                Amounts.millimetres(38),
                Amounts.millimetres(25),
                Amounts.millimetres(10),
                Optional.of(new MembraneStock(MembraneStock.Kind.ROLL, Amounts.metres(1.14), Amounts.metres(19))));
        return TakeOff.of(
                        Room.ofWkt(
                                "POLYGON ((0 0, 5.2 0, 5.2 2.3, 3.4 2.3, 3.4 4.1, 0 4.1, 0 0),"
                                        + " (2.46 1.30, 2.46 1.50, 2.66 1.50, 2.66 1.30, 2.46 1.30))",
                                Units.METRE),
                        membrane,
                        StudLattice.of(membrane, point(19, 19), Units.MILLIMETRE, Amounts.degrees(0)))
                .keepOuts(List.of(KeepOut.of(
                        "movement joint",
                        KeepOutKind.MOVEMENT_JOINT,
                        line(3.4, 0, 3.4, 2.3),
                        Units.METRE,
                        TradeLength.of(Amounts.millimetres(40)))))
                .cable(Amounts.metres(96), Amounts.millimetres(6))
                .tile(TileSpec.of(
                        Amounts.millimetres(600),
                        Amounts.millimetres(600),
                        Amounts.millimetres(15),
                        Amounts.millimetres(3),
                        TilePattern.STRAIGHT,
                        Amounts.of(10, Units.PERCENT)))
                .bedding(Bedding.of(
                        square(6),
                        Trowel.of(Notch.U, Amounts.millimetres(10), Amounts.millimetres(10), Amounts.millimetres(10)),
                        Amounts.kilograms(25)))
                .doors(List.of(
                        Door.of("to the yard", line(0, 0.9, 0, 1.8), Units.METRE)
                                .withAdjacentFloorHeight(Amounts.millimetres(36)),
                        Door.of("to the hall", line(4.0, 0, 4.9, 0), Units.METRE)
                                .withAdjacentFloorHeight(Amounts.millimetres(28))))
                .stated(HeightPart.TILE, "limestone", Amounts.millimetres(15))
                .stated(
                        HeightPart.MEMBRANE_AND_UPPER_BED,
                        "membrane filled and covered with mortar",
                        Amounts.millimetres(14.1))
                .stated(HeightPart.LOWER_BED, "mortar under membrane", Amounts.millimetres(2.7));
    }
}
