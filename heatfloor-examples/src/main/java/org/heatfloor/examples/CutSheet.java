package org.heatfloor.examples;

import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.heatfloor.area.Door;
import org.heatfloor.area.KeepOutKind;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** A sheet of 420 mm by 297 mm with the room on the left, a column for lists on the right and a title below. */
final class CutSheet {

    static final double WIDTH = 420;
    static final double HEIGHT = 297;
    static final double COLUMN = 300;
    static final double COLUMN_WIDTH = WIDTH - Paper.EDGE - COLUMN - 3;
    static final double TOP = Paper.EDGE + 6;
    static final double BOTTOM = HEIGHT - Paper.EDGE - Paper.TITLE_HEIGHT;

    /** Room for two chains of dimensions left of the floor, and for those and the scale bar below it. */
    private static final double LEFT = 26;

    private static final double BELOW = 37;
    private static final double MARGIN = 12;
    private static final double LINE = 3.6;
    private static final int CHARACTERS = 76;
    private static final double NEAR_METRES = 1e-3;
    private static final double SAMPLE = 12;
    private static final double STEP = 4.6;
    private static final List<Integer> SCALES = List.of(5, 10, 20, 25, 50, 100, 200, 500, 1_000);

    private CutSheet() {}

    /** The sheet with frame, title, walls and scale bar; the rest is drawn by the given part. */
    static String svg(RoomFile file, String title, Consumer<Pen> drawing) {
        Envelope room = file.room().polygon().getEnvelopeInternal();
        Paper paper = new Paper(WIDTH, HEIGHT, scale(room));
        AffineTransform place = new AffineTransform();
        place.translate(Paper.EDGE + LEFT, BOTTOM - BELOW);
        place.scale(1_000.0 / paper.scale(), -1_000.0 / paper.scale());
        place.translate(-room.getMinX(), -room.getMinY());
        return SvgText.of(WIDTH, HEIGHT, title, graphics -> {
            Pen pen = new Pen(graphics, place);
            pen.filledBox(0, 0, WIDTH, HEIGHT, Color.WHITE);
            drawing.accept(pen);
            pen.draw(file.room().polygon(), LineKind.WIDE, Pen.INK);
            file.keepOuts().stream()
                    .filter(k -> k.kind() == KeepOutKind.MOVEMENT_JOINT)
                    .forEach(k -> movementJoint(pen, k.shape()));
            file.doors().forEach(door -> door(pen, file, door));
            frame(pen, title, paper);
            ScaleBar.draw(pen, file.coordinateUnit(), paper, Paper.EDGE + LEFT);
        });
    }

    private static void frame(Pen pen, String title, Paper paper) {
        pen.box(Paper.EDGE, Paper.EDGE, WIDTH - 2 * Paper.EDGE, HEIGHT - 2 * Paper.EDGE, LineKind.WIDE, Pen.INK);
        pen.line(Paper.EDGE, BOTTOM, WIDTH - Paper.EDGE, BOTTOM, LineKind.WIDE, Pen.INK);
        pen.line(COLUMN - 4, Paper.EDGE, COLUMN - 4, BOTTOM, LineKind.NARROW, Pen.INK);
        pen.text(title, Paper.EDGE + 4, BOTTOM + 10, Pen.TITLE, Pen.Anchor.START, Pen.INK);
        pen.text("Scale 1:" + paper.scale(), WIDTH - Paper.EDGE - 4, BOTTOM + 10, Pen.TEXT, Pen.Anchor.END, Pen.INK);
    }

    private static int scale(Envelope room) {
        double wide = COLUMN - 4 - Paper.EDGE - LEFT - MARGIN;
        double high = BOTTOM - TOP - BELOW - MARGIN / 2;
        return SCALES.stream()
                .filter(s -> room.getWidth() * 1_000 / s <= wide && room.getHeight() * 1_000 / s <= high)
                .findFirst()
                .orElse(2_000);
    }

    private static void movementJoint(Pen pen, Geometry line) {
        pen.draw(line, LineKind.CASING, Color.WHITE);
        pen.draw(line, LineKind.DASHED, Pen.ACCENT);
    }

