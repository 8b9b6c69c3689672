package org.heatfloor.thermal;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Power;
import javax.measure.quantity.Volume;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.HeatLossCoefficient;
import org.heatfloor.quantity.HeatTransferCoefficient;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.TemperatureDifference;
import org.heatfloor.quantity.Units;

/**
 * Heat a room loses, the quick way: transmission {@code Σ A·U·f} and ventilation {@code 0.34·n·V} in W/K with {@code n} in
 * 1/h and {@code V} in m³ (from memory: EN 12831, simplified). Not a substitute for a calculation to EN 12831.
 *
 * @param fabric walls, windows, roof and floor
 * @param volume air volume
 * @param airChange air changes a time, 0 to 100 an hour, see {@link #CHANGES_PER_HOUR}
 */
public record RoomHeatLoss(List<Element> fabric, Quantity<Volume> volume, Quantity<Frequency> airChange) {

    /** One air change an hour. */
    public static final Unit<Frequency> CHANGES_PER_HOUR = Units.HERTZ.divide(3600);

    private static final double AIR_WATT_HOURS = 0.34;

    /**
     * One part of the fabric.
     *
     * @param name the part
     * @param area its area
     * @param transmittance its U-value
     * @param factor temperature factor, 1 against outdoor air, less against unheated rooms
     */
    public record Element(
            String name,
            Quantity<Area> area,
            Quantity<HeatTransferCoefficient> transmittance,
            Quantity<Dimensionless> factor) {

        /**
         * Checks the figures.
         *
         * @param name the part
         * @param area its area
         * @param transmittance its U-value
         * @param factor temperature factor, 1 against outdoor air, less against unheated rooms
         * @throws IllegalArgumentException if area or U-value is negative or the factor not 0 to 1
         */
        public Element {
            Si.notNegative(name + " area", area, Units.SQUARE_METRE);
            Si.notNegative(name + " transmittance", transmittance, Units.WATT_PER_SQUARE_METRE_KELVIN);
            Si.within(name + " factor", factor, Units.ONE, 0, 1);
        }
    }

    /**
     * Checks the figures.
     *
     * @param fabric walls, windows, roof and floor
     * @param volume air volume
     * @param airChange air changes a time, 0 to 100 an hour, see {@link #CHANGES_PER_HOUR}
     * @throws IllegalArgumentException if the volume is negative or the air changes not 0 to 100 an hour
     */
    public RoomHeatLoss {
        fabric = List.copyOf(fabric);
        Si.notNegative("volume", volume, Units.CUBIC_METRE);
        Si.within("airChange", airChange, CHANGES_PER_HOUR, 0, 100);
    }

    /**
     * Loss a kelvin through the fabric.
     *
     * @return {@code Σ A·U·f}
     */
    public Quantity<HeatLossCoefficient> transmission() {
        double sum = 0;
        for (Element e : fabric) {
            sum += Si.in("area", e.area(), Units.SQUARE_METRE)
                    * Si.in("transmittance", e.transmittance(), Units.WATT_PER_SQUARE_METRE_KELVIN)
                    * Si.in("factor", e.factor(), Units.ONE);
        }
        return Amounts.of(sum, Units.WATT_PER_KELVIN);
    }

    /**
     * Loss a kelvin with the air.
     *
     * @return {@code 0.34·n·V}
     */
    public Quantity<HeatLossCoefficient> ventilation() {
        return Amounts.of(
                AIR_WATT_HOURS
                        * Si.in("airChange", airChange, CHANGES_PER_HOUR)
                        * Si.in("volume", volume, Units.CUBIC_METRE),
                Units.WATT_PER_KELVIN);
    }

    /**
     * Loss a kelvin altogether.
     *
     * @return transmission and ventilation
     */
    public Quantity<HeatLossCoefficient> total() {
        return transmission().add(ventilation());
    }

    /**
     * Loss at a temperature difference.
     *
     * @param difference indoor less outdoor temperature
     * @return the heat lost
     */
    public Quantity<Power> at(Quantity<TemperatureDifference> difference) {
        return Amounts.watts(Si.in("total", total(), Units.WATT_PER_KELVIN)
                * Si.in("difference", difference, Units.KELVIN_DIFFERENCE));
    }
}
