package org.heatfloor.examples;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.MultiLineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Draws the floor with its cable to scale, onto any {@link Graphics2D}. */
final class PlanDrawing {

    private static final double WALL = 4;
    private static final double HATCH = 1.6;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final PlanSheet sheet;
    private final Paper paper;
    private final Pen pen;
    private final Geometry walls;
    private final List<String> numbered = new ArrayList<>();
    private final Optional<LineString> lifted;

    private PlanDrawing(PlanSheet sheet, Optional<LineString> lifted, Paper paper, Graphics2D graphics) {
        this.sheet = sheet;
        this.lifted = lifted;
        this.paper = paper;
        this.pen = new Pen(graphics, placed(sheet.room().getEnvelopeInternal(), paper));
        this.walls = walls();
    }

    /** The drawing as Scalable Vector Graphics. */
    static String svg(PlanSheet sheet) {
        return svg(sheet, Optional.empty());
    }

    /** The same with cable that is to be lifted. */
    static String svg(PlanSheet sheet, Optional<LineString> lifted) {
        Paper paper = Paper.fitting(sheet.room().getEnvelopeInternal());
        return SvgText.of(
                paper.width(), paper.height(), sheet.title(), g -> new PlanDrawing(sheet, lifted, paper, g).draw());
    }

    private static AffineTransform placed(Envelope room, Paper paper) {
        double free = paper.fieldWidth() - Paper.LEFT - Paper.RIGHT - paper.onPaper(room.getWidth());
        double spare = paper.fieldHeight() - Paper.ABOVE - Paper.BELOW - paper.onPaper(room.getHeight());
        double scale = paper.onPaper(1);
        double x = Paper.EDGE + Paper.LEFT + Math.max(0, free / 2);
        double y = Paper.EDGE + Paper.ABOVE + Math.max(0, spare / 2) + paper.onPaper(room.getHeight());
        AffineTransform place = AffineTransform.getTranslateInstance(x, y);
        place.scale(scale, -scale);
        place.translate(-room.getMinX(), -room.getMinY());
        return place;
    }

    private void draw() {
        pen.filledBox(0, 0, paper.width(), paper.height(), Color.WHITE);
        studs();
        sheet.fixtures().forEach(f -> pen.fill(f.shape(), Pen.TINT));
        hatch(walls, Pen.GREY);
        limits();
        sheet.fixtures().forEach(f -> pen.draw(f.shape(), LineKind.WIDE, Pen.GREY));
        pen.draw(sheet.room(), LineKind.WIDE, Pen.INK);
        sheet.doors().forEach(this::door);
        lifted.ifPresent(line -> pen.draw(line, LineKind.LIFTED, Pen.GREY));
        for (int i = 0; i < sheet.cables().size(); i++) {
            cable(sheet.cables().get(i), colour(i));
        }
        start();
        labels();
        new Dimensions(pen, sheet).draw();
        ScaleBar.draw(pen, sheet.unit(), paper, pen.at(lowerLeft()).getX());
        new Legend(pen, paper, sheet, lifted.isPresent(), numbered).draw();
    }

    /** Cables are told apart by ink and accent, and by name in the legend. */
    static Color colour(int cable) {
        return cable % 2 == 0 ? Pen.ACCENT : Pen.INK;
    }

    private Coordinate lowerLeft() {
        Envelope box = sheet.room().getEnvelopeInternal();
        return new Coordinate(box.getMinX(), box.getMinY());
    }

    private double metres(double onPaper) {
        return onPaper * paper.scale() / 1_000;
    }

