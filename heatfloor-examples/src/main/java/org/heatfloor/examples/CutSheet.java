package org.heatfloor.examples;

import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.util.List;
import java.util.function.Consumer;
import org.locationtech.jts.geom.Envelope;

/** A sheet of 420 mm by 297 mm with the room on the left, a column for lists on the right and a title below. */
final class CutSheet {

    static final double WIDTH = 420;
    static final double HEIGHT = 297;
    static final double COLUMN = 300;
    static final double COLUMN_WIDTH = WIDTH - Paper.EDGE - COLUMN - 3;
    static final double TOP = Paper.EDGE + 6;
    static final double BOTTOM = HEIGHT - Paper.EDGE - Paper.TITLE_HEIGHT;

    private static final double MARGIN = 12;
    private static final double LINE = 3.6;
    private static final List<Integer> SCALES = List.of(5, 10, 20, 50, 100, 200, 500, 1_000);

    private CutSheet() {}

    /** The sheet with frame, title, walls and scale bar; the rest is drawn by the given part. */
    static String svg(RoomFile file, String title, Consumer<Pen> drawing) {
        Envelope room = file.room().polygon().getEnvelopeInternal();
        Paper paper = new Paper(WIDTH, HEIGHT, scale(room));
        AffineTransform place = new AffineTransform();
        place.translate(Paper.EDGE + MARGIN, BOTTOM - MARGIN - 12);
        place.scale(1_000.0 / paper.scale(), -1_000.0 / paper.scale());
        place.translate(-room.getMinX(), -room.getMinY());
        return SvgText.of(WIDTH, HEIGHT, title, graphics -> {
            Pen pen = new Pen(graphics, place);
            pen.filledBox(0, 0, WIDTH, HEIGHT, Color.WHITE);
            drawing.accept(pen);
            pen.draw(file.room().polygon(), LineKind.WIDE, Pen.INK);
            file.doors().forEach(door -> pen.draw(door.at(), LineKind.WIDE, Pen.ACCENT));
            frame(pen, title, paper);
            ScaleBar.draw(pen, file.coordinateUnit(), paper, Paper.EDGE + MARGIN);
        });
    }

    private static void frame(Pen pen, String title, Paper paper) {
        pen.box(Paper.EDGE, Paper.EDGE, WIDTH - 2 * Paper.EDGE, HEIGHT - 2 * Paper.EDGE, LineKind.WIDE, Pen.INK);
        pen.line(Paper.EDGE, BOTTOM, WIDTH - Paper.EDGE, BOTTOM, LineKind.WIDE, Pen.INK);
        pen.line(COLUMN - 4, Paper.EDGE, COLUMN - 4, BOTTOM, LineKind.NARROW, Pen.INK);
        pen.text(title, Paper.EDGE + 4, BOTTOM + 10, Pen.TITLE, Pen.Anchor.START, Pen.INK);
        pen.text(
                "Scale 1:" + paper.scale() + ". Doors red.",
                WIDTH - Paper.EDGE - 4,
                BOTTOM + 10,
                Pen.TEXT,
                Pen.Anchor.END,
                Pen.INK);
    }

    private static int scale(Envelope room) {
        double wide = COLUMN - 4 - Paper.EDGE - 2 * MARGIN;
        double high = BOTTOM - TOP - 2 * MARGIN - 12;
        return SCALES.stream()
                .filter(s -> room.getWidth() * 1_000 / s <= wide && room.getHeight() * 1_000 / s <= high)
                .findFirst()
                .orElse(2_000);
    }

    /** Writes lines into the column from a height on, in two halves when they are many; those that do not fit are told. */
    static void list(Pen pen, double from, List<String> lines) {
        int rows = (int) ((BOTTOM - from - 2) / LINE);
        int columns = lines.size() > rows ? 2 : 1;
        int fits = Math.min(lines.size(), rows * columns);
        for (int i = 0; i < fits; i++) {
            boolean isLast = i == fits - 1 && fits < lines.size();
            String text = isLast ? "and " + (lines.size() - fits + 1) + " more" : lines.get(i);
            double x = COLUMN + (i / rows) * COLUMN_WIDTH / 2;
            pen.text(text, x, from + (i % rows + 1) * LINE, Pen.TEXT, Pen.Anchor.START, Pen.INK);
        }
    }
}
