package org.heatfloor.examples;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.GeneralPath;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import org.locationtech.jts.awt.ShapeWriter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * Draws on a sheet: geometry in metres by the room's place and scale, everything else in millimetres from the sheet's
 * upper left corner. No font is measured, so the drawing is the same on every machine.
 */
final class Pen {

    static final Color INK = new Color(0x1A1A1A);
    static final Color GREY = new Color(0x6E6E6E);
    static final Color PALE = new Color(0xE3E3E3);
    static final Color TINT = new Color(0xF1F1F1);
    static final Color ACCENT = new Color(0xB3261E);
    static final double TEXT = 2.5;
    static final double SMALL = 2.1;
    static final double TITLE = 5;

    /** Mean width of a character of a common sans serif face, as a share of its height. */
    private static final double CHARACTER = 0.53;

    /** Where a text's given point lies on it. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    private final Graphics2D graphics;
    private final AffineTransform place;
    private final ShapeWriter writer;

    Pen(Graphics2D graphics, AffineTransform metresToPaper) {
        this.graphics = graphics;
        this.place = AffineTransform.getScaleInstance(LineKind.UNITS, LineKind.UNITS);
        place.concatenate(metresToPaper);
        this.writer = new ShapeWriter((from, to) -> place.transform(new Point2D.Double(from.x, from.y), to));
    }

    /** A place in the room, in millimetres on paper. */
    Point2D at(Coordinate metres) {
        Point2D point = place.transform(new Point2D.Double(metres.x, metres.y), null);
        return new Point2D.Double(point.getX() / LineKind.UNITS, point.getY() / LineKind.UNITS);
    }

    void draw(Geometry metres, LineKind kind, Color colour) {
        if (!metres.isEmpty()) {
            use(kind, colour);
            graphics.draw(new GeneralPath(writer.toShape(metres)));
        }
    }

    void fill(Geometry metres, Color colour) {
        if (!metres.isEmpty()) {
            graphics.setColor(colour);
            graphics.fill(new GeneralPath(writer.toShape(metres)));
        }
    }

    /** Dots of one diameter in millimetres: strokes of no length with round ends, which keeps the file small. */
    void dots(Iterable<Coordinate> metres, double diameter, Color colour) {
        GeneralPath path = new GeneralPath();
        for (Coordinate c : metres) {
            Point2D p = place.transform(new Point2D.Double(c.x, c.y), null);
            path.moveTo(p.getX(), p.getY());
            path.lineTo(p.getX(), p.getY());
        }
        graphics.setColor(colour);
        graphics.setStroke(
                new BasicStroke((float) (diameter * LineKind.UNITS), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        graphics.draw(path);
    }

    void line(double x1, double y1, double x2, double y2, LineKind kind, Color colour) {
        use(kind, colour);
        graphics.draw(new Line2D.Double(units(x1), units(y1), units(x2), units(y2)));
    }

    void box(double x, double y, double width, double height, LineKind kind, Color colour) {
        use(kind, colour);
        graphics.draw(new Rectangle2D.Double(units(x), units(y), units(width), units(height)));
    }

    void filledBox(double x, double y, double width, double height, Color colour) {
        graphics.setColor(colour);
        graphics.fill(new Rectangle2D.Double(units(x), units(y), units(width), units(height)));
    }

    void circle(Point2D centre, double diameter, Color fill, Color edge) {
        Ellipse2D circle = new Ellipse2D.Double(
                units(centre.getX() - diameter / 2),
                units(centre.getY() - diameter / 2),
                units(diameter),
                units(diameter));
        graphics.setColor(fill);
        graphics.fill(circle);
        use(LineKind.NARROW, edge);
        graphics.draw(circle);
    }

    /** A white diamond with an edge of the colour. */
    void diamond(Point2D centre, double size, Color edge) {
        GeneralPath path = new GeneralPath();
        path.moveTo(units(centre.getX() - size / 2), units(centre.getY()));
        path.lineTo(units(centre.getX()), units(centre.getY() - size / 2));
        path.lineTo(units(centre.getX() + size / 2), units(centre.getY()));
        path.lineTo(units(centre.getX()), units(centre.getY() + size / 2));
        path.closePath();
        graphics.setColor(Color.WHITE);
        graphics.fill(path);
        use(LineKind.WIDE, edge);
        graphics.draw(path);
    }

    void triangle(Point2D tip, double direction, double size, Color colour) {
        GeneralPath path = new GeneralPath();
        path.moveTo(units(tip.getX()), units(tip.getY()));
        for (double side : new double[] {-0.4, 0.4}) {
            double angle = direction + Math.PI + side;
            path.lineTo(units(tip.getX() + size * Math.cos(angle)), units(tip.getY() + size * Math.sin(angle)));
        }
        path.closePath();
        graphics.setColor(colour);
        graphics.fill(path);
    }

    void text(String text, double x, double y, double height, Anchor anchor, Color colour) {
        double shift = anchor == Anchor.START ? 0 : width(text, height) / (anchor == Anchor.END ? 1 : 2);
        font(height, colour);
        graphics.drawString(text, (float) units(x - shift), (float) units(y));
    }

    /** Text read from the right, as dimensions of upright lines are. */
    void uprightText(String text, double x, double y, double height, Color colour) {
        turnedText(text, x, y, -Math.PI / 2, height, colour);
    }

    /** Text centred on a place and turned about it, clockwise on paper. */
    void turnedText(String text, double x, double y, double radians, double height, Color colour) {
        AffineTransform before = graphics.getTransform();
        graphics.rotate(radians, units(x), units(y));
        text(text, x, y, height, Anchor.MIDDLE, colour);
        graphics.setTransform(before);
    }

    /** Text on its own ground, centred on the point. */
    void label(String text, Point2D centre, double height, Color colour, Color ground) {
        double width = width(text, height) + 1;
        filledBox(centre.getX() - width / 2, centre.getY() - height * 0.58, width, height * 1.16, ground);
        text(text, centre.getX(), centre.getY() + height * 0.36, height, Anchor.MIDDLE, colour);
    }

    static double width(String text, double height) {
        return text.codePointCount(0, text.length()) * height * CHARACTER;
    }

    private void use(LineKind kind, Color colour) {
        graphics.setColor(colour);
        graphics.setStroke(kind.stroke());
    }

    private void font(double height, Color colour) {
        graphics.setColor(colour);
        graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, (int) Math.round(height * LineKind.UNITS)));
    }

    private static double units(double millimetres) {
        return millimetres * LineKind.UNITS;
    }
}
