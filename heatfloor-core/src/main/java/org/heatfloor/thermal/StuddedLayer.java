package org.heatfloor.thermal;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.ThermalConductivity;
import org.heatfloor.quantity.ThermalInsulance;
import org.heatfloor.quantity.Units;

/**
 * A membrane with round studs on a square lattice, filled with mortar. Beside the cable there is mortar, then studs; away
 * from it the studded height is one uniform layer of the parallel mixture {@code k = f·k_stud + (1 − f)·k_mortar}, {@code f
 * = π·d²/(4·p²)}, which is the upper bound (the lower is {@link #series}).
 *
 * <p>The uniform layer alone has the mean surface temperature right within 0.02 K, but the surface above a cable up to 0.6 K
 * too cool, since studs hinder heat sideways, and the sheath up to 0.4 K wrong either way. {@link SteadySection#studded} and
 * {@link FloorFieldBuilder#studs} put the studs back: one cell of the pattern is solved by finite volumes with the studs as
 * they are and with the mixture, and the differences are added to the exact series. Against a finer solve made apart from
 * it, eight build-ups: mean within 0.01 K, highest and lowest surface temperature within 0.03 K, sheath within 0.06 K (derived).
 *
 * @param studPitch distance of neighbouring stud centres
 * @param studDiameter diameter of a stud, less than the pitch
 * @param studHeight height of the studs
 * @param mortar conductivity of the mortar
 * @param stud conductivity of a stud with what fills it
 */
