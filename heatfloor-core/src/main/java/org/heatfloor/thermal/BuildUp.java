package org.heatfloor.thermal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.ThermalInsulance;
import org.heatfloor.quantity.Units;

/**
 * The layers of the floor from the walking surface down, exactly one of them heated.
 *
 * @param layers the layers, top to bottom
 * @param contacts the contact resistance under each layer but the last, top to bottom
 */
public record BuildUp(List<Layer> layers, List<Quantity<ThermalInsulance>> contacts) {

    private static final int MOST_LAYERS = 60;
    private static final double TOO_FAR = 3;
    private static final double LEAST_USUAL = 0.02;
    private static final double MOST_USUAL = 5;

    /**
     * Checks the stack.
     *
     * @param layers the layers, top to bottom
     * @param contacts the contact resistance under each layer but the last, top to bottom
     * @throws IllegalArgumentException if there is no layer or more than 60, not exactly one heated layer, or not one
     *     contact resistance of 0 or more between every two layers
     */
    public BuildUp {
        layers = List.copyOf(layers);
        contacts = List.copyOf(contacts);
        if (layers.isEmpty() || layers.size() > MOST_LAYERS) {
            throw new IllegalArgumentException(
                    "buildUp: " + layers.size() + " layers were given; 1 to " + MOST_LAYERS + " are expected");
        }
        long heated = layers.stream().filter(Layer::heated).count();
        if (heated != 1) {
            throw new IllegalArgumentException(
                    "buildUp: " + heated + " layers are heated; exactly one heated layer is expected");
        }
        if (contacts.size() != layers.size() - 1) {
            throw new IllegalArgumentException("buildUp contacts: " + contacts.size() + " were given; one between every"
                    + " two layers, " + (layers.size() - 1) + ", is expected");
        }
        for (Quantity<ThermalInsulance> contact : contacts) {
            Si.notNegative("buildUp contact", contact, Units.SQUARE_METRE_KELVIN_PER_WATT);
        }
    }

    /**
     * Layers in perfect contact.
     *
     * @param layers the layers, top to bottom
     * @return the build-up
     * @throws IllegalArgumentException if there is no layer or not exactly one is heated
     */
    public static BuildUp of(List<Layer> layers) {
        List<Quantity<ThermalInsulance>> none = new ArrayList<>();
        for (int i = 1; i < layers.size(); i++) {
            none.add(Amounts.of(0, Units.SQUARE_METRE_KELVIN_PER_WATT));
        }
        return new BuildUp(layers, none);
    }

    /**
     * The same build-up with a contact resistance under one layer.
     *
     * @param layerIndex the layer above the contact, counted from 0 at the top
     * @param resistance the contact resistance, 0 or more
     * @return the build-up
     * @throws IllegalArgumentException if there is no contact under that layer
     */
    public BuildUp withContactUnder(int layerIndex, Quantity<ThermalInsulance> resistance) {
        if (!(layerIndex >= 0 && layerIndex < contacts.size())) {
            throw new IllegalArgumentException(
                    "layerIndex: " + layerIndex + " was given; 0 to " + (contacts.size() - 1) + " is expected");
        }
        List<Quantity<ThermalInsulance>> changed = new ArrayList<>(contacts);
        changed.set(layerIndex, resistance);
        return new BuildUp(layers, changed);
    }

    /**
     * The same build-up with a covering laid on top.
     *
     * @param covering the covering, not heated
     * @return the build-up
     */
    public BuildUp coveredBy(Layer covering) {
        List<Layer> more = new ArrayList<>(layers);
        more.add(0, covering);
        List<Quantity<ThermalInsulance>> moreContacts = new ArrayList<>(contacts);
        moreContacts.add(0, Amounts.of(0, Units.SQUARE_METRE_KELVIN_PER_WATT));
        return new BuildUp(more, moreContacts);
    }

    /**
     * The same build-up with a layer, such as an insulating board, put in straight under the heated layer.
     *
     * @param board the layer, not heated
     * @return the build-up
     */
    public BuildUp withLayerUnderHeated(Layer board) {
        int at = heatedIndex() + 1;
        List<Layer> more = new ArrayList<>(layers);
        more.add(at, board);
        List<Quantity<ThermalInsulance>> moreContacts = new ArrayList<>(contacts);
        moreContacts.add(at - 1, Amounts.of(0, Units.SQUARE_METRE_KELVIN_PER_WATT));
        return new BuildUp(more, moreContacts);
    }

