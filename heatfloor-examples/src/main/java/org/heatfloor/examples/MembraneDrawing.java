package org.heatfloor.examples;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.MembraneCut;
import org.heatfloor.takeoff.MembranePiece;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;

/** The membrane's pieces in the room, each sheet or roll with the cuts on it, and the cut list. */
final class MembraneDrawing {

    private static final double GAP = 7;
    private static final double LIST_SHARE = 0.55;
    private static final double SAME_METRES = 0.0005;
    private static final double LEAST_TRIM_METRES = 0.0005;
    private static final double ARROW = 2;
    private static final double ARROW_FROM_NUMBER = 4;

    private final Pen pen;
    private final RoomFile file;
    private final MembraneCut cut;
    private final LengthUnit unit;

    MembraneDrawing(Pen pen, RoomFile file, MembraneCut cut) {
        this.pen = pen;
        this.file = file;
        this.cut = cut;
        this.unit = file.coordinateUnit().isImperial() ? file.coordinateUnit() : LengthUnit.MILLIMETRE;
    }

    void draw() {
        for (MembranePiece piece : cut.pieces()) {
            pen.fill(piece.inRoom(), piece.number() % 2 == 0 ? Pen.PALE : Pen.TINT);
        }
        cut.joints().forEach(joint -> pen.draw(joint, LineKind.WIDE, Pen.INK));
        for (MembranePiece piece : cut.pieces()) {
            Coordinate at = piece.inRoom().getInteriorPoint().getCoordinate();
            pen.label(String.valueOf(piece.number()), pen.at(at), Pen.TITLE * 0.8, Pen.INK, Pen.TINT);
            arrow(pen.at(at), -piece.direction().to(Units.RADIAN).getValue().doubleValue(), ARROW_FROM_NUMBER);
        }
        dimensions();
        double below = CutSheet.legend(pen, stock(), legend());
        CutSheet.list(pen, below, list());
    }

    /** Walls and joints; where a joint lies slantwise, along the walls to where joints meet them. */
    private void dimensions() {
        Envelope room = file.room().polygon().getEnvelopeInternal();
        TreeSet<Double> across = new TreeSet<>(List.of(room.getMinX(), room.getMaxX()));
        TreeSet<Double> up = new TreeSet<>(List.of(room.getMinY(), room.getMaxY()));
        for (LineString joint : cut.joints()) {
            Envelope e = joint.getEnvelopeInternal();
            if (e.getWidth() < SAME_METRES) {
                across.add(e.getMinX());
            } else if (e.getHeight() < SAME_METRES) {
                up.add(e.getMinY());
            } else {
                List<Coordinate> met = cut.joints().stream()
                        .flatMap(j -> Arrays.stream(j.getCoordinates()))
                        .toList();
                new WallChains(pen, unit, file.room().polygon()).draw(met);
                return;
            }
        }
        new Dimensions(pen, unit, file.room().polygon()).draw(apart(across), apart(up));
    }

    private static List<Double> apart(TreeSet<Double> stops) {
        List<Double> kept = new ArrayList<>();
        for (double stop : stops) {
            if (kept.isEmpty() || stop - kept.get(kept.size() - 1) > SAME_METRES) {
                kept.add(stop);
            }
        }
        return kept;
    }

    private List<CutSheet.Entry> legend() {
        List<CutSheet.Entry> entries = new ArrayList<>();
        entries.add(CutSheet.line(LineKind.WIDE, Pen.INK, "joint, butted, midway between two rows of studs"));
        entries.add(CutSheet.field(
                Pen.PALE,
                "piece, in the room and on its " + cut.stock().kind().name().toLowerCase(Locale.ROOT)
                        + " with the line it is trimmed to"));
        entries.add(CutSheet.field(java.awt.Color.WHITE, "left over"));
        entries.add(new CutSheet.Entry(
                (p, at) -> p.triangle(new Point2D.Double(at.getX() + 1, at.getY()), 0, ARROW, Pen.GREY),
                "along the stock, from its left end"));
        entries.addAll(CutSheet.common(file));
        return entries;
    }

    /** Draws every sheet or roll as large as the column allows; returns where the list may begin. */
    private double stock() {
        Envelope one = extent();
        int count = cut.stockCount();
        double high = (CutSheet.BOTTOM - CutSheet.TOP) * (1 - LIST_SHARE);
        int across = 1;
        double scale = scale(one, count, across, high);
        while (scale(one, count, across + 1, high) > scale) {
            across++;
            scale = scale(one, count, across, high);
        }
        double cell = CutSheet.COLUMN_WIDTH / across;
        double step = one.getHeight() * scale + GAP;
        for (int i = 0; i < count; i++) {
            double x = CutSheet.COLUMN + (i % across) * cell;
            double y = CutSheet.TOP + (i / across) * step + 4;
            String name = cut.stock().kind().name().toLowerCase(Locale.ROOT) + " " + (i + 1);
            pen.text(name, x, y - 1, Pen.TEXT, Pen.Anchor.START, Pen.INK);
            pen.box(x, y, one.getWidth() * scale, one.getHeight() * scale, LineKind.WIDE, Pen.INK);
            for (MembranePiece piece : cut.pieces()) {
                if (piece.stockNumber() == i + 1) {
                    cutOut(piece, x, y + one.getHeight() * scale, scale);
                }
            }
        }
        return CutSheet.TOP + ((count + across - 1) / across) * step + 6;
    }

