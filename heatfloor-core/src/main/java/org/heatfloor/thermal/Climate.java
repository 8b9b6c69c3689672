package org.heatfloor.thermal;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.HeatTransferCoefficient;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * What the floor lies between.
 *
 * @param air room temperature (operative), −60 °C to 80 °C
 * @param below temperature under the build-up, −60 °C to 80 °C
 * @param heatLoss heat the room loses at design conditions, where known
 * @param surfaceLimit highest surface temperature wanted, where given
 * @param filmBelow film coefficient between the underside of the build-up and {@code below}; 0 for no heat flow
 */
public record Climate(
        Quantity<Temperature> air,
        Quantity<Temperature> below,
        Optional<Quantity<Power>> heatLoss,
        Optional<Quantity<Temperature>> surfaceLimit,
        Quantity<HeatTransferCoefficient> filmBelow) {

    /** Resistance of the film under a floor, heat flowing down: 0.17 m²·K/W (ISO 6946:2017, Table 7). */
    private static final double FILM_RESISTANCE_DOWN = 0.17;

    /**
     * Checks the figures.
     *
     * @param air room temperature (operative), −60 °C to 80 °C
     * @param below temperature under the build-up, −60 °C to 80 °C
     * @param heatLoss heat the room loses at design conditions, where known
     * @param surfaceLimit highest surface temperature wanted, where given
     * @param filmBelow film coefficient between the underside of the build-up and {@code below}; 0 for no heat flow
     * @throws IllegalArgumentException if a temperature is not absolute or lies outside −60 °C to 80 °C (surface limit: 0
     *     °C to 100 °C), the heat loss is negative or the film is negative or above 1e6 W/(m²·K)
     */
    public Climate {
        Objects.requireNonNull(heatLoss, "heatLoss");
        Objects.requireNonNull(surfaceLimit, "surfaceLimit");
        Si.kelvin("climate air", air);
        Si.within("climate air", air, Units.CELSIUS, -60, 80);
        Si.kelvin("climate below", below);
        Si.within("climate below", below, Units.CELSIUS, -60, 80);
        heatLoss.ifPresent(loss -> Si.notNegative("climate heatLoss", loss, Units.WATT));
        surfaceLimit.ifPresent(limit -> {
            Si.kelvin("climate surfaceLimit", limit);
            Si.within("climate surfaceLimit", limit, Units.CELSIUS, 0, 100);
        });
        Si.within("climate filmBelow", filmBelow, Units.WATT_PER_SQUARE_METRE_KELVIN, 0, 1e6);
    }

    /**
     * A climate with the standard film under the floor, 0.17 m²·K/W (ISO 6946:2017, Table 7, heat flowing down).
     *
     * @param air room temperature
     * @param below temperature under the build-up
     * @return the climate
     */
    public static Climate of(Quantity<Temperature> air, Quantity<Temperature> below) {
        return new Climate(
                air,
                below,
                Optional.empty(),
                Optional.empty(),
                Amounts.of(1 / FILM_RESISTANCE_DOWN, Units.WATT_PER_SQUARE_METRE_KELVIN));
    }

    /**
     * The same climate with the room's heat loss.
     *
     * @param loss heat loss at design conditions
     * @return the climate
     */
    public Climate withHeatLoss(Quantity<Power> loss) {
        return new Climate(air, below, Optional.of(loss), surfaceLimit, filmBelow);
    }

    /**
     * The same climate with a surface limit.
     *
     * @param limit highest surface temperature wanted
     * @return the climate
     */
    public Climate withSurfaceLimit(Quantity<Temperature> limit) {
        return new Climate(air, below, heatLoss, Optional.of(limit), filmBelow);
    }

    /**
     * The same climate with another film under the floor.
     *
     * @param film film coefficient, 0 for no heat flow
     * @return the climate
     */
    public Climate withFilmBelow(Quantity<HeatTransferCoefficient> film) {
        return new Climate(air, below, heatLoss, surfaceLimit, film);
    }

    double airKelvin() {
        return Si.kelvin("climate air", air);
    }

    double belowKelvin() {
        return Si.kelvin("climate below", below);
    }

    double filmBelowSi() {
        return Si.in("climate filmBelow", filmBelow, Units.WATT_PER_SQUARE_METRE_KELVIN);
    }
}
