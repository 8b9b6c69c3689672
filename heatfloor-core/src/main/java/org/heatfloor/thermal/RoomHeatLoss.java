package org.heatfloor.thermal;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
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
 * @param airChangesPerHour air changes an hour, 0 or more
 */
public record RoomHeatLoss(List<Element> fabric, Quantity<Volume> volume, double airChangesPerHour) {

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
            String name, Quantity<Area> area, Quantity<HeatTransferCoefficient> transmittance, double factor) {

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
            if (!(factor >= 0 && factor <= 1)) {
                throw new IllegalArgumentException(name + " factor: " + factor + " was given; 0 to 1 is expected");
            }
        }
    }

    /**
     * Checks the figures.
     *
     * @param fabric walls, windows, roof and floor
     * @param volume air volume
     * @param airChangesPerHour air changes an hour, 0 or more
     * @throws IllegalArgumentException if volume or air changes are negative or not finite
     */
    public RoomHeatLoss {
        fabric = List.copyOf(fabric);
        Si.notNegative("volume", volume, Units.CUBIC_METRE);
        if (!(airChangesPerHour >= 0 && airChangesPerHour <= 100)) {
            throw new IllegalArgumentException(
                    "airChangesPerHour: " + airChangesPerHour + " was given; 0 to 100 is expected");
        }
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
                    * e.factor();
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
                AIR_WATT_HOURS * airChangesPerHour * Si.in("volume", volume, Units.CUBIC_METRE), Units.WATT_PER_KELVIN);
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