    private static double scale(Envelope one, int count, int across, double high) {
        int rows = (count + across - 1) / across;
        double byWidth = (CutSheet.COLUMN_WIDTH / across - 4) / one.getWidth();
        double byHeight = (high / rows - GAP) / one.getHeight();
        return Math.min(byWidth, byHeight);
    }

    /** The stock as its cuts lie on it: sheets may be cut along either side. */
    private Envelope extent() {
        double length = metres(cut.stock().length());
        double width = metres(cut.stock().width());
        boolean isTurned = cut.pieces().stream()
                .map(p -> p.cutRectangle().getEnvelopeInternal())
                .anyMatch(e -> e.getMaxX() > length + 1e-6 || e.getMaxY() > width + 1e-6);
        return isTurned ? new Envelope(0, width, 0, length) : new Envelope(0, length, 0, width);
    }

    /** A piece on its stock, seen from above as it lies: a mirrored piece would not fit. */
    private void cutOut(MembranePiece piece, double x, double foot, double scale) {
        Envelope box = piece.cutRectangle().getEnvelopeInternal();
        pen.filledBox(
                x + box.getMinX() * scale,
                foot - box.getMaxY() * scale,
                box.getWidth() * scale,
                box.getHeight() * scale,
                Pen.PALE);
        Coordinate[] ring = piece.onStock().getExteriorRing().getCoordinates();
        for (int i = 1; i < ring.length; i++) {
            pen.line(
                    x + ring[i - 1].x * scale,
                    foot - ring[i - 1].y * scale,
                    x + ring[i].x * scale,
                    foot - ring[i].y * scale,
                    LineKind.NARROW,
                    Pen.INK);
        }
        Point2D middle = new Point2D.Double(x + box.centre().x * scale, foot - box.centre().y * scale);
        if (box.getWidth() * scale > 3 * ARROW_FROM_NUMBER) {
            arrow(middle, 0, ARROW_FROM_NUMBER / 2);
        }
        double height = Math.min(Pen.TEXT * 1.2, Math.max(1.2, box.getHeight() * scale * 0.8));
        pen.text(
                String.valueOf(piece.number()),
                middle.getX(),
                middle.getY() + height * 0.36,
                height,
                Pen.Anchor.MIDDLE,
                Pen.INK);
    }

    /** Points along the sheet or roll, so that a piece is not laid a quarter turn wrong. */
    private void arrow(Point2D from, double direction, double away) {
        double far = away + ARROW;
        Point2D tip =
                new Point2D.Double(from.getX() + far * Math.cos(direction), from.getY() + far * Math.sin(direction));
        pen.triangle(tip, direction, ARROW, Pen.GREY);
    }

    private List<String> list() {
        List<String> lines = new ArrayList<>();
        lines.add(cut.pieces().size() + " pieces from " + cut.stockCount() + " "
                + cut.stock().kind().name().toLowerCase(Locale.ROOT) + (cut.stockCount() == 1 ? "" : "s")
                + "; " + cut.proof());
        lines.add("Studs up and in phase: cut to whole pitches, then trim to the wall.");
        lines.add("Places from the left end and the lower edge" + (unit.isImperial() ? "." : ", in mm."));
        for (MembranePiece piece : cut.pieces()) {
            Envelope box = piece.cutRectangle().getEnvelopeInternal();
            lines.add(piece.number() + ": from " + piece.stockNumber() + " at "
                    + Dimensions.length(box.getMinX(), unit) + ", " + Dimensions.length(box.getMinY(), unit) + ": "
                    + Dimensions.length(box.getWidth(), unit) + " × " + Dimensions.length(box.getHeight(), unit)
                    + trimmed(piece, box, unit));
        }
        return lines;
    }

    /** What comes off before the piece's corner lies in the wall's corner: without it the studs are out of phase. */
    private static String trimmed(MembranePiece piece, Envelope box, LengthUnit unit) {
        Envelope laid = piece.onStock().getEnvelopeInternal();
        double left = laid.getMinX() - box.getMinX();
        double lower = laid.getMinY() - box.getMinY();
        return (left > LEAST_TRIM_METRES ? "; off its left end " + Dimensions.length(left, unit) : "")
                + (lower > LEAST_TRIM_METRES ? "; off its lower edge " + Dimensions.length(lower, unit) : "");
    }

    private static double metres(Quantity<Length> length) {
        return length.to(Units.METRE).getValue().doubleValue();
    }
}
