package org.heatfloor.examples;

import java.util.List;
import org.locationtech.jts.geom.Envelope;

/**
 * The sheet and the scale a room fits on: formats of ISO 216, scales of ISO 5455. Lengths are millimetres on paper.
 *
 * @param width the sheet's width
 * @param height the sheet's height
 * @param scale 20 for 1:20
 */
record Paper(double width, double height, int scale) {

    static final double EDGE = 10;
    static final double LEGEND_WIDTH = 62;
    static final double TITLE_HEIGHT = 16;

    /** Room for walls, dimensions and the scale bar around the floor. */
    static final double LEFT = 30;

    static final double RIGHT = 12;
    static final double ABOVE = 12;
    static final double BELOW = 36;

    private static final List<Paper> CHOICE = List.of(
            new Paper(297, 210, 10),
            new Paper(297, 210, 20),
            new Paper(420, 297, 20),
            new Paper(420, 297, 50),
            new Paper(420, 297, 100),
            new Paper(420, 297, 200),
            new Paper(420, 297, 500));

    static Paper fitting(Envelope room) {
        return CHOICE.stream().filter(p -> p.holds(room)).findFirst().orElseGet(() -> new Paper(420, 297, 1_000));
    }

    private boolean holds(Envelope room) {
        return onPaper(room.getWidth()) <= fieldWidth() - LEFT - RIGHT
                && onPaper(room.getHeight()) <= fieldHeight() - ABOVE - BELOW;
    }

    double fieldWidth() {
        return width - 2 * EDGE - LEGEND_WIDTH;
    }

    double fieldHeight() {
        return height - 2 * EDGE - TITLE_HEIGHT;
    }

    double onPaper(double metres) {
        return metres * 1_000 / scale;
    }
}