    private void studs() {
        if (sheet.lattice().isEmpty()) {
            return;
        }
        StudLattice lattice = sheet.lattice().get();
        double pitch = lattice.pitch().to(Units.METRE).getValue().doubleValue();
        double diameter = lattice.studDiameter().to(Units.METRE).getValue().doubleValue();
        double turn = lattice.angle().to(Units.RADIAN).getValue().doubleValue();
        Coordinate origin = lattice.origin().getCoordinate();
        Envelope box = sheet.room().getEnvelopeInternal();
        double reach =
                Math.hypot(box.getWidth(), box.getHeight()) + box.centre().distance(origin);
        int most = (int) Math.ceil(reach / pitch);
        IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(sheet.room());
        List<Coordinate> studs = new ArrayList<>();
        for (int row = -most; row <= most; row++) {
            for (int column = -most; column <= most; column++) {
                double x = origin.x + pitch * (column * Math.cos(turn) - row * Math.sin(turn));
                double y = origin.y + pitch * (column * Math.sin(turn) + row * Math.cos(turn));
                Coordinate stud = new Coordinate(x, y);
                if (box.contains(stud) && inside.locate(stud) == Location.INTERIOR) {
                    studs.add(stud);
                }
            }
        }
        pen.dots(studs, paper.onPaper(diameter), Pen.PALE);
    }

    private Geometry walls() {
        BufferParameters square = new BufferParameters();
        square.setJoinStyle(BufferParameters.JOIN_MITRE);
        Polygon hull = FACTORY.createPolygon(sheet.room().getExteriorRing().getCoordinates());
        Geometry band = difference(BufferOp.bufferOp(hull, metres(WALL), square), sheet.room());
        for (PlanSheet.Opening door : sheet.doors()) {
            band = difference(band, inWall(door.at()));
        }
        return band;
    }

    private static Geometry difference(Geometry from, Geometry taken) {
        return OverlayNGRobust.overlay(from, taken, OverlayNG.DIFFERENCE);
    }

    /** The part of the wall band that an opening takes. */
    private Geometry inWall(LineString at) {
        BufferParameters flat = new BufferParameters();
        flat.setEndCapStyle(BufferParameters.CAP_FLAT);
        return BufferOp.bufferOp(at, metres(WALL * 1.05), flat);
    }

    private void hatch(Geometry area, Color colour) {
        Envelope box = area.getEnvelopeInternal();
        double step = metres(HATCH) * Math.sqrt(2);
        double length = box.getHeight();
        List<LineString> lines = new ArrayList<>();
        for (double x = box.getMinX() - length; x < box.getMaxX(); x += step) {
            lines.add(FACTORY.createLineString(
                    new Coordinate[] {new Coordinate(x, box.getMinY()), new Coordinate(x + length, box.getMaxY())}));
        }
        MultiLineString all = FACTORY.createMultiLineString(lines.toArray(LineString[]::new));
        pen.draw(OverlayNGRobust.overlay(area, all, OverlayNG.INTERSECTION), LineKind.NARROW, colour);
        pen.draw(difference(area.getBoundary(), sheet.room().buffer(metres(0.05))), LineKind.NARROW, colour);
    }

    private void limits() {
        Geometry inside = sheet.room();
        sheet.wallClearance().ifPresent(line -> pen.draw(line, LineKind.DASH_DOT, Pen.GREY));
        for (PlanSheet.Fixture fixture : sheet.fixtures()) {
            Geometry edge =
                    OverlayNGRobust.overlay(fixture.withClearance().getBoundary(), inside, OverlayNG.INTERSECTION);
            pen.draw(edge, LineKind.DASH_DOT, Pen.GREY);
        }
        sheet.zones().forEach(z -> pen.draw(z.shape(), LineKind.DASH_DOUBLE_DOT, Pen.GREY));
    }

