package org.heatfloor.examples;

import java.awt.BasicStroke;

/**
 * Line types and widths of ISO 128-2:2020 in line group 0.5: narrow 0.25 mm, wide 0.5 mm; lengths of dashes in multiples
 * of the width (long dash 24, dash 12, gap 3, dot at most 0.5). Provenance: from memory.
 */
enum LineKind {
    /** 01.1: dimensions, hatching, leaders. */
    NARROW(0.25),
    /** 01.2: edges. */
    WIDE(0.5),
    /** 02.2 in a width between, so that leads stand back behind the heating cable. */
    DASHED(0.35, 12, 3),
    /** 04.1: limits that are not edges. */
    DASH_DOT(0.25, 24, 3, 0.5, 3),
    /** 05.1: the framing of areas. */
    DASH_DOUBLE_DOT(0.25, 24, 3, 0.5, 3, 0.5, 3),
    /** 07: sensor leads. */
    DOTTED(0.35, 0.5, 3);

    /** Drawing units in a millimetre on paper. */
    static final double UNITS = 100;

    private final BasicStroke stroke;

    LineKind(double width, double... dashes) {
        float units = (float) (width * UNITS);
        if (dashes.length == 0) {
            stroke = new BasicStroke(units, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
        } else {
            float[] lengths = new float[dashes.length];
            for (int i = 0; i < dashes.length; i++) {
                lengths[i] = (float) dashes[i] * units;
            }
            stroke = new BasicStroke(units, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 10, lengths, 0);
        }
    }

    BasicStroke stroke() {
        return stroke;
    }
}
