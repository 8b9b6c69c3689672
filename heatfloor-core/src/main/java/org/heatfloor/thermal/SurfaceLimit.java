package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;

/**
 * Limits of the highest surface temperature of a floor, each with document and edition. That they bind the local highest and
 * not the mean is from memory (EN 1264-2). The standards themselves were not read, see each limit's source.
 */
public enum SurfaceLimit {
    /** Where people stay: 29 °C. */
    OCCUPIED(29, HeatSources.surfaceLimit("limit of the occupied area")),
    /** Bathrooms and the like, room at 24 °C: 33 °C. */
    BATH(33, HeatSources.surfaceLimit("limit of bathrooms")),
    /** A strip of at most 1 m along outer walls: 35 °C. */
    PERIPHERAL(35, HeatSources.surfaceLimit("limit of the peripheral area, at most 1 m wide (width recalled)")),
    /** Highest floor temperature for people in shoes: 29 °C. */
    SHOD(29, Source.fromMemory("ASHRAE 55-2017, floor surface temperature 19 to 29 °C; edition recalled")),
    /** Wood and wood-based coverings: 27 °C. */
    WOOD_COVERING(27, Source.commonPractice("wood coverings are kept at or below 27 °C")),
    /** Vinyl and laminate coverings: 27 °C. */
    VINYL_COVERING(27, Source.commonPractice("vinyl and laminate coverings are kept at or below 27 °C"));

    private final double celsius;
    // A record of an enum and a text.
    @SuppressWarnings("ImmutableEnumChecker")
    private final Source source;

    SurfaceLimit(double celsius, Source source) {
        this.celsius = celsius;
        this.source = source;
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
        return source;
    }
}