    private void door(PlanSheet.Opening door) {
        Point2D from = pen.at(door.at().getStartPoint().getCoordinate());
        Point2D to = pen.at(door.at().getEndPoint().getCoordinate());
        double length = from.distance(to);
        Geometry opening = difference(inWall(door.at()), sheet.room());
        pen.draw(opening.getBoundary(), LineKind.NARROW, Pen.INK);
        Point2D middle = pen.at(opening.getCentroid().getCoordinate());
        if (Pen.width(door.name(), Pen.SMALL) <= length) {
            boolean upright = Math.abs(from.getY() - to.getY()) > Math.abs(from.getX() - to.getX());
            if (upright) {
                pen.uprightText(door.name(), middle.getX() + 0.7, middle.getY(), Pen.SMALL, Pen.INK);
            } else {
                pen.text(door.name(), middle.getX(), middle.getY() + 0.7, Pen.SMALL, Pen.Anchor.MIDDLE, Pen.INK);
            }
        }
    }

    private void cable(PlanSheet.Run run, Color colour) {
        for (LineString lead : run.coldLeads()) {
            pen.draw(lead, LineKind.CASING, Color.WHITE);
            pen.draw(lead, LineKind.DASHED, Pen.INK);
        }
        run.sensor().ifPresent(s -> pen.draw(s.lead(), LineKind.DOTTED, Pen.INK));
        run.spare().ifPresent(s -> pen.draw(s.lead(), LineKind.DOTTED, Pen.INK));
        pen.draw(run.heating(), LineKind.WIDE, colour);
        for (Point joint : run.joints()) {
            joint(pen.at(joint.getCoordinate()), colour);
        }
        if (run.endsInFloor()) {
            end(pen.at(run.heating().getEndPoint().getCoordinate()), colour);
        }
        run.sensor().ifPresent(s -> sensor(pen.at(s.at().getCoordinate()), Pen.INK));
        run.spare().ifPresent(s -> sensor(pen.at(s.at().getCoordinate()), Color.WHITE));
    }

    private void joint(Point2D at, Color colour) {
        Legend.joint(pen, at, colour);
    }

    private void end(Point2D at, Color colour) {
        Legend.end(pen, at, colour);
    }

    private void sensor(Point2D at, Color fill) {
        pen.circle(at, Legend.SENSOR, fill, Pen.INK);
    }

    private void start() {
        Coordinate wall = sheet.start().getCoordinate();
        Point2D tip = pen.at(wall);
        double best = Double.NEGATIVE_INFINITY;
        double direction = 0;
        IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(sheet.room());
        for (int i = 0; i < 8; i++) {
            double angle = i * Math.PI / 4;
            double step = metres(WALL);
            Coordinate ahead = new Coordinate(wall.x + step * Math.cos(angle), wall.y + step * Math.sin(angle));
            double score = inside.locate(ahead) == Location.INTERIOR
                    ? sheet.room().getBoundary().distance(FACTORY.createPoint(ahead))
                    : Double.NEGATIVE_INFINITY;
            if (score > best + 1e-9) {
                best = score;
                direction = -angle;
            }
        }
        pen.triangle(tip, direction, WALL, Pen.INK);
    }

    private void labels() {
        Labels labels = new Labels(pen, paper, sheet);
        sheet.fixtures().forEach(f -> labels.name(f.name(), f.shape(), Pen.TINT));
        sheet.zones().forEach(z -> labels.name(z.name(), z.shape(), Color.WHITE));
        numbered.addAll(labels.numbered());
        for (int i = 0; sheet.cables().size() > 1 && i < sheet.cables().size(); i++) {
            PlanSheet.Run run = sheet.cables().get(i);
            pen.label(run.name(), pen.at(middleOfLongest(run.heating())), Pen.TEXT, colour(i), Color.WHITE);
        }
    }

    /** The middle of a line's longest straight piece, where a name hides least. */
    private static Coordinate middleOfLongest(LineString line) {
        Coordinate[] c = line.getCoordinates();
        int longest = 1;
        for (int i = 2; i < c.length; i++) {
            if (c[i].distance(c[i - 1]) > c[longest].distance(c[longest - 1]) + 1e-6) {
                longest = i;
            }
        }
        return LineSegment.midPoint(c[longest - 1], c[longest]);
    }
}
