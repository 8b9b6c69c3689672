package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.Door;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.PriorityZone;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.electrical.ConductorSize;
import org.heatfloor.electrical.ElectricalCode;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.electrical.Supply;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.Bedding;
import org.heatfloor.takeoff.Notch;
import org.heatfloor.takeoff.TilePattern;
import org.heatfloor.takeoff.TileSpec;
import org.heatfloor.takeoff.Trowel;
import org.heatfloor.thermal.BuildUp;
import org.heatfloor.thermal.Climate;
import org.heatfloor.thermal.Layer;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** The invented rooms of the old schoolhouse as briefs; the figures are those of the room files of the examples. */
final class Schoolrooms {

    static final double[] PREFERRED = {
        8, 9, 10, 11.2, 12.5, 14, 16, 18, 20, 22.4, 25, 28, 31.5, 35.5, 40, 45, 50, 56, 63, 71, 80, 90, 100
    };

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Schoolrooms() {}

    // Washroom

    /** The washroom without cables, temperatures, tile and mortar. */
    static Brief.Builder washroomFloor() {
        return Brief.builder("Schoolhouse washroom")
                .room(
                        Room.ofWkt(
                                "POLYGON ((0 0, 2410 0, 2410 1640, 2110 1640, 2110 1960, 0 1960, 0 0))",
                                Units.MILLIMETRE),
                        millimetres(60))
                .keepOut(KeepOut.round(
                        "pan",
                        KeepOutKind.TOILET_FLANGE,
                        point(430, 1655),
                        Units.MILLIMETRE,
                        Amounts.millimetres(110),
                        TradeLength.studs(7)))
                .keepOut(KeepOut.of(
                        "register",
                        KeepOutKind.AIR_REGISTER,
                        rectangle(1700, 1760, 1960, 1860),
                        Units.MILLIMETRE,
                        TradeLength.studs(4)))
                .keepOut(KeepOut.of(
                        "linen cabinet",
                        KeepOutKind.FIXED_FURNITURE,
                        rectangle(0, 0, 470, 900),
                        Units.MILLIMETRE,
                        millimetres(30)))
                .membrane(washroomMembrane())
                .supply(supply230());
    }

    static Membrane washroomMembrane() {
        return new Membrane(
                Amounts.millimetres(34),
                Amounts.millimetres(22),
                Amounts.millimetres(9),
                Optional.of(new MembraneStock(
                        MembraneStock.Kind.SHEET, Amounts.millimetres(1224), Amounts.millimetres(612))));
    }

    static Supply supply230() {
        return Supply.of(
                        Amounts.volts(230),
                        ElectricalCode.of("IEC 60364"),
                        Amounts.metres(14),
                        ConductorSize.of("2.5 mm²"))
                .withInstallation("C")
                .withAmbient(Amounts.celsius(30));
    }

    static CableRules washroomRules() {
        return CableRules.of(
                TradeLength.studs(3), TradeLength.studs(5), Amounts.millimetres(20), 2410, 1120, Units.MILLIMETRE);
    }

    static HeatingCable k(double metres) {
        return k(metres, 230, 3);
    }

    static HeatingCable k(double metres, double volts, double leadMetres) {
        return cable("K", 2, metres, 11, volts, 5, leadMetres);
    }

    /** K8 to K50. */
    static List<HeatingCable> washroomCatalogue() {
        List<HeatingCable> cables = new ArrayList<>();
        for (double metres : PREFERRED) {
            if (metres <= 50) {
                cables.add(k(metres));
            }
        }
        return cables;
    }

    static BuildUp washroomLayers() {
        return BuildUp.of(List.of(
                layer("porcelain tile", 9, 1.3)
                        .withStorage(density(2300), Amounts.of(840, Units.JOULE_PER_KILOGRAM_KELVIN)),
                heated("membrane filled and covered with mortar", 12.6, 1.0)
                        .withStorage(density(1800), Amounts.of(1000, Units.JOULE_PER_KILOGRAM_KELVIN)),
                layer("mortar under membrane", 2.7, 1.0)
                        .withStorage(density(1800), Amounts.of(1000, Units.JOULE_PER_KILOGRAM_KELVIN)),
                layer("plywood", 18, 0.13).withStorage(density(500), Amounts.of(1600, Units.JOULE_PER_KILOGRAM_KELVIN)),
                layer("mineral wool between joists", 100, 0.037)
                        .withStorage(density(20), Amounts.of(1030, Units.JOULE_PER_KILOGRAM_KELVIN))));
    }

    static Climate washroomClimate() {
        return Climate.of(Amounts.celsius(22), Amounts.celsius(12));
    }

