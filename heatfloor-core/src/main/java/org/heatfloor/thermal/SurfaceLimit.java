package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;

/**
 * Published limits of the highest surface temperature of a floor. That they bind the local highest and not the mean is from
 * memory (EN 1264-2), and so is the edition, which is why none is named; the figures were seen in a secondary text.
 */
public enum SurfaceLimit {
    /** Where people stay: 29 °C. */
    OCCUPIED(29, Source.Kind.DOCUMENT, "EN 1264-2, limit of the occupied area; also ISO 11855; edition not known"),
    /** Bathrooms and the like, room at 24 °C: 33 °C. */
    BATH(33, Source.Kind.DOCUMENT, "EN 1264-2, limit of bathrooms; also ISO 11855; edition not known"),
    /** A strip of at most 1 m along outer walls: 35 °C. */
    PERIPHERAL(
            35,
            Source.Kind.DOCUMENT,
            "EN 1264-2, limit of the peripheral area; also ISO 11855; edition not known, width from memory"),
    /** Wood and wood-based coverings: 27 °C. */
    WOOD_COVERING(27, Source.Kind.COMMON_PRACTICE, "wood coverings are kept at or below 27 °C"),
    /** Vinyl and laminate coverings: 27 °C. */
    VINYL_COVERING(27, Source.Kind.COMMON_PRACTICE, "vinyl and laminate coverings are kept at or below 27 °C");

    private final double celsius;
    private final Source.Kind kind;
    private final String text;

    SurfaceLimit(double celsius, Source.Kind kind, String text) {
        this.celsius = celsius;
        this.kind = kind;
        this.text = text;
    }

    /**
     * The limit.
     *
     * @return the highest surface temperature
     */
    public Quantity<Temperature> temperature() {
        return Amounts.celsius(celsius);
    }

    /**
     * What the limit rests on.
     *
     * @return the source
     */
    public Source source() {
        return new Source(kind, text);
    }
}