    /** A door: its opening in the wall and its name outside. */
    private static void door(Pen pen, RoomFile file, Door door) {
        pen.draw(door.at(), LineKind.CASING, Pen.ACCENT);
        Coordinate middle = door.at().getCentroid().getCoordinate();
        Envelope room = file.room().polygon().getEnvelopeInternal();
        Point2D at = pen.at(middle);
        if (middle.y < room.getMinY() + NEAR_METRES) {
            pen.text(door.name(), at.getX(), at.getY() + 3, Pen.SMALL, Pen.Anchor.MIDDLE, Pen.ACCENT);
        } else if (middle.y > room.getMaxY() - NEAR_METRES) {
            pen.text(door.name(), at.getX(), at.getY() - 1.5, Pen.SMALL, Pen.Anchor.MIDDLE, Pen.ACCENT);
        } else {
            double x = middle.x < room.centre().x ? at.getX() - 1.5 : at.getX() + 3;
            pen.uprightText(door.name(), x, at.getY(), Pen.SMALL, Pen.ACCENT);
        }
    }

    /** One sample of a legend: how it is drawn at a place, and its words. */
    record Entry(BiConsumer<Pen, Point2D> sample, String words) {}

    /** A line as a sample. */
    static Entry line(LineKind kind, Color colour, String words) {
        return new Entry(
                (pen, at) ->
                        pen.line(at.getX() - SAMPLE / 2, at.getY(), at.getX() + SAMPLE / 2, at.getY(), kind, colour),
                words);
    }

    /** A field as a sample. */
    static Entry field(Color fill, String words) {
        return new Entry(
                (pen, at) -> {
                    pen.filledBox(at.getX() - SAMPLE / 2, at.getY() - 1.4, SAMPLE, 2.8, fill);
                    pen.box(at.getX() - SAMPLE / 2, at.getY() - 1.4, SAMPLE, 2.8, LineKind.NARROW, Pen.INK);
                },
                words);
    }

    /** The entries every sheet needs, as far as the room has what they stand for. */
    static List<Entry> common(RoomFile file) {
        List<Entry> entries = new ArrayList<>();
        if (file.keepOuts().stream().anyMatch(k -> k.kind() == KeepOutKind.MOVEMENT_JOINT)) {
            entries.add(line(LineKind.DASHED, Pen.ACCENT, "movement joint, to be kept open to the base"));
        }
        if (!file.doors().isEmpty()) {
            entries.add(line(LineKind.CASING, Pen.ACCENT, "door, with its name"));
        }
        return entries;
    }

    /** Draws the legend from a height on; returns where the next thing may begin. */
    static double legend(Pen pen, double from, List<Entry> entries) {
        double y = from + 2;
        for (Entry entry : entries) {
            entry.sample.accept(pen, new Point2D.Double(COLUMN + SAMPLE / 2, y));
            for (String words : TextLines.wrapped(entry.words, 58)) {
                pen.text(words, COLUMN + SAMPLE + 3, y + 0.9, Pen.TEXT, Pen.Anchor.START, Pen.INK);
                y += LINE;
            }
            y += STEP - LINE;
        }
        return y;
    }

    /** Writes lines into the column from a height on, in two halves when they are many; those that do not fit are told. */
    static void list(Pen pen, double from, List<String> given) {
        int rows = (int) ((BOTTOM - from - 2) / LINE);
        List<String> whole = given.stream()
                .flatMap(l -> TextLines.wrapped(l, CHARACTERS).stream())
                .toList();
        boolean isOne = whole.size() <= rows;
        List<String> lines = isOne
                ? whole
                : given.stream()
                        .flatMap(l -> TextLines.wrapped(l, CHARACTERS / 2).stream())
                        .toList();
        int columns = isOne ? 1 : 2;
        int fits = Math.min(lines.size(), rows * columns);
        for (int i = 0; i < fits; i++) {
            boolean isLast = i == fits - 1 && fits < lines.size();
            String text = isLast ? "and " + (lines.size() - fits + 1) + " more" : lines.get(i);
            double x = COLUMN + (i / rows) * COLUMN_WIDTH / 2;
            pen.text(text, x, from + (i % rows + 1) * LINE, Pen.TEXT, Pen.Anchor.START, Pen.INK);
        }
    }
}
