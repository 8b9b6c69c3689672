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
 * exact in time. The surface film is held at what the law gives for the steady state.
 */
public final class HeatUp {

    private static final double LONGEST_SECONDS = 3.2e9;

    private final ThermalColumn column;
    private final double reference;
    private final double[] start;
    private final double[] end;

    private HeatUp(ThermalColumn column, double reference, double[] start, double[] end) {
        this.column = column;
        this.reference = reference;
        this.start = start;
        this.end = end;
    }

    /**
     * Heat-up from cold: everything at the air temperature when the power comes on.
     *
     * @param buildUp the layers
     * @param climate room and space below
     * @param law how the surface gives off heat
     * @param cable the cable
     * @param spacing distance of neighbouring cables
     * @return the heat-up
     * @throws IllegalArgumentException if the cable reaches out of its layer or the spacing is not above 0
     */
    public static HeatUp fromCold(
            BuildUp buildUp, Climate climate, SurfaceLaw law, EmbeddedCable cable, Quantity<Length> spacing) {
        cable.checkInside(buildUp);
        double flux = cable.powerSi() / Si.positive("spacing", spacing, Units.METRE);
        LayerStack stack = LayerStack.of(buildUp);
        ModeTransfer transfer = new ModeTransfer(stack, cable.axisHeightMetres(), climate.filmBelowSi());
        double air = climate.airKelvin();
        double below = climate.belowKelvin();
        MeanBalance steady =
                MeanBalance.solve(flux, transfer.resistanceAbove(), transfer.admittanceBelow(0), law, air, below);
        ThermalColumn column = ThermalColumn.of(
                stack, cable.axisHeightMetres(), Math.max(steady.film(), 1e-6), climate.filmBelowSi(), 0);
        double[] end = column.steady(flux, steady.ambientKelvin() - air, below - air);
        return new HeatUp(column, air, column.uniform(0), end);
    }

    /**
     * The same floor, but held at a lower surface temperature when full power comes on.
     *
     * @param surface the surface temperature it was held at, steady
     * @return the heat-up
     * @throws IllegalArgumentException if the temperature is not absolute
     */
    public HeatUp fromSetback(Quantity<Temperature> surface) {
        double rise = Si.kelvin("surface", surface) - reference;
        double[] unit = column.steady(1, 0, 0);
        double full = column.surface(end);
        double watts = (rise - full) / column.surface(unit);
        double[] held = new double[end.length];
        for (int i = 0; i < end.length; i++) {
            held[i] = end[i] + watts * unit[i];
        }
        return new HeatUp(column, reference, held, end);
    }

    /**
     * Mean surface temperature some time after power came on.
     *
     * @param time the time, 0 or more
     * @return the temperature
     * @throws IllegalArgumentException if the time is negative
     */
    public Quantity<Temperature> surfaceAfter(Quantity<Time> time) {
        return SteadySection.celsius(reference + rise(Si.notNegative("time", time, Units.SECOND)));
    }

    /**
     * Mean surface temperature power leads to.
     *
     * @return the steady mean
     */
    public Quantity<Temperature> steadySurface() {
        return SteadySection.celsius(reference + column.surface(end));
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
        double from = column.surface(start);
        double to = column.surface(end);
        return to > from ? timeToRise(from + s * (to - from)) : Optional.empty();
    }

    /**
     * Time until the mean surface temperature reaches a value.
     *
     * @param surface the temperature wanted
     * @return the time, 0 when it is there already; empty when full power never gets there
     * @throws IllegalArgumentException if the temperature is not absolute
     */
    public Optional<Quantity<Time>> timeTo(Quantity<Temperature> surface) {
        return timeToRise(Si.kelvin("surface", surface) - reference);
    }

    /**
     * Slowest time constant of the floor.
     *
     * @return the time constant
     */
    public Quantity<Time> slowestTimeConstant() {
        return Amounts.seconds(column.slowestSeconds());
    }

    private Optional<Quantity<Time>> timeToRise(double target) {
        if (rise(0) >= target) {
            return Optional.of(Amounts.seconds(0));
        }
        if (!(column.surface(end) > target)) {
            return Optional.empty();
        }
        double low = 0;
        double high = 1;
        while (rise(high) < target) {
            low = high;
            high *= 1.2;
            if (high > LONGEST_SECONDS) {
                return Optional.empty();
            }
        }
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            if (rise(middle) < target) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Optional.of(Amounts.seconds(high));
    }

    private double rise(double seconds) {
        return column.surface(column.after(start, end, seconds));
    }
}
