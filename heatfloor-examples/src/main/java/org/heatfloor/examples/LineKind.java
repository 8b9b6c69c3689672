package org.heatfloor.examples;

import java.awt.BasicStroke;

/**
 * Line types and widths of ISO 128-2:2020 in line group 0.5: narrow 0.25 mm, wide 0.5 mm; lengths of dashes in multiples
 * of the width (long dash 24, dash 12, gap 3, dot at most 0.5). Provenance: from memory.
 */
enum LineKind {
    /** 01.1: dimensions, hatching, leaders. */
    NARROW(0.25, ""),
    /** 01.2: edges. */
    WIDE(0.5, ""),
    /** Ground under a line that runs close beside another. */
    CASING(0.9, ""),
    /** 02.2 in a width between, so that leads stand back behind the heating cable. */
    DASHED(0.35, "12 3"),
    /** 04.1: limits that are not edges. */
    DASH_DOT(0.25, "24 3 0.5 3"),
    /** 05.1: the framing of areas. */
    DASH_DOUBLE_DOT(0.25, "24 3 0.5 3 0.5 3"),
    /** 02.1 in the width of heating cable, with short dashes: heating cable that lay there and is lifted. */
    LIFTED(0.5, "3 3"),
    /** 07: sensor leads. */
    DOTTED(0.35, "0.5 3");

    /** Drawing units in a millimetre on paper. */
    static final double UNITS = 100;

    private final double width;
    private final String dashes;

    /** @param dashes lengths of dash and gap in turn, in widths, parted by spaces; blank for a continuous line */
    LineKind(double width, String dashes) {
        this.width = width;
        this.dashes = dashes;
    }

    BasicStroke stroke() {
        float units = (float) (width * UNITS);
        if (dashes.isEmpty()) {
            return new BasicStroke(units, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
        }
        String[] parts = dashes.split(" ", -1);
        float[] lengths = new float[parts.length];
        for (int i = 0; i < parts.length; i++) {
            lengths[i] = Float.parseFloat(parts[i]) * units;
        }
        return new BasicStroke(units, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 10, lengths, 0);
    }
}
