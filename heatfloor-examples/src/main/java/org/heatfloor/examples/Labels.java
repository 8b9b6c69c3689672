package org.heatfloor.examples;

import java.awt.Color;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.linearref.LengthIndexedLine;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Names on the drawing: inside their shape and clear of every cable where that can be, else as a number that the legend
 * explains.
 */
final class Labels {

    private static final double HEIGHT = Pen.TEXT;
    private static final double SEARCH_STEP = 0.5;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Pen pen;
    private final Paper paper;
    private final PlanSheet sheet;
    private final PreparedGeometry lines;
    private final List<String> numbered = new ArrayList<>();

    Labels(Pen pen, Paper paper, PlanSheet sheet) {
        this.pen = pen;
        this.paper = paper;
        this.sheet = sheet;
        this.lines = PreparedGeometryFactory.prepare(lines(sheet));
    }

    private static Geometry lines(PlanSheet sheet) {
        List<LineString> lines = new ArrayList<>();
        for (PlanSheet.Run run : sheet.cables()) {
            lines.add(run.heating());
            lines.addAll(run.coldLeads());
            run.sensor().ifPresent(s -> lines.add(s.lead()));
            run.spare().ifPresent(s -> lines.add(s.lead()));
        }
        return FACTORY.createMultiLineString(lines.toArray(LineString[]::new));
    }

    /** The names told by number, in order. */
    List<String> numbered() {
        return List.copyOf(numbered);
    }

    void name(String name, Geometry shape, Color ground) {
        Geometry seen = OverlayNGRobust.overlay(shape, sheet.room(), OverlayNG.INTERSECTION);
        if (seen.isEmpty()) {
            seen = shape;
        }
        if (seen.getDimension() == 2) {
            Optional<Coordinate> whole = place(name, seen);
            if (whole.isPresent()) {
                pen.label(name, pen.at(whole.get()), HEIGHT, Pen.INK, ground);
                return;
            }
        }
        numbered.add(name);
        String number = String.valueOf(numbered.size());
        Coordinate at = seen.getDimension() == 2
                ? place(number, seen).orElse(seen.getInteriorPoint().getCoordinate())
                : middle(seen);
        pen.label(number, pen.at(at), HEIGHT, Pen.INK, ground);
    }

    private static Coordinate middle(Geometry line) {
        if (line.getDimension() == 0) {
            return line.getCoordinate();
        }
        LengthIndexedLine measured = new LengthIndexedLine(line);
        return measured.extractPoint(measured.getEndIndex() / 2);
    }

    /** The place nearest the middle where the text lies inside the shape and on no cable. */
    private Optional<Coordinate> place(String text, Geometry shape) {
        double wide = metres(Pen.width(text, HEIGHT) + 0.6) / 2;
        double high = metres(HEIGHT * 1.2) / 2;
        double step = metres(SEARCH_STEP);
        Envelope box = shape.getEnvelopeInternal();
        Coordinate middle = shape.getCentroid().getCoordinate();
        List<Coordinate> places = new ArrayList<>(List.of(middle));
        for (double y = box.getMinY() + high; y <= box.getMaxY() - high; y += step) {
            for (double x = box.getMinX() + wide; x <= box.getMaxX() - wide; x += 2 * step) {
                places.add(new Coordinate(x, y));
            }
        }
        places.sort(Comparator.comparingDouble(middle::distance));
        PreparedGeometry inside = PreparedGeometryFactory.prepare(shape);
        return places.stream()
                .filter(c -> {
                    Envelope around = new Envelope(c.x - wide, c.x + wide, c.y - high, c.y + high);
                    Geometry ground = FACTORY.toGeometry(around);
                    return inside.covers(ground) && !lines.intersects(ground);
                })
                .findFirst();
    }

    private double metres(double onPaper) {
        return onPaper * paper.scale() / 1_000;
    }
}
