package org.heatfloor.thermal;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Density;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.SpecificHeatCapacity;
import org.heatfloor.quantity.ThermalConductivity;
import org.heatfloor.quantity.Units;

/**
 * One layer of the floor.
 *
 * @param name the material in the trade's words; density and heat capacity are looked up by it when they are left out
 * @param thickness thickness, above 0 and at most 5 m
 * @param conductivity thermal conductivity, 0.005 to 500 W/(m·K)
 * @param density density, where known
 * @param heatCapacity specific heat capacity, where known
 * @param heated whether the heating cable lies in this layer
 */
public record Layer(
        String name,
        Quantity<Length> thickness,
        Quantity<ThermalConductivity> conductivity,
        Optional<Quantity<Density>> density,
        Optional<Quantity<SpecificHeatCapacity>> heatCapacity,
        boolean heated) {

    /**
     * Checks the figures.
     *
     * @param name the material in the trade's words; density and heat capacity are looked up by it when they are left out
     * @param thickness thickness, above 0 and at most 5 m
     * @param conductivity thermal conductivity, 0.005 to 500 W/(m·K)
     * @param density density, where known
     * @param heatCapacity specific heat capacity, where known
     * @param heated whether the heating cable lies in this layer
     * @throws IllegalArgumentException if the name is blank, the thickness is not above 0 and at most 5 m, the
     *     conductivity is not 0.005 to 500 W/(m·K), the density not 1 to 25000 kg/m³ or the heat capacity not 50 to
     *     5000 J/(kg·K)
     */
    public Layer {
        Objects.requireNonNull(density, "density");
        Objects.requireNonNull(heatCapacity, "heatCapacity");
        if (name.isBlank()) {
            throw new IllegalArgumentException("layer name: blank; the name of a material is expected");
        }
        Si.positive("layer '" + name + "' thickness", thickness, Units.METRE);
        Si.within("layer '" + name + "' thickness", thickness, Units.METRE, 0, 5);
        Si.within("layer '" + name + "' conductivity", conductivity, Units.WATT_PER_METRE_KELVIN, 0.005, 500);
        density.ifPresent(d -> Si.within("layer '" + name + "' density", d, Units.KILOGRAM_PER_CUBIC_METRE, 1, 25_000));
        heatCapacity.ifPresent(
                c -> Si.within("layer '" + name + "' heatCapacity", c, Units.JOULE_PER_KILOGRAM_KELVIN, 50, 5_000));
    }

    /**
     * A layer without cable, its storage taken from the material table.
     *
     * @param name the material
     * @param thickness thickness
     * @param conductivity thermal conductivity
     * @return the layer
     */
    public static Layer of(String name, Quantity<Length> thickness, Quantity<ThermalConductivity> conductivity) {
        return new Layer(name, thickness, conductivity, Optional.empty(), Optional.empty(), false);
    }

    /**
     * The layer the cable lies in, its storage taken from the material table.
     *
     * @param name the material
     * @param thickness thickness
     * @param conductivity thermal conductivity
     * @return the layer
     */
    public static Layer heated(String name, Quantity<Length> thickness, Quantity<ThermalConductivity> conductivity) {
        return new Layer(name, thickness, conductivity, Optional.empty(), Optional.empty(), true);
    }

    /**
     * The same layer with its density and heat capacity given.
     *
     * @param ownDensity density
     * @param ownHeatCapacity specific heat capacity
     * @return the layer
     */
    public Layer withStorage(Quantity<Density> ownDensity, Quantity<SpecificHeatCapacity> ownHeatCapacity) {
        return new Layer(name, thickness, conductivity, Optional.of(ownDensity), Optional.of(ownHeatCapacity), heated);
    }
}
