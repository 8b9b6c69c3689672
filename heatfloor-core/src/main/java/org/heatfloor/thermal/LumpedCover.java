package org.heatfloor.thermal;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.HeatFlux;
import org.heatfloor.quantity.HeatTransferCoefficient;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.TemperatureDifference;
import org.heatfloor.quantity.Units;

/**
 * Layers over a perfect insulation taken as one lump: {@code ΔT = (q/h)·(1 − exp(−t/τ))}, {@code τ = C/h} (from memory:
 * heat transfer textbooks, lumped capacity). A quick lower bound; {@link HeatUp} is the real thing.
 */
public final class LumpedCover {

    /** Heat capacity of a square metre, J/(m²·K). */
    private final double capacity;
    /** Film coefficient, W/(m²·K). */
    private final double film;

    private LumpedCover(double capacity, double film) {
        this.capacity = capacity;
        this.film = film;
    }

    /**
     * Lumps layers.
     *
     * @param layers the layers above the insulation
     * @param film film coefficient, above 0
     * @return the lump
     * @throws IllegalArgumentException if there is no layer or the film is not above 0
     */
    public static LumpedCover of(List<Layer> layers, Quantity<HeatTransferCoefficient> film) {
        if (layers.isEmpty()) {
            throw new IllegalArgumentException("layers: none was given; at least one is expected");
        }
        double sum = 0;
        for (Layer layer : layers) {
            Material material = Material.named(layer.name()).orElse(Material.UNKNOWN);
            sum += Si.in("thickness", layer.thickness(), Units.METRE)
                    * Si.in("density", layer.density().orElse(material.density()), Units.KILOGRAM_PER_CUBIC_METRE)
                    * Si.in(
                            "heatCapacity",
                            layer.heatCapacity().orElse(material.heatCapacity()),
                            Units.JOULE_PER_KILOGRAM_KELVIN);
        }
        return new LumpedCover(sum, Si.positive("film", film, Units.WATT_PER_SQUARE_METRE_KELVIN));
    }

    /**
     * Time constant.
     *
     * @return {@code C/h}
     */
    public Quantity<Time> timeConstant() {
        return Amounts.seconds(capacity / film);
    }

    /**
     * Time to a rise.
     *
     * @param flux heat into the lump, above 0
     * @param rise the rise wanted, 0 or more
     * @return the time; empty when the flux never gets there
     */
    public Optional<Quantity<Time>> timeToRise(Quantity<HeatFlux> flux, Quantity<TemperatureDifference> rise) {
        double q = Si.positive("flux", flux, Units.WATT_PER_SQUARE_METRE);
        double share = Si.notNegative("rise", rise, Units.KELVIN_DIFFERENCE) * film / q;
        return share < 1 ? Optional.of(Amounts.seconds(-capacity / film * Math.log1p(-share))) : Optional.empty();
    }

    /** Heat capacity of a square metre, J/(m²·K). */
    double capacity() {
        return capacity;
    }
}
