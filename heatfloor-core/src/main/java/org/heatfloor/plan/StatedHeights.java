package org.heatfloor.plan;

import java.util.List;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.HeightPart;
import org.heatfloor.takeoff.TakeOffBuilder;
import org.heatfloor.thermal.BuildUp;
import org.heatfloor.thermal.Layer;

/** Tells the take-off what thicknesses the build-up states, so that it can hold them against trowels, membrane and tile. */
final class StatedHeights {

    private StatedHeights() {}

    /** Layers above the heated one are the tile, the heated one is membrane and bed over it, the next is the bed under it. */
    static TakeOffBuilder of(TakeOffBuilder builder, BuildUp buildUp) {
        List<Layer> layers = buildUp.layers();
        int heated = layers.indexOf(buildUp.heatedLayer());
        TakeOffBuilder out = builder;
        double above = 0;
        for (Layer layer : layers.subList(0, heated)) {
            above += Si.in("thickness", layer.thickness(), Units.METRE);
        }
        if (heated > 0) {
            out = out.stated(HeightPart.TILE, layers.get(0).name(), Amounts.metres(above));
        }
        out = out.stated(
                HeightPart.MEMBRANE_AND_UPPER_BED,
                layers.get(heated).name(),
                layers.get(heated).thickness());
        if (heated + 1 < layers.size()) {
            Layer under = layers.get(heated + 1);
            if (under.name().toLowerCase(java.util.Locale.ROOT).contains("mortar")) {
                out = out.stated(HeightPart.LOWER_BED, under.name(), under.thickness());
            }
        }
        return out;
    }
}
