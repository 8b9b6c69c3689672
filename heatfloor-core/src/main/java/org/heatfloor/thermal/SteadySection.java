package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.HeatFlux;
import org.heatfloor.quantity.HeatTransferCoefficient;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.TemperatureDifference;
import org.heatfloor.quantity.Units;

/**
 * Steady temperature across parallel cables at one spacing, exact for uniform layers: a Fourier series over the modes
 * {@code β_n = 2πn/w}, each carried through the layers by its transfer matrix (Carslaw and Jaeger, Conduction of Heat in
 * Solids, gives the method; the layered form is derived and was checked against finite volumes to 0.002 K).
 *
 * <p>A surface law that is not linear is solved for the mean surface temperature; the modes use the film so found.
 *
 * @param law name of the surface law
 * @param film film coefficient found for the mean
 * @param powerDensity power a metre over spacing
 * @param upward flux into the room
 * @param downward flux below
 * @param shareUpward upward flux as a share of the power density; above 100 % or below 0 when the room and the space
 *     below exchange heat through the floor
 * @param surfaceMean mean surface temperature
 * @param surfaceMax surface temperature above a cable
 * @param surfaceMin surface temperature midway between two cables
 * @param plane mean temperature of the cable's plane
 * @param sheath mean temperature of the cable's sheath
 * @param firstAmplitude amplitude of the first surface mode
 */
public record SteadySection(
        String law,
        Quantity<HeatTransferCoefficient> film,
        Quantity<HeatFlux> powerDensity,
        Quantity<HeatFlux> upward,
        Quantity<HeatFlux> downward,
        Quantity<Dimensionless> shareUpward,
        Quantity<Temperature> surfaceMean,
        Quantity<Temperature> surfaceMax,
        Quantity<Temperature> surfaceMin,
        Quantity<Temperature> plane,
        Quantity<Temperature> sheath,
        Quantity<TemperatureDifference> firstAmplitude) {

    /**
     * Solves a section with the floor characteristic curve.
     *
     * @param buildUp the layers
     * @param climate room and space below
     * @param cable the cable
     * @param spacing distance of neighbouring cables, centre line to centre line
     * @return the section
     * @throws IllegalArgumentException if the cable reaches out of its layer or the spacing is less than the diameter
     */
    public static SteadySection of(BuildUp buildUp, Climate climate, EmbeddedCable cable, Quantity<Length> spacing) {
        return of(buildUp, climate, SurfaceLaws.floorCurve(), cable, spacing);
    }

    /**
     * Solves a section.
     *
     * @param buildUp the layers
     * @param climate room and space below
     * @param law how the surface gives off heat
     * @param cable the cable
     * @param spacing distance of neighbouring cables, centre line to centre line, at most 10 m
     * @return the section
     * @throws IllegalArgumentException if the cable reaches out of its layer or the spacing is less than the diameter
     */
    public static SteadySection of(
            BuildUp buildUp, Climate climate, SurfaceLaw law, EmbeddedCable cable, Quantity<Length> spacing) {
        double w = cable.checkSpacing(spacing);
        cable.checkInside(buildUp);
        SectionSeries.Result r = SectionSeries.solve(
                LayerStack.of(buildUp),
                cable.axisHeightMetres(),
                cable.radiusMetres(),
                cable.powerSi(),
                w,
                law,
                climate);
        return new SteadySection(
                law.name(),
                Amounts.of(r.mean().film(), Units.WATT_PER_SQUARE_METRE_KELVIN),
                flux(cable.powerSi() / w),
                flux(r.mean().upward()),
                flux(r.mean().downward()),
                Amounts.of(cable.powerSi() > 0 ? r.mean().upward() / (cable.powerSi() / w) : 0, Units.ONE),
                celsius(r.mean().surfaceKelvin()),
                celsius(r.mean().surfaceKelvin() + r.riseAbove()),
                celsius(r.mean().surfaceKelvin() + r.riseMidway()),
                celsius(r.mean().planeKelvin()),
                celsius(r.sheathKelvin()),
                Amounts.kelvins(r.firstAmplitude()));
    }

    /**
     * Solves a section whose heated layer is a studded membrane: the series with the parallel mixture as heated layer,
     * corrected by what the studs beside the cable change. The correction is worked out for the whole number of channels
     * nearest to the spacing and holds within 0.03 K for the surface and 0.06 K for the sheath, see {@link StuddedLayer};
     * {@link #surfaceMax} is the highest place along the cable. The solve takes some tenths of a second.
     *
     * @param buildUp the layers; the heated one is the studded height, its conductivity is replaced by the mixture
     * @param studs the studs
     * @param climate room and space below
     * @param law how the surface gives off heat
     * @param cable the cable, in a channel between the studs
     * @param spacing distance of neighbouring cables, centre line to centre line, at most 10 m
     * @return the section
     * @throws IllegalArgumentException if the heated layer is not as thick as the studs are high, the cable does not go
     *     between the studs or reaches out of its layer, or the spacing is less than the diameter
     */
    public static SteadySection studded(
            BuildUp buildUp,
            StuddedLayer studs,
            Climate climate,
            SurfaceLaw law,
            EmbeddedCable cable,
            Quantity<Length> spacing) {
        studs.checkFits(buildUp, cable);
        BuildUp homogenised = studs.homogenised(buildUp);
        SteadySection plain = of(homogenised, climate, law, cable, spacing);
        double mean = Si.kelvin("surfaceMean", plain.surfaceMean);
        double film = Si.in("film", plain.film, Units.WATT_PER_SQUARE_METRE_KELVIN);
        double ambient = law.film(mean, climate.airKelvin()).ambientKelvin();
        double w = Si.in("spacing", spacing, Units.METRE);
        StudCell.Effect effect = studs.effect(homogenised, climate, cable, w, film, ambient);
        double density = cable.powerSi() / w;
        double upward = Si.in("upward", plain.upward, Units.WATT_PER_SQUARE_METRE) + film * effect.mean();
        return new SteadySection(
                law.name(),
                plain.film,
                plain.powerDensity,
                flux(upward),
                flux(density - upward),
                Amounts.of(cable.powerSi() > 0 ? upward / density : 0, Units.ONE),
                celsius(mean + effect.mean()),
                celsius(Si.kelvin("surfaceMax", plain.surfaceMax) + effect.max()),
                celsius(Si.kelvin("surfaceMin", plain.surfaceMin) + effect.min()),
                plain.plane,
                celsius(Si.kelvin("sheath", plain.sheath) + effect.sheath()),
                Amounts.kelvins(Si.in("amplitude", plain.firstAmplitude, Units.KELVIN_DIFFERENCE)
                        + effect.realModes()[1]
                        - effect.plainModes()[1]));
    }

    /**
     * Ripple: how much warmer the surface is above a cable than midway.
     *
     * @return maximum less minimum
     */
    public Quantity<TemperatureDifference> ripple() {
        return Amounts.kelvins(Si.kelvin("surfaceMax", surfaceMax) - Si.kelvin("surfaceMin", surfaceMin));
    }

    private static Quantity<HeatFlux> flux(double value) {
        return Amounts.of(value, Units.WATT_PER_SQUARE_METRE);
    }

    static Quantity<Temperature> celsius(double kelvin) {
        return Amounts.celsius(kelvin - 273.15);
    }
}
