package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;

/**
 * Surface temperatures at which at most 15 % of barefoot people are dissatisfied (from memory: ISO/TS 13732-2:2001, after
 * Olesen 1977).
 */
public enum BarefootFloor {
    /** Textile floors: 21 °C to 28 °C. */
    TEXTILE(21, 28),
    /** Cork: 23 °C to 28 °C. */
    CORK(23, 28),
    /** Pine: 22.5 °C to 28 °C. */
    PINE(22.5, 28),
    /** Oak: 24.5 °C to 28 °C. */
    OAK(24.5, 28),
    /** Linoleum on wood: 24 °C to 28 °C. */
    LINOLEUM(24, 28),
    /** Concrete: 26 °C to 28.5 °C. */
    CONCRETE(26, 28.5),
    /** Stone and tile: 28 °C to 29.5 °C. */
    STONE_AND_TILE(28, 29.5);

    private final double lowest;
    private final double highest;

    BarefootFloor(double lowest, double highest) {
        this.lowest = lowest;
        this.highest = highest;
    }

    /**
     * Lower end of the band.
     *
     * @return the temperature
     */
    public Quantity<Temperature> lowest() {
        return Amounts.celsius(lowest);
    }

    /**
     * Upper end of the band.
     *
     * @return the temperature
     */
    public Quantity<Temperature> highest() {
        return Amounts.celsius(highest);
    }

    /**
     * What the band rests on.
     *
     * @return the source
     */
    public Source source() {
        return Source.fromMemory("ISO/TS 13732-2:2001, barefoot floors, after Olesen 1977");
    }
}