    /**
     * The layer the cable lies in.
     *
     * @return the heated layer
     */
    public Layer heatedLayer() {
        return layers.get(heatedIndex());
    }

    /**
     * Thickness of the whole build-up.
     *
     * @return the sum of the layers' thicknesses
     */
    public Quantity<Length> thickness() {
        double sum = 0;
        for (Layer layer : layers) {
            sum += Si.in("thickness", layer.thickness(), Units.METRE);
        }
        return Amounts.metres(sum);
    }

    /**
     * Resistance from the underside of the heated layer to the underside of the build-up, films not counted.
     *
     * @return the resistance
     */
    public Quantity<ThermalInsulance> resistanceBelowHeatedLayer() {
        return Amounts.of(LayerStack.of(this).resistanceBelowHeated(), Units.SQUARE_METRE_KELVIN_PER_WATT);
    }

    /**
     * Resistance from the top of the heated layer to the walking surface, film not counted.
     *
     * @return the resistance
     */
    public Quantity<ThermalInsulance> resistanceAboveHeatedLayer() {
        return Amounts.of(LayerStack.of(this).resistanceAboveHeated(), Units.SQUARE_METRE_KELVIN_PER_WATT);
    }

    /**
     * What was assumed where a layer's density or heat capacity was left out.
     *
     * @return one note a layer taken from the material table, one warning a layer that matched nothing there
     */
    public List<Finding> storageFindings() {
        List<Finding> findings = new ArrayList<>();
        for (Layer layer : layers) {
            if (layer.density().isPresent() && layer.heatCapacity().isPresent()) {
                continue;
            }
            boolean known = Material.named(layer.name()).isPresent();
            Material material = Material.named(layer.name()).orElse(Material.UNKNOWN);
            findings.add(Finding.of(
                    known ? Severity.NOTE : Severity.WARNING,
                    layer.name(),
                    (known
                                    ? "Density and heat capacity taken as those of "
                                    : "No material of this name is known;" + " heat-up is reckoned with those of ")
                            + material.name() + "; temperatures at steady power do not depend on them.",
                    material.source()));
        }
        return List.copyOf(findings);
    }

    /**
     * Conductivities far from what the table has for a layer of that name, as a wrong unit or a slip of the point makes them.
     *
     * @return one warning a layer that lies more than three times above or below the table's value, or, where the table does
     *     not know the name, outside 0.02 to 5 W/(m·K)
     */
    public List<Finding> conductivityFindings() {
        List<Finding> findings = new ArrayList<>();
        for (Layer layer : layers) {
            Optional<Material> known = Material.named(layer.name());
            double given = Si.in("conductivity", layer.conductivity(), Units.WATT_PER_METRE_KELVIN);
            double table = Si.in(
                    "conductivity",
                    known.map(Material::conductivity).orElse(layer.conductivity()),
                    Units.WATT_PER_METRE_KELVIN);
            double least = known.isPresent() ? table / TOO_FAR : LEAST_USUAL;
            double most = known.isPresent() ? table * TOO_FAR : MOST_USUAL;
            // The filled membrane takes its conductivity from the mortar in it.
            boolean mixture = layer.heated() && given <= MOST_USUAL && given >= LEAST_USUAL;
            if (mixture || (given >= least && given <= most)) {
                continue;
            }
            findings.add(Finding.of(
                    Severity.WARNING,
                    layer.name(),
                    HeatFindings.text(
                            "Its conductivity of %.4g W/(m·K) is far from %s; see whether unit and decimal point are right.",
                            given,
                            known.map(m -> HeatFindings.text("the %.3g W/(m·K) of %s", table, m.name()))
                                    .orElse("that of any building material")),
                    layer.conductivity(),
                    Amounts.wattsPerMetreKelvin(given > most ? most : least),
                    known.map(Material::source).orElse(Source.commonPractice("conductivity of building materials"))));
        }
        return List.copyOf(findings);
    }

    int heatedIndex() {
        for (int i = 0; i < layers.size(); i++) {
            if (layers.get(i).heated()) {
                return i;
            }
        }
        throw new IllegalStateException("buildUp: no heated layer");
    }
}
