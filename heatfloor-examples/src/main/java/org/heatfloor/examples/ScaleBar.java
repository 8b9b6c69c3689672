package org.heatfloor.examples;

import java.awt.Color;

/** A bar that keeps its meaning when the drawing is copied larger or smaller. */
final class ScaleBar {

    private static final double HEIGHT = 1.5;
    private static final double ABOVE_TITLE = 10;

    private ScaleBar() {}

    static void draw(Pen pen, LengthUnit unit, Paper paper, double x) {
        double part = unit.isImperial() ? LengthUnit.FOOT.metres() : 0.25;
        while (paper.onPaper(part) < 6) {
            part *= unit.isImperial() ? 5 : 4;
        }
        double step = paper.onPaper(part);
        double y = paper.height() - Paper.EDGE - Paper.TITLE_HEIGHT - ABOVE_TITLE;
        for (int i = 0; i < 4; i++) {
            pen.filledBox(x + i * step, y, step, HEIGHT, i % 2 == 0 ? Pen.INK : Color.WHITE);
            pen.box(x + i * step, y, step, HEIGHT, LineKind.NARROW, Pen.INK);
        }
        for (int i = 0; i <= 4; i += 2) {
            String text = Dimensions.length(i * part, unit);
            String name = unit.isImperial() || i < 4 ? text : text + " " + unit;
            pen.text(i == 0 ? "0" : name, x + i * step, y + HEIGHT + 3, Pen.TEXT, Pen.Anchor.MIDDLE, Pen.INK);
        }
    }
}