    /** The washroom with everything but the cables and the way they are to be laid. */
    static Brief.Builder washroomCovered(Climate climate) {
        return washroomFloor()
                .heat(washroomLayers(), climate)
                .tile(TileSpec.of(
                        Amounts.millimetres(600),
                        Amounts.millimetres(300),
                        Amounts.millimetres(9),
                        Amounts.millimetres(3),
                        TilePattern.THIRD_OFFSET,
                        Amounts.of(10, Units.PERCENT)))
                .bedding(Bedding.of(square(6), square(8), Amounts.kilograms(20)))
                .priorityZone(PriorityZone.of("at the basin", rectangle(900, 60, 1700, 700), Units.MILLIMETRE, 3))
                .priorityZone(PriorityZone.of("before the pan", rectangle(150, 900, 800, 1300), Units.MILLIMETRE, 2))
                .door(Door.of("to the hall", line(1000, 0, 1800, 0), Units.MILLIMETRE)
                        .withAdjacentFloorHeight(Amounts.millimetres(26)));
    }

    /** The washroom as the room file has it. */
    static Brief washroom() {
        return washroomCovered(fullClimate())
                .rules(washroomRules())
                .catalogue(washroomCatalogue())
                .build();
    }

    static Climate fullClimate() {
        return washroomClimate().withHeatLoss(Amounts.watts(290)).withSurfaceLimit(Amounts.celsius(33));
    }

    /** The washroom with one cable, bought by someone who took the wrong number. */
    static Brief.Builder wrongCable() {
        return washroomCovered(fullClimate()).catalogue(List.of(k(63)));
    }

    // Boot room

