package org.heatfloor.thermal;

import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** The build-up as SI numbers, top to bottom. */
final class LayerStack {

    /** Thickness of each layer, m. */
    final double[] thicknessMetres;
    /** Conductivity of each layer, W/(m·K). */
    final double[] conductivity;
    /** Heat capacity of each layer by volume, J/(m³·K). */
    final double[] volumetricHeat;
    /** Contact resistance under each layer but the last, m²·K/W. */
    final double[] contact;
    /** Which layer holds the cable. */
    final int heated;

    private LayerStack(double[] thickness, double[] conductivity, double[] heat, double[] contact, int heated) {
        this.thicknessMetres = thickness;
        this.conductivity = conductivity;
        this.volumetricHeat = heat;
        this.contact = contact;
        this.heated = heated;
    }

    static LayerStack of(BuildUp buildUp) {
        int n = buildUp.layers().size();
        double[] thickness = new double[n];
        double[] conductivity = new double[n];
        double[] heat = new double[n];
        double[] contact = new double[n - 1];
        for (int i = 0; i < n; i++) {
            Layer layer = buildUp.layers().get(i);
            Material material = Material.named(layer.name()).orElse(Material.UNKNOWN);
            thickness[i] = Si.in("thickness", layer.thickness(), Units.METRE);
            conductivity[i] = Si.in("conductivity", layer.conductivity(), Units.WATT_PER_METRE_KELVIN);
            double density =
                    Si.in("density", layer.density().orElse(material.density()), Units.KILOGRAM_PER_CUBIC_METRE);
            double capacity = Si.in(
                    "heatCapacity",
                    layer.heatCapacity().orElse(material.heatCapacity()),
                    Units.JOULE_PER_KILOGRAM_KELVIN);
            heat[i] = density * capacity;
            if (i < n - 1) {
                contact[i] = Si.in("contact", buildUp.contacts().get(i), Units.SQUARE_METRE_KELVIN_PER_WATT);
            }
        }
        return new LayerStack(thickness, conductivity, heat, contact, buildUp.heatedIndex());
    }

    int size() {
        return thicknessMetres.length;
    }

    double resistanceAboveHeated() {
        double sum = 0;
        for (int i = 0; i < heated; i++) {
            sum += thicknessMetres[i] / conductivity[i] + contact[i];
        }
        return sum;
    }

    double resistanceBelowHeated() {
        double sum = 0;
        for (int i = heated + 1; i < size(); i++) {
            sum += thicknessMetres[i] / conductivity[i] + contact[i - 1];
        }
        return sum;
    }

    /** Metres from the cable's axis up to the walking surface. */
    double coverMetres(double axisHeightMetres) {
        double sum = thicknessMetres[heated] - axisHeightMetres;
        for (int i = 0; i < heated; i++) {
            sum += thicknessMetres[i];
        }
        return sum;
    }
}
