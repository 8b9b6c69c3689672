package org.heatfloor.thermal;

import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.ThermalInsulance;
import org.heatfloor.quantity.Units;

/** Judgements on the heat of a floor. Each compares one figure with one limit. */
public final class HeatFindings {

    private HeatFindings() {}

    /**
     * Highest surface temperature against a limit. Passing it is a warning where a floor sensor limits the floor, since
     * the thermostat then holds it, and an error where none does.
     *
     * @param subject the cable or floor judged
     * @param surfaceMax highest surface temperature at steady full power
     * @param limit the limit
     * @param floorSensor whether a floor sensor limits the floor
     * @param source what the limit rests on
     * @return a note when met, else a warning or an error
     */
    public static Finding surface(
            String subject,
            Quantity<Temperature> surfaceMax,
            Quantity<Temperature> limit,
            boolean floorSensor,
            Source source) {
        double max = Si.in("surfaceMax", surfaceMax, Units.CELSIUS);
        double most = Si.in("limit", limit, Units.CELSIUS);
        if (max <= most) {
            return Finding.of(
                    Severity.NOTE,
                    subject,
                    text(
                            "At steady full power the surface stays at or below %.1f °C; the limit is %.1f °C.",
                            max, most),
                    surfaceMax,
                    limit,
                    source);
        }
        List<String> apart = QuantityText.apart(max, most, 1);
        String message = floorSensor
                ? text(
                        "Steady full power would bring the surface to %s °C, above %s °C: set the thermostat's floor"
                                + " limit, and do not run the floor without its sensor.",
                        apart.get(0), apart.get(1))
                : text(
                        "Steady full power brings the surface to %s °C, above %s °C, and no floor sensor limits it:"
                                + " fit a floor sensor or take less power a square metre.",
                        apart.get(0), apart.get(1));
        return Finding.of(floorSensor ? Severity.WARNING : Severity.ERROR, subject, message, surfaceMax, limit, source);
    }

    /**
     * Insulation below the heated layer against the least of EN 1264-4.
     *
     * @param buildUp the layers
     * @param beneath what lies under the floor
     * @return a note when met, else a warning
     */
    public static Finding insulationBelow(BuildUp buildUp, Beneath beneath) {
        Quantity<ThermalInsulance> found = buildUp.resistanceBelowHeatedLayer();
        double resistance = Si.in("resistance", found, Units.SQUARE_METRE_KELVIN_PER_WATT);
        double least = Si.in("least", beneath.leastInsulation(), Units.SQUARE_METRE_KELVIN_PER_WATT);
        boolean met = resistance >= least;
        List<String> apart = QuantityText.apart(resistance, least, 2);
        String message = met
                ? text(
                        "The layers under the cable insulate by %.2f m²·K/W; at least %.2f is asked for.",
                        resistance, least)
                : text(
                        "The layers under the cable insulate by %s m²·K/W, less than %s: heat is lost downwards; add"
                                + " an insulating board.",
                        apart.get(0), apart.get(1));
        return Finding.of(
                met ? Severity.NOTE : Severity.WARNING,
                "build-up",
                message,
                found,
                beneath.leastInsulation(),
                beneath.source());
    }

    /**
     * Heat output against the room's heat loss.
     *
     * @param output heat given off into the room
     * @param heatLoss heat the room loses at design conditions
     * @return a note when covered, else a warning with the share
     */
    public static Finding heatLoss(Quantity<Power> output, Quantity<Power> heatLoss) {
        double out = Si.in("output", output, Units.WATT);
        double loss = Si.notNegative("heatLoss", heatLoss, Units.WATT);
        boolean covered = out >= loss;
        if (!(out >= 0)) {
            return Finding.of(
                    Severity.WARNING,
                    "room heat",
                    text("The floor takes %.0f W from the room and does not heat it.", -out),
                    output,
                    heatLoss,
                    Source.brief("climate heatLoss"));
        }
        List<String> apart = QuantityText.apart(out, loss, 0);
        String message = covered
                ? text("The floor gives the room %.0f W and covers its heat loss of %.0f W.", out, loss)
                : text(
                        "The floor gives the room %s W, %s %% of its heat loss of %s W: the room needs another"
                                + " heater for the rest.",
                        apart.get(0),
                        QuantityText.apart(100 * out / loss, 100, 0).get(0),
                        apart.get(1));
        return Finding.of(
                covered ? Severity.NOTE : Severity.WARNING,
                "room heat",
                message,
                output,
                heatLoss,
                Source.brief("climate heatLoss"));
    }

    /**
     * Whether the surface law is used within its range for the temperatures found.
     *
     * @param law the law
     * @param surfaceMean mean surface temperature
     * @param air room temperature
     * @return a note inside the law's range, else a warning
     */
    public static Finding lawRange(SurfaceLaw law, Quantity<Temperature> surfaceMean, Quantity<Temperature> air) {
        boolean inside = law.covers(surfaceMean, air);
        double rise = Si.kelvin("surfaceMean", surfaceMean) - Si.kelvin("air", air);
        double least = Si.in("range", law.leastDifference(), Units.KELVIN_DIFFERENCE);
        double most = Si.in("range", law.mostDifference(), Units.KELVIN_DIFFERENCE);
        return Finding.withValue(
                inside ? Severity.NOTE : Severity.WARNING,
                "surface law",
                text(
                        inside
                                ? "Surface temperatures are reckoned with the %s, used here from %.0f K to %.0f K over the"
                                        + " room; the heated floor lies %.1f K over it. Published laws differ by about 15 %%."
                                : "Surface temperatures are reckoned with the %s, used here from %.0f K to %.0f K over the"
                                        + " room; the heated floor lies %.1f K over it, so they are an estimate.",
                        law.name(),
                        least,
                        most,
                        rise),
                surfaceMean,
                inside ? law.source() : law.rangeSource());
    }

    static String text(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
