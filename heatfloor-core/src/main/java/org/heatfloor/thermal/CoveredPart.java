package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.TemperatureDifference;
import org.heatfloor.quantity.Units;

/**
 * The floor under a cover, on the running floor as laid.
 *
 * @param cover the cover
 * @param tile the tile's surface under it
 * @param tileOpen highest tile temperature of the same place without the covers
 * @param planeRise the most the covers warm the cables' plane under it; a cable there is warmer by as much
 */
public record CoveredPart(
        FloorCover cover,
        SurfaceSummary tile,
        Quantity<Temperature> tileOpen,
        Quantity<TemperatureDifference> planeRise) {

    /** Above this a cover makes a heated floor useless and its cable hot. */
    private static final double METHOD_LIMIT = 0.15;

    /** No sheath gets there. */
    private static final double UNKNOWN_LIMIT = 1e6;

    /**
     * The sheath of a cable under the cover.
     *
     * @param sheathOpen the sheath on the open floor, for example of {@link SteadySection#sheath}
     * @return that and the rise in the cables' plane
     */
    public Quantity<Temperature> sheath(Quantity<Temperature> sheathOpen) {
        return SteadySection.celsius(
                Si.kelvin("sheathOpen", sheathOpen) + Si.in("planeRise", planeRise, Units.KELVIN_DIFFERENCE));
    }

    /**
     * Judges the cover: the sheath under it against what the cable's maker allows, and its resistance against the 0.15
     * m²·K/W to which EN 1264 goes.
     *
     * @param sheathOpen the sheath on the open floor
     * @param sheathLimit highest sheath temperature the cable is made for
     * @return an error when the sheath passes its limit, a warning when the cover passes 0.15 m²·K/W, else a note
     */
    public Finding judge(Quantity<Temperature> sheathOpen, Quantity<Temperature> sheathLimit) {
        return judge(
                cover.name(),
                Si.in("resistance", cover.resistance(), Units.SQUARE_METRE_KELVIN_PER_WATT),
                Si.in("tile", tile.max(), Units.CELSIUS),
                sheath(sheathOpen),
                sheathLimit);
    }

    /**
     * Judges the cover by its resistance alone, where nothing is known of what the cable's maker allows.
     *
     * @param sheathOpen the sheath on the open floor
     * @return a warning when the cover passes 0.15 m²·K/W, else a note; both say how warm the cable gets
     */
    public Finding judge(Quantity<Temperature> sheathOpen) {
        return judge(
                cover.name(),
                Si.in("resistance", cover.resistance(), Units.SQUARE_METRE_KELVIN_PER_WATT),
                Si.in("tile", tile.max(), Units.CELSIUS),
                sheath(sheathOpen),
                Amounts.celsius(UNKNOWN_LIMIT));
    }

    static Finding judge(
            String subject,
            double resistance,
            double tileCelsius,
            Quantity<Temperature> sheathCovered,
            Quantity<Temperature> sheathLimit) {
        double sheath = Si.in("sheath", sheathCovered, Units.CELSIUS);
        double limit = Si.in("sheathLimit", sheathLimit, Units.CELSIUS);
        if (sheath > limit) {
            return Finding.of(
                    Severity.ERROR,
                    subject,
                    HeatFindings.text(
                            "Under the cover the cable reaches %.0f °C, above the %.0f °C it is made for: leave the place"
                                    + " without cable or keep it free.",
                            sheath, limit),
                    sheathCovered,
                    sheathLimit,
                    Source.brief("highest sheath temperature of the cable"));
        }
        boolean thin = resistance <= METHOD_LIMIT;
        return Finding.of(
                thin ? Severity.NOTE : Severity.WARNING,
                subject,
                HeatFindings.text(
                        thin
                                ? "Under the cover the tile reaches %.1f °C and the cable %.1f °C."
                                : "The cover insulates more than a heated floor should carry; under it the tile reaches"
                                        + " %.1f °C and the cable %.1f °C.",
                        tileCelsius,
                        sheath),
                Amounts.of(resistance, Units.SQUARE_METRE_KELVIN_PER_WATT),
                Amounts.of(METHOD_LIMIT, Units.SQUARE_METRE_KELVIN_PER_WATT),
                HeatSources.COVERING);
    }
}
