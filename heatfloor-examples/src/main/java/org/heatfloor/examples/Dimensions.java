package org.heatfloor.examples;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.heatfloor.quantity.QuantityText;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/** The room's dimensions: a chain of its corners below and left of it, the overall length farther out. */
final class Dimensions {

    private static final double GAP = 5.5;
    private static final double CHAIN = 9;
    private static final double OVERALL = 15;
    private static final double TICK = 0.9;
    private static final double SAME_METRES = 0.002;

    private final Pen pen;
    private final LengthUnit unit;
    private final Polygon room;

    Dimensions(Pen pen, PlanSheet sheet) {
        this(pen, sheet.unit(), sheet.room());
    }

    Dimensions(Pen pen, LengthUnit unit, Polygon room) {
        this.pen = pen;
        this.unit = unit;
        this.room = room;
    }

    void draw() {
        Envelope box = room.getEnvelopeInternal();
        Point2D corner = pen.at(new Coordinate(box.getMinX(), box.getMinY()));
        List<Double> across = stops(c -> c.x);
        List<Double> up = stops(c -> c.y);
        draw(across, up, corner.getY() + CHAIN, corner.getX() - CHAIN);
    }

    /** Chains given beside the room, and the room's overall lengths farther out. */
    void draw(List<Double> across, List<Double> up) {
        Envelope box = room.getEnvelopeInternal();
        Point2D corner = pen.at(new Coordinate(box.getMinX(), box.getMinY()));
        draw(across, up, corner.getY() + CHAIN, corner.getX() - CHAIN);
    }

    private void draw(List<Double> across, List<Double> up, double below, double left) {
        horizontal(across, below, below - CHAIN + GAP);
        vertical(up, left, left + CHAIN - GAP);
        if (across.size() > 2) {
            List<Double> ends = List.of(across.get(0), across.get(across.size() - 1));
            horizontal(ends, below - CHAIN + OVERALL, below);
        }
        if (up.size() > 2) {
            List<Double> ends = List.of(up.get(0), up.get(up.size() - 1));
            vertical(ends, left + CHAIN - OVERALL, left);
        }
    }

    /** The corners' places along one axis, those next to each other taken once. */
    private List<Double> stops(ToDoubleFunction<Coordinate> axis) {
        TreeSet<Double> all = new TreeSet<>();
        for (Coordinate c : room.getCoordinates()) {
            all.add(axis.applyAsDouble(c));
        }
        List<Double> stops = new ArrayList<>();
        for (double stop : all) {
            if (stops.isEmpty() || stop - stops.get(stops.size() - 1) > SAME_METRES) {
                stops.add(stop);
            }
        }
        return stops;
    }

    private void horizontal(List<Double> stops, double y, double from) {
        for (int i = 0; i < stops.size(); i++) {
            double x = pen.at(new Coordinate(stops.get(i), 0)).getX();
            pen.line(x, from, x, y + 1, LineKind.NARROW, Pen.INK);
            pen.line(x - TICK, y + TICK, x + TICK, y - TICK, LineKind.NARROW, Pen.INK);
            if (i > 0) {
                double before = pen.at(new Coordinate(stops.get(i - 1), 0)).getX();
                pen.line(before, y, x, y, LineKind.NARROW, Pen.INK);
                text(stops, i, before, x)
                        .ifPresent(t -> pen.text(t, (before + x) / 2, y - 0.8, Pen.TEXT, Pen.Anchor.MIDDLE, Pen.INK));
            }
        }
    }

    private void vertical(List<Double> stops, double x, double from) {
        for (int i = 0; i < stops.size(); i++) {
            double y = pen.at(new Coordinate(0, stops.get(i))).getY();
            pen.line(from, y, x - 1, y, LineKind.NARROW, Pen.INK);
            pen.line(x - TICK, y + TICK, x + TICK, y - TICK, LineKind.NARROW, Pen.INK);
            if (i > 0) {
                double before = pen.at(new Coordinate(0, stops.get(i - 1))).getY();
                pen.line(x, before, x, y, LineKind.NARROW, Pen.INK);
                text(stops, i, y, before)
                        .ifPresent(t -> pen.uprightText(t, x - 0.8, (before + y) / 2, Pen.TEXT, Pen.INK));
            }
        }
    }

    private Optional<String> text(List<Double> stops, int i, double from, double to) {
        String text = part(stops, i, unit);
        return Pen.width(text, Pen.TEXT) <= to - from + 1 ? Optional.of(text) : Optional.empty();
    }

    /** Millimetres are rounded along the chain, so that its parts add up to the whole. */
    static String part(List<Double> stops, int i, LengthUnit unit) {
        double first = stops.get(0);
        return unit == LengthUnit.MILLIMETRE
                ? String.valueOf(
                        Math.round((stops.get(i) - first) * 1_000) - Math.round((stops.get(i - 1) - first) * 1_000))
                : length(stops.get(i) - stops.get(i - 1), unit);
    }

    /** A length as it stands on a drawing in the user's unit; feet and inches to the sixteenth. */
    static String length(double metres, LengthUnit unit) {
        return switch (unit) {
            case MILLIMETRE -> QuantityText.number(metres * 1_000, 0);
            case CENTIMETRE -> QuantityText.number(metres * 100, 1);
            case METRE -> QuantityText.number(metres, 3);
            case INCH, FOOT -> feetAndInches(metres);
        };
    }

    private static String feetAndInches(double metres) {
        long sixteenths = Math.round(metres / 0.0254 * 16);
        long feet = sixteenths / (12 * 16);
        long rest = sixteenths % (12 * 16);
        long inches = rest / 16;
        long part = rest % 16;
        long below = 16;
        while (part > 0 && part % 2 == 0) {
            part /= 2;
            below /= 2;
        }
        String fraction = part == 0 ? "" : part + "/" + below;
        String both = inches > 0 && part > 0 ? inches + " " + fraction : part > 0 ? fraction : "" + inches;
        String whole = both + " in";
        return feet == 0 ? whole : feet + " ft" + (rest == 0 ? "" : " " + whole);
    }
}
