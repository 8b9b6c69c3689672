package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * Surface temperatures at which at most 15 % of barefoot people are dissatisfied, and those that displease the fewest after
 * one and after ten minutes (all from memory: ISO/TS 13732-2:2001, after Olesen 1977).
 */
public enum BarefootFloor {
    /** Textile floors: 21 °C to 28 °C. */
    TEXTILE(21, 28, 21, 24.5),
    /** Cork: 23 °C to 28 °C. */
    CORK(23, 28, 24, 26),
    /** Pine: 22.5 °C to 28 °C. */
    PINE(22.5, 28, 25, 26),
    /** Oak: 24.5 °C to 28 °C. */
    OAK(24.5, 28, 26, 26),
    /** Linoleum on wood: 24 °C to 28 °C; its best temperatures are recalled with doubt. */
    LINOLEUM(24, 28, 28, 26),
    /** Concrete, bare or thinly covered: 26 °C to 28.5 °C. */
    CONCRETE(26, 28.5, 28.5, 27),
    /** Marble, stone and tile: 28 °C to 29.5 °C. */
    STONE_AND_TILE(28, 29.5, 30, 29);

    private final double lowest;
    private final double highest;
    private final double oneMinute;
    private final double tenMinutes;

    BarefootFloor(double lowest, double highest, double oneMinute, double tenMinutes) {
        this.lowest = lowest;
        this.highest = highest;
        this.oneMinute = oneMinute;
        this.tenMinutes = tenMinutes;
    }

    /**
     * Judges a floor temperature for bare feet.
     *
     * @param subject the cable or floor judged
     * @param floor floor temperature
     * @return a note inside the band, else a warning; the figure is the temperature, the limit the nearer end of the band
     * @throws IllegalArgumentException if the temperature is not absolute
     */
    public Finding judge(String subject, Quantity<Temperature> floor) {
        Si.kelvin("floor", floor);
        double celsius = Si.in("floor", floor, Units.CELSIUS);
        boolean warm = celsius > (lowest + highest) / 2;
        boolean inside = celsius >= lowest && celsius <= highest;
        String message = inside
                ? HeatFindings.text(
                        "At %.1f °C the floor suits bare feet; at most 15 %% are dissatisfied from %.1f °C to %.1f °C.",
                        celsius, lowest, highest)
                : HeatFindings.text(
                        "At %.1f °C the floor is too %s for bare feet; at most 15 %% are dissatisfied from %.1f °C to"
                                + " %.1f °C.",
                        celsius, warm ? "warm" : "cool", lowest, highest);
        return Finding.of(
                inside ? Severity.NOTE : Severity.WARNING,
                subject,
                message,
                floor,
                warm ? highest() : lowest(),
                source());
    }

    /**
     * The temperature that displeases the fewest after one minute.
     *
     * @return the temperature
     */
    public Quantity<Temperature> bestAfterOneMinute() {
        return Amounts.celsius(oneMinute);
    }

    /**
     * The temperature that displeases the fewest after ten minutes.
     *
     * @return the temperature
     */
    public Quantity<Temperature> bestAfterTenMinutes() {
        return Amounts.celsius(tenMinutes);
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