    static Brief bootRoom() {
        Brief.Builder brief = Brief.builder("Boot room")
                .room(Room.ofWkt("POLYGON ((0 0, 94 0, 94 66, 0 66, 0 0))", Units.INCH), inches(2.5))
                .keepOut(KeepOut.of(
                        "bench", KeepOutKind.FIXED_FURNITURE, rectangle(0, 50, 60, 66), Units.INCH, inches(1)))
                .keepOut(KeepOut.round(
                        "floor drain",
                        KeepOutKind.DRAIN,
                        point(72, 30),
                        Units.INCH,
                        Amounts.inches(4),
                        TradeLength.studs(2)))
                .membrane(new Membrane(
                        Amounts.inches(1.375),
                        Amounts.inches(0.875),
                        Amounts.inches(11.0 / 32),
                        Optional.of(
                                new MembraneStock(MembraneStock.Kind.ROLL, Amounts.inches(33), Amounts.inches(330)))))
                .rules(CableRules.of(
                        TradeLength.studs(3), TradeLength.studs(4), Amounts.inches(0.875), 94, 12, Units.INCH))
                .supply(Supply.of(
                                Amounts.volts(120),
                                ElectricalCode.of("NEC 2023"),
                                Amounts.feet(45),
                                ConductorSize.of("12 AWG"))
                        .withAmbient(Amounts.of(86, Units.FAHRENHEIT)))
                .heat(
                        BuildUp.of(List.of(
                                Layer.of("ceramic tile", Amounts.inches(5.0 / 16), Amounts.wattsPerMetreKelvin(1.3)),
                                Layer.heated(
                                        "membrane filled and covered with mortar",
                                        Amounts.inches(33.0 / 64),
                                        Amounts.wattsPerMetreKelvin(1.0)),
                                Layer.of(
                                        "mortar under membrane",
                                        Amounts.inches(0.125),
                                        Amounts.wattsPerMetreKelvin(1.0)),
                                Layer.of("concrete", Amounts.inches(4), Amounts.wattsPerMetreKelvin(1.95)),
                                Layer.of(
                                        "expanded polystyrene",
                                        Amounts.inches(2),
                                        Amounts.wattsPerMetreKelvin(0.036)))),
                        Climate.of(Amounts.of(68, Units.FAHRENHEIT), Amounts.of(50, Units.FAHRENHEIT))
                                .withSurfaceLimit(Amounts.of(86, Units.FAHRENHEIT)))
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
                        Amounts.of(50, Units.POUND)));
        double[] feet = {30, 36, 43, 52, 62, 75, 90, 108, 130};
        double[] watts = {102, 122, 146, 177, 211, 255, 306, 367, 442};
        List<HeatingCable> cables = new ArrayList<>();
        for (int i = 0; i < feet.length; i++) {
            cables.add(new HeatingCable(
                    "F" + Math.round(feet[i]),
                    2,
                    Amounts.feet(feet[i]),
                    Amounts.watts(watts[i]),
                    Amounts.volts(120),
                    Amounts.inches(3.0 / 16),
                    Amounts.feet(10)));
        }
        return brief.catalogue(cables).build();
    }

    // Kitchen

    static final LineString KITCHEN_JOINT = line(3.4, 0, 3.4, 2.3);

    static Brief kitchen() {
        List<HeatingCable> cables = new ArrayList<>();
        for (double metres : PREFERRED) {
            cables.add(cable("M", 2, metres, 12, 230, 6, 4));
        }
        for (double metres : PREFERRED) {
            cables.add(cable("S", 1, metres, 12, 230, 4, 4));
        }
        return Brief.builder("Refectory kitchen")
                .room(
                        Room.ofWkt(
                                "POLYGON ((0 0, 5.2 0, 5.2 2.3, 3.4 2.3, 3.4 4.1, 0 4.1, 0 0),"
                                        + " (2.46 1.30, 2.46 1.50, 2.66 1.50, 2.66 1.30, 2.46 1.30))",
                                Units.METRE),
                        millimetres(60))
                .keepOut(KeepOut.of(
                        "worktop run",
                        KeepOutKind.FIXED_FURNITURE,
                        rectangle(0, 3.45, 3.4, 4.1),
                        Units.METRE,
                        millimetres(0)))
                .keepOut(KeepOut.of(
                        "island",
                        KeepOutKind.FIXED_FURNITURE,
                        rectangle(0.9, 1.35, 2.1, 2.25),
                        Units.METRE,
                        millimetres(30)))
                .keepOut(KeepOut.of(
                        "movement joint", KeepOutKind.MOVEMENT_JOINT, KITCHEN_JOINT, Units.METRE, millimetres(40)))
                .priorityZone(PriorityZone.of("along the worktop", rectangle(0.1, 2.6, 3.3, 3.4), Units.METRE, 2))
                .membrane(new Membrane(
                        Amounts.millimetres(38),
                        Amounts.millimetres(25),
                        Amounts.millimetres(10),
                        Optional.of(
                                new MembraneStock(MembraneStock.Kind.ROLL, Amounts.metres(1.14), Amounts.metres(19)))))
                .rules(CableRules.of(
                        millimetres(114), millimetres(171), Amounts.millimetres(25), 3.4, 2.9, Units.METRE))
                .catalogue(cables)
                .supply(Supply.of(
                                Amounts.volts(230),
                                ElectricalCode.of("BS 7671:2018"),
                                Amounts.metres(22),
                                ConductorSize.of("2.5 mm²"))
                        .withInstallation("C")
                        .withAmbient(Amounts.celsius(30)))
                .heat(
                        BuildUp.of(List.of(
                                layer("limestone", 15, 1.7),
                                heated("membrane filled and covered with mortar", 14.1, 1.0),
                                layer("mortar under membrane", 2.7, 1.0),
                                layer("cement screed", 65, 1.2),
                                layer("extruded polystyrene", 80, 0.034))),
                        Climate.of(Amounts.celsius(20), Amounts.celsius(8))
                                .withHeatLoss(Amounts.watts(980))
                                .withSurfaceLimit(Amounts.celsius(29)))
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
                .door(Door.of("to the yard", line(0, 0.9, 0, 1.8), Units.METRE)
                        .withAdjacentFloorHeight(Amounts.millimetres(36)))
                .door(Door.of("to the hall", line(4.0, 0, 4.9, 0), Units.METRE)
                        .withAdjacentFloorHeight(Amounts.millimetres(28)))
                .build();
    }

    // Pieces

    static HeatingCable cable(
            String letter,
            int conductors,
            double metres,
            double wattsPerMetre,
            double volts,
            double diameterMillimetres,
            double leadMetres) {
        return new HeatingCable(
                letter + (metres == Math.rint(metres) ? String.valueOf((long) metres) : String.valueOf(metres)),
                conductors,
                Amounts.metres(metres),
                Amounts.watts(metres * wattsPerMetre),
                Amounts.volts(volts),
                Amounts.millimetres(diameterMillimetres),
                Amounts.metres(leadMetres));
    }

    static TradeLength millimetres(double value) {
        return TradeLength.of(Amounts.millimetres(value));
    }

    static TradeLength inches(double value) {
        return TradeLength.of(Amounts.inches(value));
    }

    static Point point(double x, double y) {
        return FACTORY.createPoint(new Coordinate(x, y));
    }

    static LineString line(double x0, double y0, double x1, double y1) {
        return FACTORY.createLineString(new Coordinate[] {new Coordinate(x0, y0), new Coordinate(x1, y1)});
    }

    static Polygon rectangle(double x0, double y0, double x1, double y1) {
        return FACTORY.createPolygon(new Coordinate[] {
            new Coordinate(x0, y0),
            new Coordinate(x1, y0),
            new Coordinate(x1, y1),
            new Coordinate(x0, y1),
            new Coordinate(x0, y0)
        });
    }

    private static Trowel square(double millimetres) {
        Quantity<Length> side = Amounts.millimetres(millimetres);
        return Trowel.of(Notch.SQUARE, side, side, side);
    }

    private static Layer layer(String name, double millimetres, double conductivity) {
        return Layer.of(name, Amounts.millimetres(millimetres), conductivity(conductivity));
    }

    private static Layer heated(String name, double millimetres, double conductivity) {
        return Layer.heated(name, Amounts.millimetres(millimetres), conductivity(conductivity));
    }

    private static Quantity<org.heatfloor.quantity.ThermalConductivity> conductivity(double value) {
        return Amounts.of(value, Units.WATT_PER_METRE_KELVIN);
    }

    private static Quantity<org.heatfloor.quantity.Density> density(double value) {
        return Amounts.of(value, Units.KILOGRAM_PER_CUBIC_METRE);
    }
}
