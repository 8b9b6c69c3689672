package org.heatfloor.thermal;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * How the mean surface temperature rises at full power: the layers in one dimension, finite volumes through the depth and
 * exact in time for one film. The surface law is kept as the floor warms: what its film differs from the steady one is heat
 * at the surface, taken as even over steps that grow by a thirtieth.
 */
public final class HeatUp {

    private final HeatUpPath path;
    private final double reference;

    private HeatUp(HeatUpPath path, double reference) {
        this.path = path;
        this.reference = reference;
    }

    /**
     * Heat-up from cold: every layer at the room's air temperature when the power comes on.
     *
     * @param buildUp the layers
     * @param climate room and space below
     * @param law how the surface gives off heat
     * @param cable the cable
     * @param spacing distance of neighbouring cables
     * @return the heat-up
     * @throws IllegalArgumentException if the cable reaches out of its layer or the spacing is not more than its diameter and at
     *     most 10 m
     */
    public static HeatUp fromCold(
            BuildUp buildUp, Climate climate, SurfaceLaw law, EmbeddedCable cable, Quantity<Length> spacing) {
        cable.checkInside(buildUp);
        double flux = cable.powerSi() / cable.checkSpacing(spacing);
        LayerStack stack = LayerStack.of(buildUp);
        ModeTransfer transfer = new ModeTransfer(stack, cable.axisHeightMetres(), climate.filmBelowSi());
        double air = climate.airKelvin();
        double below = climate.belowKelvin();
        MeanBalance steady =
                MeanBalance.solve(flux, transfer.resistanceAbove(), transfer.admittanceBelow(0), law, air, below);
        double film = Math.max(steady.film(), 1e-6);
        ThermalColumn column = ThermalColumn.of(stack, cable.axisHeightMetres(), film, climate.filmBelowSi(), 0);
        double[] end = column.steady(flux, steady.ambientKelvin() - air, below - air);
        FilmExcess excess = new FilmExcess(law, air, film, steady.ambientKelvin());
        return new HeatUp(new HeatUpPath(column, excess, column.uniform(0), end), air);
    }

    /**
     * The same floor, but held at a lower surface temperature when full power comes on.
     *
     * @param surface the surface temperature it was held at, steady
     * @return the heat-up
     * @throws IllegalArgumentException if the temperature is not absolute
     */
    public HeatUp fromSetback(Quantity<Temperature> surface) {
        return new HeatUp(path.heldAt(Si.kelvin("surface", surface) - reference), reference);
    }

    /**
     * Mean surface temperature some time after power came on.
     *
     * @param time the time, 0 or more
     * @return the temperature
     * @throws IllegalArgumentException if the time is negative
     */
    public Quantity<Temperature> surfaceAfter(Quantity<Time> time) {
        return SteadySection.celsius(reference + path.rise(Si.notNegative("time", time, Units.SECOND)));
    }

    /**
     * Mean surface temperature power leads to.
     *
     * @return the steady mean
     */
    public Quantity<Temperature> steadySurface() {
        return SteadySection.celsius(reference + path.endRise());
    }

    /**
     * Time until the surface has risen by a share of its whole rise.
     *
     * @param share above 0, below 1
     * @return the time; empty when the surface does not rise
     * @throws IllegalArgumentException if the share lies outside
     */
    public Optional<Quantity<Time>> timeToShare(Quantity<Dimensionless> share) {
        double s = Si.in("share", share, Units.ONE);
        if (!(s > 0 && s < 1)) {
            throw new IllegalArgumentException(
                    "share: " + share + " was given; more than 0 and less than 1 is expected");
        }
        double from = path.rise(0);
        double to = path.endRise();
        return to > from ? path.timeTo(from + s * (to - from)).map(Amounts::seconds) : Optional.empty();
    }

    /**
     * Time until the mean surface temperature reaches a value.
     *
     * @param surface the temperature wanted
     * @return the time, 0 when it is there already; empty when full power never gets there
     * @throws IllegalArgumentException if the temperature is not absolute
     */
    public Optional<Quantity<Time>> timeTo(Quantity<Temperature> surface) {
        return path.timeTo(Si.kelvin("surface", surface) - reference).map(Amounts::seconds);
    }

    /**
     * Slowest time constant of the floor.
     *
     * @return the time constant
     */
    public Quantity<Time> slowestTimeConstant() {
        return Amounts.seconds(path.slowestSeconds());
    }
}
