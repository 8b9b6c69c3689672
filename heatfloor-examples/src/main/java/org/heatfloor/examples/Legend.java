package org.heatfloor.examples;

import java.awt.Color;
import java.awt.geom.Point2D;
import java.util.List;

/** Frame, title strip, and the column that explains every line and mark on the drawing. */
final class Legend {

    static final double SENSOR = 2.4;
    private static final double JOINT = 2.2;
    private static final double END = 3;
    private static final double STEP = 5.2;
    private static final double SAMPLE = 14;
    private static final int COLUMNS = 36;

    private static final String CAUTION =
            "Mains voltage in a floor, often in a wet room: connection, protection and tests by "
                    + "a licensed electrician under the local code. The cable's own instructions come before this drawing. "
                    + "Never cut, shorten or cross the heating cable.";

    private final Pen pen;
    private final Paper paper;
    private final PlanSheet sheet;
    private final boolean lifts;
    private final List<String> numbered;
    private final double x;
    private double y;

    Legend(Pen pen, Paper paper, PlanSheet sheet, boolean lifts, List<String> numbered) {
        this.pen = pen;
        this.paper = paper;
        this.sheet = sheet;
        this.lifts = lifts;
        this.numbered = numbered;
        this.x = paper.width() - Paper.EDGE - Paper.LEGEND_WIDTH + 4;
        this.y = Paper.EDGE + 8;
    }

    void draw() {
        frame();
        for (int i = 0; i < sheet.cables().size(); i++) {
            PlanSheet.Run run = sheet.cables().get(i);
            pen.line(x, y, x + SAMPLE, y, LineKind.WIDE, PlanDrawing.colour(i));
            words("heating cable " + run.name());
            y -= 1.4;
            words(run.remark());
        }
        if (lifts) {
            pen.line(x, y, x + SAMPLE, y, LineKind.LIFTED, Pen.GREY);
            words("heating cable to lift");
        }
        if (!sheet.cables().isEmpty()) {
            pen.line(x, y, x + SAMPLE, y, LineKind.DASHED, Pen.INK);
            words("cold lead");
            joint(pen, sample(), PlanDrawing.colour(0));
            words("joint of cold lead and heating part");
        }
        if (sheet.cables().stream().anyMatch(PlanSheet.Run::endsInFloor)) {
            end(pen, sample(), PlanDrawing.colour(0));
            words("end of the heating part");
        }
        if (sheet.cables().stream().anyMatch(r -> r.sensor().isPresent())) {
            pen.line(x, y, x + SAMPLE, y, LineKind.DOTTED, Pen.INK);
            pen.circle(sample(), SENSOR, Pen.INK, Pen.INK);
            words("floor sensor and its tube");
        }
        if (sheet.cables().stream().anyMatch(r -> r.spare().isPresent())) {
            pen.line(x, y, x + SAMPLE, y, LineKind.DOTTED, Pen.INK);
            pen.circle(sample(), SENSOR, Color.WHITE, Pen.INK);
            words("spare sensor");
        }
        pen.triangle(new Point2D.Double(x + SAMPLE / 2 + 2, y), 0, 4, Pen.INK);
        words("cold lead leaves the wall here");
        if (sheet.wallClearance().isPresent() || !sheet.fixtures().isEmpty()) {
            pen.line(x, y, x + SAMPLE, y, LineKind.DASH_DOT, Pen.GREY);
            words("least distance of the cable");
        }
        if (!sheet.zones().isEmpty()) {
            pen.line(x, y, x + SAMPLE, y, LineKind.DASH_DOUBLE_DOT, Pen.GREY);
            words("where people stand");
        }
        if (!sheet.fixtures().isEmpty()) {
            pen.filledBox(x + 2, y - 1.4, SAMPLE - 4, 2.8, Pen.TINT);
            pen.box(x + 2, y - 1.4, SAMPLE - 4, 2.8, LineKind.WIDE, Pen.GREY);
            words("no cable");
        }
        if (sheet.lattice().isPresent()) {
            for (int i = 0; i < 4; i++) {
                pen.circle(new Point2D.Double(x + 2.5 + i * 3, y), 1.8, Pen.PALE, Pen.PALE);
            }
            words("studs of the membrane");
        }
        for (int i = 0; i < numbered.size(); i++) {
            pen.text(String.valueOf(i + 1), x + SAMPLE / 2, y + 0.9, Pen.TEXT, Pen.Anchor.MIDDLE, Pen.INK);
            words(numbered.get(i));
        }
        caution();
    }

    private void frame() {
        double edge = Paper.EDGE;
        double strip = paper.height() - edge - Paper.TITLE_HEIGHT;
        pen.box(edge, edge, paper.width() - 2 * edge, paper.height() - 2 * edge, LineKind.WIDE, Pen.INK);
        pen.line(edge, strip, paper.width() - edge, strip, LineKind.WIDE, Pen.INK);
        pen.line(x - 4, edge, x - 4, strip, LineKind.NARROW, Pen.INK);
        pen.text(sheet.title(), edge + 4, strip + 7, Pen.TITLE, Pen.Anchor.START, Pen.INK);
        pen.text(sheet.status(), edge + 4, strip + 12.8, Pen.TEXT, Pen.Anchor.START, Pen.INK);
        pen.text(
                "scale 1:" + paper.scale() + ", dimensions in "
                        + (sheet.unit().isImperial()
                                ? "feet and inches"
                                : sheet.unit().toString()),
                paper.width() - edge - 4,
                strip + 12.8,
                Pen.TEXT,
                Pen.Anchor.END,
                Pen.INK);
    }

    private void caution() {
        List<String> lines = TextLines.wrapped(CAUTION, COLUMNS + 8);
        double at = paper.height() - Paper.EDGE - Paper.TITLE_HEIGHT - 3 - (lines.size() - 1) * 3.4;
        for (String line : lines) {
            pen.text(line, x, at, Pen.SMALL, Pen.Anchor.START, Pen.INK);
            at += 3.4;
        }
    }

    private Point2D sample() {
        return new Point2D.Double(x + SAMPLE / 2, y);
    }

    /** Words beside the sample just drawn, and on to the next line. */
    private void words(String text) {
        List<String> lines = TextLines.wrapped(text, COLUMNS - 8);
        for (String line : lines) {
            pen.text(line, x + SAMPLE + 3, y + 0.9, Pen.TEXT, Pen.Anchor.START, Pen.INK);
            y += 3.8;
        }
        y += STEP - 3.8;
    }

    static void joint(Pen pen, Point2D at, Color colour) {
        pen.filledBox(at.getX() - JOINT / 2, at.getY() - JOINT / 2, JOINT, JOINT, colour);
    }

    static void end(Pen pen, Point2D at, Color colour) {
        pen.diamond(at, END, colour);
    }
}
