package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.HeatTransferCoefficient;
import org.heatfloor.quantity.LinearPower;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.TemperatureDifference;
import org.heatfloor.quantity.ThermalConductivity;
import org.heatfloor.quantity.Units;

/** Heat through round shells: jacket, air gap and bare cable. */
public final class RadialConduction {

    /** Still air, W/(m·K). */
    private static final double AIR = 0.026;

    private RadialConduction() {}

    /**
     * Temperature drop over a shell, {@code q′·ln(ro/ri)/(2πk)}.
     *
     * @param power power a metre
     * @param innerRadius inner radius, above 0
     * @param outerRadius outer radius, not less than the inner
     * @param conductivity of the shell
     * @return the drop
     * @throws IllegalArgumentException if a radius or the conductivity is not above 0 or the radii are swapped
     */
    public static Quantity<TemperatureDifference> shell(
            Quantity<LinearPower> power,
            Quantity<Length> innerRadius,
            Quantity<Length> outerRadius,
            Quantity<ThermalConductivity> conductivity) {
        double inner = Si.positive("innerRadius", innerRadius, Units.METRE);
        double outer = Si.positive("outerRadius", outerRadius, Units.METRE);
        if (!(outer >= inner)) {
            throw new IllegalArgumentException("outerRadius: " + outerRadius
                    + " was given; at least the inner radius of " + innerRadius + " is expected");
        }
        double k = Si.positive("conductivity", conductivity, Units.WATT_PER_METRE_KELVIN);
        double q = Si.notNegative("power", power, Units.WATT_PER_METRE);
        return Amounts.kelvins(q * Math.log(outer / inner) / (2 * Math.PI * k));
    }

    /**
     * Temperature drop over a gap of still air around a cable, its conductivity 0.026 W/(m·K).
     *
     * @param power power a metre
     * @param radius of the cable
     * @param gap thickness of the air
     * @return the drop a badly filled channel adds to the sheath
     */
    public static Quantity<TemperatureDifference> airGap(
            Quantity<LinearPower> power, Quantity<Length> radius, Quantity<Length> gap) {
        return shell(power, radius, radius.add(gap), Amounts.wattsPerMetreKelvin(AIR));
    }

    /**
     * Temperature drop over the film around a bare cable, {@code q′/(2πr·h)}.
     *
     * @param power power a metre
     * @param radius outer radius
     * @param film film coefficient
     * @return the drop
     */
    public static Quantity<TemperatureDifference> film(
            Quantity<LinearPower> power, Quantity<Length> radius, Quantity<HeatTransferCoefficient> film) {
        return Amounts.kelvins(Si.notNegative("power", power, Units.WATT_PER_METRE)
                / (2
                        * Math.PI
                        * Si.positive("radius", radius, Units.METRE)
                        * Si.positive("film", film, Units.WATT_PER_SQUARE_METRE_KELVIN)));
    }

    /**
     * Radius at which more insulation around a bare cable begins to warm it, {@code k/h} (Çengel, Heat and Mass Transfer).
     *
     * @param conductivity of the insulation
     * @param film film coefficient
     * @return the radius
     */
    public static Quantity<Length> criticalRadius(
            Quantity<ThermalConductivity> conductivity, Quantity<HeatTransferCoefficient> film) {
        return Amounts.metres(Si.positive("conductivity", conductivity, Units.WATT_PER_METRE_KELVIN)
                / Si.positive("film", film, Units.WATT_PER_SQUARE_METRE_KELVIN));
    }
}