public record StuddedLayer(
        Quantity<Length> studPitch,
        Quantity<Length> studDiameter,
        Quantity<Length> studHeight,
        Quantity<ThermalConductivity> mortar,
        Quantity<ThermalConductivity> stud) {

    /**
     * Checks the figures.
     *
     * @param studPitch distance of neighbouring stud centres
     * @param studDiameter diameter of a stud, less than the pitch
     * @param studHeight height of the studs
     * @param mortar conductivity of the mortar
     * @param stud conductivity of a stud with what fills it
     * @throws IllegalArgumentException if a size is not above 0, the stud not smaller than the pitch or a conductivity not
     *     0.005 to 500 W/(m·K)
     */
    public StuddedLayer {
        double pitch = Si.positive("studPitch", studPitch, Units.METRE);
        double diameter = Si.positive("studDiameter", studDiameter, Units.METRE);
        Si.positive("studHeight", studHeight, Units.METRE);
        if (!(diameter < pitch)) {
            throw new IllegalArgumentException("studDiameter: " + studDiameter + " was given; less than the pitch of "
                    + studPitch + " is expected");
        }
        Si.within("mortar conductivity", mortar, Units.WATT_PER_METRE_KELVIN, 0.005, 500);
        Si.within("stud conductivity", stud, Units.WATT_PER_METRE_KELVIN, 0.005, 500);
    }

    /**
     * Share of the area under studs.
     *
     * @return {@code π·d²/(4·p²)}
     */
    public Quantity<Dimensionless> studShare() {
        return Amounts.of(share(), Units.ONE);
    }

    /**
     * Conductivity when stud and mortar conduct side by side, the upper bound.
     *
     * @return the parallel mixture
     */
    public Quantity<ThermalConductivity> parallel() {
        return Amounts.wattsPerMetreKelvin(share() * studSi() + (1 - share()) * mortarSi());
    }

    /**
     * Conductivity when stud and mortar conduct one after the other, the lower bound.
     *
     * @return the series mixture
     */
    public Quantity<ThermalConductivity> series() {
        return Amounts.wattsPerMetreKelvin(1 / (share() / studSi() + (1 - share()) / mortarSi()));
    }

    /**
     * The two layers that stand for mortar over the studs and the studded height; the second is heated.
     *
     * @param mortarOverStuds thickness of mortar over the stud tops, above 0
     * @return mortar, then studded layer
     */
    public List<Layer> layers(Quantity<Length> mortarOverStuds) {
        return List.of(
                Layer.of("mortar over the studs", mortarOverStuds, mortar),
                Layer.heated("membrane filled with mortar", studHeight, parallel()));
    }

    /**
     * The same build-up with the heated layer parted at the stud tops, so that the studs can be put into it.
     *
     * @param buildUp layers whose heated one is membrane and mortar over it, at least as thick as the studs are high
     * @return the build-up; mortar over the studs, then the studded height, which is heated
     * @throws IllegalArgumentException if the heated layer is thinner than the studs are high
     */
    public BuildUp partedAtStudTops(BuildUp buildUp) {
        Layer heated = buildUp.heatedLayer();
        double over = Si.in("thickness", heated.thickness(), Units.METRE) - Si.in("height", studHeight, Units.METRE);
        if (!(over >= -1e-6)) {
            throw new IllegalArgumentException("buildUp: heated layer '" + heated.name() + "' of " + heated.thickness()
                    + " was given; at least the stud height of " + studHeight + " is expected");
        }
        if (!(over > 1e-6)) {
            return buildUp;
        }
        List<Layer> layers = new ArrayList<>(buildUp.layers());
        List<Quantity<ThermalInsulance>> contacts = new ArrayList<>(buildUp.contacts());
        int at = buildUp.heatedIndex();
        layers.set(at, part(heated, Amounts.metres(over), false));
        layers.add(at + 1, part(heated, studHeight, true));
        contacts.add(at, Amounts.of(0, Units.SQUARE_METRE_KELVIN_PER_WATT));
        return new BuildUp(layers, contacts);
    }

    private static Layer part(Layer of, Quantity<Length> thickness, boolean heated) {
        return new Layer(of.name(), thickness, of.conductivity(), of.density(), of.heatCapacity(), heated);
    }

    /**
     * Whether the studs can be put into a build-up: its heated layer is at least as thick as they are high, and the cable lies
     * between them.
     *
     * @param buildUp layers whose heated one is membrane and mortar over it
     * @param cable the cable
     * @return true where {@link #partedAtStudTops} and the studded solves take them
     */
    public boolean fits(BuildUp buildUp, EmbeddedCable cable) {
        double height = Si.in("studHeight", studHeight, Units.METRE);
        return Si.in("thickness", buildUp.heatedLayer().thickness(), Units.METRE) >= height - 1e-6
                && cable.axisHeightMetres() + cable.radiusMetres() <= height + 1e-12
                && 2 * cable.radiusMetres() <= pitchMetres() - diameterMetres() + 1e-12;
    }

    /** Throws unless the heated layer is the studded height and the cable goes between the studs. */
    void checkFits(BuildUp buildUp, EmbeddedCable cable) {
        double height = Si.in("studHeight", studHeight, Units.METRE);
        double heated = Si.in("thickness", buildUp.heatedLayer().thickness(), Units.METRE);
        if (!(Math.abs(height - heated) <= 1e-6)) {
            throw new IllegalArgumentException(
                    "studHeight: " + studHeight + " was given; the thickness of the heated layer '"
                            + buildUp.heatedLayer().name() + "', "
                            + buildUp.heatedLayer().thickness() + ", is expected");
        }
        double channel = pitchMetres() - diameterMetres();
        if (!(2 * cable.radiusMetres() <= channel + 1e-12)) {
            throw new IllegalArgumentException("cable diameter: " + cable.diameter()
                    + " was given; at most the channel's " + channel + " m is expected");
        }
    }

    /** The whole number of channels, one to eight, nearest to a spacing. */
    int channels(double spacingMetres) {
        return (int) Math.max(1, Math.min(8, Math.round(spacingMetres / pitchMetres())));
    }

    /**
     * The heated layer's conductivity replaced by the parallel mixture.
     *
     * @param buildUp layers whose heated one is the studded height
     * @return the build-up
     */
    public BuildUp homogenised(BuildUp buildUp) {
        List<Layer> layers = new ArrayList<>(buildUp.layers());
        Layer heated = buildUp.heatedLayer();
        layers.set(
                buildUp.heatedIndex(),
                new Layer(
                        heated.name(), heated.thickness(), parallel(), heated.density(), heated.heatCapacity(), true));
        return new BuildUp(layers, buildUp.contacts());
    }

    /** How much the studs change each mode of the surface. */
    StudFactor factor(BuildUp buildUp, Climate climate, SurfaceLaw law, EmbeddedCable cable, double evenSpacing) {
        BuildUp uniform = homogenised(buildUp);
        double spacing = channels(evenSpacing) * pitchMetres();
        SteadySection section = SteadySection.of(uniform, climate, law, cable, Amounts.metres(spacing));
        double film = Si.in("film", section.film(), Units.WATT_PER_SQUARE_METRE_KELVIN);
        // The ratios do not depend on the temperature below.
        return StudFactor.of(effect(uniform, climate, cable, spacing, film, climate.belowKelvin()), spacing);
    }

    /** What the studs change at one spacing and film. */
    StudCell.Effect effect(
            BuildUp homogenised, Climate climate, EmbeddedCable cable, double spacing, double film, double ambient) {
        return new StudCell(
                        LayerStack.of(homogenised),
                        cable,
                        pitchMetres(),
                        diameterMetres(),
                        channels(spacing),
                        mortarSi(),
                        studSi(),
                        film,
                        climate.filmBelowSi(),
                        climate.belowKelvin() - ambient)
                .effect();
    }

    private double pitchMetres() {
        return Si.in("pitch", studPitch, Units.METRE);
    }

    private double diameterMetres() {
        return Si.in("diameter", studDiameter, Units.METRE);
    }

    private double share() {
        double ratio = diameterMetres() / pitchMetres();
        return Math.PI / 4 * ratio * ratio;
    }

    private double mortarSi() {
        return Si.in("mortar", mortar, Units.WATT_PER_METRE_KELVIN);
    }

    private double studSi() {
        return Si.in("stud", stud, Units.WATT_PER_METRE_KELVIN);
    }
}
