package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.heatfloor.finding.Finding;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.ThermalInsulance;
import org.heatfloor.quantity.Units;

/**
 * A rug, mat or furniture without feet put down on the running floor. Under an endless cover the section is solved with
 * the cover's resistance on top; a strip of finite width shares heat with the open floor beside it as a fin: with {@code
 * ℓ = √(S/y)} under the cover (i) and beside it (o), {@code S} the layers' sideways conductance and {@code y} what a square
 * metre gives off a kelvin, its middle takes the share {@code 1 − 1/(cosh(L/ℓi) + (ℓo/ℓi)·sinh(L/ℓi))} of the endless
 * cover's rise, {@code L} half the width. Derived; a two-dimensional solve agrees within 2 % of the rise. A cover that is
 * short both ways stays cooler than this. A quick check by hand; {@link FloorFieldBuilder#cover} lays the cover on the
 * floor as it is.
 *
 * @param coverResistance resistance of the cover
 * @param share share of the endless cover's rise at the middle
 * @param tileOpen mean tile surface away from the cover
 * @param tileCovered tile surface under the middle of the cover
 * @param sheathOpen sheath away from the cover
 * @param sheathCovered sheath under the middle of the cover
 */
public record BlockedArea(
        Quantity<ThermalInsulance> coverResistance,
        Quantity<Dimensionless> share,
        Quantity<Temperature> tileOpen,
        Quantity<Temperature> tileCovered,
        Quantity<Temperature> sheathOpen,
        Quantity<Temperature> sheathCovered) {

    /**
     * Solves a covered strip.
     *
     * @param buildUp the layers without the cover
     * @param climate room and space below
     * @param law how the surface gives off heat
     * @param cable the cable
     * @param spacing distance of neighbouring cables
     * @param coverResistance resistance of the cover, above 0 and at most 10 m²·K/W
     * @param width the cover's shorter side
     * @return the blocked area at steady full power
     * @throws IllegalArgumentException if a figure lies outside its range
     */
    public static BlockedArea of(
            BuildUp buildUp,
            Climate climate,
            SurfaceLaw law,
            EmbeddedCable cable,
            Quantity<Length> spacing,
            Quantity<ThermalInsulance> coverResistance,
            Quantity<Length> width) {
        Si.positive("coverResistance", coverResistance, Units.SQUARE_METRE_KELVIN_PER_WATT);
        double r = Si.within("coverResistance", coverResistance, Units.SQUARE_METRE_KELVIN_PER_WATT, 0, 10);
        double half = Si.positive("width", width, Units.METRE) / 2;
        SteadySection open = SteadySection.of(buildUp, climate, law, cable, spacing);
        // A sheet of felt's conductivity, thick enough for that resistance.
        Layer sheet = Layer.of("cover", Amounts.metres(0.05 * r), Amounts.wattsPerMetreKelvin(0.05));
        SteadySection endless = SteadySection.of(buildUp.coveredBy(sheet), climate, law, cable, spacing);

        LayerStack stack = LayerStack.of(buildUp);
        ModeTransfer transfer = new ModeTransfer(stack, cable.axisHeightMetres(), climate.filmBelowSi());
        double film = Si.in("film", open.film(), Units.WATT_PER_SQUARE_METRE_KELVIN);
        double coveredFilm = 1 / (1 / Si.in("film", endless.film(), Units.WATT_PER_SQUARE_METRE_KELVIN) + r);
        double down = transfer.admittanceBelow(0);
        double sideways = SidewaysConductance.of(stack, cable.axisHeightMetres(), down);
        double above = transfer.resistanceAbove();
        double inner = Math.sqrt(sideways / (down + 1 / (above + 1 / coveredFilm)));
        double outer = Math.sqrt(sideways / (down + 1 / (above + 1 / film)));
        double share = 1 - 1 / (Math.cosh(half / inner) + outer / inner * Math.sinh(half / inner));

        double tileOpen = Si.in("mean", open.surfaceMean(), Units.CELSIUS);
        double tileEndless = Si.in("mean", endless.surfaceMean(), Units.CELSIUS)
                + r * Si.in("upward", endless.upward(), Units.WATT_PER_SQUARE_METRE);
        double sheathOpen = Si.in("sheath", open.sheath(), Units.CELSIUS);
        double sheathEndless = Si.in("sheath", endless.sheath(), Units.CELSIUS);
        return new BlockedArea(
                coverResistance,
                Amounts.of(share, Units.ONE),
                open.surfaceMean(),
                Amounts.celsius(tileOpen + share * (tileEndless - tileOpen)),
                open.sheath(),
                Amounts.celsius(sheathOpen + share * (sheathEndless - sheathOpen)));
    }

    /**
     * Judges the cover: its resistance against the 0.15 m²·K/W to which EN 1264 goes, and the sheath under it against what
     * the cable's maker allows.
     *
     * @param subject the cover's name
     * @param sheathLimit highest sheath temperature the cable is made for
     * @return an error when the sheath passes its limit, a warning when the cover passes 0.15 m²·K/W, else a note
     */
    public Finding judge(String subject, Quantity<Temperature> sheathLimit) {
        return CoveredPart.judge(
                subject,
                Si.in("coverResistance", coverResistance, Units.SQUARE_METRE_KELVIN_PER_WATT),
                Si.in("tile", tileCovered, Units.CELSIUS),
                sheathCovered,
                sheathLimit);
    }
}
