package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.HeatFlux;
import org.heatfloor.quantity.HeatTransferCoefficient;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.TemperatureDifference;
import org.heatfloor.quantity.ThermalConductivity;
import org.heatfloor.quantity.ThermalInsulance;
import org.heatfloor.quantity.Units;

/**
 * The characteristic of a water-heated floor with pipes in the screed, {@code q = KH·ΔθH} (from memory: EN 1264-2, type A;
 * its tables were not read). Kept for comparison only: a cable imposes its power, a pipe its temperature, and the series of
 * {@link SteadySection} needs no tables. A two-dimensional solve of the same floors lies 0.5 % above to 13 % below it.
 */
public final class HydronicCharacteristic {

    private static final double FILM = 10.8;
    private static final double PIPE = 6.7;
    private static final double[] COVERING = {0, 0.05, 0.10, 0.15};
    private static final double[] SPACING_FACTOR = {1.23, 1.188, 1.156, 1.134};
    private static final double[] SPACING = {0.050, 0.075, 0.100, 0.150, 0.200, 0.225, 0.300, 0.375};
    private static final double[][] COVER_FACTOR = {
        {1.069, 1.056, 1.043, 1.037},
        {1.066, 1.053, 1.041, 1.035},
        {1.063, 1.050, 1.039, 1.0335},
        {1.057, 1.046, 1.035, 1.0305},
        {1.051, 1.041, 1.0315, 1.0275},
        {1.048, 1.038, 1.0295, 1.026},
        {1.0395, 1.031, 1.024, 1.021},
        {1.030, 1.0221, 1.0181, 1.015}
    };
    private static final double[][] DIAMETER_FACTOR = {
        {1.013, 1.013, 1.012, 1.011},
        {1.021, 1.019, 1.016, 1.014},
        {1.029, 1.025, 1.022, 1.018},
        {1.040, 1.034, 1.029, 1.024},
        {1.046, 1.040, 1.035, 1.030},
        {1.049, 1.043, 1.038, 1.033},
        {1.053, 1.049, 1.044, 1.039},
        {1.056, 1.051, 1.046, 1.042}
    };

    private HydronicCharacteristic() {}

    /**
     * {@code KH} for pipes of 0.35 W/(m·K) and 2 mm wall.
     *
     * @param spacing pipe spacing, 50 mm to 375 mm
     * @param cover screed over the pipes, 10 mm to 100 mm
     * @param diameter outer diameter, 8 mm to 30 mm
     * @param screed conductivity of the screed
     * @param covering resistance of the covering, 0 to 0.15 m²·K/W
     * @return the coefficient
     * @throws IllegalArgumentException if a figure lies outside the method's range
     */
    public static Quantity<HeatTransferCoefficient> coefficient(
            Quantity<Length> spacing,
            Quantity<Length> cover,
            Quantity<Length> diameter,
            Quantity<ThermalConductivity> screed,
            Quantity<ThermalInsulance> covering) {
        double t = Si.within("spacing", spacing, Units.METRE, 0.05, 0.375);
        double su = Si.within("cover", cover, Units.METRE, 0.010, 0.100);
        double d = Si.within("diameter", diameter, Units.METRE, 0.008, 0.030);
        double k = Si.within("screed", screed, Units.WATT_PER_METRE_KELVIN, 0.1, 5);
        double r = Si.within("covering", covering, Units.SQUARE_METRE_KELVIN_PER_WATT, 0, 0.15);
        double covered = (1 / FILM + 0.045) / (1 / FILM + 0.045 / k + r);
        double aT = along(COVERING, SPACING_FACTOR, r);
        double aU = table(COVER_FACTOR, t, r);
        double aD = table(DIAMETER_FACTOR, t, r);
        return Amounts.of(
                PIPE
                        * covered
                        * Math.pow(aT, 1 - t / 0.075)
                        * Math.pow(aU, 100 * (0.045 - su))
                        * Math.pow(aD, 250 * (d - 0.020)),
                Units.WATT_PER_SQUARE_METRE_KELVIN);
    }

    /**
     * Logarithmic mean of the water's excess over the room.
     *
     * @param flow flow temperature, above the return
     * @param back return temperature, above the room
     * @param room room temperature
     * @return {@code (θV − θR)/ln((θV − θi)/(θR − θi))}
     * @throws IllegalArgumentException unless flow, return and room fall in that order
     */
    public static Quantity<TemperatureDifference> meanExcess(
            Quantity<Temperature> flow, Quantity<Temperature> back, Quantity<Temperature> room) {
        double hot = Si.kelvin("flow", flow);
        double cool = Si.kelvin("back", back);
        double air = Si.kelvin("room", room);
        if (!(hot > cool && cool > air)) {
            throw new IllegalArgumentException("flow, return, room: " + flow + ", " + back + ", " + room
                    + " were given; falling temperatures are expected");
        }
        return Amounts.kelvins((hot - cool) / Math.log((hot - air) / (cool - air)));
    }

    /**
     * Flux downwards, {@code (RO·q + θi − θu)/RU}.
     *
     * @param upward flux upwards
     * @param above resistance from the heated layer up, film included
     * @param below resistance from the heated layer down, film included
     * @param excess room less temperature below
     * @return the flux
     */
    public static Quantity<HeatFlux> downward(
            Quantity<HeatFlux> upward,
            Quantity<ThermalInsulance> above,
            Quantity<ThermalInsulance> below,
            Quantity<TemperatureDifference> excess) {
        return Amounts.of(
                (Si.in("above", above, Units.SQUARE_METRE_KELVIN_PER_WATT)
                                        * Si.in("upward", upward, Units.WATT_PER_SQUARE_METRE)
                                + Si.in("excess", excess, Units.KELVIN_DIFFERENCE))
                        / Si.positive("below", below, Units.SQUARE_METRE_KELVIN_PER_WATT),
                Units.WATT_PER_SQUARE_METRE);
    }

    private static double table(double[][] rows, double spacing, double covering) {
        double[] column = new double[SPACING.length];
        for (int i = 0; i < column.length; i++) {
            column[i] = along(COVERING, rows[i], covering);
        }
        return along(SPACING, column, spacing);
    }

    private static double along(double[] at, double[] values, double x) {
        int i = 0;
        while (i < at.length - 2 && x > at[i + 1]) {
            i++;
        }
        return values[i] + (values[i + 1] - values[i]) * (x - at[i]) / (at[i + 1] - at[i]);
    }
}
