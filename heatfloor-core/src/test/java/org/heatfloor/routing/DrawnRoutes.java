package org.heatfloor.routing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;

/** Hand-made rooms and routes, drawn without the router: corners in millimetres, rounded by arcs of chords. */
final class DrawnRoutes {

    static final GeometryFactory FACTORY = new GeometryFactory();
    static final double PITCH = 34;
    static final String ROOM =
            "POLYGON ((0 0, 2000 0, 2000 1600, 0 1600, 0 0), (1200 1200, 1200 1300, 1300 1300, 1300 1200, 1200 1200))";

    private DrawnRoutes() {}

    /** A rectilinear or oblique line through corners in millimetres; every inner corner gets the same radius. */
    static LineString rounded(double radius, int chords, double... corners) {
        List<Coordinate> points = new ArrayList<>();
        int n = corners.length / 2;
        points.add(new Coordinate(corners[0] / 1000, corners[1] / 1000));
        for (int i = 1; i < n - 1; i++) {
            double x = corners[2 * i];
            double y = corners[2 * i + 1];
            double inAngle = Math.atan2(y - corners[2 * i - 1], x - corners[2 * i - 2]);
            double outAngle = Math.atan2(corners[2 * i + 3] - y, corners[2 * i + 2] - x);
            double turn = Math.IEEEremainder(outAngle - inAngle, 2 * Math.PI);
            if (chords == 0) {
                points.add(new Coordinate(x / 1000, y / 1000));
                continue;
            }
            double back = radius * Math.tan(Math.abs(turn) / 2);
            double side = Math.signum(turn);
            double cx = x - back * Math.cos(inAngle) - side * radius * Math.sin(inAngle);
            double cy = y - back * Math.sin(inAngle) + side * radius * Math.cos(inAngle);
            for (int k = 0; k <= chords; k++) {
                double a = inAngle + turn * k / chords;
                points.add(new Coordinate(
                        (cx + side * radius * Math.sin(a)) / 1000, (cy - side * radius * Math.cos(a)) / 1000));
            }
        }
        points.add(new Coordinate(corners[2 * n - 2] / 1000, corners[2 * n - 1] / 1000));
        return FACTORY.createLineString(points.toArray(new Coordinate[0]));
    }

    /** Length in metres of the same line with true arcs. */
    static double trueLength(double radius, double... corners) {
        double sum = 0;
        int n = corners.length / 2;
        for (int i = 1; i < n; i++) {
            sum += Math.hypot(corners[2 * i] - corners[2 * i - 2], corners[2 * i + 1] - corners[2 * i - 1]);
        }
        for (int i = 1; i < n - 1; i++) {
            double inAngle = Math.atan2(corners[2 * i + 1] - corners[2 * i - 1], corners[2 * i] - corners[2 * i - 2]);
            double outAngle = Math.atan2(corners[2 * i + 3] - corners[2 * i + 1], corners[2 * i + 2] - corners[2 * i]);
            double turn = Math.abs(Math.IEEEremainder(outAngle - inAngle, 2 * Math.PI));
            sum += radius * turn - 2 * radius * Math.tan(turn / 2);
        }
        return sum / 1000;
    }

    /** Five rows of a back-and-forth, three studs apart; each number may be replaced for a mutation. */
    static double[] rows() {
        return new double[] {
            136, 136, 1836, 136, 1836, 238, 136, 238, 136, 340, 1836, 340, 1836, 442, 136, 442, 136, 544, 1836, 544
        };
    }

    static double[] with(double[] corners, double... more) {
        double[] all = java.util.Arrays.copyOf(corners, corners.length + more.length);
        System.arraycopy(more, 0, all, corners.length, more.length);
        return all;
    }

    static LineString line(double... millimetres) {
        return rounded(0, 0, millimetres);
    }

    static StudLattice lattice(double originX, double originY, double degrees) {
        Membrane membrane = new Membrane(
                Amounts.millimetres(PITCH), Amounts.millimetres(22), Amounts.millimetres(9), Optional.empty());
        return StudLattice.of(membrane, point(originX, originY), Units.MILLIMETRE, Amounts.degrees(degrees));
    }

    static Point point(double x, double y) {
        return FACTORY.createPoint(new Coordinate(x, y));
    }

    static List<KeepOut> keepOuts() {
        return List.of(
                polygon("cabinet", 60, "POLYGON ((500 800, 1000 800, 1000 1100, 500 1100, 500 800))"),
                KeepOut.round(
                        "drain",
                        KeepOutKind.DRAIN,
                        point(1500, 900),
                        Units.MILLIMETRE,
                        Amounts.millimetres(110),
                        TradeLength.studs(3)),
                joint("LINESTRING (0 720, 2000 720)"));
    }

    static KeepOut polygon(String name, double clearance, String wkt) {
        return KeepOut.of(
                name,
                KeepOutKind.FIXED_FURNITURE,
                read(wkt),
                Units.MILLIMETRE,
                TradeLength.of(Amounts.millimetres(clearance)));
    }

    static KeepOut joint(String wkt) {
        return KeepOut.of(
                "movement joint",
                KeepOutKind.MOVEMENT_JOINT,
                read(wkt),
                Units.MILLIMETRE,
                TradeLength.of(Amounts.millimetres(40)));
    }

    static org.locationtech.jts.geom.Geometry read(String wkt) {
        try {
            return new org.locationtech.jts.io.WKTReader().read(wkt);
        } catch (org.locationtech.jts.io.ParseException e) {
            throw new IllegalArgumentException(e);
        }
    }

    static RouteCheck.Builder check() {
        return RouteCheck.builder(Room.ofWkt(ROOM, Units.MILLIMETRE), lattice(17, 17, 0))
                .wallClearance(Amounts.millimetres(60))
                .keepOuts(keepOuts())
                .minSpacing(Amounts.millimetres(102))
                .minBendRadius(Amounts.millimetres(20))
                .start(point(0, 136), Units.MILLIMETRE);
    }

    /** A cable whose length leaves 10 mm over, with the lead straight from the start to the first corner. */
    static LaidCable cable(double radius, double... corners) {
        return cable("K", trueLength(radius, corners) + 0.010, rounded(radius, 7, corners), line(0, 136, 136, 136));
    }

    static LaidCable cable(String name, double metres, LineString heating, LineString... leads) {
        return new LaidCable(
                name,
                heating,
                List.of(leads),
                Amounts.metres(metres),
                Amounts.millimetres(5),
                leads.length == 2 ? 1 : 2,
                Amounts.metres(3));
    }
}
