package org.heatfloor.thermal;

import javax.measure.Quantity;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.ThermalInsulance;
import org.heatfloor.quantity.Units;

/**
 * A rug, a mat or furniture without feet lying on part of the floor: a resistance between tile and room that carries no
 * heat sideways.
 *
 * @param name the cover's name
 * @param shape where it lies
 * @param resistance its resistance, above 0 and at most 10 m²·K/W
 */
public record FloorCover(String name, FloorShape shape, Quantity<ThermalInsulance> resistance) {

    /**
     * Checks the figures.
     *
     * @param name the cover's name
     * @param shape where it lies
     * @param resistance its resistance, above 0 and at most 10 m²·K/W
     * @throws IllegalArgumentException if the name is blank or the resistance not above 0 and at most 10 m²·K/W
     */
    public FloorCover {
        if (name.isBlank()) {
            throw new IllegalArgumentException(
                    "cover name: blank; the name of a rug, a mat or a piece of furniture is expected");
        }
        Si.positive("cover '" + name + "' resistance", resistance, Units.SQUARE_METRE_KELVIN_PER_WATT);
        Si.within("cover '" + name + "' resistance", resistance, Units.SQUARE_METRE_KELVIN_PER_WATT, 0, 10);
    }

    double resistanceSi() {
        return Si.in("resistance", resistance, Units.SQUARE_METRE_KELVIN_PER_WATT);
    }
}
